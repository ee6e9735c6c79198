namespace Refinish.Jobs;

/// <summary>One value that two documents, or the inputs of two jobs, do not share: where it stands, and what it was and is.</summary>
/// <remarks>
/// Paths name entries of lists by their identity, such as <c>$.fixtures[?@.id=='tub'].share</c>, so that they do not change with the order
/// of a list.
/// </remarks>
/// <example><code>
/// ValueChange wage = new() { Path = "$.shop.prices.labourRate", Before = "26", After = "28", NumberBefore = 26, NumberAfter = 28 };
/// string text = wage.ToString();                     // "shop.prices.labourRate: 26 became 28"
/// </code></example>
public sealed record ValueChange
{
    // Whole objects stand in the property in full; a sentence shows how they begin.
    private const int Longest = 80;

    private readonly ChangeKind? kind;

    /// <summary>The place as a JSON path.</summary>
    /// <exception cref="System.ArgumentException">Empty.</exception>
    public required string Path { get; init => field = Guard.Named(value); }

    /// <summary>
    /// What stood there, as JSON or in words; <see langword="null"/> when there was nothing, or when only the place is known.
    /// </summary>
    public string? Before { get; init; }

    /// <summary>What stands there now; <see langword="null"/> when there is nothing, or when only the place is known.</summary>
    public string? After { get; init; }

    /// <summary>Whether the value came, went or changed; what the two texts say unless given.</summary>
    public ChangeKind Kind
    {
        get => kind ?? (Before is null && After is null ? ChangeKind.Changed : ChangeKinds.Of(Before, After));
        init => kind = value;
    }

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
