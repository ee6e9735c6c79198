using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>
/// What leftovers from earlier jobs cover of a need: those that expire first are used first, expired ones and those of unknown life are not
/// counted.
/// </summary>
/// <remarks>What has to be bought, <see cref="ToBuy"/>, is what a choice of kits starts from.</remarks>
/// <example><code>
/// CoatingProduct primer = GenericCatalogue.EpoxyPrimer;
/// DateTimeOffset day = new(2027, 3, 1, 8, 0, 0, TimeSpan.Zero);
/// OpenedKit left = new(
///     primer, [new("epoxy-primer-base", Volume.FromMilliliters(300)), new("epoxy-primer-hardener", Volume.FromMilliliters(200))], day.AddDays(-40));
/// StockDraw draw = new(primer, Volume.FromMilliliters(700), day, [left]);
/// double toBuy = draw.ToBuy.Milliliters;   // 250: base is the scarcer can, 300 mL of it make 450 mL
/// </code></example>
public sealed record StockDraw
{
    private static readonly Source Balance = Source.Derived("need less what leftovers within their shelf life give");

    /// <summary>Draws on the leftovers.</summary>
    /// <param name="product">The product.</param>
    /// <param name="need">Mixed product needed, 0 to 1000 m³.</param>
    /// <param name="when">The day of use.</param>
    /// <param name="leftovers">What is left of it from earlier jobs; may be empty.</param>
    /// <exception cref="ArgumentException">An entry is missing or of a product with another identity.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="need"/> is outside its range, or a leftover was opened after <paramref name="when"/>.
    /// </exception>
    public StockDraw(CoatingProduct product, Volume need, DateTimeOffset when, IEnumerable<OpenedKit> leftovers)
    {
        Product = Guard.NotNull(product);
        Need = Guard.Checked(need, Bounds.NotNegative(Measure.Capacity, 1000));
        When = when;
        ValueList<OpenedKit> kits = Guard.List(leftovers);
        if (kits.Any(kit => kit.Product.Id != product.Id))
        {
            throw new ArgumentException("leftovers holds another product than " + product.Name + ".", nameof(leftovers));
        }

        List<StockUse> uses = [];
        List<LimitComparison> refused = [];
        double open = Need.CubicMeters;
        foreach (OpenedKit kit in kits.OrderBy(kit => kit.ShelfLife is TimeSpan life ? (kit.Opened + life).UtcTicks : long.MaxValue).ThenBy(kit => kit.Usable.CubicMeters))
        {
            LimitComparison age = kit.CompareAge(when);
            if (age.Outcome != ComparisonOutcome.Within)
            {
                refused.Add(age);
            }
            else if (open > 0 && kit.Usable.CubicMeters > 0)
            {
                double taken = Math.Min(open, kit.Usable.CubicMeters);
                uses.Add(new StockUse(kit, taken, age));
                open = Math.Max(0, open - taken);
            }
        }

        Uses = new ValueList<StockUse>(uses);
        NotCounted = new ValueList<LimitComparison>(refused);
        Covered = Volume.FromCubicMeters(uses.Sum(use => use.Mixed.CubicMeters));
    }

    /// <summary>The product.</summary>
    public CoatingProduct Product { get; }

    /// <summary>Mixed product needed.</summary>
    public Volume Need { get; }

    /// <summary>The day of use.</summary>
    public DateTimeOffset When { get; }

    /// <summary>What is used, first to expire first.</summary>
    public IReadOnlyList<StockUse> Uses { get; }

    /// <summary>Leftovers that are too old or of unknown life, with their age.</summary>
    public IReadOnlyList<LimitComparison> NotCounted { get; }

    /// <summary>Mixed product from leftovers.</summary>
    public Volume Covered { get; }

    /// <summary>Mixed product still to be bought.</summary>
    public Volume ToBuy => Volume.FromCubicMeters(Buy().Value);

    /// <summary>What goes with opened hardeners; empty when none of them is an isocyanate.</summary>
    public IReadOnlyList<Caution> Cautions => Product.HoldsIsocyanate
        ? new ValueList<Caution>([Refinish.Cautions.SwollenCan])
        : ValueList<Caution>.Empty;

    /// <summary>How the two follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Leftovers of " + Product.Name, Left, Buy);

    /// <summary>Covered and to buy in one line.</summary>
    /// <returns>Text such as <c>450 mL from leftovers, 250 mL to buy</c>.</returns>
    public override string ToString() =>
        Measure.Liquid.Format(Covered.CubicMeters, DisplayUnits.Si, 3) + " from leftovers, "
            + Measure.Liquid.Format(ToBuy.CubicMeters, DisplayUnits.Si, 3) + " to buy";

    private Num Left(Trace? t) => t is null ? Covered.CubicMeters : t.Step("from leftovers", "V_left", Measure.Liquid, Balance,
        Num.Sum(Uses.Count, (Uses, t), static (of, i) => of.t.Given("V", of.Uses[i].Mixed.CubicMeters, Measure.Liquid)));

    private Num Buy(Trace? t = null) =>
        t.Step("to buy", "V_buy", Measure.Liquid, Balance, Num.Max(0, t.Given("V_need", Need.CubicMeters, Measure.Liquid) - Left(t)));
}
