using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Jobs;

/// <summary>Holds a changed list against the order of the trade, fixture by fixture.</summary>
internal static class OrderRules
{
    public static IEnumerable<PlanObjection> Broken(IReadOnlyList<Operation> operations, IReadOnlyList<CoatRun> runs, IReadOnlyList<Procedure> procedures)
    {
        // Each operation with one that stands after it and belongs before it.
        List<(Operation Early, Operation Late)> broken = [];
        List<PlanObjection> bare = [];
        foreach (Procedure procedure in procedures)
        {
            Operation? highest = null;
            foreach (Operation operation in operations)
            {
                if (WorkOrder.Rank(operation.Kind) is not int rank || !WorkChain.Touched(operation, procedures).Contains(procedure.Fixture.Id))
                {
                    continue;
                }

                if (highest is not null && rank < WorkOrder.Rank(highest.Kind))
                {
                    broken.Add((highest, operation));
                }
                else
                {
                    highest = operation;
                }
            }

            if (!runs.Any(run => operations.Any(operation => operation.Id == run.Id && operation.Fixtures.Contains(procedure.Fixture.Id))))
            {
                bare.Add(new PlanObjection(
                    ObjectionKind.Order, procedure.Fixture.Id, "no-coat",
                    "The changes of the list leave no coat on " + procedure.Fixture.Name + ". Keep one, or leave the fixture out of the job."));
            }
        }

        return broken.GroupBy(pair => pair.Early.Id, StringComparer.Ordinal)
            .Select(same => Objection(same.First().Early, [.. same.GroupBy(pair => pair.Late.Id).Select(one => one.First().Late)]))
            .Concat(bare);
    }

    // Of one that jumped over several, the one is told, not each of the several.
    private static PlanObjection Objection(Operation early, Operation[] late) => late.Length == 1
        ? new PlanObjection(
            ObjectionKind.Order, late[0].Id, early.Id,
            Told(late[0]) + " stands after " + Told(early) + ", which comes later in the order of the trade. Its place: "
                + WorkOrder.Of(late[0].Kind).Reason + ". Move one of them.")
        : new PlanObjection(
            ObjectionKind.Order, early.Id, late[0].Id,
            Told(early) + " stands before " + string.Join(", ", late.Select(Told))
                + ", which come earlier in the order of the trade. Its place: " + WorkOrder.Of(early.Kind).Reason
                + ". Move it behind them.");

    private static string Told(Operation operation) => "'" + operation.Name + "' (" + operation.Id + ")";
}
