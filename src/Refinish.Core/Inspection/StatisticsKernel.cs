using System.Collections.Generic;
using System.Linq;

namespace Refinish.Inspection;

/// <summary>Sample statistics in SI; in a derivation the values have the letters x_1, x_2 and so on.</summary>
internal static class StatisticsKernel
{
    public static IEnumerable<Num> Letters(ValueList<double> values, Trace? t, string symbol, Measure measure) =>
        values.Select((value, i) => t.Given(symbol, i + 1, value, measure));

    public static Num Mean(ValueList<double> values, Trace? t, string symbol, Measure measure, string count = "n") =>
        Num.Sum(values.Count, (values, t, symbol, measure), static (of, i) => of.t.Given(of.symbol, i + 1, of.values[i], of.measure))
        / t.Given(count, values.Count, Measure.Number);

    /// <summary>s = √(Σ(x − x̄)² / (n − 1)).</summary>
    public static Num Deviation(ValueList<double> values, Num mean, Trace? t, string symbol, Measure measure) => Num.Sqrt(
        Num.Sum(
            values.Count,
            (values, mean, t, symbol, measure),
            static (of, i) => Num.Square(of.t.Given(of.symbol, i + 1, of.values[i], of.measure) - of.mean))
        / (t.Given("n", values.Count, Measure.Number) - 1));
}
