using System;

namespace Refinish.Numerics;

/// <summary>
/// The one minimiser of the library, for one minimum between two ends: parabolas through the last three points, and the golden section
/// where they do not help. R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 5 (from memory, unverified).
/// </summary>
/// <remarks>
/// Not GoldenSectionMinimizer of MathNet.Numerics, which never interpolates and allocates an objective with every value.
/// </remarks>
internal static class Minimum
{
    // (3 − √5)/2.
    private const double Golden = 0.38196601125010515;

    // √ε: nearer than this to a minimum its values do not differ.
    private const double Place = 1.5e-8;

    /// <summary>Where the function is least, to half of the digits of a double: nearer places have the same value.</summary>
    /// <param name="function">The function, with one minimum between the ends.</param>
    /// <param name="low">The lower end; it is not itself looked at.</param>
    /// <param name="high">The upper end; likewise.</param>
    public static double Between<T>(T function, double low, double high)
        where T : struct, IFunction
    {
        // x is the best place, w the second best, v the one that w replaced.
        double x = low + (Golden * (high - low));
        double w = x;
        double v = x;
        double atX = function.At(x);
        double atW = atX;
        double atV = atX;
        double floor = 1e-3 * Place * (high - low);
        double step = 0;
        double before = 0;
        while (true)
        {
            double middle = low + ((high - low) / 2);
            double near = (Place * Math.Abs(x)) + floor;
            if (Math.Abs(x - middle) <= (2 * near) - ((high - low) / 2))
            {
                return x;
            }

            double r = (x - w) * (atX - atV);
            double q = (x - v) * (atX - atW);
            double p = ((x - v) * q) - ((x - w) * r);
            q = 2 * (q - r);
            p = q > 0 ? -p : p;
            q = Math.Abs(q);
            if (Math.Abs(before) > near && Math.Abs(p) < Math.Abs(q * before / 2) && p > q * (low - x) && p < q * (high - x))
            {
                before = step;
                step = p / q;
                double there = x + step;
                step = there - low < 2 * near || high - there < 2 * near ? Signed(near, middle - x) : step;
            }
            else
            {
                before = x < middle ? high - x : low - x;
                step = Golden * before;
            }

            double u = x + (Math.Abs(step) >= near ? step : Signed(near, step));
            double atU = function.At(u);
            if (atU <= atX)
            {
                (low, high) = u < x ? (low, x) : (x, high);
                (v, w, x) = (w, x, u);
                (atV, atW, atX) = (atW, atX, atU);
            }
            else
            {
                (low, high) = u < x ? (u, high) : (low, u);
                if (atU <= atW || w == x)
                {
                    (v, w) = (w, u);
                    (atV, atW) = (atW, atU);
                }
                else if (atU <= atV || v == x || v == w)
                {
                    (v, atV) = (u, atU);
                }
            }
        }
    }

    private static double Signed(double size, double sign) => sign < 0 ? -size : size;
}
