using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Films;
using UnitsNet;

namespace Refinish.Inspection;

/// <summary>What a gauge reads without the coating, taken off its readings, and a shim of known thickness that sets its scale.</summary>
/// <remarks>
/// Film = (reading − base) · shim/(shim reading − base); without a shim the scale is taken as right. Base and shim are read on the
/// prepared bare surface: the roughness of metal, or the enamel under a refinish, reads as film. SSPC-PA 2: the mean of several
/// readings of the bare surface is subtracted (seen in training material, ten readings in a site procedure). The base scatters as the
/// film does: its standard error stays in every film.
/// </remarks>
/// <example><code>
/// GaugeAdjustment gauge = new([Length.FromMicrometers(410), Length.FromMicrometers(418), Length.FromMicrometers(402)]);
/// Length film = gauge.FilmOf(Length.FromMicrometers(535));         // 125 µm over 410 µm of enamel
/// </code></example>
public sealed record GaugeAdjustment
{
    private static readonly Source Standard = Source.Published("SSPC-PA 2 (2004 and later)", "base metal reading subtracted; shims on the bare surface (second-hand, from training material)");
    private static readonly Bounds Readings = Bounds.Between(-1e-4, 10e-3, Measure.Film);

    private readonly ValueList<double> bare;
    private readonly ValueList<double>? shimReadings;
    private readonly double? shim;

    /// <summary>Takes the readings on the bare surface.</summary>
    /// <param name="bareReadings">Readings on the prepared, uncoated surface, at least one, −0.1 to 10 mm.</param>
    /// <exception cref="ArgumentException">No reading is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is outside its range.</exception>
    public GaugeAdjustment(IEnumerable<Length> bareReadings) =>
        bare = new(Guard.List(bareReadings, 1).Select(one => Guard.Within(one, Readings, nameof(bareReadings))));

    /// <summary>Takes the readings on the bare surface and on a shim that lies on it.</summary>
    /// <param name="bareReadings">Readings on the prepared, uncoated surface, at least one, −0.1 to 10 mm.</param>
    /// <param name="shim">Certified thickness of the shim, more than 0 and at most 5 mm.</param>
    /// <param name="shimReadings">Readings on the shim, at least one, their mean above that of the bare surface.</param>
    /// <exception cref="ArgumentException">No reading is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public GaugeAdjustment(IEnumerable<Length> bareReadings, Length shim, IEnumerable<Length> shimReadings) : this(bareReadings)
    {
        this.shim = Guard.Within(shim, Bounds.Positive(Measure.Film, 5e-3));
        this.shimReadings = new(Guard.List(shimReadings, 1).Select(one => Guard.Within(one, Readings, nameof(shimReadings))));
        double mean = OnShim(null).Value;
        Guard.Rule(mean > Base().Value, nameof(shimReadings), mean, Measure.Film, "a mean above that of the bare surface, ", Base().Value);
    }

    /// <summary>Mean reading on the bare surface.</summary>
    public Length BaseReading => Length.FromMeters(Base().Value);

    /// <summary>
    /// Standard error of the base reading: what no number of readings on the film takes away; <see langword="null"/> for a single one.
    /// </summary>
    public Length? BaseError => bare.Count < 2 ? null : Length.FromMeters(Error().Value);

    /// <summary>True thickness per thickness read; 1 without a shim.</summary>
    public double Scale => Gain().Value;

    /// <summary>The film that a reading means.</summary>
    /// <param name="reading">Reading on the coating, −0.1 to 10 mm.</param>
    /// <returns>
    /// The film; below zero when the reading is below the base, which says that the base varies more than the film is thick.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length FilmOf(Length reading) => Length.FromMeters(Film(reading).Value);

    /// <summary>How base, scale and one film follow.</summary>
    /// <param name="reading">Reading on the coating, −0.1 to 10 mm.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Workings Workings(Length reading) => Trace.Of(
        "Gauge adjustment", [Base, .. Trace.When(bare.Count >= 2, Error), t => Film(reading, t)]);

    /// <summary>The adjustment in one line, in metric units.</summary>
    /// <returns>Text such as <c>base 410 µm, scale 1</c>.</returns>
    public override string ToString() =>
        "base " + Measure.Film.Format(Base().Value, DisplayUnits.Si, 4) + ", scale " + Figures.Significant(Scale, 4);

    private Num Base(Trace? t = null) =>
        t.Step("base reading", "b", Measure.Film, Standard, StatisticsKernel.Mean(bare, t, "b_", Measure.Film));

    private Num Error(Trace? t = null) => t.Step("standard error of the base", "s_b", Measure.Film, Standard,
        StatisticsKernel.Deviation(bare, Base(t), t, "b_", Measure.Film) / Num.Sqrt(t.Given("n", bare.Count, Measure.Number)));

    private Num OnShim(Trace? t) => StatisticsKernel.Mean(shimReadings!, t, "r_", Measure.Film, "m");

    private Num Gain(Trace? t = null) => shim is double thickness
        ? t.Step("scale", "f", Measure.Number, Standard, t.Given("t", thickness, Measure.Film) / (OnShim(t) - Base(t)))
        : 1;

    private Num Film(Length reading, Trace? t = null) => t.Step("film", "d", Measure.Film, Standard,
        (t.Given("r", Guard.Within(reading, Readings), Measure.Film) - Base(t)) * Gain(t));
}
