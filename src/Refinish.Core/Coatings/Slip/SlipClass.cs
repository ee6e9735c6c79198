using System;

namespace Refinish.Coatings;

/// <summary>A published class or criterion of floors by a slip test, as data.</summary>
/// <example><code>
/// SlipClass ours = new(
///     "our hotel's floors (invented)", SlipScale.PendulumValue, 40, isWet: true, isBarefoot: true, "our hotel", "2027-01-15",
///     Source.Supplied("house rule 12"));
/// double least = ours.Least;   // 40
/// </code></example>
public sealed record SlipClass
{
    /// <summary>Makes a class.</summary>
    /// <param name="name">Name of the class, with whose it is.</param>
    /// <param name="scale">In what the test reads.</param>
    /// <param name="least">
    /// Least reading on that scale, more than 0: a coefficient of at most 2, a pendulum value of at most 150, or an angle of at most 45
    /// degrees.
    /// </param>
    /// <param name="isWet">Whether it is measured wet.</param>
    /// <param name="isBarefoot">Whether it is meant for bare feet, rather than for shoes.</param>
    /// <param name="jurisdiction">Where it holds or is looked to.</param>
    /// <param name="asOf">Date or edition, as text.</param>
    /// <param name="source">Where it comes from.</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The scale is not a named value, or the reading is outside its range.</exception>
    public SlipClass(string name, SlipScale scale, double least, bool isWet, bool isBarefoot, string jurisdiction, string asOf,
        Source source)
    {
        Name = Guard.Named(name);
        Scale = Guard.Defined(scale);
        Guard.Within(least * Factor, Bounds.Positive(Measure, Most), nameof(least));
        Least = least;
        IsWet = isWet;
        IsBarefoot = isBarefoot;
        Jurisdiction = Guard.Named(jurisdiction);
        AsOf = Guard.Named(asOf);
        Source = Guard.NotNull(source);
    }

    /// <summary>Name of the class, with whose it is.</summary>
    public string Name { get; }

    /// <summary>In what the test reads.</summary>
    public SlipScale Scale { get; }

    /// <summary>Least reading on the scale: a coefficient, a pendulum value, or an angle in degrees.</summary>
    public double Least { get; }

    /// <summary>Whether it is measured wet.</summary>
    public bool IsWet { get; }

    /// <summary>Whether it is meant for bare feet, rather than for shoes.</summary>
    public bool IsBarefoot { get; }

    /// <summary>Where it holds or is looked to.</summary>
    public string Jurisdiction { get; }

    /// <summary>Date or edition, as text.</summary>
    public string AsOf { get; }

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }

    /// <summary>The class in one line.</summary>
    /// <returns>Text such as <c>ANSI A326.3 Interior, Wet: 0.42 or more, wet</c>.</returns>
    public override string ToString() => Name + ": " + Format(Least) + " or more, " + (IsWet ? "wet" : "dry");

    internal Measure Measure => Scale == SlipScale.RampAngle ? Measure.Angle : Measure.Number;

    internal string Whose => Whom.Of(Name, Jurisdiction, AsOf);

    internal string ScaleInWords => Scale switch
    {
        SlipScale.DynamicFriction => "dynamic friction",
        SlipScale.PendulumValue => "pendulum test value",
        _ => "angle of the ramp",
    };

    /// <summary>From a reading to the SI base unit of its measure.</summary>
    internal double Factor => Scale == SlipScale.RampAngle ? Math.PI / 180 : 1;

    internal string Format(double reading) => Measure.Format(reading * Factor, DisplayUnits.Si, 3);

    internal void Check(double reading, string name) => Guard.Within(reading * Factor, Bounds.Between(0, Most, Measure), name);

    private double Most => Scale switch
    {
        SlipScale.DynamicFriction => 2,
        SlipScale.PendulumValue => 150,
        _ => 45 * Math.PI / 180,
    };
}
