using System;
using System.Collections.Generic;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>
/// The times of a data sheet at the temperature of the site: t = t_ref / f, with f the rate against the reference temperature.
/// </summary>
/// <remarks>
/// <para>Outside the product's own temperature range there are no times: every one of them is <see langword="null"/>,
/// <see cref="IsAvailable"/> is false and <see cref="Checks"/> tells by how much. Nothing is extrapolated.</para>
/// <para>One law shifts all times alike. Solvent leaves and a batch heats itself by other laws, so touch dryness and pot life follow
/// less well than cure does. A time is for a surface and air that stay at that temperature; for one that changes see
/// <see cref="EquivalentAge"/>.</para>
/// </remarks>
/// <example><code>
/// CureTimes times = new()
/// {
///     ReferenceTemperature = Temperature.FromDegreesCelsius(25),
///     MinimumTemperature = Temperature.FromDegreesCelsius(10),
///     MaximumTemperature = Temperature.FromDegreesCelsius(35),
///     PotLife = TimeSpan.FromHours(2),
///     TouchDry = TimeSpan.FromHours(1),
///     RecoatOpens = TimeSpan.FromHours(4),
///     RecoatCloses = TimeSpan.FromHours(24),
///     WaterService = TimeSpan.FromHours(24),
///     FullCure = TimeSpan.FromDays(7),
///     Source = Source.Supplied("product data sheet"),
/// };
/// CureForecast forecast = new(times, Temperature.FromDegreesCelsius(22));
/// TimeSpan? water = forecast.WaterService;     // 29.5 h
/// </code></example>
public sealed record CureForecast
{
    private readonly double site;
    private readonly double factor;

    /// <summary>Takes the times and the temperature; the law is the data sheet's own factor for ten kelvins.</summary>
    /// <param name="times">The data sheet's times.</param>
    /// <param name="site">Temperature of the coated surface and of the mix, −20 to 60 °C.</param>
    /// <exception cref="ArgumentNullException"><paramref name="times"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range, or the times contradict each other.</exception>
    public CureForecast(CureTimes times, Temperature site)
        : this(times, site, TemperatureShift.Doubling(Guard.NotNull(times).RatePerTenKelvin))
    {
    }

    /// <summary>Shifts the times.</summary>
    /// <param name="times">The data sheet's times.</param>
    /// <param name="site">Temperature of the coated surface and of the mix, −20 to 60 °C.</param>
    /// <param name="shift">The law.</param>
    /// <exception cref="ArgumentNullException"><paramref name="times"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range, or the times contradict each other.</exception>
    public CureForecast(CureTimes times, Temperature site, TemperatureShift shift)
    {
        Times = Guard.NotNull(times);
        Times.CheckOrder();
        this.site = Guard.Within(site, TemperatureShift.Thermometer);
        Shift = Guard.NotNull(shift);
        IsAvailable = this.site >= Times.MinimumTemperature.Kelvins && this.site <= Times.MaximumTemperature.Kelvins;
        factor = Shift.Factor(this.site, Times.ReferenceTemperature.Kelvins);
    }

    /// <summary>The times of a data sheet's table at the temperature of the site, each stage by its own law.</summary>
    /// <param name="table">The table.</param>
    /// <param name="site">Temperature of the coated surface and of the mix, −20 to 60 °C.</param>
    /// <returns>
    /// The forecast, its <see cref="Times"/> those at the site; outside the table's range one that has no times and says how far it is
    /// off.
    /// </returns>
    /// <exception cref="ArgumentNullException"><paramref name="table"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public static CureForecast FromFit(CureTableFit table, Temperature site)
    {
        double t = Guard.Within(site, TemperatureShift.Thermometer);
        return new CureForecast(Guard.NotNull(table).Times(table.Nearest(t)), site, table.CommonShift);
    }

    /// <summary>The data sheet's times.</summary>
    public CureTimes Times { get; }

    /// <summary>The law.</summary>
    public TemperatureShift Shift { get; }

    /// <summary>The temperature at the site.</summary>
    public Temperature Site => Temperature.FromKelvins(site);

    /// <summary>The site's temperature against the product's lowest and highest.</summary>
    public IReadOnlyList<LimitComparison> Checks => new ValueList<LimitComparison>(ProductRange(Times, site, site));

