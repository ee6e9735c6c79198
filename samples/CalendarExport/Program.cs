using System;
using System.Globalization;
using System.IO;
using System.Linq;
using Refinish;
using Refinish.Jobs;
using Refinish.Samples.CalendarExport;
using Refinish.Scheduling;

// dotnet run --project samples/CalendarExport -- [bathrooms, 1 to 50; 3 unless given] [file.ics; the screen unless given]
Job job = Pension.Bathrooms(args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 3);

// The stages up to the schedule, called alone: no air, no price. Job.Plan() calls the same ones.
Procedure[] procedures = [.. job.Fixtures.Select(fixture => new Procedure(fixture, job.Shop))];
foreach (Procedure refused in procedures.Where(procedure => !procedure.IsPlanned))
{
    Console.WriteLine("LEFT OUT  " + refused);
}

WorkList work = new([.. procedures.Where(procedure => procedure.IsPlanned)], job.Premises, job.Shop, job.Start);
CrewSchedule schedule = new(work);
PlanObjection[] objections = [.. work.Objections, .. schedule.Objections];
CoatRun[] closed = [.. work.Runs.Where(run => !run.Window.IsOpen)];
if (objections.Length > 0 || closed.Length > 0)
{
    Console.WriteLine(string.Join(Environment.NewLine, objections.Select(objection => "STOP  " + objection)
        .Concat(closed.Select(run => "STOP  " + run.Id + ": " + run.Window))));
    return 1;
}

Console.WriteLine(schedule);
Console.WriteLine(schedule.Paid);
Console.WriteLine();
Console.WriteLine("The days of each person");
foreach (PersonVisit visit in schedule.Visits)
{
    Console.WriteLine(visit.Arrives.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture) + ", " + visit.Worker + ", "
        + visit.Worked.TotalHours.ToString("F1", CultureInfo.InvariantCulture) + " h worked");
    foreach ((ScheduledOperation operation, TimeInterval piece) in schedule.Operations
        .Where(operation => operation.People.Contains(visit.Worker))
        .SelectMany(operation => operation.Pieces.Select(piece => (operation, piece)))
        .Where(one => one.piece.Start.Date == visit.Arrives.Date))
    {
        Console.WriteLine("  " + piece.Start.ToString("HH:mm", CultureInfo.InvariantCulture) + "–"
            + piece.End.ToString("HH:mm", CultureInfo.InvariantCulture) + "  " + operation.Operation);
    }
}

Console.WriteLine();
Console.WriteLine("What drives the end");
foreach (ChainLink link in schedule.Found.CriticalChain)
{
    Console.WriteLine("  " + link);
}

Console.WriteLine();
foreach (Caution caution in work.Operations.SelectMany(operation => operation.Cautions).Distinct())
{
    Console.WriteLine("! " + caution);
}

DateTimeOffset stamp = new(2027, 3, 1, 12, 0, 0, TimeSpan.Zero);
string file = CalendarFile.Write(job, schedule, stamp);
if (!CalendarFile.HoldsAgainst(file, job, schedule, stamp))
{
    Console.Error.WriteLine("The calendar file does not hold the times of the schedule.");
    return 1;
}

Console.WriteLine();
if (args.Length > 1)
{
    File.WriteAllText(args[1], file);
    Console.WriteLine("Written to " + args[1]);
}
else
{
    Console.Write(file);
}

return 0;
