using System;
using System.Collections.Generic;

namespace Refinish.Jobs;

/// <summary>The quote that the customer holds, in figures: its items with their prices, what is paid when, how long it holds.</summary>
/// <remarks>Discount and taxes stand among <see cref="PlanFigures.Lines"/>, in the order and with the identities of the estimate.</remarks>
public sealed record QuoteFigures
{
    /// <summary>Number of the quote; <see langword="null"/> when it has none.</summary>
    public string? Number { get; init; }

    /// <summary>Revision of the quote; <see langword="null"/> when it has none.</summary>
    public string? Revision { get; init; }

    /// <summary>The last day on which it holds; <see langword="null"/> when that is not agreed.</summary>
    public DateTime? ValidUntil { get; init; }

    /// <summary>Whether the customer reads each item before discount and tax, or with both.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public PricesShown PricesShown { get; init => field = Guard.Defined(value); }

    /// <summary>The items in the order of the quote. Their prices are the subtotal; with discount and tax they are the total.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<ItemFigures> Items { get; init => field = Guard.List(value); } = ValueList<ItemFigures>.Empty;

    /// <summary>What is paid when; empty when no stages are agreed.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<PaymentFigures> Payments { get; init => field = Guard.List(value); } = ValueList<PaymentFigures>.Empty;

    /// <summary>Codes of the cautions that the quote tells the customer; the others concern the shop's people.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<string> Cautions { get; init => field = Guard.List(value); } = ValueList<string>.Empty;

    /// <summary>Number, revision and how many items there are.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => (Number ?? "quote without a number") + (Revision is null ? string.Empty : ", revision " + Revision)
        + ", " + ChangeText.Count(Items.Count, "item");
}
