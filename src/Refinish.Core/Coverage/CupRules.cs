using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>How mixing is done where several sizes of cup are at hand.</summary>
public sealed record CupRules
{
    /// <summary>
    /// A start that a shop replaces by its own, every figure invented: one cup of 600 mL marked every 5 mL, smallest batch 50 mL, 70 % of
    /// the pot life,
    /// 5 min for mixing, no residue.
    /// </summary>
    public static CupRules Generic { get; } = new()
    {
        Cups = [new(Volume.FromMilliliters(600), Volume.FromMilliliters(5), Volume.FromMilliliters(50))],
    };

    /// <summary>The cups, 1 to 8 sizes.</summary>
    /// <exception cref="ArgumentException">None, or an entry is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">More than 8.</exception>
    public required IReadOnlyList<MixingCup> Cups
    {
        get;
        init
        {
            ValueList<MixingCup> cups = Guard.List(value, 1);
            Guard.Count(cups.Count, 1, 8, nameof(Cups));
            field = cups;
        }
    }

    /// <summary>
    /// Part of the pot life within which a batch has to be sprayed out, more than 0 and at most 100 %; 70 % unless given (invented
    /// default).
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio PotLifeShare { get; init => field = Guard.Checked(value, Bounds.Positive(Measure.Percent, 1)); }
    = Ratio.FromDecimalFractions(0.7);

    /// <summary>Mixing, straining and filling, 0 to 2 h; 5 min unless given (invented default).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan MixingTime
    {
        get;
        init
        {
            Guard.Within(value, Bounds.NotNegative(Measure.Minutes, 7200));
            field = value;
        }
    }
    = TimeSpan.FromMinutes(5);

    /// <summary>
    /// What stays in each cup and cannot be sprayed, 0 to 1 L; none unless given, for a need that has the residue in it already.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Volume Residue { get; init => field = Guard.Checked(value, Bounds.NotNegative(Measure.Liquid, 1e-3)); }

    /// <summary>
    /// Whether all batches of a plan have one size and are mixed in one cup, because equal batches are easier to mix alike;
    /// <see langword="false"/> unless given.
    /// </summary>
    public bool EqualBatches { get; init; }

    /// <summary>The rules in one line.</summary>
    /// <returns>Text such as <c>600 mL cup, to 5 mL; 250 mL cup, to 1 mL; within 70 % of the pot life</c>.</returns>
    public override string ToString() =>
        string.Join("; ", Cups) + "; within " + Measure.Percent.Format(PotLifeShare.DecimalFractions) + " of the pot life"
        + (EqualBatches ? "; equal batches" : string.Empty);
}
