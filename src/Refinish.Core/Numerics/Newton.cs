using System;

namespace Refinish.Numerics;

/// <summary>
/// The one Newton of the library: steps along the slope, and half of the bracket where such a step would leave it. For functions whose
/// slope costs little beside their value.
/// </summary>
/// <remarks>
/// Not RobustNewtonRaphson of MathNet.Numerics, which takes two delegates, so that value and slope share nothing, has no start, and one
/// absolute accuracy for all.
/// </remarks>
internal static class Newton
{
    /// <summary>The number at which a rising function passes zero.</summary>
    /// <param name="function">The function with its slope.</param>
    /// <param name="low">The lower end, at which the function is not above zero.</param>
    /// <param name="high">The upper end, at which it is not below zero.</param>
    /// <param name="start">Where to begin, between the ends.</param>
    /// <param name="absolute">The last step is at most this and <paramref name="relative"/> of the root. What is left is about its square
    /// over the root.</param>
    /// <param name="relative">See <paramref name="absolute"/>; at least 4e-16 where that is zero, or rounding would never let it
    /// end.</param>
    public static double Rising<T>(T function, double low, double high, double start, double absolute, double relative)
        where T : struct, ISlopedFunction
    {
        double x = start;

        // A root of some order takes many steps; beyond a thousand only rounding moves it to and fro.
        for (int i = 0; i < 1000; i++)
        {
            double value = function.At(x, out double slope);
            if (value < 0)
            {
                low = x;
            }
            else
            {
                high = x;
            }

            double next = x - (value / slope);
            if (!(next >= low && next <= high))
            {
                next = low + ((high - low) / 2);
            }

            double step = Math.Abs(next - x);
            x = next;

            // Written so that NaN, as of a variable that only has to be written down, ends it.
            if (!(step > absolute + (relative * Math.Abs(x))))
            {
                return x;
            }
        }

        return x;
    }
}
