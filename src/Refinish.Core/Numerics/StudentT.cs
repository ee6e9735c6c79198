using System;

namespace Refinish.Numerics;

/// <summary>
/// Student's t. Not InvCDF of MathNet.Numerics, which looks between −800 and 800 only and so throws for one degree of freedom from 99.92 % on.
/// </summary>
internal static class StudentT
{
    /// <summary>The t that is exceeded on neither side with the given chance.</summary>
    /// <param name="confidence">More than 0 and less than 1.</param>
    /// <param name="freedom">Degrees of freedom, at least 1.</param>
    public static double Quantile(double confidence, int freedom)
    {
        double outside = 1 - confidence;
        double high = 1;
        while (Tails(high, freedom) > outside)
        {
            high *= 2;
        }

        // By the logarithm, since a tail falls over many powers of ten.
        return Roots.Rising((outside, freedom), static (given, t) => Math.Log(given.outside / Tails(t, given.freedom)), high > 1 ? high / 2 : 0, high);
    }

    // The chance of less than −t or more than t.
    private static double Tails(double t, double freedom) => Special.Beta(freedom / 2, 0.5, freedom / (freedom + (t * t)));
}
