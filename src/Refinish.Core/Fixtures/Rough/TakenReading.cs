using System;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>A reading that somebody took, or said on the telephone, with its ±.</summary>
/// <example><code>
/// TakenReading depth = new("Depth", Length.FromInches(13.25), RoughFixture.TapePlusMinus);
/// </code></example>
public sealed record TakenReading
{
    private static readonly Bounds Lengths = Bounds.Between(-1, 20, Measure.Length);
    private static readonly Bounds LengthErrors = Bounds.NotNegative(Measure.Length, 0.5);
    private static readonly Bounds Numbers = Bounds.NotNegative(Measure.Number, 1000);
    private static readonly Bounds Angles = Bounds.Between(0, 2 * Math.PI, Measure.Angle);

    /// <summary>A length.</summary>
    /// <param name="name">Name of the reading, as the measurements of the fixture call it.</param>
    /// <param name="value">The length, −1 to 20 m; what its fixture allows is narrower.</param>
    /// <param name="plusMinus">The ±, 0 to 0.5 m; a length of 0, which says that something is not there, has none.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public TakenReading(string name, Length value, Length plusMinus)
    {
        Name = Guard.Named(name);
        Value = Guard.Within(value, Lengths, name, name);
        double error = Guard.Within(plusMinus, LengthErrors);
        PlusMinus = Value == 0 ? 0 : error;
        Measure = Measure.Length;
    }

    /// <summary>A length that the tape gave, ± <see cref="RoughFixture.TapePlusMinus"/>.</summary>
    /// <param name="name">Name of the reading, as the measurements of the fixture call it.</param>
    /// <param name="value">The length, −1 to 20 m; what its fixture allows is narrower.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is outside its range.</exception>
    public TakenReading(string name, Length value) : this(name, value, RoughFixture.TapePlusMinus)
    {
    }

    /// <summary>A number without a ±: a count, a factor, an exponent.</summary>
    /// <param name="name">Name of the reading.</param>
    /// <param name="value">The number, 0 to 1000; what its fixture allows is narrower.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is outside its range.</exception>
    public TakenReading(string name, double value)
    {
        Name = Guard.Named(name);
        Value = Guard.Within(value, Numbers, name, name);
        Measure = Measure.Number;
    }

    /// <summary>An angle without a ±.</summary>
    /// <param name="name">Name of the reading.</param>
    /// <param name="value">The angle, 0° to 360°; what its fixture allows is narrower.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is outside its range.</exception>
    public TakenReading(string name, Angle value)
    {
        Name = Guard.Named(name);
        Value = Guard.Within(value, Angles, name, name);
        Measure = Measure.Angle;
    }

    /// <summary>Name of the reading.</summary>
    public string Name { get; }

    /// <summary>The value in the SI base unit of <see cref="Measure"/>.</summary>
    public double Value { get; }

    /// <summary>The ±, in the same unit.</summary>
    public double PlusMinus { get; }

    /// <summary>What kind of amount it is: a length, an angle or a plain number.</summary>
    public Measure Measure { get; }

    /// <summary>Name, value and ± in metric units.</summary>
    /// <returns>Text such as <c>Depth 336.55 mm ± 3 mm</c>.</returns>
    public override string ToString() =>
        $"{Name} {Measure.Format(Value)}{(PlusMinus == 0 ? string.Empty : " ± " + Measure.Format(PlusMinus))}";
}
