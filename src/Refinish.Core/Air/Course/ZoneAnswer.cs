namespace Refinish.Air;

/// <summary>
/// How a zone answers to a release in the near field: a₁ times a one-box room with air changes μ₁ and a₂ times one with μ₂.
/// </summary>
internal readonly struct ZoneAnswer(double fast, double slow, double sum, double mixed)
{
    /// <summary>a₁.</summary>
    public double Fast => fast;

    /// <summary>a₂.</summary>
    public double Slow => slow;

    /// <summary>a₁ + a₂, without its cancellation.</summary>
    public double Sum => sum;

    /// <summary>a₁μ₂ + a₂μ₁, without its cancellation.</summary>
    public double Mixed => mixed;
}
