using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>Sorts the pieces of all steps by day: of the crew, and of each person.</summary>
internal static class CrewDays
{
    public static ValueList<CrewVisit> Visits(IReadOnlyList<PlannedStep> steps) => new(Turns(steps)
        .GroupBy(turn => turn.Turn.Piece.Start.Date)
        .Select(day => new CrewVisit(day.Select(turn => turn.Turn))));

    public static ValueList<PersonDay> Persons(IReadOnlyList<PlannedStep> steps) => new(Turns(steps)
        .GroupBy(turn => turn.Turn.Piece.Start.Date)
        .SelectMany(day => day
            .SelectMany(turn => turn.People.Select(person => (Person: person, turn.Turn)))
            .GroupBy(own => own.Person, own => own.Turn)
            .OrderBy(own => own.Key)
            .Select(own => new PersonDay(own.Key, day.Key, new ValueList<CrewTurn>(own)))));

    // All pieces of attended steps, by start, then by end, then in the order of the list.
    private static IEnumerable<(CrewTurn Turn, IReadOnlyList<int> People)> Turns(IReadOnlyList<PlannedStep> steps) => steps
        .Where(step => step.Step.IsAttended)
        .SelectMany(step => step.Pieces.Select(piece => (Turn: new CrewTurn(step.Step, piece), step.People)))
        .OrderBy(turn => turn.Turn.Piece.Start)
        .ThenBy(turn => turn.Turn.Piece.End);
}
