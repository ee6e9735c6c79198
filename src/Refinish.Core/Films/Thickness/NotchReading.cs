using System;
using System.Globalization;
using UnitsNet;

namespace Refinish.Films;

/// <summary>What a notch gauge says: not a thickness, but between which two teeth the wet film lies.</summary>
/// <remarks>
/// A wetted tooth is at most as high as the film, a dry tooth is higher. No tooth wetted: less than the lowest tooth; all wetted: at
/// least the highest, with no upper end. See <see cref="NotchGauge"/> for the source.
/// </remarks>
/// <example><code>
/// NotchReading reading = new NotchGauge([Length.FromMils(2), Length.FromMils(3), Length.FromMils(4)]).Read(Length.FromMils(3));
/// FilmInterval dry = reading.Dry(Ratio.FromPercent(40), Ratio.Zero);      // 30.48 µm to 40.64 µm
/// </code></example>
public sealed record NotchReading
{
    private static readonly Source Practice = Source.Published("ASTM D4414-95 (2020)", "reading of the teeth (read second-hand, in a finishing guidebook)");

    /// <summary>Makes a reading.</summary>
    /// <param name="gauge">The gauge.</param>
    /// <param name="wettedTeeth">Teeth that are wetted, counted from the lowest; 0 to the number of teeth.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a count of the gauge's teeth.</exception>
    public NotchReading(NotchGauge gauge, int wettedTeeth)
    {
        Gauge = Guard.NotNull(gauge);
        WettedTeeth = Guard.Count(wettedTeeth, 0, gauge.Heights.Count);
    }

    /// <summary>The gauge.</summary>
    public NotchGauge Gauge { get; }

    /// <summary>Teeth that are wetted, counted from the lowest.</summary>
    public int WettedTeeth { get; }

    /// <summary>
    /// Between which films the wet film lies; the lower end is 0 when no tooth is wetted, the upper end open when all are.
    /// </summary>
    public FilmInterval Wet => new(
        WettedTeeth == 0 ? 0 : Gauge.Heights[WettedTeeth - 1],
        WettedTeeth == Gauge.Heights.Count ? null : Gauge.Heights[WettedTeeth]);

    /// <summary>Between which films the dry film will lie, when the film was read before solvent left it.</summary>
    /// <param name="volumeSolids">Volume solids of the mixed, unreduced coating; more than 0 and at most 100 %.</param>
    /// <param name="reducer">Reducer per volume of mixed coating; 0 to 100 %.</param>
    /// <returns>The interval.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilmInterval Dry(Ratio volumeSolids, Ratio reducer)
    {
        Guard.Within(volumeSolids, Bounds.Positive(Measure.Percent, 1));
        Guard.Within(reducer, Bounds.NotNegative(Measure.Percent, 1));
        return new(AtLeast(volumeSolids, reducer).Value, Wet.UpperMeters is null ? null : LessThan(volumeSolids, reducer).Value);
    }

    /// <summary>How the dry film's interval follows from the teeth.</summary>
    /// <param name="volumeSolids">Volume solids of the mixed, unreduced coating; more than 0 and at most 100 %.</param>
    /// <param name="reducer">Reducer per volume of mixed coating; 0 to 100 %.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public Workings Workings(Ratio volumeSolids, Ratio reducer)
    {
        bool isOpen = Dry(volumeSolids, reducer).Upper is null;
        return Trace.Of(
            "Dry film by the notch gauge",
            [t => AtLeast(volumeSolids, reducer, t), .. Trace.When(!isOpen, t => LessThan(volumeSolids, reducer, t))]);
    }

    /// <summary>The reading in one line, in metric units.</summary>
    /// <returns>Text such as <c>2 of 3 teeth wetted: 76.2 µm to 101.6 µm wet</c>.</returns>
    public override string ToString() =>
        string.Format(CultureInfo.InvariantCulture, "{0} of {1} teeth wetted: {2} wet", WettedTeeth, Gauge.Heights.Count, Wet);

    private Num AtLeast(Ratio solids, Ratio reducer, Trace? t = null) =>
        t.Step("dry film, at least", "DFT_1", Measure.Film, Practice, Drying("WFT_1", Wet.LowerMeters, solids, reducer, t));

    private Num LessThan(Ratio solids, Ratio reducer, Trace? t = null) =>
        t.Step("dry film, less than", "DFT_2", Measure.Film, Practice, Drying("WFT_2", Wet.UpperMeters!.Value, solids, reducer, t));

    private static Num Drying(string symbol, double wet, Ratio solids, Ratio reducer, Trace? t) => FilmKernel.DryFilm(
        t.Given(symbol, wet, Measure.Film),
        t.Given("VS", solids.DecimalFractions, Measure.Percent),
        t.Given("R", reducer.DecimalFractions, Measure.Percent));
}
