using System;
using Refinish.Numerics;

namespace Refinish.Films;

/// <summary>
/// Profiles of single strokes in SI. Symbols: w width of the fan at the surface (m), x distance from the middle of the stroke (m),
/// b exponent of the beta family, σ = w/4 standard deviation of a Gaussian. A profile integrates to one over x, so its unit is 1/m.
/// </summary>
internal static class FanPatternKernel
{
    /// <summary>w = w₀ d / d₀.</summary>
    public static double Width(double width, double distance, double reference) => width * distance / reference;

    /// <summary>The factor in front of the profile: 1/w, 4σ/(w σ √(2π)) or Γ(b + 1/2) / (Γ(b) √π) · 2/w.</summary>
    public static double Factor(FanPatternShape shape, double exponent, double width) => shape switch
    {
        FanPatternShape.Uniform => 1 / width,
        FanPatternShape.Gaussian => 4 / (width * Math.Sqrt(2 * Math.PI)),
        _ => BetaFactor(exponent) / width,
    };

    /// <summary>2 Γ(b + 1/2) / (Γ(b) √π): 4/π for b = 1.5, 1.5 for 2, 1.875 for 3.</summary>
    public static double BetaFactor(double exponent) =>
        2 * Math.Exp(Special.LogGamma(exponent + 0.5) - Special.LogGamma(exponent)) / Math.Sqrt(Math.PI);

    public static double Profile(FanPatternShape shape, double exponent, double width, double x)
    {
        double u = 2 * x / width;
        double inside = 1 - (u * u);
        double form = shape switch
        {
            FanPatternShape.Gaussian => Math.Exp(-2 * u * u),
            FanPatternShape.Uniform => inside > 0 ? 1 : 0,
            _ => inside > 0 ? Math.Pow(inside, exponent - 1) : 0,
        };
        return Factor(shape, exponent, width) * form;
    }
}
