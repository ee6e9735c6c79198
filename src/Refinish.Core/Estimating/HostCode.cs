using System;

namespace Refinish.Estimating;

/// <summary>How the host's own books call an item of this library: its item, article or cost code.</summary>
/// <example><code>
/// HostCode setUp = new("labour/L-10", "5-2100");
/// HostCode primer = new("material/epoxy-primer", "ART-771");   // whatever size is bought
/// </code></example>
public sealed record HostCode
{
    /// <summary>Maps an item.</summary>
    /// <param name="item">The item as <c>EstimateLine.Item</c> names it; a material may be given without its size.</param>
    /// <param name="code">The host's code.</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    public HostCode(string item, string code)
    {
        Item = Guard.Named(item, nameof(item));
        Code = Guard.Named(code, nameof(code));
    }

    /// <summary>The item as <c>EstimateLine.Item</c> names it.</summary>
    public string Item { get; }

    /// <summary>The host's code.</summary>
    public string Code { get; }

    /// <summary>Item and code.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Item + " → " + Code;
}
