using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Refinish.Coatings;
using Refinish.Curing;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Curing;

public class EquivalentAgeTests
{
    private static readonly DateTimeOffset Five = new(2026, 3, 3, 17, 0, 0, TimeSpan.FromHours(-5));

    private static readonly TemperatureShift Doubling = TemperatureShift.Doubling(2);

    // Heater off from 18:00 to 08:00.
    private static readonly TemperatureHistory Night = new(Five, [At(1, 20), At(14, 12), At(10, 20)], true);

    private static readonly EquivalentAge Age = new(Night, Doubling, C(25));

    private static readonly CureTimes Times = new()
    {
        ReferenceTemperature = C(25),
        MinimumTemperature = C(10),
        MaximumTemperature = C(35),
        PotLife = TimeSpan.FromMinutes(120),
        TouchDry = TimeSpan.FromHours(0.5),
        RecoatOpens = TimeSpan.FromHours(2),
        RecoatCloses = TimeSpan.FromHours(6),
        WaterService = TimeSpan.FromHours(24),
        FullCure = TimeSpan.FromDays(7),
        Source = Source.Invented("times for these tests"),
    };

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static TemperatureSegment At(double hours, double celsius) => new(TimeSpan.FromHours(hours), C(celsius));

    private static double Part(NormalFloat x) => Math.Abs(x.Get) % 1;

    private static TemperatureHistory Random(NormalFloat a, NormalFloat b, NormalFloat c, bool on) => new(
        Five,
        Enumerable.Range(1, 12).Select(i => At(0.5 + (5 * ((i * Part(a)) % 1)), -20 + (80 * ((i * Part(b)) + Part(c)) % 80))),
        on);

    private static void At(string time, DateTimeOffset? instant)
    {
        Assert.NotNull(instant);
        DateTimeOffset expected = DateTimeOffset.ParseExact(time, "yyyy-MM-dd HH:mm zzz",
            System.Globalization.CultureInfo.InvariantCulture);
        Numbers.Near(0, (instant.Value - expected).TotalMinutes, 0.5);
    }

    [Fact]
    [Evidence(Basis.Independent, "derived by hand: 4 h at 22 °C, 10 h at 12 °C and 4 h at 20 °C are 10.14 h at 25 °C when the rate doubles for ten kelvins; no published source")]
    public void Three_stretches_add_up()
    {
        EquivalentAge age = new(new TemperatureHistory(Five, [At(4, 22), At(10, 12), At(4, 20)]), Doubling, C(25));
        Numbers.Near(10.14, age.Between(Five, Five.AddHours(18)).TotalHours, 0.005);
        Workings workings = age.Workings(Five, Five.AddHours(18));
        Assert.Equal(4, workings.Steps.Count);
        Numbers.CanBeWritten(workings);
    }

    [Fact]
    [Evidence(Basis.Independent, "derived by hand: a window of 6 h at 25 °C from 17:00 closes at 07:02 when the heater is off from 18:00 to 08:00 (12 °C, else 20 °C), at 01:29 at a constant 20 °C; at 08:45 the age is 6.92 h; from 18:32 it would close at 08:45")]
    public void Cold_night_keeps_the_window_open()
    {
        TimeSpan six = TimeSpan.FromHours(6);
        At("2026-03-04 07:02 -05:00", Age.InstantOf(Five, six));
        At("2026-03-04 08:45 -05:00", Age.InstantOf(Five.AddMinutes(92), six));
        Numbers.Near(6.92, Age.Between(Five, Five.AddHours(15.75)).TotalHours, 0.005);
        At("2026-03-04 01:29 -05:00", new EquivalentAge(TemperatureHistory.Constant(Five, C(20)), Doubling, C(25)).InstantOf(Five, six));
        Numbers.CanBeWritten(Age.WorkingsOfInstant(Five, six));
        Assert.Equal(Five.Offset, Age.InstantOf(Five, six)!.Value.Offset);
    }

