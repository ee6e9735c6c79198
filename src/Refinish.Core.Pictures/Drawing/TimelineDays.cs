using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;
using Refinish.Scheduling;

namespace Refinish.Pictures.Drawing;

/// <summary>Each day on site with the same hours across: what is done when, and how long the surface has to be left alone between.</summary>
internal sealed class TimelineDays
{
    private const double Bar = 14;
    private readonly Page page;
    private readonly Sheet sheet;
    private readonly JobSchedule schedule;
    private readonly ICollection<string> coats;
    private readonly double first;
    private readonly double last;
    private readonly double words;
    private readonly double left;

    private TimelineDays(Page page, JobSchedule schedule, ICollection<string> coats)
    {
        this.page = page;
        sheet = page.Sheet;
        this.schedule = schedule;
        this.coats = coats;
        WorkPiece[] pieces = [.. schedule.Steps.Where(step => step.Step.IsAttended).SelectMany(step => step.Pieces)];
        first = Math.Max(0, Math.Floor(Math.Min(schedule.Hours.From.TotalHours, pieces.Select(piece => piece.Start.TimeOfDay.TotalHours).DefaultIfEmpty(24).Min()) - 0.5));
        last = Math.Min(24, Math.Ceiling(Math.Max(schedule.Hours.Until.TotalHours, pieces.Select(piece => EndHour(piece)).DefaultIfEmpty(0).Max()) + 0.5));
        words = page.IsNarrow ? page.Inside : Math.Floor(page.Inside * 0.44);
        left = page.IsNarrow ? page.Left : page.Left + words + 12;
    }

    public static void Draw(Page page, JobSchedule schedule, ICollection<string> coats)
    {
        TimelineDays days = new(page, schedule, coats);
        List<(DateTime Day, ScheduledStep Step, WorkPiece Piece)> rows = [];
        foreach (ScheduledStep step in schedule.Steps)
        {
            foreach (WorkPiece piece in step.Pieces)
            {
                rows.Add((piece.Start.DateTime.Date, step, piece));
            }
        }

        DateTime? before = null;
        foreach (IGrouping<DateTime, (DateTime Day, ScheduledStep Step, WorkPiece Piece)> day in rows.GroupBy(row => row.Day).OrderBy(group => group.Key))
        {
            days.Between(before, day.Key);
            days.Day(day.Key, [.. day.Select(row => (row.Step, row.Piece))]);
            before = day.Key;
        }

        days.Legend();
    }

    private static double EndHour(WorkPiece piece) => piece.End.TimeOfDay == TimeSpan.Zero && piece.End > piece.Start ? 24 : piece.End.TimeOfDay.TotalHours;

    private static string Bounds(StepLag lag, TimeSpan planned) =>
        lag.Reason + ": " + (lag.Maximum is TimeSpan most ? Clock.Span(lag.Minimum) + " to " + Clock.Span(most) : "at least " + Clock.Span(lag.Minimum))
        + (planned - lag.Minimum >= TimeSpan.FromMinutes(1) ? ", planned " + Clock.Span(planned) : string.Empty);

    private double X(double hour) => left + ((hour - first) / (last - first) * (page.Right - left));

    private ScheduledStep Find(string name) => schedule.Steps.First(step => step.Step.Name == name);

    private void Between(DateTime? before, DateTime day)
    {
        if (before is DateTime earlier && day - earlier > TimeSpan.FromDays(1))
        {
            DateTime from = earlier.AddDays(1);
            DateTime until = day.AddDays(-1);
            page.Paragraph((from == until ? Clock.ShortDay(from) : Clock.ShortDay(from) + " to " + Clock.ShortDay(until)) + ": nobody on site.", Page.Small, Ink.Note);
        }
    }

    private void Day(DateTime day, List<(ScheduledStep Step, WorkPiece Piece)> rows)
    {
        page.Y += 4;
        double top = page.Y;
        sheet.Line(page.Left, top, page.Right, top, Ink.Line, 1.5);
        sheet.Text(page.Left, top + 15, Clock.Day(day), Ink.Line, Page.Normal, bold: true);
        double grid = top + (page.IsNarrow ? 42 : 22);
        for (double hour = first; hour <= last; hour++)
        {
            bool labelled = page.IsNarrow ? hour % 2 == 0 : true;
            if (labelled && hour > first && hour < last)
            {
                sheet.Text(X(hour), grid - 8, Figures.Fixed(hour, 0), Ink.Note, Page.Small, HorizontalAlignment.Center);
            }
        }

        page.Y = grid + (page.IsNarrow ? 10 : 6);
        List<Action> over = [];
        HashSet<string> told = new(StringComparer.Ordinal);
        foreach ((ScheduledStep step, WorkPiece piece) in rows)
        {
            if (piece.Equals(step.Pieces[0]))
            {
                foreach (StepLag lag in schedule.Lags.Where(lag => lag.After == step.Step.Name))
                {
                    ScheduledStep start = Find(lag.Before);
                    Row(Bounds(lag, step.Start - start.End), Page.Small, Ink.Note, 12, y => over.Add(() => Window(day, start.End, lag, step.Start, y)));
                }
            }

            string name = Clock.Time(piece.Start) + "–" + (piece.End.DateTime.Date == day ? Clock.Time(piece.End) : Clock.Moment(piece.End)) + "  " + step.Step.Name
                + (piece.Equals(step.Pieces[0]) ? string.Empty : ", continued");
            Row(name, Page.Normal, Ink.Line, 0, y => over.Add(() => Work(day, step, piece, y)));
        }

        Shade(day, grid, page.Y);
        foreach (Action draw in over)
        {
            draw();
        }

        page.Y += 6;
    }

