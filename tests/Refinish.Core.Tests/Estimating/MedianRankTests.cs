using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck.Xunit;
using Refinish.Estimating;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Estimating;

public class MedianRankTests
{
    // Six units that all failed, in hours taken as years.
    private static readonly LifeRecord[] Six = [.. new double[] { 93, 34, 16, 120, 53, 75 }.Select(hours => new LifeRecord(hours, true))];

    [Fact]
    [Evidence(Basis.Cited, "reference example of a reliability handbook's page (reliawiki.com, Median Rank for Multiple Censored Data, after Kececioglu, Table 3.1): F 5100, S 9500, F 15 000, S 22 000, F 40 000: 12.94, 36.1, 70.84 % for a book that takes Bernard's ranks of the adjusted orders; its formula gives 12.96, 36.11, 70.83, two of the last digit apart")]
    public void Ranks_among_censored_records()
    {
        MedianRankFit fit = Censored(MedianRanks.Bernard);
        Assert.Equal([1, 2.25, 4.125], fit.Points.Select(point => point.Order));
        double[] printed = [12.94, 36.1, 70.84];
        for (int i = 0; i < printed.Length; i++)
        {
            Numbers.Near(printed[i], fit.Points[i].MedianRank.Percent, 0.0251);
        }

        Numbers.CanBeWritten(fit.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "the same records, exact ranks at orders 1, 2.25 and 4.125 of 5 from the incomplete beta function of mpmath: 12.94494367, 36.03027779, 70.94083895 %")]
    public void Exact_ranks_among_censored_records()
    {
        MedianRankFit fit = Censored(MedianRanks.Exact);
        double[] ranks = [12.94494367, 36.03027779, 70.94083895];
        for (int i = 0; i < ranks.Length; i++)
        {
            Numbers.Near(ranks[i], fit.Points[i].MedianRank.Percent, 1e-8);
        }

        Numbers.CanBeWritten(fit.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand from the data of a published article on mean order numbers (weibull.com, issue 104): S 2500, F 2730, F 3900, S 4100, F 5000: 6/5 = 1.2; 1.2 + 4.8/4 = 2.4; 2.4 + 3.6/2 = 4.2")]
    public void Orders_after_an_early_loss()
    {
        MedianRankFit fit = new(
        [
            new LifeRecord(5, true), new LifeRecord(2.5, false), new LifeRecord(2.73, true), new LifeRecord(3.9, true),
            new LifeRecord(4.1, false),
        ]);
        foreach ((double order, RankedFailure point) in new[] { 1.2, 2.4, 4.2 }.Zip(fit.Points, (order, point) => (order, point)))
        {
            Numbers.Close(order, point.Order);
        }
    }

    [Theory]
    [InlineData(MedianRanks.Exact, RankLine.RankOnAge, 1.4302, 76.317)]
    [InlineData(MedianRanks.Exact, RankLine.AgeOnRank, 1.4429, 76.082)]
    [InlineData(MedianRanks.Bernard, RankLine.RankOnAge, 1.4270, 76.345)]
    [Evidence(Basis.Independent, "six units failed at 93, 34, 16, 120, 53 and 75 h (example after Kececioglu, reliawiki.com, Estimation of the Weibull Parameters); the lines recomputed outside to the digits here, the printed ones are remembered as 1.4301 and 76.317")]
    public void Lines_through_six_failures(MedianRanks ranks, RankLine line, double shape, double scale)
    {
        MedianRankFit fit = new(Six, ranks, line);
        Numbers.Near(shape, fit.Life!.Shape, 0.0001);
        Numbers.Near(scale, fit.Life.ScaleYears, 0.0015);
        Numbers.CanBeWritten(fit.Workings());
        if (ranks == MedianRanks.Exact)
        {
            Numbers.Near(0.99559, fit.Correlation!.Value, 0.000006);
        }
    }

    [Fact]
    [Evidence(Basis.Cited, "NIST/SEMATECH e-Handbook, apr413, as in public test data: 20 units, 10 failed by 500 h; plotting positions ln(1/(1 − F)) by Bernard; eight decimals")]
    public void Plotting_positions_of_the_handbook()
    {
        double[] hours = [54, 187, 216, 240, 244, 335, 361, 373, 375, 386];
        double[] positions =
        [
            0.03491627, 0.08701138, 0.14197026, 0.20012618, 0.26187419, 0.32768741, 0.39813907, 0.47393291, 0.55594606, 0.64529116,
        ];
        List<LifeRecord> records = [.. hours.Select(age => new LifeRecord(age, true)), new LifeRecord(500, false, 10)];
        MedianRankFit fit = new(records, MedianRanks.Bernard, RankLine.AgeOnRank);
        for (int i = 0; i < positions.Length; i++)
        {
            Numbers.Near(positions[i], -Math.Log(1 - fit.Points[i].MedianRank.DecimalFractions), 5e-9);
        }
    }

    [Theory]
    [InlineData(6, 1, 0.109101)]
    [InlineData(6, 2, 0.264450)]
    [InlineData(6, 3, 0.421407)]
    [Evidence(Basis.Independent, "exact median ranks of six, recomputed outside; the first and last are 1 − 2^(−1/n) and 2^(−1/n) in closed form")]
    public void Exact_ranks(int all, double order, double rank)
    {
        Numbers.Near(rank, MedianRankKernel.Exact(order, all), 5e-7);
        Numbers.Close(1 - Math.Pow(2, -1.0 / all), MedianRankKernel.Exact(1, all), 1e-12);
        Numbers.Close(Math.Pow(2, -1.0 / all), MedianRankKernel.Exact(all, all), 1e-12);
    }

    [Property]
    [Evidence(Basis.Identity, "points that lie on a Weibull line give it back, whichever way the line is laid; ages in other units only move the scale; workings hold")]
    public void A_line_gives_itself_back(byte a, byte b, byte c)
    {
        int n = 3 + (a % 8);
        double shape = 0.5 + (b / 60.0);
        double scale = 2 + (c / 10.0);
        LifeRecord[] records = new LifeRecord[n];
        for (int i = 0; i < n; i++)
        {
            double rank = (i + 0.7) / (n + 0.4);
            records[i] = new LifeRecord(scale * Math.Pow(-Math.Log(1 - rank), 1 / shape), true);
        }

        foreach (RankLine line in new[] { RankLine.AgeOnRank, RankLine.RankOnAge })
        {
            MedianRankFit fit = new(records, MedianRanks.Bernard, line);
            Numbers.Close(shape, fit.Life!.Shape, 1e-10);
            Numbers.Close(scale, fit.Life.ScaleYears, 1e-10);
            Numbers.Close(1, fit.Correlation!.Value, 1e-12);
            Numbers.CanBeWritten(fit.Workings());
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "what gives no line says why; survivors of an age stand after its failures; a count is as many records; ranges and equality")]
    public void Edges()
    {
        Assert.Null(new MedianRankFit([new LifeRecord(5, false)]).Life);
        WhyNone("fewer than two", new LifeRecord(3, true), new LifeRecord(5, false, 9));
        WhyNone("one age", new LifeRecord(3, true, 4));
        WhyNone("outside 0.3 to 20", new LifeRecord(3, true), new LifeRecord(3.0001, true));
        Assert.StartsWith("no lifetime: ", new MedianRankFit([new LifeRecord(5, false)]).ToString(), StringComparison.Ordinal);
        MedianRankFit tied = new([new LifeRecord(3, false), new LifeRecord(3, true), new LifeRecord(4, true)]);
        Assert.Equal(1, tied.Points[0].Order);
        Assert.Equal(
            new MedianRankFit([new LifeRecord(2, true), new LifeRecord(2, true), new LifeRecord(3, true)]).Points,
            new MedianRankFit([new LifeRecord(2, true, 2), new LifeRecord(3, true)]).Points);
        Assert.Equal(new MedianRankFit(Six), new MedianRankFit(Six));
        Assert.NotEqual(new MedianRankFit(Six), new MedianRankFit(Six, MedianRanks.Bernard, RankLine.AgeOnRank));
        Numbers.Refuses("records", () => _ = new MedianRankFit([new LifeRecord(3, true, 1001)]));
        Numbers.Refuses("ranks", () => _ = new MedianRankFit(Six, (MedianRanks)7, RankLine.AgeOnRank));
        Numbers.Refuses("line", () => _ = new MedianRankFit(Six, MedianRanks.Exact, (RankLine)7));
        Assert.Throws<ArgumentException>(() => new MedianRankFit([]));
    }

    private static void WhyNone(string reason, params LifeRecord[] records) =>
        Assert.Contains(reason, new MedianRankFit(records).WhyNone, StringComparison.Ordinal);

    // In thousands of hours.
    private static MedianRankFit Censored(MedianRanks ranks) => new(
        [
            new LifeRecord(5.1, true), new LifeRecord(9.5, false), new LifeRecord(15, true), new LifeRecord(22, false),
            new LifeRecord(40, true),
        ],
        ranks,
        RankLine.AgeOnRank);
}
