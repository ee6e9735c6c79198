namespace Refinish.Numerics;

/// <summary>
/// The two ends between which a function changes sign. Where it matters on which side of a root a result lies, the caller takes the end on
/// that side.
/// </summary>
internal readonly struct Enclosure(double a, double atA, double b, double atB)
{
    public double Lower => a < b ? a : b;

    public double Upper => a < b ? b : a;

    /// <summary>The end at which the function is nearer to zero.</summary>
    public double Nearest => (atA < 0 ? -atA : atA) < (atB < 0 ? -atB : atB) ? a : b;
}
