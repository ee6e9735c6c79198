namespace Refinish.Estimating;

/// <summary>Which way the straight line through the failures on Weibull paper is laid by least squares.</summary>
public enum RankLine
{
    /// <summary>The least squares of the ages, on the ranks: the ages are what scatters.</summary>
    AgeOnRank,

    /// <summary>The least squares of the ranks, on the ages.</summary>
    RankOnAge,
}
