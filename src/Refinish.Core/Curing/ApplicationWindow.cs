using System;
using System.Collections.Generic;
using System.Globalization;
using Refinish.Coatings;

namespace Refinish.Curing;

/// <summary>
/// When a coat may go on for the next one to meet its recoat window: back from the instant of the next coat, over the temperatures until
/// then.
/// </summary>
/// <remarks>
/// <para>The latest application is that from which the coat has gained the age at which its window opens, the earliest that from which it
/// has not gained more than that at which the window closes (<see cref="EquivalentAge"/>), and no earlier than the last instant at which
/// the surface was outside the product's temperature range. It is <see cref="CureClock"/> asked backwards: a coat that goes on within the
/// window has its recoat window open at the next coat.</para>
/// <para>For a crew that can come from one instant to another, ask for both: the latest application of the later, the earliest of the
/// earlier.</para>
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
/// DateTimeOffset morning = new(2026, 3, 4, 8, 0, 0, TimeSpan.Zero);
/// TemperatureHistory night = TemperatureHistory.Constant(morning.AddDays(-1), Temperature.FromDegreesCelsius(15));
/// ApplicationWindow window = new(times, night, morning);
/// DateTimeOffset? latest = window.Latest;        // 04:00, four hours of 15 °C before
/// DateTimeOffset? earliest = window.Earliest;    // 20:00 in the evening
/// </code></example>
public sealed record ApplicationWindow
{
    // The law of the times, as if the coat had been applied at the start of the history.
    private readonly CureClock clock;

    /// <summary>
    /// Takes the times, the temperatures and the instant of the next coat; the law is the data sheet's own factor for ten kelvins.
    /// </summary>
    /// <param name="times">The data sheet's times.</param>
    /// <param name="history">The temperatures of the coated surface.</param>
    /// <param name="nextCoat">When the next coat is to go on; within the history.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="nextCoat"/> is outside the history, or the times contradict each other.
    /// </exception>
    public ApplicationWindow(CureTimes times, TemperatureHistory history, DateTimeOffset nextCoat)
        : this(times, history, nextCoat, TemperatureShift.Doubling(Guard.NotNull(times).RatePerTenKelvin))
    {
    }

    /// <summary>Takes the times, the temperatures and the instant of the next coat.</summary>
    /// <param name="times">The data sheet's times.</param>
    /// <param name="history">The temperatures of the coated surface.</param>
    /// <param name="nextCoat">When the next coat is to go on; within the history.</param>
    /// <param name="shift">The law.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="nextCoat"/> is outside the history, or the times contradict each other.
    /// </exception>
    public ApplicationWindow(CureTimes times, TemperatureHistory history, DateTimeOffset nextCoat, TemperatureShift shift)
        : this(new CureClock(times, Guard.NotNull(history), history.Start, shift), nextCoat)
    {
    }

    private ApplicationWindow(CureClock clock, DateTimeOffset nextCoat)
    {
        this.clock = clock;
        History.TicksOf(nextCoat, nameof(nextCoat));
        NextCoat = nextCoat;
        Latest = clock.AgeOf(CureStage.RecoatOpens).LatestBefore(nextCoat, Times.RecoatOpens);
        DateTimeOffset? closes = Times.RecoatCloses is TimeSpan open
            ? clock.AgeOf(CureStage.RecoatCloses).InstantBefore(nextCoat, open)
            : null;
        WithinRangeFrom = clock.InRangeUntil(nextCoat)?.ToOffset(nextCoat.Offset);
        Earliest = closes > WithinRangeFrom ? closes : WithinRangeFrom;
        WhyNone = Reason();
        Latest = WhyNone is null ? Latest : null;
        Earliest = WhyNone is null ? Earliest : null;
    }

    /// <summary>The window by a data sheet's table, each stage by its own law.</summary>
    /// <param name="table">The table.</param>
    /// <param name="history">The temperatures of the coated surface.</param>
    /// <param name="nextCoat">When the next coat is to go on; within the history.</param>
    /// <returns>The window; its <see cref="Times"/> are those in the middle of the table's range.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="nextCoat"/> is outside the history.</exception>
    public static ApplicationWindow FromFit(CureTableFit table, TemperatureHistory history, DateTimeOffset nextCoat) =>
        new(CureClock.FromFit(table, Guard.NotNull(history), history.Start), nextCoat);

    /// <summary>The data sheet's times.</summary>
    public CureTimes Times => clock.Times;

    /// <summary>Temperature of the surface over the time of the two coats.</summary>
    public TemperatureHistory History => clock.History;

    /// <summary>When the next coat is to go on.</summary>
    public DateTimeOffset NextCoat { get; }

    /// <summary>The application may end here at the latest; <see langword="null"/> when no instant will do, see
    /// <see cref="WhyNone"/>.</summary>
    public DateTimeOffset? Latest { get; }

    /// <summary>
    /// The application may end here at the earliest: before, the window would have closed, the surface was outside the product's range, or
    /// nothing is known of it; <see langword="null"/> when no instant will do.
    /// </summary>
    public DateTimeOffset? Earliest { get; }

    /// <summary>
    /// From here until the next coat the surface stays within the product's temperature range; <see langword="null"/> when it leaves it
    /// just before. The start of the history when it never does.
    /// </summary>
    public DateTimeOffset? WithinRangeFrom { get; }

    /// <summary>Why no instant will do; <see langword="null"/> when one does.</summary>
    public string? WhyNone { get; }

    /// <summary>How the ages between latest and earliest application and the next coat follow.</summary>
    /// <returns>The derivation; without parts when no instant will do.</returns>
    public Workings Workings()
    {
        List<Workings> parts = [];
        if (Latest is DateTimeOffset latest && Earliest is DateTimeOffset earliest)
        {
            EquivalentAge opens = clock.AgeOf(CureStage.RecoatOpens);
            parts.Add(new Workings("Age from the latest application to the next coat", opens.Workings(latest, NextCoat).Steps));
            if (Times.RecoatCloses is not null)
            {
                EquivalentAge closes = clock.AgeOf(CureStage.RecoatCloses);
                parts.Add(new Workings("Age from the earliest application to the next coat", closes.Workings(earliest, NextCoat).Steps));
            }
        }

        return new Workings(WhyNone is null ? "When a coat may go on" : "No application: " + WhyNone, [], parts);
    }

    /// <summary>The window in one line, in UTC; the earliest rounded up, the latest down to whole minutes.</summary>
    /// <returns>Text such as <c>apply from 2026-03-03 20:00Z, to 2026-03-04 04:00Z</c>.</returns>
    public override string ToString() => Earliest is DateTimeOffset earliest && Latest is DateTimeOffset latest
        ? "apply from " + Text(CarefulTime.Up(earliest)) + ", to " + Text(CarefulTime.Down(latest))
        : "no application: " + WhyNone;

    private static string Text(DateTimeOffset instant) => instant.UtcDateTime.ToString("yyyy-MM-dd HH:mm'Z'", CultureInfo.InvariantCulture);

    private string? Reason()
    {
        if (WithinRangeFrom is null)
        {
            return "the surface is outside the product's range, " + Measure.Temperature.Format(Times.MinimumTemperature.Kelvins) + " to "
                + Measure.Temperature.Format(Times.MaximumTemperature.Kelvins) + ", just before the next coat";
        }

        if (Latest is null)
        {
            return "the known history begins too late for the window to open by the next coat";
        }

        return Latest >= Earliest
            ? null
            : "the surface is within the product's range only from " + Text(WithinRangeFrom.Value)
                + " on, too late for the window to open by the next coat";
    }
}
