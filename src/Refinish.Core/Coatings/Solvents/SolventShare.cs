using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// One liquid's part, by mass, of what is not solids in a coating or a chemical: a solvent, water, or a liquid that is not volatile.
/// </summary>
public sealed record SolventShare
{
    private readonly double massFraction;

    /// <summary>Makes a share.</summary>
    /// <param name="solvent">The solvent.</param>
    /// <param name="massFraction">Its part of the volatile mass, more than 0 and at most 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="massFraction"/> is outside its range.</exception>
    public SolventShare(Solvent solvent, Ratio massFraction)
    {
        Solvent = Guard.NotNull(solvent);
        this.massFraction = Guard.Within(massFraction, Bounds.Positive(Measure.Percent, 1));
    }

    /// <summary>The solvent.</summary>
    public Solvent Solvent { get; }

    /// <summary>Its part of the volatile mass.</summary>
    public Ratio MassFraction => Ratio.FromDecimalFractions(massFraction);

    /// <summary>The solvent and its share.</summary>
    /// <returns>Text such as <c>60 % n-butyl acetate</c>.</returns>
    public override string ToString() => Measure.Percent.Format(massFraction) + " " + Solvent.Name;

    /// <summary>Whether nothing of a blend stays in the film.</summary>
    internal static bool IsAllVolatile(IReadOnlyList<SolventShare> blend) => blend.All(share => share.Solvent.Volatility.IsVolatile);

    /// <summary>The part of a blend that evaporates, by mass.</summary>
    internal static double VolatilePart(IReadOnlyList<SolventShare> blend) =>
        blend.Where(share => share.Solvent.Volatility.IsVolatile).Sum(share => share.MassFraction.DecimalFractions)
        / blend.Sum(share => share.MassFraction.DecimalFractions);

    /// <summary>A checked copy of the blend of a coating, whose water stands with its part and not among the solvents.</summary>
    internal static ValueList<SolventShare> WithoutWater(IEnumerable<SolventShare> value, string name)
    {
        ValueList<SolventShare> shares = Blend(value, name);
        return shares.Any(share => share.Solvent.IsWater)
            ? throw new ArgumentException(name
                + " names water; allowed: solvents. Water is said as CoatingComponent.Water of the part that holds it.", name)
            : shares;
    }

    /// <summary>A checked copy of a blend: no shares at all, or shares that add up to the whole.</summary>
    internal static ValueList<SolventShare> Blend(IEnumerable<SolventShare> value, string name)
    {
        ValueList<SolventShare> shares = Guard.List(value, name: name);
        double sum = shares.Sum(share => share.MassFraction.DecimalFractions);
        Guard.Rule(shares.Count == 0 || Math.Abs(sum - 1) <= 1e-3, name, sum, Measure.Percent, "shares that add up to 100 % within 0.1 %");
        return shares;
    }
}
