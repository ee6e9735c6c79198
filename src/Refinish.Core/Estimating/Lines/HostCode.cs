using System;

namespace Refinish.Estimating;

/// <summary>How the host's own books call an item of this library: its item, article or cost code.</summary>
/// <example><code>
/// HostCode setUp = new("labour/L-10", "5-2100");
/// HostCode primer = new("material/epoxy-primer", "ART-771");   // whatever size is bought
/// </code></example>
public sealed record HostCode
{
    private static readonly string[] Alone =
        ["overtime", "consumables", "travel", "waste", "overhead/hours", "overhead/cost", "warranty", "margin", "discount"];

    private static readonly string[] Families = ["labour/", "paid-time/", "operation/", "material/", "option/", "extra/", "tax/"];

    /// <summary>Maps an item.</summary>
    /// <param name="item">The item as <c>EstimateLine.Item</c> names it; a material may be given without its size.</param>
    /// <param name="code">The host's code.</param>
    /// <exception cref="ArgumentException">A text is empty, or <paramref name="item"/> is no form of an item.</exception>
    public HostCode(string item, string code)
    {
        Item = IsItem(Guard.Named(item))
            ? item
            : throw new ArgumentException(
                "item is '" + item + "'; allowed: " + string.Join(", ", Alone) + ", or one of " + string.Join(", ", Families)
                    + " with a code behind it.", nameof(item));
        Code = Guard.Named(code);
    }

    /// <summary>The item as <c>EstimateLine.Item</c> names it.</summary>
    public string Item { get; }

    /// <summary>The host's code.</summary>
    public string Code { get; }

    private static bool IsItem(string item) => Array.IndexOf(Alone, item) >= 0
        || (item.Trim() == item
            && Array.Exists(Families, family => item.Length > family.Length && item.StartsWith(family, StringComparison.Ordinal)));

    /// <summary>Item and code.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Item + " → " + Code;
}
