using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>
/// The stages of a data sheet as instants, for a coat that was applied at a known instant and has the temperatures of a history.
/// </summary>
/// <remarks>
/// A stage is reached when the equivalent age since application is the data sheet's time (<see cref="EquivalentAge"/>). An instant is
/// given only when the surface stays within the product's temperature range until then, and only within the known history; otherwise it
/// is <see langword="null"/> and <see cref="Checks"/> says why. Induction and pot life count from mixing, not from application, and are
/// not among them.
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

    // The age of each stage by its own law, where a table tells it.
    private readonly ValueList<EquivalentAge?> stages = ValueList<EquivalentAge?>.Empty;

    /// <summary>
    /// Takes the times, the temperatures and the instant of application; the law is the data sheet's own factor for ten kelvins.
    /// </summary>
    /// <param name="times">The data sheet's times.</param>
    /// <param name="history">The temperatures of the coated surface.</param>
    /// <param name="applied">When the application of the coat ended; within the history.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="applied"/> is outside the history, or the times contradict each other.
    /// </exception>
    public CureClock(CureTimes times, TemperatureHistory history, DateTimeOffset applied)
        : this(times, history, applied, TemperatureShift.Doubling(Guard.NotNull(times).RatePerTenKelvin))
    {
    }

    /// <summary>Takes the times, the temperatures and the instant of application.</summary>
    /// <param name="times">The data sheet's times.</param>
    /// <param name="history">The temperatures of the coated surface.</param>
    /// <param name="applied">When the application of the coat ended; within the history.</param>
    /// <param name="shift">The law.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="applied"/> is outside the history, or the times contradict each other.
    /// </exception>
    public CureClock(CureTimes times, TemperatureHistory history, DateTimeOffset applied, TemperatureShift shift)
    {
        Times = Guard.NotNull(times);
        Times.CheckOrder();
        Guard.NotNull(history).TicksOf(applied, nameof(applied));
        Applied = applied;
        age = new EquivalentAge(history, shift, Times.ReferenceTemperature);
    }

    private CureClock(CureTableFit table, TemperatureHistory history, DateTimeOffset applied, double reference)
        : this(table.Times(reference), history, applied, table.CommonShift) =>
        stages = new ValueList<EquivalentAge?>(
            Enumerable.Range(0, (int)CureStage.FullCure + 1).Select(i => (CureStage)i).Select(stage => table.FitOf(stage) is CureTimeFit fit ? new EquivalentAge(history, fit.Shift, age.Reference) : null));

    /// <summary>The stages of a data sheet's table as instants, each stage by its own law.</summary>
    /// <param name="table">The table.</param>
    /// <param name="history">The temperatures of the coated surface.</param>
    /// <param name="applied">When the application of the coat ended; within the history.</param>
    /// <returns>The stages; their <see cref="Times"/> are those in the middle of the table's range.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="applied"/> is outside the history.</exception>
    public static CureClock FromFit(CureTableFit table, TemperatureHistory history, DateTimeOffset applied)
    {
        Guard.NotNull(table);
        return new CureClock(table, history, applied, (table.Coldest.Kelvins + table.Warmest.Kelvins) / 2);
    }

    /// <summary>The data sheet's times.</summary>
    public CureTimes Times { get; }

    /// <summary>The temperatures.</summary>
    public TemperatureHistory History => age.History;

    /// <summary>The law; of a table, the one common to all its rows.</summary>
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
            DateTimeOffset? end = AgeOf(CureStage.FullCure).InstantOf(Applied, Times.FullCure) ?? History.End;
            double? gained = end is DateTimeOffset known ? AgeOf(CureStage.FullCure).Between(Applied, known).TotalSeconds : null;
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
    public DateTimeOffset? TouchDry => Reached(CureStage.TouchDry, Times.TouchDry);

    /// <summary>The next coat may go on from here; <see langword="null"/> when it cannot be told.</summary>
    public DateTimeOffset? RecoatOpens => Reached(CureStage.RecoatOpens, Times.RecoatOpens);

    /// <summary>
    /// The next coat has to be on by here, else abrade; <see langword="null"/> when the product's window stays open
    /// (<see cref="CureTimes.RecoatCloses"/> is <see langword="null"/> too) and when it cannot be told.
    /// </summary>
    public DateTimeOffset? RecoatCloses => Times.RecoatCloses is TimeSpan closes ? Reached(CureStage.RecoatCloses, closes) : null;

    /// <summary>Water may run on it from here; <see langword="null"/> when it cannot be told.</summary>
    public DateTimeOffset? WaterService => Reached(CureStage.WaterService, Times.WaterService);

    /// <summary>Fully cured; <see langword="null"/> when it cannot be told.</summary>
    public DateTimeOffset? FullCure => Reached(CureStage.FullCure, Times.FullCure);

    /// <summary>How each instant follows, as time since application.</summary>
    /// <returns>The derivation, with one part for each stage that has an instant.</returns>
    public Workings Workings()
    {
        (double lowest, double highest) = Extremes();
        Trace trace = new();
        trace.Margins(CureForecast.ProductRange(Times, lowest, highest), "T", "T_limit");
        Add("Touch dry", CureStage.TouchDry, Times.TouchDry);
        Add("Recoat window opens", CureStage.RecoatOpens, Times.RecoatOpens);
        Add("Recoat window closes", CureStage.RecoatCloses, Times.RecoatCloses);
        Add("Water may run", CureStage.WaterService, Times.WaterService);
        Add("Fully cured", CureStage.FullCure, Times.FullCure);
        return trace.Workings("Stages of cure");

        void Add(string title, CureStage stage, TimeSpan? time)
        {
            if (time is TimeSpan needed && Reached(stage, needed) is not null)
            {
                trace.Part(new Workings(title, AgeOf(stage).WorkingsOfInstant(Applied, needed).Steps));
            }
        }
    }

    /// <summary>
    /// The recoat window and the release to water in one line, in UTC; openings rounded up, the closing down to whole minutes.
    /// </summary>
    /// <returns>Text such as <c>recoat from 2026-03-03 19:49Z, to 2026-03-04 01:29Z, water from 2026-03-05 02:56Z</c>.</returns>
    public override string ToString() =>
        "recoat from " + From(RecoatOpens) + (Times.RecoatCloses is null ? string.Empty : ", to " + To(RecoatCloses)) + ", water from " + From(WaterService);

    private static string From(DateTimeOffset? instant) => Text(instant is DateTimeOffset known ? CarefulTime.Up(known) : null);

    private static string To(DateTimeOffset? instant) => Text(instant is DateTimeOffset known ? CarefulTime.Down(known) : null);

    private static string Text(DateTimeOffset? instant) =>
        instant is DateTimeOffset known ? known.UtcDateTime.ToString("yyyy-MM-dd HH:mm'Z'", System.Globalization.CultureInfo.InvariantCulture) : "not known";

    /// <summary>The age by the law of a stage.</summary>
    internal EquivalentAge AgeOf(CureStage stage) => stages.Count == 0 ? age : stages[(int)stage] ?? age;

    /// <summary>
    /// The instant from which on, application or later, the surface stays within the product's range until another; none when it does not
    /// just before.
    /// </summary>
    internal DateTimeOffset? InRangeUntil(DateTimeOffset until)
    {
        long last = until.UtcTicks - Applied.UtcTicks;
        long? from = 0;
        foreach ((long begin, double kelvins) in Stretches())
        {
            if (begin >= last && begin > 0)
            {
                break;
            }

            from = IsOutside(kelvins) ? null : from ?? begin;
        }

        return from is long ticks ? Applied.AddTicks(ticks) : null;
    }

    private DateTimeOffset? Reached(CureStage stage, TimeSpan time)
    {
        DateTimeOffset? instant = AgeOf(stage).InstantOf(Applied, time);
        return instant is DateTimeOffset known && LeavesRange() is var left && (left is null || known <= left) ? known : null;
    }

    // The first instant from application on at which the surface is outside the product's range.
    private DateTimeOffset? LeavesRange()
    {
        foreach ((long begin, double kelvins) in Stretches())
        {
            if (IsOutside(kelvins))
            {
                return Applied.AddTicks(begin);
            }
        }

        return null;
    }

    private bool IsOutside(double kelvins) => kelvins < Times.MinimumTemperature.Kelvins || kelvins > Times.MaximumTemperature.Kelvins;

    private (double Lowest, double Highest) Extremes()
    {
        long end = AgeOf(CureStage.FullCure).InstantOf(Applied, Times.FullCure) is DateTimeOffset cured ? cured.UtcTicks - Applied.UtcTicks : long.MaxValue;
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
