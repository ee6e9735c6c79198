using System;
using System.Globalization;

namespace Refinish.Scheduling;

/// <summary>One stretch of time without a break.</summary>
public sealed record WorkPiece
{
    internal WorkPiece(DateTimeOffset start, DateTimeOffset end)
    {
        Start = start;
        End = end;
    }

    /// <summary>When it starts.</summary>
    public DateTimeOffset Start { get; }

    /// <summary>When it ends.</summary>
    public DateTimeOffset End { get; }

    /// <summary>The two times.</summary>
    /// <returns>Text such as <c>2027-03-01 08:00 to 2027-03-01 10:30</c>.</returns>
    public override string ToString() =>
        Start.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) + " to " + End.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
