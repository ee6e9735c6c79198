using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>
/// The cheapest whole number of kits of each size that holds at least what is needed; among equally cheap ones, that with the least left
/// over.
/// </summary>
/// <remarks>
/// Found by branch and bound on the price per volume, starting from the best single size. A nanolitre short counts as enough, so that three
/// kits of a
/// third of the need do. Of prices for one size the lowest counts. Where very many combinations cost about the same the search stops early
/// with the
/// best it has found: <see cref="IsProvenCheapest"/> is then false, and <see cref="LeastPossible"/> tells by how much the purchase can be
/// too dear at most.
/// What is left over is mixed product that keeps only as long as its data sheet says.
/// </remarks>
/// <example><code>
/// MaterialPrice[] kits = [new("topcoat", Volume.FromMilliliters(1183), 78m), new("topcoat", Volume.FromMilliliters(4732), 240m)];
/// decimal cost = new KitPurchase(Volume.FromMilliliters(2490), kits).Cost;   // 234: three small ones
/// </code></example>
public sealed record KitPurchase
{
    // In m³; sizes from a millilitre then make at most 10⁹ kits.
    internal const double MostNeeded = 1000;

    private readonly double need;
    private readonly double bought;

    /// <summary>Finds the purchase for a volume.</summary>
    /// <param name="need">Mixed volume needed, 0 to 1000 m³.</param>
    /// <param name="prices">The sizes on offer, at least one, all of one item.</param>
    /// <exception cref="ArgumentException">The list is empty, holds an empty entry, or holds prices of several items.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="need"/> is outside its range.</exception>
    public KitPurchase(Volume need, IReadOnlyList<MaterialPrice> prices)
        : this(need.CubicMeters, Guard.List(prices, nameof(prices), 1), null)
    {
    }

    /// <summary>Finds the purchase for the need of a job.</summary>
    /// <param name="need">The material and how much of it.</param>
    /// <param name="prices">The sizes on offer, at least one, all of this item.</param>
    /// <exception cref="ArgumentException">The list is empty, holds an empty entry, or holds prices of another item.</exception>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public KitPurchase(MaterialNeed need, IReadOnlyList<MaterialPrice> prices)
        : this(Guard.NotNull(need, nameof(need)).CubicMeters, Guard.List(prices, nameof(prices), 1), need)
    {
    }

    internal KitPurchase(double need, ValueList<MaterialPrice> prices, MaterialNeed? material)
    {
        this.need = Guard.Within(need, Bounds.NotNegative(Measure.Capacity, MostNeeded), nameof(need));
        Item = material?.Item ?? prices[0].Item;
        Name = material?.Name ?? Item;
        for (int i = 0; i < prices.Count; i++)
        {
            if (prices[i].Item != Item)
            {
                throw new ArgumentException("prices are of several items: " + Item + " and " + prices[i].Item + ".", nameof(prices));
            }
        }

        Prices = prices;
        KitSearch search = new(need, prices);
        int[] counts = search.Best(prices.Count);
        IsProvenCheapest = search.IsComplete;
        List<KitCount> kits = [];
        for (int i = 0; i < counts.Length; i++)
        {
            if (counts[i] > 0)
            {
                kits.Add(new KitCount(prices[i], counts[i]));
                bought += counts[i] * prices[i].CubicMeters;
                Cost += counts[i] * prices[i].Price;
            }
        }

        Kits = new ValueList<KitCount>(kits);
    }

    /// <summary>Id of the material.</summary>
    public string Item { get; }

    /// <summary>What people call it; its id when nothing else is known.</summary>
    public string Name { get; }

    /// <summary>Mixed volume needed.</summary>
    public Volume Need => Volume.FromCubicMeters(need);

    /// <summary>The sizes on offer.</summary>
    public IReadOnlyList<MaterialPrice> Prices { get; }

    /// <summary>What is bought; empty when nothing is needed.</summary>
    public IReadOnlyList<KitCount> Kits { get; }

    /// <summary>What it costs.</summary>
    public decimal Cost { get; }

    /// <summary>Whether every combination that could be cheaper was ruled out.</summary>
    public bool IsProvenCheapest { get; }

    /// <summary>What the need would cost at the best price per volume: no purchase can cost less.</summary>
    public decimal LeastPossible => (decimal)(need * Prices.Min(PerVolume));

    /// <summary>Volume bought.</summary>
    public Volume Bought => Volume.FromCubicMeters(bought);

    /// <summary>Volume left over.</summary>
    public Volume LeftOver => Volume.FromCubicMeters(Math.Max(0, bought - need));

    internal double NeedCubicMeters => need;

    internal double BoughtCubicMeters => bought;

    /// <summary>How cost and volumes follow from the counts.</summary>
    /// <param name="currency">How the money is shown.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="currency"/> is missing.</exception>
    public Workings Workings(Currency currency)
    {
        Measure money = Measure.Money(currency);
        Source choice = Source.Derived("cheapest whole numbers of kits that hold the need, by search with bounds");
        Expression cost = Expression.Sum(Kits.Select(kit =>
            Expression.Quantity("n", kit.Count, Measure.Number) * Expression.Quantity("p", (double)kit.Kit.Price, money)));
        Expression volume = Expression.Sum(Kits.Select(kit =>
            Expression.Quantity("n", kit.Count, Measure.Number) * Expression.Quantity("V", kit.Kit.CubicMeters, Measure.Capacity)));
        WorkingStep bought = new("volume bought", "V_b", volume, this.bought, Measure.Capacity, choice);
        Expression left = Expression.Max(0, bought.Result() - Expression.Quantity("V_need", need, Measure.Capacity));
        MaterialPrice best = Prices.OrderBy(PerVolume).First();
        Expression least = Expression.Quantity("V_need", need, Measure.Capacity)
            * (Expression.Quantity("p", (double)best.Price, money) / Expression.Quantity("V", best.CubicMeters, Measure.Capacity));
        return new Workings(
            "Kits of " + Name,
            [
                new("cost of the kits", "C", cost, (double)Cost, money, choice),
                bought,
                new("left over", "V_l", left, LeftOver.CubicMeters, Measure.Capacity, choice),
                new(
                    "cost at the best price per volume, rounding of kits left out",
                    "C_min",
                    least,
                    (double)LeastPossible,
                    money,
                    Source.Derived("no purchase can cost less")),
            ]);
    }

    /// <summary>The kits and their cost.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Kits.Count == 0
            ? "nothing to buy"
            : string.Join("; ", Kits.Select(kit => kit.ToString())) + "; in all " + Figures.Fixed((double)Cost, 2);

    private static double PerVolume(MaterialPrice price) => (double)price.Price / price.CubicMeters;
}
