using System;
using MathNet.Numerics;

namespace Refinish.Numerics;

/// <summary>
/// Special functions: those of MathNet.Numerics, which are managed code and so the same on every host, and the one that it lacks. Nothing
/// outside this name space refers to that library.
/// </summary>
internal static class Special
{
    /// <summary>Γ(x).</summary>
    public static double Gamma(double x) => SpecialFunctions.Gamma(x);

    /// <summary>ln Γ(x).</summary>
    public static double LogGamma(double x) => SpecialFunctions.GammaLn(x);

    /// <summary>Q(a, x) = Γ(a, x)/Γ(a), the share of a gamma distribution above x.</summary>
    public static double UpperGamma(double a, double x) => SpecialFunctions.GammaUpperRegularized(a, x);

    /// <summary>I_x(a, b), the share of a beta distribution below x.</summary>
    public static double Beta(double a, double b, double x) => SpecialFunctions.BetaRegularized(a, b, x);

    /// <summary>erfc x.</summary>
    public static double Erfc(double x) => SpecialFunctions.Erfc(x);

    /// <summary>
    /// e^(x²) erfc(x) for x ≥ 0, beyond the point where the two factors overflow and underflow; MathNet.Numerics has only the factors.
    /// </summary>
    public static double ScaledErfc(double x)
    {
        if (x < 6)
        {
            return Math.Exp(x * x) * Erfc(x);
        }

        // 1/(x √π) (1 − 1/(2x²) + 3/(2x²)² − …): twenty terms fall below 1e-16 from x = 6 on.
        double z = 1 / (2 * x * x);
        double term = 1;
        double sum = 1;
        for (int k = 1; k <= 20; k++)
        {
            term *= -((2 * k) - 1) * z;
            sum += term;
        }

        return sum / (x * Math.Sqrt(Math.PI));
    }
}
