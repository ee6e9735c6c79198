using System;

namespace Refinish.Numerics;

/// <summary>
/// One step of two differential equations of first order. J. R. Dormand and P. J. Prince, "A family of embedded Runge–Kutta formulae",
/// Journal of Computational and Applied Mathematics 6 (1980) 19: fifth order, with a fourth-order estimate of its error.
/// </summary>
/// <remarks>
/// Not RungeKutta of MathNet.Numerics, whose steps are all of one length without an estimate of their error, and which allocates a vector
/// for every rate.
/// </remarks>
internal static class DormandPrince
{
    /// <summary>A step of h from x and y. Returns the estimate of the error of x plus that of y over <paramref name="scale"/>.</summary>
    public static double Step<T>(ref T motion, double h, double x, double y, double scale, out double nextX, out double nextY)
        where T : struct, IPlaneMotion
    {
        double x1 = motion.Rates(x, y, out double y1);
        double x2 = motion.Rates(x + (h * x1 / 5), y + (h * y1 / 5), out double y2);
        double x3 = motion.Rates(x + (h * ((3 * x1) + (9 * x2)) / 40), y + (h * ((3 * y1) + (9 * y2)) / 40), out double y3);
        double x4 = motion.Rates(
            x + (h * ((44.0 / 45 * x1) - (56.0 / 15 * x2) + (32.0 / 9 * x3))),
            y + (h * ((44.0 / 45 * y1) - (56.0 / 15 * y2) + (32.0 / 9 * y3))),
            out double y4);
        double x5 = motion.Rates(
            x + (h * ((19372.0 / 6561 * x1) - (25360.0 / 2187 * x2) + (64448.0 / 6561 * x3) - (212.0 / 729 * x4))),
            y + (h * ((19372.0 / 6561 * y1) - (25360.0 / 2187 * y2) + (64448.0 / 6561 * y3) - (212.0 / 729 * y4))),
            out double y5);
        double x6 = motion.Rates(
            x + (h * ((9017.0 / 3168 * x1) - (355.0 / 33 * x2) + (46732.0 / 5247 * x3) + (49.0 / 176 * x4) - (5103.0 / 18656 * x5))),
            y + (h * ((9017.0 / 3168 * y1) - (355.0 / 33 * y2) + (46732.0 / 5247 * y3) + (49.0 / 176 * y4) - (5103.0 / 18656 * y5))),
            out double y6);
        nextX = x + (h * ((35.0 / 384 * x1) + (500.0 / 1113 * x3) + (125.0 / 192 * x4) - (2187.0 / 6784 * x5) + (11.0 / 84 * x6)));
        nextY = y + (h * ((35.0 / 384 * y1) + (500.0 / 1113 * y3) + (125.0 / 192 * y4) - (2187.0 / 6784 * y5) + (11.0 / 84 * y6)));
        double x7 = motion.Rates(nextX, nextY, out double y7);
        return Math.Abs(Error(h, x1, x3, x4, x5, x6, x7)) + (Math.Abs(Error(h, y1, y3, y4, y5, y6, y7)) / scale);
    }

    /// <summary>
    /// How long the next step should be after one whose error was this part of what is allowed; not a number counts as far too much.
    /// </summary>
    public static double Next(double h, double error) =>
        double.IsNaN(error) ? 0.25 * h
        : error <= 1 ? h * Math.Min(5, 0.9 * Math.Pow(Math.Max(error, 1e-10), -0.2))
        : h * Math.Max(0.2, 0.9 * Math.Pow(error, -0.2));

    private static double Error(double h, double k1, double k3, double k4, double k5, double k6, double k7) =>
        h * ((71.0 / 57600 * k1) - (71.0 / 16695 * k3) + (71.0 / 1920 * k4) - (17253.0 / 339200 * k5) + (22.0 / 525 * k6)
            - (1.0 / 40 * k7));
}
