using UnitsNet;

namespace Refinish.Films;

/// <summary>How far a film creeps down a slope before it sets, its consistency rising as solvent leaves.</summary>
/// <remarks>
/// L = u_s ∫ (η₀/η)^(1/n) dt, with u_s the surface speed as laid and η₀/η how the history thickens; for n = 1 and no yield stress L = ρ
/// g sin α h² Φ/2. The film's thickness and its yield stress stay as laid: a real film gets thinner and stiffer, and creeps less.
/// <see cref="DryingFilm"/> lets it get thinner.
/// </remarks>
/// <example><code>
/// SlopeFlow flow = new(Length.FromMicrometers(100), Angle.FromDegrees(90), Density.FromGramsPerMilliliter(1.1),
///     FilmRheology.Newtonian(DynamicViscosity.FromPascalSeconds(0.3)));
/// ViscosityHistory history = ViscosityHistory.Constant(DynamicViscosity.FromPascalSeconds(0.3), TimeSpan.FromSeconds(60));
/// double sag = new SagRun(flow, history).Distance.Millimeters;         // 10.79
/// </code></example>
public sealed record SagRun
{
    private static readonly Source Integral = Source.Derived("surface speed added up over time; the consistency follows the history, thickness and yield stress stay");

    /// <summary>Takes the film and how it thickens.</summary>
    /// <param name="flow">The film as laid.</param>
    /// <param name="history">How its consistency rises; only the ratio to the first viscosity counts.</param>
    public SagRun(SlopeFlow flow, ViscosityHistory history)
    {
        Flow = Guard.NotNull(flow);
        History = Guard.NotNull(history);
    }

    /// <summary>The film as laid.</summary>
    public SlopeFlow Flow { get; }

    /// <summary>How its consistency rises.</summary>
    public ViscosityHistory History { get; }

    /// <summary>How long the surface would have to keep its first speed to get as far.</summary>
    public Duration FluidTime => Duration.FromSeconds(Time().Value);

    /// <summary>How far the surface creeps.</summary>
    public Length Distance => Length.FromMeters(Run().Value);

    /// <summary>How the distance follows.</summary>
    /// <returns>The derivation; the film's flow is its part.</returns>
    public Workings Workings() => Trace.Of("Sag", [Flow.Workings()], Time, Run);

    /// <summary>The distance in one line, in metric units.</summary>
    /// <returns>Text such as <c>100 µm at 90°: sags 10.79 mm</c>.</returns>
    public override string ToString() =>
        Measure.Film.Format(Flow.Film.Meters) + " at " + Measure.Angle.Format(Flow.Slope.Radians) + ": sags " + Measure.Length.Format(Distance.Meters, DisplayUnits.Si, 4);

    private Num Time(Trace? t = null) => t.Step("fluid time", "t_f", Measure.Seconds, Integral, History.Sum(Flow.Rheology.Index, t));

    private Num Run(Trace? t = null) =>
        t.Step("sag", "L", Measure.Length, Integral, t.Given("u_s", Flow.Surface().Value, Measure.FilmSpeed) * Time(t));
}
