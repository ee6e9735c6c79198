using System;
using System.Globalization;
using System.IO;
using Refinish.Samples.CalendarExport;
using Refinish.Scheduling;

// dotnet run --project samples/CalendarExport -- [bathrooms, 1 to 50; 3 unless given] [file.ics; the screen unless given]
int bathrooms = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 3;
SiteSchedule schedule = Pension.Bathrooms(bathrooms).Solve();
if (!schedule.IsPossible)
{
    Console.WriteLine(schedule);
    return 1;
}

Console.WriteLine(schedule);
Console.WriteLine();
Console.WriteLine("The days of the crew");
foreach (CrewVisit visit in schedule.Visits)
{
    Console.WriteLine(visit.Arrives.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture) + ", " + visit.Worked.TotalHours.ToString("F1", CultureInfo.InvariantCulture) + " h worked");
    foreach (CrewTurn turn in visit.Turns)
    {
        Console.WriteLine("  " + turn.Piece.Start.ToString("HH:mm", CultureInfo.InvariantCulture) + "–" + turn.Piece.End.ToString("HH:mm", CultureInfo.InvariantCulture) + "  " + turn.Step.Name);
    }
}

Console.WriteLine();
Console.WriteLine("What drives the end");
foreach (ChainLink link in schedule.CriticalChain)
{
    Console.WriteLine("  " + link);
}

string file = CalendarFile.Write(schedule, new DateTimeOffset(2027, 3, 1, 12, 0, 0, TimeSpan.Zero));
if (!CalendarFile.HoldsAgainst(file, schedule))
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
