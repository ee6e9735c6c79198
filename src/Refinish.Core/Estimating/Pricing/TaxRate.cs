using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>One rate of tax and what it is charged on. Which lines are taxable is for a tax adviser and the local law.</summary>
/// <example><code>
/// TaxRate goods = new()
/// {
///     Code = "state", Name = "state sales tax", Rate = Ratio.FromPercent(6.25),
///     Categories = [LineCategory.Material, LineCategory.Consumables],   // labour is not taxed here
/// };
/// TaxRate vat = new() { Code = "vat", Name = "value added tax", Rate = Ratio.FromPercent(19) };  // on everything
/// </code></example>
public sealed record TaxRate
{
    /// <summary>Code of the shop's own, unique within its price book.</summary>
    /// <exception cref="ArgumentException">No identity: empty, too long, or with a '/'.</exception>
    public required string Code { get; init => field = Guard.Id(value); }

    /// <summary>What the customer reads.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>Tax as a share of the net price, 0 to 100 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio Rate
    {
        get => Ratio.FromDecimalFractions((double)Fraction);
        init => Fraction = Money.Fraction(value, Bounds.NotNegative(Measure.Percent, 1), nameof(Rate));
    }

    /// <summary>The categories of lines that are taxed; <see langword="null"/>, all that are sold, when left out.</summary>
    /// <exception cref="ArgumentException">
    /// The list is empty, or names a category that is never sold: tax, discount, or what other lines carry.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">Not a named category.</exception>
    public IReadOnlyList<LineCategory>? Categories
    {
        get;
        init
        {
            foreach (LineCategory category in value ?? [])
            {
                Guard.Defined(category, nameof(Categories));
                if (category is LineCategory.Tax or LineCategory.Discount or LineCategory.Overhead or LineCategory.Warranty)
                {
                    throw new ArgumentException(
                        "Categories names " + category.ToString("G")
                            + ", which is never taxed by itself: tax and discount are no goods, overhead and warranty are carried by the other lines.",
                        nameof(Categories));
                }
            }

            field = value is null ? null
                : value.Count > 0 ? new ValueList<LineCategory>(value.Distinct())
                : throw new ArgumentException("Categories is empty, so that nothing would be taxed; leave it out to tax everything.",
                    nameof(Categories));
        }
    }

    internal decimal Fraction { get; private init; }

    internal bool AppliesTo(LineCategory category) => Categories is null || Categories.Contains(category);

    /// <summary>Name and rate.</summary>
    /// <returns>Text such as <c>value added tax, 19 %</c>.</returns>
    public override string ToString() => Name + ", " + Measure.Percent.Format((double)Fraction);
}
