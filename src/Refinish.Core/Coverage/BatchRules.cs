using System;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>How mixing is done on this site: the cup, the graduation, how much of the pot life is used, and how long mixing takes.</summary>
public sealed record BatchRules
{
    private readonly double cupVolume;
    private readonly double graduation = 5e-6;
    private readonly double smallestBatch = 50e-6;
    private readonly double potLifeShare = 0.7;
    private readonly TimeSpan mixingTime = TimeSpan.FromMinutes(5);

    /// <summary>What the cup holds when in use, more than 0 and at most 20 L.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Volume CupVolume
    {
        get => Volume.FromCubicMeters(cupVolume);
        init => cupVolume = Guard.Within(value, Bounds.Positive(Measure.Liquid, 0.02), nameof(CupVolume));
    }

    /// <summary>Step to which a batch is rounded up, more than 0 and at most 1 L; 5 mL unless given (invented default).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Volume Graduation
    {
        get => Volume.FromCubicMeters(graduation);
        init => graduation = Guard.Within(value, Bounds.Positive(Measure.Liquid, 1e-3), nameof(Graduation));
    }

    /// <summary>Least that can be measured well enough, 0 to 5 L; 50 mL unless given (invented default).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Volume SmallestBatch
    {
        get => Volume.FromCubicMeters(smallestBatch);
        init => smallestBatch = Guard.Within(value, Bounds.NotNegative(Measure.Liquid, 5e-3), nameof(SmallestBatch));
    }

    /// <summary>Part of the pot life within which a batch has to be sprayed out, more than 0 and at most 100 %; 70 % unless given (invented default).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio PotLifeShare
    {
        get => Ratio.FromDecimalFractions(potLifeShare);
        init => potLifeShare = Guard.Within(value, Bounds.Positive(Measure.Percent, 1), nameof(PotLifeShare));
    }

    /// <summary>Mixing, straining and filling the cup, 0 to 2 h; 5 min unless given (invented default).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan MixingTime
    {
        get => mixingTime;
        init
        {
            Guard.Within(value, Bounds.NotNegative(Measure.Minutes, 7200), nameof(MixingTime));
            mixingTime = value;
        }
    }

    /// <summary>The rules in one line, in metric units.</summary>
    /// <returns>Text such as <c>cup 600 mL, to 5 mL, within 70 % of the pot life</c>.</returns>
    public override string ToString() =>
        "cup " + Measure.Liquid.Format(cupVolume) + ", to " + Measure.Liquid.Format(graduation) + ", within "
        + Measure.Percent.Format(potLifeShare) + " of the pot life";
}