    // A row is as high as its words; the bar lies in the middle of them, or below them where there is no room beside.
    private void Row(string text, double size, OxyColor colour, double indent, Action<double> bar)
    {
        IReadOnlyList<string> lines = TextWidths.Wrapped(text, size, words - indent);
        double height = (lines.Count * (size + 4)) + 4;
        for (int i = 0; i < lines.Count; i++)
        {
            sheet.Text(page.Left + indent, page.Y + 2 + (i * (size + 4)), lines[i], colour, size, along: VerticalAlignment.Top);
        }

        if (page.IsNarrow)
        {
            bar(page.Y + height + (Bar / 2));
            page.Y += height + Bar + 4;
        }
        else
        {
            height = Math.Max(height, Bar + 6);
            bar(page.Y + (height / 2));
            page.Y += height;
        }
    }

    // Drawn once the day's height is known, so it goes over the words' column only where that stands below.
    private void Shade(DateTime day, double top, double bottom)
    {
        double from = first;
        foreach (WorkingHours hours in schedule.Calendar.On(day).OrderBy(hours => hours.From))
        {
            Off(from, hours.From.TotalHours, top, bottom);
            from = hours.Until.TotalHours;
        }

        Off(from, last, top, bottom);
        for (double hour = first + 1; hour < last; hour++)
        {
            sheet.Line(X(hour), top, X(hour), page.IsNarrow ? top + 4 : bottom, page.IsNarrow ? Ink.Note : Ink.Faint);
        }
    }

    private void Off(double from, double until, double top, double bottom)
    {
        if (until > from && !page.IsNarrow)
        {
            sheet.Rectangle(X(from), top, X(until) - X(from), bottom - top, Ink.Shade, OxyColors.Transparent);
        }
        else if (until > from)
        {
            sheet.Rectangle(X(from), top, X(until) - X(from), 4, Ink.Shade, OxyColors.Transparent);
        }
    }

    private void Work(DateTime day, ScheduledStep step, WorkPiece piece, double y)
    {
        double from = Hour(day, piece.Start);
        double until = Hour(day, piece.End);
        bool coat = coats.Contains(step.Step.Name);
        double x = X(from);
        double width = Math.Max(2, X(until) - x);
        if (page.IsNarrow)
        {
            sheet.Line(X(first), y + (Bar / 2), X(last), y + (Bar / 2), Ink.Faint);
        }

        if (!step.Step.IsAttended)
        {
            sheet.Line(x, y, x + width, y, Ink.Note, 1.5, [2, 3]);
            return;
        }

        sheet.Rectangle(x, y - (Bar / 2), width, Bar, coat ? Ink.VermillionTint : Ink.BlueTint, OxyColors.Transparent);
        if (coat)
        {
            sheet.Hatch(x, y - (Bar / 2), width, Bar, Ink.Vermillion, 5);
        }

        sheet.Rectangle(x, y - (Bar / 2), width, Bar, OxyColors.Transparent, coat ? Ink.Vermillion : Ink.Blue, 1.2);
    }

    // Dotted from the end of the one to the least time, then a band while the window is open, up to this day's edge.
    private void Window(DateTime day, DateTimeOffset ended, StepLag lag, DateTimeOffset next, double y)
    {
        double end = Hour(day, ended);
        double opens = Hour(day, ended + lag.Minimum);
        double closes = lag.Maximum is TimeSpan most ? Hour(day, ended + most) : last;
        if (opens > end)
        {
            sheet.Line(X(end), y, X(opens), y, Ink.Note, 1.5, [2, 3]);
        }

        if (closes > opens)
        {
            sheet.Rectangle(X(opens), y - 3, X(closes) - X(opens), 6, Ink.GreenTint, Ink.Green, 0.7);
            Edge(ended + lag.Minimum, day, y);
            if (lag.Maximum is TimeSpan latest)
            {
                Edge(ended + latest, day, y);
            }
        }
    }

    private void Edge(DateTimeOffset instant, DateTime day, double y)
    {
        double hour = (instant.DateTime - day).TotalHours;
        if (hour >= first && hour <= last)
        {
            sheet.Line(X(hour), y - 5, X(hour), y + 5, Ink.Green, 1.8);
        }
    }

    private double Hour(DateTime day, DateTimeOffset instant) => Math.Max(first, Math.Min(last, (instant.DateTime - day).TotalHours));

    private void Legend()
    {
        page.Y += 6;
        List<(string Words, Action<double, double> Mark)> entries =
        [
            ("work on site", (x, y) => sheet.Rectangle(x, y - 6, 24, 12, Ink.BlueTint, Ink.Blue)),
        ];
        if (coats.Count > 0)
        {
            entries.Add(("coat: mixing and spraying", (x, y) =>
            {
                sheet.Rectangle(x, y - 6, 24, 12, Ink.VermillionTint, OxyColors.Transparent);
                sheet.Hatch(x, y - 6, 24, 12, Ink.Vermillion, 5);
                sheet.Rectangle(x, y - 6, 24, 12, OxyColors.Transparent, Ink.Vermillion);
            }));
        }

        entries.Add(("leave alone", (x, y) => sheet.Line(x, y, x + 24, y, Ink.Note, 1.5, [2, 3])));
        entries.Add(("may go on, from mark to mark", (x, y) =>
        {
            sheet.Rectangle(x, y - 3, 24, 6, Ink.GreenTint, Ink.Green, 0.7);
            sheet.Line(x, y - 5, x, y + 5, Ink.Green, 1.8);
        }));
        if (!page.IsNarrow)
        {
            entries.Add(("nobody on site", (x, y) => sheet.Rectangle(x, y - 6, 24, 12, Ink.Shade, Ink.Faint)));
        }

        page.Legend(entries);
    }
}
