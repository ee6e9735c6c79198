using System;
using Refinish.Numerics;

namespace Refinish.Films;

/// <summary>
/// The film of many equal parallel strokes, relative to its mean: r(x) = s Σ p(x − k s) over all whole k. In units of the fan's width: s = 1 − o.
/// Uniform: n = 1/s = N + f strokes over a point; Gaussian by Poisson summation, aₙ = exp(−2 π² σ² n² / s²) with σ = 1/4; beta piece by piece.
/// </summary>
internal static class StrokeOverlapKernel
{
    /// <summary>Intervals of a piece that are searched for its highest and lowest place.</summary>
    private const int Looks = 32;

    // An overlap of two thirds is three strokes, not 2.9999999999999996.
    public const double Whole = 1e-9;

    public static double Full(double spacing) => Math.Floor((1 / spacing) + Whole);

    public static double Rest(double spacing) => Math.Max(0, (1 / spacing) - Full(spacing));

    public static double Harmonic(double spacing, int n) => Math.Exp(-(Math.PI * Math.PI) * n * n / (8 * spacing * spacing));

    /// <summary>How many harmonics of a Gaussian stand above the last digit.</summary>
    public static int Harmonics(double spacing)
    {
        int n = 1;
        while (Harmonic(spacing, n + 1) > 1e-20)
        {
            n++;
        }

        return n;
    }

    public static double GaussianExtreme(double spacing, bool highest)
    {
        double sum = 0;
        for (int n = 1; n <= Harmonics(spacing); n++)
        {
            double a = Harmonic(spacing, n);
            sum = highest || n % 2 == 0 ? sum + a : sum - a;
        }

        return 1 + (2 * sum);
    }

    public static double GaussianVariation(double spacing)
    {
        double sum = 0;
        for (int n = 1; n <= Harmonics(spacing); n++)
        {
            double a = Harmonic(spacing, n);
            sum += a * a;
        }

        return Math.Sqrt(2 * sum);
    }

    /// <summary>The place where the set of strokes changes, between 0 and s/2; r is even about both ends.</summary>
    public static double Break(double spacing)
    {
        double edge = 0.5 - (spacing * Math.Floor(0.5 / spacing));
        return Math.Min(edge, spacing - edge);
    }

    /// <summary>The first and the last stroke over the piece around <paramref name="middle"/>.</summary>
    public static (int First, int Last) Strokes(double spacing, double middle) =>
        ((int)Math.Ceiling((middle - 0.5) / spacing), (int)Math.Floor((middle + 0.5) / spacing));

    public static double Beta(double spacing, double exponent, double x, int first, int last)
    {
        double sum = 0;
        for (int k = first; k <= last; k++)
        {
            double u = 2 * (x - (k * spacing));
            double inside = 1 - (u * u);
            sum += inside > 0 ? Math.Pow(inside, exponent - 1) : 0;
        }

        return spacing * FanPatternKernel.BetaFactor(exponent) * sum;
    }

    /// <summary>Where r is highest or lowest, between 0 and s/2.</summary>
    public static double BetaExtremeAt(double spacing, double exponent, bool highest)
    {
        double sign = highest ? 1 : -1;
        double edge = Break(spacing);
        double best = 0;
        double value = double.NegativeInfinity;
        Piece(0, edge);
        Piece(edge, spacing / 2);
        return best;

        void Piece(double from, double to)
        {
            (int first, int last) = Strokes(spacing, (from + to) / 2);
            int top = 0;
            double topValue = double.NegativeInfinity;
            for (int i = 0; i <= Looks; i++)
            {
                double here = sign * Beta(spacing, exponent, from + ((to - from) * i / Looks), first, last);
                if (here > topValue)
                {
                    top = i;
                    topValue = here;
                }
            }

            // The two neighbours of the best look enclose the extreme.
            double a = from + ((to - from) * Math.Max(0, top - 1) / Looks);
            double c = from + ((to - from) * Math.Min(Looks, top + 1) / Looks);
            double found = Minimum.Between(new Film(spacing, exponent, first, last, -sign), a, c);
            double foundValue = sign * Beta(spacing, exponent, found, first, last);
            double at = foundValue >= topValue ? found : from + ((to - from) * top / Looks);
            double most = Math.Max(foundValue, topValue);
            if (most > value)
            {
                best = at;
                value = most;
            }
        }
    }

    /// <summary>∫ (r − 1)² over one piece of half a period. The variable runs as 3t² − 2t³, which tames the square roots at both ends.</summary>
    public static double BetaSquares(double spacing, double exponent, double from, double to)
    {
        if (to <= from)
        {
            return 0;
        }

        (int first, int last) = Strokes(spacing, (from + to) / 2);
        return Quadrature.GaussLegendre(
            (spacing, exponent, from, to, first, last),
            static (s, t) =>
            {
                double r = Beta(s.spacing, s.exponent, s.from + ((s.to - s.from) * (t * t * (3 - (2 * t)))), s.first, s.last);
                return (r - 1) * (r - 1) * (6 * t * (1 - t));
            },
            0,
            1) * (to - from);
    }

    public static double BetaVariation(double spacing, double exponent)
    {
        double edge = Break(spacing);
        return Math.Sqrt((BetaSquares(spacing, exponent, 0, edge) + BetaSquares(spacing, exponent, edge, spacing / 2)) / (spacing / 2));
    }

    private readonly struct Film(double spacing, double exponent, int first, int last, double sign) : IFunction
    {
        public double At(double x) => sign * Beta(spacing, exponent, x, first, last);
    }
}
