using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Estimating;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Estimating;

public class DistributionTests
{
    private static Distribution[] Every() =>
    [
        new ExactValue(3), new UniformDistribution(-2, 6), new TriangularDistribution(2, 4, 9), new TriangularDistribution(2, 2, 9), new TriangularDistribution(2, 9, 9),
        new PertDistribution(2, 4, 9), new PertDistribution(2, 2, 9), new NormalDistribution(10, 2), new LognormalDistribution(0, 0.5),
    ];

    private static Ratio Share(double fraction) => Ratio.FromDecimalFractions(fraction);

    [Theory]
    [InlineData(0, 0.25, 0.725867, 1, 1.377662, 1.031743, 0.262019)]
    [InlineData(0, 0.5, 0.526884, 1, 1.897953, 1.133148, 0.603901)]
    [InlineData(4.605170185988092, 0.3, 68.0814, 100, 146.8829, 104.6028, 32.1003)]
    [Evidence(Basis.Independent, "closed forms of the lognormal distribution, worked outside to seven figures; no published source")]
    public void Lognormal(double mean, double deviation, double p10, double p50, double p90, double average, double spread)
    {
        LognormalDistribution distribution = new(mean, deviation);
        Numbers.Close(p10, distribution.Quantile(Share(0.1)), 1e-6);
        Numbers.Close(p50, distribution.Quantile(Share(0.5)), 1e-9);
        Numbers.Close(p50, distribution.Median, 1e-9);
        Numbers.Close(p90, distribution.Quantile(Share(0.9)), 1e-6);
        Numbers.Close(average, distribution.Mean, 1e-6);
        Numbers.Close(spread, distribution.StandardDeviation, 2e-6);
        LognormalDistribution back = LognormalDistribution.FromMeanAndDeviation(distribution.Mean, distribution.StandardDeviation);
        Numbers.Near(mean, back.LogMean, 1e-12);
        Numbers.Close(deviation, back.LogDeviation, 1e-12);
        LognormalDistribution through = LognormalDistribution.FromP10AndP90(distribution.Quantile(Share(0.1)), distribution.Quantile(Share(0.9)));
        Numbers.Close(deviation, through.LogDeviation, 1e-12);
    }

    [Fact]
    [Evidence(Basis.Independent, "(µ ln 100, σ .3) times (0, .4): σ .5, P90 189.795, worked outside; no published source")]
    public void A_product_of_lognormals()
    {
        LognormalDistribution product = new LognormalDistribution(Math.Log(100), 0.3).Times(new LognormalDistribution(0, 0.4));
        Numbers.Close(0.5, product.LogDeviation, 1e-14);
        Numbers.Near(189.795, product.Quantile(Share(0.9)), 5e-4);
    }

    [Fact]
    [Evidence(Basis.Independent, "triangular 2, 4, 9: P10 3.183216, P50 4.816700, P90 7.129171, mean 5, standard deviation 1.471960, worked outside")]
    public void Triangular()
    {
        TriangularDistribution distribution = new(2, 4, 9);
        Numbers.Near(3.183216, distribution.Quantile(Share(0.1)), 5e-7);
        Numbers.Near(4.816700, distribution.Quantile(Share(0.5)), 5e-7);
        Numbers.Near(7.129171, distribution.Quantile(Share(0.9)), 5e-7);
        Numbers.Close(5, distribution.Mean, 1e-15);
        Numbers.Near(1.471960, distribution.StandardDeviation, 5e-7);
    }

    [Fact]
    [Evidence(Basis.Independent, "scipy 1.10.1, scipy.stats.beta.ppf with the PERT shapes")]
    public void Pert_quantiles()
    {
        foreach (Table.Row row in Table.Read("pert_quantiles.csv").Rows)
        {
            PertDistribution distribution = new(row.Number("minimum"), row.Number("mode"), row.Number("maximum"));
            double chance = row.Number("chance");
            double range = row.Number("maximum") - row.Number("minimum");
            Numbers.Near(row.Number("value"), distribution.Quantile(Share(chance)), 1e-11 * range);
            Numbers.Near(row.Number("value"), distribution.Table().At(Distribution.ScoreOf(chance)), 2e-8 * range);
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "z of 90 % is 1.2815515655; of 97.5 % 1.959963985 (any table of the normal distribution)")]
    public void Normal()
    {
        NormalDistribution distribution = new(10, 2);
        Numbers.Near(10 + (2 * 1.2815515655), distribution.Quantile(Share(0.9)), 1e-9);
        Numbers.Near(1.959963985, Distribution.ScoreOf(0.975), 5e-10);
        Numbers.Near(0.975, Distribution.ChanceOf(1.959963985), 1e-10);
    }

    [Property]
    [Evidence(Basis.Independent, "MathNet.Numerics 5, inverse complementary error function, another approximation; and the chance of the score itself")]
    public void Scores(PositiveInt number)
    {
        double near = (number.Get % 9999 + 1) / 10_000.0;
        double far = Math.Pow(10, -(number.Get % 300));
        foreach (double u in (double[])[near, far / 2, near * 1e-5])
        {
            double expected = -Math.Sqrt(2) * MathNet.Numerics.SpecialFunctions.ErfcInv(2 * u);
            Numbers.Near(expected, Distribution.ScoreOf(u), 1e-12 * Math.Max(1, Math.Abs(expected)));
            Numbers.Close(u, Distribution.ChanceOf(Distribution.ScoreOf(u)), 1e-10);
        }

        Numbers.Near(-Distribution.ScoreOf(near), Distribution.ScoreOf(1 - near), 1e-12);
    }

