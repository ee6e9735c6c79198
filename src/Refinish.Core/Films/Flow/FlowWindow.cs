using System;
using System.Collections.Generic;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// The window of wet films that level before they sag: a ripple needs a least film to level, the slope allows a most film, and both
/// share the fluidity Φ that the film has before it sets.
/// </summary>
/// <remarks>
/// <para>Least film: h_lev = (C/Φ)^⅓ with C = 3 λ⁴ ln(1/ε)/(16 π⁴ σ) (Orchard, shallow film, ripple left ε). Most film: h_sag = h_y +
/// √(2 L/(ρ g sin α Φ)), h_y = τ_y/(ρ g sin α). Without yield stress the window closes at Φ* = (2L/(ρ g sin α))³/C²: above it no film
/// levels without sagging beyond L. A wait between thinner coats, faster solvent or a shorter ripple (finer spray) opens it.</para>
/// <para>A screening number: the coating is taken as one viscosity at a time, the film as even, and what counts as a sag or as level is
/// the caller's. Calibrate Φ with <see cref="FluidityFromSag"/> from a film that was seen to sag on a vertical panel.</para>
/// </remarks>
/// <example><code>
/// FlowWindow window = new()
/// {
///     Fluidity = 200, Slope = Angle.FromDegrees(90), Density = Density.FromGramsPerMilliliter(1.1), SagAllowed = Length.FromMillimeters(5),
///     SurfaceTension = ForcePerLength.FromMillinewtonsPerMeter(28), Wavelength = Length.FromMillimeters(3), RippleLeft = 0.1,
/// };
/// Length least = window.LeastFilm;          // 40.0 µm
/// Length? most = window.MostFilm;           // 68.1 µm
/// </code></example>
public sealed record FlowWindow
{
    private static readonly Source Sagging = Source.Derived("surface of a thin film on a slope that creeps the allowed distance before it sets");

    private readonly double fluidity;
    private readonly double rippleLeft;

    /// <summary>Φ = ∫ dt/η of the film until it sets, in 1/Pa, 0.001 to 10⁷; see <see cref="ViscosityHistory.Fluidity"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double Fluidity { get => fluidity; init => fluidity = Guard.Within(value, FlowFigures.Fluidities); }

    /// <summary>Slope from level, 0 (a floor) to 90° (a wall).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Angle Slope { get; init => field = Guard.Checked(value, FlowRanges.Slope); }

    /// <summary>Density of the wet coating, 0.5 to 3 g/mL.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Density Density { get; init => field = Guard.Checked(value, FlowRanges.Density); }

    /// <summary>How far the surface may creep without being seen as a sag, 0.1 to 100 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length SagAllowed { get; init => field = Guard.Checked(value, FlowFigures.Sags); }

    /// <summary>Surface tension of the wet coating, 5 to 100 mN/m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required ForcePerLength SurfaceTension { get; init => field = Guard.Checked(value, FlowRanges.Tension); }

    /// <summary>The ripple that has to level, crest to crest, 0.05 to 100 mm; that of spray is of some millimetres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Wavelength { get; init => field = Guard.Checked(value, FlowRanges.Wavelength); }

    /// <summary>Part of the ripple that may be left, 0.001 to 0.99.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double RippleLeft { get => rippleLeft; init => rippleLeft = Guard.Within(value, FlowFigures.Ripples); }

    /// <summary>Yield stress, 0 to 1000 Pa; none unless given. With one the fluidity is that of the plastic viscosity.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Pressure YieldStress { get; init => field = Guard.Checked(value, FlowRanges.YieldStress); }

    /// <summary>The thinnest wet film that levels.</summary>
    public Length LeastFilm => Length.FromMeters(Least().Value);

    /// <summary>
    /// The wet limit of this slope: the thickest film that does not sag beyond what is allowed; <see langword="null"/> on a level
    /// surface, which has none.
    /// </summary>
    public Length? MostFilm => Slope.Radians > 0 ? Length.FromMeters(Most().Value) : null;

    /// <summary>Whether some film levels and does not sag.</summary>
    public bool IsOpen => Slope.Radians == 0 || Least().Value <= Most().Value;

    /// <summary>
    /// The fluidity at which the window closes, in 1/Pa; <see langword="null"/> on a level surface and with a yield stress, where no
    /// closed form holds.
    /// </summary>
    public double? ClosingFluidity => Slope.Radians > 0 && YieldStress.Pascals == 0 ? Closing().Value : null;

    /// <summary>The one film that is left when it closes; <see langword="null"/> where there is no closing fluidity.</summary>
    public Length? ClosingFilm => ClosingFluidity is null ? null : Length.FromMeters(LastFilm().Value);

    /// <summary>Height from mean to crest that the yield stress holds up in the least film; zero without one.</summary>
    public Length HeldRipple => Length.FromMeters(Held().Value);

    /// <summary>Why no film will do, with both numbers; <see langword="null"/> when one will.</summary>
    public string? Objection => IsOpen
        ? null
        : "no window: a " + Measure.Length.Format(Wavelength.Meters) + " ripple levels from "
        + Measure.Film.Format(Least().Value, DisplayUnits.Si, 3) + " wet on, and at "
            + Measure.Angle.Format(Slope.Radians, DisplayUnits.Si, 3) + " the film sags above "
            + Measure.Film.Format(Most().Value, DisplayUnits.Si, 3) + ": expect orange peel below, runs above, both between";

