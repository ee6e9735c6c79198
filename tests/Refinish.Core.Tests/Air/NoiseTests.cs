using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Refinish.Air;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

public class NoiseTests
{
    [Fact]
    [Evidence(Basis.Cited, "29 CFR 1910.95, Appendix A, Table G-16a: 51 levels from 80 to 130 dB; half of the last printed digit")]
    public void Reference_durations_are_the_tables()
    {
        Table table = Table.Read("noise_reference_durations.csv");
        Assert.Equal(51, table.Rows.Count());
        foreach (Table.Row row in table.Rows)
        {
            TimeSpan duration = NoiseLimits.OshaPermissible.ReferenceDuration(Level.FromDecibels(row.Number("level_db")));
            Numbers.Near(row.Number("hours"), duration.TotalHours, row.Number("tolerance_h") * (1 + 1e-9));
        }
    }

    [Theory]
    [InlineData(85, 8)]
    [InlineData(88, 4)]
    [InlineData(91, 2)]
    [InlineData(94, 1)]
    [InlineData(97, 0.5)]
    [InlineData(100, 0.25)]
    [Evidence(Basis.Cited, "NIOSH's page of noise: time to reach 100 % of the daily dose at 85 to 100 dB(A)")]
    public void Recommended_times_are_the_institutes(double decibels, double hours) =>
        Numbers.Close(hours, NoiseLimits.NioshRecommended.ReferenceDuration(Level.FromDecibels(decibels)).TotalHours, 1e-9);

    [Theory]
    [InlineData(80, 83, 240)]
    [InlineData(80, 92, 30)]
    [InlineData(80, 98, 8)]
    [InlineData(80, 107, 1)]
    [InlineData(85, 91, 120)]
    [InlineData(85, 100, 15)]
    [InlineData(85, 105, 5)]
    [InlineData(87, 96, 60)]
    [InlineData(87, 107, 5)]
    [Evidence(Basis.Cited, "SCENIHR 2008, table 3, levels and times equivalent to the action values of Directive 2003/10/EC: whole decibels")]
    public void European_days_are_the_committees(double daily, double decibels, double minutes)
    {
        NoiseDose day = new("somebody", [new NoiseSpan("work", Level.FromDecibels(decibels), TimeSpan.FromMinutes(minutes))], NoiseLimits.EuropeanUpperAction);
        Numbers.Near(daily, day.DailyLevel!.Value.Decibels, 0.5);
    }

    [Theory]
    [InlineData(95, 2, 90, 2, 75)]
    [InlineData(92, 8, 80, 0.01, 131.95)]
    [InlineData(105, 0.5, 100, 1, 100)]
    [Evidence(Basis.Independent, "29 CFR 1910.95, Appendix A, by hand: D = 100 (C1/T1 + C2/T2) with the table's T of 4, 8, 1 and 2 h and 8/2^0.4 at 92 dB; TWA = 16.61 log10(D/100) + 90")]
    public void A_dose_adds_up(double first, double hours, double second, double more, double percent)
    {
        NoiseDose day = new("sander", [Span(first, hours), Span(second, more)], NoiseLimits.OshaPermissible);
        Numbers.Near(percent, day.Dose!.Value.Percent, 0.005);
        Numbers.Near((16.61 * Math.Log10(day.Dose!.Value.Percent / 100)) + 90, day.DailyLevel!.Value.Decibels, 1e-3);
        Assert.Equal(percent > 100.001 ? ComparisonOutcome.Beyond : ComparisonOutcome.Within, day.Comparison.Outcome);
        Numbers.CanBeWritten(day.Workings());
    }

    [Fact]
    [Evidence(Basis.Cited, "OSHA's derating (NRR − 7)/2 by an example in circulation, second-hand: 98 dB(A) and NRR 25 leave 89 dB; a rating of 7 + 2·8 = 23 brings 98 to 90")]
    public void Hearing_protection_is_derated()
    {
        NoiseDose day = new("sander", [Span(98, 8)], NoiseLimits.OshaPermissible);
        Numbers.Close(89, day.Under(Level.FromDecibels(25))!.Value.Decibels, 1e-12);
        Numbers.Close(23, day.LeastNoiseReductionRating!.Value.Decibels, 1e-9);
        Numbers.Close(90, day.Under(day.LeastNoiseReductionRating!.Value)!.Value.Decibels, 1e-12);
        Assert.Contains("at least 23 dB", day.Comparison.Remedy!, StringComparison.Ordinal);
        NoiseDose loud = new("grinder", [Span(110, 8)], NoiseLimits.NioshRecommended);
        Assert.Contains("no common hearing protector", loud.Comparison.Remedy!, StringComparison.Ordinal);
        Assert.Contains(Cautions.Noise, day.Cautions);
    }

