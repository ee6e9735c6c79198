using System;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// A wet film that loses its solvent and thickens as it does: what it sags and how much of a ripple is left by the time it sets.
/// </summary>
/// <remarks>
/// Volatile part h_v = h_v0 e^(−t/τ), solids stay, φ = h_s/h, η = η₀ e^(B (φ − φ₀)). Then Φ = ∫ dt/η, sag = ½ ρ g sin α ∫ h² dt/η, and
/// the ripple left is exp(−16 π⁴ σ/(3 λ⁴) ∫ h³ dt/η). One rate for all solvent, in all depths: a real film loses it first from its
/// surface, then by diffusion, and thick films dry slower than this says. B, τ and η₀ are fitted to a trial (a sag that was seen, a
/// viscosity of the reduced and the unreduced coating), they stand on no data sheet.
/// </remarks>
/// <example><code>
/// DryingFilm film = new()
/// {
///     WetFilm = Length.FromMicrometers(75), Solids = Ratio.FromPercent(41), Viscosity = DynamicViscosity.FromPascalSeconds(0.25),
///     SolventTime = TimeSpan.FromSeconds(60), Thickening = 16, Until = TimeSpan.FromHours(1), Slope = Angle.FromDegrees(90),
///     Density = Density.FromGramsPerMilliliter(1.1), SurfaceTension = ForcePerLength.FromMillinewtonsPerMeter(28), Wavelength = Length.FromMillimeters(3),
/// };
/// double sag = film.Sag.Millimeters;                 // 1.46
/// double left = film.RippleLeft;                     // 0.038
/// </code></example>
public sealed record DryingFilm
{
    private static readonly Source Model = Source.Derived("one rate of solvent loss and a viscosity exponential in the solids; film flow integrated over the time");

    /// <summary>Wet film as laid, from 1 µm to 5 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length WetFilm { get; init => field = Guard.Checked(value, FlowRanges.Film); }

    /// <summary>Volume solids φ₀ of the coating as it lies on the surface, reducer and flight losses included, 5 to 100 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio Solids { get; init => field = Guard.Checked(value, Bounds.Between(0.05, 1, Measure.Percent)); }

    /// <summary>Viscosity η₀ as laid, at slow shear, from 0.1 mPa·s to 10 000 Pa·s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required DynamicViscosity Viscosity { get; init => field = Guard.Checked(value, FlowRanges.Viscosity); }

    /// <summary>Time τ in which the solvent left falls to 1/e, from 1 s to 1 day.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required TimeSpan SolventTime
    {
        get;
        init => field = Durations.FromSeconds(Guard.Within(value, Bounds.Between(1, 86400, Measure.Seconds)));
    }

    /// <summary>B: by how many e-folds the viscosity would rise from no solids to all solids, 0 to 40.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double Thickening { get; init => field = Guard.Within(value, Bounds.Between(0, 40, Measure.Number)); }

    /// <summary>When the film has set and nothing moves any more, more than 0 and at most 7 days.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required TimeSpan Until { get; init => field = Durations.FromSeconds(Guard.Within(value, FlowRanges.Duration)); }

    /// <summary>Slope from level, 0 (a floor) to 90° (a wall).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Angle Slope { get; init => field = Guard.Checked(value, FlowRanges.Slope); }

    /// <summary>Density of the wet coating, 0.5 to 3 g/mL.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Density Density { get; init => field = Guard.Checked(value, FlowRanges.Density); }

    /// <summary>Surface tension of the wet coating, 5 to 100 mN/m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required ForcePerLength SurfaceTension { get; init => field = Guard.Checked(value, FlowRanges.Tension); }

    /// <summary>The ripple, crest to crest, 0.05 to 100 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Wavelength { get; init => field = Guard.Checked(value, FlowRanges.Wavelength); }

    /// <summary>Φ = ∫ dt/η until it sets, in 1/Pa.</summary>
    public double Fluidity => Fluid().Value;

    /// <summary>How far the surface creeps down the slope.</summary>
    public Length Sag => Length.FromMeters(Creep().Value);

