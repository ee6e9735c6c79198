namespace Refinish.Scheduling;

/// <summary>One stretch of one step within a <see cref="CrewVisit"/> or a <see cref="PersonDay"/>.</summary>
/// <param name="Step">The step, with its id and its name.</param>
/// <param name="Piece">From when to when.</param>
public sealed record CrewTurn(SiteStep Step, TimeInterval Piece)
{
    /// <summary>The times and the step.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Piece + " " + Step.Name;
}
