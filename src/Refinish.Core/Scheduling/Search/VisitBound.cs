using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// A number of days below which no schedule can stay. Two bounds: the work packed into the longest days, and the longest chain of lags
/// walked as if
/// every day were the longest, beginning a new day only when the next step no longer fits into the one before.
/// </summary>
internal static class VisitBound
{
    /// <summary>The least number of days of work within some days.</summary>
    public static int Of(StepModel model, List<WorkDay> days) => Math.Max(ByLoad(model, days), ByChain(model, days));

    /// <summary>Working time that the whole crew needs at least.</summary>
    public static long Needed(StepModel model)
    {
        long sum = Enumerable.Range(0, model.Count).Sum(i => model.Duration[i] * model.Means[0].Need[i]);
        return (sum + model.Means[0].Capacity - 1) / model.Means[0].Capacity;
    }

    private static int ByLoad(StepModel model, List<WorkDay> days)
    {
        long[] work = [.. days.Select(day => day.Work).OrderBy(time => time)];
        long left = Needed(model);
        int number = Array.IndexOf(model.Attended, true) >= 0 ? 1 : 0;
        for (int k = work.Length - 1; k >= 0 && left > work[k]; k--)
        {
            left -= work[k];
            number++;
        }

        return number;
    }

    // The place of a step is its day among the visits and its time since that day opened. By a lag the next step's place can only grow
    // with the place
    // before it, so the places of the longest chain are a bound for every schedule.
    private static int ByChain(StepModel model, List<WorkDay> days)
    {
        (long span, long work) = (0, 0);
        foreach (WorkDay day in days)
        {
            (span, work) = (Math.Max(span, day.Close - day.Open), Math.Max(work, day.Work));
        }

        if (work == 0)
        {
            return 0;
        }

        Place[] starts = new Place[model.Count];
        int most = 0;
        for (int i = 0; i < model.Count; i++)
        {
            // A wait may lie before the first visit.
            starts[i] = new Place(model.Attended[i] ? 1 : 0, 0);
            most = model.Attended[i] ? 1 : most;
        }

        bool moved = true;
        for (int round = 0; moved && round <= model.Count; round++)
        {
            moved = false;
            for (int at = 0; at < model.Edges.Length; at++)
            {
                ref readonly StepEdge edge = ref model.Edges[at];
                Place end = End(model, edge.From, starts[edge.From], span, work);
                long time = end.Time + edge.Minimum;
                bool fits = !model.Attended[edge.To]
                    || (end.Day > 0 && time
                    + (model.Interruptible[edge.To] ? Math.Min(1, model.Duration[edge.To]) : model.Duration[edge.To]) <= span);
                Place place = fits ? new Place(end.Day, time) : new Place(end.Day + 1, 0);
                if (place.IsAfter(starts[edge.To]))
                {
                    starts[edge.To] = place;
                    moved = true;
                }
            }
        }

        for (int i = 0; i < model.Count; i++)
        {
            most = model.Attended[i] ? Math.Max(most, End(model, i, starts[i], span, work).Day) : most;
        }

        return most;
    }

    private static Place End(StepModel model, int i, Place start, long span, long work)
    {
        long rest = model.Duration[i] - (span - start.Time);
        if (!model.Interruptible[i] || rest <= 0)
        {
            return new Place(start.Day, start.Time + model.Duration[i]);
        }

        long more = (rest + work - 1) / work;
        return new Place(start.Day + (int)more, rest - ((more - 1) * work));
    }

    private readonly record struct Place(int Day, long Time)
    {
        public bool IsAfter(Place other) => Day > other.Day || (Day == other.Day && Time > other.Time);
    }
}
