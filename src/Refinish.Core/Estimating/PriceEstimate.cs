using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>
/// What a job costs the shop and what it is sold for, line by line: each line has its cost and its price, and both add up exactly.
/// </summary>
/// <remarks>
/// cost = Σ cost of the lines; price at margin = cost of everything without a fixed price / (1 − margin), rounded once, plus the fixed
/// prices; or, with <see cref="EstimateRequest.HoldMargin"/>, so much that this margin is left over every cost after the discount; subtotal
/// = the larger of that and the minimum charge; net = subtotal − discount; total = net + taxes; payable = total rounded to the cash step.
/// Lines without a fixed price carry the rest of the subtotal in proportion to their cost; those of overhead and warranty carry none. A
/// discount lowers the taxed price of every line in proportion. Halves round away from zero. Labour of one standard, place, worker and wage
/// makes one line. Every line has a key that is unique within the estimate and does not depend on its place. A rate that the price book
/// does not have, an amount of more than 10¹², or a whole amount with more decimals than its currency is a <see cref="PriceGap"/>: then
/// there is no price, rather than a wrong one.
/// </remarks>
/// <example><code>
/// PriceBook book = new()
/// {
///     Currency = Currency.Of("USD"),
///     LabourRate = 30m,
///     TravelPerTrip = 25m,
///     DisposalPerJob = 10m,
///     ConsumablesPerFixture = 35m,
///     TargetMargin = new(Ratio.FromPercent(45)),
/// };
/// EstimateRequest job = new() { Labour = new([new LabourTask { Standard = LabourStandards.Clear, Units = 1 }]), Materials = [],
///     Fixtures = 1 };
/// PriceEstimate estimate = new(book, job);
/// decimal? cost = estimate.Cost;     // 79.93 = 0.331 h × 30.00 + 35 + 25 + 10
/// decimal? price = estimate.Total;   // 145.33 = 79.93 / 0.55
/// </code></example>
public sealed record PriceEstimate
{
    private static readonly Source BelowCost = Source.Derived("a price below cost is a loss");
    private static readonly Source Rounded = Source.Derived("quantity × rate, rounded once to the currency, halves away from zero");

    private readonly PricedCosts costs;
    private readonly PriceLines sold;

    /// <summary>Prices a job.</summary>
    /// <param name="book">The shop's rates.</param>
    /// <param name="request">What the job takes.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public PriceEstimate(PriceBook book, EstimateRequest request)
    {
        Book = Guard.NotNull(book);
        Request = Guard.NotNull(request);
        costs = new PricedCosts(book, request);
        sold = new PriceLines(costs, book, request);
        Purchases = new ValueList<KitPurchase>(costs.Purchases);
        Lines = sold.Lines;
        Gaps = new ValueList<PriceGap>(costs.Gaps);
        Taxes = new ValueList<TaxAmount>(sold.Taxes);
        Cautions = new ValueList<Caution>(request.Options
            .SelectMany(order => book.Find(order.Code)?.Cautions ?? [])
            .Concat(request.Extras.SelectMany(extra => extra.Cautions))
            .Distinct());
    }

    /// <summary>The shop's rates.</summary>
    public PriceBook Book { get; }

    /// <summary>What the job takes.</summary>
    public EstimateRequest Request { get; }

    /// <summary>Why there is no price: what the price book lacks, and amounts beyond all bounds; empty when the job is priced.</summary>
    public IReadOnlyList<PriceGap> Gaps { get; }

    /// <summary>Whether nothing is missing, so that there is a price.</summary>
    public bool IsComplete => Gaps.Count == 0;

    /// <summary>The kits that are bought.</summary>
    public IReadOnlyList<KitPurchase> Purchases { get; }

    /// <summary>Every line, with cost and price; with a gap, the lines that could be costed, without prices.</summary>
    public IReadOnlyList<EstimateLine> Lines { get; }

    /// <summary>Sum of the costs; <see langword="null"/> when something is missing.</summary>
    public decimal? Cost => Known(costs.Cost);

    /// <summary>
    /// Price at the target margin with options at their fixed prices, before discount; <see langword="null"/> when something is missing.
    /// </summary>
    public decimal? PriceAtMargin => Known(sold.AtMargin);

    /// <summary>That, or the minimum charge when it is larger; <see langword="null"/> when something is missing.</summary>
    public decimal? Subtotal => Known(sold.Subtotal);

