using System;

namespace Refinish;

/// <summary>The one root finder of the library: a rising function between two ends, without allocation.</summary>
internal static class Roots
{
    /// <summary>
    /// The number at which a rising function passes zero. Chandrupatla's method: inverse quadratic interpolation where the last three points allow it,
    /// bisection where they do not, so that it never needs more than a few times the steps of bisection and mostly needs eight.
    /// </summary>
    /// <remarks>T. R. Chandrupatla, Advances in Engineering Software 28 (1997) 145; from memory, the bracket is kept at every step whatever the interpolation says.</remarks>
    /// <param name="state">What the function needs, so that no closure is made.</param>
    /// <param name="rising">The function; not above zero at <paramref name="low"/>, not below zero at <paramref name="high"/>.</param>
    /// <param name="low">The lower end.</param>
    /// <param name="high">The upper end.</param>
    public static double Rising<T>(T state, Func<T, double, double> rising, double low, double high)
    {
        double b = low;
        double fb = rising(state, low);
        double a = high;
        double fa = rising(state, high);
        double c = a;
        double fc = fa;
        double t = 0.5;
        for (int i = 0; i < 200; i++)
        {
            double x = a + (t * (b - a));
            double fx = rising(state, x);
            if (Math.Sign(fx) == Math.Sign(fa))
            {
                c = a;
                fc = fa;
            }
            else
            {
                c = b;
                fc = fb;
                b = a;
                fb = fa;
            }

            a = x;
            fa = fx;
            bool first = Math.Abs(fa) < Math.Abs(fb);
            double best = first ? a : b;
            double smallest = 2.5e-16 * Math.Abs(best);
            double part = smallest / Math.Abs(b - a);
            if ((first ? fa : fb) == 0 || part > 0.5 || b == a)
            {
                return best;
            }

            double xi = (a - b) / (c - b);
            double phi = (fa - fb) / (fc - fb);
            double eta = 1 - phi;
            bool smooth = phi * phi < xi && eta * eta < 1 - xi;
            t = smooth ? (fa / (fb - fa) * fc / (fb - fc)) + ((c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb)) : 0.5;
            t = Math.Min(1 - part, Math.Max(part, t));
        }

        return Math.Abs(fa) < Math.Abs(fb) ? a : b;
    }
}
