using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Estimating;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Estimating;

public class ClaimsTests
{
    private static readonly Currency Usd = Currency.Of("USD");

    private static readonly LifeRecord[] Handbook =
        [.. ((double[])[54, 187, 216, 240, 244, 335, 361, 373, 375, 386]).Select(age => new LifeRecord(age, true)), new LifeRecord(500, false, 10)];

    private static Ratio Percent(double percent) => Ratio.FromPercent(percent);

    private static WarrantyJob Job(int count, double age, double term, double shape, double scale, double claimed, decimal cost) => new()
    {
        Name = "job",
        Life = new WeibullLife(shape, scale),
        AgeYears = age,
        TermYears = term,
        CostPerClaim = cost,
        ClaimProbability = Percent(claimed),
        Count = count,
    };

    [Fact]
    [Evidence(Basis.Cited, "NIST/SEMATECH e-Handbook 8.4.1.3 (apr413), 20 units, 10 censored at 500 h: shape 1.7207, scale 606.5280, log-likelihood −75.135, AIC 154.27; seen second-hand in test data. The exact scale is 606.5276: the fourth decimal of the print is off")]
    public void A_censored_test_of_twenty_units()
    {
        WeibullFit fit = new(Handbook);
        Numbers.Near(1.7207, fit.Life!.Shape, 1.1e-4);
        Numbers.Near(606.5280, fit.Life.ScaleYears, 1e-3);
        Numbers.Near(-75.135, fit.LogLikelihood!.Value, 5e-4);
        Numbers.Near(154.27, fit.Akaike!.Value, 5e-3);
        Assert.Equal(10, fit.Failures);
        Assert.Equal(10, fit.Survivors);
        Numbers.CanBeWritten(fit.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "scipy 1.10.1: root of the score by brentq, numeric second differences of the likelihood, likelihood ratio by brentq, chi-square and normal quantiles; the test above")]
    public void Intervals_of_the_handbook_test()
    {
        WeibullFit fit = new(Handbook);
        Numbers.Close(1.7207972608, fit.Life!.Shape, 1e-9);
        Numbers.Close(606.52755800, fit.Life.ScaleYears, 1e-9);
        Numbers.Close(0.2918127, fit.LogShapeError!.Value, 1e-6);
        Numbers.Close(0.2059439, fit.LogScaleError!.Value, 1e-6);
        Numbers.Close(0.97126613, fit.ShapeInterval(Percent(95))!.Value.Lower, 1e-6);
        Numbers.Close(3.04874547, fit.ShapeInterval(Percent(95))!.Value.Upper, 1e-6);
        Numbers.Close(405.089299, fit.ScaleInterval(Percent(95))!.Value.Lower, 1e-6);
        Numbers.Close(908.134773, fit.ScaleInterval(Percent(95))!.Value.Upper, 1e-6);
        Numbers.Close(0.9056453588, fit.ShapeIntervalByLikelihood(Percent(95))!.Value.Lower, 1e-8);
        Numbers.Close(2.8857378658, fit.ShapeIntervalByLikelihood(Percent(95))!.Value.Upper, 1e-8);
        ConfidenceInterval failed = fit.FailedInterval(300, Percent(90))!.Value;
        Numbers.Near(0.14941422, failed.Lower, 1e-6);
        Numbers.Near(0.42186899, failed.Upper, 1e-6);
        Assert.InRange(fit.Life.FailedBy(300).DecimalFractions, failed.Lower, failed.Upper);
        Assert.Equal("0.1494 to 0.4219", failed.ToString());
    }

