using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Jobs;

/// <summary>Applies the changes of a caller to the list that the rules made.</summary>
internal sealed class OperationChanges(WorkBuilder builder)
{
    public List<PlanObjection> Objections { get; } = [];

    public void Apply(IReadOnlyList<OperationChange> changes)
    {
        foreach (OperationChange change in changes)
        {
            Apply(change);
        }
    }

    private void Apply(OperationChange change)
    {
        List<Operation> list = builder.Operations;
        int at = change.Id is string id ? list.FindIndex(operation => operation.Id == id) : -1;
        if (change.Id is not null && at < 0)
        {
            Missing(change.Id, change.Kind);
            return;
        }

        switch (change.Kind)
        {
            case OperationChangeKind.Strike:
                list.RemoveAll(operation => operation.Beside == change.Id);
                list.RemoveAll(operation => operation.Id == change.Id);
                builder.Runs.RemoveAll(run => run.Id == change.Id);
                break;
            case OperationChangeKind.Replace:
                list[at] = change.Operation! with { Id = change.Id!, Room = change.Operation!.Room ?? list[at].Room, Fixtures = change.Operation!.Fixtures.Count > 0 ? change.Operation!.Fixtures : list[at].Fixtures };
                builder.Runs.RemoveAll(run => run.Id == change.Id);
                break;
            case OperationChangeKind.Move:
                Operation moved = list[at];
                list.RemoveAt(at);
                if (!Insert(moved, change))
                {
                    list.Insert(at, moved);
                }

                break;
            default:
                if (list.Exists(operation => operation.Id == change.Operation!.Id))
                {
                    Objections.Add(new PlanObjection(ObjectionKind.Order, change.Operation!.Id, "twice", "The operation '" + change.Operation!.Id + "' is added, and one of that identifier is in the list."));
                }
                else if (Insert(change.Operation!, change))
                {
                    builder.Waits.AddRange(change.Lags);
                    foreach (string other in change.Lags.SelectMany(lag => new[] { lag.Before, lag.After }).Where(other => !list.Exists(operation => operation.Id == other)))
                    {
                        Missing(other, change.Kind);
                    }
                }

                break;
        }
    }

    private bool Insert(Operation operation, OperationChange change)
    {
        int after = change.After is string anchor ? builder.Operations.FindIndex(one => one.Id == anchor) : -1;
        if (change.After is not null && after < 0)
        {
            Missing(change.After, change.Kind);
            return false;
        }

        while (after + 1 < builder.Operations.Count && builder.Operations[after + 1].Beside == change.After && change.After is not null)
        {
            after++;
        }

        builder.Operations.Insert(after + 1, operation);
        return true;
    }

    private void Missing(string id, OperationChangeKind kind) => Objections.Add(new PlanObjection(
        ObjectionKind.Order, id, kind.ToString("G"),
        "A change of the list names the operation '" + id + "', which is not there. The identifiers of the plan's operations are " + string.Join(", ", builder.Operations.Take(5).Select(operation => operation.Id)) + " and so on."));
}
