using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// A work that is another one with steps and lags added, so that what was proved of the smaller one holds for the larger one.
/// </summary>
internal static class AddedWork
{
    /// <summary>Whether every schedule of the larger work holds all rules of the smaller one, as far as a glance tells.</summary>
    public static bool IsAddedTo(SiteWork smaller, SiteWork larger)
    {
        if (smaller.Start != larger.Start || !smaller.Calendar.Equals(larger.Calendar) || smaller.Crew != larger.Crew
            || smaller.Prefers != larger.Prefers || smaller.VisitSlack != larger.VisitSlack || !smaller.Tools.Equals(larger.Tools))
        {
            return false;
        }

        Dictionary<string, SiteStep> steps = larger.Steps.ToDictionary(step => step.Id, StringComparer.Ordinal);
        ILookup<(string, string), StepLag> lags = larger.Lags.ToLookup(lag => (lag.Before, lag.After));
        return smaller.Steps.All(step => steps.TryGetValue(step.Id, out SiteStep? same) && IsAtLeast(step, same))
            && smaller.Lags.All(lag => lags[(lag.Before, lag.After)].Any(other => IsAtLeast(lag, other)) || IsPath(lag, larger.Lags, lags));
    }

    /// <summary>
    /// The places of the steps of the larger work in the order of the earlier schedule; what was added comes right after what it waits for.
    /// </summary>
    public static int[] Order(SiteSchedule earlier, SiteWork larger)
    {
        Dictionary<string, int> index = new(StringComparer.Ordinal);
        for (int i = 0; i < larger.Steps.Count; i++)
        {
            index.Add(larger.Steps[i].Id, i);
        }

        // Steps that start together keep the order of the list.
        (long Start, int Added)[] keys = new (long, int)[index.Count];
        bool[] isKnown = new bool[index.Count];
        foreach (PlannedStep step in earlier.Steps)
        {
            int at = index[step.Step.Id];
            (keys[at], isKnown[at]) = ((step.Start.UtcTicks, 0), true);
        }

        for (int i = 0; i < keys.Length; i++)
        {
            (long Start, int Added) key = (larger.Start.UtcTicks, 0);
            for (int k = 0; k < larger.Lags.Count && !isKnown[i]; k++)
            {
                int before = larger.Lags[k].After == larger.Steps[i].Id ? index[larger.Lags[k].Before] : -1;
                key = before >= 0 && isKnown[before] && keys[before].CompareTo(key) >= 0 ? (keys[before].Start, 1) : key;
            }

            keys[i] = isKnown[i] ? keys[i] : key;
        }

        int[] order = new int[keys.Length];
        for (int i = 0; i < order.Length; i++)
        {
            order[i] = i;
        }

        Array.Sort(order, (a, b) => keys[a].CompareTo(keys[b]) is int by && by != 0 ? by : a.CompareTo(b));
        return order;
    }

    /// <summary>The days of the visits of a schedule; all days when one is too far ahead to be told apart.</summary>
    public static DaySet DaysOf(SiteSchedule earlier, Openings openings)
    {
        ulong days = 0;
        foreach (PlannedStep step in earlier.Steps)
        {
            foreach (TimeInterval piece in step.Step.IsAttended ? step.Pieces : [])
            {
                int day = openings.DayOf(piece.Start.UtcTicks, (piece.End - piece.Start).Ticks);
                if (day >= DaySet.Most)
                {
                    return DaySet.All;
                }

                days |= 1UL << day;
            }
        }

        return DaySet.Of(days);
    }

    /// <summary>Working time of all people.</summary>
    public static long Ticks(SiteWork work) => work.Steps.Sum(step => step.Duration.Ticks * step.People);

    private static bool IsAtLeast(SiteStep step, SiteStep other) =>
        other.Duration == step.Duration && other.Room == step.Room && other.People == step.People
        && other.IsInterruptible == step.IsInterruptible && other.Sprays == step.Sprays && other.Clearing >= step.Clearing
            && other.RaisesDust == step.RaisesDust
        && other.DustFree >= step.DustFree && other.Tools.Equals(step.Tools) && other.Unavailable.Equals(step.Unavailable);

    private static bool IsAtLeast(StepLag lag, StepLag other) =>
        Equals(lag.Clock, other.Clock) && other.Minimum >= lag.Minimum && (lag.Maximum is null || other.Maximum <= lag.Maximum);

    // What only follows may follow by way of what was added.
    private static bool IsPath(StepLag lag, IReadOnlyList<StepLag> all, ILookup<(string, string), StepLag> lags) =>
        lag.Minimum <= TimeSpan.Zero && lag.Maximum is null
            && all.Any(first => first.Before == lag.Before && lags.Contains((first.After, lag.After)));
}
