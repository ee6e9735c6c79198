using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Estimating;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Estimating;

public class OvertimeTests
{
    // California Labor Code § 510(a), read in a reprint; the seventh day of a week is left out here as it is in the rule.
    private static readonly OvertimeRule EightForty = new()
    {
        Daily = [new(TimeSpan.FromHours(8), 1.5m), new(TimeSpan.FromHours(12), 2m)],
        Weekly = [new(TimeSpan.FromHours(40), 1.5m)],
        WeekStarts = DayOfWeek.Sunday,
        Source = Source.Published("California Labor Code § 510(a)", "read in a reprint"),
    };

    // 2026-06-01 is a Monday.
    private static PaidDay[] Week(params double[] hours) =>
        [.. hours.Select((hour, i) => new PaidDay(new DateTime(2026, 6, 1).AddDays(i), TimeSpan.FromHours(hour)))];

    [Theory]
    [InlineData(6, 294)]    // 29 CFR 778.110(a) of 1981 (46 FR 7309), read in an archived copy: 46 hours at $6 plus 6 at $3
    [InlineData(12, 588)]   // 29 CFR 778.110(a) of 2011 (76 FR 18857), read in a reprint: 46 hours at $12 plus 6 at $6
    [InlineData(13, 637)]   // 29 CFR 778.110(b), the regular rate of $13 with the bonus: 46 hours at $13 plus 6 at $6.50
    [Evidence(Basis.Cited, "29 CFR 778.110: worked examples of 46 hours in a week of 40")]
    public void Forty_six_hours_in_a_week(int wage, int paid)
    {
        OvertimeHours overtime = new(OvertimeRule.UsFederal, "ada", Week(10, 9, 9, 9, 9));
        Assert.Equal(TimeSpan.FromHours(6), overtime.Overtime);
        Assert.Equal(paid, (46 * wage) + overtime.Premium(wage));
        Assert.Equal("ada: 6 h of the week at 1.5", overtime.ToString());
        Numbers.CanBeWritten(overtime.Workings());
    }

    [Fact]
    [Evidence(Basis.Cited, "29 CFR 778.104: each week stands alone, 30 hours in one and 50 in the next are 10 hours of overtime (from memory)")]
    public void Each_week_stands_alone()
    {
        // Monday 1 to Friday 5 June 6 h, the Monday after it 10 h.
        OvertimeHours overtime = new(OvertimeRule.UsFederal, "ada", Week(6, 6, 6, 6, 6, 0, 0, 10, 10, 10, 10, 10));
        Assert.Equal(TimeSpan.FromHours(10), overtime.Overtime);
        Numbers.CanBeWritten(overtime.Workings());

        // Saturday and Sunday of 6 and 7 June lie in two weeks from Sunday on, in one from Monday on.
        PaidDay[] days = Week(9, 9, 9, 9, 0, 4, 8);
        Assert.Equal(TimeSpan.Zero, new OvertimeHours(OvertimeRule.UsFederal, "ada", days).Overtime);
        Assert.Equal(TimeSpan.FromHours(8), new OvertimeHours(OvertimeRule.UsFederal with { WeekStarts = DayOfWeek.Monday }, "ada", days).Overtime);
    }

    [Fact]
    [Evidence(Basis.Cited, "California Labor Code § 510(a), read in a reprint: beyond 8 h at 1.5, beyond 12 h at 2; hours paid for the day do not count for the week (224 Cal. App. 3d 16 (1990), second-hand): five days of ten hours are ten hours of overtime, six of nine fourteen (second-hand)")]
    public void Daily_and_weekly_hours_are_not_counted_twice()
    {
        OvertimeHours thirteen = new(EightForty, "ada", Week(13));
        Assert.Equal([(4.0, 1.5m), (1.0, 2m)], thirteen.Bands.Select(band => (band.Hours.TotalHours, band.Step.Factor)));
        Assert.Equal(20 * ((4 * 0.5m) + 1), thirteen.Premium(20m));
        Assert.Equal(TimeSpan.FromHours(10), new OvertimeHours(EightForty, "ada", Week(10, 10, 10, 10, 10)).Overtime);
        OvertimeHours six = new(EightForty, "ada", [.. Enumerable.Range(1, 6).Select(day => new PaidDay(new DateTime(2026, 6, day), TimeSpan.FromHours(9)))]);
        Assert.Equal(TimeSpan.FromHours(14), six.Overtime);
        Assert.Equal([(false, 6.0), (true, 8.0)], six.Bands.Select(band => (band.IsWeekly, band.Hours.TotalHours)));
        Numbers.CanBeWritten(six.Workings());
        Numbers.CanBeWritten(thirteen.Workings());
    }

