using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Jobs;

/// <summary>Holds a changed list against the order of the trade, fixture by fixture.</summary>
internal static class OrderRules
{
    public static IEnumerable<PlanObjection> Broken(IReadOnlyList<Operation> operations, IReadOnlyList<CoatRun> runs, IReadOnlyList<Procedure> procedures)
    {
        // Each operation with those that stand after it and belong before it.
        List<(Operation Early, List<Operation> Late)> broken = [];
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
                    Note(broken, highest, operation);
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

        return broken.Select(Objection).Concat(bare);
    }

    private static void Note(List<(Operation Early, List<Operation> Late)> broken, Operation early, Operation late)
    {
        int at = broken.FindIndex(one => one.Early.Id == early.Id);
        if (at < 0)
        {
            broken.Add((early, [late]));
        }
        else if (!broken[at].Late.Exists(one => one.Id == late.Id))
        {
            broken[at].Late.Add(late);
        }
    }

    // Of one that jumped over several, the one is told, not each of the several.
    private static PlanObjection Objection((Operation Early, List<Operation> Late) one) => one.Late.Count == 1
        ? new PlanObjection(
            ObjectionKind.Order, one.Late[0].Id, one.Early.Id,
            Told(one.Late[0]) + " stands after " + Told(one.Early) + ", which comes later in the order of the trade. Its place: " + WorkOrder.Of(one.Late[0].Kind).Reason + ". Move one of them.")
        : new PlanObjection(
            ObjectionKind.Order, one.Early.Id, one.Late[0].Id,
            Told(one.Early) + " stands before " + string.Join(", ", one.Late.Select(Told)) + ", which come earlier in the order of the trade. Its place: "
                + WorkOrder.Of(one.Early.Kind).Reason + ". Move it behind them.");

    private static string Told(Operation operation) => "'" + operation.Name + "' (" + operation.Id + ")";
}