    /// <summary>
    /// The fluidity of a coating, from a film that was seen to creep on a slope until it set: Φ = 2 L/(ρ g sin α h²). No yield stress.
    /// </summary>
    /// <param name="film">Wet film, from 1 µm to 5 mm.</param>
    /// <param name="sag">How far its surface crept, 0.1 to 100 mm.</param>
    /// <param name="density">Density of the wet coating, 0.5 to 3 g/mL.</param>
    /// <param name="slope">Slope from level, 1 to 90°.</param>
    /// <returns>Φ in 1/Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static double FluidityFromSag(Length film, Length sag, Density density, Angle slope)
    {
        double h = Guard.Within(film, FlowRanges.Film);
        double l = Guard.Within(sag, FlowFigures.Sags);
        double rho = Guard.Within(density, FlowRanges.Density);
        double alpha = Guard.Within(slope, Bounds.Between(Math.PI / 180, Math.PI / 2, Measure.Angle));
        return 2 * l / (FlowKernel.Drive(rho, alpha).Value * h * h);
    }

    /// <summary>A wet film against both ends of the window.</summary>
    /// <param name="wetFilm">Wet film, from 1 µm to 5 mm.</param>
    /// <returns>Two comparisons; on a level surface, where nothing sags, only the first.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public IReadOnlyList<LimitComparison> Judge(Length wetFilm)
    {
        double h = Guard.Within(wetFilm, FlowRanges.Film);
        LimitComparison levels = new(
            "wet film against the film that levels", h, Least().Value, LimitSense.AtLeast, Measure.Film, FlowKernel.Orchard,
            "a wetter coat, slower solvent, or finer spray");
        return new ValueList<LimitComparison>(Slope.Radians == 0
            ? [levels]
            : [levels, new("wet film against the film that sags", h, Most().Value, LimitSense.AtMost, Measure.Film, Sagging,
                "two thinner coats with a flash between, or faster solvent")]);
    }

    /// <summary>How the window follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of(
        "Levels before it sags",
        [
            Least, Held,
            .. Trace.When(Slope.Radians > 0, Most),
            .. Trace.When(ClosingFluidity is not null, Closing, LastFilm),
        ]);

    /// <summary>The window in one line, in metric units.</summary>
    /// <returns>Text such as <c>40 µm to 68.1 µm wet at 90°</c>.</returns>
    public override string ToString() => Objection ?? (Measure.Film.Format(Least().Value, DisplayUnits.Si, 3)
        + (Slope.Radians > 0 ? " to " + Measure.Film.Format(Most().Value, DisplayUnits.Si, 3) : " or more") + " wet at "
        + Measure.Angle.Format(Slope.Radians, DisplayUnits.Si, 3));

    private Num Least(Trace? t = null) =>
        t.Step("least film, levels", "h_lev", Measure.Film, FlowKernel.Orchard, Num.Power(Need(t) / Phi(t), t.Number(1) / 3));

    private Num Held(Trace? t = null) =>
        FlowKernel.HeldRipple(YieldStress.Pascals, Wavelength.Meters, SurfaceTension.NewtonsPerMeter, Least(t), t);

    private Num Most(Trace? t = null) => t.Step("most film, sags", "h_sag", Measure.Film, Sagging,
        (t.Given("τ_y", YieldStress.Pascals, Measure.Pressure) / FlowKernel.Drive(Density.KilogramsPerCubicMeter, Slope.Radians, t))
            + Creeping(Phi(t), t));

    private Num Closing(Trace? t = null) => t.Step("fluidity that closes the window", "Φ*", Measure.Fluidity, Sagging,
        Num.Power(TwoSags(t) / FlowKernel.Drive(Density.KilogramsPerCubicMeter, Slope.Radians, t), 3) / Num.Square(Need(t)));

    private Num LastFilm(Trace? t = null) => t.Step("film when it closes", "h*", Measure.Film, Sagging, Creeping(Closing(t), t));

    /// <summary>The h³Φ that the ripple needs.</summary>
    private Num Need(Trace? t) =>
        3 * Num.Power(t.Given("λ", Wavelength.Meters, Measure.Length), 4) * Num.Ln(1 / t.Given("ε", rippleLeft, Measure.Number))
        / (16 * Num.Power(t.Pi(), 4) * t.Given("σ", SurfaceTension.NewtonsPerMeter, Measure.SurfaceTension));

    /// <summary>The film below the plug whose surface creeps as far as is allowed.</summary>
    private Num Creeping(Num phi, Trace? t) =>
        Num.Sqrt(TwoSags(t) / (FlowKernel.Drive(Density.KilogramsPerCubicMeter, Slope.Radians, t) * phi));

    private Num TwoSags(Trace? t) => 2 * t.Given("L", SagAllowed.Meters, Measure.Length);

    private Num Phi(Trace? t) => t.Given("Φ", fluidity, Measure.Fluidity);
}
