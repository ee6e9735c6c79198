using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;
using Refinish.Scheduling;

namespace Refinish.Pictures.Drawing;

/// <summary>
/// Each day on site with the same hours across: a row for each person, one for each room that is closed to others or has its water back,
/// then room by room what is done and how long the surface has to be left alone before.
/// </summary>
internal sealed class TimelineDays
{
    // Below this width a bar has no room for a letter.
    private const double Lettered = 16;
    private readonly Page page;
    private readonly Sheet sheet;
    private readonly Timeline timeline;
    private readonly double first;
    private readonly double last;
    private readonly double words;
    private readonly double left;

    private TimelineDays(Page page, Timeline timeline)
    {
        this.page = page;
        sheet = page.Sheet;
        this.timeline = timeline;
        first = timeline.FirstHour;
        last = timeline.LastHour;
        words = page.IsNarrow ? page.Inside : Math.Floor(page.Inside * 0.54);
        left = page.IsNarrow ? page.Left : page.Left + words + 12;
    }

    private bool HasRooms => timeline.Rooms.Count > 1;

    private bool HasPeople => timeline.Visits.Select(visit => visit.Person).Distinct().Count() > 1;

    public static void Draw(Page page, Timeline timeline)
    {
        TimelineDays days = new(page, timeline);

        // A wait that begins on a day without anybody is told on the next day, by the lag that follows it.
        DateTime? before = null;
        foreach (DateTime day in timeline.Entries.SelectMany(entry => entry.Pieces).Select(piece => piece.Start.DateTime.Date).Distinct()
            .OrderBy(day => day))
        {
            days.Between(before, day);
            days.Day(day);
            before = day;
        }

        days.After();
        TimelineLegend.Draw(page, timeline);
    }

    private double X(double hour) => left + ((hour - first) / (last - first) * (page.Right - left));

    private double Hour(DateTime day, DateTimeOffset instant) => Math.Max(first, Math.Min(last, (instant.DateTime - day).TotalHours));

    private void Between(DateTime? before, DateTime day)
    {
        if (before is DateTime earlier && day - earlier > TimeSpan.FromDays(1))
        {
            DateTime from = earlier.AddDays(1);
            DateTime until = day.AddDays(-1);
            page.Paragraph((from == until ? Clock.ShortDay(from) : Clock.ShortDay(from) + " to " + Clock.ShortDay(until))
                + ": nobody on site.", Page.Small, Ink.Note);
        }
    }

    // Water that comes when nobody is on site any more.
    private void After()
    {
        foreach (IGrouping<DateTimeOffset, TimelineName> water in timeline.Rooms.Where(room => timeline.Water.TryGetValue(room.Id,
            out DateTimeOffset from) && from.DateTime.Date > timeline.Days[timeline.Days.Count - 1]).GroupBy(room => timeline.Water[room.Id])
            .OrderBy(water => water.Key))
        {
            page.Paragraph(Clock.Moment(water.Key) + ": nobody on site; water from then on"
                + (HasRooms ? " in " + string.Join(" and ", water.Select(room => timeline.Letter(room) + " · " + room.Name)) : string.Empty)
                + ".", Page.Small, Ink.Line);
        }
    }

    private void Day(DateTime day)
    {
        page.Y += 4;
        double top = page.Y;
        sheet.Line(page.Left, top, page.Right, top, Ink.Line, 1.5);
        sheet.Text(page.Left, top + 15, Clock.Day(day), Ink.Line, Page.Normal, bold: true);
        double grid = top + (page.IsNarrow ? 42 : 22);
        int every = page.IsNarrow ? 2 : 1;
        for (double hour = first + 1; hour < last; hour++)
        {
            if (hour % every == 0)
            {
                sheet.Text(X(hour), grid - 8, Figures.Fixed(hour, 0), Ink.Note, Page.Small, HorizontalAlignment.Center);
            }
        }

        page.Y = grid + (page.IsNarrow ? 10 : 6);

        // The shading of the hours lies below and is drawn once the height is known.
        List<Action> over = [];
        foreach (TimelineVisit visit in timeline.Visits.Where(visit => visit.Arrives.DateTime.Date == day))
        {
            Person(day, visit, over);
        }

        foreach (TimelineName room in timeline.Rooms)
        {
            Access(day, room, over);
        }

        page.Y += 3;
        foreach (TimelineName room in timeline.Rooms)
        {
            Room(day, room, over);
        }

        Shade(day, grid, page.Y);
        foreach (Action draw in over)
        {
            draw();
        }

        page.Y += 6;
    }

    private void Person(DateTime day, TimelineVisit visit, List<Action> over)
    {
        string times = timeline.Names([visit.Person]) + ": " + Clock.Time(visit.Arrives) + "–" + Clock.Time(visit.Leaves)
            + (visit.Waiting >= TimeSpan.FromMinutes(1) ? ", of it " + Clock.Span(visit.Waiting) + " waiting" : string.Empty);
        Row(times, Page.Normal, Ink.Line, 0, y => over.Add(() =>
        {
            TimelineMarks.Dots(sheet, X(Hour(day, visit.Arrives)), X(Hour(day, visit.Leaves)), y);
            foreach (TimelineEntry entry in timeline.Entries.Where(entry => entry.People.Contains(visit.Person)))
            {
                foreach (TimeInterval piece in entry.Pieces.Where(piece => piece.Start.DateTime.Date == day))
                {
                    Piece(day, entry.Kind, piece, y, HasRooms ? timeline.Letter(entry) : string.Empty);
                }
            }
        }));
    }