    [Property]
    [Evidence(Basis.Identity, "entries of a day add up in any order; more hours never earn less; no hour is overtime twice; hour by hour the premium is the same")]
    public void Hours_add_up(int seed)
    {
        Random random = new(seed);
        PaidDay[] days = [.. Enumerable.Range(0, random.Next(0, 20)).Select(_ =>
            new PaidDay(new DateTime(2026, 6, 1).AddDays(random.Next(0, 21)), TimeSpan.FromMinutes(15 * random.Next(0, 30))))];
        OvertimeHours all = new(EightForty, "ada", days);
        Assert.Equal(all.PremiumHours, new OvertimeHours(EightForty, "ada", [.. days.OrderBy(_ => random.Next())]).PremiumHours);
        Assert.True(all.Overtime <= TimeSpan.FromTicks(days.Sum(day => day.Hours.Ticks)));
        Assert.True(new OvertimeHours(EightForty, "ada", [.. days, new PaidDay(new DateTime(2026, 6, 5), TimeSpan.FromHours(1))]).PremiumHours >= all.PremiumHours);

        // Quarter by quarter, as a time clock would count.
        decimal premium = 0;
        foreach (IGrouping<int, PaidDay> week in days.GroupBy(day => (int)Math.Floor((day.Date - new DateTime(2026, 5, 31)).TotalDays / 7)))
        {
            int straight = 0;
            foreach (IGrouping<DateTime, PaidDay> day in week.GroupBy(day => day.Date))
            {
                int quarters = day.Sum(one => (int)(one.Hours.TotalMinutes / 15));
                for (int i = 0; i < quarters; i++)
                {
                    premium += i >= 48 ? 0.25m : i >= 32 ? 0.125m : ++straight > 160 ? 0.125m : 0;
                }
            }
        }

        Assert.Equal(premium, all.PremiumHours);
        Numbers.CanBeWritten(all.Workings());
        Numbers.Near((double)premium * 3600, all.Workings().Steps.Single(step => step.Symbol == "t_p").Value, 1e-3);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 46 h at 30.00 burdened by 20 % are 46 × 36 = 1656; the premium of 6 × 0.5 = 3 h is 108.00; overhead of 9.00 an hour counts the 46 h alone: 414")]
    public void The_premium_is_burdened_and_bears_no_overhead()
    {
        OvertimeHours overtime = new(OvertimeRule.UsFederal, "ada", Week(10, 9, 9, 9, 9));
        PaidTime premium = overtime.AsPaidTime(30m)!;
        Assert.Contains("of this job alone", premium.Description, StringComparison.Ordinal);
        LabourStandard hours = new() { Code = "L-1", Description = "work", Fixed = ThreePoint.Exactly(46), Source = Source.Invented("for a test") };
        PriceEstimate estimate = new(
            new PriceBook { Currency = Currency.Of("USD"), Burden = UnitsNet.Ratio.FromPercent(20), OverheadPerHour = 9m, DisposalPerJob = 0m, TravelPerTrip = 0m },
            new EstimateRequest { Labour = new LabourEstimate([new LabourTask { Standard = hours, Worker = "ada", Wage = 30m }]), PaidTime = [premium], Materials = [], Fixtures = 0 });
        Assert.Equal(1656m + 108m + 414m, estimate.Cost);
        Assert.Null(new OvertimeHours(OvertimeRule.UsFederal, "ada", Week(8)).AsPaidTime(30m));
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("factor", () => _ = new OvertimeStep(TimeSpan.FromHours(8), 1m));
        Numbers.Refuses("after", () => _ = new OvertimeStep(TimeSpan.FromHours(-1), 2m));
        Numbers.Refuses("hours", () => _ = new PaidDay(new DateTime(2026, 6, 1), TimeSpan.FromHours(61)));
        Numbers.Refuses("wage", () => _ = new OvertimeHours(EightForty, "ada", []).Premium(-1m));
        Assert.Contains("24 h", Assert.Throws<ArgumentException>(() => EightForty with { Daily = [new(TimeSpan.FromHours(25), 2m)] }).Message, StringComparison.Ordinal);
        Assert.Contains("have to rise", Assert.Throws<ArgumentException>(() => EightForty with { Daily = [.. EightForty.Daily.Reverse()] }).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => EightForty with { Weekly = [new(TimeSpan.FromHours(40), 2m), new(TimeSpan.FromHours(50), 1.5m)] });
        Assert.Throws<ArgumentException>(() => Refinish.Jobs.Shop.Generic with { Overtime = new OvertimeRule { Source = Source.Invented("empty") } });
        Assert.Equal("a day beyond 8 h at 1.5; a day beyond 12 h at 2; a week beyond 40 h at 1.5", EightForty.ToString());
    }
}
