namespace Refinish;

/// <summary>
/// Mean and deviation of a three-point estimate as network planning takes them. Symbols: a least, m most likely, b greatest value.
/// </summary>
internal static class PertMoments
{
    public static readonly Source Source = Source.FromMemory("three-point estimates of network planning");

    /// <summary>(a + 4m + b)/6.</summary>
    public static Num Mean(Num a, Num m, Num b) => (a + (4 * m) + b) / 6;

    /// <summary>(b − a)/6.</summary>
    public static Num ClassicDeviation(Num a, Num b) => (b - a) / 6;

    /// <summary>
    /// (µ − a)(b − µ)/7 of the beta distribution with this mean, by the legs to the mode (252 = 6 · 6 · 7): three equal values must not
    /// give a mean beyond them by its last digit, and a negative variance.
    /// </summary>
    public static Num BetaVariance(Num a, Num m, Num b) => ((4 * (m - a)) + (b - a)) * ((4 * (b - m)) + (b - a)) / 252;
}
