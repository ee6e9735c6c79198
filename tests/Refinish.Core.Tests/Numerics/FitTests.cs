using System;
using System.Linq;
using Refinish.Numerics;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Numerics;

public class FitTests
{
    [Fact]
    [Evidence(Basis.Independent, "by hand: (1, 1), (2, 2), (3, 2), (4, 4) have means 2.5 and 2.25, S_xx 5, S_xy 4.5, slope 0.9, residuals 0.70, error of the slope √(0.35/5)")]
    public void A_line_by_hand()
    {
        LineFit line = LineFit.Through([1, 2, 3, 4], [1, 2, 2, 4]);
        Numbers.Close(2.5, line.MeanX);
        Numbers.Close(2.25, line.MeanY);
        Numbers.Close(0.9, line.Slope);
        Numbers.Close(0.7, line.Residuals);
        Numbers.Close(Math.Sqrt(0.35), line.ResidualDeviation!.Value);
        Numbers.Close(Math.Sqrt(0.07), line.SlopeError!.Value);
        Assert.Null(LineFit.Through([1, 2], [3, 5]).SlopeError);
    }

    [Fact]
    [Evidence(Basis.Independent, "MathNet.Numerics 5.0.0, Fit.Line, over invented points")]
    public void A_line_as_another_library_lays_it()
    {
        double[] x = [.. Enumerable.Range(0, 30).Select(i => 1000 + (i * i / 7.0))];
        double[] y = [.. x.Select((at, i) => (3 * at) + Math.Sin(i))];
        (double intercept, double slope) = MathNet.Numerics.Fit.Line(x, y);
        LineFit line = LineFit.Through(x, y);
        Numbers.Close(slope, line.Slope, 1e-11);
        Numbers.Close(intercept, line.MeanY - (line.Slope * line.MeanX), 1e-8);
    }

    [Fact]
    [Evidence(Basis.Identity, "a plane is found back from its own values, noise and all: effects within four of the errors that are stated for them in 99 of 100 fits, and a column without effect is rarely told")]
    public void A_plane_is_found_back()
    {
        Random random = new(11);
        int within = 0;
        int told = 0;
        for (int run = 0; run < 100; run++)
        {
            double[][] columns = [.. Enumerable.Range(0, 20).Select(_ => Enumerable.Range(0, 200).Select(_ => Math.Sqrt(12) * (random.NextDouble() - 0.5)).ToArray())];
            double[] values = [.. Enumerable.Range(0, 200).Select(i => (0.6 * columns[0][i]) - (0.5 * columns[1][i]) + (0.6 * Math.Sqrt(12) * (random.NextDouble() - 0.5)))];
            PlaneFit fit = new(columns, values);
            within += Math.Abs(fit.Effects[0] - 0.6) < 4 * fit.Errors[0] && Math.Abs(fit.Effects[1] + 0.5) < 4 * fit.Errors[1] ? 1 : 0;
            told += Enumerable.Range(2, 18).Count(i => Math.Abs(fit.Effects[i]) > 2 * fit.Errors[i]);
        }

        Assert.True(within >= 99, within + " of 100");

        // Two standard errors are passed by about one in twenty of what has no effect: 82 of 1800, and 120 would be four deviations more.
        Assert.InRange(told, 40, 125);
    }

    [Fact]
    [Evidence(Basis.Independent, "MathNet.Numerics 5.0.0, MultipleRegression.QR, over columns that hang together")]
    public void A_plane_as_another_library_lays_it()
    {
        Random random = new(3);
        double[] Standard(double[] values)
        {
            double mean = values.Average();
            double deviation = Math.Sqrt(values.Average(value => (value - mean) * (value - mean)));
            return [.. values.Select(value => (value - mean) / deviation)];
        }

        double[] first = Standard([.. Enumerable.Range(0, 80).Select(_ => random.NextDouble())]);
        double[] second = Standard([.. first.Select(value => value + random.NextDouble())]);
        double[] y = Standard([.. first.Select((value, i) => value - (2 * second[i]) + random.NextDouble())]);
        double[] expected = MathNet.Numerics.LinearRegression.MultipleRegression.QR(
            [.. first.Select((value, i) => new[] { value, second[i] })], y);
        PlaneFit fit = new([first, second], y);
        Numbers.Close(expected[0], fit.Effects[0], 1e-10);
        Numbers.Close(expected[1], fit.Effects[1], 1e-10);
    }
}
