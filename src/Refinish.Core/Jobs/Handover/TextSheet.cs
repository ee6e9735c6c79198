using System.Collections.Generic;
using System.Globalization;
using System.Text;

namespace Refinish.Jobs;

/// <summary>A sheet of lines for the customer, and its clock times.</summary>
internal sealed class TextSheet
{
    private readonly StringBuilder text = new();

    public static string Clock(System.DateTimeOffset? time) => Shown(time, "ddd yyyy-MM-dd HH:mm");

    public static string Minute(System.DateTimeOffset? time) => Shown(time, "yyyy-MM-dd HH:mm");

    public void Line(string line) => text.Append(line).Append('\n');

    /// <summary>A title and its lines; nothing without lines.</summary>
    public void Section(string title, IReadOnlyList<string> lines)
    {
        if (lines.Count > 0)
        {
            Line(title + ":");
        }

        foreach (string line in lines)
        {
            Line("  " + line);
        }
    }

    public override string ToString() => text.ToString();

    private static string Shown(System.DateTimeOffset? time, string form) =>
        time?.ToString(form, CultureInfo.InvariantCulture) ?? "an hour that cannot be said";
}
