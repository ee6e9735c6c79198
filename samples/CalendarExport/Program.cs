using System;
using System.Diagnostics;
using System.Linq;
using Refinish.Samples.CalendarExport;
using Refinish.Scheduling;
foreach (var (name, work) in new[] { ("1 tub", Pension.Bathrooms(1)), ("tub+sink", Pension.OneBathroom("tub", "sink")), ("3 fixtures", Pension.OneBathroom("tub", "sink", "surround")), ("2", Pension.Bathrooms(2)), ("3", Pension.Bathrooms(3)), ("10", Pension.Bathrooms(10)), ("50", Pension.Bathrooms(50)) })
{
    for (int k = 0; k < 3; k++)
    {
        Stopwatch w = Stopwatch.StartNew();
        SiteSchedule s = work.Solve();
        Console.WriteLine($"{name} {w.Elapsed.TotalMilliseconds:F1} ms, nodes {s.Nodes}, {s} gap {s.RelativeGap?.Percent:F2} %");
    }
}
