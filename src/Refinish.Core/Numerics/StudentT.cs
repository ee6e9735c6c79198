using System;

namespace Refinish.Numerics;

/// <summary>
/// Student's t. Not InvCDF of MathNet.Numerics, which is 1e-9 off at 99.9 % of one degree of freedom and throws from 99.92 % on, since it
/// looks between −800 and 800 only.
/// </summary>
internal static class StudentT
{
    /// <summary>The t for which the given chance lies between −t and t.</summary>
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
        double low = high > 1 ? high / 2 : 0;
        return Roots.Rising((outside, freedom), static (given, t) => Math.Log(given.outside / Tails(t, given.freedom)), low, high);
    }

    // The chance of less than −t or more than t.
    private static double Tails(double t, double freedom) => Special.Beta(freedom / 2, 0.5, freedom / (freedom + (t * t)));
}
