using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>
/// The cheapest purchase that holds at least what is needed: whole kits of each size, and beside them, where the material is sold loose, as
/// much at one loose price as the kits leave open; among equally cheap ones, that with the least left over.
/// </summary>
/// <remarks>
/// Found by branch and bound on the price per amount, starting from the best single size; any number of sizes may be on offer. A nanolitre
/// short counts as enough, so that three kits of a third of the need do; so do a microgram, a square millimetre's millionth, a nanometre
/// and 10⁻⁹ of a piece. Of prices for one size the lowest counts. Pieces are bought in whole numbers, other loose amounts in
/// ten-thousandths of their unit, rounded up. A need by volume is bought by mass, or the reverse, where the density is known; a price that
/// nothing turns into the need is not used. Where very many combinations cost about the same the search stops early with the best it has
/// found: <see cref="IsProvenCheapest"/> is then false, and <see cref="LeastPossible"/> tells by how much the purchase can be too dear at
/// most. What is left over is mixed product that keeps only as long as its data sheet says.
/// </remarks>
/// <example><code>
/// MaterialPrice[] kits = [new("topcoat", Volume.FromMilliliters(1183), 78m), new("topcoat", Volume.FromMilliliters(4732), 240m)];
/// decimal cost = new KitPurchase(Volume.FromMilliliters(2490), kits).Cost;   // 234: three small ones
/// MaterialPrice[] film = [new("film", Area.FromSquareMeters(50), 15m), MaterialPrice.Loose("film", LineUnit.SquareMetre, 0.40m)];
/// decimal mixed = new KitPurchase(Area.FromSquareMeters(60), film).Cost;     // 19: a roll and 10 m² at 0.40
/// </code></example>
public sealed record KitPurchase
{
    private static readonly Source KitsAlone = Source.Derived("cheapest whole numbers of kits that hold the need, by search with bounds");
    private static readonly Source KitsAndLoose =
        Source.Derived("cheapest whole numbers of kits, with loose material for what they leave open, by search with bounds");

    private static readonly Source NoLess = Source.Derived("no purchase can cost less");

    private readonly KitOffer offer;
    private readonly double need;
    private readonly double bought;

    /// <summary>Finds the purchase for an amount.</summary>
    /// <param name="need">Amount needed, at least 0: at most 1000 m³, 1000 t, 10⁶ m², 10⁶ m or 10⁶ pieces.</param>
    /// <param name="prices">The prices on offer, at least one, all of one item.</param>
    /// <exception cref="ArgumentException">
    /// The list is empty, holds an empty entry, holds prices of several items, or none that serves: of another dimension.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="need"/> is outside its range, or more than 10⁹ of the smallest kit.
    /// </exception>
    public KitPurchase(MaterialAmount need, IReadOnlyList<MaterialPrice> prices) : this(need, Guard.List(prices, 1), null)
    {
    }

    /// <summary>Finds the purchase for the need of a job.</summary>
    /// <param name="need">The material and how much of it.</param>
    /// <param name="prices">The prices on offer, at least one, all of this item.</param>
    /// <exception cref="ArgumentException">
    /// The list is empty, holds an empty entry, holds prices of another item, or none that serves.
    /// </exception>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">More than 10⁹ of the smallest kit are needed.</exception>
    public KitPurchase(MaterialNeed need, IReadOnlyList<MaterialPrice> prices)
        : this(Guard.NotNull(need).Amount, Guard.List(prices, 1), need)
    {
    }

    private KitPurchase(MaterialAmount need, ValueList<MaterialPrice> prices, MaterialNeed? material)
        : this(need.Si, prices, new KitOffer(prices, need.Dimension, material?.KilogramsPerCubicMeter), material)
    {
    }

    internal KitPurchase(double need, ValueList<MaterialPrice> prices, KitOffer offer, MaterialNeed? material)
    {
        this.offer = offer;
        Prices = prices;
        Item = material?.Item ?? prices[0].Item;
        Name = material?.Name ?? Item;
        for (int i = 0; i < prices.Count; i++)
        {
            if (prices[i].Item != Item)
            {
                throw new ArgumentException("prices are of several items: " + Item + " and " + prices[i].Item + ".", nameof(prices));
            }
        }

        if (!offer.Serves)
        {
            throw new ArgumentException("prices hold none for " + Item + ": " + offer.Refusal(need) + ".", nameof(prices));
        }

        this.need = Guard.Within(need, Bounds.NotNegative(MaterialUnits.MeasureOf(offer.Dimension), offer.Most));
        MaterialPrice? loose = offer.Loose.Count > 0 ? offer.Loose[0] : null;
        KitSearch search = new(need, offer, loose);
        IsProvenCheapest = search.IsComplete;
        for (int i = 1; i < offer.Loose.Count; i++)
        {
            KitSearch other = new(need, offer, offer.Loose[i]);
            IsProvenCheapest &= other.IsComplete;
            if (other.Cost < search.Cost)
            {
                (search, loose) = (other, offer.Loose[i]);
            }
        }

        int[] counts = search.Counts();
        List<PurchaseLine> lines = [];
        for (int i = 0; i < counts.Length; i++)
        {
            if (counts[i] > 0)
            {
                lines.Add(new PurchaseLine(offer.Kits[i], counts[i], Name));
            }
        }

        if (search.Loose > 0)
        {
            lines.Add(new PurchaseLine(loose!, search.Loose, Name));
        }

        Lines = new ValueList<PurchaseLine>(lines);
        Cost = search.Cost;
        bought = Amounts().Value;
    }