    /// <summary>Part of the ripple that is left, 0 to 1.</summary>
    public double RippleLeft => Left().Value;

    /// <summary>Film when it sets.</summary>
    public Length FilmAtEnd => Length.FromMeters(FilmLeft().Value);

    /// <summary>Viscosity when it sets. It only counts that it is large: one that is not means the film was still moving.</summary>
    public DynamicViscosity ViscosityAtEnd => DynamicViscosity.FromPascalSeconds(Set().Value);

    /// <summary>How the sag and the ripple follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Drying film", FilmLeft, Set, Fluid, Creep, Left);

    /// <summary>The sag and the ripple in one line, in metric units.</summary>
    /// <returns>Text such as <c>75 µm wet: sags 1.46 mm, 3.79 % of the ripple left</c>.</returns>
    public override string ToString() =>
        Measure.Film.Format(WetFilm.Meters) + " wet: sags " + Measure.Length.Format(Sag.Meters, DisplayUnits.Si, 3) + ", "
        + Measure.Percent.Format(RippleLeft, DisplayUnits.Si, 3) + " of the ripple left";

    private Num FilmLeft(Trace? t = null) => t.Step("film when it sets", "h_end", Measure.Film, Model, Film(End(t), t));

    private Num Set(Trace? t = null) => t.Step("viscosity when it sets", "η_end", Measure.DynamicViscosity, Model, Eta(End(t), t));

    private Num Fluid(Trace? t = null) => t.Step("fluidity over time", "Φ", Measure.Fluidity, Model, Moment(0, t));

    private Num Creep(Trace? t = null) =>
        t.Step("sag", "L", Measure.Length, Model, FlowKernel.Drive(Density.KilogramsPerCubicMeter, Slope.Radians, t) / 2 * Moment(2, t));

    private Num Left(Trace? t = null)
    {
        Num pull = 16 * Num.Power(t.Pi(), 4) * t.Given("σ", SurfaceTension.NewtonsPerMeter, Measure.SurfaceTension)
            / (3 * Num.Power(t.Given("λ", Wavelength.Meters, Measure.Length), 4));
        return t.Step("ripple left", "ε", Measure.Number, Model, Num.Exp(-(pull * Moment(3, t))));
    }

    private Num End(Trace? t) => t.Given("t_end", Until.TotalSeconds, Measure.Seconds);

    private Num Film(Num time, Trace? t)
    {
        Num phi = t.Given("φ_0", Solids.DecimalFractions, Measure.Number);
        return t.Given("h_0", WetFilm.Meters, Measure.Film) * (
            phi + ((1 - phi) * Num.Exp(-(time / t.Given("τ", SolventTime.TotalSeconds, Measure.Seconds)))));
    }

    private Num Eta(Num time, Trace? t)
    {
        Num phi = t.Given("φ_0", Solids.DecimalFractions, Measure.Number);
        Num rise = (t.Given("h_0", WetFilm.Meters, Measure.Film) * phi / Film(time, t)) - phi;
        return t.Given("η_0", Viscosity.PascalSeconds, Measure.DynamicViscosity) * Num.Exp(t.Given("B", Thickening, Measure.Number) * rise);
    }

    // ∫ h^power dt/η. Panels that grow with the time: the viscosity changes in the first folds and hardly after.
    private Num Moment(int power, Trace? t)
    {
        Num sum = 0;
        double start = 0;
        double fold = 4;
        for (int panel = 1; start < Until.TotalSeconds; panel++, fold *= 4)
        {
            double end = fold <= 64 ? Math.Min(fold * SolventTime.TotalSeconds, Until.TotalSeconds) : Until.TotalSeconds;
            sum += Num.Integral(
                "t",
                t.Given("t_", panel - 1, start, Measure.Seconds),
                t.Given("t_", panel, end, Measure.Seconds),
                (Film: this, power, t),
                static (in of, time) => (of.power == 0 ? 1 : Num.Power(of.Film.Film(time, of.t), of.power)) / of.Film.Eta(time, of.t));
            start = end;
        }

        return sum;
    }
}
