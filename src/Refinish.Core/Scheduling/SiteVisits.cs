using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;

namespace Refinish.Scheduling;

/// <summary>
/// Fewest visits for a given end: sets of days are tried from the least number that could hold the work, each by a search in a calendar without
/// the other days. The first set that works has as few days as can be.
/// </summary>
internal sealed class SiteVisits(SiteWork work, StepModel model, Openings openings, SearchEffort effort, CancellationToken cancellation)
{
    // Invented limits: beyond them the visits of the earliest schedule stand, with the bound from the amount of work.
    private const int MostDays = 16;
    private const int MostSets = 2000;

    /// <summary>Starts of the schedule with the fewest visits that was found.</summary>
    public long[] Starts { get; private set; } = [];

    /// <summary>The calendar of that schedule: without the days on which the crew does not come.</summary>
    public Openings Openings { get; private set; } = openings;

    /// <summary>No schedule that ends as early has fewer visits.</summary>
    public int Bound { get; private set; }

    public int Nodes { get; private set; }

    public void Improve(long[] starts, long[] ends)
    {
        Starts = starts;
        int visits = Count(starts, ends);
        long end = ends.Max();
        (DateTime Day, long Work)[] days = [.. Openings.Days(work.Start.UtcTicks, end)];
        Bound = Math.Min(visits, LeastDays(days));
        if (visits == Bound || days.Length > MostDays || work.Steps.Count > effort.StepsForProof)
        {
            return;
        }

        bool proved = true;
        int tried = 0;
        for (int number = Bound; number < visits; number++)
        {
            foreach (DateTime[] set in Sets(days, number, Needed()))
            {
                if (++tried > MostSets)
                {
                    return;
                }

                HashSet<DateTime> allowed = [.. set];
                Openings fewer = new(work.Calendar, work.Start, allowed.Contains, (int)((end - work.Start.UtcTicks) / TimeSpan.TicksPerDay) + 2);
                SiteSearch search = new(model, fewer, work.Start.UtcTicks, null, cancellation);
                search.Run(end, effort.NodesPerGroup, first: true);
                Nodes += search.Nodes;
                if (search.Best is not null)
                {
                    Starts = search.Best;
                    Openings = fewer;
                    Bound = proved ? number : Bound;
                    return;
                }

                proved &= search.IsComplete;
            }

            Bound = proved ? number + 1 : Bound;
        }
    }

    private long Needed()
    {
        long sum = 0;
        for (int i = 0; i < model.Count; i++)
        {
            sum += model.Attended[i] ? model.Duration[i] * work.Steps[i].People : 0;
        }

        return (sum + work.Crew - 1) / work.Crew;
    }

    private int LeastDays((DateTime Day, long Work)[] days)
    {
        long left = Needed();
        int number = model.Attended.Any(attended => attended) ? 1 : 0;
        foreach ((_, long hours) in days.OrderByDescending(day => day.Work))
        {
            left -= hours;
            if (left <= 0)
            {
                return number;
            }

            number++;
        }

        return number;
    }

    private int Count(long[] starts, long[] ends)
    {
        HashSet<DateTime> days = [];
        for (int i = 0; i < model.Count; i++)
        {
            if (!model.Attended[i])
            {
                continue;
            }

            if (model.Interruptible[i])
            {
                foreach ((long from, _) in Openings.Cut(starts[i], model.Duration[i]))
                {
                    days.Add(work.Calendar.At(from).Date);
                }
            }
            else
            {
                days.Add(work.Calendar.At(starts[i]).Date);
            }
        }

        return days.Count;
    }

    // All sets of so many days, earlier days first, that have enough hours.
    private static IEnumerable<DateTime[]> Sets((DateTime Day, long Work)[] days, int number, long needed)
    {
        int[] chosen = [.. Enumerable.Range(0, number)];
        while (number <= days.Length)
        {
            if (chosen.Sum(i => days[i].Work) >= needed)
            {
                yield return [.. chosen.Select(i => days[i].Day)];
            }

            int at = number - 1;
            while (at >= 0 && chosen[at] == days.Length - number + at)
            {
                at--;
            }

            if (at < 0)
            {
                yield break;
            }

            chosen[at]++;
            for (int next = at + 1; next < number; next++)
            {
                chosen[next] = chosen[next - 1] + 1;
            }
        }
    }
}