    /// <summary>Discount that is given, cut where the minimum charge holds; <see langword="null"/> when something is missing.</summary>
    public decimal? DiscountGiven => Known(sold.DiscountGiven);

    /// <summary>
    /// What the minimum charge takes off the discount that was asked for; <see langword="null"/> when something is missing.
    /// </summary>
    public decimal? DiscountWithheld => Known(sold.DiscountAsked - sold.DiscountGiven);

    /// <summary>After the discount, before tax; <see langword="null"/> when something is missing.</summary>
    public decimal? Net => Known(sold.Net);

    /// <summary>Each tax rate of the price book with what it comes to; empty when something is missing.</summary>
    public IReadOnlyList<TaxAmount> Taxes { get; }

    /// <summary>All taxes together; <see langword="null"/> when something is missing.</summary>
    public decimal? Tax => Known(sold.Tax);

    /// <summary>Price with tax: the sum of the prices of all lines; <see langword="null"/> when something is missing.</summary>
    public decimal? Total => Known(sold.Total);

    /// <summary>What is paid: <see cref="Total"/> rounded to the cash step; <see langword="null"/> when something is missing.</summary>
    public decimal? Payable => Known(sold.Payable);

    /// <summary>What can hurt with the options and extras ordered.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>Whether the minimum charge made the price.</summary>
    public bool MinimumChargeApplied => Subtotal > PriceAtMargin;

    /// <summary>Profit: net price less cost; negative for a loss; <see langword="null"/> when something is missing.</summary>
    public decimal? Profit => IsComplete ? sold.Chain.Profit().Value : null;

    /// <summary>Profit as a share of the net price; <see langword="null"/> when something is missing or the net price is 0.</summary>
    public Ratio? RealisedMargin => IsComplete && sold.Chain.RealisedMargin() is Num share ? Ratio.FromDecimalFractions(share.Value) : null;

    /// <summary>Profit as a share of the cost; <see langword="null"/> when something is missing or the cost is 0.</summary>
    public Ratio? RealisedMarkup => IsComplete && sold.Chain.RealisedMarkup() is Num share ? Ratio.FromDecimalFractions(share.Value) : null;

    /// <summary>The net price held against the cost; it cannot be judged when something is missing.</summary>
    public LimitComparison NetAgainstCost => new(
        "net price against cost",
        (double?)Net,
        (double?)Cost,
        LimitSense.AtLeast,
        Measure.Money(Book.Currency),
        BelowCost,
        "raise the price, drop the discount or cut hours");

    internal decimal DirectCost => costs.DirectCost;

    internal decimal FixedCost => costs.FixedCost;

    /// <summary>How cost and price follow, line by line.</summary>
    /// <returns>The derivation; with a gap, only the cost lines that could be priced.</returns>
    public Workings Workings()
    {
        Trace t = new();
        t.Part(Request.Labour.Workings());
        foreach (KitPurchase purchase in Purchases)
        {
            t.Part(purchase.Workings(Book.Currency));
        }

        costs.NoteWages(t);
        List<Amount> lines = [.. Lines
            .Where(line => line.Category is not (LineCategory.Tax or LineCategory.Discount or LineCategory.Margin))
            .Select((line, i) => line.Rounded(t, "c_", i, Rounded))];
        if (!IsComplete)
        {
            return t.Workings("Cost lines; no price, because of gaps");
        }

        sold.Chain.Note(t, lines, Lines, sold.TaxLines);
        return t.Workings("Price");
    }

    /// <summary>The total, or what is missing.</summary>
    /// <returns>Text such as <c>170.36 USD</c>.</returns>
    public override string ToString() =>
        Total is decimal total ? Book.Currency.Text(total) : "no price: " + string.Join("; ", Gaps.Select(gap => gap.ToString()));

    /// <summary>Whether book and request are the same; everything else follows from them.</summary>
    /// <param name="other">The estimate to compare with.</param>
    /// <returns><see langword="true"/> when they are alike.</returns>
    public bool Equals(PriceEstimate? other) => other is not null && Book.Equals(other.Book) && Request.Equals(other.Request);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((Book.GetHashCode() * 31) + Request.GetHashCode());

    private decimal? Known(decimal amount) => IsComplete ? amount : null;
}
