namespace Refinish.Estimating;

/// <summary>How the median of the share that has failed is taken for a place in the order of failures.</summary>
public enum MedianRanks
{
    /// <summary>The exact median: the p at which I_p(j, n + 1 − j) is one half, I the regularised incomplete beta function.</summary>
    Exact,

    /// <summary>Bernard's approximation, (j − 0.3)/(n + 0.4).</summary>
    Bernard,
}
