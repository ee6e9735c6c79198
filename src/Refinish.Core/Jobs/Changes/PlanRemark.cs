using System;

namespace Refinish.Jobs;

/// <summary>
/// A sentence that belongs to a plan - an objection, a condition, a gap in the price book, a caution - with its identity.
/// </summary>
public sealed record PlanRemark
{
    private readonly Func<DisplayUnits, string> sentence;

    /// <summary>Makes a remark.</summary>
    /// <param name="id">Identity, formed from ids or codes.</param>
    /// <param name="about">Identifier of what it is about; empty for the job as a whole.</param>
    /// <param name="sentence">What people are told.</param>
    /// <exception cref="ArgumentException"><paramref name="id"/> is empty.</exception>
    /// <exception cref="ArgumentNullException">A text is missing.</exception>
    public PlanRemark(string id, string about, string sentence) : this(id, about, Always(Guard.NotNull(sentence)))
    {
    }

    internal PlanRemark(string id, string about, Func<DisplayUnits, string> sentence)
    {
        Id = Guard.Named(id);
        About = Guard.NotNull(about);
        this.sentence = sentence;
    }

    /// <summary>Identity.</summary>
    public string Id { get; }

    /// <summary>Identifier of what it is about; empty for the job as a whole.</summary>
    public string About { get; }

    /// <summary>What people are told.</summary>
    /// <param name="system">Metric or US customary; a stored remark keeps the units in which it was stored.</param>
    /// <returns>One or more sentences.</returns>
    public string Sentence(DisplayUnits system) => sentence(system);

    /// <summary>Whether the other has the same identity and says the same.</summary>
    /// <param name="other">The other remark.</param>
    /// <returns><see langword="true"/> when it does.</returns>
    public bool Equals(PlanRemark? other) => other is not null && Id == other.Id && About == other.About && ToString() == other.ToString();

    /// <summary>A hash of the identity.</summary>
    /// <returns>The hash.</returns>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Id);

    /// <summary>The sentence, in metric units where it has any.</summary>
    /// <returns>Text.</returns>
    public override string ToString() => Sentence(DisplayUnits.Si);

    private static Func<DisplayUnits, string> Always(string text) => _ => text;
}
