namespace Refinish.Films;

/// <summary>
/// Flow of thin wet films, in SI. Symbols: ρ density, g gravity, α slope from level, h film, τ_y yield stress, K consistency (η for index
/// 1), n shear index, σ surface tension, λ wavelength.
/// </summary>
internal static class FlowKernel
{
    /// <summary>Standard gravity, m/s²; exact by definition (3rd CGPM, 1901).</summary>
    public const double Gravity = 9.80665;

    /// <summary>Below this k·h the depth factor is summed as a series, where the closed form would lose digits.</summary>
    public const double ShallowWave = 0.1;

    /// <summary>Above this k·h the film is as good as infinitely deep.</summary>
    public const double DeepWave = 40;

    public static readonly Source Orchard = Source.Published(
        "Orchard, On surface levelling in viscous liquids and gels, Applied Scientific Research A11, 1962",
        "shallow film, as given by S. Abbott, Levelling");

    private static readonly Source Plastic =
        Source.FromMemory("ripple whose capillary pressure gradient just reaches the yield stress at the wall");

    /// <summary>ρ g, weight per volume.</summary>
    public static Num Weight(double density, Trace? t) =>
        t.Given("ρ", density, Measure.Density) * t.Given("g", Gravity, Measure.Acceleration);

    /// <summary>Weight along the slope per volume, ρ g sin α.</summary>
    public static Num Drive(double density, double slope, Trace? t = null) =>
        Weight(density, t) * Num.Sin(t.Given("α", slope, Measure.Angle));

    /// <summary>Speed of the surface, n/(n + 1) · (G/K)^(1/n) · H^(1 + 1/n), H the part of the film below the plug.</summary>
    public static Num SurfaceSpeed(Num drive, Num consistency, Num index, Num sheared) => sheared.Value <= 0 || drive.Value <= 0
        ? 0
        : index / (index + 1) * Num.Power(drive / consistency, 1 / index) * Num.Power(sheared, 1 + (1 / index));

    /// <summary>Volume per width and time, u_s (h − H n/(2n + 1)).</summary>
    public static Num Flux(Num surfaceSpeed, Num film, Num sheared, Num index) =>
        surfaceSpeed * (film - (sheared * index / ((2 * index) + 1)));

    /// <summary>3 (sinh x cosh x − x) / (2 x³ (cosh² x + x²)); 1 for a shallow wave.</summary>
    public static Num DepthFactor(Num x)
    {
        // Deep: (sinh x cosh x − x)/(cosh² x + x²) is 1 to the last digit, and the squares would overflow.
        if (x.Value > DeepWave)
        {
            return 3 / (2 * Num.Power(x, 3));
        }

        Num lower = Num.Square(Num.Cosh(x)) + Num.Square(x);
        return x.Value < ShallowWave
            ? (1 + (Num.Square(x) / 5) + (2 * Num.Power(x, 4) / 105) + (Num.Power(x, 6) / 945) + (2 * Num.Power(x, 8) / 51975)) / lower
            : 3 * ((Num.Sinh(x) * Num.Cosh(x)) - x) / (2 * Num.Power(x, 3) * lower);
    }

    /// <summary>Ripple that a yield stress holds, τ_y λ³ / (8 π³ σ h).</summary>
    public static Num HeldRipple(double yieldStress, double wavelength, double tension, Num film, Trace? t) =>
        t.Step("ripple held by the yield stress", "a_y", Measure.Film, Plastic,
            t.Given("τ_y", yieldStress, Measure.Pressure) * Num.Power(t.Given("λ", wavelength, Measure.Length), 3)
                / (8 * Num.Power(t.Pi(), 3) * t.Given("σ", tension, Measure.SurfaceTension) * film));
}
