using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>
/// A shop's own rates and prices. What is left out is unknown, not free: an estimate that needs it names the gap and gives no price.
/// </summary>
/// <example><code>
/// PriceBook book = new()
/// {
///     Currency = "USD",
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
    private readonly decimal tax;

    /// <summary>Code or sign of the currency, as it is to be shown. Amounts have two decimals.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Currency
    {
        get;
        init => field = Guard.Named(value, nameof(Currency));
    }

    /// <summary>Wage of one person for one hour, without burden; <see langword="null"/> when not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public decimal? LabourRate
    {
        get;
        init => field = Money.Amount(value, nameof(LabourRate));
    }

    /// <summary>Employer's taxes, insurance and paid time off per wage; 0 to 500 %; none when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio Burden
    {
        get => Ratio.FromDecimalFractions((double)burden);
        init => burden = Money.Fraction(value, Bounds.NotNegative(Measure.Percent, 5), nameof(Burden));
    }

    /// <summary>Overhead for each hour of labour; none when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public decimal OverheadPerHour
    {
        get;
        init => field = Money.Amount(value, nameof(OverheadPerHour));
    }

    /// <summary>Overhead per direct cost, on top of <see cref="OverheadPerHour"/>; 0 to 500 %; none when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio OverheadOfDirectCost
    {
        get => Ratio.FromDecimalFractions((double)overheadFraction);
        init => overheadFraction = Money.Fraction(value, Bounds.NotNegative(Measure.Percent, 5), nameof(OverheadOfDirectCost));
    }

    /// <summary>Cost of one trip to the customer; <see langword="null"/> when not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public decimal? TravelPerTrip
    {
        get;
        init => field = Money.Amount(value, nameof(TravelPerTrip));
    }

    /// <summary>Cost of waste disposal for one job; <see langword="null"/> when not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public decimal? DisposalPerJob
    {
        get;
        init => field = Money.Amount(value, nameof(DisposalPerJob));
    }

    /// <summary>Masking, abrasives, filters, cartridges and cups for one fixture; <see langword="null"/> when not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public decimal? ConsumablesPerFixture
    {
        get;
        init => field = Money.Amount(value, nameof(ConsumablesPerFixture));
    }

    /// <summary>What the kits cost.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<MaterialPrice> Materials
    {
        get;
        init => field = Guard.List(value, nameof(Materials));
    } = ValueList<MaterialPrice>.Empty;

    /// <summary>The extras on offer.</summary>
    /// <exception cref="ArgumentException">An entry is missing, or two have one code.</exception>
    public IReadOnlyList<OptionPrice> Options
    {
        get;
        init
        {
            ValueList<OptionPrice> list = Guard.List(value, nameof(Options));
            HashSet<string> codes = new(StringComparer.Ordinal);
            foreach (OptionPrice option in list)
            {
                if (!codes.Add(option.Code))
                {
                    throw new ArgumentException(
                        "Options holds two options with the code " + option.Code + "; each needs its own.", nameof(Options));
                }
            }

            field = list;
        }
    } = ValueList<OptionPrice>.Empty;

    /// <summary>Least that is charged for a job before discount and tax; none when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public decimal MinimumCharge
    {
        get;
        init => field = Money.Amount(value, nameof(MinimumCharge));
    }

    /// <summary>Profit wanted as a share of the price; none when left out.</summary>
    public Margin TargetMargin { get; init; }

    /// <summary>Sales tax on the net price; 0 to 100 %; none when left out. Which lines are taxable is for a tax adviser.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio SalesTax
    {
        get => Ratio.FromDecimalFractions((double)tax);
        init => tax = Money.Fraction(value, Bounds.NotNegative(Measure.Percent, 1), nameof(SalesTax));
    }

    /// <summary>The total is rounded to a multiple of this, such as 0.05 or 1; no rounding when left out; whole cents.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, too large, or not whole cents.</exception>
    public decimal CashStep
    {
        get;
        init
        {
            Money.Amount(value, nameof(CashStep));
            Guard.Rule(Money.Round(value) == value, nameof(CashStep), (double)value, Measure.Number, "whole cents");
            field = value;
        }
    }

    internal decimal BurdenFraction => burden;

    internal decimal OverheadFraction => overheadFraction;

    internal decimal TaxFraction => tax;

    internal OptionPrice? Find(string code)
    {
        for (int i = 0; i < Options.Count; i++)
        {
            if (Options[i].Code == code)
            {
                return Options[i];
            }
        }

        return null;
    }

    /// <summary>The currency and the number of prices.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        "price book in " + Currency + " with " + Figures.Fixed(Materials.Count, 0) + " material prices and "
        + Figures.Fixed(Options.Count, 0) + " options";
}
