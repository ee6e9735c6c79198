using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>What is left of a product from an earlier job: cans opened at a known time and closed again.</summary>
/// <example><code>
/// OpenedKit left = new(
///     GenericCatalogue.EpoxyPrimer,
///     [new("epoxy-primer-base", Volume.FromMilliliters(300)), new("epoxy-primer-hardener", Volume.FromMilliliters(200))],
///     new DateTimeOffset(2027, 1, 10, 8, 0, 0, TimeSpan.Zero));
/// double usable = left.Usable.Milliliters;   // 450: base is the scarcer can
/// </code></example>
public sealed record OpenedKit
{
    /// <summary>Makes a leftover.</summary>
    /// <param name="product">The product; its cans state how long they keep once opened.</param>
    /// <param name="left">What is left of each part, each once; 0 is a volume.</param>
    /// <param name="opened">When the first of the cans was opened.</param>
    /// <exception cref="ArgumentException"><paramref name="left"/> does not hold each part of the product once.</exception>
    public OpenedKit(CoatingProduct product, IEnumerable<PartVolume> left, DateTimeOffset opened)
    {
        Product = Guard.NotNull(product);
        Left = PartList.Of(product, left, nameof(left));
        Opened = opened;
    }

    /// <summary>The product.</summary>
    public CoatingProduct Product { get; }

    /// <summary>What is left, in the order of the product's parts.</summary>
    public IReadOnlyList<PartVolume> Left { get; }

    /// <summary>When the first of the cans was opened.</summary>
    public DateTimeOffset Opened { get; }

    /// <summary>Mixed product that can be made of it at the stated ratio: the scarcest can decides.</summary>
    public Volume Usable => Volume.FromCubicMeters(Left.Select((part, i) => part.Volume.CubicMeters / Product.ShareOf(i)).Min());

    /// <summary>How long it keeps once opened: the shortest of the cans; <see langword="null"/> when one does not say.</summary>
    public TimeSpan? ShelfLife => Product.Parts.Any(part => part.Component.ShelfLifeOpened is null)
        ? null
        : Product.Parts.Min(part => part.Component.ShelfLifeOpened);

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
