using System;
using System.Linq;
using FsCheck.Xunit;
using Refinish.Inspection;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Inspection;

public class FilmStatisticsTests
{
    [Fact]
    [Evidence(Basis.Independent, "by hand: spots 4.8 5.3 4.2 5.0 6.0 mil: mean 5.06, s 0.662, t(0.975; 4) = 2.776 (Student's table), interval 4.24 to 5.88 mil")]
    public void Five_spots_bound_the_mean()
    {
        FilmStatistics spots = Mils(4.8, 5.3, 4.2, 5.0, 6.0);
        Numbers.Close(5.06, spots.Mean.Mils);
        Numbers.Near(0.6618, spots.StandardDeviation!.Value.Mils, 5e-5);
        Numbers.Near(4.24, spots.MeanInterval!.Lower.Mils, 0.005);
        Numbers.Near(5.88, spots.MeanInterval.Upper!.Value.Mils, 0.005);
        Numbers.Near(0.6618 / 5.06, spots.CoefficientOfVariation!.Value.DecimalFractions, 1e-4);
        Numbers.Near(0.6618 / Math.Sqrt(5), spots.StandardError!.Value.Mils, 5e-5);
        Numbers.Close(4.2, spots.Minimum.Mils);
        Numbers.Close(6.0, spots.Maximum.Mils);
        Numbers.CanBeWritten(spots.Workings());
        Assert.Equal("5 readings: mean 129 µm, standard deviation 16.8 µm, 107 µm to 152 µm", spots.ToString());
    }

    [Fact]
    [Evidence(Basis.Cited, "Berthouex and Brown, Statistics for Environmental Engineers, Table 21.1: t(0.975; n − 1)/√n for n = 4 to 60, two decimals; the row of 15 is misprinted (0.50 for 0.55) and left out")]
    public void The_interval_of_the_mean_matches_the_printed_factors()
    {
        foreach (Table.Row row in Table.Read("tolerance_two_sided.csv").Rows)
        {
            if (row["mean_95"] == "misprint")
            {
                continue;
            }

            int n = (int)row.Number("n");
            FilmStatistics films = new([.. Enumerable.Range(0, n).Select(i => Length.FromMicrometers(100 + (i % 7)))]);
            Numbers.Near(row.Number("mean_95"), films.MeanInterval!.HalfWidth!.Value.Meters / films.StandardDeviation!.Value.Meters, 0.0051);
        }
    }

    [Property]
    [Evidence(Basis.Identity, "scaling scales, order does not matter, more confidence is wider; workings hold")]
    public void Statistics_scale(byte a, byte b, byte c)
    {
        double[] mils = [1 + (a / 20.0), 1 + (b / 20.0), 1 + (c / 20.0)];
        FilmStatistics one = Mils(mils);
        FilmStatistics two = Mils([.. mils.Select(mil => 2 * mil).Reverse()]);
        Numbers.Close(2 * one.Mean.Mils, two.Mean.Mils);
        Numbers.Near(2 * one.StandardDeviation!.Value.Mils, two.StandardDeviation!.Value.Mils, 1e-12);
        FilmStatistics surer = new(mils.Select(mil => Length.FromMils(mil)), Ratio.FromPercent(99));
        Assert.True(surer.MeanInterval!.HalfWidth!.Value.Meters >= one.MeanInterval!.HalfWidth!.Value.Meters);
        Numbers.CanBeWritten(one.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings; one reading has no interval")]
    public void Refuses_what_cannot_be()
    {
        Length film = Length.FromMicrometers(50);
        Numbers.Refuses("films", () => _ = new FilmStatistics([Length.FromMicrometers(-1)]));
        Numbers.Refuses("confidence", () => _ = new FilmStatistics([film, film], Ratio.FromPercent(100)));
        Assert.Null(new FilmStatistics([film]).MeanInterval);
        Numbers.CanBeWritten(new FilmStatistics([film]).Workings());
    }

    private static FilmStatistics Mils(params double[] mils) => new(mils.Select(mil => Length.FromMils(mil)));
}
