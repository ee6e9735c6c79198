namespace Refinish.Air;

/// <summary>
/// A rule or a finding as a dated sentence with its citation: a fact to show, not code that decides. Law changes; ask counsel.
/// </summary>
public sealed record LegalFact
{
    /// <summary>Makes a fact.</summary>
    /// <param name="subject">What it is about.</param>
    /// <param name="jurisdiction">Where it applies.</param>
    /// <param name="date">Its date or dates, as text.</param>
    /// <param name="sentence">The fact in one sentence.</param>
    /// <param name="standing">How well it has been looked up.</param>
    /// <param name="source">The citation.</param>
    /// <exception cref="System.ArgumentException">A text is empty.</exception>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="standing"/> is not a named value.</exception>
    public LegalFact(string subject, string jurisdiction, string date, string sentence, Standing standing, Source source)
    {
        Subject = Guard.Named(subject);
        Jurisdiction = Guard.Named(jurisdiction);
        Date = Guard.Named(date);
        Sentence = Guard.Named(sentence);
        Standing = Guard.Defined(standing);
        Source = Guard.NotNull(source);
    }

    /// <summary>What it is about.</summary>
    public string Subject { get; }

    /// <summary>Where it applies.</summary>
    public string Jurisdiction { get; }

    /// <summary>Its date or dates.</summary>
    public string Date { get; }

    /// <summary>The fact.</summary>
    public string Sentence { get; }

    /// <summary>How well it has been looked up.</summary>
    public Standing Standing { get; }

    /// <summary>The citation.</summary>
    public Source Source { get; }

    /// <summary>The fact with its place, date and citation.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Subject + " (" + Jurisdiction + ", " + Date + "): " + Sentence + " [" + Source + "]";
}
