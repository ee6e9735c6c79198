namespace Refinish;

/// <summary>A warning that travels with a result: what can hurt, one plain sentence, who decides, and what it rests on.</summary>
/// <remarks>A caution never says that something is safe. It adds to, and never replaces, local codes, the product's safety data sheet and licensed practice.</remarks>
public sealed record Caution
{
    /// <summary>Makes a caution.</summary>
    /// <param name="hazard">What can hurt.</param>
    /// <param name="sentence">One plain sentence for the person at work or the customer.</param>
    /// <param name="decidedBy">Who decides: a code, a data sheet, a licensed practice.</param>
    /// <param name="source">What the sentence rests on.</param>
    /// <exception cref="System.ArgumentException">A text is empty.</exception>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="hazard"/> is not a named value.</exception>
    public Caution(Hazard hazard, string sentence, string decidedBy, Source source)
    {
        Hazard = Guard.Defined(hazard, nameof(hazard));
        Sentence = Guard.Named(sentence, nameof(sentence));
        DecidedBy = Guard.Named(decidedBy, nameof(decidedBy));
        Source = Guard.NotNull(source, nameof(source));
    }

    /// <summary>What can hurt.</summary>
    public Hazard Hazard { get; }

    /// <summary>One plain sentence.</summary>
    public string Sentence { get; }

    /// <summary>Who decides.</summary>
    public string DecidedBy { get; }

    /// <summary>What the sentence rests on.</summary>
    public Source Source { get; }

    /// <summary>The sentence and who decides.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Sentence + " Decided by: " + DecidedBy + ".";
}
