using System;

namespace Refinish.Scheduling;

/// <summary>The earliest and the latest time of one point of a <see cref="TemporalNetwork"/>, counted from its origin.</summary>
/// <param name="Name">The point.</param>
/// <param name="Earliest">The earliest time after the origin; <see langword="null"/> when nothing holds it back.</param>
/// <param name="Latest">The latest time after the origin; <see langword="null"/> when nothing limits it.</param>
public sealed record PointTime(string Name, TimeSpan? Earliest, TimeSpan? Latest)
{
    /// <summary>Latest less earliest; <see langword="null"/> when either is open.</summary>
    public TimeSpan? Slack => Latest - Earliest;

    /// <summary>The point and its times in one line.</summary>
    /// <returns>Text such as <c>topcoat starts: 3 h to 5 h</c>.</returns>
    public override string ToString() => Name + ": " + Text(Earliest) + " to " + Text(Latest);

    private static string Text(TimeSpan? time) => time is TimeSpan known ? TimeConstraint.Hours(known) : "open";
}
