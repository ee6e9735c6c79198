using System;
using Refinish.Climate;
using Refinish.Curing;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// Air and surface temperature of a room over the job: held at one reading, swinging by day, or by a log. The dew point stays as read,
/// and the surface keeps its distance from the air.
/// </summary>
/// <example><code>
/// RoomClimate held = RoomClimate.Held(new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(48)), Temperature.FromDegreesCelsius(20));
/// RoomClimate cold = RoomClimate.Daily(
///     new MoistAir(Temperature.FromDegreesCelsius(17), Ratio.FromPercent(55)), Temperature.FromDegreesCelsius(16), TemperatureDelta.FromKelvins(4), TimeSpan.FromHours(15));
/// </code></example>
public sealed record RoomClimate
{
    internal static readonly Bounds Swings = Bounds.Positive(Measure.TemperatureDifference, 20);

    private RoomClimate(RoomClimateKind kind, MoistAir air, double surface)
    {
        Kind = kind;
        Air = air;
        SurfaceKelvins = surface;
    }

    /// <summary>Which of the three it is.</summary>
    public RoomClimateKind Kind { get; }

    /// <summary>The air: the reading that is held; at the mean of the day for a daily swing; at the start of the log.</summary>
    public MoistAir Air { get; }

    /// <summary>The dew point, which holds all the time; that of a log may be above its first air, which is saturated then.</summary>
    public Temperature DewPoint => Temperature.FromKelvins(DewPointKelvins);

    /// <summary>The coldest surface that is coated, at the same time as <see cref="Air"/>.</summary>
    public Temperature Surface => Temperature.FromKelvins(SurfaceKelvins);

    /// <summary>Half the difference between the warmest and the coldest hour of a day; zero unless the climate is daily.</summary>
    public TemperatureDelta Swing => TemperatureDelta.FromKelvins(SwingKelvins);

    /// <summary>The warmest time of day after midnight, by the clock of the site; zero unless the climate is daily.</summary>
    public TimeSpan Warmest { get; private init; }

    /// <summary>The temperature of the air by the clock; <see langword="null"/> unless the climate is logged.</summary>
    public TemperatureHistory? Log { get; private init; }

    /// <summary>A room that is held at one reading, day and night, against the air that the fan brings in.</summary>
    /// <param name="air">The air as read, −20 to 60 °C.</param>
    /// <param name="surface">The coldest surface that is coated, −20 to 60 °C.</param>
    /// <returns>The climate.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="air"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static RoomClimate Held(MoistAir air, Temperature surface)
    {
        Guard.Within(Guard.NotNull(air).DryBulb, TemperatureShift.Thermometer, nameof(air));
        return new(RoomClimateKind.Held, air, Checked(surface));
    }

    /// <summary>A room whose temperature swings by day as a cosine, in steps of an hour.</summary>
    /// <param name="mean">The air at the mean temperature of the day; its dew point holds all day.</param>
    /// <param name="surface">The coldest surface when the air is at its mean, −20 to 60 °C.</param>
    /// <param name="swing">Half the difference between the warmest and the coldest hour, more than 0 and at most 20 K.</param>
    /// <param name="warmest">The warmest time of day, 0 to 24 h after midnight.</param>
    /// <returns>The climate.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="mean"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is outside its range, or an hour of the day would be outside −20 to 60 °C.
    /// </exception>
    public static RoomClimate Daily(MoistAir mean, Temperature surface, TemperatureDelta swing, TimeSpan warmest)
    {
        Guard.NotNull(mean);
        double cold = Checked(surface);
        double half = Guard.Within(swing, Swings);
        Guard.Within(warmest, Bounds.Between(0, 86400, Measure.Hours));
        double lowest = Math.Min(cold, mean.DryBulb.Kelvins) - half;
        double highest = Math.Max(cold, mean.DryBulb.Kelvins) + half;
        Guard.Rule(
            lowest >= TemperatureShift.Thermometer.Minimum && highest <= TemperatureShift.Thermometer.Maximum,
            nameof(swing), half, Measure.TemperatureDifference, "a swing that stays within " + TemperatureShift.Thermometer);
        return new(RoomClimateKind.Daily, mean, cold) { SwingKelvins = half, Warmest = warmest };
    }

    /// <summary>A room by a log or forecast of its air.</summary>
    /// <param name="log">Temperature of the air by the clock; it has to cover the job, or its last value has to hold on.</param>
    /// <param name="dewPoint">Dew point of the air, −40 to 60 °C; where the air is colder than that it counts as saturated.</param>
    /// <param name="surface">The coldest surface at the start of the log, −20 to 60 °C; its distance from the air stays.</param>
    /// <returns>The climate.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="log"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or the surface would leave −20 to 60 °C.</exception>
    public static RoomClimate Logged(TemperatureHistory log, Temperature dewPoint, Temperature surface)
    {
        Guard.NotNull(log);
        double cold = Checked(surface);
        double first = log.Kelvins[0];
        double dew = Guard.Within(dewPoint, Bounds.Between(233.15, 333.15, Measure.Temperature));
        double below = cold - first;
        for (int i = 0; i < log.Kelvins.Count; i++)
        {
            double there = log.Kelvins[i] + below;
            Guard.Rule(TemperatureShift.Thermometer.Contains(there), nameof(surface), cold, Measure.Temperature, "a surface that stays within " + TemperatureShift.Thermometer + " over the whole log");
        }

        MoistAir air = MoistAir.FromDewPoint(Temperature.FromKelvins(first), Temperature.FromKelvins(Math.Min(dew, first)));
        return new(RoomClimateKind.Logged, air, cold) { Log = log, LoggedDewPoint = dew };
    }

    /// <summary>What it is in one line, in metric units.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Kind switch
    {
        RoomClimateKind.Held => Air + "; surface " + Measure.Temperature.Format(SurfaceKelvins),
        RoomClimateKind.Daily => Air + "; surface " + Measure.Temperature.Format(SurfaceKelvins) + "; ± " + Measure.TemperatureDifference.Format(SwingKelvins) + " over the day",
        _ => "air by a log of " + Figures.Fixed(Log!.Segments.Count, 0) + " stretches; surface " + Measure.Temperature.Format(SurfaceKelvins) + " at its start",
    };

    internal double LoggedDewPoint { get; private init; } = double.NaN;

    internal double DewPointKelvins => double.IsNaN(LoggedDewPoint) ? Air.DewPointKelvins : LoggedDewPoint;

    internal double SurfaceKelvins { get; }

    internal double SwingKelvins { get; private init; }

    private static double Checked(Temperature surface) => Guard.Within(surface, TemperatureShift.Thermometer);
}
