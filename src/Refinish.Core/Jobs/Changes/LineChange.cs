namespace Refinish.Jobs;

/// <summary>One line of the estimate before and after.</summary>
public sealed record LineChange
{
    internal LineChange(LineFigures? before, LineFigures? after)
    {
        Before = before;
        After = after;
    }

    /// <summary>The line before; <see langword="null"/> when it is new.</summary>
    public LineFigures? Before { get; }

    /// <summary>The line after; <see langword="null"/> when it is gone.</summary>
    public LineFigures? After { get; }

    /// <summary>Cost after less cost before.</summary>
    public decimal Cost => (After?.Cost ?? 0) - (Before?.Cost ?? 0);

    /// <summary>Price after less price before.</summary>
    public decimal Price => (After?.Price ?? 0) - (Before?.Price ?? 0);

    /// <summary>Identity of the line.</summary>
    public string Id => (After ?? Before)!.Id;

    /// <summary>The line before and after.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => (Before?.ToString() ?? "nothing") + " became " + (After?.ToString() ?? "nothing");

    internal LineFigures Either => (After ?? Before)!;
}