    [Fact]
    [Evidence(Basis.Independent, "piecewise integral by the midpoint rule with a minute's step, written here")]
    public void Sum_matches_a_plain_integration()
    {
        TemperatureShift law = TemperatureShift.Arrhenius(MolarEnergy.FromKilojoulesPerMole(55));
        EquivalentAge age = new(Night, law, C(25));
        double hours = 0;
        for (int minute = 0; minute < 30 * 60; minute++)
        {
            double kelvins = Night.At(Five.AddMinutes(minute + 0.5)).Kelvins;
            hours += Math.Exp(-55000 / 8.314462618 * ((1 / kelvins) - (1 / 298.15))) / 60;
        }

        Numbers.Close(hours, age.Between(Five, Five.AddHours(30)).TotalHours, 1e-9);
    }

    [Property]
    [Evidence(Basis.Identity, "ages of adjoining intervals add up; the instant of an age gives the age back and is the first to do so; workings hold to the kernel")]
    public void Ages_add_up_and_invert(NormalFloat a, NormalFloat b, NormalFloat c, bool on)
    {
        TemperatureHistory history = Random(a, b, c, on);
        EquivalentAge age = new(history, Doubling, C(23));
        TimeSpan all = TimeSpan.FromTicks(history.Segments.Sum(s => s.Duration.Ticks));
        DateTimeOffset one = Five.AddTicks((long)(all.Ticks * 0.5 * Part(b)));
        DateTimeOffset two = one.AddTicks((long)(all.Ticks * 0.25 * Part(c)));
        DateTimeOffset three = two.AddTicks((long)(all.Ticks * 0.25 * Part(a)));
        TimeSpan whole = age.Between(one, three);
        Numbers.Near(whole.TotalSeconds, (age.Between(one, two) + age.Between(two, three)).TotalSeconds, 1e-6);
        Assert.Equal(TimeSpan.Zero, age.Between(two, two));
        DateTimeOffset reached = age.InstantOf(one, age.Between(one, two))!.Value;
        Numbers.Near(age.Between(one, two).TotalSeconds, age.Between(one, reached).TotalSeconds, 1e-5);
        Numbers.CanBeWritten(age.Workings(one, three));

        // The sum over a log on plain numbers is the one that is written out.
        Numbers.Near(whole.TotalSeconds, age.Workings(one, three).Steps[^1].Value, 1e-6);
        Numbers.Near((reached - one).TotalSeconds, age.WorkingsOfInstant(one, age.Between(one, two)).Steps[^1].Value, 1e-6);
        Numbers.CanBeWritten(age.WorkingsOfInstant(one, age.Between(one, two)));
        TimeSpan tooOld = age.Between(one, Five + all) + TimeSpan.FromSeconds(1);
        Assert.Equal(on, age.InstantOf(one, tooOld) is not null);
        Numbers.CanBeWritten(age.WorkingsOfInstant(one, tooOld));
    }

    [Fact]
    [Evidence(Basis.Identity, "a constant history at the reference ages as the clock does; a warmer one is never younger")]
    public void Constant_histories()
    {
        EquivalentAge reference = new(TemperatureHistory.Constant(Five, C(25)), Doubling, C(25));
        Assert.Equal(TimeSpan.FromHours(30), reference.Between(Five, Five.AddHours(30)));
        Assert.Equal(Five.AddHours(30), reference.InstantOf(Five, TimeSpan.FromHours(30)));
        TimeSpan last = TimeSpan.Zero;
        for (int celsius = -20; celsius <= 60; celsius++)
        {
            TimeSpan age = new EquivalentAge(TemperatureHistory.Constant(Five, C(celsius)), Doubling, C(25)).Between(Five, Five.AddDays(1));
            Assert.True(age > last);
            last = age;
        }
    }