    [Fact]
    [Evidence(Basis.Independent, "six units 93 34 16 120 53 75 h of a textbook of Kececioglu, data and answers remembered: shape 1.9327, scale 73.526; scipy 1.10.1 agrees: 1.93268, 73.52607, interval of the shape by likelihood .89708 to 3.46049")]
    public void Six_units_without_censoring()
    {
        WeibullFit fit = new([.. ((double[])[93, 34, 16, 120, 53, 75]).Select(age => new LifeRecord(age, true))]);
        Numbers.Near(1.9327, fit.Life!.Shape, 5e-5);
        Numbers.Near(73.526, fit.Life.ScaleYears, 5e-4);
        Numbers.Near(0.8970821, fit.ShapeIntervalByLikelihood(Percent(95))!.Value.Lower, 1e-7);
        Numbers.Near(3.4604941, fit.ShapeIntervalByLikelihood(Percent(95))!.Value.Upper, 1e-7);
        Numbers.CanBeWritten(fit.Workings());
    }

    [Property]
    [Evidence(Basis.Identity, "the order of the records, joining alike ones and the unit of time change nothing; more survivors never shorten the life")]
    public void A_fit_depends_on_the_facts_only(PositiveInt number, PositiveInt unit)
    {
        LifeRecord[] records = [new(0.8, true), new(2.5, true, 2), new(3.9 + (number.Get % 10 / 10.0), true), new(5, false, 1 + (number.Get % 50)), new(1, false, 3)];
        WeibullLife life = new WeibullFit(records).Life!;
        Assert.Equal(life, new WeibullFit([.. records.AsEnumerable().Reverse()]).Life);
        WeibullLife apart = new WeibullFit([.. records.SelectMany(record => Enumerable.Repeat(new LifeRecord(record.AgeYears, record.Failed), record.Count))]).Life!;
        Numbers.Close(life.Shape, apart.Shape, 1e-11);
        double factor = 1 + (unit.Get % 365);
        WeibullLife days = new WeibullFit([.. records.Select(record => new LifeRecord(record.AgeYears * factor, record.Failed, record.Count))]).Life!;
        Numbers.Close(life.Shape, days.Shape, 1e-10);
        Numbers.Close(life.ScaleYears * factor, days.ScaleYears, 1e-10);
        WeibullLife better = new WeibullFit([.. records, new LifeRecord(6, false, 5)]).Life!;
        Assert.True(better.FailedBy(5).DecimalFractions < life.FailedBy(5).DecimalFractions);
    }

    [Fact]
    [Evidence(Basis.Independent, "a known life comes back from 2000 lives drawn from it at even chances and censored at five years, within three standard errors")]
    public void A_known_life_comes_back()
    {
        WeibullLife truth = new(1.8, 14);
        WeibullFit fit = new([.. Enumerable.Range(0, 2000)
            .Select(i => truth.AgeAtFailed(Ratio.FromDecimalFractions((i + 0.5) / 2000)))
            .Select(age => age < 5 ? new LifeRecord(age, true) : new LifeRecord(5, false))]);
        Numbers.Near(Math.Log(1.8), Math.Log(fit.Life!.Shape), fit.LogShapeError!.Value);
        Numbers.Near(Math.Log(14), Math.Log(fit.Life.ScaleYears), fit.LogScaleError!.Value);
    }

    [Fact]
    [Evidence(Basis.Contract, "records that give no lifetime say why, and nothing is made up")]
    public void Says_why_there_is_no_fit()
    {
        WeibullFit one = new([new LifeRecord(3, true), new LifeRecord(5, false, 40)]);
        Assert.Null(one.Life);
        Assert.Equal("no lifetime: fewer than two failures are on record", one.ToString());
        Assert.Null(one.LogLikelihood);
        Assert.Null(one.Akaike);
        Assert.Null(one.LogShapeError);
        Assert.Null(one.ShapeInterval(Percent(90)));
        Assert.Null(one.ShapeIntervalByLikelihood(Percent(90)));
        Assert.Null(one.FailedInterval(3, Percent(90)));
        Assert.Empty(one.Workings().Steps);
        Assert.Contains("greatest age", new WeibullFit([new LifeRecord(5, true, 3)]).WhyNone!, StringComparison.Ordinal);
        Assert.Contains("outside 0.3 to 20", new WeibullFit([new LifeRecord(4.99, true), new LifeRecord(5, true)]).WhyNone!, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => new WeibullFit([]));
        Numbers.Refuses("ageYears", () => _ = new LifeRecord(0, true));
        Numbers.Refuses("count", () => _ = new LifeRecord(1, true, 0));
        Numbers.Refuses("confidence", () => new WeibullFit(Handbook).ShapeInterval(Percent(100)));
        Assert.Equal(new WeibullFit(Handbook), new WeibullFit([.. Handbook]));
        Assert.Equal("10 still good at 500 years", Handbook[10].ToString());
    }

