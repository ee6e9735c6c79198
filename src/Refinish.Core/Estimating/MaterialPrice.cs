using System;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>What one kit of a material costs. Several sizes of a material are several prices with the same item.</summary>
/// <example><code>
/// MaterialPrice quart = new("acrylic-urethane-topcoat", Volume.FromUsQuarts(1.25), 78m);
/// </code></example>
public sealed record MaterialPrice
{
    private readonly double size;

    /// <summary>Makes a price.</summary>
    /// <param name="item">Id of the product, component or material.</param>
    /// <param name="size">Usable volume of the kit: base, hardener and what belongs in it, mixed; 1 mL to 1 m³.</param>
    /// <param name="price">Price of one kit, 0 to 10⁹.</param>
    /// <exception cref="ArgumentException"><paramref name="item"/> is no identity: empty, too long, or with a '/'.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public MaterialPrice(string item, Volume size, decimal price)
    {
        Item = Guard.Id(item, nameof(item));
        this.size = Guard.Within(size, Bounds.Between(1e-6, 1, Measure.Capacity), nameof(size));
        Price = Money.Amount(price, nameof(price));
    }

    /// <summary>Id of the material.</summary>
    public string Item { get; }

    /// <summary>Usable volume of the kit.</summary>
    public Volume Size => Volume.FromCubicMeters(size);

    /// <summary>Price of one kit.</summary>
    public decimal Price { get; }

    internal double CubicMeters => size;

    /// <summary>Size in millilitres to twelve figures: one size, whatever unit it was given in.</summary>
    internal string SizeKey => Figures.Significant(size * 1e6, 12);

    /// <summary>Item, size and price.</summary>
    /// <returns>Text such as <c>acrylic-urethane-topcoat, 1.1829 L: 78.00</c>.</returns>
    public override string ToString() => Item + ", " + Measure.Capacity.Format(size) + ": " + Figures.Fixed((double)Price, 2);
}
