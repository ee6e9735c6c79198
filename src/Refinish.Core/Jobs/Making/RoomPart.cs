using System;
using System.Linq;
using Refinish.Scheduling;

namespace Refinish.Jobs;

/// <summary>What a list of operations took from one room, or from the beginning of one, kept for lists with further needs.</summary>
internal sealed class RoomPart
{
    private readonly ScheduleNeeds needs;
    private readonly Operation[] operations;
    private readonly StepLag[] waits;
    private readonly CoatRun[] runs;
    private readonly PlanObjection[] objections;

    /// <param name="builder">The builder, after the part.</param>
    /// <param name="before">How much the builder held before it.</param>
    public RoomPart(WorkBuilder builder, (int Operations, int Waits, int Runs, int Objections) before)
    {
        needs = builder.Work.Needs;
        operations = [.. builder.Operations.Skip(before.Operations)];
        waits = [.. builder.Waits.Skip(before.Waits)];
        runs = [.. builder.Runs.Skip(before.Runs)];
        objections = [.. builder.Objections.Skip(before.Objections)];
    }

    /// <summary>Whether nothing that is needed further is about a run of the part.</summary>
    public bool Holds(ScheduleNeeds further) => !further.AddTo(needs, id => Array.Exists(runs, run => run.Id == id));

    public void AddTo(WorkBuilder builder)
    {
        builder.Operations.AddRange(operations);
        builder.Waits.AddRange(waits);
        builder.Runs.AddRange(runs);
        foreach (PlanObjection objection in objections)
        {
            if (!builder.Objections.Exists(one => one.Id == objection.Id))
            {
                builder.Objections.Add(objection);
            }
        }
    }
}
