using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>The cheapest whole number of kits of each size that holds at least what is needed; among equally cheap ones, that with the least left over.</summary>
/// <remarks>
/// Solved exactly by branch and bound on the price per volume. A nanolitre short counts as enough, so that three kits of a third of the need do.
/// For a need of very many kits that all cost about the same per volume the search ends early: <see cref="IsProvenCheapest"/> is then false, and
/// <see cref="LeastPossible"/> tells by how much the purchase can be too dear at most.
/// What is left over is mixed product that keeps only as long as its data sheet says.
/// </remarks>
/// <example><code>
/// MaterialPrice[] kits = [new("topcoat", Volume.FromMilliliters(1183), 78m), new("topcoat", Volume.FromMilliliters(4732), 240m)];
/// decimal cost = new KitPurchase(Volume.FromMilliliters(2490), kits).Cost;   // 234: three small ones
/// </code></example>
public sealed record KitPurchase
{
    private readonly double need;
    private readonly double bought;

    /// <summary>Finds the purchase.</summary>
    /// <param name="need">Mixed volume needed, 0 to 1 m³ and at most a thousand of the largest kit.</param>
    /// <param name="prices">The sizes on offer, at least one, at most ten, all of one item.</param>
    /// <exception cref="ArgumentException">The list is empty, holds an empty entry, or holds prices of several items.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="need"/> is outside its range or there are too many sizes.</exception>
    public KitPurchase(Volume need, IReadOnlyList<MaterialPrice> prices)
    {
        this.need = Guard.Within(need, Bounds.NotNegative(Measure.Capacity, 1), nameof(need));
        Prices = Guard.List(prices, nameof(prices), 1);
        Guard.Count(Prices.Count, 1, 10, nameof(prices));
        if (Prices.Any(price => price.Item != Prices[0].Item))
        {
            throw new ArgumentException("prices are of several items: " + string.Join(", ", Prices.Select(price => price.Item).Distinct()) + ".", nameof(prices));
        }

        double largest = Prices.Max(price => price.Size.CubicMeters);
        Guard.Rule(this.need <= 1000 * largest, nameof(need), this.need, Measure.Capacity, "at most a thousand of the largest kit of " + Prices[0].Item + ", ", largest);
        KitSearch search = new(this.need, Prices);
        int[] counts = search.Best();
        IsProvenCheapest = search.IsComplete;
        Kits = Guard.List(Prices.Select((price, i) => new KitCount(price, counts[i])).Where(kit => kit.Count > 0), nameof(prices));
        bought = Kits.Sum(kit => kit.Count * kit.Kit.Size.CubicMeters);
    }

    /// <summary>Mixed volume needed.</summary>
    public Volume Need => Volume.FromCubicMeters(need);

    /// <summary>The sizes on offer.</summary>
    public IReadOnlyList<MaterialPrice> Prices { get; }

    /// <summary>What is bought; empty when nothing is needed.</summary>
    public IReadOnlyList<KitCount> Kits { get; }

    /// <summary>What it costs.</summary>
    public decimal Cost => Kits.Sum(kit => kit.Cost);

    /// <summary>Whether every combination that could be cheaper was ruled out.</summary>
    public bool IsProvenCheapest { get; }

    /// <summary>What the need would cost at the best price per volume: no purchase can cost less.</summary>
    public decimal LeastPossible => (decimal)(need * Prices.Min(PerVolume));

    /// <summary>Volume bought.</summary>
    public Volume Bought => Volume.FromCubicMeters(bought);

    /// <summary>Volume left over.</summary>
    public Volume LeftOver => Volume.FromCubicMeters(Math.Max(0, bought - need));

    /// <summary>How cost and volumes follow from the counts.</summary>
    /// <param name="currency">How the money is shown.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentException"><paramref name="currency"/> is empty.</exception>
    public Workings Workings(string currency)
    {
        Measure money = Measure.Money(currency);
        Source choice = Source.Derived("cheapest whole numbers of kits that hold the need, by exhaustive search with bounds");
        Expression cost = Expression.Sum(Kits.Select(kit =>
            Expression.Quantity("n", kit.Count, Measure.Number) * Expression.Quantity("p", (double)kit.Kit.Price, money)));
        Expression volume = Expression.Sum(Kits.Select(kit =>
            Expression.Quantity("n", kit.Count, Measure.Number) * Expression.Quantity("V", kit.Kit.Size.CubicMeters, Measure.Capacity)));
        WorkingStep bought = new("volume bought", "V_b", volume, this.bought, Measure.Capacity, choice);
        Expression left = Expression.Max(0, bought.Result() - Expression.Quantity("V_need", need, Measure.Capacity));
        MaterialPrice best = Prices.OrderBy(PerVolume).First();
        Expression least = Expression.Quantity("V_need", need, Measure.Capacity)
            * (Expression.Quantity("p", (double)best.Price, money) / Expression.Quantity("V", best.Size.CubicMeters, Measure.Capacity));
        return new Workings(
            "Kits of " + Prices[0].Item,
            [
                new("cost of the kits", "C", cost, (double)Cost, money, choice),
                bought,
                new("left over", "V_l", left, LeftOver.CubicMeters, Measure.Capacity, choice),
                new("cost at the best price per volume, rounding of kits left out", "C_min", least, (double)LeastPossible, money, Source.Derived("no purchase can cost less")),
            ]);
    }

    /// <summary>The kits and their cost.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Kits.Count == 0 ? "nothing to buy" : string.Join("; ", Kits.Select(kit => kit.ToString())) + "; in all " + Figures.Fixed((double)Cost, 2);

    private static double PerVolume(MaterialPrice price) => (double)price.Price / price.Size.CubicMeters;
}
