using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Scheduling;

namespace Refinish.Jobs;

/// <summary>What the list of all operations took from one room, kept so that a list with further needs makes only those rooms anew that they are about.</summary>
internal sealed class RoomPart
{
    private readonly ScheduleNeeds needs;
    private readonly RoomCourse course;
    private readonly Operation[] operations;
    private readonly StepLag[] waits;
    private readonly CoatRun[] runs;
    private readonly PlanObjection[] objections;

    /// <param name="builder">The builder, after the room.</param>
    /// <param name="before">How much the builder held before the room.</param>
    /// <param name="course">The climate of the room over the days.</param>
    public RoomPart(WorkBuilder builder, (int Operations, int Waits, int Runs, int Objections) before, RoomCourse course)
    {
        needs = builder.Work.Needs;
        this.course = course;
        operations = [.. builder.Operations.Skip(before.Operations)];
        waits = [.. builder.Waits.Skip(before.Waits)];
        runs = [.. builder.Runs.Skip(before.Runs)];
        objections = [.. builder.Objections.Skip(before.Objections)];
    }

    public RoomCourse Course => course;

    /// <summary>Whether nothing that is needed further is about a run of the room.</summary>
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