    [Fact]
    [Evidence(Basis.Contract, "noise below a limit's threshold does not count: 89 dB for OSHA's permissible level, 79 dB for its action level; of both, half a dose of the one is a whole of the other")]
    public void Quiet_work_does_not_count_where_the_rule_says_so()
    {
        Assert.Equal(0, new NoiseDose("x", [Span(89, 8)], NoiseLimits.OshaPermissible).Dose!.Value.Percent);
        Numbers.Close(100 * Math.Pow(2, 0.8), new NoiseDose("x", [Span(89, 8)], NoiseLimits.OshaAction).Dose!.Value.Percent, 1e-12);
        Assert.Null(new NoiseDose("x", [Span(79, 8)], NoiseLimits.OshaAction).DailyLevel);
        Numbers.Close(
            2 * new NoiseDose("x", [Span(93, 3)], NoiseLimits.OshaPermissible).Dose!.Value.Percent,
            new NoiseDose("x", [Span(93, 3)], NoiseLimits.OshaAction).Dose!.Value.Percent, 1e-12);
        Assert.True(new NoiseDose("x", [Span(70, 8)], NoiseLimits.EuropeanLowerAction).Dose!.Value.Percent > 0);
    }

    [Fact]
    [Evidence(Basis.Contract, "loud work without a level cannot be judged, unless the rest alone passes the limit; without stretches there is no dose")]
    public void What_nobody_measured_is_not_judged()
    {
        NoiseSpan unknown = new("cutting out grout", null, TimeSpan.FromHours(1));
        NoiseDose day = new("ada", [unknown, Span(95, 1)], NoiseLimits.OshaPermissible);
        Assert.Null(day.Dose);
        Assert.Null(day.LeastNoiseReductionRating);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, day.Comparison.Outcome);
        Assert.Contains("cutting out grout", day.Comparison.Remedy!, StringComparison.Ordinal);
        Assert.Equal(ComparisonOutcome.Beyond, new NoiseDose("ada", [unknown, Span(95, 5)], NoiseLimits.OshaPermissible).Comparison.Outcome);
        NoiseDose none = new("ada", [], NoiseLimits.OshaPermissible);
        Assert.Equal(ComparisonOutcome.Within, none.Comparison.Outcome);
        Assert.Equal(0, none.LeastNoiseReductionRating!.Value.Decibels);
        Assert.All([day, none], one => Numbers.CanBeWritten(one.Workings()));
        Assert.StartsWith("OSHA PEL (United States", day.Comparison.Whose!, StringComparison.Ordinal);
    }

    [Property]
    [Evidence(Basis.Identity, "an exchange rate louder for half the time is the same dose; cut a stretch and nothing changes")]
    public Property Doses_obey_their_exchange_rate() => Prop.ForAll(
        Gen.Choose(0, NoiseLimits.All.Count - 1).SelectMany(limit => Gen.Choose(900, 1050).SelectMany(level => Gen.Choose(10, 300).Select(minutes => (limit, level, minutes)))).ToArbitrary(),
        drawn =>
        {
            NoiseLimit limit = NoiseLimits.All[drawn.limit];
            double level = drawn.level / 10.0;
            double hours = drawn.minutes / 60.0;
            double dose = Of(limit, Span(level, hours));
            Numbers.Close(dose, Of(limit, Span(level + limit.ExchangeRate.Decibels, hours / 2)), 1e-9);
            Numbers.Close(dose, Of(limit, Span(level, hours / 3), Span(level, hours * 2 / 3)), 1e-9);
            Assert.True(Of(limit, Span(level + 1, hours)) > dose);
        });

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("level", () => _ = Span(141, 1));
        Numbers.Refuses("level", () => _ = NoiseLimits.OshaPermissible.ReferenceDuration(Level.FromDecibels(59)));
        Numbers.Refuses("time", () => _ = Span(90, 0));
        Numbers.Refuses("spans", () => _ = new NoiseDose("x", [Span(90, 13), Span(90, 12)], NoiseLimits.OshaPermissible));
        Numbers.Refuses("CriterionLevel", () => _ = NoiseLimits.OshaPermissible with { CriterionLevel = Level.FromDecibels(121) });
        Numbers.Refuses("ExchangeRate", () => _ = NoiseLimits.OshaPermissible with { ExchangeRate = Level.FromDecibels(6) });
        Numbers.Refuses("Threshold", () => _ = NoiseLimits.OshaPermissible with { Threshold = Level.FromDecibels(59) });
        Numbers.Refuses("noiseReductionRating", () => _ = new NoiseDose("x", [Span(98, 8)], NoiseLimits.OshaPermissible).Under(Level.FromDecibels(6)));
        Assert.Throws<ArgumentException>(() => _ = new NoiseSpan(" ", null, TimeSpan.FromHours(1)));
        Assert.Throws<ArgumentException>(() => _ = NoiseLimits.OshaPermissible with { AsksFor = string.Empty });
    }

    private static double Of(NoiseLimit limit, params NoiseSpan[] spans) => new NoiseDose("x", spans, limit).Dose!.Value.DecimalFractions;

    private static NoiseSpan Span(double decibels, double hours) => new("work", Level.FromDecibels(decibels), TimeSpan.FromHours(hours));
}
