using UnitsNet;

namespace Refinish.Estimating;

/// <summary>One failure of a <see cref="MedianRankFit"/>: a point on Weibull paper.</summary>
public sealed record RankedFailure
{
    private readonly double rank;

    internal RankedFailure(double ageYears, double order, int remaining, double rank)
    {
        AgeYears = ageYears;
        Order = order;
        Remaining = remaining;
        this.rank = rank;
    }

    /// <summary>Age at failure, in years.</summary>
    public double AgeYears { get; }

    /// <summary>
    /// Its place in the order of failures, counted from 1: a broken number when jobs were lost sight of before, which could have failed
    /// earlier or later.
    /// </summary>
    public double Order { get; }

    /// <summary>Jobs on record that had got to this age, this one among them.</summary>
    public int Remaining { get; }

    /// <summary>Median of the share that has failed by this age.</summary>
    public Ratio MedianRank => Ratio.FromDecimalFractions(rank);

    internal double Rank => rank;

    /// <summary>Age and rank in one line.</summary>
    /// <returns>Text such as <c>3.4 years: 36.11 %</c>.</returns>
    public override string ToString() => Measure.Years.Format(AgeYears) + ": " + Measure.Percent.Format(rank, DisplayUnits.Si, 4);
}
