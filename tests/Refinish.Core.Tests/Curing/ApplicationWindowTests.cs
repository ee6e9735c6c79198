using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck.Xunit;
using Refinish.Coatings;
using Refinish.Curing;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Curing;

public class ApplicationWindowTests
{
    private static readonly DateTimeOffset Start = new(2026, 3, 3, 8, 0, 0, TimeSpan.Zero);

    private static readonly CureTimes Times = new()
    {
        ReferenceTemperature = C(25),
        MinimumTemperature = C(10),
        MaximumTemperature = C(35),
        PotLife = TimeSpan.FromHours(2),
        TouchDry = TimeSpan.FromHours(1),
        RecoatOpens = TimeSpan.FromHours(2),
        RecoatCloses = TimeSpan.FromHours(6),
        WaterService = TimeSpan.FromHours(24),
        FullCure = TimeSpan.FromDays(7),
        Source = Source.Invented("a product for this test"),
    };

    [Fact]
    [Evidence(Basis.Independent, "by hand with a factor of 2 for ten kelvins: 15 °C is half the rate of 25 °C, so that the window of 2 to 6 h opens after 4 h and closes after 12 h: for a coat at 08:00, from 20:00 to 04:00")]
    public void A_cool_night_by_hand()
    {
        ApplicationWindow window = new(Times, TemperatureHistory.Constant(Start, C(15)), Start.AddDays(1));
        Assert.Equal(Start.AddHours(20), window.Latest);
        Assert.Equal(Start.AddHours(12), window.Earliest);
        Assert.Null(window.WhyNone);
        Assert.Equal("apply from 2026-03-03 20:00Z, to 2026-03-04 04:00Z", window.ToString());
        Numbers.CanBeWritten(window.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 6 h of 25 °C, then 8 h of 15 °C, the next coat at their end: 2 h are gained in the last 4 h at 15 °C; 6 h in 8 h at 15 °C (4 h) and 2 h at 25 °C")]
    public void Two_temperatures_by_hand()
    {
        TemperatureHistory history = History((6, 25), (8, 15));
        ApplicationWindow window = new(Times, history, Start.AddHours(14));
        Assert.Equal(Start.AddHours(10), window.Latest);
        Assert.Equal(Start.AddHours(4), window.Earliest);
        EquivalentAge age = new(history, TemperatureShift.Doubling(2), C(25));
        Assert.Equal(Start.AddHours(10), age.LatestBefore(Start.AddHours(14), TimeSpan.FromHours(2)));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: a surface of 5 °C until 6 h is outside the range of 10 to 35 °C, so that nothing may go on before; too late for the window when the next coat follows 3 h of 15 °C later")]
    public void The_range_of_the_product_limits_the_earliest()
    {
        TemperatureHistory history = History((6, 5), (20, 15));
        ApplicationWindow window = new(Times, history, Start.AddHours(12));
        Assert.Equal(Start.AddHours(6), window.Earliest);
        Assert.Equal(Start.AddHours(8), window.Latest);
        Assert.Equal(Start.AddHours(6), window.WithinRangeFrom);
        ApplicationWindow late = new(Times, history, Start.AddHours(9));
        Assert.Null(late.Latest);
        Assert.Null(late.Earliest);
        Assert.Contains("only from 2026-03-03 14:00Z on", late.WhyNone, StringComparison.Ordinal);
        ApplicationWindow outside = new(Times, history, Start.AddHours(5));
        Assert.Contains("10 °C to 35 °C, just before the next coat", outside.WhyNone, StringComparison.Ordinal);
        Assert.Empty(outside.Workings().Parts);
        ApplicationWindow young = new(Times, History((20, 15)), Start.AddHours(3));
        Assert.Contains("begins too late", young.WhyNone, StringComparison.Ordinal);
        Assert.StartsWith("no application: ", young.ToString(), StringComparison.Ordinal);
        ApplicationWindow open = new(Times with { RecoatCloses = null }, History((20, 15)), Start.AddHours(19));
        Assert.Equal(Start, open.Earliest);
        Assert.Equal(Start.AddHours(15), open.Latest);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: below the temperature at which the product stops nothing is gained, so that 2 h of 25 °C before 5 h of 9 °C are the last; a film may be 2 h old from there and from no later")]
    public void Hours_without_progress_do_not_count()
    {
        EquivalentAge age = new(History((4, 25), (5, 9)), TemperatureShift.Doubling(2), C(25), C(10));
        Assert.Equal(Start.AddHours(2), age.LatestBefore(Start.AddHours(9), TimeSpan.FromHours(2)));
        Assert.Equal(Start.AddHours(9), age.LatestBefore(Start.AddHours(9), TimeSpan.Zero));
        Assert.Null(age.LatestBefore(Start.AddHours(9), TimeSpan.FromHours(4.1)));
        Numbers.Refuses("until", () => age.LatestBefore(Start.AddHours(10), TimeSpan.Zero));
        Numbers.Refuses("age", () => age.LatestBefore(Start, TimeSpan.FromHours(-1)));
    }

    [Property]
    [Evidence(Basis.Identity, "a coat applied at the latest instant has its window open at the next coat and one a second later has not; at the earliest it has not closed, a second earlier it has; whatever the temperatures")]
    public void It_is_the_clock_asked_backwards(byte[] temperatures)
    {
        (double, double)[] stretches = [.. (temperatures ?? []).Take(8).Select(one => (1 + (one % 3) + 0.37, 12 + (one % 20))), (30, 18.5)];
        TemperatureHistory history = History(stretches);
        DateTimeOffset next = Start.AddHours(stretches.Sum(one => one.Item1) - 0.9);
        ApplicationWindow window = new(Times, history, next);
        TimeSpan second = TimeSpan.FromTicks(TimeSpan.TicksPerSecond);
        Assert.True(new CureClock(Times, history, window.Latest!.Value - TimeSpan.FromTicks(2)).RecoatOpens <= next);
        Assert.True(!(new CureClock(Times, history, window.Latest.Value + second).RecoatOpens <= next));
        Assert.True(new CureClock(Times, history, window.Earliest!.Value + TimeSpan.FromTicks(2)).RecoatCloses >= next);
        Assert.True(new CureClock(Times, history, window.Earliest.Value - second).RecoatCloses < next);
        Numbers.CanBeWritten(window.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "a table of times gives each end its own law, as the clock does; equality; the next coat has to lie within the history")]
    public void Of_a_table()
    {
        CureTableFit table = new(
            [
                Row(CureStage.TouchDry, 2, 1),
                Row(CureStage.RecoatOpens, 5, 2),
                Row(CureStage.RecoatCloses, 30, 20),
                Row(CureStage.WaterService, 48, 24),
                Row(CureStage.FullCure, 300, 160),
            ],
            C(10), C(35), Source.Invented("a table for this test"));
        TemperatureHistory history = TemperatureHistory.Constant(Start, C(15));
        ApplicationWindow window = ApplicationWindow.FromFit(table, history, Start.AddHours(40));
        Numbers.Near(35, (window.Latest!.Value - Start).TotalHours, 1e-6);
        Numbers.Near(10, (window.Earliest!.Value - Start).TotalHours, 1e-6);
        Assert.Equal(window, ApplicationWindow.FromFit(table, history, Start.AddHours(40)));
        Numbers.Refuses("nextCoat", () => _ = new ApplicationWindow(Times, history, Start.AddHours(-1)));
        Assert.Throws<ArgumentNullException>(() => new ApplicationWindow(Times, null!, Start));
    }

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static StageTimes Row(CureStage stage, double at15, double at25) =>
        new(stage, [new TabulatedTime(C(15), TimeSpan.FromHours(at15)), new TabulatedTime(C(25), TimeSpan.FromHours(at25))]);

    private static TemperatureHistory History(params (double Hours, double Celsius)[] stretches) =>
        new(Start, stretches.Select(one => new TemperatureSegment(TimeSpan.FromHours(one.Hours), C(one.Celsius))));
}
