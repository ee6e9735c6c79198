using System;
using System.Globalization;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>One item of a customer's quote in figures.</summary>
public sealed record ItemFigures
{
    /// <summary>Identity, such as <c>fixture/tub</c> or <c>option/slip-floor/tub</c>.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Id { get; init => field = Guard.Named(value); }

    /// <summary>What it is; <see langword="null"/> for a stored word that this library does not know.</summary>
    public QuoteItemKind? Kind { get; init; }

    /// <summary>Identifier of its fixture; <see langword="null"/> for the job as a whole.</summary>
    public string? Fixture { get; init; }

    /// <summary>What the customer reads; the identity unless given.</summary>
    public string Description { get => field ?? Id; init; }

    /// <summary>How much; 1 unless given.</summary>
    public decimal Quantity { get; init; } = 1;

    /// <summary>Symbol of the unit of the quantity; pieces unless given.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public string Unit { get; init => field = Guard.NotNull(value); } = LineUnit.Each.Symbol();

    /// <summary>Price before discount and tax.</summary>
    public decimal Price { get; init; }

    /// <summary>Price less discount, with tax.</summary>
    public decimal WithTax { get; init; }

    /// <summary>Description and price before discount and tax.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Description + ": " + Price.ToString(CultureInfo.InvariantCulture);
}
