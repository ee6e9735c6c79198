using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using UnitsNet;
using CallerAttribute = System.Runtime.CompilerServices.CallerMemberNameAttribute;

namespace Refinish;

/// <summary>
/// Values of the inputs of a table, each checked as it is entered: a form that is being filled in, or the readings of a record.
/// </summary>
/// <remarks>Two are equal when they are of the same table and have the same numbers in SI.</remarks>
/// <example><code>
/// InputValues form = ShowerPanMeasurements.Inputs.Empty.With("FloorLength", Length.FromInches(48));
/// double? metres = form.Value("FloorLength");    // 1.2192
/// int open = form.Missing.Count;                 // 7
/// </code></example>
public sealed class InputValues : IEquatable<InputValues>
{
    // Not a number while it is not given.
    private readonly double[] si;

    internal InputValues(InputTable inputs, double[] si)
    {
        Inputs = inputs;
        this.si = si;
    }

    /// <summary>The table.</summary>
    public InputTable Inputs { get; }

    /// <summary>The inputs that have to be given and are not yet.</summary>
    public IReadOnlyList<InputField> Missing =>
        new ValueList<InputField>(Inputs.Where((input, place) => input.IsRequired && double.IsNaN(si[place])));

    /// <summary>A value.</summary>
    /// <param name="name">Name of the input.</param>
    /// <returns>The number in the SI base unit of its measure; <see langword="null"/> while it is not given.</returns>
    /// <exception cref="ArgumentException">There is no such input.</exception>
    public double? Value(string name)
    {
        double given = Number(name);
        return double.IsNaN(given) ? null : given;
    }

    /// <summary>The same with a number in SI, or a count.</summary>
    /// <param name="name">Name of the input.</param>
    /// <param name="value">The number in the SI base unit of its measure.</param>
    /// <returns>The values with it.</returns>
    /// <exception cref="ArgumentException">There is no such input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the range of the input.</exception>
    public InputValues With(string name, double value)
    {
        int place = Inputs.PlaceOf(name);
        return Put(place, Inputs[place].Checked(value));
    }

    /// <summary>The same with a quantity.</summary>
    /// <param name="name">Name of the input.</param>
    /// <param name="value">The quantity, such as a length, in any unit.</param>
    /// <returns>The values with it.</returns>
    /// <exception cref="ArgumentException">There is no such input, or it is of another kind.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The quantity is outside the range of the input.</exception>
    public InputValues With(string name, IQuantity value)
    {
        int place = Inputs.PlaceOf(name);
        return Put(place, Inputs[place].Checked(value));
    }

    /// <summary>The same without a value, as when a box of a form is cleared: back at its default, or open where it has none.</summary>
    /// <param name="name">Name of the input.</param>
    /// <returns>The values without it.</returns>
    /// <exception cref="ArgumentException">There is no such input.</exception>
    public InputValues Without(string name)
    {
        int place = Inputs.PlaceOf(name);
        return Put(place, Inputs[place].Default ?? double.NaN);
    }

    // What a property of a record calls: its name is that of the row.
    internal InputValues Set<T>(T value, [Caller] string name = "")
        where T : struct, IQuantity => With(name, value);

    internal InputValues Set(Length value, [Caller] string name = "") => With(name, value);

    internal InputValues Set(double value, [Caller] string name = "") => With(name, value);

    internal InputValues SetOrClear<T>(T? value, [Caller] string name = "")
        where T : struct, IQuantity => value is T given ? With(name, given) : Without(name);

    internal InputValues SetOrClear(double? value, [Caller] string name = "") => value is double given ? With(name, given) : Without(name);

    internal InputValues With(string name, Length value)
    {
        int place = Inputs.PlaceOf(name);
        return Put(place, Inputs[place].Checked(value));
    }

    /// <inheritdoc/>
    public bool Equals(InputValues? other) =>
        other is not null && ReferenceEquals(Inputs, other.Inputs) && Enumerable.SequenceEqual(si, other.si);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as InputValues);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        int hash = 17;
        foreach (double value in si)
        {
            hash = unchecked((hash * 31) + value.GetHashCode());
        }

        return hash;
    }

    /// <summary>The values that are given, in metric units.</summary>
    /// <returns>Text such as <c>FloorLength 1219.2 mm, FloorWidth 863.6 mm</c>.</returns>
    public override string ToString() => string.Join(", ", Inputs.Where((_, place) => !double.IsNaN(si[place])).Select(
        input => string.Format(CultureInfo.InvariantCulture, "{0} {1}", input.Name, input.Measure.Format(Number(input.Name)))));

    internal bool IsWhole => Missing.Count == 0;

    internal double Number([Caller] string name = "") => si[Inputs.PlaceOf(name)];

    internal Length Length([Caller] string name = "") => UnitsNet.Length.FromMeters(Number(name));

    internal Angle Angle([Caller] string name = "") => UnitsNet.Angle.FromRadians(Number(name));

    internal Ratio Ratio([Caller] string name = "") => UnitsNet.Ratio.FromDecimalFractions(Number(name));

    internal Volume Volume([Caller] string name = "") => UnitsNet.Volume.FromCubicMeters(Number(name));

    internal VolumeFlow VolumeFlow([Caller] string name = "") => UnitsNet.VolumeFlow.FromCubicMetersPerSecond(Number(name));

    internal int Count([Caller] string name = "") => (int)Number(name);

    internal Pressure Pressure([Caller] string name = "") => UnitsNet.Pressure.FromPascals(Number(name));

    internal Density Density([Caller] string name = "") => UnitsNet.Density.FromKilogramsPerCubicMeter(Number(name));

    internal Density? MaybeDensity([Caller] string name = "") => IsKnown(name) ? Density(name) : null;

    internal Ratio? MaybeRatio([Caller] string name = "") => IsKnown(name) ? Ratio(name) : null;

    internal Temperature? MaybeTemperature([Caller] string name = "") => Value(name) is double si ? Temperature.FromKelvins(si) : null;

    internal MolarMass? MaybeMolarMass([Caller] string name = "") => Value(name) is double si ? MolarMass.FromKilogramsPerMole(si) : null;

    internal DynamicViscosity? MaybeViscosity([Caller] string name = "") =>
        Value(name) is double si ? DynamicViscosity.FromNewtonSecondsPerMeterSquared(si) : null;

    internal TimeSpan? MaybeTime([Caller] string name = "") => Value(name) is double si ? Durations.FromSeconds(si) : null;

    private bool IsKnown(string name) => !double.IsNaN(Number(name));

    private InputValues Put(int place, double value)
    {
        double[] changed = new double[si.Length];
        Array.Copy(si, changed, si.Length);
        changed[place] = value;
        return new InputValues(Inputs, changed);
    }
}
