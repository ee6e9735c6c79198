using System;

namespace Refinish.Jobs;

/// <summary>One person's day on the premises in figures.</summary>
public sealed record VisitFigures
{
    /// <summary>Identifier of the person.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Worker { get; init => field = Guard.Named(value); }

    /// <summary>Start of the first operation.</summary>
    public required DateTimeOffset Arrives { get; init; }

    /// <summary>End of the last operation.</summary>
    public required DateTimeOffset Leaves { get; init; }

    /// <summary>Time that the shop's rule pays; zero when it is not known.</summary>
    public TimeSpan Paid { get; init; }

    /// <summary>Person and times.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Worker + " " + ChangeText.Clock(Arrives) + " to " + ChangeText.Clock(Leaves);
}
