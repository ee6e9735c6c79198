using System;
using System.Collections.Generic;
using Refinish.Numerics;

namespace Refinish.Air;

/// <summary>
/// The maxima of a zone's value a₁ f₁ + a₂ f₂, where f₁ and f₂ are the same sum of terms in one-box rooms with air changes μ₁ and μ₂.
/// The derivative s obeys (D + μ₁)(D + μ₂) s = (a₁ + a₂) R′ + (a₁μ₂ + a₂μ₁) R with R the derivative of the release, a sum of
/// exponentials whose zeros are all known. Between two of them (D + μ₂) s changes sign once at most, and between two of those zeros s
/// does: every maximum is found, none sampled.
/// </summary>
internal sealed class ZoneHistory
{
    private readonly RoomPath fast;
    private readonly RoomPath slow;
    private readonly ZoneAnswer answer;
    private readonly bool windowed;

    public ZoneHistory(RoomPath fast, RoomPath slow, ZoneAnswer answer)
    {
        this.fast = fast;
        this.slow = slow;
        this.answer = answer;
        windowed = fast.Grid.Window > 0;
    }

    /// <summary>The largest value in finite time and when; the caller adds what is only approached.</summary>
    public double Largest(out double at)
    {
        RoomGrid grid = fast.Grid;
        double best = 0;
        at = grid.Times[0];
        List<double> level = [];
        List<double> next = [];
        for (int j = 0; j < grid.Count; j++)
        {
            double length = j < fast.Last ? grid.Lengths[j] : Settled();
            Cuts(j, length, level);
            Refine(new Second(this, j), length, level, next);
            Refine(new First(this, j), length, next, level);
            foreach (double y in level)
            {
                RoomHistory.Keep(Value(j, y), grid.Times[j] + y, ref best, ref at);
            }

            RoomHistory.Keep(Value(j, length), grid.Times[j] + length, ref best, ref at);
        }

        return best;
    }

    // The zeros of a function that changes sign once at most between the cuts, and the cuts, in rising order.
    private static void Refine<T>(T function, double length, List<double> cuts, List<double> zeros)
        where T : struct, IFunction
    {
        zeros.Clear();
        double lower = 0;
        double low = function.At(0);
        for (int c = 0; c <= cuts.Count; c++)
        {
            double upper = c == cuts.Count ? length : cuts[c];
            double high = function.At(upper);
            if (upper > lower && ((low > 0 && high < 0) || (low < 0 && high > 0)))
            {
                zeros.Add(Roots.Enclose(function, lower, upper, Roots.OfMaximum).Upper);
            }

            // A cut stays one: where the fast rate is far above the others a sign there can drown in rounding, and one cut more does no
            // harm.
            if (c < cuts.Count)
            {
                zeros.Add(upper);
            }

            lower = upper;
            low = high;
        }
    }

    // Forty time constants after the last event all that still moves is below 1e-17 of what it was.
    private double Settled()
    {
        RoomGrid grid = slow.Grid;
        double slowest = grid.Line.TimeConstants[0];
        return 40 * (slowest + (1 / fast.Grid.Changes) + (grid.Changes > 0 ? 1 / grid.Changes : 0)) + grid.Window;
    }

    private void Cuts(int knot, double length, List<double> cuts)
    {
        cuts.Clear();
        double[] coefficients = new double[fast.Films + 1];
        double[] exponents = new double[fast.Films + 1];
        double[] found = new double[fast.Films + 1];
        int terms = 0;
        if (windowed && fast.Steady(knot) != 0)
        {
            coefficients[terms++] = answer.Mixed * fast.Steady(knot);
        }

        for (int g = 0; g < fast.Films; g++)
        {
            double rate = fast.Grid.Line.Rates[g];
            double part = fast.Decaying(knot, g) * (windowed ? 1 : -rate) * (answer.Mixed - (answer.Sum * rate));
            if (part != 0)
            {
                coefficients[terms] = part;
                exponents[terms++] = rate;
            }
        }

        int count = ExponentialSum.Zeros(coefficients, exponents, terms, length, found);
        for (int i = 0; i < count; i++)
        {
            cuts.Add(found[i]);
        }

        // Where the fast rate has died away: a cut between its own short play and all the rest.
        double settled = 40 / fast.Grid.Changes;
        if (settled < length)
        {
            cuts.Add(settled);
            cuts.Sort();
        }
    }

    private double Value(int knot, double y) => windowed
        ? (answer.Fast * fast.Integral(knot, y)) + (answer.Slow * slow.Integral(knot, y))
        : (answer.Fast * fast.Air(knot, y)) + (answer.Slow * slow.Air(knot, y));

    // How fast the value changes: the slope of the air, or, over a window, the air now less that one window ago.
    private readonly struct First(ZoneHistory history, int knot) : IFunction
    {
        public double At(double time) => history.windowed
            ? (history.answer.Fast * history.fast.Air(knot, time)) + (history.answer.Slow * history.slow.Air(knot, time))
            : (history.answer.Fast * history.fast.Slope(knot, time)) + (history.answer.Slow * history.slow.Slope(knot, time));
    }

    // (D + μ₂) of that: (a₁ + a₂) R − a₁ (μ₁ − μ₂) s₁.
    private readonly struct Second(ZoneHistory history, int knot) : IFunction
    {
        public double At(double time)
        {
            double gap = history.answer.Fast * (history.fast.Grid.Changes - history.slow.Grid.Changes);
            return history.windowed
                ? (history.answer.Sum * history.fast.Release(knot, time)) - (gap * history.fast.Air(knot, time))
                : (history.answer.Sum * history.fast.ReleaseSlope(knot, time)) - (gap * history.fast.Slope(knot, time));
        }
    }
}
