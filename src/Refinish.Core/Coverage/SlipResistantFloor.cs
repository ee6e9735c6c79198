using System;
using System.Collections.Generic;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>
/// Grains on a floor: how many, how much of the floor they cover, how deep they sit in the film, and how much to weigh out.
/// </summary>
/// <remarks>
/// <para>Spheres of one size: φ = 1.5·m/(ρ·d); N = 6·m/(π·ρ·d³); embedment e = film/d; each grain that stands out by d − film adds π(d
/// − film)² of surface. Source: geometry of the sphere. Keep grains off drain and walls; 25 mm is common practice.</para>
/// <para>None of these numbers is a slip resistance. What grips is measured on the finished floor, with the method and the criterion
/// named.</para>
/// </remarks>
/// <example><code>
/// SlipResistantFloor floor = new(Area.FromSquareMeters(0.5), GenericCatalogue.PolymerBeads, AreaDensity.FromGramsPerSquareMeter(20), Length.FromMicrometers(60), Ratio.FromPercent(20));
/// double covered = floor.AreaFraction.Percent;   // 25
/// double grams = floor.ToWeighOut.Grams;         // 12.5
/// </code></example>
public sealed record SlipResistantFloor
{
    private static readonly Source Sphere = Source.Derived("geometry of spheres of one size");
    private static readonly Source Band = Source.FromMemory("grains 40 to 70 % embedded and 10 to 35 % of the floor covered");

    /// <summary>Calculates the grains.</summary>
    /// <param name="floor">The floor that gets them, more than 0 and at most 100 m².</param>
    /// <param name="additive">The grains.</param>
    /// <param name="rate">Grains that stay on the floor, more than 0 and at most 1 kg/m².</param>
    /// <param name="filmAround">
    /// Dry film in which they sit: the coat they fall into and those over it, more than 0 and at most 2 mm.
    /// </param>
    /// <param name="loss">Part that bounces off or is swept up, 0 to 80 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is outside its range, or so many grains do not fit side by side.
    /// </exception>
    public SlipResistantFloor(Area floor, SlipAdditive additive, AreaDensity rate, Length filmAround, Ratio loss)
    {
        Floor = Guard.Checked(floor, Bounds.Positive(Measure.Area, 100));
        Additive = Guard.NotNull(additive);
        Rate = AreaDensity.FromKilogramsPerSquareMeter(Guard.Within(rate, Bounds.Positive(Measure.ArealMass, 1)));
        FilmAround = Guard.Checked(filmAround, Bounds.Positive(Measure.Film, 2e-3));
        Loss = Guard.Checked(loss, Bounds.NotNegative(Measure.Percent, 0.8));

        if (Rate.KilogramsPerSquareMeter > Densest(additive))
        {
            string allowed = "grains that fit side by side, " + Measure.ArealMass.Format(Densest(additive), DisplayUnits.Si, 3);
            Guard.Rule(false, nameof(rate), Rate.KilogramsPerSquareMeter, Measure.ArealMass, allowed);
        }
    }

    /// <summary>
    /// Grains that lie side by side as close as circles of one size can, π/(2√3) of the floor: 2/3 · ρ · d of it, in kg/m².
    /// </summary>
    internal static double Densest(SlipAdditive additive) =>
        Math.PI / (2 * Math.Sqrt(3)) * 2 / 3 * additive.Density.KilogramsPerCubicMeter * additive.Diameter.Meters;

    /// <summary>The floor that gets them.</summary>
    public Area Floor { get; }

    /// <summary>The grains.</summary>
    public SlipAdditive Additive { get; }

    /// <summary>Grains that stay on the floor.</summary>
    public AreaDensity Rate { get; }

    /// <summary>Dry film in which they sit.</summary>
    public Length FilmAround { get; }

    /// <summary>Part that bounces off or is swept up.</summary>
    public Ratio Loss { get; }

    /// <summary>Part of the floor that lies under grains.</summary>
    public Ratio AreaFraction => Ratio.FromDecimalFractions(Fraction);

    /// <summary>Grains per square metre.</summary>
    public double GrainsPerSquareMeter => Grains().Value;

    /// <summary>Part of a grain's height that sits in the film; above 100 % it is buried.</summary>
    public Ratio Embedment => Ratio.FromDecimalFractions(Embedding);

    /// <summary>How far a grain stands out of the film; zero when it is buried.</summary>
    public Length StandsOut => Length.FromMeters(Proud().Value);

    /// <summary>Surface added by grains that stand out, per area of floor.</summary>
    public Ratio AddedArea => Ratio.FromDecimalFractions(Added().Value);