    /// <summary>Whether times can be given: the temperature is within the product's range.</summary>
    public bool IsAvailable { get; }

    /// <summary>The rate against the reference temperature; <see langword="null"/> outside the product's range.</summary>
    public double? RateFactor => IsAvailable ? factor : null;

    /// <summary>How long the mix has to stand before use; <see langword="null"/> outside the product's range.</summary>
    public TimeSpan? Induction => Shifted(Times.Induction);

    /// <summary>How long the mix can be applied; <see langword="null"/> outside the product's range and for a one-part product.</summary>
    public TimeSpan? PotLife => Shifted(Times.PotLife);

    /// <summary>Dry enough to touch lightly; <see langword="null"/> outside the product's range.</summary>
    public TimeSpan? TouchDry => Shifted(Times.TouchDry);

    /// <summary>The next coat may go on from here; <see langword="null"/> outside the product's range.</summary>
    public TimeSpan? RecoatOpens => Shifted(Times.RecoatOpens);

    /// <summary>
    /// The next coat has to be on by here, else abrade; <see langword="null"/> outside the product's range and when the window stays
    /// open.
    /// </summary>
    public TimeSpan? RecoatCloses => Shifted(Times.RecoatCloses);

    /// <summary>Water may run on it from here; <see langword="null"/> outside the product's range.</summary>
    public TimeSpan? WaterService => Shifted(Times.WaterService);

    /// <summary>Fully cured; <see langword="null"/> outside the product's range.</summary>
    public TimeSpan? FullCure => Shifted(Times.FullCure);

    /// <summary>What goes with a two-part mix; empty for a one-part product.</summary>
    public IReadOnlyList<Caution> Cautions => Times.PotLife is null ? ValueList<Caution>.Empty : Refinish.Cautions.ForBatch;

    /// <summary>How each time follows; outside the product's range, how far it is off.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Trace t = new();
        t.Margins(Checks, "T", "T_limit");
        if (IsAvailable)
        {
            Num rate = Shift.Factor(site, Times.ReferenceTemperature.Kelvins, t);
            foreach ((string name, string symbol, TimeSpan? time) in Times.Named())
            {
                if (time is TimeSpan given)
                {
                    t.Step(name, symbol, Measure.Hours, Times.Source, Shifted(given, rate, t, symbol));
                }
            }
        }

        return t.Workings("Times at the site");
    }

    /// <summary>The temperature and the two times that are asked for most, rounded up, or that there are none.</summary>
    /// <returns>Text such as <c>at 22 °C: recoat from 5 h, water from 29.6 h</c>.</returns>
    public override string ToString() => "at " + Measure.Temperature.Format(site) + ": " + (IsAvailable
        ? "recoat from " + CarefulTime.AtLeast(RecoatOpens!.Value) + ", water from " + CarefulTime.AtLeast(WaterService!.Value)
        : "outside the product's temperature range, no times");

    /// <summary>The lowest and the highest temperature met, against the product's range.</summary>
    internal static LimitComparison[] ProductRange(CureTimes times, double lowest, double highest)
    {
        double least = times.MinimumTemperature.Kelvins;
        double most = times.MaximumTemperature.Kelvins;
        return
        [
            new(
                "lowest temperature for cure", lowest, least, LimitSense.AtLeast, Measure.Temperature, times.Source,
                lowest >= least ? null : "Warm to " + Measure.Temperature.FormatBoth(least) + " and keep it there, with nothing that flames or sparks; the air that the fan brings in has to be warmed too."),
            new(
                "highest temperature for cure", highest, most, LimitSense.AtMost, Measure.Temperature, times.Source,
                highest <= most ? null : "Cool to " + Measure.Temperature.FormatBoth(most) + "."),
        ];
    }

    private static Num Shifted(TimeSpan time, Num rate, Trace? t = null, string symbol = "t") =>
        (t is null ? time.TotalSeconds : t.Given(symbol + ",ref", time.TotalSeconds, Measure.Hours)) / rate;

    private TimeSpan? Shifted(TimeSpan? reference) =>
        IsAvailable && reference is TimeSpan time ? Durations.FromSeconds(Shifted(time, factor).Value) : null;
}
