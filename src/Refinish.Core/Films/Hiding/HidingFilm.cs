using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Films;

/// <summary>A dry film over something: what it reflects there, over black and over white, and its contrast ratio (Kubelka–Munk).</summary>
/// <remarks>
/// R = [1 − Rg (a − b coth bSX)]/[a − Rg + b coth bSX]; contrast ratio R over black per R over white, the white taken as 0.80 as in the classical definition (ISO 6504-3 and ASTM D2805 print the ratio of
/// Y over the black and the white of their charts; from memory). A film of no thickness shows what is below, one without end shows R∞. The theory knows two diffuse streams and no surface: see <see cref="SurfaceReflection"/>.
/// </remarks>
/// <example><code>
/// PaintOptics white = new(ReciprocalLength.FromInverseMillimeters(5), ReciprocalLength.FromInverseMillimeters(80));
/// HidingFilm film = new(white, Length.FromMicrometers(40), Ratio.FromPercent(20));
/// double ratio = film.ContrastRatio.DecimalFractions;          // 0.93197
/// </code></example>
public sealed record HidingFilm
{
    private readonly double film;
    private readonly double below;
    private readonly double white;

    /// <summary>Takes the film.</summary>
    /// <param name="optics">How it absorbs and scatters.</param>
    /// <param name="dryFilm">Dry film, 0 to 5 mm.</param>
    /// <param name="below">Reflectance of what lies below, 0 to 100 %.</param>
    /// <param name="white">Reflectance of the white of the contrast ratio, 10 to 100 %; 80 % when omitted.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public HidingFilm(PaintOptics optics, Length dryFilm, Ratio below, Ratio? white = null)
    {
        Optics = Guard.NotNull(optics, nameof(optics));
        film = Guard.Within(dryFilm, Bounds.NotNegative(Measure.Film, 5e-3), nameof(dryFilm));
        this.below = Guard.Within(below, Bounds.Between(0, 1, Measure.Percent), nameof(below));
        this.white = white is Ratio given ? Guard.Within(given, Bounds.Between(0.1, 1, Measure.Percent), nameof(white)) : 0.8;
    }

    /// <summary>How it absorbs and scatters.</summary>
    public PaintOptics Optics { get; }

    /// <summary>Dry film.</summary>
    public Length DryFilm => Length.FromMeters(film);

    /// <summary>Reflectance of what lies below.</summary>
    public Ratio Below => Ratio.FromDecimalFractions(below);

    /// <summary>Reflectance of the white of the contrast ratio.</summary>
    public Ratio White => Ratio.FromDecimalFractions(white);

    /// <summary>S X, the scattering power of the film.</summary>
    public double ScatteringPower => Optics.S * film;

    /// <summary>Reflectance over what lies below.</summary>
    public Ratio Reflectance => Ratio.FromDecimalFractions(Over(below));

    /// <summary>Reflectance over black.</summary>
    public Ratio OverBlack => Ratio.FromDecimalFractions(Over(0));

    /// <summary>Reflectance over the white.</summary>
    public Ratio OverWhite => Ratio.FromDecimalFractions(Over(white));

    /// <summary>Contrast ratio: reflectance over black per reflectance over the white.</summary>
    public Ratio ContrastRatio => Ratio.FromDecimalFractions(Over(0) / Over(white));

    /// <summary>How the reflectances follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        List<WorkingStep> steps = [.. Optics.Constants(string.Empty)];
        Expression a = steps[0].Result();
        Expression b = steps[1].Result();
        WorkingStep power = new(
            "scattering power", "SX", Expression.Quantity("S", Optics.S, Measure.PerFilm) * Expression.Quantity("X", film, Measure.Film), ScatteringPower, Measure.Number, PaintOptics.KubelkaMunk);
        WorkingStep depth = new(
            "optical depth", "T", Optics.B == 0 ? power.Result() : Expression.Tanh(b * power.Result()) / b, HidingKernel.Depth(Optics.B, ScatteringPower), Measure.Number, PaintOptics.KubelkaMunk);
        WorkingStep seen = Step("reflectance", "R", "R_g", below);
        WorkingStep black = new("reflectance over black", "R_0", depth.Result() / ((a * depth.Result()) + 1), Over(0), Measure.Percent, PaintOptics.KubelkaMunk);
        WorkingStep overWhite = Step("reflectance over white", "R_w", "R_gw", white);
        steps.AddRange([power, depth, seen, black, overWhite, new("contrast ratio", "C", black.Result() / overWhite.Result(), Over(0) / Over(white), Measure.Percent, PaintOptics.KubelkaMunk)]);
        return new Workings("Hiding of a film", steps);

        WorkingStep Step(string name, string symbol, string under, double value) => new(
            name, symbol, HidingKernel.Over(a, depth.Result(), Expression.Quantity(under, value, Measure.Percent)), Over(value), Measure.Percent, PaintOptics.KubelkaMunk);
    }

    /// <summary>The film in one line, in metric units.</summary>
    /// <returns>Text such as <c>40 µm: contrast ratio 93.2 %, reflects 67.6 %</c>.</returns>
    public override string ToString() =>
        Measure.Film.Format(film) + ": contrast ratio " + Measure.Percent.Format(Over(0) / Over(white), DisplayUnits.Si, 3) + ", reflects " + Measure.Percent.Format(Over(below), DisplayUnits.Si, 3);

    private double Over(double substrate) => HidingKernel.Film(Optics.K, Optics.S, film, substrate);
}
