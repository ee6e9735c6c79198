using System;
using System.Collections.Generic;

namespace Refinish.Air;

/// <summary>
/// One weighted sum of all coats over time in the well-mixed room: a substance's concentration, a fraction of a flammable limit or
/// an exposure index, depending on the weights. Between the moments at which a spray begins or ends it has a closed form, which is
/// marched here once; maxima are found where derivatives are zero, with the zeros counted, not sampled.
/// </summary>
internal sealed class RoomHistory
{
    private readonly double changes;
    private readonly RoomTimeline line;
    private readonly double total;

    // At each knot: in the air, time integral up to it, steady part of the release, and per film rate its decaying part.
    private readonly double[] air;
    private readonly double[] integral;
    private readonly double[] steady;
    private readonly double[] decaying;

    public RoomHistory(RoomTimeline line, double changes, double[] weights)
    {
        this.line = line;
        this.changes = changes;
        int knots = line.Knots.Length;
        int films = line.Rates.Length;
        air = new double[knots];
        integral = new double[knots];
        steady = new double[knots];
        decaying = new double[knots * films];
        double[] film = new double[films];
        for (int j = 0; j < knots; j++)
        {
            for (int i = 0; i < weights.Length; i++)
            {
                if (line.Sprays(i, j))
                {
                    double rate = weights[i] / line.Spray(i);
                    double intoFilm = rate * (1 - line.Flash(i));
                    steady[j] += rate;
                    decaying[(j * films) + line.Film(i)] -= intoFilm;
                }
            }

            // What leaves a film is k m; while sprayed into, it tends to the inflow.
            for (int g = 0; g < films; g++)
            {
                double inflow = -decaying[(j * films) + g];
                decaying[(j * films) + g] += line.Rates[g] * film[g];
                if (j + 1 < knots)
                {
                    double length = line.Knots[j + 1] - line.Knots[j];
                    film[g] = (film[g] * Math.Exp(-(line.Rates[g] * length))) + (inflow * length * PhiFunctions.Phi1(-(line.Rates[g] * length)));
                }
            }

            if (j + 1 < knots)
            {
                double length = line.Knots[j + 1] - line.Knots[j];
                air[j + 1] = Air(j, length);
                integral[j + 1] = integral[j] + Integral(j, length);
            }
        }

        foreach (double weight in weights)
        {
            total += weight;
        }
    }

    /// <summary>The largest value and when it is reached; without airflow all that is ever released, at no finite time.</summary>
    public double Peak(out double at)
    {
        if (changes == 0)
        {
            at = double.PositiveInfinity;
            return total;
        }

        double best = 0;
        at = line.Knots[0];
        int last = line.Knots.Length - 1;
        for (int j = 0; j < last; j++)
        {
            double length = line.Knots[j + 1] - line.Knots[j];
            int cuts = SlopeCuts(j, length);
            double lower = 0;
            for (int c = 0; c <= cuts; c++)
            {
                double upper = c == cuts ? length : line.Found[c];
                Slope slope = new(this, j);
                if (slope.At(lower) > 0 && slope.At(upper) < 0)
                {
                    double top = SignChange.Find(slope, lower, upper, SignChange.Maximum);
                    Keep(Air(j, top), line.Knots[j] + top, ref best, ref at);
                }

                lower = upper;
            }

            Keep(air[j + 1], line.Knots[j + 1], ref best, ref at);
        }

        double crest = Crest();
        Keep(Air(last, crest), line.Knots[last] + crest, ref best, ref at);
        return best;
    }

    /// <summary>The largest time integral over any window of the given length, and when that window ends.</summary>
    public double WorstWindow(double window, out double end)
    {
        if (changes == 0)
        {
            end = double.PositiveInfinity;
            return total * window;
        }

        double best = 0;
        end = line.Knots[0];
        double[] knots = line.Knots;
        int last = knots.Length - 1;
        int head = 0;
        int tail = -1;
        double from = knots[0];
        while (true)
        {
            double nextHead = head < last ? knots[head + 1] : double.PositiveInfinity;
            double nextTail = tail < last ? knots[tail + 1] + window : double.PositiveInfinity;
            double to = Math.Min(nextHead, nextTail);
            if (double.IsInfinity(to))
            {
                break;
            }

            double length = to - from;
            if (length > 0)
            {
                Growth growth = new(this, head, tail, window, from);
                int cuts = GrowthCuts(head, tail, window, from, length);
                double lower = 0;
                for (int c = 0; c <= cuts; c++)
                {
                    double upper = c == cuts ? length : line.Found[c];
                    if (growth.At(lower) > 0 && growth.At(upper) < 0)
                    {
                        double top = from + SignChange.Find(growth, lower, upper, SignChange.Maximum);
                        Keep(Window(head, tail, window, top), top, ref best, ref end);
                    }

                    lower = upper;
                }

                Keep(Window(head, tail, window, to), to, ref best, ref end);
            }

            head = to == nextHead ? head + 1 : head;
            tail = to == nextTail ? tail + 1 : tail;
            from = to;
        }

        Growth rest = new(this, last, last, window, from);
        if (rest.At(0) > 0)
        {
            double top = from + SignChange.Find(rest, 0, FirstNegative(rest, window), SignChange.Maximum);
            Keep(Window(last, last, window, top), top, ref best, ref end);
        }

        return best;
    }

