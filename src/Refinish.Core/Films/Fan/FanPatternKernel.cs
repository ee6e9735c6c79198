using System;
using Refinish.Numerics;

namespace Refinish.Films;

/// <summary>
/// Single strokes in SI. Symbols: w width of the fan at the surface (m), x distance from the middle of the stroke (m), b exponent of the
/// beta family.
/// </summary>
internal static class FanPatternKernel
{
    /// <summary>w = w₀ d / d₀.</summary>
    public static Num Width(Num width, Num distance, Num reference) => width * distance / reference;

    /// <summary>2 Γ(b + 1/2) / (Γ(b) √π): 4/π for b = 1.5, 1.5 for 2, 1.875 for 3.</summary>
    public static double BetaFactor(double exponent) =>
        2 * Math.Exp(Special.LogGamma(exponent + 0.5) - Special.LogGamma(exponent)) / Math.Sqrt(Math.PI);

    /// <summary>What a stroke leaves beside its middle, as a part of what it leaves there.</summary>
    public static double Relative(FanPatternShape shape, double exponent, double width, double x)
    {
        double u = 2 * x / width;
        double inside = 1 - (u * u);
        return shape switch
        {
            FanPatternShape.Gaussian => Math.Exp(-2 * u * u),
            FanPatternShape.Uniform => inside > 0 ? 1 : 0,
            _ => inside > 0 ? Math.Pow(inside, exponent - 1) : 0,
        };
    }
}
