using System;
using System.Collections.Generic;

namespace Refinish.Scheduling;

/// <summary>Sorts the pieces of all steps by day: of the crew, and of each person.</summary>
internal static class CrewDays
{
    public static ValueList<CrewVisit> Visits(ValueList<PlannedStep> steps)
    {
        List<Turn> turns = Turns(steps);
        List<CrewVisit> visits = [];
        for (int k = 0; k < turns.Count;)
        {
            DateTime date = turns[k].Date;
            List<CrewTurn> day = [];
            for (; k < turns.Count && turns[k].Date == date; k++)
            {
                day.Add(new CrewTurn(turns[k].Step, turns[k].Piece));
            }

            visits.Add(new CrewVisit(day));
        }

        return new ValueList<CrewVisit>(visits);
    }

    public static ValueList<PersonDay> Persons(ValueList<PlannedStep> steps)
    {
        List<Turn> turns = Turns(steps);
        List<PersonDay> days = [];
        for (int k = 0; k < turns.Count;)
        {
            DateTime date = turns[k].Date;
            SortedDictionary<int, List<CrewTurn>> own = [];
            for (; k < turns.Count && turns[k].Date == date; k++)
            {
                CrewTurn turn = new(turns[k].Step, turns[k].Piece);
                foreach (int person in turns[k].People)
                {
                    if (!own.TryGetValue(person, out List<CrewTurn>? list))
                    {
                        own.Add(person, list = []);
                    }

                    list.Add(turn);
                }
            }

            foreach (KeyValuePair<int, List<CrewTurn>> person in own)
            {
                days.Add(new PersonDay(person.Key, date, new ValueList<CrewTurn>(person.Value)));
            }
        }

        return new ValueList<PersonDay>(days);
    }

    // All pieces of attended steps, by start, then by end, then in the order of the list.
    private static List<Turn> Turns(ValueList<PlannedStep> steps)
    {
        List<Turn> turns = new(steps.Count);
        for (int i = 0; i < steps.Count; i++)
        {
            for (int k = 0; steps[i].Step.IsAttended && k < steps[i].Pieces.Count; k++)
            {
                turns.Add(new Turn(steps[i], steps[i].Pieces[k], turns.Count));
            }
        }

        turns.Sort();
        return turns;
    }

    private readonly struct Turn(PlannedStep planned, TimeInterval piece, int number) : IComparable<Turn>
    {
        public SiteStep Step => planned.Step;

        public IReadOnlyList<int> People => planned.People;

        public TimeInterval Piece => piece;

        public DateTime Date => piece.Start.Date;

        private int Number => number;

        public int CompareTo(Turn other)
        {
            int order = piece.Start.CompareTo(other.Piece.Start);
            order = order != 0 ? order : piece.End.CompareTo(other.Piece.End);
            return order != 0 ? order : number.CompareTo(other.Number);
        }
    }
}
