namespace Refinish.Fixtures;

/// <summary>What a ± on a tape reading means.</summary>
public enum ReadingSpread
{
    /// <summary>Anywhere within ± with equal chance, as half of the division a reading is rounded to: u = a / √3.</summary>
    Rectangular,

    /// <summary>Within ±, the middle likelier than the ends: u = a / √6.</summary>
    Triangular,

    /// <summary>Two standard deviations, within which about 95 % fall: u = a / 2.</summary>
    TwoSigma,
}
