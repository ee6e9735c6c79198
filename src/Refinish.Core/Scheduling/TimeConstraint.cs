using System;

namespace Refinish.Scheduling;

/// <summary>
/// A least and a most time from one time point of a <see cref="TemporalNetwork"/> to another: minimum ≤ t(to) − t(from) ≤ maximum.
/// </summary>
/// <example><code>
/// TimeConstraint window = new("prime ends", "topcoat starts", TimeSpan.FromHours(2), TimeSpan.FromHours(24), "recoat window of the primer");
/// </code></example>
public sealed record TimeConstraint
{
    private static readonly Bounds Times = Bounds.Between(-3650.0 * 86400, 3650.0 * 86400, Measure.Hours);

    /// <summary>Makes a constraint.</summary>
    /// <param name="from">Name of the point from which time is counted.</param>
    /// <param name="to">Name of the point to which it is counted; another point.</param>
    /// <param name="minimum">Least time, −3650 to 3650 days; <see langword="null"/> for none.</param>
    /// <param name="maximum">
    /// Most time, not below <paramref name="minimum"/>; <see langword="null"/> for none, but one of the two is needed.
    /// </param>
    /// <param name="reason">Why, in trade words.</param>
    /// <exception cref="ArgumentException">A text is empty, both ends are one point, or neither time is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A time is outside its range, or the maximum is below the minimum.</exception>
    public TimeConstraint(string from, string to, TimeSpan? minimum, TimeSpan? maximum, string reason)
    {
        From = Guard.Named(from);
        To = Guard.Named(to);
        Reason = Guard.Named(reason);
        if (from == to)
        {
            throw new ArgumentException("'" + reason + "' runs from '" + from + "' to itself; allowed: two points.", nameof(to));
        }

        if (minimum is null && maximum is null)
        {
            throw new ArgumentException("'" + reason + "' has neither a least nor a most time; allowed: one or both.", nameof(minimum));
        }

        if (minimum is TimeSpan least)
        {
            Guard.Within(least, Times, nameof(minimum));
        }

        if (maximum is TimeSpan most)
        {
            Guard.Within(most, Times, nameof(maximum));
            Guard.Rule(minimum is null || most >= minimum, nameof(maximum), most.TotalSeconds, Measure.Hours, "at least the minimum, ", (minimum ?? most).TotalSeconds);
        }

        Minimum = minimum;
        Maximum = maximum;
    }

    /// <summary>Name of the point from which time is counted.</summary>
    public string From { get; }

    /// <summary>Name of the point to which time is counted.</summary>
    public string To { get; }

    /// <summary>Least time; <see langword="null"/> for none.</summary>
    public TimeSpan? Minimum { get; }

    /// <summary>Most time; <see langword="null"/> for none.</summary>
    public TimeSpan? Maximum { get; }

    /// <summary>Why, in trade words.</summary>
    public string Reason { get; }

    /// <summary>The constraint in one line.</summary>
    /// <returns>Text such as <c>recoat window: prime ends → topcoat starts, 2 h to 24 h</c>.</returns>
    public override string ToString() => Reason + ": " + From + " → " + To + ", " + (Minimum, Maximum) switch
    {
        (TimeSpan least, TimeSpan most) => least == most ? Hours(least) : Hours(least) + " to " + Hours(most),
        (TimeSpan least, null) => "at least " + Hours(least),
        (_, TimeSpan most) => "at most " + Hours(most),
        _ => string.Empty,
    };

    internal static string Hours(TimeSpan time) => Measure.Hours.Format(time.TotalSeconds, DisplayUnits.Si, 5);
}
