using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>The stages of a data sheet as instants, for a coat that was applied at a known instant and has the temperatures of a history.</summary>
/// <remarks>
/// A stage is reached when the equivalent age since application is the data sheet's time (<see cref="EquivalentAge"/>). An instant is given only when the
/// surface stays within the product's temperature range until then, and only within the known history; otherwise it is <see langword="null"/>
/// and <see cref="Checks"/> says why. Induction and pot life count from mixing, not from application, and are not among them.
/// </remarks>
/// <example><code>
/// CureTimes times = new()
/// {
///     ReferenceTemperature = Temperature.FromDegreesCelsius(25),
///     MinimumTemperature = Temperature.FromDegreesCelsius(10),
///     MaximumTemperature = Temperature.FromDegreesCelsius(35),
///     PotLife = TimeSpan.FromHours(2),
///     TouchDry = TimeSpan.FromHours(1),
///     RecoatOpens = TimeSpan.FromHours(2),
///     RecoatCloses = TimeSpan.FromHours(6),
///     WaterService = TimeSpan.FromHours(24),
///     FullCure = TimeSpan.FromDays(7),
///     Source = Source.Supplied("product data sheet"),
/// };
/// DateTimeOffset applied = new(2026, 3, 3, 17, 0, 0, TimeSpan.Zero);
/// CureClock clock = new(times, TemperatureHistory.Constant(applied, Temperature.FromDegreesCelsius(20)), applied);
/// DateTimeOffset? closes = clock.RecoatCloses;      // 01:29 in the night
/// </code></example>
public sealed record CureClock
{
    private readonly EquivalentAge age;

    /// <summary>Takes the times, the temperatures and the instant of application.</summary>
    /// <param name="times">The data sheet's times.</param>
    /// <param name="history">The temperatures of the coated surface.</param>
    /// <param name="applied">When the application of the coat ended; within the history.</param>
    /// <param name="shift">The law; the data sheet's own factor for ten kelvins when omitted.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="applied"/> is outside the history, or the times contradict each other.</exception>
    public CureClock(CureTimes times, TemperatureHistory history, DateTimeOffset applied, TemperatureShift? shift = null)
    {
        Times = Guard.NotNull(times, nameof(times));
        Times.CheckOrder();
        Guard.NotNull(history, nameof(history)).TicksOf(applied, nameof(applied));
        Applied = applied;
        age = new EquivalentAge(history, shift ?? TemperatureShift.Doubling(Times.RatePerTenKelvin), Times.ReferenceTemperature);
    }

    /// <summary>The data sheet's times.</summary>
    public CureTimes Times { get; }

    /// <summary>The temperatures.</summary>
    public TemperatureHistory History => age.History;

    /// <summary>The law.</summary>
    public TemperatureShift Shift => age.Shift;

    /// <summary>When the application of the coat ended.</summary>
    public DateTimeOffset Applied { get; }

    /// <summary>
    /// Lowest and highest temperature between application and full cure (or the end of the history) against the product's range,
    /// and the equivalent age by the end of the history against that of full cure.
    /// </summary>
    public IReadOnlyList<LimitComparison> Checks
    {
        get
        {
            (double lowest, double highest) = Extremes();
            DateTimeOffset? end = age.InstantOf(Applied, Times.FullCure) ?? History.End;
            double? gained = end is DateTimeOffset known ? age.Between(Applied, known).TotalSeconds : null;
            return new ValueList<LimitComparison>(
            [
                .. CureForecast.ProductRange(Times, lowest, highest),
                new(
                    "known history long enough for full cure",
                    gained,
                    Times.FullCure.TotalSeconds,
                    LimitSense.AtLeast,
                    Measure.Hours,
                    Times.Source,
                    gained >= Times.FullCure.TotalSeconds ? null : "Give temperatures for a longer time, or let the last one hold on."),
            ]);
        }
    }

    /// <summary>Whether every stage has its instant: every check is within.</summary>
    public bool IsComplete => Checks.All(check => check.Outcome == ComparisonOutcome.Within);

    /// <summary>Dry enough to touch lightly; <see langword="null"/> when it cannot be told.</summary>
    public DateTimeOffset? TouchDry => Reached(Times.TouchDry);

