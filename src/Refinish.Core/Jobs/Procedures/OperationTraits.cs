using System.Collections.Generic;
using Refinish.Coatings;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>What the rules say of one operation beside its kind and its instruction.</summary>
internal readonly struct OperationTraits
{
    public OperationTraits()
    {
    }

    public string? Id { get; init; }

    /// <summary>A label that says more than that of the kind of work.</summary>
    public string? Name { get; init; }

    public IReadOnlyList<LabourTask>? Labour { get; init; }

    public bool IsInterruptible { get; init; }

    public bool Sprays { get; init; }

    public bool RaisesDust { get; init; }

    public int? CoarsestGrit { get; init; }

    public int? FinestGrit { get; init; }

    public IReadOnlyList<MaterialNeed>? Materials { get; init; }

    public CoatingProduct? Product { get; init; }
}
