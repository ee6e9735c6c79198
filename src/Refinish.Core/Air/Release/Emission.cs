using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// Something that gives off vapour in the room: a sprayed coat (<see cref="SolventEmission"/>) or a wiped-on liquid
/// (<see cref="WipeEmission"/>). It is put on at a steady rate from <see cref="Start"/> to <see cref="End"/>; what does not flash
/// leaves its films at first-order rates. In the end all of the volatile mass has been in the air, apart from what is not volatile
/// among <see cref="Solvents"/>: that stays.
/// </summary>
public abstract record Emission
{
    /// <summary>As far ahead as a schedule of works looks: a room may stay closed for years between two visits.</summary>
    internal const double LongestStudy = 400.0 * 366 * 86400;

    private protected static readonly Bounds Applying = Bounds.Positive(Measure.Minutes, 24 * 3600);
    private protected static readonly Bounds TimeConstants = Bounds.Between(1, 30 * 86400, Measure.Minutes);

    private readonly double volatileMass;

    private protected Emission()
    {
    }

    /// <summary>What this is, such as "topcoat, first coat".</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>When it begins to be put on, counted from the start of the study; 0 to 400 years.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required TimeSpan Start { get; init => field = Guard.Time(value, Bounds.NotNegative(Measure.Hours, LongestStudy)); }

    /// <summary>
    /// The liquid that <see cref="Solvents"/> make up, which evaporates apart from what is not volatile in it; overspray included, more
    /// than 0 and at most 10 000 kg.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Mass VolatileMass
    {
        get => Mass.FromKilograms(volatileMass);
        init => volatileMass = Guard.Within(value, Bounds.Positive(Measure.Mass, 1e4));
    }

    /// <summary>What it is made of, water included where it is given, as shares of the mass that add up to 100 %.</summary>
    /// <exception cref="ArgumentException">The list is empty, an entry is missing, or a solvent is named twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The shares do not add up to 100 % within 0.1 %.</exception>
    public required IReadOnlyList<SolventShare> Solvents { get; init => field = CheckedShares(value, nameof(Solvents)); }

    /// <summary>When the last of it has been put on, counted from the start of the study.</summary>
    public TimeSpan End => Start + Applied;

    private protected abstract TimeSpan Applied { get; }

    /// <summary>The emission, its mass and its times.</summary>
    /// <returns>One line of text.</returns>
    public abstract override string ToString();

    /// <summary>The parts of the volatile mass that leave at one rate each; their shares add up to 1.</summary>
    internal abstract IEnumerable<ReleaseTerm> Terms();

    /// <summary>
    /// The sum of the shares, which may miss 100 % by the rounding of a data sheet; masses are divided by it so that none is lost.
    /// </summary>
    internal static Num ShareSum(IReadOnlyList<SolventShare> solvents, Trace? t = null)
    {
        Num sum = 0;
        for (int i = 0; i < solvents.Count; i++)
        {
            sum += Part(solvents[i], t);
        }

        return sum;
    }

    internal static Num Part(SolventShare share, Trace? t) =>
        t.Given("w_", share.Solvent.Name, share.MassFraction.DecimalFractions, Measure.Percent);

    private protected static double BlendDensity(IReadOnlyList<SolventShare> solvents) =>
        ShareSum(solvents).Value / solvents.Sum(share =>
            share.MassFraction.DecimalFractions / share.Solvent.Density.KilogramsPerCubicMeter);

    private protected static IReadOnlyList<SolventShare> CheckedShares(IReadOnlyList<SolventShare> value, string name)
    {
        ValueList<SolventShare> shares = Guard.List(value, 1, name: name);
        double sum = ShareSum(shares).Value;
        Guard.Rule(Math.Abs(sum - 1) <= 1e-3, name, sum, Measure.Percent, "shares that add up to 100 % within 0.1 %");
        for (int i = 1; i < shares.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                if (string.Equals(shares[i].Solvent.CasNumber, shares[j].Solvent.CasNumber, StringComparison.Ordinal))
                {
                    throw new ArgumentException(name + " names a solvent twice; add its shares up.", name);
                }
            }
        }

        return shares;
    }
}
