using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// What a schedule costs in hours of people, to choose between schedules that end alike with as many visits: each person's span on each
/// day, in whole blocks where these are paid, and an hour for the way of each person on each day.
/// </summary>
internal readonly struct PaidSpans
{
    // Stands for travel of a person, which costs less than a visit of the van and more than a few minutes of waiting (invented).
    private const long Way = TimeSpan.TicksPerHour;

    private readonly int days;
    private readonly int least;
    private readonly bool isCut;

    private PaidSpans(long ticks, int days, int least, bool isCut) => (Ticks, this.days, this.least, this.isCut) = (ticks, days, least, isCut);

    /// <summary>All spans with the ways to them.</summary>
    public long Ticks { get; }

    /// <summary>
    /// Whether people may come on fewer days or wait less, as far as a glance tells: somebody comes for company on more than one day, or
    /// work is cut by a night.
    /// </summary>
    public bool MayBeFewer(int visits) => isCut || days > visits + least - 1;

    public static PaidSpans Of(SiteTimes times)
    {
        (StepModel model, long[] starts, long[] ends) = (times.Model, times.Starts, times.Ends);
        ValueList<int>[] people = times.People;
        Dictionary<(int Person, int Day), (long From, long Until)> spans = [];
        (int least, bool isCut) = (1, false);
        for (int i = 0; i < model.Count; i++)
        {
            if (!model.Attended[i])
            {
                continue;
            }

            least = Math.Max(least, people[i].Count);
            if (model.Interruptible[i] && ends[i] - starts[i] != model.Duration[i])
            {
                int first = model.Openings.DayOf(starts[i], 1);
                foreach ((long from, long until) in model.Hours[i]!.Cut(starts[i], model.Duration[i], times.Days))
                {
                    int day = model.Openings.DayOf(from, until - from);
                    isCut |= day != first;
                    Add(spans, people[i], day, from, until);
                }
            }
            else
            {
                Add(spans, people[i], model.Openings.DayOf(starts[i], model.Duration[i]), starts[i], ends[i]);
            }
        }

        return new PaidSpans(spans.Values.Sum(span => Paid(times.Work, span.Until - span.From)), spans.Count, least, isCut);
    }

    /// <summary>All spans of a schedule with the ways to them.</summary>
    public static long Of(SiteSchedule schedule) =>
        schedule.PersonDays.Sum(day => Paid(schedule.Work, (day.Leaves - day.Arrives).Ticks));

    private static long Paid(SiteWork work, long span)
    {
        long block = Math.Max(1, work.PaidBlock.Ticks);
        return Way + ((span + block - 1) / block * block);
    }

    private static void Add(
        Dictionary<(int Person, int Day), (long From, long Until)> spans, ValueList<int> people, int day, long from, long until)
    {
        for (int p = 0; p < people.Count; p++)
        {
            spans[(people[p], day)] = spans.TryGetValue((people[p], day), out (long From, long Until) span)
                ? (Math.Min(span.From, from), Math.Max(span.Until, until))
                : (from, until);
        }
    }
}
