using System;
using System.Collections.Generic;

namespace Refinish.Estimating;

/// <summary>
/// Something that a job takes beside its own labour and materials: hired equipment, another trade's work, an allowance for what cannot be
/// seen yet.
/// </summary>
/// <example><code>
/// ExtraItem plumber = new("plumber", LineCategory.Subcontract, "plumber refits the waste (invented)", 1, LineUnit.Job, 140m);
/// ExtraItem rust = new("hidden-rust", LineCategory.Allowance, "rust under the overflow, settled by the hour (invented)", 1, LineUnit.Job, 60m) { UnitPrice = 60m };
/// </code></example>
public sealed record ExtraItem
{
    /// <summary>Makes an entry.</summary>
    /// <param name="id">Identity, unique within the job.</param>
    /// <param name="category">Equipment, subcontract, allowance, material, consumables, travel or waste.</param>
    /// <param name="description">What the customer may read.</param>
    /// <param name="quantity">How many of <paramref name="unit"/>, more than 0 and at most 10⁹.</param>
    /// <param name="unit">What is counted; not money.</param>
    /// <param name="rate">What one unit costs the shop, 0 to 10⁹.</param>
    /// <exception cref="ArgumentException">
    /// <paramref name="id"/> is no identity, <paramref name="description"/> is empty, or <paramref name="category"/> or
    /// <paramref name="unit"/> is one that nobody can buy.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or an enumeration has no such value.</exception>
    public ExtraItem(string id, LineCategory category, string description, decimal quantity, LineUnit unit, decimal rate)
    {
        Id = Guard.Id(id);
        Category = Guard.Defined(category) is LineCategory.Equipment or LineCategory.Subcontract or LineCategory.Allowance
            or LineCategory.Material or LineCategory.Consumables or LineCategory.Travel or LineCategory.Waste
            ? category
            : throw new ArgumentException(
                "category is " + category.ToString("G")
                    + "; allowed: Equipment, Subcontract, Allowance, Material, Consumables, Travel and Waste.", nameof(category));
        Description = Guard.Named(description);
        Quantity = Money.Amount(quantity, nameof(quantity), zeroAllowed: false);
        Unit = Guard.Defined(unit) != LineUnit.Money
            ? unit
            : throw new ArgumentException("unit is Money; allowed: a unit of what is bought.", nameof(unit));
        Rate = Money.Amount(rate, nameof(rate));
    }

    /// <summary>Identity, unique within the job.</summary>
    public string Id { get; }

    /// <summary>What it is for.</summary>
    public LineCategory Category { get; }

    /// <summary>What the customer may read.</summary>
    public string Description { get; }

    /// <summary>How many units.</summary>
    public decimal Quantity { get; }

    /// <summary>What is counted.</summary>
    public LineUnit Unit { get; }

    /// <summary>What one unit costs the shop.</summary>
    public decimal Rate { get; }

    /// <summary>Fixed price of one unit; <see langword="null"/>, sold at the margin of the job, when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public decimal? UnitPrice { get; init => field = Money.Amount(value, nameof(UnitPrice)); }

    /// <summary>Id of the fixture that it is for; <see langword="null"/>, the job as a whole, when left out.</summary>
    /// <exception cref="ArgumentException">No identity: empty, too long, or with a '/'.</exception>
    public string? Fixture { get; init => field = value is null ? null : Guard.Id(value); }

    /// <summary>Id of the room that it is for; <see langword="null"/>, the job as a whole, when left out.</summary>
    /// <exception cref="ArgumentException">No identity: empty, too long, or with a '/'.</exception>
    public string? Room { get; init => field = value is null ? null : Guard.Id(value); }

    /// <summary>What can hurt with it; nothing known when left out.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<Caution> Cautions { get; init => field = Guard.List(value); } = ValueList<Caution>.Empty;

    /// <summary>Description and quantity.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Figures.Significant((double)Quantity) + " " + Unit.Symbol() + " " + Description;
}
