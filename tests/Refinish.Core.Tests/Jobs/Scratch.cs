using System;
using System.Linq;
using Refinish.Jobs;
using Xunit;
namespace Refinish.Tests.Jobs;
public class Scratch
{
    [Fact]
    public void Print()
    {
        System.Text.StringBuilder b = new();
        foreach (Job job in new[] { InventedJobs.OccupiedHouse(), InventedJobs.ColdHouse(), InventedJobs.Rental() })
        {
            JobPlan plan = job.Plan();
            b.AppendLine("== " + job.Id + " total " + plan.Price?.Total + " visits " + plan.Schedule?.Visits.Count);
            foreach (ScheduledOperation o in plan.Schedule?.Operations ?? [])
            {
                b.AppendLine(o + " | clr " + o.Operation.Clearing.TotalMinutes + " | " + string.Join("+", o.People) + " | " + string.Join("; ", o.Operation.Vapours.Select(v => v.ToString())) + " | " + string.Join("; ", o.Operation.Materials.Select(v => v.ToString())));
            }
            foreach (RoomAirPlan a in plan.Air) { b.AppendLine(a.Room.Name + " " + a.Study + " / " + a.FlammableAirflow); foreach (var s in a.Study!.Substances) b.AppendLine("   " + s); b.AppendLine("   " + string.Join("; ", a.Protection)); b.AppendLine("   " + string.Join(",", a.Cautions.Select(c => c.Code))); }
            foreach (var c in plan.Conditions) b.AppendLine("C " + c);
            foreach (var c in plan.Objections) b.AppendLine("O " + c);
        }
        System.IO.File.WriteAllText("/tmp/w/air_out.txt", b.ToString());
    }
}
