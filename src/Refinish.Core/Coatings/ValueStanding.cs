namespace Refinish.Coatings;

/// <summary>One figure of the generic catalogue and what it rests on.</summary>
public sealed record ValueStanding
{
    internal ValueStanding(string subject, string figure, string value, Source source)
    {
        Subject = subject;
        Figure = figure;
        Value = value;
        Source = source;
    }

    /// <summary>Which product or additive.</summary>
    public string Subject { get; }

    /// <summary>Which figure.</summary>
    public string Figure { get; }

    /// <summary>The figure as text, in metric units.</summary>
    public string Value { get; }

    /// <summary>What it rests on.</summary>
    public Source Source { get; }

    /// <summary>All of it in one line.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Subject + ", " + Figure + " " + Value + " (" + Source + ")";
}
