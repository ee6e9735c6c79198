using System.Collections.Generic;
using Refinish.Jobs;

namespace Refinish.Json;

/// <summary>A plan that was read: the job planned again, and where the stored results are not those.</summary>
/// <remarks>Numbers are held to each other within 1 in 10⁹, so that another platform makes no difference.</remarks>
public sealed class StoredPlan
{
    internal StoredPlan(JobPlan plan, string library, PlanFigures figures, IReadOnlyList<ValueChange> differences)
    {
        Plan = plan;
        Library = library;
        Figures = figures;
        Differences = differences;
    }

    /// <summary>The plan that the stored job gives with this library.</summary>
    public JobPlan Plan { get; }

    /// <summary>Version of the library that wrote the document.</summary>
    public string Library { get; }

    /// <summary>The figures as they were stored: what people were told.</summary>
    public PlanFigures Figures { get; }

    /// <summary>
    /// Every stored result that differs from that of <see cref="Plan"/>, by its path: money first, by size, then times, then the rest.
    /// Empty when all agree.
    /// </summary>
    public IReadOnlyList<ValueChange> Differences { get; }

    /// <summary>The differences that people were told of, in words and with what moved them.</summary>
    public PlanChanges Changes => field ??= PlanChanges.Between(Figures, PlanFigures.Of(Plan), []);

    /// <summary>Whether every stored result is the one that the job gives now.</summary>
    public bool Agrees => Differences.Count == 0;
}
