using System;
using Refinish.Numerics;

namespace Refinish.Air;

/// <summary>
/// One weighted sum of all terms in the well-mixed room, marched over a grid: a substance's concentration, a fraction of a flammable
/// limit or an exposure index, depending on the weights. On a grid with a window it is the sum now less the sum one window ago, and its
/// integral is that over the window.
/// </summary>
internal sealed class RoomPath
{
    private readonly RoomGrid grid;
    private readonly int films;

    // At each beginning of an interval: in the air, its integral, steady part of the release, and per film rate its decaying part.
    private readonly double[] air;
    private readonly double[] integral;
    private readonly double[] steady;
    private readonly double[] decaying;

    public RoomPath(RoomGrid grid, double[] weights)
    {
        this.grid = grid;
        RoomTimeline line = grid.Line;
        films = line.Rates.Length;
        int count = grid.Count;
        air = new double[count];
        integral = new double[count];
        steady = new double[count];
        decaying = new double[count * films];
        double[] film = new double[films];
        double[] inflow = new double[films];
        double release = 0;
        int sprays = 0;
        for (int j = 0; j < count; j++)
        {
            for (int e = grid.FirstEvent(j); e < grid.FirstEvent(j + 1); e++)
            {
                int code = grid.Event(e);
                int term = code < 0 ? ~code : code;
                double rate = weights[term] / line.Spray(term);
                bool adds = code >= 0 != grid.Leaves[e];
                sprays += code < 0 ? -1 : 1;
                release += adds ? rate : -rate;
                inflow[line.Film(term)] += (adds ? rate : -rate) * (1 - line.Flash(term));
            }

            if (sprays == 0)
            {
                // Nothing is left of what the additions rounded away.
                release = 0;
                Array.Clear(inflow, 0, films);
            }

            // What leaves a film is k m; while sprayed into, it tends to the inflow.
            steady[j] = release;
            bool more = j + 1 < count;
            double inAir = more ? (air[j] * grid.Decay[j]) + (release * grid.Filled[j]) : 0;
            double overTime = more ? integral[j] + (air[j] * grid.Filled[j]) + (release * grid.FilledTime[j]) : 0;
            for (int g = 0; g < films; g++)
            {
                int at = (j * films) + g;
                double part = (line.Rates[g] * film[g]) - inflow[g];
                decaying[at] = part;
                film[g] = (film[g] * grid.FilmDecay[at]) + (inflow[g] * grid.FilmFilled[at]);
                inAir += part * grid.Lag[at];
                overTime += part * grid.LagTime[at];
            }

            if (more)
            {
                air[j + 1] = inAir;
                integral[j + 1] = overTime;
            }
        }
    }

    public RoomGrid Grid => grid;

    public int Films => films;

    public int Last => grid.Count - 1;

    public double AirAt(int knot) => air[knot];

    public double IntegralAt(int knot) => integral[knot];

    public double Steady(int knot) => steady[knot];

    public double Decaying(int knot, int film) => decaying[(knot * films) + film];

    /// <summary>
    /// What the value never passes in an interval: with the greatest release that its parts allow, it moves from its beginning to one side.
    /// </summary>
    public double AirBound(int knot) =>
        Math.Max(air[knot], (air[knot] * grid.Decay[knot]) + (ReleaseBound(knot, true) * grid.Filled[knot]));

    /// <summary>
    /// What the integral never passes inside an interval, reckoned forwards from its beginning and backwards from its end; negative
    /// infinity when it only rises or only falls, so that nothing inside is above both ends.
    /// </summary>
    public double IntegralBound(int knot)
    {
        double start = air[knot];
        double most = ReleaseBound(knot, true);
        double least = Math.Min(start, (start * grid.Decay[knot]) + (ReleaseBound(knot, false) * grid.Filled[knot]));
        if (least >= 0 || AirBound(knot) <= 0)
        {
            return double.NegativeInfinity;
        }

        double forwards = integral[knot] + (Math.Max(start, 0) * grid.Filled[knot]) + (Math.Max(most, 0) * grid.FilledTime[knot]);
        return Math.Min(forwards, integral[knot + 1] - (least * grid.Lengths[knot]));
    }

    /// <summary>The value at a time y after the beginning of an interval.</summary>
    public double Air(int knot, double y)
    {
        double changes = grid.Changes;
        double decay = Math.Exp(-(changes * y));
        double value = (air[knot] * decay) + (steady[knot] == 0 ? 0 : steady[knot] * y * PhiFunctions.Phi1(-(changes * y), decay));
        for (int g = 0; g < films; g++)
        {
            double part = decaying[(knot * films) + g];
            if (part != 0)
            {
                double rate = grid.Line.Rates[g];
                value += part * RoomGrid.LagOf(changes, rate, y, decay, Math.Exp(-(rate * y)));
            }
        }

        return value;
    }

    /// <summary>Its integral up to there.</summary>
    public double Integral(int knot, double y)
    {
        double changes = grid.Changes;
        double decay = Math.Exp(-(changes * y));
        double filled = y * PhiFunctions.Phi1(-(changes * y), decay);
        double value = integral[knot] + (air[knot] * filled) + (steady[knot] * y * y * PhiFunctions.Phi2(-(changes * y), decay));
        for (int g = 0; g < films; g++)
        {
            double part = decaying[(knot * films) + g];
            if (part != 0)
            {
                double rate = grid.Line.Rates[g];
                double filmDecay = Math.Exp(-(rate * y));
                double lag = RoomGrid.LagOf(changes, rate, y, decay, filmDecay);
                value += part * (changes <= rate ? (filled - lag) / rate : ((y * PhiFunctions.Phi1(-(rate * y), filmDecay)) - lag) / changes);
            }
        }

        return value;
    }

    /// <summary>What is released at that time.</summary>
    public double Release(int knot, double y)
    {
        double value = steady[knot];
        for (int g = 0; g < films; g++)
        {
            double part = decaying[(knot * films) + g];
            value += part == 0 ? 0 : part * Math.Exp(-(grid.Line.Rates[g] * y));
        }

        return value;
    }

    /// <summary>How fast the release changes.</summary>
    public double ReleaseSlope(int knot, double y)
    {
        double value = 0;
        for (int g = 0; g < films; g++)
        {
            double part = decaying[(knot * films) + g];
            double rate = grid.Line.Rates[g];
            value -= part == 0 ? 0 : rate * part * Math.Exp(-(rate * y));
        }

        return value;
    }

    /// <summary>How fast the value changes.</summary>
    public double Slope(int knot, double y) => Release(knot, y) - (grid.Changes * Air(knot, y));

    private double ReleaseBound(int knot, bool greatest)
    {
        double value = steady[knot];
        for (int g = 0; g < films; g++)
        {
            double part = decaying[(knot * films) + g];
            value += part > 0 == greatest ? part : part * grid.FilmDecay[(knot * films) + g];
        }

        return value;
    }

    public double ReleaseAtStart(int knot)
    {
        double value = steady[knot];
        for (int g = 0; g < films; g++)
        {
            value += decaying[(knot * films) + g];
        }

        return value;
    }

    public double ReleaseAtEnd(int knot)
    {
        double value = steady[knot];
        for (int g = 0; g < films; g++)
        {
            value += decaying[(knot * films) + g] * grid.FilmDecay[(knot * films) + g];
        }

        return value;
    }
}
