using System;
using Refinish.Numerics;

namespace Refinish.Air;

/// <summary>
/// The maxima of one weighted sum of all terms in the well-mixed room. Between the moments of the grid the sum has a closed form;
/// maxima are found where derivatives are zero, with the zeros counted, not sampled. A maximum whose bound does not reach the best
/// found so far is not worked out.
/// </summary>
internal static class RoomHistory
{
    /// <summary>The largest value and when it is reached; with airflow only.</summary>
    public static double Peak(RoomPath path, out double at)
    {
        RoomGrid grid = path.Grid;
        double best = 0;
        at = grid.Times[0];
        for (int j = 1; j < grid.Count; j++)
        {
            Keep(path.AirAt(j), grid.Times[j], ref best, ref at);
        }

        for (int j = 0; j < path.Last; j++)
        {
            if (path.AirBound(j) <= best)
            {
                continue;
            }

            double length = grid.Lengths[j];

            // The slope s obeys (s e^(λy))′ = e^(λy) E′, so between two zeros of the derivative of the release E it changes sign once
            // at most.
            double[]? cuts = Cuts(path, j, length, false, out int count);
            Slope slope = new(path, j);
            double lower = 0;
            double low = path.ReleaseAtStart(j) - (grid.Changes * path.AirAt(j));
            for (int c = 0; c <= count; c++)
            {
                double upper = c == count ? length : cuts![c];
                double high = c == count ? path.ReleaseAtEnd(j) - (grid.Changes * path.AirAt(j + 1)) : slope.At(upper);

                // Where it falls through zero, s e^(λy) only falls: the value gains at most s φ₁(−λy) y.
                if (low > 0 && high <= 0 && (count > 0 || path.AirAt(j) + (low * grid.Filled[j]) > best))
                {
                    double top = Roots.Enclose(slope, lower, upper, Roots.OfMaximum).Upper;
                    Keep(path.Air(j, top), grid.Times[j] + top, ref best, ref at);
                }

                lower = upper;
                low = high;
            }
        }

        // After the last term the slope falls faster than e^(−λy): the value gains at most s/λ.
        if (path.AirAt(path.Last) + (path.Slope(path.Last, 0) / grid.Changes) > best)
        {
            double crest = Crest(path);
            Keep(path.Air(path.Last, crest), grid.Times[path.Last] + crest, ref best, ref at);
        }

        return best;
    }

    /// <summary>The largest time integral over any window of the grid's length, and when that window ends; with airflow only.</summary>
    public static double WorstWindow(RoomPath path, out double end)
    {
        RoomGrid grid = path.Grid;
        double best = 0;
        end = grid.Times[0];
        for (int j = 1; j < grid.Count; j++)
        {
            Keep(path.IntegralAt(j), grid.Times[j], ref best, ref end);
        }

        for (int j = 0; j < path.Last; j++)
        {
            if (path.IntegralBound(j) <= best)
            {
                continue;
            }

            double length = grid.Lengths[j];

            // A window grows by the air of now less that of one window ago, whose release is their difference: as above, one order lower.
            double[]? cuts = Cuts(path, j, length, true, out int count);
            Growth at = new(path, j);
            double lower = 0;
            double low = path.AirAt(j);
            for (int c = 0; c <= count; c++)
            {
                double upper = c == count ? length : cuts![c];
                double high = c == count ? path.AirAt(j + 1) : at.At(upper);
                if (low > 0 && high <= 0 && (count > 0 || path.IntegralAt(j) + (low * grid.Filled[j]) > best))
                {
                    double top = Roots.Enclose(at, lower, upper, Roots.OfMaximum).Upper;
                    Keep(path.Integral(j, top), grid.Times[j] + top, ref best, ref end);
                }

                lower = upper;
                low = high;
            }
        }

        // After the last event of the window films only empty, those of one window ago the more: the integral gains at most its growth over
        // λ.
        if (path.AirAt(path.Last) > 0 && path.IntegralAt(path.Last) + (path.AirAt(path.Last) / grid.Changes) > best)
        {
            Growth rest = new(path, path.Last);
            double top = Roots.Enclose(rest, 0, FirstNegative(rest, grid.Window), Roots.OfMaximum).Upper;
            Keep(path.Integral(path.Last, top), grid.Times[path.Last] + top, ref best, ref end);
        }

        return best;
    }

    /// <summary>
    /// When the value is at or below a level for good, counted from the end of the last term; 0 when it already is and stays so,
    /// NaN when that takes longer than <paramref name="horizon"/> or never comes.
    /// </summary>
    public static double TimeToFall(RoomPath path, double level, double horizon)
    {
        double crest = Crest(path);
        if (path.Air(path.Last, crest) <= level)
        {
            return 0;
        }

        Excess excess = new(path, path.Last, level);
        return horizon <= crest || excess.At(horizon) > 0 ? double.NaN : Roots.Enclose(excess, crest, horizon, Roots.Sharp).Upper;
    }

    /// <summary>The largest value from a time after the end of the last term onwards.</summary>
    public static double GreatestFrom(RoomPath path, double wait) => path.Air(path.Last, Math.Max(wait, Crest(path)));

    public static void Keep(double value, double time, ref double best, ref double at)
    {
        if (value > best)
        {
            best = value;
            at = time;
        }
    }

    private static double FirstNegative<T>(T function, double step)
        where T : struct, IFunction
    {
        while (function.At(step) > 0)
        {
            step *= 2;
        }

        return step;
    }

    // After the last term the release only falls, so the value rises to one crest at most.
    private static double Crest(RoomPath path)
    {
        Slope slope = new(path, path.Last);
        return slope.At(0) > 0 ? Roots.Enclose(slope, 0, FirstNegative(slope, 60), Roots.OfMaximum).Upper : 0;
    }

    // Where what falls out of the films changes sign, none where all of it is of one sign: the release then only rises or only falls.
    private static double[]? Cuts(RoomPath path, int knot, double length, bool ofRelease, out int count)
    {
        count = 0;
        int signs = ofRelease ? Sign(path.Steady(knot)) : 0;
        for (int g = 0; g < path.Films; g++)
        {
            signs |= Sign(path.Decaying(knot, g));
        }

        if (signs != 3)
        {
            return null;
        }

        double[] coefficients = new double[path.Films + 1];
        double[] exponents = new double[path.Films + 1];
        double[] found = new double[path.Films + 1];
        int terms = 0;
        if (ofRelease && path.Steady(knot) != 0)
        {
            coefficients[terms++] = path.Steady(knot);
        }

        for (int g = 0; g < path.Films; g++)
        {
            double part = path.Decaying(knot, g);
            if (part != 0)
            {
                double rate = path.Grid.Line.Rates[g];
                coefficients[terms] = ofRelease ? part : -rate * part;
                exponents[terms++] = rate;
            }
        }

        count = ExponentialSum.Zeros(coefficients, exponents, terms, length, found);
        return found;

        static int Sign(double part) => part > 0 ? 1 : part < 0 ? 2 : 0;
    }

    private readonly struct Slope(RoomPath path, int knot) : IFunction
    {
        public double At(double time) => path.Slope(knot, time);
    }

    private readonly struct Growth(RoomPath path, int knot) : IFunction
    {
        public double At(double time) => path.Air(knot, time);
    }

    private readonly struct Excess(RoomPath path, int knot, double level) : IFunction
    {
        public double At(double time) => path.Air(knot, time) - level;
    }
}
