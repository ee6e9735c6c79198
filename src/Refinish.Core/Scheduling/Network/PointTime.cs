using System;

namespace Refinish.Scheduling;

/// <summary>The earliest and the latest time of one point of a <see cref="TemporalNetwork"/>, counted from its origin.</summary>
public sealed record PointTime
{
    internal PointTime(string name, TimeSpan? earliest, TimeSpan? latest)
    {
        Name = name;
        Earliest = earliest;
        Latest = latest;
    }

    /// <summary>The point.</summary>
    public string Name { get; }

    /// <summary>The earliest time after the origin; <see langword="null"/> when nothing holds it back.</summary>
    public TimeSpan? Earliest { get; }

    /// <summary>The latest time after the origin; <see langword="null"/> when nothing limits it.</summary>
    public TimeSpan? Latest { get; }

    /// <summary>Latest less earliest; <see langword="null"/> when either is open.</summary>
    public TimeSpan? Slack => Latest - Earliest;

    /// <summary>The point and its times in one line.</summary>
    /// <returns>Text such as <c>topcoat starts: 3 h to 5 h</c>.</returns>
    public override string ToString() => Name + ": " + Text(Earliest) + " to " + Text(Latest);

    private static string Text(TimeSpan? time) => time is TimeSpan known ? TimeConstraint.Hours(known) : "open";
}
