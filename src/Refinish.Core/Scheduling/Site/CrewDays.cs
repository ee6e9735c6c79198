using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>Sorts the pieces of all steps by day: of the crew, and of each person.</summary>
internal static class CrewDays
{
    public static ValueList<CrewVisit> Visits(ValueList<PlannedStep> steps) => new(Turns(steps)
        .GroupBy(one => one.Turn.Piece.Start.Date, one => one.Turn)
        .Select(day => new CrewVisit(day)));

    public static ValueList<PersonDay> Persons(ValueList<PlannedStep> steps) => new(Turns(steps)
        .GroupBy(one => one.Turn.Piece.Start.Date)
        .SelectMany(day => day
            .SelectMany(one => one.People.Select(person => (Person: person, one.Turn)))
            .GroupBy(one => one.Person, one => one.Turn)
            .OrderBy(person => person.Key)
            .Select(person => new PersonDay(person.Key, day.Key, new ValueList<CrewTurn>(person)))));

    // All pieces of attended steps, by start, then by end, then in the order of the list.
    private static IEnumerable<(CrewTurn Turn, IReadOnlyList<int> People)> Turns(ValueList<PlannedStep> steps) => steps
        .Where(step => step.Step.IsAttended)
        .SelectMany(step => step.Pieces.Select(piece => (Turn: new CrewTurn(step.Step, piece), step.People)))
        .OrderBy(one => one.Turn.Piece.Start)
        .ThenBy(one => one.Turn.Piece.End);
}