    [Theory]
    [InlineData(0.5, 1, 1.3079842642115)]
    [InlineData(0.5, 8, 33.986555797192)]
    [InlineData(0.7, 2, 2.6129534762912)]
    [InlineData(1.8, 1, 0.78314647449626)]
    [InlineData(1.8, 8, 3.2352738731922)]
    [InlineData(2.5, 4, 1.5551850739574)]
    [InlineData(5, 8, 1.1438183821476)]
    [Evidence(Basis.Independent, "the series at 60 digits (mpmath 1.3.0), and the renewal equation itself solved by a midpoint rule, which agreed to its own error")]
    public void Renewals(double shape, double cumulated, double expected)
    {
        WeibullLife life = new(shape, 1);
        Numbers.Close(expected, life.RenewalsBy(Math.Pow(cumulated, 1 / shape) * (1 - 1e-15)), 1e-10);
    }

    [Property]
    [Evidence(Basis.Identity, "without wear renewals are t/η; there are more renewals than first failures and fewer than F/(1 − F); the worked M(5) of shape 1.8, scale 14 is .1499")]
    public void Renewals_between_bounds(PositiveInt a, PositiveInt b)
    {
        double t = a.Get % 80 / 10.0;
        Numbers.Near(t, new WeibullLife(1, 1).RenewalsBy(t), 1e-9);
        WeibullLife life = new(0.5 + (b.Get % 40 / 10.0), 10);
        double age = a.Get % 100 / 10.0;
        double failed = life.FailedBy(age).DecimalFractions;
        Assert.InRange(life.RenewalsBy(age), failed - 1e-12, (failed / (1 - failed)) + 1e-12);
        Numbers.Near(0.1499, new WeibullLife(1.8, 14).RenewalsBy(5), 5e-5);
        Numbers.Refuses("years", () => life.RenewalsBy(1000));
    }

    [Theory]
    [InlineData(50, 23)]
    [InlineData(80, 27)]
    [InlineData(90, 29)]
    [InlineData(95, 31)]
    [InlineData(99, 34)]
    [Evidence(Basis.Independent, "scipy 1.10.1, binom.ppf(q, 200, 0.116043) and binom.sf(30) = .0579989")]
    public void A_book_of_like_jobs_is_binomial(double confidence, int claims)
    {
        BookReserve book = new([Job(200, 0, 5, 1.8, 14, 80, 260m)], Percent(confidence), Usd);
        Assert.True(book.IsExact);
        Assert.Equal(claims, book.Claims);
        Assert.Equal(claims * 260m, book.Reserve);
        Numbers.Near(0.05799894, book.ChanceOfMoreThan(30 * 260m).DecimalFractions, 1e-8);
        Assert.Equal(6034.24m, book.ExpectedCost);
    }

