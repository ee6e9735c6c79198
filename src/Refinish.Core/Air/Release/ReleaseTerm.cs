namespace Refinish.Air;

/// <summary>
/// Part of an emission that is put on at a steady rate, flashes in part, and leaves one film at one first-order rate: the piece for which
/// the room has a closed form. A film with a fast and a slow rate is two of them, since the room answers to their sum.
/// </summary>
internal sealed class ReleaseTerm
{
    public required string Name { get; init; }

    /// <summary>Seconds from the start of the study.</summary>
    public required double Start { get; init; }

    public required double End { get; init; }

    public required double Duration { get; init; }

    /// <summary>Part of the emission's volatile mass.</summary>
    public required double Share { get; init; }

    /// <summary>How that part is written in workings; <see langword="null"/> when it is the whole.</summary>
    public required Expression? ShareFormula { get; init; }

    /// <summary>Part of this that is released while it is put on.</summary>
    public required double Flash { get; init; }

    public required double TimeConstant { get; init; }
}
