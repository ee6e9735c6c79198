using System;
using Refinish.Numerics;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// A wet film on a slope at one instant: how fast each depth of it creeps down, how much passes, and the thickest film that its yield
/// stress would hold.
/// </summary>
/// <remarks>
/// <para>Steady flow of a thin film under its own weight, no slip at the wall, no stress at the surface. With G = ρ g sin α and the
/// plug of thickness h_y = τ_y/G at the surface, H = h − h_y: u_s = n/(n+1) · (G/K)^(1/n) · H^(1+1/n), u(y) = u_s (1 − (1 −
/// y/H)^(1+1/n)) below the plug, flow per width u_s (h − H n/(2n+1)). For n = 1 and no yield stress this is Nusselt's film: u_s = ρ g
/// sin α h²/(2η), mean ρ g sin α h²/(3η).</para>
/// <para>A film reaches this flow within about ρh²/η, microseconds here, so that it holds at each instant of a drying film. Surface
/// tension, edges and drips are left out: a bead at a lower edge gathers what this lets through.</para>
/// </remarks>
/// <example><code>
/// SlopeFlow flow = new(Length.FromMicrometers(100), Angle.FromDegrees(90), Density.FromKilogramsPerCubicMeter(1300),
///     FilmRheology.Newtonian(DynamicViscosity.FromPascalSeconds(0.5)));
/// double surface = flow.SurfaceSpeed.MillimetersPerSecond;        // 0.1275
/// SlopeFlow back = SlopeFlow.Find(flow.FlowPerWidth, flow.Slope, flow.Density, flow.Rheology);
/// double film = back.Film.Micrometers;                            // 100
/// </code></example>
public sealed record SlopeFlow
{
    private static readonly Source Balance = Source.Derived("balance of weight and shear stress in a thin film; for a Newtonian liquid Nusselt (1916)");

    private const double Thickest = 5e-3;

    // From memory, unverified: a falling film ripples from about 20 on and is turbulent from about 1500 on.
    private const double Turbulent = 1500;

    private static readonly Bounds Flows = Bounds.Positive(Measure.FilmFlux, 1e-2);
    private static readonly Bounds Steep = Bounds.Above(0, Math.PI / 2, Measure.Angle);

    /// <summary>Takes the film.</summary>
    /// <param name="film">Wet film, more than 0 and at most 5 mm.</param>
    /// <param name="slope">Slope from level, 0 (a floor) to 90° (a wall).</param>
    /// <param name="density">Density of the wet coating, 0.5 to 3 g/mL.</param>
    /// <param name="rheology">How it resists shear.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public SlopeFlow(Length film, Angle slope, Density density, FilmRheology rheology)
    {
        Film = Guard.Checked(film, Bounds.Positive(Measure.Film, Thickest));
        Slope = Guard.Checked(slope, FlowRanges.Slope);
        Density = Guard.Checked(density, FlowRanges.Density);
        Rheology = Guard.NotNull(rheology);
    }

    /// <summary>Wet film.</summary>
    public Length Film { get; }

    /// <summary>Slope from level.</summary>
    public Angle Slope { get; }

    /// <summary>Density of the wet coating.</summary>
    public Density Density { get; }

    /// <summary>How it resists shear.</summary>
    public FilmRheology Rheology { get; }

    /// <summary>Shear stress at the wall, ρ g sin α h.</summary>
    public Pressure WallStress => Pressure.FromPascals(Wall().Value);

    /// <summary>
    /// The thickest film that the yield stress holds still, τ_y/(ρ g sin α): zero without yield stress, <see langword="null"/> on a level
    /// surface, where every film stays.
    /// </summary>
    public Length? CriticalFilm => IsSloped ? Length.FromMeters(Critical().Value) : null;

    /// <summary>Whether the film stands still.</summary>
    public bool IsHeld => Sheared().Value <= 0;

    /// <summary>Speed of the surface, and of the plug when there is one.</summary>
    public Speed SurfaceSpeed => Speed.FromMetersPerSecond(Surface().Value);

    /// <summary>Mean speed over the film.</summary>
    public Speed MeanSpeed => Speed.FromMetersPerSecond(Mean().Value);

    /// <summary>Volume that passes per width and time, in m²/s.</summary>
    public double FlowPerWidth => Flux().Value;

    private bool IsSloped => Drive().Value > 0;

    /// <summary>The film that lets a flow pass on a slope, as where a surface is flooded at a known rate.</summary>
    /// <param name="flowPerWidth">Volume that passes per width and time, more than 0 and at most 0.01 m²/s.</param>
    /// <param name="slope">Slope from level, more than 0 and at most 90°: a level film does not flow.</param>
    /// <param name="density">Density of the wet coating, 0.5 to 3 g/mL.</param>
    /// <param name="rheology">How it resists shear.</param>
    /// <returns>
    /// The flow with its film; without yield stress h = ((2n + 1)/n · q · (K/G)^(1/n))^(n/(2n + 1)), Newtonian (3ηq/(ρ g sin α))^(1/3).
    /// </returns>
    /// <exception cref="ArgumentNullException"><paramref name="rheology"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is outside its range, more flows than a film of 5 mm lets pass, or a Newtonian film would be turbulent.
    /// </exception>
    public static SlopeFlow Find(double flowPerWidth, Angle slope, Density density, FilmRheology rheology)
    {
        if (!TryFind(flowPerWidth, slope, density, rheology, out SlopeFlow? found))
        {
            Guard.Rule(
                Reynolds(flowPerWidth, density.KilogramsPerCubicMeter, rheology) <= Turbulent, nameof(flowPerWidth), flowPerWidth,
                    Measure.FilmFlux,
                "a laminar film, Reynolds number 4 ρ q / η at most 1500 (from memory)");
            SlopeFlow thickest = new(Length.FromMeters(Thickest), slope, density, rheology);
            Guard.Rule(
                false, nameof(flowPerWidth), flowPerWidth, Measure.FilmFlux, "at most what a film of 5 mm lets pass, ",
                thickest.FlowPerWidth);
        }

        return found!;
    }

