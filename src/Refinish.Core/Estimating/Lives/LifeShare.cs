using System;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>A share of the jobs and the lifetime that this share has.</summary>
public sealed record LifeShare
{
    private readonly double share;

    /// <summary>Makes a share.</summary>
    /// <param name="share">Share of all jobs, more than 0 and at most 100 %.</param>
    /// <param name="life">Their lifetime.</param>
    /// <exception cref="ArgumentNullException"><paramref name="life"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="share"/> is outside its range.</exception>
    public LifeShare(Ratio share, WeibullLife life)
    {
        this.share = Guard.Within(share, Bounds.Positive(Measure.Percent, 1));
        Life = Guard.NotNull(life);
    }

    /// <summary>Share of all jobs.</summary>
    public Ratio Share => Ratio.FromDecimalFractions(share);

    /// <summary>Their lifetime.</summary>
    public WeibullLife Life { get; }

    /// <summary>Share and lifetime.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Measure.Percent.Format(share) + " " + Life;
}
