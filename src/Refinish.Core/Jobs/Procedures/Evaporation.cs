using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// What an operation gives off into the air of its room. Left to evaporate, as a wipe is, all of it does, evenly while it is put on and
/// then within a time
/// constant. Taken off again, as a stripper is, it gives off mass over time constant for as long as it lies, and what is left then goes
/// with what is taken off.
/// </summary>
/// <example><code>
/// Evaporation wipe = new("degreaser", Mass.FromGrams(40), [new SolventShare(Solvents.Isopropanol, Ratio.FromPercent(100))]);
/// </code></example>
public sealed record Evaporation
{
    /// <summary>The longest that something may lie before it is taken off.</summary>
    internal static readonly TimeSpan LongestLying = TimeSpan.FromDays(14);

    private readonly double mass;

    /// <summary>States it.</summary>
    /// <param name="name">What evaporates.</param>
    /// <param name="mass">Solvent in what is put on, more than 0 and at most 100 kg.</param>
    /// <param name="solvents">The solvents by mass, together 100 % within 0.1 %.</param>
    /// <exception cref="ArgumentException">A text is empty no solvent is given, or one is methylene chloride.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside its range, or the shares do not add up.</exception>
    public Evaporation(string name, Mass mass, IEnumerable<SolventShare> solvents)
    {
        Name = Guard.Named(name);
        this.mass = Guard.Within(mass, Bounds.Positive(Measure.Mass, 100));
        ValueList<SolventShare> shares = Guard.List(solvents, 1);
        double sum = shares.Sum(share => share.MassFraction.DecimalFractions);
        Guard.Rule(Math.Abs(sum - 1) <= 1e-3, nameof(solvents), sum, Measure.Percent, "shares that add up to 100 % within 0.1 %");
        Solvents = shares.Any(share => share.Solvent.CasNumber == Coatings.Solvents.MethyleneChloride.CasNumber)
            ? throw new ArgumentException(
                "solvents holds methylene chloride, whose vapour has killed bathtub refinishers and which may not be used for this work (40 CFR 751 subpart B).", nameof(solvents))
            : shares;
    }

    /// <summary>What evaporates.</summary>
    public string Name { get; }

    /// <summary>
    /// What <see cref="Solvents"/> make up in what is put on. All of it that is volatile is given off, unless it is taken off before.
    /// </summary>
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
            Guard.Within(value, Bounds.Between(1, 30 * 86400, Measure.Minutes));
            field = value;
        }
    }
    = WipeEmission.AssumedEvaporationTime;

    /// <summary>
    /// How long after the end of the operation it is taken off, 0 to 14 days; <see langword="null"/> for what is left to evaporate. Until
    /// then its release is steady at
    /// the rate with which a film of that time constant begins: never less than such a film gives off.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan? TakenOffAfter
    {
        get;
        init
        {
            if (value is TimeSpan after)
            {
                Guard.Within(after, Bounds.NotNegative(Measure.Hours, LongestLying.TotalSeconds), nameof(TakenOffAfter));
            }

            field = value;
        }
    }

    /// <summary>Name and mass.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ", " + Measure.Mass.Format(mass, DisplayUnits.Si, 3);
}
