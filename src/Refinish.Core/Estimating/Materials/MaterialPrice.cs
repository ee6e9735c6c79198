using System;
using System.Globalization;

namespace Refinish.Estimating;

/// <summary>
/// What a material costs: so much for a kit, which is bought whole, or so much for a unit, of which any amount is sold. Several sizes and
/// units of a material are several prices with the same item.
/// </summary>
/// <example><code>
/// MaterialPrice quart = new("acrylic-urethane-topcoat", Volume.FromUsQuarts(1.25), 78m);
/// MaterialPrice discs = new("sanding-disc", MaterialAmount.FromPieces(100), 42m);
/// MaterialPrice film = MaterialPrice.Loose("masking-film", LineUnit.SquareMetre, 0.35m);
/// </code></example>
public sealed record MaterialPrice
{
    /// <summary>Makes a price of a kit.</summary>
    /// <param name="item">Id of the product, component or material.</param>
    /// <param name="size">
    /// What the kit holds: 1 mL to 1 m³ of mixed product, base, hardener and what belongs in it together; or 1 g to 10 t, 10 cm² to 10 000
    /// m², 1 mm to 100 km, or 1 to 1 000 000 whole pieces.
    /// </param>
    /// <param name="price">Price of one kit, 0 to 10¹².</param>
    /// <exception cref="ArgumentException"><paramref name="item"/> is no identity: empty, too long, or with a '/'.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public MaterialPrice(string item, MaterialAmount size, decimal price) : this(item, size, LineUnit.Kit, price)
    {
        Guard.Within(size.Si, MaterialUnits.KitSizes(size.Dimension), nameof(size));
        Guard.Rule(
            size.Dimension != MaterialDimension.Pieces || Math.Floor(size.Si) == size.Si,
            nameof(size),
            size.Si,
            Measure.Number,
            "whole pieces");
    }

    private MaterialPrice(string item, MaterialAmount size, LineUnit unit, decimal price)
    {
        Item = Guard.Id(item);
        Size = size;
        Unit = unit;
        Price = Money.Amount(price, nameof(price));
    }

    /// <summary>Id of the material.</summary>
    public string Item { get; }

    /// <summary>What the kit holds; of a loose material one unit.</summary>
    public MaterialAmount Size { get; }

    /// <summary>What the price is for: <see cref="LineUnit.Kit"/>, or the unit that is sold loose.</summary>
    public LineUnit Unit { get; }

    /// <summary>Price of one kit or of one unit.</summary>
    public decimal Price { get; }

    /// <summary>Whether any amount of it is sold, pieces in whole numbers, rather than whole kits.</summary>
    public bool IsLoose => Unit != LineUnit.Kit;

    /// <summary>Whether it is bought in whole numbers.</summary>
    internal bool IsCounted => Unit is LineUnit.Kit or LineUnit.Each;

    /// <summary>What tells it from other prices of its item.</summary>
    internal string Key => IsLoose ? MaterialUnits.Key(Unit) : MaterialUnits.Key(Size.Dimension, Size.Si);

    /// <summary>A price of a unit of which any amount is sold; pieces are sold in whole numbers.</summary>
    /// <param name="item">Id of the product, component or material.</param>
    /// <param name="unit">A unit of volume, mass, area or length, or <see cref="LineUnit.Each"/>.</param>
    /// <param name="price">Price of one unit, 0 to 10¹².</param>
    /// <returns>The price.</returns>
    /// <exception cref="ArgumentException"><paramref name="item"/> is no identity: empty, too long, or with a '/'.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="price"/> is outside its range, or <paramref name="unit"/> is no unit of material.
    /// </exception>
    public static MaterialPrice Loose(string item, LineUnit unit, decimal price)
    {
        (MaterialDimension dimension, double si) = MaterialUnits.Of(unit, nameof(unit));
        return new MaterialPrice(item, new MaterialAmount(dimension, si), unit, price);
    }

    /// <summary>Item, size and price.</summary>
    /// <returns>Text such as <c>acrylic-urethane-topcoat, 1.1829 L: 78.00</c> or <c>masking-film, per m²: 0.35</c>.</returns>
    public override string ToString() => Goods + ": " + Written(Price);

    /// <summary>Item and size.</summary>
    internal string Goods => Item + (IsLoose ? ", per " + Unit.Symbol() : ", " + Size);

    internal static string Written(decimal amount) => amount.ToString("0.00##########", CultureInfo.InvariantCulture);
}
