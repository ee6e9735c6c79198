using System;
using Refinish.Numerics;

namespace Refinish.Air;

/// <summary>
/// The intervals on which the room has one closed form, with their factors: between the moments at which a term begins or ends, and, when
/// a moving window is asked for, those moments one window later. Every sum of the terms is marched over the same grid.
/// </summary>
internal sealed class RoomGrid
{
    private readonly int[] firstEvent;
    private readonly int[] events;

    /// <summary>Makes the grid for the air changes λ (1/s); a window of 0 means the air itself and not its change over a window.</summary>
    public RoomGrid(RoomTimeline line, double changes, double window)
    {
        Line = line;
        Changes = changes;
        Window = window;
        int count = line.EventTimes.Length;
        int most = window > 0 ? 2 * count : count;
        double[] times = new double[most];
        firstEvent = new int[most + 1];
        events = new int[most];
        Leaves = new bool[most];

        // The events come twice in order, once as they are and once a window later: a merge.
        int head = 0;
        int tail = window > 0 ? 0 : count;
        int knots = 0;
        for (int e = 0; e < most; e++)
        {
            bool late = head == count || (tail < count && line.EventTimes[tail] + window < line.EventTimes[head]);
            double time = late ? line.EventTimes[tail] + window : line.EventTimes[head];
            events[e] = late ? line.Events[tail++] : line.Events[head++];
            Leaves[e] = late;
            if (knots == 0 || time > times[knots - 1])
            {
                times[knots] = time;
                firstEvent[knots++] = e;
            }
        }

        firstEvent[knots] = most;
        Count = knots;
        Times = times;
        int films = line.Rates.Length;
        Lengths = new double[knots];
        Decay = new double[knots];
        Filled = new double[knots];
        FilledTime = new double[knots];
        FilmDecay = new double[knots * films];
        FilmFilled = new double[knots * films];
        Lag = new double[knots * films];
        LagTime = new double[knots * films];
        for (int j = 0; j + 1 < knots; j++)
        {
            double length = times[j + 1] - times[j];
            Lengths[j] = length;
            Decay[j] = Math.Exp(-(changes * length));
            Filled[j] = length * PhiFunctions.Phi1(-(changes * length), Decay[j]);
            FilledTime[j] = length * length * PhiFunctions.Phi2(-(changes * length), Decay[j]);
            for (int g = 0; g < films; g++)
            {
                int at = (j * films) + g;
                double rate = line.Rates[g];
                FilmDecay[at] = Math.Exp(-(rate * length));
                FilmFilled[at] = length * PhiFunctions.Phi1(-(rate * length), FilmDecay[at]);
                Lag[at] = LagOf(changes, rate, length, Decay[j], FilmDecay[at]);
                LagTime[at] = changes <= rate ? (Filled[j] - Lag[at]) / rate : (FilmFilled[at] - Lag[at]) / changes;
            }
        }
    }

    public RoomTimeline Line { get; }

    public double Changes { get; }

    public double Window { get; }

    /// <summary>How many beginnings of intervals there are; the last interval has no end.</summary>
    public int Count { get; }

    /// <summary>The beginnings of the intervals.</summary>
    public double[] Times { get; }

    public double[] Lengths { get; }

    /// <summary>e^(−λΔ).</summary>
    public double[] Decay { get; }

    /// <summary>Δ φ₁(−λΔ): what a steady release of one leaves in the air.</summary>
    public double[] Filled { get; }

    /// <summary>Δ² φ₂(−λΔ), the integral of that.</summary>
    public double[] FilledTime { get; }

    /// <summary>Per film e^(−Δ/τ).</summary>
    public double[] FilmDecay { get; }

    public double[] FilmFilled { get; }

    public double[] Lag { get; }

    public double[] LagTime { get; }

    /// <summary>Per event, whether it is one that leaves the window.</summary>
    public bool[] Leaves { get; }

    public int FirstEvent(int knot) => firstEvent[knot];

    /// <summary>Which term an event is of: i when it begins, ~i when it ends.</summary>
    public int Event(int e) => events[e];

    /// <summary>(e^(−y/τ) − e^(−λy))/(λ − 1/τ) when both exponentials are at hand.</summary>
    public static double LagOf(double changes, double rate, double y, double decay, double filmDecay)
    {
        double apart = (changes - rate) * y;
        return Math.Abs(apart) > 0.05 ? (filmDecay - decay) / (changes - rate) : y * filmDecay * PhiFunctions.Phi1Near(-apart);
    }
}
