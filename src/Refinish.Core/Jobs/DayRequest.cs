using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;

namespace Refinish.Jobs;

/// <summary>Work that the customer wants on given days: some operations, or all of them.</summary>
/// <example><code>
/// DayRequest request = new([new DateTime(2027, 3, 2), new DateTime(2027, 3, 4)]);
/// </code></example>
public sealed record DayRequest
{
    /// <summary>Asks for all work on given days.</summary>
    /// <param name="days">The dates at midnight by the clock of the site, at least one.</param>
    /// <exception cref="ArgumentException">No date is given, or one has a time of day.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A date is not in the years 1900 to 2300.</exception>
    public DayRequest(IEnumerable<DateTime> days) : this(days, [])
    {
    }

    /// <summary>Asks for some operations on given days.</summary>
    /// <param name="days">The dates at midnight by the clock of the site, at least one.</param>
    /// <param name="operations">Identifiers of operations of the plan; all of them when empty.</param>
    /// <exception cref="ArgumentException">No date is given, one has a time of day, or an identifier is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A date is not in the years 1900 to 2300.</exception>
    public DayRequest(IEnumerable<DateTime> days, IEnumerable<string> operations)
    {
        Days = new ValueList<DateTime>(Guard.List(days, 1).Select(day =>
            DateTime.SpecifyKind(day, DateTimeKind.Unspecified)).Distinct().OrderBy(day => day));
        foreach (DateTime day in Days)
        {
            Guard.Count(day.Year, 1900, 2300, nameof(days));
            if (day.TimeOfDay != TimeSpan.Zero)
            {
                throw new ArgumentException("days holds a time of day, " + Figures.Fixed(day.TimeOfDay.TotalHours, 2) + " h; allowed: dates at midnight.", nameof(days));
            }
        }

        Operations = new ValueList<string>(Guard.List(operations).Select(id => Guard.Named(id, nameof(operations))));
    }

    /// <summary>The dates, first to last.</summary>
    public IReadOnlyList<DateTime> Days { get; }

    /// <summary>Identifiers of the operations; all when empty.</summary>
    public IReadOnlyList<string> Operations { get; }

    /// <summary>The days and what is asked for.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        (Operations.Count == 0 ? "all work" : string.Join(", ", Operations)) + " on "
        + string.Join(", ", Days.Select(Text));

    internal static string Text(DateTime day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
