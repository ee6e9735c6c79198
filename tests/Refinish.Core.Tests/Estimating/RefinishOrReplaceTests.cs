using System;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Estimating;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Estimating;

public class RefinishOrReplaceTests
{
    private static RenewalOption Option(string name, decimal cost, double life, int days = 0) =>
        new() { Name = name, Parts = [new CostPart("work", cost)], LifeYears = life, DaysOutOfUse = days };

    private static RefinishOrReplace Compare(double percent, decimal day = 0) =>
        new(Option("refinishing", 1480m, 7, 2), Option("replacing", 5200m, 20, 5), Ratio.FromPercent(percent), Currency.Of("USD"), day);

    [Fact]
    [Evidence(Basis.Cited, "discrete cash-flow factors, Table 1 (0.25 %), textbook appendix; five decimals")]
    public void Capital_recovery_matches_the_table()
    {
        foreach (Table.Row row in Table.Read("capital_recovery.csv").Rows)
        {
            Numbers.Near(row.Number("factor"), EconomyKernel.CapitalRecovery(row.Number("percent") / 100, row.Number("years")).Value, 5e-6);
        }
    }

    [Theory]
    [InlineData(5, 7, 0.172820)]
    [InlineData(5, 20, 0.080243)]
    [InlineData(3, 10, 0.117231)]
    [InlineData(5, 10, 0.129505)]
    [InlineData(8, 10, 0.149029)]
    [InlineData(10, 10, 0.162745)]
    [InlineData(6, 15, 0.102963)]
    [Evidence(Basis.Independent, "exact arithmetic outside, six decimals; the printed tables for these rates were not seen")]
    public void Capital_recovery_at_other_rates(double percent, double years, double factor) =>
        Numbers.Near(factor, EconomyKernel.CapitalRecovery(percent / 100, years).Value, 5e-7);

    [Fact]
    [Evidence(Basis.Independent, "worked outside: 1480 over 7 years at 5 % 255.77 a year, 5200 over 20 years 417.26, 61 %, break-even 4.0 years; no published source")]
    public void Refinishing_a_tub()
    {
        RefinishOrReplace answer = Compare(5);
        Assert.Equal(255.77m, answer.RefinishPerYear);
        Assert.Equal(417.26m, answer.ReplacePerYear);
        Numbers.Near(61, answer.RefinishPerReplace!.Value.Percent, 0.5);
        Numbers.Near(4.0, answer.BreakEvenYears!.Value, 0.05);
        Assert.Equal(5200m, answer.ReplacePresentValue);
        Assert.Equal(
            "At 5 % interest, refinishing costs 1480.00 USD and, lasting 7 years, 255.77 USD a year; replacing costs 5200.00 USD and, lasting 20 years, 417.26 USD a year. "
            + "Per year refinishing costs 61.3 % of replacing. It costs less a year than replacing when it lasts longer than 4.01 years.",
            answer.Sentence());
        Numbers.CanBeWritten(answer.Workings());
    }

