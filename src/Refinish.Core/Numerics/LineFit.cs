using System;

namespace Refinish.Numerics;

/// <summary>A straight line through points by least squares, y = y_m + b (x − x_m), and how well its slope is known.</summary>
/// <param name="Count">How many points.</param>
/// <param name="MeanX">x_m.</param>
/// <param name="MeanY">y_m.</param>
/// <param name="Squares">Σ(x − x_m)².</param>
/// <param name="Products">Σ(x − x_m)(y − y_m).</param>
/// <param name="Residuals">Σ(y − ŷ)².</param>
internal readonly record struct LineFit(int Count, double MeanX, double MeanY, double Squares, double Products, double Residuals)
{
    public double Slope => Products / Squares;

    /// <summary>√(Σ(y − ŷ)²/(n − 2)); not known for two points.</summary>
    public double? ResidualDeviation => Count > 2 ? Math.Sqrt(Residuals / (Count - 2)) : null;

    /// <summary>Standard error of the slope; not known for two points.</summary>
    public double? SlopeError => ResidualDeviation / Math.Sqrt(Squares);

    public static LineFit Through(double[] x, double[] y)
    {
        double meanX = Mean(x);
        double meanY = Mean(y);
        double squares = 0;
        double products = 0;
        for (int i = 0; i < x.Length; i++)
        {
            squares += (x[i] - meanX) * (x[i] - meanX);
            products += (x[i] - meanX) * (y[i] - meanY);
        }

        double slope = products / squares;
        double residuals = 0;
        for (int i = 0; i < x.Length; i++)
        {
            double miss = y[i] - meanY - (slope * (x[i] - meanX));
            residuals += miss * miss;
        }

        return new LineFit(x.Length, meanX, meanY, squares, products, residuals);
    }

    private static double Mean(double[] values)
    {
        double sum = 0;
        foreach (double value in values)
        {
            sum += value;
        }

        return sum / values.Length;
    }
}
