using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;
using Refinish.Scheduling;

namespace Refinish.Pictures.Drawing;

/// <summary>The whole job in one strip at one scale of time, nights and days off shaded.</summary>
internal static class TimelineStrip
{
    private const double Height = 34;
    private const double Labels = 20;

    public static void Draw(Page page, JobSchedule schedule, ICollection<string> coats, DateTimeOffset? waterFrom)
    {
        DateTimeOffset end = schedule.Steps.Max(step => step.End);
        DateTimeOffset last = waterFrom > end ? waterFrom.Value : end;
        DateTime firstDay = schedule.Steps[0].Start.DateTime.Date;
        DateTime lastDay = last.DateTime.Date.AddDays(1);
        double days = (lastDay - firstDay).TotalDays;
        double top = page.Y + Labels;
        Sheet sheet = page.Sheet;
        double X(DateTime clock) => page.Left + ((clock - firstDay).TotalDays / days * page.Inside);

        sheet.Rectangle(page.Left, top, page.Inside, Height, Ink.Shade, OxyColors.Transparent);
        double every = Math.Ceiling(62 * days / page.Inside);
        for (int i = 0; i < days; i++)
        {
            DateTime day = firstDay.AddDays(i);
            foreach (WorkingHours hours in schedule.Calendar.On(day))
            {
                sheet.Rectangle(X(day + hours.From), top, X(day + hours.Until) - X(day + hours.From), Height, Ink.Paper, OxyColors.Transparent);
            }

            sheet.Line(X(day), top - 4, X(day), top + Height, Ink.Note);
            string name = Clock.ShortDay(day);
            if (i % every == 0 && X(day) + 3 + TextWidths.Of(name, Page.Small) <= page.Right)
            {
                sheet.Text(X(day) + 3, top - 10, name, Ink.Note, Page.Small);
            }
        }

        foreach (ScheduledStep step in schedule.Steps)
        {
            foreach (WorkPiece piece in step.Pieces)
            {
                double left = X(piece.Start.DateTime);
                double width = Math.Max(1, X(piece.End.DateTime) - left);
                if (step.Step.IsAttended)
                {
                    bool coat = coats.Contains(step.Step.Name);
                    sheet.Rectangle(left, top + (coat ? 3 : 10), width, Height - (coat ? 6 : 20), coat ? Ink.Vermillion : Ink.Blue, OxyColors.Transparent);
                }
                else
                {
                    sheet.Line(left, top + (Height / 2), left + width, top + (Height / 2), Ink.Note, 1.5, [2, 2]);
                }
            }
        }

        sheet.Rectangle(page.Left, top, page.Inside, Height, OxyColors.Transparent, Ink.Note);
        page.Y = top + Height + 4;
        if (waterFrom is DateTimeOffset water)
        {
            double x = X(water.DateTime);
            sheet.Line(x, top - 4, x, top + Height + 6, Ink.Green, 2.5);
            string words = "water from " + Clock.Moment(water);
            double half = TextWidths.Of(words, Page.Small, bold: true) / 2;
            sheet.Text(Math.Max(page.Left + half, Math.Min(page.Right - half, x)), top + Height + 15, words, Ink.Line, Page.Small, HorizontalAlignment.Center, bold: true);
            page.Y += 20;
        }

        page.Y += 8;
    }

    /// <summary>The shifts of a day; none on a day off.</summary>
    public static IEnumerable<WorkingHours> On(this WorkCalendar calendar, DateTime day) =>
        calendar.DaysOff.Contains(day.Date) ? [] : calendar.Shifts.Where(shift => shift.Day == day.DayOfWeek).Select(shift => shift.Hours);
}
