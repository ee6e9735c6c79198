using System;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// A film of known dry thickness drawn over a black and white chart: its absorption and scattering follow from the two reflectances.
/// </summary>
/// <remarks>
/// a = ½ [R + (R₀ − R + Rg)/(R₀ Rg)], b = √(a² − 1), S = artanh(b R₀/(1 − a R₀))/(b X), K = S (a − 1): P. Kubelka, Journal of the
/// Optical Society of America 38 (1948) (from memory). The black is taken as 0. Readings that no film can have, a = below 1 or a film
/// that seems to have no end, give no coefficients but the reason. A film with a contrast ratio above about 0.97 is too thick to tell S
/// well: draw it thinner.
/// </remarks>
/// <example><code>
/// Drawdown card = new(Length.FromMicrometers(40), Ratio.FromPercent(66.59), Ratio.FromPercent(71.45), Ratio.FromPercent(80));
/// double s = card.Optics!.Scattering.InverseMeters;         // about 80 000 per metre, 0.08 per µm
/// </code></example>
public sealed record Drawdown
{
    private static readonly Source Kubelka = Source.FromMemory("Kubelka, Journal of the Optical Society of America 38, 1948: a from the reflectances over black and white");

    /// <summary>Takes the readings.</summary>
    /// <param name="dryFilm">Dry film, from 1 µm to 5 mm.</param>
    /// <param name="overBlack">Reflectance over the black, more than 0 and less than 100 %.</param>
    /// <param name="overWhite">Reflectance over the white, not below that over the black, less than 100 %.</param>
    /// <param name="white">Reflectance of the bare white of the chart, 10 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public Drawdown(Length dryFilm, Ratio overBlack, Ratio overWhite, Ratio white)
    {
        DryFilm = Guard.Checked(dryFilm, FlowRanges.Film);
        OverBlack = Guard.Checked(overBlack, Bounds.Below(1e-6, 1, Measure.Percent));
        OverWhite = Guard.Checked(overWhite, Bounds.Below(1e-6, 1, Measure.Percent));
        Guard.Rule(OverWhite.DecimalFractions >= OverBlack.DecimalFractions, nameof(overWhite), OverWhite.DecimalFractions, Measure.Percent,
            "at least the reflectance over black, ", OverBlack.DecimalFractions);
        White = Guard.Checked(white, Bounds.Between(0.1, 1, Measure.Percent));
    }

    /// <summary>Dry film.</summary>
    public Length DryFilm { get; }

    /// <summary>Reflectance over the black.</summary>
    public Ratio OverBlack { get; }

    /// <summary>Reflectance over the white.</summary>
    public Ratio OverWhite { get; }

    /// <summary>Reflectance of the bare white.</summary>
    public Ratio White { get; }

    /// <summary>Contrast ratio of the readings.</summary>
    public Ratio ContrastRatio => Ratio.FromDecimalFractions(Contrast().Value);

    /// <summary>Absorption and scattering; <see langword="null"/> when no film can have these readings.</summary>
    public PaintOptics? Optics => Objection is null ? new(Absorption().Value, Scattering().Value) : null;

    /// <summary>Why no film can have these readings; <see langword="null"/> when one can.</summary>
    public string? Objection =>
        Excess().Value < 0
            ? "the film is brighter over white than a film of this reflectance over black can be: check the white of the chart and the "
                + "surface correction"
        : !(Argument().Value < 1)
            ? "the film hides the chart fully: the readings tell its reflectivity and not its scattering; draw it thinner"
        : null;

    /// <summary>How the coefficients follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of(
        "Absorption and scattering from a drawdown",
        [Contrast, .. Trace.When(Objection is null, Excess, B, Argument, Scattering, Absorption)]);

    /// <summary>The result in one line.</summary>
    /// <returns>Text such as <c>40 µm, contrast ratio 93.2 %: K 0.005 1/µm, S 0.08 1/µm</c>.</returns>
    public override string ToString() =>
        Measure.Film.Format(DryFilm.Meters) + ", contrast ratio " + Measure.Percent.Format(Contrast().Value, DisplayUnits.Si, 3) + ": "
        + (Optics?.ToString() ?? Objection);

    private Num Contrast(Trace? t = null) => t.Step("contrast ratio", "C", Measure.Percent, Kubelka, OverBlackOf(t) / OverWhiteOf(t));

    // Rounding of readings of a film that absorbs nothing may bring it a hair below zero.
    private Num Excess(Trace? t = null)
    {
        Num chart = t.Given("R_gw", White.DecimalFractions, Measure.Percent);
        Num black = OverBlackOf(t);
        Num excess = ((OverWhiteOf(t) + ((black - OverWhiteOf(t) + chart) / (black * chart))) / 2) - 1;
        return t.Step("a − 1", "a_1", Measure.Number, Kubelka, Math.Abs(excess.Value) < 1e-12 ? 0 : excess);
    }

    private Num B(Trace? t = null) => t.Step("√(a² − 1)", "b", Measure.Number, Kubelka, HidingKernel.B(Excess(t)));

    private Num Argument(Trace? t = null) =>
        t.Step("argument", "y", Measure.Number, Kubelka, B(t) * OverBlackOf(t) / (1 - ((1 + Excess(t)) * OverBlackOf(t))));

    private Num Scattering(Trace? t = null)
    {
        Num power = B(t).Value == 0 ? OverBlackOf(t) / (1 - OverBlackOf(t)) : HidingKernel.Artanh(Argument(t)) / B(t);
        return t.Step("scattering", "S", Measure.PerFilm, Kubelka, power / t.Given("X", DryFilm.Meters, Measure.Film));
    }

    private Num Absorption(Trace? t = null) => t.Step("absorption", "K", Measure.PerFilm, Kubelka, Scattering(t) * Excess(t));

    private Num OverBlackOf(Trace? t) => t.Given("R_0", OverBlack.DecimalFractions, Measure.Percent);

    private Num OverWhiteOf(Trace? t) => t.Given("R_w", OverWhite.DecimalFractions, Measure.Percent);
}
