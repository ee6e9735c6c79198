using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Jobs;

/// <summary>Holds a changed list against the order of the trade, fixture by fixture.</summary>
internal static class OrderRules
{
    public static IEnumerable<PlanObjection> Broken(IReadOnlyList<Operation> operations, IReadOnlyList<CoatRun> runs, IReadOnlyList<Procedure> procedures)
    {
        HashSet<string> told = new(StringComparer.Ordinal);
        foreach (Procedure procedure in procedures)
        {
            Operation? highest = null;
            foreach (Operation operation in operations)
            {
                if (WorkOrder.Rank(operation.Kind) is not int rank || !WorkChain.Touched(operation, procedures).Contains(procedure.Fixture.Id))
                {
                    continue;
                }

                if (highest is not null && rank < WorkOrder.Rank(highest.Kind) && told.Add(operation.Id + "|" + highest.Id))
                {
                    yield return new PlanObjection(
                        ObjectionKind.Order, operation.Id, highest.Id,
                        "'" + operation.Name + "' (" + operation.Id + ") stands after '" + highest.Name + "' (" + highest.Id + "), which comes later in the order of the trade. Move one of them.");
                }

                if (highest is null || rank >= WorkOrder.Rank(highest.Kind))
                {
                    highest = operation;
                }
            }

            if (!runs.Any(run => operations.Any(operation => operation.Id == run.Id && operation.Fixtures.Contains(procedure.Fixture.Id))))
            {
                yield return new PlanObjection(ObjectionKind.Order, procedure.Fixture.Id, "no-coat", "The changes of the list leave no coat on " + procedure.Fixture.Name + ". Keep one, or leave the fixture out of the job.");
            }
        }
    }
}
