using UnitsNet;

namespace Refinish.Estimating;

/// <summary>One failure of a <see cref="MedianRankFit"/>: a point on Weibull paper.</summary>
/// <param name="AgeYears">Age at failure, in years.</param>
/// <param name="Order">
/// Its place in the order of failures, counted from 1: a broken number when jobs were lost sight of before, which could have failed
/// earlier or later.
/// </param>
/// <param name="Remaining">Jobs on record that had got to this age, this one among them.</param>
/// <param name="MedianRank">Median of the share that has failed by this age.</param>
public sealed record RankedFailure(double AgeYears, double Order, int Remaining, Ratio MedianRank)
{
    internal double Rank => MedianRank.DecimalFractions;

    /// <summary>Age and rank in one line.</summary>
    /// <returns>Text such as <c>3.4 years: 36.11 %</c>.</returns>
    public override string ToString() => Measure.Years.Format(AgeYears) + ": " + Measure.Percent.Format(Rank, DisplayUnits.Si, 4);
}
