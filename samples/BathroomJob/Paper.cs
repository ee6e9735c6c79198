using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;

namespace Refinish.Samples.BathroomJob;

/// <summary>Plain text of fixed width: headings, wrapped lines, and tables whose columns fit their cells.</summary>
internal sealed class Paper(DisplayUnits system)
{
    public const int Width = 104;

    private readonly StringBuilder text = new();

    public DisplayUnits System { get; } = system;

    public string Show(Measure measure, double si, int figures = 3) => measure.Format(si, System, figures);

    /// <summary>A time by the clock; a part of a minute counts as a whole one, so that nothing begins before it may.</summary>
    public static string Clock(DateTimeOffset instant) => Up(instant).ToString("HH:mm", CultureInfo.InvariantCulture);

    public static string Moment(DateTimeOffset instant) => Up(instant).ToString("ddd HH:mm", CultureInfo.InvariantCulture);

    public static string Day(DateTimeOffset instant) => instant.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>A span in whole minutes, rounded up, kept on one line: work, and what has to be waited for.</summary>
    public static string Span(TimeSpan time) => Span((int)Math.Ceiling(time.TotalMinutes - 1e-6));

    /// <summary>A span within which something has to be done: whole minutes, rounded down.</summary>
    public static string Within(TimeSpan time) => Span((int)Math.Floor(time.TotalMinutes + 1e-6));

    public void Heading(string title)
    {
        text.Append('\n').Append(title.ToUpperInvariant()).Append('\n').Append('─', Width).Append('\n');
    }

    public void Line(string line = "", int indent = 0, string mark = "")
    {
        int room = Width - indent - mark.Length;
        string lead = new string(' ', indent) + mark;
        foreach (string piece in Wrapped(line, room))
        {
            text.Append((lead + piece).TrimEnd()).Append('\n');
            lead = new string(' ', indent + mark.Length);
        }
    }

    /// <summary>A line of a text made elsewhere: as it is laid out where it fits, else wrapped.</summary>
    public void Said(string line)
    {
        if (line.Length <= Width)
        {
            Row(line);
        }
        else
        {
            Line(line.TrimStart(), line.Length - line.TrimStart().Length);
        }
    }

    /// <summary>A line that is laid out already and is not to be wrapped.</summary>
    public void Row(string line) => text.Append(line.TrimEnd()).Append('\n');

    public void Table(IReadOnlyList<string[]> rows, string alignment, int indent = 2)
    {
        int[] widths = [.. Enumerable.Range(0, alignment.Length).Select(column => rows.Max(row => row[column].Length))];
        foreach (string[] row in rows)
        {
            text.Append(' ', indent);
            IEnumerable<string> cells = row.Select((cell, column) => alignment[column] == 'r' ? cell.PadLeft(widths[column])
                : cell.PadRight(widths[column]));
            text.Append(string.Join("  ", cells).TrimEnd()).Append('\n');
        }
    }

    public override string ToString() => text.ToString();

    private static string Span(int minutes) => (minutes >= 60
        ? Whole(minutes / 60) + "\u00A0h\u00A0" + (minutes % 60).ToString("00", CultureInfo.InvariantCulture)
        : Whole(minutes) + "\u00A0min").Replace("-", "−", StringComparison.Ordinal);

    private static DateTimeOffset Up(DateTimeOffset instant) =>
        new((instant.Ticks + TimeSpan.TicksPerMinute - 1) / TimeSpan.TicksPerMinute * TimeSpan.TicksPerMinute, instant.Offset);

    private static string Whole(int count) => count.ToString(CultureInfo.InvariantCulture);

    private static IEnumerable<string> Wrapped(string line, int room)
    {
        StringBuilder piece = new();
        foreach (string word in line.Split(' '))
        {
            if (piece.Length > 0 && piece.Length + 1 + word.Length > room)
            {
                yield return piece.ToString();
                piece.Clear();
            }

            piece.Append(piece.Length > 0 ? " " : string.Empty).Append(word);
        }

        yield return piece.ToString();
    }
}
