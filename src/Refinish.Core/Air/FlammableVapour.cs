using System;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Air;

/// <summary>A vapour in air that can burn: how much there is of it and between which limits it burns alone.</summary>
/// <remarks>Limits are stated at room temperature and one atmosphere. The warmer, the lower the lower one.</remarks>
/// <example><code>
/// FlammableVapour toluene = new("toluene", Ratio.FromPercent(0.2), Solvents.Toluene.Flammability);
/// </code></example>
public sealed record FlammableVapour
{
    private readonly double fraction;

    /// <summary>Describes a vapour.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="fraction">Its part of the air by volume, more than 0 and at most 100 %.</param>
    /// <param name="flammability">Its limits, or that they are not known.</param>
    /// <exception cref="ArgumentException">
    /// <paramref name="name"/> is empty, or <paramref name="flammability"/> says that it does not burn: such a vapour is left out.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="fraction"/> is outside its range.</exception>
    public FlammableVapour(string name, Ratio fraction, Flammability flammability)
    {
        Name = Guard.Named(name);
        this.fraction = Guard.Within(fraction, Bounds.Positive(Measure.Percent, 1));
        Flammability = !Guard.NotNull(flammability).IsNonBurning
            ? flammability
            : throw new ArgumentException(
                "flammability says that " + name + " does not burn; leave it out of the mixture.", nameof(flammability));
    }

    /// <summary>Which vapour it is; told in workings, never looked up by.</summary>
    public string Name { get; }

    /// <summary>Its part of the air by volume.</summary>
    public Ratio Fraction => Ratio.FromDecimalFractions(fraction);

    /// <summary>Its limits.</summary>
    public Flammability Flammability { get; }

    internal double Part => fraction;

    internal double? Lower => Flammability.Lower?.DecimalFractions;

    internal double? Upper => Flammability.Upper?.DecimalFractions;

    /// <summary>The name and the part.</summary>
    /// <returns>Text such as <c>0.2 % toluene</c>.</returns>
    public override string ToString() => Measure.Percent.Format(fraction) + " " + Name;
}
