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

    /// <summary>Two-sided quantile of Student's t.</summary>
    public static double StudentT(double confidence, int freedom) => MathNet.Numerics.Distributions.StudentT.InvCDF(0, 1, freedom, 0.5 + (confidence / 2));
}