    /// <summary>The same, where the film may be too thick to be one.</summary>
    /// <param name="flowPerWidth">Volume that passes per width and time, more than 0 and at most 0.01 m²/s.</param>
    /// <param name="slope">Slope from level, more than 0 and at most 90°.</param>
    /// <param name="density">Density of the wet coating, 0.5 to 3 g/mL.</param>
    /// <param name="rheology">How it resists shear.</param>
    /// <param name="found">The flow with its film; <see langword="null"/> when more flows than a film of 5 mm lets pass.</param>
    /// <returns>Whether there is one.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="rheology"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static bool TryFind(double flowPerWidth, Angle slope, Density density, FilmRheology rheology, out SlopeFlow? found)
    {
        double flow = Guard.Within(flowPerWidth, Flows);
        double alpha = Guard.Within(slope, Steep);
        double rho = Guard.Within(density, FlowRanges.Density);
        double drive = FlowKernel.Drive(rho, alpha).Value;
        double held = Guard.NotNull(rheology).YieldPascals / drive;
        (double Drive, double Held, double Flow, FilmRheology Liquid) state = (drive, held, flow, rheology);
        if (held >= Thickest || Beyond(state, Thickest - held) < 0 || Reynolds(flow, rho, rheology) > Turbulent)
        {
            found = null;
            return false;
        }

        double sheared = Roots.Rising(state, static (given, depth) => Beyond(given, depth), 0, Thickest - held);
        found = new SlopeFlow(Length.FromMeters(held + sheared), slope, density, rheology);
        return true;
    }

    /// <summary>Speed at a height above the wall.</summary>
    /// <param name="height">0 (the wall) to the film (the surface).</param>
    /// <returns>The speed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the film.</exception>
    public Speed SpeedAt(Length height)
    {
        double above = Guard.Within(height, Bounds.NotNegative(Measure.Film, Film.Meters));
        double sheared = Sheared().Value;
        return SurfaceSpeed * (above >= sheared ? 1 : 1 - Math.Pow(1 - (above / sheared), 1 + (1 / Rheology.Index)));
    }

    /// <summary>How the speeds follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of(
        "Film on a slope", [Wall, .. Trace.When(IsSloped, Critical, Sheared, Surface, Flux, Mean)]);

    /// <summary>The flow in one line, in metric units.</summary>
    /// <returns>Text such as <c>100 µm at 90°: surface 127.49 µm/s</c>.</returns>
    public override string ToString() =>
        Measure.Film.Format(Film.Meters) + " at " + Measure.Angle.Format(Slope.Radians) + ": "
        + (IsHeld ? "stands" : "surface " + Measure.FilmSpeed.Format(Surface().Value));

    internal Num Surface(Trace? t = null) => t.Step("speed of the surface", "u_s", Measure.FilmSpeed, Balance, FlowKernel.SurfaceSpeed(
        Drive(t), t.Given("K", Rheology.Consistency, Measure.Consistency), Index(t), Sheared(t)));

    private Num Wall(Trace? t = null) => t.Step("shear stress at the wall", "τ_w", Measure.Pressure, Balance, Drive(t) * Height(t));

    private Num Critical(Trace? t = null) =>
        t.Step("critical film", "h_y", Measure.Film, Balance, t.Given("τ_y", Rheology.YieldPascals, Measure.Pressure) / Drive(t));

    // The plug lies on top of it.
    private Num Sheared(Trace? t = null) =>
        t.Step("sheared film", "H", Measure.Film, Balance, IsSloped ? Num.Max(0, Height(t) - Critical(t)) : 0);

    private Num Flux(Trace? t = null) =>
        t.Step("flow per width", "q", Measure.FilmFlux, Balance, FlowKernel.Flux(Surface(t), Height(t), Sheared(t), Index(t)));

    private Num Mean(Trace? t = null) => t.Step("mean speed", "u_m", Measure.FilmSpeed, Balance, Flux(t) / Height(t));

    private Num Drive(Trace? t = null) => FlowKernel.Drive(Density.KilogramsPerCubicMeter, Slope.Radians, t);

    private Num Height(Trace? t) => t.Given("h", Film.Meters, Measure.Film);

    private Num Index(Trace? t) => t.Given("n", Rheology.Index, Measure.Number);

    // Of a Newtonian liquid; what has a yield stress or thins under shear is far too thick to be turbulent in a film.
    private static double Reynolds(double flow, double density, FilmRheology liquid) =>
        liquid.YieldPascals > 0 || liquid.Index != 1 ? 0 : 4 * density * flow / liquid.Consistency;

    // By how much a film with so much of it sheared lets more pass.
    private static double Beyond((double Drive, double Held, double Flow, FilmRheology Liquid) given, double sheared)
    {
        Num surface = FlowKernel.SurfaceSpeed(given.Drive, given.Liquid.Consistency, given.Liquid.Index, sheared);
        return FlowKernel.Flux(surface, given.Held + sheared, sheared, given.Liquid.Index).Value - given.Flow;
    }
}
