using System;

namespace Refinish.Films;

/// <summary>Sample statistics in SI.</summary>
internal static class StatisticsKernel
{
    public static double Mean(ValueList<double> values)
    {
        double sum = 0;
        for (int i = 0; i < values.Count; i++)
        {
            sum += values[i];
        }

        return sum / values.Count;
    }

    /// <summary>s = √(Σ(x − x̄)² / (n − 1)).</summary>
    public static double StandardDeviation(ValueList<double> values)
    {
        double mean = Mean(values);
        double squares = 0;
        for (int i = 0; i < values.Count; i++)
        {
            squares += (values[i] - mean) * (values[i] - mean);
        }

        return Math.Sqrt(squares / (values.Count - 1));
    }
}
