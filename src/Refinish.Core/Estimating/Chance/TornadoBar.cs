using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>What one uncertain input does by itself: the result at its P10 and at its P90, all others at their medians.</summary>
public sealed record TornadoBar
{
    private TornadoBar(string name, double atP10, double atP90)
    {
        Bounds any = Bounds.Between(double.MinValue, double.MaxValue, Measure.Number);
        Name = name;
        AtP10 = Guard.Within(atP10, any, "result");
        AtP90 = Guard.Within(atP90, any, "result");
    }

    /// <summary>Name of the input.</summary>
    public string Name { get; }

    /// <summary>The result with this input at its P10.</summary>
    public double AtP10 { get; }

    /// <summary>The result with this input at its P90.</summary>
    public double AtP90 { get; }

    /// <summary>Length of the bar: the size of the difference between the two.</summary>
    public double Swing => Math.Abs(AtP90 - AtP10);

    /// <summary>Name and both ends.</summary>
    /// <returns>Text such as <c>masking: 412.3 to 431.9</c>.</returns>
    public override string ToString() => Name + ": " + Figures.Significant(AtP10, 5) + " to " + Figures.Significant(AtP90, 5);

    internal static IReadOnlyList<TornadoBar> Of(IReadOnlyList<UncertainInput> inputs, Func<double[], double> model)
    {
        double[] medians = [.. inputs.Select(input => input.Distribution.At(0.5))];

        double With(int changed, double value)
        {
            double[] values = (double[])medians.Clone();
            values[changed] = value;
            return model(values);
        }

        return new ValueList<TornadoBar>(inputs
            .Select((input, i) => (Input: input, Index: i))
            .Where(pair => pair.Input.Distribution is not ExactValue)
            .Select(pair => new TornadoBar(
                pair.Input.Name,
                With(pair.Index, pair.Input.Distribution.At(0.1)),
                With(pair.Index, pair.Input.Distribution.At(0.9))))
            .OrderByDescending(bar => bar.Swing)
            .ThenBy(bar => bar.Name, StringComparer.Ordinal));
    }
}
