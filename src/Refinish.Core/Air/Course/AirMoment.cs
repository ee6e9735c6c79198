namespace Refinish.Air;

/// <summary>
/// A moment, or a window that ends there, with the airborne part of each term then, or its time integral over the window.
/// </summary>
internal sealed class AirMoment(double at, double[] parts)
{
    public double At => at;

    /// <summary>The superposition of all terms.</summary>
    public Num Sum(TermWeights weights) => weights.Sum(parts, static (parts, i) => parts[i]);
}
