using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// The dry film that a wet film leaves: DFT = WFT · VS / (1 + R), with VS the volume solids of the mixed, unreduced coating and R the
/// volume of reducer per volume of mixed coating. The way back is <see cref="WetFilm"/>.
/// </summary>
/// <remarks>
/// Volumes are taken as additive. A film that was read some minutes after it was laid has already lost solvent and dries to more than
/// this says. A flat coating may dry thicker than calculated, since its pigment packs loosely (ASTM D4414, 4.2, as published by ASTM).
/// </remarks>
/// <example><code>
/// DryFilm film = new(Length.FromMils(8), Ratio.FromPercent(35), Ratio.FromPercent(10));
/// double mils = film.Thickness.Mils;                 // 2.545 = 8 × 0.35 / 1.10
/// </code></example>
public sealed record DryFilm
{
    private static readonly Source Definition = Source.Derived("definition of volume solids, reducer counted as volatile; volumes additive");

    /// <summary>Calculates the dry film of a coating without reducer.</summary>
    /// <param name="wetFilm">Wet film as laid; more than 0 and at most 10 mm.</param>
    /// <param name="volumeSolids">Volume solids of the mixed, unreduced coating; more than 0 and at most 100 %.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public DryFilm(Length wetFilm, Ratio volumeSolids)
        : this(wetFilm, volumeSolids, Ratio.Zero)
    {
    }

    /// <summary>Calculates the dry film.</summary>
    /// <param name="wetFilm">Wet film as laid; more than 0 and at most 10 mm.</param>
    /// <param name="volumeSolids">Volume solids of the mixed, unreduced coating; more than 0 and at most 100 %.</param>
    /// <param name="reducer">Reducer per volume of mixed coating; 0 to 100 %.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public DryFilm(Length wetFilm, Ratio volumeSolids, Ratio reducer)
    {
        WetFilm = Guard.Checked(wetFilm, Bounds.Positive(Measure.Film, 10e-3));
        VolumeSolids = Guard.Checked(volumeSolids, Bounds.Positive(Measure.Percent, 1));
        Reducer = Guard.Checked(reducer, Bounds.NotNegative(Measure.Percent, 1));
    }

    /// <summary>The wet film as laid.</summary>
    public Length WetFilm { get; }

    /// <summary>Volume solids of the mixed, unreduced coating.</summary>
    public Ratio VolumeSolids { get; }

    /// <summary>Reducer per volume of mixed coating.</summary>
    public Ratio Reducer { get; }

    /// <summary>The dry film.</summary>
    public Length Thickness => Length.FromMeters(Dry().Value);

    /// <summary>How the dry film follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Dry film", Dry);

    /// <summary>The two films in one line, in metric units.</summary>
    /// <returns>Text such as <c>30 µm dry from 82.5 µm wet</c>.</returns>
    public override string ToString() =>
        Measure.Film.Format(Thickness.Meters) + " dry from " + Measure.Film.Format(WetFilm.Meters) + " wet";

    private Num Dry(Trace? t = null) => t.Step("dry film", "DFT", Measure.Film, Definition, FilmKernel.DryFilm(
        t.Given("WFT", WetFilm.Meters, Measure.Film), t.Given("VS", VolumeSolids.DecimalFractions, Measure.Percent),
            t.Given("R", Reducer.DecimalFractions, Measure.Percent)));
}
