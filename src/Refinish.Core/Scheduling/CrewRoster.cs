using System;
using System.Collections.Generic;

namespace Refinish.Scheduling;

/// <summary>
/// Who does what: steps by start, each by those who are free, first whoever is in its room already, then whoever is on site on that day,
/// then the
/// lowest number. Steps never take more than the crew at a time, so somebody is always free.
/// </summary>
internal static class CrewRoster
{
    public static ValueList<int>[] Of(SiteTimes times)
    {
        (SiteWork work, StepModel model) = (times.Work, times.Model);
        ValueList<int>[] people = new ValueList<int>[model.Count];
        int[] order = new int[model.Count];
        long[] keys = new long[model.Count];
        for (int i = 0; i < order.Length; i++)
        {
            (order[i], keys[i], people[i]) = (i, times.Starts[i], ValueList<int>.Empty);
        }

        // Equal starts stay in the order of the list.
        Array.Sort(order, (a, b) => keys[a] != keys[b] ? keys[a].CompareTo(keys[b]) : a.CompareTo(b));
        if (work.Crew == 1)
        {
            ValueList<int> one = new([0]);
            foreach (int i in order)
            {
                people[i] = model.Attended[i] ? one : people[i];
            }

            return people;
        }

        Person[] crew = new Person[work.Crew];
        foreach (int i in order)
        {
            if (model.Attended[i])
            {
                people[i] = Choose(crew, work.Steps[i], times.Starts[i], times.Ends[i], model.Openings);
            }
        }

        return people;
    }

    private static ValueList<int> Choose(Person[] crew, SiteStep step, long start, long end, Openings openings)
    {
        int day = openings.DayOf(start, step.Duration.Ticks);
        List<int> chosen = [];
        while (chosen.Count < step.People)
        {
            int best = -1;
            int rank = int.MaxValue;
            for (int person = 0; person < crew.Length; person++)
            {
                if (!chosen.Contains(person))
                {
                    bool here = crew[person].IsKnown && crew[person].Day == day;
                    int own = (crew[person].Until <= start ? 0 : 4)
                        + (here && step.Room is not null && crew[person].Room == step.Room ? 0 : here ? 1 : 2);
                    (best, rank) = own < rank ? (person, own) : (best, rank);
                }
            }

            chosen.Add(best);
        }

        chosen.Sort();
        foreach (int person in chosen)
        {
            crew[person] = new Person(true, step.Room, openings.DayOf(Math.Max(start, end - 1), 1), Math.Max(crew[person].Until, end));
        }

        return new ValueList<int>(chosen);
    }

    private readonly record struct Person(bool IsKnown, string? Room, int Day, long Until);
}