    /// <summary>
    /// When the value is at or below a level for good, counted from the end of the last spray; 0 when it already is and stays so,
    /// NaN when that takes longer than <paramref name="horizon"/> or never comes.
    /// </summary>
    public double TimeToFall(double level, double horizon)
    {
        int last = line.Knots.Length - 1;
        if (changes == 0)
        {
            return double.NaN;
        }

        double crest = Crest();
        if (Air(last, crest) <= level)
        {
            return 0;
        }

        Excess excess = new(this, last, level);
        return horizon <= crest || excess.At(horizon) > 0 ? double.NaN : SignChange.Find(excess, crest, horizon);
    }

    /// <summary>The largest value from a time after the end of the last spray onwards.</summary>
    public double GreatestFrom(double wait) => Air(line.Knots.Length - 1, Math.Max(wait, Crest()));

    private static void Keep(double value, double time, ref double best, ref double at)
    {
        if (value > best)
        {
            best = value;
            at = time;
        }
    }

    private static double FirstNegative<T>(T function, double step)
        where T : struct, ITimeFunction
    {
        while (function.At(step) > 0)
        {
            step *= 2;
        }

        return step;
    }

    private double Air(int knot, double y)
    {
        int films = line.Rates.Length;
        double value = (air[knot] * Math.Exp(-(changes * y))) + (steady[knot] * y * PhiFunctions.Phi1(-(changes * y)));
        for (int g = 0; g < films; g++)
        {
            double part = decaying[(knot * films) + g];
            value += part == 0 ? 0 : part * AirKernel.Lag(changes, line.TimeConstants[g], y);
        }

        return value;
    }

    private double Integral(int knot, double y)
    {
        int films = line.Rates.Length;
        double value = (air[knot] * y * PhiFunctions.Phi1(-(changes * y))) + (steady[knot] * y * y * PhiFunctions.Phi2(-(changes * y)));
        for (int g = 0; g < films; g++)
        {
            double part = decaying[(knot * films) + g];
            value += part == 0 ? 0 : part * AirKernel.LagTime(changes, line.TimeConstants[g], y);
        }

        return value;
    }

    private double Release(int knot, double y)
    {
        int films = line.Rates.Length;
        double value = steady[knot];
        for (int g = 0; g < films; g++)
        {
            value += decaying[(knot * films) + g] * Math.Exp(-(line.Rates[g] * y));
        }

        return value;
    }

    // After the last spray the release only falls, so the value rises to one crest at most.
    private double Crest()
    {
        Slope slope = new(this, line.Knots.Length - 1);
        return slope.At(0) > 0 ? SignChange.Find(slope, 0, FirstNegative(slope, 60), SignChange.Maximum) : 0;
    }

    private double Window(int head, int tail, double window, double time)
    {
        double now = integral[head] + Integral(head, time - line.Knots[head]);
        double before = tail < 0 ? 0 : integral[tail] + Integral(tail, time - window - line.Knots[tail]);
        return now - before;
    }

    // The slope s obeys (s e^(λy))′ = e^(λy) E′, so between two zeros of the derivative of the release it changes sign once at most.
    private int SlopeCuts(int knot, double length)
    {
        int films = line.Rates.Length;
        int count = 0;
        for (int g = 0; g < films; g++)
        {
            double coefficient = -line.Rates[g] * decaying[(knot * films) + g];
            if (coefficient != 0)
            {
                line.Coefficients[count] = coefficient;
                line.Exponents[count++] = line.Rates[g];
            }
        }

        return ExponentialSum.Zeros(line.Coefficients, line.Exponents, count, length, line.Found);
    }

    // The same for the growth of a window, whose release is that of now less that of one window ago.
    private int GrowthCuts(int head, int tail, double window, double from, double length)
    {
        int films = line.Rates.Length;
        int count = 0;
        double constant = steady[head] - (tail < 0 ? 0 : steady[tail]);
        if (constant != 0)
        {
            line.Coefficients[count] = constant;
            line.Exponents[count++] = 0;
        }

        for (int g = 0; g < films; g++)
        {
            double coefficient = decaying[(head * films) + g] * Math.Exp(-(line.Rates[g] * (from - line.Knots[head])));
            if (tail >= 0)
            {
                coefficient -= decaying[(tail * films) + g] * Math.Exp(-(line.Rates[g] * (from - window - line.Knots[tail])));
            }

            if (coefficient != 0)
            {
                line.Coefficients[count] = coefficient;
                line.Exponents[count++] = line.Rates[g];
            }
        }

        return ExponentialSum.Zeros(line.Coefficients, line.Exponents, count, length, line.Found);
    }

    private readonly struct Slope(RoomHistory history, int knot) : ITimeFunction
    {
        public double At(double time) => history.Release(knot, time) - (history.changes * history.Air(knot, time));
    }

    private readonly struct Growth(RoomHistory history, int head, int tail, double window, double from) : ITimeFunction
    {
        public double At(double time)
        {
            double now = history.Air(head, from + time - history.line.Knots[head]);
            return tail < 0 ? now : now - history.Air(tail, from + time - window - history.line.Knots[tail]);
        }
    }

    private readonly struct Excess(RoomHistory history, int knot, double level) : ITimeFunction
    {
        public double At(double time) => history.Air(knot, time) - level;
    }
}
