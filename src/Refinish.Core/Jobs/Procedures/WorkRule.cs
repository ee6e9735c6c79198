using System.Collections.Generic;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>
/// What the trade says of one kind of work: its place in the order on one fixture, why it stands there, and what that rests on.
/// </summary>
/// <remarks>
/// The rules that make a procedure follow this order, and a list that a caller changed is held against it: an operation that stands
/// after one of a later place is an objection.
/// </remarks>
/// <example><code>
/// WorkRule mask = WorkRule.Of(WorkKind.Mask);
/// bool late = mask.Place &gt; WorkRule.Of(WorkKind.RinseAndDry).Place;   // true
/// </code></example>
public sealed record WorkRule
{
    internal WorkRule(WorkKind kind, string key, string label, string reason, Source source)
    {
        Kind = kind;
        Key = key;
        Label = label;
        Reason = reason;
        Source = source;
    }

    /// <summary>Every kind of work, in the order of the trade; those without a place stand last.</summary>
    public static IReadOnlyList<WorkRule> All => WorkOrder.Rules;

    /// <summary>The kind of work.</summary>
    public WorkKind Kind { get; }

    /// <summary>Its place among the operations on one fixture, from 1; <see langword="null"/> where it may stand anywhere.</summary>
    public int? Place { get; internal init; }

    /// <summary>The last part of the identifier of an operation that the rules make: <c>mask</c> in <c>bath/mask</c>.</summary>
    public string Key { get; }

    /// <summary>Short label for timelines and job sheets.</summary>
    public string Label { get; }

    /// <summary>Why it stands where it stands.</summary>
    public string Reason { get; }

    /// <summary>What the place in the order rests on.</summary>
    public Source Source { get; }

    /// <summary>How many of the crew work on it: 1, and 0 for a wait such as warming.</summary>
    public int People { get; internal init; } = 1;

    /// <summary>
    /// Whether somebody stands by outside the room when the shop has people standing by: always where something is sprayed, and where
    /// the chemical or the promoter used gives off solvent. Other work is watched too when its solvent would bring the closed room to a
    /// tenth of its lower flammable limit.
    /// </summary>
    public bool IsWatched { get; internal init; }

    /// <summary>What can hurt in it on any surface and with any product; surface, product and survey add to it.</summary>
    public IReadOnlyList<Caution> Cautions { get; internal init => field = Guard.List(value); } = ValueList<Caution>.Empty;

    /// <summary>The rule for a kind of work.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>Its rule.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">Not a named kind.</exception>
    public static WorkRule Of(WorkKind kind) => WorkOrder.Of(Guard.Defined(kind));

    /// <summary>Place and label.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => (Place is int place ? Figures.Fixed(place, 0) + ". " : string.Empty) + Label;
}
