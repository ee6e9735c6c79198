using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Jobs;

/// <summary>Applies the changes of a caller to the list that the rules made.</summary>
internal sealed class OperationChanges(WorkBuilder builder)
{
    public List<PlanObjection> Objections { get; } = [];

    /// <summary>What was taken out of the list.</summary>
    public List<Operation> Struck { get; } = [];

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

        if (change.Operation is Operation given && Misfit(given, change) is PlanObjection misfit)
        {
            Objections.Add(misfit);
            return;
        }

        if (change.Kind is OperationChangeKind.Strike or OperationChangeKind.Replace && builder.Runs.Exists(run => run.Id == change.Id))
        {
            Objections.Add(new PlanObjection(
                ObjectionKind.Order, change.Id!, "coat",
                "The coat '" + change.Id + "' is " + (change.Kind == OperationChangeKind.Strike ? "struck" : "replaced")
                    + " by a change of the list, so that its film, its material and its air are not in the plan. Change the coating system of the fixture instead; times and labour of a coat come from the shop's standards and gun."));
        }

        switch (change.Kind)
        {
            case OperationChangeKind.Strike:
                Struck.Add(list[at]);
                list.RemoveAll(operation => operation.Beside == change.Id);
                list.RemoveAll(operation => operation.Id == change.Id);
                builder.Runs.RemoveAll(run => run.Id == change.Id);
                break;
            case OperationChangeKind.Replace:
                list[at] = WithHours(change.Operation! with
                {
                    Id = change.Id!,
                    Room = change.Operation!.Room ?? list[at].Room,
                    Fixtures = change.Operation!.Fixtures.Count > 0 ? change.Operation!.Fixtures : list[at].Fixtures,
                });
                builder.Runs.RemoveAll(run => run.Id == change.Id);
                break;
            case OperationChangeKind.Move:
                if (change.After == change.Id)
                {
                    Objections.Add(new PlanObjection(
                        ObjectionKind.Order, change.Id!, "itself", "The operation '" + change.Id + "' is to be moved behind itself. Name the operation that it is to follow."));
                    break;
                }

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
                else if (Insert(WithHours(change.Operation!), change))
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

    // An operation whose room, fixtures or neighbour are not there would be scheduled and priced as if it belonged to nothing.
    private PlanObjection? Misfit(Operation operation, OperationChange change)
    {
        IEnumerable<string> rooms = builder.Work.Premises.Rooms.Select(one => one.Id);
        IEnumerable<string> planned = builder.Work.Procedures.Select(procedure => procedure.Fixture.Id);
        return operation.Room is string room && !rooms.Contains(room)
            ? Unfit("room", "Room of the operation '" + operation.Id + "' is '" + room
                + "', which the premises do not have. Its rooms are " + string.Join(", ", rooms) + ".")
            : operation.Fixtures.FirstOrDefault(fixture => !planned.Contains(fixture)) is string strange
            ? Unfit("fixture", "Fixtures of the operation '" + operation.Id + "' holds '" + strange
                + "', which is not planned. Planned are " + string.Join(", ", planned) + ".")
            : operation.Beside is string beside
                && (beside == operation.Id || beside == change.Id || !builder.Operations.Exists(one => one.Id == beside))
            ? Unfit("beside", "Beside of the operation '" + operation.Id + "' is '" + beside
                + "', which is not another operation of the list.")
            : null;

        PlanObjection Unfit(string code, string sentence) => new(ObjectionKind.Input, operation.Id, code, sentence);
    }

    private Operation WithHours(Operation operation) => OwnHours.Of(operation, builder.Shop, builder.Work.Procedures);

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
