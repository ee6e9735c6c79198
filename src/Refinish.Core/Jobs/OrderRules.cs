using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Jobs;

/// <summary>Holds a changed list against the order of the trade, fixture by fixture.</summary>
internal static class OrderRules
{
    public static IEnumerable<PlanObjection> Broken(IReadOnlyList<Operation> operations, IReadOnlyList<Procedure> procedures)
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
        }
    }
}
