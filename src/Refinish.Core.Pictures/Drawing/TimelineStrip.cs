using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;
using Refinish.Scheduling;

namespace Refinish.Pictures.Drawing;

/// <summary>
/// The whole job in one strip with a lane for each room. Nights are folded to a crease, and days on which nothing happens to a wider one.
/// </summary>
internal sealed class TimelineStrip
{
    private const double NightFold = 7;
    private const double DaysFold = 30;
    private readonly Page page;
    private readonly Timeline timeline;
    private readonly DateTime[] days;
    private readonly double[] lefts;
    private readonly double left;
    private readonly double column;

    private TimelineStrip(Page page, Timeline timeline)
    {
        this.page = page;
        this.timeline = timeline;
        days = [.. timeline.Days.Concat(timeline.Water.Values.Select(water => water.DateTime.Date)).Distinct().OrderBy(day => day)];
        bool several = timeline.Rooms.Count > 1;
        double names = !several ? 0 : page.IsNarrow
            ? 16
            : Math.Min(page.Inside / 4, timeline.Rooms.Max(room => TextWidths.Of(timeline.Letter(room) + " · " + room.Name, Page.Small))
                + 8);
        left = page.Left + names;
        double folds = 0;
        for (int i = 1; i < days.Length; i++)
        {
            folds += Fold(i);
        }

        column = Math.Max(2, (page.Right - left - folds) / days.Length);
        double fits = Math.Min(1, (page.Right - left) / ((column * days.Length) + folds));
        column *= fits;
        lefts = new double[days.Length];
        for (int i = 0; i < days.Length; i++)
        {
            lefts[i] = i == 0 ? left : lefts[i - 1] + column + (Fold(i) * fits);
        }
    }

    public static void Draw(Page page, Timeline timeline) => new TimelineStrip(page, timeline).Draw();

    private double Fold(int i) => Skipped(i) > 0 ? DaysFold : NightFold;

    private int Skipped(int i) => (int)(days[i] - days[i - 1]).TotalDays - 1;

    private void Draw()
    {
        Sheet sheet = page.Sheet;
        double lane = timeline.Rooms.Count > 1 ? 22 : 32;
        double top = page.Y + 20;
        double bottom = top + (lane * timeline.Rooms.Count);
        Columns(sheet, top, bottom);
        for (int i = 0; i < timeline.Rooms.Count; i++)
        {
            Lane(sheet, timeline.Rooms[i], top + (i * lane), lane);
        }

        sheet.Rectangle(left, top, page.Right - left, bottom - top, OxyColors.Transparent, Ink.Note);
        page.Y = bottom + 6;
        if (timeline.Rooms.Count == 1 && timeline.Water.Count == 1)
        {
            DateTimeOffset water = timeline.Water.Values.Single();
            string words = "water from " + Clock.Moment(water);
            double half = TextWidths.Of(words, Page.Small, bold: true) / 2;
            sheet.Text(
                Math.Max(page.Left + half, Math.Min(page.Right - half, X(water))), bottom + 14, words, Ink.Line, Page.Small,
                    HorizontalAlignment.Center, bold: true);
            page.Y += 18;
        }

        page.Y += 8;
    }

    private void Columns(Sheet sheet, double top, double bottom)
    {
        sheet.Rectangle(left, top, page.Right - left, bottom - top, Ink.Shade, OxyColors.Transparent);
        double free = page.Left;
        for (int i = 0; i < days.Length; i++)
        {
            foreach (WorkingHours hours in timeline.Shifts(days[i]))
            {
                double from = At(i, hours.From.TotalHours);
                sheet.Rectangle(from, top, At(i, hours.Until.TotalHours) - from, bottom - top, Ink.Paper, OxyColors.Transparent);
            }

            if (i > 0)
            {
                double fold = (lefts[i - 1] + column + lefts[i]) / 2;
                sheet.Line(fold, top, fold, bottom, Ink.Note, 1, Skipped(i) > 0 ? null : [1, 3]);
            }

            // As many names of days as have room, the first always.
            string name = Clock.ShortDay(days[i]);
            double width = TextWidths.Of(name, Page.Small);
            if (lefts[i] >= free && lefts[i] + 2 + width <= page.Right)
            {
                sheet.Line(lefts[i], top - 5, lefts[i], top, Ink.Note);
                sheet.Text(lefts[i] + 2, top - 11, name, Ink.Note, Page.Small);
                free = lefts[i] + width + 10;
            }
        }
    }

    private void Lane(Sheet sheet, TimelineName room, double top, double lane)
    {
        double middle = top + (lane / 2);
        double half = (lane / 2) - 4;
        if (timeline.Rooms.Count > 1)
        {
            string letter = timeline.Letter(room);
            sheet.Text(page.Left, middle, page.IsNarrow ? letter : TextWidths.Shortened(letter + " · " + room.Name, Page.Small,
                left - page.Left - 6), Ink.Line, Page.Small, bold: page.IsNarrow);
        }

        foreach (TimeInterval closed in timeline.Closed(room))
        {
            sheet.Rectangle(X(closed.Start), top + 1, Math.Max(1, X(closed.End) - X(closed.Start)), lane - 2, Ink.VermillionTint,
                OxyColors.Transparent);
        }

        foreach (TimelineEntry entry in timeline.In(room))
        {
            if (entry.Kind == TimelineKind.Wait)
            {
                TimelineMarks.Dots(sheet, X(entry.Start), X(entry.End), middle);
                continue;
            }

            bool coat = entry.Kind == TimelineKind.Coat;
            foreach (TimeInterval piece in entry.Pieces)
            {
                double from = X(piece.Start);
                double height = coat ? half : half * 0.55;
                sheet.Rectangle(from, middle - height, Math.Max(1, X(piece.End) - from), 2 * height, coat ? Ink.Vermillion : Ink.Blue,
                    OxyColors.Transparent);
            }
        }

        if (timeline.Water.TryGetValue(room.Id, out DateTimeOffset water))
        {
            TimelineMarks.Water(sheet, X(water), page.Right - 1, top + 1, top + lane - 1);
        }
    }

    // A moment in the night or on a day without a column lies in its crease.
    private double X(DateTimeOffset instant)
    {
        DateTime day = instant.DateTime.Date;
        int i = Array.FindLastIndex(days, one => one <= day);
        return i < 0 ? left
            : days[i] < day ? lefts[i] + column
            : At(i, instant.TimeOfDay.TotalHours);
    }

    private double At(int i, double hour)
    {
        (double first, double last) = (timeline.FirstHour, timeline.LastHour);
        return lefts[i] + (column * (Math.Max(first, Math.Min(last, hour)) - first) / (last - first));
    }
}
