using System;
using Refinish.Numerics;

namespace Refinish.Films;

/// <summary>
/// The film of many equal parallel strokes, relative to its mean: r(x) = s Σ p(x − k s) over all whole k. In units of the fan's width: s =
/// 1 − o. Uniform: n = 1/s = N + f strokes over a point; Gaussian by Poisson summation, aₙ = exp(−2 π² σ² n² / s²) with σ = 1/4; beta piece
/// by piece.
/// </summary>
internal static class StrokeOverlapKernel
{
    /// <summary>Intervals of a piece that are searched for its highest and lowest place.</summary>
    private const int Looks = 32;

    // An overlap of two thirds is three strokes, not 2.9999999999999996.
    private const double Whole = 1e-9;

    /// <summary>Strokes that lie over each point of uniform stripes, at least.</summary>
    public static Num Full(Num spacing) => Num.Floor((1 / spacing) + Whole);

    /// <summary>The same, at most.</summary>
    public static Num Most(Num spacing) => Num.Ceiling((1 / spacing) - Whole);

    public static Num UniformVariation(Num spacing)
    {
        Num rest = Num.Max(0, (1 / spacing) - Full(spacing));
        return Num.Sqrt(rest * Num.Max(0, 1 - rest)) * spacing;
    }

    public static Num GaussianExtreme(Num spacing, bool highest, Trace? t)
    {
        Num sum = 0;
        for (int n = 1; n <= Harmonics(spacing.Value); n++)
        {
            Num a = Harmonic(spacing, n, t);
            sum += highest || n % 2 == 0 ? a : -a;
        }

        return 1 + (2 * sum);
    }

    public static Num GaussianVariation(Num spacing, Trace? t)
    {
        Num sum = 0;
        for (int n = 1; n <= Harmonics(spacing.Value); n++)
        {
            sum += Num.Square(Harmonic(spacing, n, t));
        }

        return Num.Sqrt(2 * sum);
    }

    private static Num Harmonic(Num spacing, int n, Trace? t = null) =>
        Num.Exp(-Num.Square(t.Pi()) * Num.Square(t.Number(n)) / (8 * Num.Square(spacing)));

    /// <summary>How many harmonics of a Gaussian stand above the last digit.</summary>
    private static int Harmonics(double spacing)
    {
        int n = 1;
        while (Harmonic(spacing, n + 1).Value > 1e-20)
        {
            n++;
        }

        return n;
    }

    /// <summary>The place where the set of strokes changes, between 0 and s/2; r is even about both ends.</summary>
    private static double Break(double spacing)
    {
        double edge = 0.5 - (spacing * Math.Floor(0.5 / spacing));
        return Math.Min(edge, spacing - edge);
    }

    /// <summary>The first and the last stroke over the piece around <paramref name="middle"/>.</summary>
    private static (int First, int Last) Strokes(double spacing, double middle) =>
        ((int)Math.Ceiling((middle - 0.5) / spacing), (int)Math.Floor((middle + 0.5) / spacing));

    private static Num Beta(Num spacing, double exponent, Num x, int first, int last, Trace? t = null)
    {
        Num sum = 0;
        for (int k = first; k <= last; k++)
        {
            sum += Num.Power(Num.Max(0, 1 - Num.Square(2 * (x - (k * spacing)))), exponent - 1);
        }

        return spacing * t.Given("c", FanPatternKernel.BetaFactor(exponent), Measure.Number) * sum;
    }

    public static Num BetaExtreme(Num spacing, double exponent, bool highest, Trace? t)
    {
        double x = BetaExtremeAt(spacing.Value, exponent, highest);

        // The piece is the one that the place belongs to; on a break both pieces agree.
        double edge = Break(spacing.Value);
        (int first, int last) = Strokes(spacing.Value, x <= edge ? edge / 2 : (edge + (spacing.Value / 2)) / 2);
        return Beta(spacing, exponent, t.Given(highest ? "x_max" : "x_min", x, Measure.Number), first, last, t);
    }

    /// <summary>Where r is highest or lowest, between 0 and s/2.</summary>
    private static double BetaExtremeAt(double spacing, double exponent, bool highest)
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
                double here = At(from + ((to - from) * i / Looks));
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
            double foundValue = At(found);
            double at = foundValue >= topValue ? found : from + ((to - from) * top / Looks);
            double most = Math.Max(foundValue, topValue);
            if (most > value)
            {
                best = at;
                value = most;
            }

            double At(double x) => sign * Beta(spacing, exponent, x, first, last).Value;
        }
    }

    /// <summary>
    /// √ of the mean of (r − 1)² over half a period. The variable runs as 3t² − 2t³, which tames the square roots at both ends of a piece.
    /// </summary>
    public static Num BetaVariation(Num spacing, double exponent, Trace? t)
    {
        double edge = Break(spacing.Value);
        Num sum = 0;
        foreach ((double from, double to) in new[] { (0, edge), (edge, spacing.Value / 2) })
        {
            if (to > from)
            {
                (int first, int last) = Strokes(spacing.Value, (from + to) / 2);
                Num Place(Num u) => from + ((to - from) * (Num.Square(u) * (3 - (2 * u))));
                sum += Num.Integral(
                    "t", 0, 1, u => Num.Square(Beta(spacing, exponent, Place(u), first, last, t) - 1) * (6 * u * (1 - u))) * (to - from);
            }
        }

        return Num.Sqrt(sum / (spacing / 2));
    }

    private readonly struct Film(double spacing, double exponent, int first, int last, double sign) : IFunction
    {
        public double At(double x) => sign * Beta(spacing, exponent, x, first, last).Value;
    }
}