    // When the crew's other hands, and the customer, stay out of the room, and when its water may run.
    private void Access(DateTime day, TimelineName room, List<Action> over)
    {
        TimelineAccess access = new(timeline, room, day);
        if (!access.IsTold)
        {
            return;
        }

        Row((HasRooms ? timeline.Letter(room) + " · " + room.Name : "Room") + ": " + access.Words, Page.Normal, Ink.Line, 0,
            y => over.Add(() =>
        {
            foreach (TimeInterval one in access.Closed)
            {
                double x = X(Hour(day, one.Start));
                TimelineMarks.Closed(sheet, x, Math.Max(2, X(Hour(day, one.End)) - x), y);
            }

            if (access.Water is DateTimeOffset water)
            {
                TimelineMarks.Water(sheet, X(Hour(day, water)), X(last), y - 7, y + 7);
            }
        }));
    }

    private void Room(DateTime day, TimelineName room, List<Action> over)
    {
        (TimelineEntry Entry, TimeInterval Piece)[] rows =
        [
            .. timeline.In(room).SelectMany(entry => entry.Pieces.Where(piece => piece.Start.DateTime.Date == day)
                .Select(piece => (entry, piece))).OrderBy(row => row.piece.Start),
        ];
        if (rows.Length > 0 && HasRooms)
        {
            page.Y += 3;
            foreach (string line in TextWidths.Wrapped(timeline.Letter(room) + " · " + room.Name, Page.Normal, words, bold: true))
            {
                sheet.Text(page.Left, page.Y + 2, line, Ink.Line, Page.Normal, along: VerticalAlignment.Top, bold: true);
                page.Y += 19;
            }
        }

        foreach ((TimelineEntry entry, TimeInterval piece) in rows)
        {
            bool isFirst = piece.Equals(entry.Pieces[0]);
            foreach (TimelineHold hold in isFirst ? timeline.Deciding(entry) : [])
            {
                Row(hold.Words(page.Units, day), Page.Small, Ink.Note, 12, y => over.Add(() => Window(day, hold, y)));
            }

            string who = !HasPeople || entry.People.Count == 0 ? string.Empty : " (" + timeline.Names(entry.People) + ")";
            string until = piece.End.DateTime.Date == day ? Clock.Time(piece.End) : Clock.Moment(piece.End);
            Row(Clock.Time(piece.Start) + "–" + until + " " + entry.Name + (isFirst ? string.Empty : ", continued") + who, Page.Normal,
                Ink.Line, 0, y => over.Add(() =>
            {
                if (entry.RoomClear > entry.End)
                {
                    TimelineMarks.Clearing(sheet, X(Hour(day, entry.End)), X(Hour(day, entry.RoomClear)), y);
                }

                Piece(day, entry.Kind, piece, y, string.Empty);
            }));
        }
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
            bar(page.Y + height + (TimelineMarks.Bar / 2));
            page.Y += height + TimelineMarks.Bar + 4;
        }
        else
        {
            height = Math.Max(height, TimelineMarks.Bar + 6);
            bar(page.Y + (height / 2));
            page.Y += height;
        }
    }

    private void Shade(DateTime day, double top, double bottom)
    {
        double from = first;
        foreach (WorkingHours hours in timeline.Shifts(day))
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
        if (until > from)
        {
            sheet.Rectangle(X(from), top, X(until) - X(from), page.IsNarrow ? 4 : bottom - top, Ink.Shade, OxyColors.Transparent);
        }
    }

    private void Piece(DateTime day, TimelineKind kind, TimeInterval piece, double y, string letter)
    {
        double x = X(Hour(day, piece.Start));
        double width = Math.Max(2, X(Hour(day, piece.End)) - x);
        if (page.IsNarrow && letter.Length == 0)
        {
            sheet.Line(X(first), y + (TimelineMarks.Bar / 2), X(last), y + (TimelineMarks.Bar / 2), Ink.Faint);
        }

        TimelineMarks.Draw(sheet, kind, x, width, y);
        if (letter.Length > 0 && width >= Lettered + (6 * (letter.Length - 1)))
        {
            double half = (TextWidths.Of(letter, Page.Small) / 2) + 1;
            OxyColor behind = kind switch { TimelineKind.Coat => Ink.VermillionTint, TimelineKind.StandBy => Ink.Paper, _ => Ink.BlueTint };
            sheet.Rectangle(x + (width / 2) - half, y - 6, 2 * half, 12, behind, OxyColors.Transparent);
            sheet.Text(x + (width / 2), y, letter, Ink.Line, Page.Small, HorizontalAlignment.Center);
        }
    }

    // Dotted from the end of the one to the least time, then a band while the window is open, up to this day's edge.
    private void Window(DateTime day, TimelineHold hold, double y)
    {
        double end = Hour(day, hold.Ended);
        double opens = hold.Opens is DateTimeOffset from ? Hour(day, from) : last;
        double closes = hold.Closes is DateTimeOffset until ? Hour(day, until) : last;
        if (opens > end)
        {
            TimelineMarks.Dots(sheet, X(end), X(opens), y);
        }

        if (closes > opens)
        {
            TimelineMarks.Window(sheet, X(opens), X(closes) - X(opens), y);
            foreach (DateTimeOffset edge in new[] { hold.Opens, hold.Closes }.OfType<DateTimeOffset>())
            {
                double hour = (edge.DateTime - day).TotalHours;
                if (hour >= first && hour <= last)
                {
                    TimelineMarks.Edge(sheet, X(hour), y);
                }
            }
        }
    }
}
