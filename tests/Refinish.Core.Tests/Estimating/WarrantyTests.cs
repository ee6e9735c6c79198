using System;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Estimating;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Estimating;

public class WarrantyTests
{
    private static readonly Currency Usd = Currency.Of("USD");

    private static readonly LifeShare[] Mixture =
    [
        new(Ratio.FromPercent(4), new WeibullLife(1, 0.5)),
        new(Ratio.FromPercent(96), new WeibullLife(2.5, 15)),
    ];

    private static readonly Ratio Eighty = Ratio.FromPercent(80);

    [Fact]
    [Evidence(Basis.Independent, "shape 1.5, scale 5000, age 1000: F .085559, R .914441, f 1.226851e-4, h 1.341641e-4, recomputed outside. The NIST/SEMATECH e-Handbook 8.1.6.2 is remembered to print .08556, .000123 and .000134; the page was not seen")]
    public void A_handbook_example()
    {
        WeibullLife life = new(1.5, 5000);
        Numbers.Near(0.085559, life.FailedBy(1000).DecimalFractions, 5e-7);
        Numbers.Near(0.914441, life.GoodAt(1000).DecimalFractions, 5e-7);
        Numbers.Near(1.226851e-4, life.DensityAt(1000), 5e-11);
        Numbers.Near(1.341641e-4, life.HazardAt(1000), 5e-11);
        Numbers.CanBeWritten(life.Workings(1000));
    }

    [Fact]
    [Evidence(Basis.Independent, "worked outside: shape 1.8, scale 14: F(5) .1451; .7, 40: .2081; mixture of 4 % exponential with mean half a year and 96 % Weibull 2.5, 15: F(1) .0357, F(5) .0996; no published source")]
    public void Shares_within_a_term()
    {
        Numbers.Near(0.1451, new WeibullLife(1.8, 14).FailedBy(5).DecimalFractions, 5e-5);
        Numbers.Near(0.2081, new WeibullLife(0.7, 40).FailedBy(5).DecimalFractions, 5e-5);
        Numbers.Near(0.0357, new WarrantyReserve(Mixture, 1, 260m, Eighty, Usd, Ratio.Zero).FailedWithinTerm.DecimalFractions, 5e-5);

        // The fifth digit is a five: .09965.
        Numbers.Near(0.0996, new WarrantyReserve(Mixture, 5, 260m, Eighty, Usd, Ratio.Zero).FailedWithinTerm.DecimalFractions, 1e-4);
    }

    [Fact]
    [Evidence(Basis.Independent, "mixture above, 80 % claimed at 260: 20.73; discounted at 5 % 18.57 (mpmath 1.3.0: 18.5688531); no published source")]
    public void A_reserve()
    {
        WarrantyReserve reserve = new(Mixture, 5, 260m, Eighty, Usd, Ratio.FromPercent(5));
        Assert.Equal(20.73m, reserve.Reserve);
        Assert.Equal(18.57m, reserve.DiscountedReserve);
        Numbers.Near(0.09965 * 0.8, reserve.ExpectedClaims, 1e-5);
        Assert.Equal("20.73 USD reserved for 5 years of warranty", reserve.ToString());
        Numbers.CanBeWritten(reserve.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "mpmath 1.3.0 at 30 digits by another substitution")]
    public void Discounted_integrals()
    {
        foreach (Table.Row row in Table.Read("weibull_discounted.csv").Rows)
        {
            double actual = WeibullKernel.Discounted(row.Number("term"), row.Number("shape"), row.Number("scale"), Math.Log(1 + row.Number("rate"))).Value;
            Numbers.Close(row.Number("value"), actual, 1e-12);
        }
    }

    [Property]
    [Evidence(Basis.Identity, "for shape 1 the integral is λ/(λ + δ) (1 − exp(−(λ + δ) W)); without interest it is F(W)")]
    public void Closed_forms(PositiveInt a, PositiveInt b, PositiveInt c)
    {
        double scale = 0.5 + (a.Get % 400 / 10.0);
        double term = 0.1 + (b.Get % 490 / 10.0);
        double delta = c.Get % 50 / 200.0;
        double rate = (1 / scale) + delta;
        Numbers.Close(1 / scale / rate * (1 - Math.Exp(-rate * term)), WeibullKernel.Discounted(term, 1, scale, delta).Value, 1e-12);
        double shape = 0.3 + (c.Get % 50 / 5.0);
        WeibullLife life = new(shape, scale);
        Numbers.Near(life.FailedBy(term).DecimalFractions, WeibullKernel.Discounted(term, shape, scale, 0).Value, 1e-12);
    }

