using System.Collections.Generic;

namespace Refinish.Jobs;

/// <summary>A caution as it stands in a plan: what brings it, and whom of the crew it concerns.</summary>
/// <remarks>Without an operation, a fixture and a room it concerns the whole job.</remarks>
public sealed record PlannedCaution
{
    internal PlannedCaution(
        Caution caution, IReadOnlyList<string> operations, IReadOnlyList<string> fixtures, IReadOnlyList<string> rooms,
        IReadOnlyList<string> crew)
    {
        Caution = caution;
        Operations = operations;
        Fixtures = fixtures;
        Rooms = rooms;
        Crew = crew;
    }

    /// <summary>The caution.</summary>
    public Caution Caution { get; }

    /// <summary>Identifiers of the operations that it goes with; empty when none brings it.</summary>
    public IReadOnlyList<string> Operations { get; }

    /// <summary>Identifiers of the fixtures that it comes from, by their survey or by what is done on them.</summary>
    public IReadOnlyList<string> Fixtures { get; }

    /// <summary>Identifiers of the rooms that it comes from, by their air or by what is done in them.</summary>
    public IReadOnlyList<string> Rooms { get; }

    /// <summary>
    /// Identifiers of the people of the crew who do those operations or work on those fixtures or in those rooms; empty when it does not
    /// concern the crew or there is no schedule.
    /// </summary>
    public IReadOnlyList<string> Crew { get; }

    /// <summary>The caution.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Caution.ToString();
}