    /// <summary>The next coat may go on from here; <see langword="null"/> when it cannot be told.</summary>
    public DateTimeOffset? RecoatOpens => Reached(Times.RecoatOpens);

    /// <summary>
    /// The next coat has to be on by here, else abrade; <see langword="null"/> when the product's window stays open
    /// (<see cref="CureTimes.RecoatCloses"/> is <see langword="null"/> too) and when it cannot be told.
    /// </summary>
    public DateTimeOffset? RecoatCloses => Times.RecoatCloses is TimeSpan closes ? Reached(closes) : null;

    /// <summary>Water may run on it from here; <see langword="null"/> when it cannot be told.</summary>
    public DateTimeOffset? WaterService => Reached(Times.WaterService);

    /// <summary>Fully cured; <see langword="null"/> when it cannot be told.</summary>
    public DateTimeOffset? FullCure => Reached(Times.FullCure);

    /// <summary>How each instant follows, as time since application.</summary>
    /// <returns>The derivation, with one part for each stage that has an instant.</returns>
    public Workings Workings()
    {
        List<Workings> parts = [];
        Add("Touch dry", Times.TouchDry);
        Add("Recoat window opens", Times.RecoatOpens);
        Add("Recoat window closes", Times.RecoatCloses);
        Add("Water may run", Times.WaterService);
        Add("Fully cured", Times.FullCure);
        (double lowest, double highest) = Extremes();
        return new Workings("Stages of cure", CureForecast.ProductRange(Times, lowest, highest).Select(CuringSteps.Margin), parts);

        void Add(string title, TimeSpan? stage)
        {
            if (stage is TimeSpan needed && Reached(needed) is not null)
            {
                parts.Add(new Workings(title, age.WorkingsOfInstant(Applied, needed).Steps));
            }
        }
    }

    /// <summary>The recoat window and the release to water in one line, in UTC.</summary>
    /// <returns>Text such as <c>recoat from 2026-03-03 19:49Z, to 2026-03-04 01:29Z, water from 2026-03-05 02:56Z</c>.</returns>
    public override string ToString() =>
        "recoat from " + Text(RecoatOpens) + (Times.RecoatCloses is null ? string.Empty : ", to " + Text(RecoatCloses)) + ", water from " + Text(WaterService);

    private static string Text(DateTimeOffset? instant) =>
        instant is DateTimeOffset known ? known.UtcDateTime.ToString("yyyy-MM-dd HH:mm'Z'", System.Globalization.CultureInfo.InvariantCulture) : "not known";

    private DateTimeOffset? Reached(TimeSpan stage)
    {
        DateTimeOffset? instant = age.InstantOf(Applied, stage);
        return instant is DateTimeOffset known && LeavesRange() is var left && (left is null || known <= left) ? known : null;
    }

    // The first instant from application on at which the surface is outside the product's range.
    private DateTimeOffset? LeavesRange()
    {
        foreach ((long begin, double kelvins) in Stretches())
        {
            if (kelvins < Times.MinimumTemperature.Kelvins || kelvins > Times.MaximumTemperature.Kelvins)
            {
                return Applied.AddTicks(begin);
            }
        }

        return null;
    }

    private (double Lowest, double Highest) Extremes()
    {
        long end = age.InstantOf(Applied, Times.FullCure) is DateTimeOffset cured ? cured.UtcTicks - Applied.UtcTicks : long.MaxValue;
        double lowest = double.PositiveInfinity;
        double highest = double.NegativeInfinity;
        foreach ((long begin, double kelvins) in Stretches())
        {
            // The first stretch counts even when nothing has to pass.
            if (begin < end || double.IsInfinity(lowest))
            {
                lowest = Math.Min(lowest, kelvins);
                highest = Math.Max(highest, kelvins);
            }
        }

        return (lowest, highest);
    }

    // The stretches from application on, each with its beginning in ticks after application.
    private IEnumerable<(long Begin, double Kelvins)> Stretches()
    {
        long applied = History.TicksOf(Applied, nameof(Applied));
        for (int i = History.SegmentAt(applied); i < History.List.Count; i++)
        {
            yield return (Math.Max(0, History.BeginOf(i) - applied), History.List[i].Kelvins);
        }
    }
}
