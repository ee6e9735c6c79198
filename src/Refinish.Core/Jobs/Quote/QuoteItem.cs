using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>One item of a customer's quote: what it is, and what it costs the customer.</summary>
public sealed record QuoteItem
{
    internal QuoteItem(string id, QuoteItemKind kind, string code, string description, decimal quantity, LineUnit unit)
    {
        Id = id;
        Kind = kind;
        Code = code;
        Description = description;
        Quantity = quantity;
        Unit = unit;
    }

    /// <summary>
    /// Identity, unique within the quote, from ids alone: <c>fixture/tub</c>, <c>option/slip-floor/tub</c>, <c>extra/plumber</c>.
    /// </summary>
    public string Id { get; }

    /// <summary>What it is.</summary>
    public QuoteItemKind Kind { get; }

    /// <summary>Id of the fixture that it belongs to; <see langword="null"/> for what concerns the job as a whole.</summary>
    public string? Fixture { get; internal init; }

    /// <summary>Id of the room that it belongs to; <see langword="null"/> where none is known.</summary>
    public string? Room { get; internal init; }

    /// <summary>Id of the fixture or the extra, or code of the option.</summary>
    public string Code { get; }

    /// <summary>Code in the host's books; <see langword="null"/> when none is mapped.</summary>
    public string? HostCode { get; internal init; }

    /// <summary>What the customer reads.</summary>
    public string Description { get; }

    /// <summary>Description and, where it is not one, how many of what.</summary>
    /// <value>Text such as <c>slip-resistant floor</c> or <c>boards, 3 each</c>.</value>
    public string Label => Quantity == 1
        ? Description
        : Description + ", " + Figures.Significant((double)Quantity, 12) + (Unit == LineUnit.Money ? string.Empty : " " + Unit.Symbol());

    /// <summary>How many of <see cref="Unit"/>.</summary>
    public decimal Quantity { get; }

    /// <summary>What is counted.</summary>
    public LineUnit Unit { get; }

    /// <summary>Price before discount and tax, never negative; the prices of all items are the subtotal.</summary>
    public decimal Price { get; internal init; }

    /// <summary>Its part of the discount, never negative.</summary>
    public decimal Discount { get; internal init; }

    /// <summary>Its part of all taxes, never negative.</summary>
    public decimal Tax { get; internal init; }

    /// <summary>Price less discount, with tax; those of all items are the total.</summary>
    public decimal WithTax => Price - Discount + Tax;

    /// <summary>The price as the terms want it shown.</summary>
    /// <param name="shown">Net or with tax.</param>
    /// <returns><see cref="Price"/> or <see cref="WithTax"/>.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="shown"/> is not a named value.</exception>
    public decimal As(PricesShown shown) => Guard.Defined(shown) == PricesShown.WithTax ? WithTax : Price;

    /// <summary>Description and price before discount and tax.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Description + ": " + Price.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