    /// <summary>Id of the material.</summary>
    public string Item { get; }

    /// <summary>What people call it; its id when nothing else is known.</summary>
    public string Name { get; }

    /// <summary>Amount needed.</summary>
    public MaterialAmount Need => new(offer.Dimension, need);

    /// <summary>The prices on offer.</summary>
    public IReadOnlyList<MaterialPrice> Prices { get; }

    /// <summary>Prices that do not serve the need: of another dimension, with no density that turns one into the other.</summary>
    public IReadOnlyList<MaterialPrice> Unused => offer.Unused;

    /// <summary>All that is bought, one line for each kit size and for the loose amount; empty when nothing is needed.</summary>
    public IReadOnlyList<PurchaseLine> Lines { get; }

    /// <summary>What it costs.</summary>
    public decimal Cost { get; }

    /// <summary>Whether every combination that could be cheaper was ruled out.</summary>
    public bool IsProvenCheapest { get; }

    /// <summary>What the need would cost at the best price per amount: no purchase can cost less.</summary>
    public decimal LeastPossible => (decimal)Least().Value;

    /// <summary>Amount bought, measured as the need.</summary>
    public MaterialAmount Bought => new(offer.Dimension, bought);

    /// <summary>Amount left over.</summary>
    public MaterialAmount LeftOver => new(offer.Dimension, Over().Value);

    internal KitOffer Offer => offer;

    /// <summary>How cost and amounts follow from the counts.</summary>
    /// <param name="currency">How the money is shown.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="currency"/> is missing.</exception>
    public Workings Workings(Currency currency)
    {
        Trace t = new();
        Measure money = Measure.Money(currency);
        Source choice = offer.Loose.Count == 0 ? KitsAlone : KitsAndLoose;
        string word = offer.Dimension == MaterialDimension.Pieces ? "pieces" : MaterialUnits.Word(offer.Dimension);
        Amount cost = 0;
        foreach (PurchaseLine line in Lines)
        {
            cost += t.Money("n", line.Quantity, Measure.Number) * t.Money("p", line.Rate, money);
        }

        t.Step("cost of the kits", "C", money, choice, cost);
        t.Step(word + " bought", "V_b", Need.Measure, choice, Amounts(t));
        t.Step("left over", "V_l", Need.Measure, choice, Over(t));
        t.Step("cost at the best price per " + word + ", rounding of kits left out", "C_min", money, NoLess, Least(t, money));
        return t.Workings("Kits of " + Name);
    }

    /// <summary>What is bought and its cost.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Lines.Count == 0
            ? "nothing to buy"
            : string.Join("; ", Lines.Select(line => line.ToString())) + "; in all " + Figures.Fixed((double)Cost, 2);

    /// <summary>Whether need and prices are the same; everything else follows from them.</summary>
    /// <param name="other">The purchase to compare with.</param>
    /// <returns><see langword="true"/> when they are alike.</returns>
    public bool Equals(KitPurchase? other) => other is not null && Item == other.Item && Name == other.Name && Need == other.Need
        && offer.Density.Equals(other.offer.Density) && Prices.Equals(other.Prices);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((Need.GetHashCode() * 31) + StringComparer.Ordinal.GetHashCode(Item));

    private Num Amounts(Trace? t = null)
    {
        Num sum = 0;
        foreach (PurchaseLine line in Lines)
        {
            sum += t.Given("n", (double)line.Quantity, Measure.Number) * offer.SizeOf(line.Price, t);
        }

        return sum;
    }

    private Num Over(Trace? t = null) => Num.Max(0, t.Given("V_b", bought, Need.Measure) - Needed(t));

    private Num Least(Trace? t = null, Measure? money = null)
    {
        MaterialPrice best = offer.Best();
        return Needed(t) * (t.Given("p", (double)best.Price, money ?? Measure.Number) / offer.SizeOf(best, t));
    }

    private Num Needed(Trace? t) => t.Given("V_need", need, Need.Measure);
}
