namespace Refinish.Jobs;

/// <summary>One thing that stands in the way of a plan: what kind, about what, how far off where it is a comparison, and what would help.</summary>
public sealed record PlanObjection
{
    private readonly string text;

    internal PlanObjection(ObjectionKind kind, string subject, string text)
    {
        Kind = kind;
        Subject = subject;
        this.text = text;
    }

    internal PlanObjection(ObjectionKind kind, string subject, LimitComparison comparison)
        : this(kind, subject, string.Empty) =>
        Comparison = comparison;

    /// <summary>What kind of thing it is.</summary>
    public ObjectionKind Kind { get; }

    /// <summary>The fixture, coat, product or item it is about.</summary>
    public string Subject { get; }

    /// <summary>The comparison that came out wrong; <see langword="null"/> when it is not one.</summary>
    public LimitComparison? Comparison { get; }

    /// <summary>The objection as sentences.</summary>
    /// <param name="system">Metric or US customary, for the numbers of a comparison.</param>
    /// <returns>Text that ends in a full stop.</returns>
    public string Sentence(DisplayUnits system) => Comparison is null
        ? text
        : Subject + ": " + Comparison.Sentence(system) + "." + (Comparison.Remedy is null ? string.Empty : " " + Comparison.Remedy);

    /// <summary>The objection in metric units.</summary>
    /// <returns>See <see cref="Sentence"/>.</returns>
    public override string ToString() => Sentence(DisplayUnits.Si);
}
