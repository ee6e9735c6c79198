using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>What an operation gives off into the air of its room, evenly while it is done and then within a time constant.</summary>
/// <example><code>
/// Evaporation wipe = new("degreaser", Mass.FromGrams(40), [new SolventShare(Solvents.Isopropanol, Ratio.FromPercent(100))]);
/// </code></example>
public sealed record Evaporation
{
    private readonly double mass;

    /// <summary>States it.</summary>
    /// <param name="name">What evaporates.</param>
    /// <param name="mass">Solvent that is given off, more than 0 and at most 100 kg.</param>
    /// <param name="solvents">The solvents by mass, together 100 % within 0.1 %.</param>
    /// <exception cref="ArgumentException">A text is empty or no solvent is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside its range, or the shares do not add up.</exception>
    public Evaporation(string name, Mass mass, IEnumerable<SolventShare> solvents)
    {
        Name = Guard.Named(name, nameof(name));
        this.mass = Guard.Within(mass, Bounds.Positive(Measure.Mass, 100), nameof(mass));
        ValueList<SolventShare> shares = Guard.List(solvents, nameof(solvents), 1);
        double sum = shares.Sum(share => share.MassFraction.DecimalFractions);
        Guard.Rule(Math.Abs(sum - 1) <= 1e-3, nameof(solvents), sum, Measure.Percent, "shares that add up to 100 % within 0.1 %");
        Solvents = shares;
    }

    /// <summary>What evaporates.</summary>
    public string Name { get; }

    /// <summary>Solvent that is given off.</summary>
    public Mass Mass => Mass.FromKilograms(mass);

    /// <summary>The solvents by mass.</summary>
    public IReadOnlyList<SolventShare> Solvents { get; }

    /// <summary>Time constant with which what is wetted dries, 1 s to 30 days; 2 min unless given (invented).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan TimeConstant
    {
        get;
        init
        {
            Guard.Within(value, Bounds.Between(1, 30 * 86400, Measure.Minutes), nameof(TimeConstant));
            field = value;
        }
    }
    = WipeEmission.AssumedEvaporationTime;

    /// <summary>Name and mass.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ", " + Measure.Mass.Format(mass, DisplayUnits.Si, 3);
}
