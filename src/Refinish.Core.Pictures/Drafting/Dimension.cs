namespace Refinish.Pictures.Drafting;

/// <summary>
/// A measured length between two places along one side of a view, all in metres; <paramref name="Reach"/> is where its extension lines
/// begin, across that side.
/// </summary>
internal sealed record Dimension(Side Side, double From, double To, double Reach, string Words, double Length)
{
    public double Span => To - From;
}
