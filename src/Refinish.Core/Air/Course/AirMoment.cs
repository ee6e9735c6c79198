namespace Refinish.Air;

/// <summary>A moment, or a window that ends there, with the airborne part of each term then, or its time integral over the window.</summary>
internal sealed class AirMoment(double at, double length, double[] parts)
{
    public double At => at;

    public double Length => length;

    /// <summary>The superposition of all terms.</summary>
    public double Sum(double[] weights)
    {
        double sum = 0;
        for (int i = 0; i < parts.Length; i++)
        {
            sum += weights[i] * parts[i];
        }

        return sum;
    }
}
