using System.Collections.Generic;
using System.Linq;
using Refinish.Jobs;
using UnitsNet;

namespace Refinish.Samples.BathroomJob;

/// <summary>The operations with their instructions, to be ticked off; each names its cautions by their codes.</summary>
internal static class WorkSheet
{
    public static void Write(Paper paper, JobPlan plan)
    {
        paper.Heading("Operations");
        if (plan.Work is not WorkList work)
        {
            paper.Line("No fixture is planned; see the job sheet.");
            return;
        }

        foreach (IGrouping<string?, Operation> room in work.Operations.GroupBy(operation => operation.Room)
            .OrderBy(room => room.Key is null))
        {
            paper.Line(room.Key is null ? "Outside the rooms" : work.Premises.Rooms.First(one => one.Id == room.Key).Name);
            foreach (Operation operation in room)
            {
                Write(paper, plan, operation);
            }

            paper.Line();
        }
    }

    private static void Write(Paper paper, JobPlan plan, Operation operation)
    {
        ScheduledOperation? planned = plan.Schedule?.TryFind(operation.Id);
        string when = planned is null ? "no time"
            : Paper.Moment(planned.Start)
                + (planned.People.Count > 0 ? " " + string.Join(", ", planned.People.Select(worker => CrewSheet.NameOf(plan, worker)))
                    : " wait");
        paper.Line(when + " · " + operation.Id + " · " + operation.Instruction, 2, "[ ] ");
        if (operation.ByFixture.Select(one => one.Instruction).Distinct().Count() > 1)
        {
            foreach (FixtureInstruction one in operation.ByFixture)
            {
                paper.Line(one.Fixture + ": " + one.Instruction, 8, "· ");
            }
        }

        foreach (FixtureInstruction grit in operation.ByFixture.Where(one => one.CoarsestGrit is not null))
        {
            paper.Line(grit.Fixture + ": P" + grit.CoarsestGrit + " to P" + grit.FinestGrit, 8, "· ");
        }

        if (operation.Materials.Count > 0)
        {
            paper.Line(string.Join("; ", operation.Materials.Select(need =>
                (need.Amount.Volume is Volume volume ? paper.Show(Measure.Liquid, volume.CubicMeters) : need.Amount.ToString()) + " of " + need.Name)), 8, "· ");
        }

        if (operation.Cautions.Count > 0)
        {
            paper.Line(string.Join(", ", operation.Cautions.Select(caution => caution.Code)), 8, "! ");
        }
    }
}