    [Fact]
    [Evidence(Basis.Identity, "elapsed time between instants: a night on which the clocks go forward (US, 8 March 2026) ages by the hours that pass, not by those on the dial")]
    public void Clock_changes_neither_add_nor_lose_an_hour()
    {
        DateTimeOffset evening = new(2026, 3, 7, 18, 0, 0, TimeSpan.FromHours(-5));
        DateTimeOffset morning = new(2026, 3, 8, 8, 0, 0, TimeSpan.FromHours(-4));
        EquivalentAge age = new(TemperatureHistory.Constant(evening, C(25)), Doubling, C(25));
        Assert.Equal(TimeSpan.FromHours(13), age.Between(evening, morning));
        DateTimeOffset autumn = new(2026, 10, 31, 18, 0, 0, TimeSpan.FromHours(-4));
        DateTimeOffset after = new(2026, 11, 1, 8, 0, 0, TimeSpan.FromHours(-5));
        Assert.Equal(TimeSpan.FromHours(15), new EquivalentAge(TemperatureHistory.Constant(autumn, C(25)), Doubling, C(25))
            .Between(autumn, after));
        Assert.Equal(Night, new TemperatureHistory(Five.ToUniversalTime(), [At(1, 20), At(14, 12), At(10, 20)], true));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 3 h at 25 °C take 3 h at 25 °C and 6 h at 15 °C; back from 20:00, with 15 °C until 19:00 and 25 °C afterwards, 1 h and then 4 h for the other two, so 15:00")]
    public void An_age_is_walked_backwards()
    {
        DateTimeOffset noon = Five.AddHours(-5);
        Assert.Equal(noon.AddHours(4), new EquivalentAge(TemperatureHistory.Constant(noon, C(25)), Doubling, C(25))
            .InstantBefore(noon.AddHours(7), TimeSpan.FromHours(3)));
        Assert.Equal(noon.AddHours(1), new EquivalentAge(TemperatureHistory.Constant(noon, C(15)), Doubling, C(25))
            .InstantBefore(noon.AddHours(7), TimeSpan.FromHours(3)));
        EquivalentAge two = new(new TemperatureHistory(noon, [At(7, 15), At(5, 25)]), Doubling, C(25));
        Assert.Equal(noon.AddHours(3), two.InstantBefore(noon.AddHours(8), TimeSpan.FromHours(3)));
        Assert.Equal(noon.AddHours(8), two.InstantBefore(noon.AddHours(8), TimeSpan.Zero));
        Assert.Null(two.InstantBefore(noon.AddHours(8), TimeSpan.FromHours(5)));
        Assert.Equal(Five.Offset, two.InstantBefore(noon.AddHours(8), TimeSpan.FromHours(3))!.Value.Offset);
        Numbers.Refuses("until", () => _ = two.InstantBefore(noon.AddHours(13), TimeSpan.Zero));
        Numbers.Refuses("age", () => _ = two.InstantBefore(noon, TimeSpan.FromTicks(-1)));
    }

    [Property]
    [Evidence(Basis.Identity, "from the instant before, at most the age is gained and a tick earlier more; forwards again the age is gained at the instant it was walked back from")]
    public void Backwards_and_forwards_are_inverse(NormalFloat a, NormalFloat b, NormalFloat c, bool on)
    {
        EquivalentAge age = new(Random(a, b, c, on), Doubling, C(23));
        TimeSpan all = TimeSpan.FromTicks(age.History.Segments.Sum(s => s.Duration.Ticks));
        DateTimeOffset until = Five.AddTicks((long)(all.Ticks * (0.5 + (0.5 * Part(a)))));
        TimeSpan gained = TimeSpan.FromTicks((long)(age.Between(Five, until).Ticks * Part(b) * 0.999));
        DateTimeOffset from = age.InstantBefore(until, gained)!.Value;
        Assert.True(age.Between(from, until) <= gained + TimeSpan.FromTicks(1));
        Numbers.Near(gained.TotalSeconds, age.Between(from, until).TotalSeconds, 1e-5);
        Numbers.Near(0, (age.InstantOf(from, gained)!.Value - until).TotalSeconds, 1e-4);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: of 1 h at 25 °C, 10 h at 8 °C and 3 h at 15 °C only the first and the last count when nothing progresses below 10 °C: 1 + 0 + 1.5 h; 2 h are gained 2 h into the last; back from the end 1.5 h reach the end of the cold, and more reach its beginning")]
    public void Below_a_temperature_nothing_progresses()
    {
        EquivalentAge age = new(new TemperatureHistory(Five, [At(1, 25), At(10, 8), At(3, 15)]), Doubling, C(25), C(10));
        Assert.Equal(TimeSpan.FromHours(2.5), age.Between(Five, Five.AddHours(14)));
        Assert.Equal(Five.AddHours(13), age.InstantOf(Five, TimeSpan.FromHours(2)));
        Assert.Equal(Five.AddHours(1), age.InstantOf(Five, TimeSpan.FromHours(1)));
        Assert.Equal(Five.AddHours(0.5), age.InstantBefore(Five.AddHours(14), TimeSpan.FromHours(2)));
        Assert.Equal(Five.AddHours(1), age.InstantBefore(Five.AddHours(6), TimeSpan.Zero));
        Workings workings = age.Workings(Five, Five.AddHours(14));
        Numbers.CanBeWritten(workings);
        Assert.Contains("too cold for anything to progress", workings.Steps[1].Name, StringComparison.Ordinal);
        Numbers.CanBeWritten(age.WorkingsOfInstant(Five, TimeSpan.FromHours(2)));
        Numbers.CanBeWritten(age.WorkingsOfInstant(Five.AddHours(2), TimeSpan.Zero));
        EquivalentAge cold = new(new TemperatureHistory(Five, [At(1, 25), At(1, 8)], true), Doubling, C(25), C(10));
        Assert.Null(cold.InstantOf(Five, TimeSpan.FromHours(1.5)));
        Assert.Equal(Five.AddHours(1), cold.InstantOf(Five, TimeSpan.FromHours(1)));
        Numbers.CanBeWritten(cold.WorkingsOfInstant(Five, TimeSpan.FromHours(1.5)));
        Assert.NotEqual(cold, new EquivalentAge(cold.History, cold.Shift, cold.Reference, null));
        Assert.Equal(new EquivalentAge(cold.History, Doubling, C(25)), new EquivalentAge(cold.History, cold.Shift, cold.Reference, null));
        Assert.True(new EquivalentAge(cold.History, cold.Shift, cold.Reference, C(8)).InstantOf(Five, TimeSpan.FromHours(1.5)) is not null);
        Assert.Equal("hours at 25 °C, rate × 2 for ten kelvins, nothing below 10 °C", cold.ToString());
        Numbers.Refuses("stopsBelow", () => _ = new EquivalentAge(cold.History, cold.Shift, cold.Reference, C(61)));
    }

    [Fact]
    [Evidence(Basis.Contract, "refusals, an age not reached within the history, text")]
    public void Refuses_and_prints()
    {
        TemperatureHistory known = new(Five, [At(4, 22), At(10, 12)]);
        EquivalentAge age = new(known, Doubling, C(25));
        Numbers.Refuses("from", () => _ = age.Between(Five.AddSeconds(-1), Five));
        Numbers.Refuses("to", () => _ = age.Between(Five, Five.AddHours(14.01)));
        Numbers.Refuses("to", () => _ = age.Between(Five.AddHours(2), Five.AddHours(1)));
        Numbers.Refuses("age", () => _ = age.InstantOf(Five, TimeSpan.FromSeconds(-1)));
        Numbers.Refuses("instant", () => _ = known.At(Five.AddHours(15)));
        Numbers.Refuses("duration", () => _ = new TemperatureSegment(TimeSpan.Zero, C(20)));
        Numbers.Refuses("temperature", () => _ = At(1, 61));
        Numbers.Refuses("reference", () => _ = new EquivalentAge(known, Doubling, C(61)));
        Assert.Throws<ArgumentException>(() => new TemperatureHistory(Five, []));
        Numbers.Refuses("segments", () => _ = new TemperatureHistory(DateTimeOffset.MaxValue, [At(1, 20)]));
        Assert.Null(age.InstantOf(Five, TimeSpan.FromHours(14)));
        Assert.Equal(Five.AddHours(14), known.End);
        Assert.Null(Night.End);
        Assert.Equal(12, known.At(Five.AddHours(4)).DegreesCelsius, 9);
        Assert.Equal(12, known.At(Five.AddHours(14)).DegreesCelsius, 9);
        Assert.Equal("14 h at 12 °C", At(14, 12).ToString());
        Assert.Equal("from 2026-03-03 22:00Z: 4 h at 22 °C, 10 h at 12 °C", known.ToString());
        Assert.Equal("hours at 25 °C, rate × 2 for ten kelvins", age.ToString());
        Assert.Null(new EquivalentAge(TemperatureHistory.Constant(DateTimeOffset.MaxValue.AddDays(-1), C(0)), Doubling, C(60))
            .InstantOf(DateTimeOffset.MaxValue.AddDays(-1), TimeSpan.FromDays(1)));
    }

    [Fact]
    [Evidence(Basis.Independent, "as above by hand: recoat window of 6 h at 25 °C through the cold night closes at 07:02; forecast and clock agree at a constant temperature")]
    public void Stages_come_out_as_clock_times()
    {
        CureClock clock = new(Times, Night, Five);
        At("2026-03-04 07:02 -05:00", clock.RecoatCloses);
        Assert.True(clock.IsComplete);
        Assert.True(clock.TouchDry < clock.RecoatOpens && clock.RecoatOpens < clock.RecoatCloses
            && clock.RecoatCloses < clock.WaterService && clock.WaterService < clock.FullCure);
        Workings workings = clock.Workings();
        Assert.Equal(5, workings.Parts.Count);
        Numbers.CanBeWritten(workings);

        CureForecast forecast = new(Times, C(18));
        CureClock steady = new(Times, TemperatureHistory.Constant(Five, C(18)), Five.AddHours(2));
        Numbers.Near(forecast.WaterService!.Value.TotalSeconds, (steady.WaterService!.Value - Five.AddHours(2)).TotalSeconds, 1e-6);
        Numbers.Near(forecast.FullCure!.Value.TotalSeconds, (steady.FullCure!.Value - Five.AddHours(2)).TotalSeconds, 1e-6);
        Assert.Null(new CureClock(Times with { RecoatCloses = null }, Night, Five).RecoatCloses);
    }

    [Fact]
    [Evidence(Basis.Contract, "no stage is dated after the surface has left the product's range or the history has ended, and the checks say why")]
    public void Nothing_is_dated_outside_the_range()
    {
        CureClock cold = new(Times with { MinimumTemperature = C(15) }, Night, Five);
        Assert.False(cold.IsComplete);
        Assert.Equal(ComparisonOutcome.Beyond, cold.Checks[0].Outcome);
        Assert.NotNull(cold.TouchDry);
        Assert.Null(cold.RecoatOpens);
        Assert.Null(cold.RecoatCloses);
        Assert.Null(cold.WaterService);
        Assert.Single(cold.Workings().Parts);
        Numbers.CanBeWritten(cold.Workings());

        CureClock brief = new(Times, new TemperatureHistory(Five, [At(10, 20)]), Five);
        Assert.False(brief.IsComplete);
        Assert.Equal(ComparisonOutcome.Beyond, brief.Checks[2].Outcome);
        Assert.NotNull(brief.RecoatOpens);
        Assert.Null(brief.WaterService);
        Assert.Contains("water from not known", brief.ToString(), StringComparison.Ordinal);
        Numbers.Refuses("applied", () => _ = new CureClock(Times, Night, Five.AddHours(-1)));

        // Cold before the application or after the full cure does not matter.
        TemperatureHistory late = new(Five, [At(1, 0), At(400, 20), At(10, -5)]);
        Assert.True(new CureClock(Times, late, Five.AddHours(1)).IsComplete);
    }
}
