using System;

namespace Refinish.Estimating;

/// <summary>
/// Quantiles of a PERT distribution over the score of a standard normal number, where they are smooth up to both ends: cubic pieces through
/// values and slopes, 32 to a unit of score. Held to the quantiles themselves within 10⁻⁸ of the range by a test.
/// </summary>
internal sealed class ScoreTable
{
    private const int PerUnit = 32;

    private readonly PertDistribution distribution;
    private readonly double[] values;
    private readonly double[] slopes;

    private ScoreTable(PertDistribution distribution, double[] values, double[] slopes)
    {
        this.distribution = distribution;
        this.values = values;
        this.slopes = slopes;
    }

    public static ScoreTable Of(PertDistribution distribution)
    {
        const int Reach = 6;
        int knots = (2 * Reach * PerUnit) + 1;
        double[] values = new double[knots];
        double[] slopes = new double[knots];
        double range = distribution.Points.Maximum - distribution.Points.Minimum;
        double share = 1e-3;
        for (int i = 0; i < knots; i++)
        {
            double z = ((double)i / PerUnit) - Reach;
            share = distribution.ShareAt(Distribution.ChanceOf(z), share);
            values[i] = distribution.Points.Minimum + (range * share);
        }

        // Slopes by five points: the density at the ends is zero and of no use there.
        for (int i = 0; i < knots; i++)
        {
            slopes[i] = i < 2 || i >= knots - 2
                ? PerUnit * (values[Math.Min(knots - 1, i + 1)] - values[Math.Max(0, i - 1)]) / (i == 0 || i == knots - 1 ? 1 : 2)
                : PerUnit * (values[i - 2] - (8 * values[i - 1]) + (8 * values[i + 1]) - values[i + 2]) / 12;
        }

        return new ScoreTable(distribution, values, slopes);
    }

    public double At(double z)
    {
        double position = (z * PerUnit) + ((values.Length - 1) / 2);
        int i = (int)position;
        if (position < 2 || i >= values.Length - 3)
        {
            return distribution.At(Distribution.ChanceOf(z));
        }

        double t = position - i;
        double s = 1 - t;
        double bend = values[i + 1] - values[i];
        return (s * values[i]) + (t * values[i + 1]) + (t * s * ((s * ((slopes[i] / PerUnit) - bend)) - (t * ((slopes[i + 1] / PerUnit) - bend))));
    }
}
