using System;
using UnitsNet;

namespace Refinish.Films;

/// <summary>A dry film over something: what it reflects there, over black and over white, and its contrast ratio (Kubelka–Munk).</summary>
/// <remarks>
/// R = [1 − Rg (a − b coth bSX)]/[a − Rg + b coth bSX]; contrast ratio R over black per R over white, the white taken as 0.80 as in the
/// classical definition (ISO 6504-3 and ASTM D2805 print the ratio of Y over the black and the white of their charts; from memory). A
/// film of no thickness shows what is below, one without end shows R∞. The theory knows two diffuse streams and no surface: see
/// <see cref="SurfaceReflection"/>.
/// </remarks>
/// <example><code>
/// PaintOptics white = new(ReciprocalLength.FromInverseMillimeters(5), ReciprocalLength.FromInverseMillimeters(80));
/// HidingFilm film = new(white, Length.FromMicrometers(40), Ratio.FromPercent(20));
/// double ratio = film.ContrastRatio.DecimalFractions;          // 0.93197
/// </code></example>
public sealed record HidingFilm
{
    /// <summary>Takes the film; the white of the contrast ratio reflects 80 %.</summary>
    /// <param name="optics">How it absorbs and scatters.</param>
    /// <param name="dryFilm">Dry film, 0 to 5 mm.</param>
    /// <param name="below">Reflectance of what lies below, 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public HidingFilm(PaintOptics optics, Length dryFilm, Ratio below)
        : this(optics, dryFilm, below, Ratio.FromDecimalFractions(0.8))
    {
    }

    /// <summary>Takes the film.</summary>
    /// <param name="optics">How it absorbs and scatters.</param>
    /// <param name="dryFilm">Dry film, 0 to 5 mm.</param>
    /// <param name="below">Reflectance of what lies below, 0 to 100 %.</param>
    /// <param name="white">Reflectance of the white of the contrast ratio, 10 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public HidingFilm(PaintOptics optics, Length dryFilm, Ratio below, Ratio white)
    {
        Optics = Guard.NotNull(optics);
        DryFilm = Guard.Checked(dryFilm, Bounds.NotNegative(Measure.Film, 5e-3));
        Below = Guard.Checked(below, Bounds.Between(0, 1, Measure.Percent));
        White = Guard.Checked(white, Bounds.Between(0.1, 1, Measure.Percent));
    }

    /// <summary>How it absorbs and scatters.</summary>
    public PaintOptics Optics { get; }

    /// <summary>Dry film.</summary>
    public Length DryFilm { get; }

    /// <summary>Reflectance of what lies below.</summary>
    public Ratio Below { get; }

    /// <summary>Reflectance of the white of the contrast ratio.</summary>
    public Ratio White { get; }

    /// <summary>S X, the scattering power of the film.</summary>
    public double ScatteringPower => Power().Value;

    /// <summary>Reflectance over what lies below.</summary>
    public Ratio Reflectance => Ratio.FromDecimalFractions(OverBelow().Value);

    /// <summary>Reflectance over black.</summary>
    public Ratio OverBlack => Ratio.FromDecimalFractions(Black().Value);

    /// <summary>Reflectance over the white.</summary>
    public Ratio OverWhite => Ratio.FromDecimalFractions(OverChart().Value);

    /// <summary>Contrast ratio: reflectance over black per reflectance over the white.</summary>
    public Ratio ContrastRatio => Ratio.FromDecimalFractions(Contrast().Value);

    /// <summary>How the reflectances follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() =>
        Trace.Of("Hiding of a film", t => Optics.A(t), t => Optics.B(t), Power, Depth, OverBelow, Black, OverChart, Contrast);

    /// <summary>The film in one line, in metric units.</summary>
    /// <returns>Text such as <c>40 µm: contrast ratio 93.2 %, reflects 67.6 %</c>.</returns>
    public override string ToString() =>
        Measure.Film.Format(DryFilm.Meters) + ": contrast ratio " + Measure.Percent.Format(Contrast().Value, DisplayUnits.Si, 3)
        + ", reflects " + Measure.Percent.Format(OverBelow().Value, DisplayUnits.Si, 3);

    private Num Power(Trace? t = null) =>
        t.Step("scattering power", "SX", Measure.Number, PaintOptics.KubelkaMunk,
            Optics.GivenS(t) * t.Given("X", DryFilm.Meters, Measure.Film));

    private Num Depth(Trace? t = null) =>
        t.Step("optical depth", "T", Measure.Number, PaintOptics.KubelkaMunk, HidingKernel.Depth(Optics.B(t), Power(t)));

    private Num OverBelow(Trace? t = null) => t.Step("reflectance", "R", Measure.Percent, PaintOptics.KubelkaMunk,
        HidingKernel.Over(Optics.A(t), Depth(t), t.Given("R_g", Below.DecimalFractions, Measure.Percent)));

    private Num Black(Trace? t = null) =>
        t.Step("reflectance over black", "R_0", Measure.Percent, PaintOptics.KubelkaMunk, Depth(t) / ((Optics.A(t) * Depth(t)) + 1));

    private Num OverChart(Trace? t = null) => t.Step("reflectance over white", "R_w", Measure.Percent, PaintOptics.KubelkaMunk,
        HidingKernel.Over(Optics.A(t), Depth(t), t.Given("R_gw", White.DecimalFractions, Measure.Percent)));

    private Num Contrast(Trace? t = null) =>
        t.Step("contrast ratio", "C", Measure.Percent, PaintOptics.KubelkaMunk, Black(t) / OverChart(t));
}