    [Property]
    [Evidence(Basis.Identity, "a longer term or a dearer claim never lowers the reserve; discounting never raises it; workings hold to the kernel")]
    public void Monotone(PositiveInt a, PositiveInt b)
    {
        double term = a.Get % 400 / 10.0;
        Ratio rate = Ratio.FromPercent(b.Get % 20);
        WarrantyReserve reserve = new(Mixture, term, 260m, Eighty, Usd, rate);
        Assert.True(new WarrantyReserve(Mixture, term + 1, 260m, Eighty, Usd, rate).Reserve >= reserve.Reserve);
        Assert.True(new WarrantyReserve(Mixture, term + 1, 260m, Eighty, Usd, rate).DiscountedReserve >= reserve.DiscountedReserve);
        Assert.True(new WarrantyReserve(Mixture, term, 261m, Eighty, Usd, rate).Reserve >= reserve.Reserve);
        Assert.True(reserve.DiscountedReserve <= reserve.Reserve);
        Numbers.CanBeWritten(reserve.Workings());
    }

    [Property]
    [Evidence(Basis.Identity, "mean and spread go round; quantile inverts the distribution; survival chains; a hazard ratio multiplies the hazard")]
    public void Lifetimes_round_trip(PositiveInt a, PositiveInt b)
    {
        WeibullLife life = new(0.5 + (a.Get % 100 / 10.0), 1 + (b.Get % 300 / 10.0));
        WeibullLife back = WeibullLife.FromMeanAndSpread(life.MeanYears, life.DeviationYears);
        Numbers.Close(life.Shape, back.Shape, 1e-8);
        Numbers.Close(life.ScaleYears, back.ScaleYears, 1e-8);
        Numbers.Close(0.37, life.FailedBy(life.AgeAtFailed(Ratio.FromDecimalFractions(0.37))).DecimalFractions, 1e-12);
        Numbers.Close(0.5, life.FailedBy(life.MedianYears).DecimalFractions, 1e-12);
        double further = 1 - life.FailedWithin(2, 3).DecimalFractions;
        Numbers.Near(life.GoodAt(5).DecimalFractions, life.GoodAt(2).DecimalFractions * further, 1e-13);
        Numbers.Close(3 * life.HazardAt(4), life.WithHazardRatio(3).HazardAt(4), 1e-11);
    }

    [Fact]
    [Evidence(Basis.Identity, "an exponential life has mean and spread η; a Rayleigh life has mean η√π/2; at the scale 1 − 1/e have failed")]
    public void Known_special_cases()
    {
        Numbers.Close(7, new WeibullLife(1, 7).MeanYears, 1e-12);
        Numbers.Close(7, new WeibullLife(1, 7).DeviationYears, 1e-12);
        Numbers.Close(7 * Math.Sqrt(Math.PI) / 2, new WeibullLife(2, 7).MeanYears, 1e-12);
        Numbers.Close(1 - Math.Exp(-1), new WeibullLife(3.3, 7).FailedBy(7).DecimalFractions, 1e-12);
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings")]
    public void Refuses_what_cannot_be()
    {
        WeibullLife life = new(1.8, 14);
        Numbers.Refuses("shape", () => _ = new WeibullLife(0.2, 14));
        Numbers.Refuses("scaleYears", () => _ = new WeibullLife(1, 0));
        Numbers.Refuses("years", () => _ = life.FailedBy(-1));
        Numbers.Refuses("years", () => _ = life.HazardAt(0));
        Numbers.Refuses("failed", () => _ = life.AgeAtFailed(Ratio.FromPercent(100)));
        Numbers.Refuses("deviationYears", () => _ = WeibullLife.FromMeanAndSpread(10, 0.1));
        Numbers.Refuses("termYears", () => _ = new WarrantyReserve(life, 51, 260m, Eighty, Usd, Ratio.Zero));
        Numbers.Refuses("claimProbability", () => _ = new WarrantyReserve(life, 5, 260m, Ratio.FromPercent(101), Usd, Ratio.Zero));
        Numbers.Refuses("costPerClaim", () => _ = new WarrantyReserve(life, 5, -1m, Eighty, Usd, Ratio.Zero));
        Numbers.Refuses("lives", () => _ = new WarrantyReserve([Mixture[0]], 5, 260m, Eighty, Usd, Ratio.Zero));
        Assert.Throws<ArgumentException>(() => new WarrantyReserve([], 5, 260m, Eighty, Usd, Ratio.Zero));
        Assert.Equal(new WarrantyReserve(Mixture, 5, 260m, Eighty, Usd, Ratio.Zero), new WarrantyReserve([Mixture[0], Mixture[1]], 5, 260m, Eighty, Usd, Ratio.Zero));
    }
}
