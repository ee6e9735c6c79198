using System;

namespace Refinish.Numerics;

/// <summary>A straight line through points by least squares, y = y_m + b (x − x_m), and how well its slope is known.</summary>
internal readonly struct LineFit
{
    private LineFit(int count, double meanX, double meanY, double squares, double products, double residuals)
    {
        Count = count;
        MeanX = meanX;
        MeanY = meanY;
        Squares = squares;
        Products = products;
        Residuals = residuals;
    }

    public int Count { get; }

    public double MeanX { get; }

    public double MeanY { get; }

    /// <summary>Σ(x − x_m)².</summary>
    public double Squares { get; }

    /// <summary>Σ(x − x_m)(y − y_m).</summary>
    public double Products { get; }

    public double Slope => Products / Squares;

    /// <summary>Σ(y − ŷ)².</summary>
    public double Residuals { get; }

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
