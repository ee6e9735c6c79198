using System;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// How fast a ripple of one wavelength levels out of a wet film under surface tension (Orchard), shallow and for any depth, and what a
/// yield stress leaves of it.
/// </summary>
/// <remarks>
/// <para>A small ripple decays as exp(−t/T). Shallow film: 1/T = σ k⁴ h³/(3 η) with k = 2π/λ, so that T = 3 η (λ/2π)⁴/(σ h³), and the
/// half-time is T ln 2: S. E. Orchard, Applied Scientific Research A11 (1962), as given by S. Abbott, "Levelling" (read there). Any
/// depth: 1/T = σ k/(2 η) · (sinh kh cosh kh − kh)/(cosh² kh + (kh)²), from memory; the shallow form times a depth factor that is 1 for
/// long waves. On a level floor gravity helps: + ρ g k² h³/(3 η) (long waves).</para>
/// <para>A yield stress leaves a ripple of about τ_y λ³/(8 π³ σ h) (from memory). Gradients of surface tension as solvent leaves,
/// substrate texture and ripples as high as the film is thick are outside this.</para>
/// </remarks>
/// <example><code>
/// Levelling levelling = new()
/// {
///     Wavelength = Length.FromMillimeters(3), Film = Length.FromMicrometers(75),
///     SurfaceTension = ForcePerLength.FromMillinewtonsPerMeter(28), Viscosity = DynamicViscosity.FromPascalSeconds(0.3),
/// };
/// double seconds = levelling.ThinHalfTime.Seconds;        // 2.745
/// </code></example>
public sealed record Levelling
{
    private static readonly Source AnyDepth = Source.FromMemory("Orchard 1962, film of any depth; tends to the shallow form");

    /// <summary>Crest to crest, from 0.05 to 100 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Wavelength { get; init => field = Guard.Checked(value, FlowRanges.Wavelength); }

    /// <summary>Mean wet film, from 1 µm to 5 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Film { get; init => field = Guard.Checked(value, FlowRanges.Film); }

    /// <summary>Surface tension of the wet coating, 5 to 100 mN/m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required ForcePerLength SurfaceTension { get; init => field = Guard.Checked(value, FlowRanges.Tension); }

    /// <summary>Viscosity at slow shear, from 0.1 mPa·s to 10 000 Pa·s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required DynamicViscosity Viscosity { get; init => field = Guard.Checked(value, FlowRanges.Viscosity); }

    /// <summary>Yield stress, 0 to 1000 Pa; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Pressure YieldStress { get; init => field = Guard.Checked(value, FlowRanges.YieldStress); }

    /// <summary>
    /// Density of the wet coating, 0.5 to 3 g/mL, for a level floor where gravity helps; <see langword="null"/> leaves gravity out.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Density? DensityOnFloor
    {
        get;
        init => field = value is Density d
            ? Guard.Checked(d, FlowRanges.Density, nameof(DensityOnFloor)) : null;
    }

    /// <summary>k h, 2π times film over wavelength: well below 1 the film is shallow.</summary>
    public double DepthNumber => Depth().Value;

    /// <summary>Time in which the ripple falls to 1/e in a shallow film.</summary>
    public Duration ThinTimeConstant => Duration.FromSeconds(Thin().Value);

    /// <summary>Time in which the ripple halves in a shallow film.</summary>
    public Duration ThinHalfTime => Duration.FromSeconds(ThinHalf().Value);

    /// <summary>By what the rate in a film of this depth differs from the shallow film's: 1 for long waves, less for short ones.</summary>
    public double DepthFactor => Factor().Value;

    /// <summary>Time in which the ripple falls to 1/e, with the depth and, where asked for, gravity.</summary>
    public Duration TimeConstant => Duration.FromSeconds(Time().Value);

    /// <summary>Time in which the ripple halves, with the depth and, where asked for, gravity.</summary>
    public Duration HalfTime => Duration.FromSeconds(Half().Value);

    /// <summary>Height from mean to crest that the yield stress holds up; zero without one.</summary>
    public Length HeldRipple => Length.FromMeters(Held().Value);

    /// <summary>
    /// Part of the ripple that is left after a fluidity Φ = ∫ dt/η, with the depth and, where asked for, gravity. The yield stress is
    /// left out.
    /// </summary>
    /// <param name="fluidity">Φ in 1/Pa, 0 to 10⁹.</param>
    /// <returns>The part, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double RippleLeft(double fluidity) =>
        Math.Exp(-(Viscosity.PascalSeconds * Guard.Within(fluidity, Bounds.NotNegative(Measure.Fluidity, 1e9)) / Time().Value));

    /// <summary>How the times follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Levelling", Wave, Depth, Thin, ThinHalf, Factor, Time, Half, Held);

    /// <summary>The half-time in one line, in metric units.</summary>
    /// <returns>Text such as <c>3 mm ripple in 75 µm: halves in 2.745 s</c>.</returns>
    public override string ToString() =>
        Measure.Length.Format(Wavelength.Meters) + " ripple in " + Measure.Film.Format(Film.Meters) + ": halves in "
        + Measure.Seconds.Format(Half().Value, DisplayUnits.Si, 4);

    private Num Wave(Trace? t = null) => t.Step("wave number", "k", Measure.WaveNumber, FlowKernel.Orchard, 2 * t.Pi() / Crest(t));

    private Num Depth(Trace? t = null) => t.Step("depth number", "kh", Measure.Number, FlowKernel.Orchard, Wave(t) * Height(t));

    private Num Thin(Trace? t = null) => t.Step("time to 1/e, shallow", "T_0", Measure.Seconds, FlowKernel.Orchard,
        3 * Eta(t) * Num.Power(Crest(t) / (2 * t.Pi()), 4)
            / (t.Given("σ", SurfaceTension.NewtonsPerMeter, Measure.SurfaceTension) * Num.Power(Height(t), 3)));

    private Num ThinHalf(Trace? t = null) =>
        t.Step("half-time, shallow", "T_½0", Measure.Seconds, FlowKernel.Orchard, Num.Ln(t.Number(2)) * Thin(t));

    private Num Factor(Trace? t = null) => t.Step("depth factor", "F", Measure.Number, AnyDepth, FlowKernel.DepthFactor(Depth(t)));

    private Num Time(Trace? t = null)
    {
        Num rate = Factor(t) / Thin(t);
        rate = DensityOnFloor?.KilogramsPerCubicMeter is double rho
            ? rate + (FlowKernel.Weight(rho, t) * Num.Square(Wave(t)) * Num.Power(Height(t), 3) / (3 * Eta(t)))
            : rate;
        return t.Step("time to 1/e", "T", Measure.Seconds, AnyDepth, 1 / rate);
    }

    private Num Half(Trace? t = null) => t.Step("half-time", "T_½", Measure.Seconds, AnyDepth, Num.Ln(t.Number(2)) * Time(t));

    private Num Held(Trace? t = null) =>
        FlowKernel.HeldRipple(YieldStress.Pascals, Wavelength.Meters, SurfaceTension.NewtonsPerMeter, Height(t), t);

    private Num Crest(Trace? t) => t.Given("λ", Wavelength.Meters, Measure.Length);

    private Num Height(Trace? t) => t.Given("h", Film.Meters, Measure.Film);

    private Num Eta(Trace? t) => t.Given("η", Viscosity.PascalSeconds, Measure.DynamicViscosity);
}
