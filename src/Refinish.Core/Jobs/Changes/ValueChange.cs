namespace Refinish.Jobs;

/// <summary>One value that two documents, or the inputs of two jobs, do not share: where it stands, and what it was and is.</summary>
/// <remarks>
/// Paths name entries of lists by their identity, such as <c>$.fixtures[?@.id=='tub'].share</c>, so that they do not change with the order
/// of a list.
/// </remarks>
/// <example><code>
/// ValueChange wage = new("$.shop.prices.labourRate", "26", "28") { NumberBefore = 26, NumberAfter = 28 };
/// string text = wage.ToString();                     // "shop.prices.labourRate: 26 became 28"
/// </code></example>
public sealed record ValueChange
{
    // Whole objects stand in the property in full; a sentence shows how they begin.
    private const int Longest = 80;

    /// <summary>Makes a change.</summary>
    /// <param name="path">The place as a JSON path.</param>
    /// <param name="before">What stood there; <see langword="null"/> when there was nothing, or when only the place is known.</param>
    /// <param name="after">What stands there now; <see langword="null"/> when there is nothing, or when only the place is known.</param>
    /// <exception cref="System.ArgumentException"><paramref name="path"/> is empty.</exception>
    public ValueChange(string path, string? before, string? after)
    {
        Path = Guard.Named(path);
        Before = before;
        After = after;
        Kind = before is null && after is not null
            ? ChangeKind.Added : after is null && before is not null ? ChangeKind.Removed : ChangeKind.Changed;
    }

    /// <summary>The place as a JSON path.</summary>
    public string Path { get; }

    /// <summary>
    /// What stood there, as JSON or in words; <see langword="null"/> when there was nothing, or when only the place is known.
    /// </summary>
    public string? Before { get; }

    /// <summary>What stands there now; <see langword="null"/> when there is nothing, or when only the place is known.</summary>
    public string? After { get; }

    /// <summary>Whether the value came, went or changed.</summary>
    public ChangeKind Kind { get; init; }

    /// <summary>The number before, in <see cref="UnitBefore"/>; <see langword="null"/> when it was not a number.</summary>
    public double? NumberBefore { get; init; }

    /// <summary>The number now, in <see cref="UnitAfter"/>; <see langword="null"/> when it is not a number.</summary>
    public double? NumberAfter { get; init; }

    /// <summary>Unit of the number before; <see langword="null"/> for a number without one.</summary>
    public string? UnitBefore { get; init; }

    /// <summary>Unit of the number now; <see langword="null"/> for a number without one.</summary>
    public string? UnitAfter { get; init; }

    /// <summary>The number now less the number before; <see langword="null"/> when either is missing or their units differ.</summary>
    public double? Difference => UnitBefore == UnitAfter ? NumberAfter - NumberBefore : null;

    /// <summary>The place, and what became of what.</summary>
    /// <returns>One line of text, unless a text in it has more; of a long value its beginning.</returns>
    public override string ToString()
    {
        string place = Path.StartsWith("$.", System.StringComparison.Ordinal) ? Path.Substring(2) : Path;
        return Kind switch
        {
            ChangeKind.Added => place + ": added" + (After is null ? string.Empty : " " + Shown(NumberAfter, UnitAfter, After)),
            ChangeKind.Removed => place + ": gone" + (Before is null ? string.Empty : ", was " + Shown(NumberBefore, UnitBefore, Before)),
            _ => Before is null ? place + ": changed"
                : place + ": " + Shown(NumberBefore, UnitBefore, Before) + " became " + Shown(NumberAfter, UnitAfter, After!),
        };
    }

    private static string Shown(double? number, string? unit, string text) => number is double shown
        ? Figures.Significant(shown, 12) + (unit is null ? string.Empty : " " + unit)
        : text.Length <= Longest ? text : text.Remove(Longest) + "…";
}
