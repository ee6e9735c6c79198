using System;

namespace Refinish.Jobs;

/// <summary>
/// One thing that stands in the way of a plan: what kind, about what, how far off where it is a comparison, and what would help.
/// </summary>
public sealed record PlanObjection
{
    private readonly Func<DisplayUnits, string> text;

    internal PlanObjection(ObjectionKind kind, string about, string code, string sentence) : this(kind, about, code, _ => sentence)
    {
    }

    internal PlanObjection(ObjectionKind kind, string about, string code, Func<DisplayUnits, string> sentence)
    {
        Kind = kind;
        About = about;
        Id = kind.ToString("G") + "/" + about + (code.Length == 0 ? string.Empty : "/" + code);
        text = sentence;
    }

    internal PlanObjection(ObjectionKind kind, string about, string code, LimitComparison comparison)
        : this(kind, about, code, system => about + ": " + comparison.Sentence(system) + "."
            + (comparison.Remedy is null ? string.Empty : " " + Sentences.Closed(comparison.Remedy))) => Comparison = comparison;

    /// <summary>Identifier, formed from the kind, what it is about, and a code where one thing can be objected to twice.</summary>
    public string Id { get; }

    /// <summary>What kind of thing it is.</summary>
    public ObjectionKind Kind { get; }

    /// <summary>Identifier of the fixture, room, operation, item or job that it is about.</summary>
    public string About { get; }

    /// <summary>The comparison that came out wrong; <see langword="null"/> when it is not one.</summary>
    public LimitComparison? Comparison { get; }

    /// <summary>The objection as sentences.</summary>
    /// <param name="system">Metric or US customary, for the numbers of a comparison.</param>
    /// <returns>Text that ends in a full stop.</returns>
    public string Sentence(DisplayUnits system) => text(system);

    /// <summary>Whether the other has the same identifier and says the same.</summary>
    /// <param name="other">The other objection.</param>
    /// <returns><see langword="true"/> when it does.</returns>
    public bool Equals(PlanObjection? other) => other is not null && Id == other.Id && ToString() == other.ToString();

    /// <summary>A hash of the identifier.</summary>
    /// <returns>The hash.</returns>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Id);

    /// <summary>The objection in metric units.</summary>
    /// <returns>See <see cref="Sentence"/>.</returns>
    public override string ToString() => Sentence(DisplayUnits.Si);
}
