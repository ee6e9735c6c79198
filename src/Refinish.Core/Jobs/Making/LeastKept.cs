namespace Refinish.Jobs;

/// <summary>Orders comparisons with an upper limit: what cannot be judged first, then by how many times the limit.</summary>
internal static class LeastKept
{
    public static double Rank(LimitComparison comparison) =>
        -comparison.OfLimit ?? double.NegativeInfinity;
}
