using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Films;

/// <summary>A film of known dry thickness drawn over a black and white chart: its absorption and scattering follow from the two reflectances.</summary>
/// <remarks>
/// a = ½ [R + (R₀ − R + Rg)/(R₀ Rg)], b = √(a² − 1), S = artanh(b R₀/(1 − a R₀))/(b X), K = S (a − 1): P. Kubelka, Journal of the Optical Society of America 38 (1948) (from memory). The black is taken as 0.
/// Readings that no film can have, a = below 1 or a film that seems to have no end, give no coefficients but the reason. A film with a contrast ratio above about 0.97 is too thick to tell S well: draw it thinner.
/// </remarks>
/// <example><code>
/// Drawdown card = new(Length.FromMicrometers(40), Ratio.FromPercent(66.59), Ratio.FromPercent(71.45), Ratio.FromPercent(80));
/// double s = card.Optics!.Scattering.InverseMeters;         // about 80 000 per metre, 0.08 per µm
/// </code></example>
public sealed record Drawdown
{
    private static readonly Source Kubelka = Source.FromMemory("Kubelka, Journal of the Optical Society of America 38, 1948: a from the reflectances over black and white");

    private readonly double film;
    private readonly double black;
    private readonly double white;
    private readonly double chart;

    /// <summary>Takes the readings.</summary>
    /// <param name="dryFilm">Dry film, from 1 µm to 5 mm.</param>
    /// <param name="overBlack">Reflectance over the black, more than 0 and less than 100 %.</param>
    /// <param name="overWhite">Reflectance over the white, not below that over the black, less than 100 %.</param>
    /// <param name="white">Reflectance of the bare white of the chart, 10 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public Drawdown(Length dryFilm, Ratio overBlack, Ratio overWhite, Ratio white)
    {
        film = Guard.Within(dryFilm, FlowRanges.Film, nameof(dryFilm));
        black = Guard.Within(overBlack, Bounds.Below(1e-6, 1, Measure.Percent), nameof(overBlack));
        this.white = Guard.Within(overWhite, Bounds.Below(1e-6, 1, Measure.Percent), nameof(overWhite));
        Guard.Rule(this.white >= black, nameof(overWhite), this.white, Measure.Percent, "at least the reflectance over black, ", black);
        chart = Guard.Within(white, Bounds.Between(0.1, 1, Measure.Percent), nameof(white));
    }

    /// <summary>Dry film.</summary>
    public Length DryFilm => Length.FromMeters(film);

    /// <summary>Reflectance over the black.</summary>
    public Ratio OverBlack => Ratio.FromDecimalFractions(black);

    /// <summary>Reflectance over the white.</summary>
    public Ratio OverWhite => Ratio.FromDecimalFractions(white);

    /// <summary>Reflectance of the bare white.</summary>
    public Ratio White => Ratio.FromDecimalFractions(chart);

    /// <summary>Contrast ratio of the readings.</summary>
    public Ratio ContrastRatio => Ratio.FromDecimalFractions(black / white);

    /// <summary>Absorption and scattering; <see langword="null"/> when no film can have these readings.</summary>
    public PaintOptics? Optics => Objection is null ? new(Scattering * Excess, Scattering) : null;

    /// <summary>Why no film can have these readings; <see langword="null"/> when one can.</summary>
    public string? Objection =>
        Excess < 0 ? "the film is brighter over white than a film of this reflectance over black can be: check the white of the chart and the surface correction"
        : !(Argument < 1) ? "the film hides the chart fully: the readings tell its reflectivity and not its scattering; draw it thinner"
        : null;

    // a − 1; rounding of readings of a film that absorbs nothing may bring it a hair below zero.
    private double Excess
    {
        get
        {
            double excess = ((white + ((black - white + chart) / (black * chart))) / 2) - 1;
            return Math.Abs(excess) < 1e-12 ? 0 : excess;
        }
    }

    private double B => Math.Sqrt(Excess * (Excess + 2));

    private double Argument => B * black / (1 - ((1 + Excess) * black));

    private double Scattering => (B == 0 ? black / (1 - black) : HidingKernel.Artanh(Argument) / B) / film;

    /// <summary>How the coefficients follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression r0 = Expression.Quantity("R_0", black, Measure.Percent);
        Expression rw = Expression.Quantity("R_w", white, Measure.Percent);
        Expression rg = Expression.Quantity("R_gw", chart, Measure.Percent);
        WorkingStep contrast = new("contrast ratio", "C", r0 / rw, black / white, Measure.Percent, Kubelka);
        List<WorkingStep> steps = [contrast];
        if (Optics is PaintOptics optics)
        {
            WorkingStep excess = new("a − 1", "a_1", Excess == 0 ? Expression.Number(0) : ((rw + ((r0 - rw + rg) / (r0 * rg))) / 2) - 1, Excess, Measure.Number, Kubelka);
            WorkingStep b = new("√(a² − 1)", "b", Expression.Sqrt(excess.Result() * (excess.Result() + 2)), B, Measure.Number, Kubelka);
            WorkingStep argument = new("argument", "y", b.Result() * r0 / (1 - ((1 + excess.Result()) * r0)), Argument, Measure.Number, Kubelka);
            Expression power = B == 0 ? r0 / (1 - r0) : HidingKernel.Artanh(argument.Result()) / b.Result();
            WorkingStep s = new("scattering", "S", power / Expression.Quantity("X", film, Measure.Film), Scattering, Measure.PerFilm, Kubelka);
            steps.AddRange([excess, b, argument, s, new("absorption", "K", s.Result() * excess.Result(), optics.K, Measure.PerFilm, Kubelka)]);
        }

        return new Workings("Absorption and scattering from a drawdown", steps);
    }

    /// <summary>The result in one line.</summary>
    /// <returns>Text such as <c>40 µm, contrast ratio 93.2 %: K 0.005 1/µm, S 0.08 1/µm</c>.</returns>
    public override string ToString() =>
        Measure.Film.Format(film) + ", contrast ratio " + Measure.Percent.Format(black / white, DisplayUnits.Si, 3) + ": " + (Optics?.ToString() ?? Objection);
}
