using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Runtime.CompilerServices;
using UnitsNet;

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
    public IReadOnlyList<InputField> Missing => new ValueList<InputField>(Inputs.Where((_, place) => double.IsNaN(si[place])));

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

    internal InputValues With(string name, Length value)
    {
        int place = Inputs.PlaceOf(name);
        return Put(place, Inputs[place].Checked(value));
    }

    // The property that asks is the input that is meant.
    internal InputValues With(Length value, [CallerMemberName] string input = "") => With(input, value);

    internal InputValues With(double value, [CallerMemberName] string input = "") => With(input, value);

    internal InputValues With(IQuantity value, [CallerMemberName] string input = "") => With(input, value);

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

    internal bool IsWhole => Array.FindIndex(si, double.IsNaN) < 0;

    internal double Number([CallerMemberName] string name = "") => si[Inputs.PlaceOf(name)];

    internal Length Length([CallerMemberName] string name = "") => UnitsNet.Length.FromMeters(Number(name));

    internal Angle Angle([CallerMemberName] string name = "") => UnitsNet.Angle.FromRadians(Number(name));

    internal Ratio Ratio([CallerMemberName] string name = "") => UnitsNet.Ratio.FromDecimalFractions(Number(name));

    internal Volume Volume([CallerMemberName] string name = "") => UnitsNet.Volume.FromCubicMeters(Number(name));

    internal VolumeFlow VolumeFlow([CallerMemberName] string name = "") => UnitsNet.VolumeFlow.FromCubicMetersPerSecond(Number(name));

    internal int Count([CallerMemberName] string name = "") => (int)Number(name);

    private InputValues Put(int place, double value)
    {
        double[] changed = new double[si.Length];
        Array.Copy(si, changed, si.Length);
        changed[place] = value;
        return new InputValues(Inputs, changed);
    }
}
