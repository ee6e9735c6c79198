using System;
using System.Linq;
using Refinish.Scheduling;

namespace Refinish.Jobs;

/// <summary>What a list of operations took from one room, or from the beginning of one, kept for lists with further needs.</summary>
internal sealed class RoomPart(WorkBuilder builder, (int Operations, int Waits, int Runs, int Objections) before)
{
    private readonly ScheduleNeeds needs = builder.Work.Needs;
    private readonly Operation[] operations = [.. builder.Operations.Skip(before.Operations)];
    private readonly StepLag[] waits = [.. builder.Waits.Skip(before.Waits)];
    private readonly CoatRun[] runs = [.. builder.Runs.Skip(before.Runs)];
    private readonly PlanObjection[] objections = [.. builder.Objections.Skip(before.Objections)];

    /// <summary>Whether nothing that is needed further is about a run of the part.</summary>
    public bool Holds(ScheduleNeeds further) => !further.AddTo(needs, id => Array.Exists(runs, run => run.Id == id));

    public void AddTo(WorkBuilder other)
    {
        other.Operations.AddRange(operations);
        other.Waits.AddRange(waits);
        other.Runs.AddRange(runs);
        foreach (PlanObjection objection in objections)
        {
            if (!other.Objections.Exists(one => one.Id == objection.Id))
            {
                other.Objections.Add(objection);
            }
        }
    }
}
