using System;

namespace Refinish.Films;

/// <summary>
/// Flow of thin wet films, in SI. Symbols: ρ density, g gravity, α slope from level, h film, τ_y yield stress, K consistency (η for index 1), n shear index,
/// σ surface tension, λ wavelength, k wave number, Φ fluidity over time (1/Pa), L sag distance, ε ripple left per ripple at first.
/// </summary>
internal static class FlowKernel
{
    /// <summary>Standard gravity, m/s²; exact by definition (3rd CGPM, 1901).</summary>
    public const double Gravity = 9.80665;

    /// <summary>Below this k·h the depth factor is summed as a series, where the closed form would lose digits.</summary>
    public const double ShallowWave = 0.1;

    /// <summary>Above this k·h the film is as good as infinitely deep.</summary>
    public const double DeepWave = 40;

    /// <summary>Weight along the slope per volume, ρ g sin α.</summary>
    public static double Drive(double density, double slope) => density * Gravity * Math.Sin(slope);

    /// <summary>Speed of the surface, n/(n + 1) · (G/K)^(1/n) · H^(1 + 1/n), H the part of the film below the plug.</summary>
    public static double SurfaceSpeed(double drive, double consistency, double index, double sheared) =>
        sheared <= 0 || drive <= 0 ? 0 : index / (index + 1) * Math.Pow(drive / consistency, 1 / index) * Math.Pow(sheared, 1 + (1 / index));

    /// <summary>Share of the surface speed that is reached at a height above the wall.</summary>
    public static double Profile(double height, double sheared, double index) =>
        sheared <= 0 ? 0 : height >= sheared ? 1 : 1 - Math.Pow(1 - (height / sheared), 1 + (1 / index));

    /// <summary>Volume per width and time, u_s (h − H n/(2n + 1)).</summary>
    public static double Flux(double surfaceSpeed, double film, double sheared, double index) =>
        surfaceSpeed * (film - (sheared * index / ((2 * index) + 1)));

    /// <summary>3 (sinh x cosh x − x) / (2 x³ (cosh² x + x²)); 1 for a shallow wave.</summary>
    public static double DepthFactor(double x)
    {
        // Deep: (sinh x cosh x − x)/(cosh² x + x²) is 1 to the last digit, and the squares would overflow.
        if (x > DeepWave)
        {
            return 3 / (2 * x * x * x);
        }

        double cosh = Math.Cosh(x);
        double lower = (cosh * cosh) + (x * x);
        if (x < ShallowWave)
        {
            double q = x * x;
            return (1 + (q / 5) + (2 * q * q / 105) + (q * q * q / 945) + (2 * q * q * q * q / 51975)) / lower;
        }

        return 3 * ((Math.Sinh(x) * cosh) - x) / (2 * x * x * x * lower);
    }

    /// <summary>Levelling rate of the shallow wave, σ k⁴ h³ / (3 η).</summary>
    public static double ThinRate(double tension, double wave, double film, double viscosity) =>
        tension * wave * wave * wave * wave * film * film * film / (3 * viscosity);

    /// <summary>Levelling rate that gravity adds on a level surface, ρ g k² h³ / (3 η).</summary>
    public static double GravityRate(double density, double wave, double film, double viscosity) =>
        density * Gravity * wave * wave * film * film * film / (3 * viscosity);

    /// <summary>3 λ⁴ ln(1/ε) / (16 π⁴ σ): the h³Φ that a ripple needs.</summary>
    public static double LevellingNeed(double wavelength, double ripple, double tension) =>
        3 * wavelength * wavelength * wavelength * wavelength * Math.Log(1 / ripple) / (16 * Math.PI * Math.PI * Math.PI * Math.PI * tension);

    /// <summary>Ripple that a yield stress holds, τ_y λ³ / (8 π³ σ h).</summary>
    public static double HeldRipple(double yieldStress, double wavelength, double tension, double film) =>
        yieldStress * wavelength * wavelength * wavelength / (8 * Math.PI * Math.PI * Math.PI * tension * film);
}
