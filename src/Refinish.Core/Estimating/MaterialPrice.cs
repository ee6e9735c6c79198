using System;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>What one kit of a material costs. Several sizes of a material are several prices with the same item name.</summary>
/// <example><code>
/// MaterialPrice quart = new("two-part topcoat", Volume.FromUsQuarts(1.25), 78m);
/// </code></example>
public sealed record MaterialPrice
{
    private readonly double size;

    /// <summary>Makes a price.</summary>
    /// <param name="item">Name of the material, as in the material list of a job.</param>
    /// <param name="size">Usable volume of the kit: base, hardener and what belongs in it, mixed; 1 mL to 1 m³.</param>
    /// <param name="price">Price of one kit, at least 0.</param>
    /// <exception cref="ArgumentException"><paramref name="item"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public MaterialPrice(string item, Volume size, decimal price)
    {
        Item = Guard.Named(item, nameof(item));
        this.size = Guard.Within(size, Bounds.Between(1e-6, 1, Measure.Capacity), nameof(size));
        Price = Money.Amount(price, nameof(price));
    }

    /// <summary>Name of the material.</summary>
    public string Item { get; }

    /// <summary>Usable volume of the kit.</summary>
    public Volume Size => Volume.FromCubicMeters(size);

    /// <summary>Price of one kit.</summary>
    public decimal Price { get; }

    /// <summary>Item, size and price.</summary>
    /// <returns>Text such as <c>two-part topcoat, 1.1829 L: 78.00</c>.</returns>
    public override string ToString() => Item + ", " + Measure.Capacity.Format(size) + ": " + Figures.Fixed((double)Price, 2);
}
