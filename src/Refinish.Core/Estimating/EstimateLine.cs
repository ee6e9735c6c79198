using System;
using System.Collections.Generic;
using System.Globalization;

namespace Refinish.Estimating;

/// <summary>
/// One line of an estimate, with what it costs the shop and its part of what the customer pays. Over all lines the costs add up to
/// <see cref="PriceEstimate.Cost"/> and the prices to <see cref="PriceEstimate.Total"/>, exactly.
/// </summary>
/// <remarks>
/// The cost is quantity × rate, rounded once to the currency, halves away from zero. The price of a line without a fixed price is its part,
/// by cost, of what is charged beside fixed prices, cut to whole minor units; what cutting leaves goes to the largest remainders
/// (Hamilton's method).
/// </remarks>
public sealed record EstimateLine
{
    internal EstimateLine(LineKey key, LineCategory category, string code, string description, decimal quantity, LineUnit unit,
        decimal rate, Currency currency)
    {
        Id = key.Id;
        Item = key.Item;
        Fixture = key.Fixture;
        Room = key.Room;
        Worker = key.Worker;
        Category = category;
        Code = code;
        Description = description;
        Quantity = quantity;
        Unit = unit;
        Rate = rate;
        Currency = currency;
        SeenBy = category is LineCategory.Option or LineCategory.Subcontract or LineCategory.Allowance or LineCategory.Discount or LineCategory.Tax
            ? LineReader.Customer
            : LineReader.Shop;
        if (category is LineCategory.Tax or LineCategory.Discount)
        {
            Price = Product().Value;
        }
        else
        {
            Cost = Product().Value;
        }
    }

    /// <summary>
    /// Key of the line, unique within an estimate: <see cref="Item"/>, fixture or else room, and, where it is paid at several wages,
    /// worker, joined by '/', an empty part between two where one is left out, such as <c>labour/L-31/tub-1</c> or
    /// <c>labour/L-10//bath-1/ada</c>. It follows from ids, never from a description or a position, so that two runs and two revisions of a
    /// job can be held against each other.
    /// </summary>
    public string Id { get; }

    /// <summary>
    /// What is counted, as the shop's books name it: <c>labour/L-10</c>, <c>material/epoxy-primer/750</c> with the size of a kit,
    /// <c>option/slip-floor</c>, <c>extra/plumber</c>, <c>tax/vat</c>.
    /// </summary>
    public string Item { get; }

    /// <summary>What the line is for.</summary>
    public LineCategory Category { get; }

    /// <summary>Id of the fixture that the line belongs to; <see langword="null"/> when it belongs to several or to none.</summary>
    public string? Fixture { get; }

    /// <summary>
    /// Id of the room that the line belongs to; <see langword="null"/> when it belongs to several or to none, or where only the fixture is
    /// known.
    /// </summary>
    public string? Room { get; }

    /// <summary>Id of whoever does all of it; <see langword="null"/> where several do or nobody in particular.</summary>
    public string? Worker { get; internal init; }

    /// <summary>
    /// The host's own code for <see cref="Item"/> by <see cref="PriceBook.HostCodes"/>; <see langword="null"/> when it is not mapped.
    /// </summary>
    public string? HostCode { get; internal init; }

    /// <summary>Short code that people know it by, such as that of the labour standard, the material or the option.</summary>
    public string Code { get; }

    /// <summary>What it is.</summary>
    public string Description { get; }

    /// <summary>How much.</summary>
    public decimal Quantity { get; }

    /// <summary>What <see cref="Quantity"/> counts.</summary>
    public LineUnit Unit { get; }

    /// <summary>Money for one unit: what it costs; of a tax the share, of a discount the amount that is taken off.</summary>
    public decimal Rate { get; }

    /// <summary>What it costs the shop: quantity × rate, rounded once; 0 for discount and tax.</summary>
    public decimal Cost { get; }

    /// <summary>
    /// Its part of what the customer pays, before discount and tax, which have lines of their own; 0 for overhead and warranty, which the
    /// others carry.
    /// </summary>
    public decimal Price { get; internal init; }

    /// <summary>
    /// Whether the price is fixed by the price book or the extra, so that it carries nothing of overhead, warranty and margin.
    /// </summary>
    public bool HasFixedPrice { get; internal init; }

    /// <summary>Codes of the tax rates that apply to the price; empty when it is not taxed.</summary>
    public IReadOnlyList<string> Taxes { get; internal init; } = ValueList<string>.Empty;

    /// <summary>Whether any tax applies.</summary>
    public bool IsTaxable => Taxes.Count > 0;

    /// <summary>For whose eyes the line is meant; see <see cref="LineReader"/>.</summary>
    public LineReader SeenBy { get; }

    /// <summary>The currency of rate, cost and price.</summary>
    public Currency Currency { get; }

    /// <summary>The line with its numbers.</summary>
    /// <returns>Text such as <c>L-10 set up the room: 0.79 h × 39.04 = 30.84, sold at 56.07</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0}: {1} × {2} = {3}{4}",
        Name,
        (Figures.Significant((double)Quantity, 12) + " " + Unit.Symbol()).TrimEnd(),
        Figures.Significant((double)Rate, 12),
        Currency.Number(Category is LineCategory.Tax or LineCategory.Discount ? Price : Cost),
        Category is LineCategory.Tax or LineCategory.Discount ? string.Empty : ", sold at " + Currency.Number(Price));

    // Code and description, once where the one begins the other: no "travel travel".
    private string Name => Description.StartsWith(Code, StringComparison.Ordinal) ? Description : Code + " " + Description;

    /// <summary>Quantity × rate, rounded.</summary>
    internal Amount Rounded(Trace? t, string letter, int index, Source source)
    {
        if (t is null)
        {
            return Product();
        }

        string unit = Unit.Symbol();
        Measure money = Measure.Money(Currency);
        string name = Name + (unit.Length == 0 ? string.Empty : " (" + unit + ")");
        return t.Step(name, letter + Figures.Fixed(index + 1, 0), money, source, Product(t, money));
    }

    private Amount Product(Trace? t = null, Measure? money = null) =>
        Amount.Round(t.Money("q", Quantity, Measure.Number) * t.Money("r", Rate, money ?? Measure.Number), Currency);
}
