using System.Globalization;

namespace Refinish.Estimating;

/// <summary>What is bought of a material at one price: so many kits of one size, or a loose amount.</summary>
public sealed record PurchaseLine
{
    internal PurchaseLine(MaterialPrice price, decimal quantity, string name)
    {
        Price = price;
        Quantity = quantity;
        string unit = price.Unit == LineUnit.Each ? "piece" : price.Unit.Symbol();
        Description = name + (price.IsLoose ? ", by the " + unit : ", kit of " + price.Size.Text(4));
    }

    /// <summary>The price of one kit or unit.</summary>
    public MaterialPrice Price { get; }

    /// <summary>
    /// What tells the line from others of its material: the size of the kit, such as <c>750</c> for one of 750 mL, <c>1000-g</c>,
    /// <c>50-m2</c>, <c>24-m</c> or <c>100-each</c>, or the loose unit, such as <c>litre</c>.
    /// </summary>
    public string Key => Price.Key;

    /// <summary>Material and size, or unit.</summary>
    public string Description { get; }

    /// <summary>Number of kits or pieces, or the loose amount in ten-thousandths of its unit, rounded up; more than 0.</summary>
    public decimal Quantity { get; }

    /// <summary><see cref="LineUnit.Kit"/>, or the loose unit.</summary>
    public LineUnit Unit => Price.Unit;

    /// <summary>Money for one kit or unit.</summary>
    public decimal Rate => Price.Price;

    /// <summary>Quantity × rate, exact.</summary>
    public decimal Cost => Quantity * Rate;

    /// <summary>Quantity, price of each, and what the line costs.</summary>
    /// <returns>Text such as <c>3.25 m² × masking-film, per m², at 0.35: 1.1375</c>.</returns>
    public override string ToString() =>
        Quantity.ToString("G29", CultureInfo.InvariantCulture) + (Price.IsCounted ? string.Empty : " " + Unit.Symbol()) + " × "
        + Price.Goods + ", at " + MaterialPrice.Written(Rate) + ": " + MaterialPrice.Written(Cost);
}
