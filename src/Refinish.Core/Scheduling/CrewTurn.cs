namespace Refinish.Scheduling;

/// <summary>One stretch of one step within a <see cref="CrewVisit"/>.</summary>
public sealed record CrewTurn
{
    internal CrewTurn(SiteStep step, WorkPiece piece)
    {
        Step = step;
        Piece = piece;
    }

    /// <summary>The step.</summary>
    public SiteStep Step { get; }

    /// <summary>From when to when.</summary>
    public WorkPiece Piece { get; }

    /// <summary>The times and the step.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Piece + " " + Step.Name;
}
