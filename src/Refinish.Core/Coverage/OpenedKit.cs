using System;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>What is left of a product from an earlier job: cans opened at a known time and closed again.</summary>
public sealed record OpenedKit
{
    private static readonly Bounds Volumes = Bounds.NotNegative(Measure.Capacity, 1);

    private readonly double baseLeft;
    private readonly double hardenerLeft;

    /// <summary>Makes a leftover.</summary>
    /// <param name="product">The product; its cans state how long they keep once opened.</param>
    /// <param name="baseLeft">Base left, 0 to 1000 L.</param>
    /// <param name="hardenerLeft">Hardener left, 0 to 1000 L; 0 for a one-part product.</param>
    /// <param name="opened">When the first of the cans was opened.</param>
    /// <exception cref="ArgumentOutOfRangeException">A volume is outside its range.</exception>
    public OpenedKit(CoatingProduct product, Volume baseLeft, Volume hardenerLeft, DateTimeOffset opened)
    {
        Product = Guard.NotNull(product, nameof(product));
        this.baseLeft = Guard.Within(baseLeft, Volumes, nameof(baseLeft));
        this.hardenerLeft = Guard.Within(hardenerLeft, Volumes, nameof(hardenerLeft));
        Opened = opened;
    }

    /// <summary>The product.</summary>
    public CoatingProduct Product { get; }

    /// <summary>Base left.</summary>
    public Volume BaseLeft => Volume.FromCubicMeters(baseLeft);

    /// <summary>Hardener left.</summary>
    public Volume HardenerLeft => Volume.FromCubicMeters(hardenerLeft);

    /// <summary>When the first of the cans was opened.</summary>
    public DateTimeOffset Opened { get; }

    /// <summary>Mixed product that can be made of it at the stated ratio: the scarcer can decides.</summary>
    public Volume Usable => Volume.FromCubicMeters(Product.Hardener is null
        ? baseLeft
        : Math.Min(baseLeft / Product.MixRatio.BaseFraction.DecimalFractions, hardenerLeft / Product.MixRatio.HardenerFraction.DecimalFractions));

    /// <summary>How long it keeps once opened: the shorter of the cans; <see langword="null"/> when one that is needed does not say.</summary>
    public TimeSpan? ShelfLife => (Product.Base.ShelfLifeOpened, Product.Hardener) switch
    {
        (TimeSpan a, null) => a,
        (TimeSpan a, { ShelfLifeOpened: TimeSpan b }) => a < b ? a : b,
        _ => null,
    };

    /// <summary>Its age against its shelf life; it cannot be judged when no shelf life is stated.</summary>
    /// <param name="when">The instant of use, not before it was opened.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Before it was opened.</exception>
    public LimitComparison CompareAge(DateTimeOffset when)
    {
        double age = Guard.Within((when - Opened).TotalSeconds, Bounds.NotNegative(Measure.Hours), nameof(when));
        return new(
            "age of the opened " + Product.Name, age, ShelfLife?.TotalSeconds, LimitSense.AtMost, Measure.Hours, Product.Source,
            age > (ShelfLife?.TotalSeconds ?? double.PositiveInfinity) ? "Do not use it; dispose of it as the safety data sheet says." : null);
    }

    /// <summary>The product and what can be made of it.</summary>
    /// <returns>Text such as <c>400 mL of two-part epoxy primer, opened 2027-01-10</c>.</returns>
    public override string ToString() =>
        Measure.Liquid.Format(Usable.CubicMeters, DisplayUnits.Si, 3) + " of " + Product.Name + ", opened " + Opened.UtcDateTime.ToString("yyyy-MM-dd", global::System.Globalization.CultureInfo.InvariantCulture);
}
