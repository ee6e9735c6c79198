namespace Refinish.Scheduling;

/// <summary>One stretch of one step within a <see cref="CrewVisit"/> or a <see cref="PersonDay"/>.</summary>
public sealed record CrewTurn
{
    internal CrewTurn(SiteStep step, TimeInterval piece)
    {
        Step = step;
        Piece = piece;
    }

    /// <summary>The step, with its id and its name.</summary>
    public SiteStep Step { get; }

    /// <summary>From when to when.</summary>
    public TimeInterval Piece { get; }

    /// <summary>The times and the step.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Piece + " " + Step.Name;
}
