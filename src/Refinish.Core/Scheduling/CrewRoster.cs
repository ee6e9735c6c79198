using System;
using System.Collections.Generic;
using System.Linq;

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
        ValueList<int> nobody = ValueList<int>.Empty;
        if (work.Crew == 1)
        {
            ValueList<int> one = new([0]);
            return [.. model.Attended.Select(attended => attended ? one : nobody)];
        }

        ValueList<int>[] people = [.. Enumerable.Repeat(nobody, model.Count)];
        Person[] crew = new Person[work.Crew];
        foreach (int i in Enumerable.Range(0, model.Count).Where(i => model.Attended[i]).OrderBy(i => times.Starts[i]))
        {
            people[i] = Choose(crew, work.Steps[i], times.Starts[i], times.Ends[i], model.Openings);
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
            crew[person] = new Person(step.Room, openings.DayOf(Math.Max(start, end - 1), 1), Math.Max(crew[person].Until, end));
        }

        return new ValueList<int>(chosen);
    }

    private readonly struct Person(string? room, int day, long until)
    {
        public bool IsKnown { get; } = true;

        public string? Room { get; } = room;

        public int Day { get; } = day;

        public long Until { get; } = until;
    }
}