    [Fact]
    [Evidence(Basis.Independent, "mean and variance as integrals of the quantile function, by the rule of 40 000 midpoints")]
    public void Moments_are_those_of_the_quantiles()
    {
        foreach (Distribution distribution in Every())
        {
            double[] values = [.. Enumerable.Range(0, 40_000).Select(i => distribution.At((i + 0.5) / 40_000))];
            Numbers.Close(distribution.Mean, values.Average(), 2e-4);
            Numbers.Near(distribution.StandardDeviation, Math.Sqrt(values.Average(x => Math.Pow(x - distribution.Mean, 2))), 2e-3 * Math.Max(1e-9, distribution.StandardDeviation));
            Numbers.CanBeWritten(distribution.Workings());
        }
    }

    [Property]
    [Evidence(Basis.Identity, "a quantile undoes the cumulated chance, by chance and by score, and rises with it")]
    public void Quantiles_round_trip(PositiveInt number)
    {
        double u = (number.Get % 998 + 1) / 1000.0;
        foreach (Distribution distribution in Every().Skip(1))
        {
            double value = distribution.Quantile(Share(u));
            Numbers.Near(u, distribution.ChanceAtMost(value).DecimalFractions, 1e-9);
            Numbers.Close(value, distribution.AtScore(Distribution.ScoreOf(u)), 1e-9);
            Assert.True(distribution.Quantile(Share(u + 0.0005)) > value);
        }
    }

    [Fact]
    [Evidence(Basis.Identity, "a lognormal or normal reading keeps the PERT mean and the variance that it names; the classic one is the smaller for 2, 4, 9")]
    public void Readings_of_a_triple()
    {
        ThreePoint triple = new(2, 4, 9);
        Numbers.Close(4.5, triple.As(ThreePointReading.Pert).Mean);
        Numbers.Close(5, triple.As(ThreePointReading.Triangular).Mean);
        Numbers.Close(Math.Sqrt(triple.BetaPertVariance), triple.As(ThreePointReading.LognormalBetaPert).StandardDeviation);
        Numbers.Close(7.0 / 6, triple.As(ThreePointReading.LognormalClassicPert).StandardDeviation);
        Numbers.Close(7.0 / 6, triple.As(ThreePointReading.NormalClassicPert).StandardDeviation);
        Assert.True(triple.As(ThreePointReading.Pert).StandardDeviation > 7.0 / 6);
        foreach (ThreePointReading reading in Enum.GetValues<ThreePointReading>())
        {
            Assert.Equal(new ExactValue(3), ThreePoint.Exactly(3).As(reading));
        }

        Numbers.Refuses("reading", () => triple.As((ThreePointReading)9));
        Numbers.Refuses("mean", () => new ThreePoint(-3, -2, -1).As(ThreePointReading.LognormalBetaPert));
    }

    [Property]
    [Evidence(Basis.Identity, "hours that are exact have no spread, whatever their last digit")]
    public void Exact_hours_have_no_spread(PositiveInt number)
    {
        ThreePoint exact = ThreePoint.Exactly(number.Get / 100.0);
        Assert.Equal(0, exact.BetaPertVariance);
        Assert.Equal(0, exact.ClassicVariance);
        LabourEstimate labour = new([new LabourTask { Standard = LabourStandards.SetUp with { PerUnit = exact }, Units = 1 }]);
        Assert.Equal(TimeSpan.Zero, labour.BetaPertDeviation);
        Numbers.CanBeWritten(labour.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings; values and texts")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("value", () => _ = new ExactValue(double.NaN));
        Numbers.Refuses("maximum", () => _ = new UniformDistribution(2, 2));
        Numbers.Refuses("mode", () => _ = new TriangularDistribution(2, 1, 3));
        Numbers.Refuses("maximum", () => _ = new PertDistribution(2, 2, 2));
        Numbers.Refuses("standardDeviation", () => _ = new NormalDistribution(1, 0));
        Numbers.Refuses("logDeviation", () => _ = new LognormalDistribution(0, 4));
        Numbers.Refuses("p90", () => _ = LognormalDistribution.FromP10AndP90(3, 3));
        Numbers.Refuses("chance", () => _ = new NormalDistribution(1, 1).Quantile(Share(0)));
        Numbers.Refuses("chance", () => _ = new NormalDistribution(1, 1).Quantile(Share(1)));
        Assert.Equal(new PertDistribution(2, 4, 9), new PertDistribution(2, 4, 9));
        Assert.Equal("PERT 2 – 4 – 9", new PertDistribution(2, 4, 9).ToString());
        Assert.Equal("exactly 3", new ExactValue(3).ToString());
        Assert.Equal("lognormal, median 1, log deviation 0.5", new LognormalDistribution(0, 0.5).ToString());
    }
}
