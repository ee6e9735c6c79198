using System;
using UnitsNet;

namespace Refinish.Air;

/// <summary>A vapour in air that can burn: how much there is of it and between which limits it burns alone.</summary>
/// <remarks>Limits are stated at room temperature and one atmosphere. The warmer, the lower the lower one.</remarks>
/// <example><code>
/// FlammableVapour toluene = new("toluene", Ratio.FromPercent(0.2), Ratio.FromPercent(1.1), Ratio.FromPercent(7.1));
/// </code></example>
public sealed record FlammableVapour
{
    private readonly double fraction;
    private readonly double? lower;
    private readonly double? upper;

    /// <summary>Describes a vapour.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="fraction">Its part of the air by volume, more than 0 and at most 100 %.</param>
    /// <param name="lowerLimit">Lower flammable limit by volume, 1 ppb to 100 %; <see langword="null"/> when not known.</param>
    /// <param name="upperLimit">Upper flammable limit by volume, above the lower one and at most 100 %; <see langword="null"/> when not
    /// known.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FlammableVapour(string name, Ratio fraction, Ratio? lowerLimit, Ratio? upperLimit = null)
    {
        Name = Guard.Named(name, nameof(name));
        this.fraction = Guard.Within(fraction, Bounds.Positive(Measure.Percent, 1), nameof(fraction));
        Bounds limits = Bounds.Between(1e-9, 1, Measure.Percent);
        lower = lowerLimit is Ratio low ? Guard.Within(low, limits, nameof(lowerLimit)) : null;
        upper = upperLimit is Ratio high ? Guard.Within(high, limits, nameof(upperLimit)) : null;
        Guard.Rule(!(upper <= lower), nameof(upperLimit), upper ?? 0, Measure.Percent, "more than the lower limit, ", lower ?? 0);
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Its part of the air by volume.</summary>
    public Ratio Fraction => Ratio.FromDecimalFractions(fraction);

    /// <summary>Lower flammable limit; <see langword="null"/> when not known.</summary>
    public Ratio? LowerLimit => lower is double limit ? Ratio.FromDecimalFractions(limit) : null;

    /// <summary>Upper flammable limit; <see langword="null"/> when not known.</summary>
    public Ratio? UpperLimit => upper is double limit ? Ratio.FromDecimalFractions(limit) : null;

    internal double Part => fraction;

    internal double? Lower => lower;

    internal double? Upper => upper;

    /// <summary>The name and the part.</summary>
    /// <returns>Text such as <c>0.2 % toluene</c>.</returns>
    public override string ToString() => Measure.Percent.Format(fraction) + " " + Name;
}
