namespace Refinish;

/// <summary>Mean and deviation of a three-point estimate as network planning takes them. Symbols: a least, m most likely, b greatest
/// value.</summary>
internal static class PertMoments
{
    public static readonly Source Source = Source.FromMemory("three-point estimates of network planning");

    /// <summary>(a + 4m + b)/6.</summary>
    public static double Mean(double a, double m, double b) => (a + (4 * m) + b) / 6;

    /// <summary>(b − a)/6.</summary>
    public static double ClassicDeviation(double a, double b) => (b - a) / 6;
}
