using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>
/// A shop's own rates and prices. What is left out is unknown, not free: an estimate that needs it names the gap and gives no price.
/// </summary>
/// <example><code>
/// PriceBook book = new()
/// {
///     Currency = Currency.Of("USD"),
///     LabourRate = 32m,
///     Burden = Ratio.FromPercent(22),
///     Materials = [new("acrylic-urethane-topcoat", Volume.FromMilliliters(1183), 78m)],
///     TargetMargin = new Margin(Ratio.FromPercent(45)),
/// };
/// </code></example>
public sealed record PriceBook
{
    private readonly decimal burden;
    private readonly decimal overheadFraction;

    /// <summary>
    /// The currency of every amount. Rates, such as wages and prices of a unit, may have more decimals than it; whole amounts may not.
    /// </summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required Currency Currency { get; init => field = Guard.NotNull(value); }

    /// <summary>Wage of one person for one hour, without burden; <see langword="null"/> when not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public decimal? LabourRate { get; init => field = Money.Amount(value, nameof(LabourRate)); }

    /// <summary>Employer's taxes, insurance and paid time off per wage; 0 to 500 %; none when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio Burden
    {
        get => Ratio.FromDecimalFractions((double)burden);
        init => burden = Money.Fraction(value, Bounds.NotNegative(Measure.Percent, 5), nameof(Burden));
    }

    /// <summary>Overhead for each hour of labour; none when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public decimal OverheadPerHour { get; init => field = Money.Amount(value, nameof(OverheadPerHour)); }

    /// <summary>Overhead per direct cost, on top of <see cref="OverheadPerHour"/>; 0 to 500 %; none when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio OverheadOfDirectCost
    {
        get => Ratio.FromDecimalFractions((double)overheadFraction);
        init => overheadFraction = Money.Fraction(value, Bounds.NotNegative(Measure.Percent, 5), nameof(OverheadOfDirectCost));
    }

    /// <summary>Cost of one trip to the customer; <see langword="null"/> when not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public decimal? TravelPerTrip { get; init => field = Money.Amount(value, nameof(TravelPerTrip)); }

    /// <summary>Cost of waste disposal for one job; <see langword="null"/> when not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public decimal? DisposalPerJob { get; init => field = Money.Amount(value, nameof(DisposalPerJob)); }

    /// <summary>Masking, abrasives, filters, cartridges and cups for one fixture; <see langword="null"/> when not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public decimal? ConsumablesPerFixture { get; init => field = Money.Amount(value, nameof(ConsumablesPerFixture)); }

    /// <summary>What the kits cost.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<MaterialPrice> Materials { get; init => field = Guard.List(value); } = ValueList<MaterialPrice>.Empty;

    /// <summary>The extras on offer.</summary>
    /// <exception cref="ArgumentException">An entry is missing, or two have one code.</exception>
    public IReadOnlyList<OptionPrice> Options
    {
        get;
        init => field = Unique.Ids(Guard.List(value), option => option.Code, nameof(Options));
    } = ValueList<OptionPrice>.Empty;

    /// <summary>Least that is charged for a job before tax; none when left out. See <see cref="Discount.MayUndercutMinimum"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public decimal MinimumCharge { get; init => field = Money.Amount(value, nameof(MinimumCharge)); }

    /// <summary>Profit wanted as a share of the price; none when left out.</summary>
    public Margin TargetMargin { get; init; }

    /// <summary>
    /// The taxes that may apply, each on the categories of lines that it names; none when left out. Which lines are taxable is for a tax
    /// adviser.
    /// </summary>
    /// <exception cref="ArgumentException">An entry is missing, or two have one code.</exception>
    public IReadOnlyList<TaxRate> Taxes
    {
        get;
        init => field = Unique.Ids(Guard.List(value), rate => rate.Code, nameof(Taxes));
    } = ValueList<TaxRate>.Empty;

    /// <summary>Where tax is rounded; on the sum when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public TaxRounding TaxRounding { get; init => field = Guard.Defined(value); }

    /// <summary>
    /// What is paid is rounded to a multiple of this coin, such as 0.05; no rounding when left out. The total itself is not rounded.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public decimal CashStep { get; init => field = Money.Amount(value, nameof(CashStep)); }

    /// <summary>The host's own codes for items of the estimate; none when left out.</summary>
    /// <exception cref="ArgumentException">An entry is missing, or an item is mapped twice.</exception>
    public IReadOnlyList<HostCode> HostCodes
    {
        get;
        init => field = Unique.Ids(Guard.List(value), code => code.Item, nameof(HostCodes));
    } = ValueList<HostCode>.Empty;

    internal decimal BurdenFraction => burden;

    internal decimal OverheadFraction => overheadFraction;

    internal OptionPrice? Find(string code) => Options.FirstOrDefault(option => option.Code == code);

    internal TaxRate? FindTax(string code) => Taxes.FirstOrDefault(rate => rate.Code == code);

    internal ValueList<string> TaxesOn(LineCategory category, TaxExemption? exemption) => new(
        Taxes.Where(rate => rate.AppliesTo(category) && exemption?.Covers(rate) != true).Select(rate => rate.Code));

    /// <summary>The host's code of an item; that of a material without its size when there is none for the size.</summary>
    internal string? HostCodeOf(string item) => HostCodes.FirstOrDefault(code => code.Item == item)?.Code
        ?? HostCodes.LastOrDefault(code => code.Item.StartsWith("material/", StringComparison.Ordinal)
            && item.StartsWith(code.Item + "/", StringComparison.Ordinal))?.Code;

    /// <summary>The currency and the number of prices.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        "price book in " + Currency.Code + " with " + Figures.Fixed(Materials.Count, 0) + " material prices and "
        + Figures.Fixed(Options.Count, 0) + " options";
}