    /// <summary>Grains to weigh out, loss included.</summary>
    public Mass ToWeighOut => Mass.FromKilograms(WeighedOut().Value);

    /// <summary>
    /// Embedment and covered part against the usual bands, from memory: a starting point for a test panel, not a criterion of slip.
    /// </summary>
    public IReadOnlyList<LimitComparison> Bands => new ValueList<LimitComparison>(
    [
        new("embedment of the grains", Embedding, 0.4, LimitSense.AtLeast, Measure.Percent, Band, Embedding < 0.4
            ? "Lay another coat over them or take finer grains; they would break out." : null),
        new("embedment of the grains", Embedding, 0.7, LimitSense.AtMost, Measure.Percent, Band, Embedding > 0.7
            ? "Take coarser grains or fewer coats over them; they would be buried." : null),
        new("part of the floor under grains", Fraction, 0.1, LimitSense.AtLeast, Measure.Percent, Band, Fraction < 0.1 ? "Broadcast more." : null),
        new("part of the floor under grains", Fraction, 0.35, LimitSense.AtMost, Measure.Percent, Band, Fraction > 0.35 ? "Broadcast less; the floor would be hard to clean." : null),
    ]);

    /// <summary>What goes with any floor that is to grip.</summary>
    public IReadOnlyList<Caution> Cautions { get; } = new ValueList<Caution>([Refinish.Cautions.SlipGrains]);

    private double Fraction => UnderGrains().Value;

    private double Embedding => Embedded().Value;

    /// <summary>Grains per area that a coat lays down when they are stirred into it.</summary>
    /// <param name="dose">Grains per volume of reduced coating, more than 0 and at most 1 kg/L.</param>
    /// <param name="wetFilm">Wet film of the coat, more than 0 and at most 5 mm.</param>
    /// <returns>Mass per area: dose times wet film.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static AreaDensity RateFromDose(MassConcentration dose, Length wetFilm) => AreaDensity.FromKilogramsPerSquareMeter(
        Guard.Within(dose, Bounds.Positive(Measure.CoatingContent, 1000)) * Guard.Within(wetFilm, Bounds.Positive(Measure.Film, 5e-3)));

    /// <summary>How the numbers follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Grains on a floor", UnderGrains, Grains, Embedded, Proud, Added, WeighedOut);

    /// <summary>The numbers in one line.</summary>
    /// <returns>Text such as <c>12.5 g of polymer beads, 25 % of the floor covered, 60 % embedded</c>.</returns>
    public override string ToString() =>
        Measure.Mass.Format(ToWeighOut.Kilograms, DisplayUnits.Si, 3) + " of " + Additive.Name + ", " + Measure.Percent.Format(Fraction, DisplayUnits.Si, 3) + " of the floor covered, "
        + Measure.Percent.Format(Embedding, DisplayUnits.Si, 3) + " embedded";

    private Num UnderGrains(Trace? t = null) =>
        t.Step("part of the floor under grains", "φ", Measure.Percent, Sphere, 1.5 * Spread(t) / (GrainDensity(t) * Grain(t)));

    private Num Grains(Trace? t = null) => t.Step("grains per area", "N", Measure.ArealCount, Sphere,
        6 * Spread(t) / (Num.Pi * GrainDensity(t) * Num.Power(Grain(t), 3)));

    private Num Embedded(Trace? t = null) =>
        t.Step("embedment", "e", Measure.Percent, Sphere, t.Given("h", FilmAround.Meters, Measure.Film) / Grain(t));

    private Num Proud(Trace? t = null) =>
        t.Step("stands out", "s", Measure.Film, Sphere, Num.Max(0, Grain(t) - t.Given("h", FilmAround.Meters, Measure.Film)));

    private Num Added(Trace? t = null) => t.Step("surface added", "a", Measure.Percent, Sphere, Grains(t) * Num.Pi * Num.Square(Proud(t)));

    private Num WeighedOut(Trace? t = null) => t.Step("to weigh out", "M", Measure.Mass, Sphere,
        Spread(t) * t.Given("A", Floor.SquareMeters, Measure.Area) / (1 - t.Given("l", Loss.DecimalFractions, Measure.Percent)));

    private Num Spread(Trace? t) => t.Given("m", Rate.KilogramsPerSquareMeter, Measure.ArealMass);

    private Num GrainDensity(Trace? t) => t.Given("ρ", Additive.Density.KilogramsPerCubicMeter, Measure.Density);

    private Num Grain(Trace? t) => t.Given("d", Additive.Diameter.Meters, Measure.Film);
}