    [Theory]
    [InlineData(50, 2340)]
    [InlineData(80, 3000)]
    [InlineData(90, 3400)]
    [InlineData(95, 3660)]
    [InlineData(99, 4320)]
    [Evidence(Basis.Independent, "numpy: 40 new jobs, 25 of age 2 and 10 with early failures, convolved one by one on a grid of 20; mean 2350.267, deviation 778.012, P(> 3000) .191393")]
    public void A_mixed_book(double confidence, int reserve)
    {
        WarrantyJob[] jobs = [Job(40, 0, 5, 1.8, 14, 80, 260m), Job(25, 2, 5, 1.8, 14, 80, 260m), Job(10, 1, 5, 0.7, 40, 90, 400m)];
        BookReserve book = new(jobs, Percent(confidence), Usd);
        Assert.Equal(reserve, book.Reserve);
        Assert.Equal(2350.27m, book.ExpectedCost);
        Assert.Equal(778.01m, book.CostDeviation);
        Numbers.Near(0.1913927, book.ChanceOfMoreThan(3000).DecimalFractions, 1e-7);
        Assert.Equal(book.Reserve, new BookReserve([.. jobs.AsEnumerable().Reverse()], Percent(confidence), Usd).Reserve);
        Numbers.CanBeWritten(book.Workings());
        Assert.InRange(book.NormalReserve, reserve * 0.9m, reserve * 1.1m);
    }

    [Fact]
    [Evidence(Basis.Identity, "an odd cent makes the exact grid too fine: costs are rounded up, so the reserve is not lower, and by less than a cell for each claim")]
    public void A_coarse_grid_errs_to_the_high_side()
    {
        WarrantyJob[] odd = [Job(300, 0, 5, 1.8, 14, 80, 259.99m), Job(200, 1, 5, 1.8, 14, 80, 310.01m)];
        BookReserve coarse = new(odd, Percent(90), Usd);
        Assert.False(coarse.IsExact);
        BookReserve near = new([odd[0] with { CostPerClaim = 260m }, odd[1] with { CostPerClaim = 310m }], Percent(90), Usd);
        Assert.True(near.IsExact);
        Assert.InRange(coarse.Reserve, near.Reserve - 1, near.Reserve + (coarse.Claims * 8m));
    }

    [Property]
    [Evidence(Basis.Identity, "a longer term, a higher confidence or a worse hazard never lowers the reserve; an expired warranty costs nothing")]
    public void Reserves_rise(PositiveInt a, PositiveInt b)
    {
        double term = 1 + (a.Get % 8);
        double confidence = 50 + (b.Get % 48);
        WarrantyJob job = Job(30, 0.5, term, 1.4, 12, 70, 200m);
        decimal reserve = new BookReserve([job], Percent(confidence), Usd).Reserve;
        Assert.True(new BookReserve([job with { TermYears = term + 1 }], Percent(confidence), Usd).Reserve >= reserve);
        Assert.True(new BookReserve([job], Percent(confidence + 1), Usd).Reserve >= reserve);
        Assert.True(new BookReserve([job with { Life = job.Life.WithHazardRatio(2) }], Percent(confidence), Usd).Reserve >= reserve);
        Assert.Equal(0, new BookReserve([job with { AgeYears = term }], Percent(confidence), Usd).Reserve);
        Numbers.Close(job.ChanceOfClaim.DecimalFractions, 0.7 * job.Life.FailedWithin(0.5, term - 0.5).DecimalFractions, 1e-13);
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings; text")]
    public void Refuses_what_cannot_be()
    {
        WarrantyJob job = Job(1, 0, 5, 1.8, 14, 80, 260m);
        Numbers.Refuses("AgeYears", () => _ = job with { AgeYears = -1 });
        Numbers.Refuses("jobs", () => _ = new BookReserve([job with { CostPerClaim = 0.001m }], Percent(90), Usd));
        Numbers.Refuses("Count", () => _ = job with { Count = 0 });
        Numbers.Refuses("confidence", () => _ = new BookReserve([job], Percent(49), Usd));
        Numbers.Refuses("jobs", () => _ = new BookReserve([job with { Count = 20_000 }, job], Percent(90), Usd));
        Assert.Throws<ArgumentException>(() => new BookReserve([], Percent(90), Usd));
        Assert.Equal("1 × job, 5 years of warranty left", job.ToString());
        Assert.Equal("7540.00 USD suffices with 90 %; 6034.24 USD is to be expected", new BookReserve([job with { Count = 200 }], Percent(90), Usd).ToString());
        Assert.Equal(0, new BookReserve([job with { CostPerClaim = 0 }], Percent(90), Usd).Reserve);
    }
}
