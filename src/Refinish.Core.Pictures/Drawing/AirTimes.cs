using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;
using OxyPlot.Axes;
using Refinish.Air;

namespace Refinish.Pictures.Drawing;

/// <summary>The times of one room's air across a chart: what is sprayed or wiped on, hours, days and folds.</summary>
internal sealed class AirTimes
{
    private const double Side = 44;
    private readonly Page page;
    private readonly RoomVapour room;
    private readonly double width;
    private readonly double apart;
    private readonly bool crowded;

    public AirTimes(Page page, RoomVapour room)
    {
        this.page = page;
        this.room = room;
        width = page.Inside - Side - Beside;
        Shown = room.Shown(width);
        double[] middles = [.. room.Emissions.Select(Middle)];
        apart = TextWidths.Of(Figures.Fixed(middles.Length, 0), Page.Small) + 3;
        crowded = middles.Skip(1).Zip(middles, (later, earlier) => later - earlier).Any(between => between < apart);
    }

    public TimeFold Shown { get; }

    private double Beside => page.IsNarrow ? 20 : 232;

    /// <summary>Above, one line of numbers, or two where they would lie on one another; below, hours and the day on which they are.</summary>
    public OxyThickness Margins => new(Side, crowded ? 32 : 20, Beside, room.Zero is null ? 26 : 44);

    /// <summary>What the margins take from the height.</summary>
    public double MarginHeight => Margins.Top + Margins.Bottom;

    /// <summary>Numbers as people write them: 1, 3–5.</summary>
    public static string Numbers(IReadOnlyList<int> numbers)
    {
        List<string> runs = [];
        for (int i = 0; i < numbers.Count;)
        {
            int last = i;
            while (last + 1 < numbers.Count && numbers[last + 1] == numbers[last] + 1)
            {
                last++;
            }

            runs.Add(Figures.Fixed(numbers[i], 0)
                + (last == i ? string.Empty : (last == i + 1 ? ", " : "–") + Figures.Fixed(numbers[last], 0)));
            i = last + 1;
        }

        return string.Join(", ", runs);
    }

    /// <summary>By the clock where the study lies in a calendar, otherwise in hours from its zero.</summary>
    public Axis Across()
    {
        List<(double At, string Label)> ticks = [];
        foreach ((double from, double until) in Shown.Spans)
        {
            ticks.AddRange(Shown.Step is int step
                ? TimeAxis.ByTheClock(room.Zero!.Value, from, until, step)
                : Chart.Round(from, until, Math.Max(1, (int)Math.Round((page.IsNarrow ? 5 : 9) * (until - from) / Shown.Last)) + 2)
                    .Select(at => (at, Figures.Significant(at, 3) + (at == 0 ? " h" : string.Empty))));
        }

        // Where two spans meet at a fold that is narrow among many, a label gives way to the one before it.
        List<(double At, string Label)> kept = [];
        foreach ((double time, string label) in ticks)
        {
            double at = Shown.At(time);
            double before = kept.Count == 0 ? 0 : TextWidths.Of(kept[kept.Count - 1].Label, Page.Small);
            if (kept.Count == 0
                || (at - kept[kept.Count - 1].At) * width / Shown.Last > ((before + TextWidths.Of(label, Page.Small)) / 2) + 4)
            {
                kept.Add((at, label));
            }
        }

        return Chart.Scale(0, Shown.Last, kept);
    }

    /// <summary>Bands with numbers, folds, and the day below the first hour of each part.</summary>
    public void Draw(Sheet sheet, Func<double, double, ScreenPoint> at, double low, double high)
    {
        double top = at(0, high).Y;
        double bottom = at(0, low).Y;
        double left = at(0, low).X;
        Emission[] emissions = [.. room.Emissions];
        foreach (Emission emission in emissions)
        {
            double from = at(Shown.At(emission.Start.TotalHours), low).X;
            double to = at(Shown.At(emission.End.TotalHours), low).X;
            sheet.Rectangle(from, top, Math.Max(1.5, to - from), bottom - top, Ink.VermillionTint, OxyColors.Transparent);
        }

        int rows = crowded ? 2 : 1;
        for (int row = 0; row < rows; row++)
        {
            int[] here = [.. Enumerable.Range(0, emissions.Length).Where(i => i % rows == row)];
            double[] places = Labels.Apart([.. here.Select(i => left + Middle(emissions[i]))], apart, double.MinValue, left + width + 12);
            for (int k = 0; k < here.Length; k++)
            {
                sheet.Text(places[k], top - 9 - (13 * (rows - 1 - row)), Figures.Fixed(here[k] + 1, 0), Ink.Line, Page.Small,
                    HorizontalAlignment.Center);
            }
        }

        foreach (double gap in Shown.Gaps)
        {
            sheet.Line(at(gap, low).X, top, at(gap, low).X, bottom, Ink.Note, 1, [1, 3]);
        }

        double free = double.MinValue;
        foreach (double from in room.Zero is null ? [] : Shown.Spans.Select(span => span.From))
        {
            // A little later, since the hour is a sum of parts.
            string day = Clock.ShortDay(room.Zero!.Value.AddHours(from + 1e-6).DateTime);
            double words = TextWidths.Of(day, Page.Small);
            double x = Math.Min(at(Shown.At(from), low).X - 14, left + width + 18 - words);
            if (x > free)
            {
                sheet.Text(x, bottom + 31, day, Ink.Note, Page.Small);
                free = x + words + 4;
            }
        }
    }

    private double Middle(Emission emission) =>
        (Shown.At(emission.Start.TotalHours) + Shown.At(emission.End.TotalHours)) / 2 * width / Shown.Last;
}
