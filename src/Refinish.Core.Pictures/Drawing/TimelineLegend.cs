using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;

namespace Refinish.Pictures.Drawing;

/// <summary>What the marks of a timeline mean; only those that are there.</summary>
internal static class TimelineLegend
{
    public static void Draw(Page page, Timeline timeline)
    {
        Sheet sheet = page.Sheet;
        page.Y += 6;
        List<(string Words, Action<double, double> Mark)> entries = [("work on site", (x, y) => TimelineMarks.Draw(sheet,
            TimelineKind.Work, x, 24, y))];
        if (timeline.Entries.Any(entry => entry.Kind == TimelineKind.Coat))
        {
            entries.Add(("coat: mixing and spraying", (x, y) => TimelineMarks.Draw(sheet, TimelineKind.Coat, x, 24, y)));
        }

        if (timeline.Entries.Any(entry => entry.Kind == TimelineKind.StandBy))
        {
            entries.Add(("stands by, outside the room", (x, y) => TimelineMarks.Draw(sheet, TimelineKind.StandBy, x, 24, y)));
        }

        if (timeline.Entries.Any(entry => entry.RoomClear > entry.End))
        {
            entries.Add(("room empty until it is clear", (x, y) => TimelineMarks.Clearing(sheet, x, x + 24, y)));
        }

        if (timeline.Entries.Any(entry => entry.KeepsOthersOut))
        {
            entries.Add(("room closed to others", (x, y) => TimelineMarks.Closed(sheet, x, 24, y)));
        }

        entries.Add(("wait, leave alone", (x, y) => TimelineMarks.Dots(sheet, x, x + 24, y)));
        if (timeline.Entries.Any(entry => timeline.Holds[entry.Id].Any()))
        {
            entries.Add(("may go on, from mark to mark", (x, y) =>
            {
                TimelineMarks.Window(sheet, x, 24, y);
                TimelineMarks.Edge(sheet, x, y);
            }));
        }

        if (timeline.Water.Count > 0)
        {
            entries.Add(("first water, and from then on", (x, y) => TimelineMarks.Water(sheet, x + 2, x + 24, y - 7, y + 7)));
        }

        if (!page.IsNarrow)
        {
            entries.Add(("outside working hours", (x, y) => sheet.Rectangle(x, y - 6, 24, 12, Ink.Shade, Ink.Faint)));
        }

        page.Legend(entries);
    }
}
