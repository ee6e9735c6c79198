using System.Collections.Generic;
using Refinish.Jobs;

namespace Refinish.Json;

/// <summary>A plan that was read: the job planned again, and where the stored results are not those.</summary>
/// <remarks>Numbers are held to each other within 1 in 10⁹, so that another platform makes no difference.</remarks>
public sealed class StoredPlan
{
    internal StoredPlan(JobPlan plan, string library, IReadOnlyList<PlanDifference> differences)
    {
        Plan = plan;
        Library = library;
        Differences = differences;
    }

    /// <summary>The plan that the stored job gives with this library.</summary>
    public JobPlan Plan { get; }

    /// <summary>Version of the library that wrote the document.</summary>
    public string Library { get; }

    /// <summary>Stored results that differ from <see cref="Plan"/>; empty when all agree.</summary>
    public IReadOnlyList<PlanDifference> Differences { get; }

    /// <summary>Whether every stored result is the one that the job gives now.</summary>
    public bool Agrees => Differences.Count == 0;
}
