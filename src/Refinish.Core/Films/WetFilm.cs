using System.Globalization;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// The wet film that dries down to a wanted dry film: WFT = DFT · (1 + R) / VS, with VS the volume solids of the mixed,
/// unreduced coating and R the volume of reducer per volume of mixed coating.
/// </summary>
/// <remarks>
/// Volumes are taken as additive and the film as losing all volatile matter and nothing else.
/// Source: definition of volume solids; the same relation stands in paint-application handbooks, e.g. ISO 3233 for the dry volume.
/// </remarks>
/// <example><code>
/// WetFilm film = new(Length.FromMicrometers(30), Ratio.FromPercent(40), Ratio.FromPercent(10));
/// Length wet = film.Thickness;                      // 82.5 µm = 30 µm × 1.1 / 0.40
/// SpreadingRate rate = film.SpreadingRate;          // 12.12 m²/L of reduced coating
/// </code></example>
public sealed record WetFilm
{
    private static readonly Source Definition = Source.Derived("definition of volume solids, reducer counted as volatile; volumes additive");

    /// <summary>Calculates the wet film of a coating without reducer.</summary>
    /// <param name="dryFilm">Dry film thickness wanted; more than 0 and at most 5 mm.</param>
    /// <param name="volumeSolids">Volume solids of the mixed, unreduced coating; more than 0 and at most 100 %.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public WetFilm(Length dryFilm, Ratio volumeSolids)
        : this(dryFilm, volumeSolids, Ratio.Zero)
    {
    }

    /// <summary>Calculates the wet film.</summary>
    /// <param name="dryFilm">Dry film thickness wanted; more than 0 and at most 5 mm.</param>
    /// <param name="volumeSolids">Volume solids of the mixed, unreduced coating; more than 0 and at most 100 %.</param>
    /// <param name="reducer">Reducer per volume of mixed coating; 0 to 100 %.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public WetFilm(Length dryFilm, Ratio volumeSolids, Ratio reducer)
    {
        DryFilm = Guard.Checked(dryFilm, Bounds.Positive(Measure.Film, 5e-3));
        VolumeSolids = Guard.Checked(volumeSolids, Bounds.Positive(Measure.Percent, 1));
        Reducer = Guard.Checked(reducer, Bounds.NotNegative(Measure.Percent, 1));
    }

    /// <summary>The dry film wanted.</summary>
    public Length DryFilm { get; }

    /// <summary>Volume solids of the mixed, unreduced coating.</summary>
    public Ratio VolumeSolids { get; }

    /// <summary>Reducer per volume of mixed coating.</summary>
    public Ratio Reducer { get; }

    /// <summary>Volume solids of the reduced coating: VS / (1 + R).</summary>
    public Ratio ReducedSolids =>
        Ratio.FromDecimalFractions(FilmKernel.ReducedSolids(VolumeSolids.DecimalFractions, Reducer.DecimalFractions).Value);

    /// <summary>The wet film thickness to lay down.</summary>
    public Length Thickness => Length.FromMeters(Wet().Value);

    /// <summary>Area covered per volume of reduced coating when nothing is lost: the reciprocal of the wet film.</summary>
    public SpreadingRate SpreadingRate => SpreadingRate.FromSquareMetersPerCubicMeter(Rate().Value);

    /// <summary>How the wet film and the spreading rate follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Wet film", Wet, Rate);

    /// <summary>The films and the solids in one line, in metric units.</summary>
    /// <returns>Text such as <c>82.5 µm wet for 30 µm dry</c>.</returns>
    public override string ToString() =>
        string.Format(
            CultureInfo.InvariantCulture, "{0} wet for {1} dry", Measure.Film.Format(Thickness.Meters),
                Measure.Film.Format(DryFilm.Meters));

    private Num Wet(Trace? t = null) => t.Step("wet film", "WFT", Measure.Film, Definition, FilmKernel.WetFilm(
        t.Given("DFT", DryFilm.Meters, Measure.Film), t.Given("VS", VolumeSolids.DecimalFractions, Measure.Percent),
            t.Given("R", Reducer.DecimalFractions, Measure.Percent)));

    private Num Rate(Trace? t = null) => t.Step("theoretical spreading rate", "SR", Measure.SpreadingRate, Definition, 1 / Wet(t));
}