    [Property]
    [Evidence(Basis.Identity, "yearly costs discounted one by one give the cost back; at the break-even life both cost the same; dearer or shorter-lived refinishing is never better; workings hold")]
    public void Money_is_worth_what_it_is(PositiveInt a, PositiveInt b, PositiveInt c)
    {
        double rate = a.Get % 20 / 100.0;
        int life = 1 + (b.Get % 30);
        decimal cost = 100 + (c.Get % 5000);
        RefinishOrReplace answer = new(Option("r", cost, life), Option("n", 5200m, 25), Ratio.FromDecimalFractions(rate), Currency.Of("USD"), 12m);
        double yearly = (double)cost * EconomyKernel.CapitalRecovery(rate, life).Value;
        double worth = 0;
        for (int year = 1; year <= life; year++)
        {
            worth += yearly / Math.Pow(1 + rate, year);
        }

        Numbers.Close((double)cost, worth, 1e-10);
        if (answer.BreakEvenYears is double even && even <= 200)
        {
            RefinishOrReplace at = new(Option("r", cost, even), Option("n", 5200m, 25), Ratio.FromDecimalFractions(rate), Currency.Of("USD"));
            Numbers.Close(1, at.RefinishPerReplace!.Value.DecimalFractions, 1e-9);
        }

        Assert.True(new RefinishOrReplace(Option("r", cost + 50, life), Option("n", 5200m, 25), Ratio.FromDecimalFractions(rate), Currency.Of("USD")).RefinishPerYear > answer.RefinishPerYear);
        Assert.True(new RefinishOrReplace(Option("r", cost, life + 1), Option("n", 5200m, 25), Ratio.FromDecimalFractions(rate), Currency.Of("USD")).RefinishPerYear < answer.RefinishPerYear);
        Numbers.CanBeWritten(answer.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: without interest cost / life; days out of use 2 and 5 at 150; interest on the cost beyond the other's yearly cost has no break-even")]
    public void Edges()
    {
        RefinishOrReplace plain = Compare(0, 150m);
        Assert.Equal(1780m, plain.RefinishCost);
        Assert.Equal(254.29m, plain.RefinishPerYear);
        Assert.Equal(297.50m, plain.ReplacePerYear);
        Assert.Equal(5085.71m, plain.RefinishPresentValue);
        Numbers.Close(1780 / 297.5, plain.BreakEvenYears!.Value, 1e-12);
        RefinishOrReplace never = new(Option("refinishing", 4000m, 7), Option("replacing", 2000m, 20), Ratio.FromPercent(20), Currency.Of("USD"));
        Assert.Null(never.BreakEvenYears);
        Assert.Contains("However long it lasts", never.Sentence(), StringComparison.Ordinal);
        Numbers.CanBeWritten(never.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "an option at no cost is an answer: no share and no break-even, said in words")]
    public void An_option_at_no_cost()
    {
        RefinishOrReplace free = new(Option("refinishing", 1480m, 7), Option("replacing", 0m, 20), Ratio.FromPercent(5), Currency.Of("USD"));
        Assert.Null(free.RefinishPerReplace);
        Assert.Null(free.BreakEvenYears);
        Assert.Equal(0m, free.ReplacePerYear);
        Assert.Contains("As replacing costs nothing, no share of it can be given", free.Sentence(), StringComparison.Ordinal);
        Numbers.CanBeWritten(free.Workings());
        RefinishOrReplace gift = new(Option("refinishing", 0m, 7), Option("replacing", 10m, 20), Ratio.Zero, Currency.Of("USD"));
        Assert.Equal(0, gift.RefinishPerReplace!.Value.DecimalFractions);
        Assert.Contains("As refinishing costs nothing, it is the cheaper", gift.Sentence(), StringComparison.Ordinal);
        Numbers.CanBeWritten(gift.Workings());
        RefinishOrReplace both = new(Option("refinishing", 0m, 7), Option("replacing", 0m, 20), Ratio.FromPercent(5), Currency.Of("USD"));
        Assert.EndsWith("Neither costs anything, so there is nothing to compare.", both.Sentence(), StringComparison.Ordinal);
        Numbers.CanBeWritten(both.Workings());
    }

    [Fact]
    [Evidence(Basis.Cited, "worked question on equivalent uniform annual worth (wizedu.com 1097152), 15 %: 20 000 over 3 years 8760 and 8500 a year; 15 000 over 2 years 9226.5 and 7000 a year; the parts for salvage values left out")]
    public void Yearly_costs_of_two_methods()
    {
        // The factors are printed to four decimals: 20 000 × 0.00005 = 1.
        RefinishOrReplace methods = new(
            Option("method 1", 20000m, 3) with { YearlyCost = 8500m },
            Option("method 2", 15000m, 2) with { YearlyCost = 7000m },
            Ratio.FromPercent(15), Currency.Of("USD"));
        Numbers.Near(8760 + 8500, (double)methods.RefinishPerYear, 1);
        Numbers.Near(9226.5 + 7000, (double)methods.ReplacePerYear, 0.75);
        Numbers.CanBeWritten(methods.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 255.77 a year and 60 for care are 315.77; the break-even is that of 5200 × 0.080243 − 60 = 357.26 a year, −ln(1 − 1480 × 0.05/357.2614)/ln 1.05 = 4.76 years")]
    public void Care_every_year()
    {
        RefinishOrReplace answer = new(
            Option("refinishing", 1480m, 7) with { YearlyCost = 60m }, Option("replacing", 5200m, 20), Ratio.FromPercent(5),
            Currency.Of("USD"));
        Assert.Equal(315.77m, answer.RefinishPerYear);
        Numbers.Near(4.76, answer.BreakEvenYears!.Value, 0.005);
        Assert.Contains("315.77 USD a year, of it 60.00 USD for its care;", answer.Sentence(), StringComparison.Ordinal);
        Numbers.CanBeWritten(answer.Workings());
        RefinishOrReplace costly = new(
            Option("refinishing", 1480m, 7) with { YearlyCost = 500m }, Option("replacing", 5200m, 20), Ratio.FromPercent(5),
            Currency.Of("USD"));
        Assert.Null(costly.BreakEvenYears);
        Assert.EndsWith("However long it lasts, it costs more a year than replacing.", costly.Sentence(), StringComparison.Ordinal);
        RefinishOrReplace careOnly = new(
            Option("refinishing", 0m, 7) with { YearlyCost = 10m }, Option("replacing", 0m, 20) with { YearlyCost = 20m }, Ratio.Zero,
            Currency.Of("USD"));
        Numbers.Close(0.5, careOnly.RefinishPerReplace!.Value.DecimalFractions);
        Assert.EndsWith(
            "As refinishing costs nothing but its care, it is the cheaper however short it lasts.", careOnly.Sentence(),
            StringComparison.Ordinal);
        Numbers.CanBeWritten(careOnly.Workings());
        Numbers.Refuses("YearlyCost", () => _ = Option("r", 1m, 1) with { YearlyCost = -1m });
    }

    [Property]
    [Evidence(Basis.Identity, "care at the end of every year, discounted one by one with the cost, is worth what the yearly cost is worth; at the break-even life both cost the same")]
    public void Care_is_worth_what_it_is(PositiveInt a, PositiveInt b, PositiveInt c)
    {
        double rate = a.Get % 20 / 100.0;
        int life = 1 + (b.Get % 30);
        RenewalOption option = Option("r", 1480m, life) with { YearlyCost = c.Get % 100 };
        RenewalOption other = Option("n", 5200m, 25) with { YearlyCost = 7m };
        Ratio interest = Ratio.FromDecimalFractions(rate);
        RefinishOrReplace answer = new(option, other, interest, Currency.Of("USD"));
        double worth = 1480;
        double one = 0;
        for (int year = 1; year <= life; year++)
        {
            worth += (double)option.YearlyCost / Math.Pow(1 + rate, year);
            one += 1 / Math.Pow(1 + rate, year);
        }

        Numbers.Near(worth / one, (double)answer.RefinishPerYear, 0.00501);
        if (answer.BreakEvenYears is double even && even >= 0.001 && even <= 200)
        {
            RefinishOrReplace at = new(option with { LifeYears = even }, other, interest, Currency.Of("USD"));
            Numbers.Close(1, at.RefinishPerReplace!.Value.DecimalFractions, 1e-9);
        }

        Numbers.CanBeWritten(answer.Workings());
    }

    [Theory]
    [InlineData(1e-20)]
    [InlineData(1e-15)]
    [InlineData(1e-9)]
    [InlineData(0.9e-5)]
    [InlineData(1.1e-5)]
    [InlineData(0.9e-3)]
    [InlineData(1.1e-3)]
    [InlineData(0.05)]
    [Evidence(Basis.Independent, "A/P = 1/Σ(1 + r)^(−k) summed year by year, and P/A at the break-even life likewise; small interest loses no digits")]
    public void Small_interest_is_exact(double rate)
    {
        double sum = 0;
        double worth = 1;
        for (int k = 1; k <= 30; k++)
        {
            worth /= 1 + rate;
            sum += worth;
        }

        Numbers.Close(1 / sum, EconomyKernel.CapitalRecovery(rate, 30).Value, 1e-12);
        Numbers.Close(30, EconomyKernel.BreakEven(sum, 1, rate)!.Value.Value, 1e-9);
        Ratio interest = Ratio.FromDecimalFractions(rate);
        Numbers.CanBeWritten(new RefinishOrReplace(Option("r", 1480m, 7), Option("n", 5200m, 20), interest, Currency.Of("USD")).Workings());
        Numbers.CanBeWritten(new RefinishOrReplace(Option("r", 0.01m, 0.001), Option("n", 1e12m, 200), interest, Currency.Of("USD"), 1e12m).Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("LifeYears", () => _ = Option("r", 1, 0));
        Numbers.Refuses("DaysOutOfUse", () => _ = Option("r", 1, 1, -1));
        Numbers.Refuses("discountRate", () => _ = Compare(-1));
        Numbers.Refuses("costPerDayOutOfUse", () => _ = Compare(5, -1));
        Assert.Throws<ArgumentException>(() => new RenewalOption { Name = "r", Parts = [], LifeYears = 1 });
        Assert.Equal(Compare(5), Compare(5));
    }
}
