using System;
using System.Collections.Generic;

namespace Refinish.Estimating;

/// <summary>
/// Something that a job takes beside its own labour and materials: hired equipment, another trade's work, an allowance for what cannot be
/// seen yet.
/// </summary>
/// <example><code>
/// ExtraItem plumber = new()
/// {
///     Id = "plumber", Category = LineCategory.Subcontract, Description = "plumber refits the waste (invented)",
///     Quantity = 1, Unit = LineUnit.Job, Rate = 140m,
/// };
/// ExtraItem rust = new()
/// {
///     Id = "hidden-rust", Category = LineCategory.Allowance,
///     Description = "rust under the overflow, settled by the hour (invented)",
///     Quantity = 1, Unit = LineUnit.Job, Rate = 60m, UnitPrice = 60m,
/// };
/// </code></example>
public sealed record ExtraItem
{
    /// <summary>Identity, unique within the job.</summary>
    /// <exception cref="ArgumentException">No identity: empty, too long, or with a '/'.</exception>
    public required string Id { get; init => field = Guard.Id(value); }

    /// <summary>What it is for: equipment, subcontract, allowance, material, consumables, travel or waste.</summary>
    /// <exception cref="ArgumentException">A category that nobody can buy.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Not a named category.</exception>
    public required LineCategory Category
    {
        get;
        init => field = Guard.Defined(value) is LineCategory.Equipment or LineCategory.Subcontract or LineCategory.Allowance
            or LineCategory.Material or LineCategory.Consumables or LineCategory.Travel or LineCategory.Waste
            ? value
            : throw new ArgumentException(
                "Category is " + value.ToString("G")
                    + "; allowed: Equipment, Subcontract, Allowance, Material, Consumables, Travel and Waste.", nameof(Category));
    }

    /// <summary>What the customer may read.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Description { get; init => field = Guard.Named(value); }

    /// <summary>How many units, more than 0 and at most 10¹².</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required decimal Quantity { get; init => field = Money.Amount(value, nameof(Quantity), zeroAllowed: false); }

    /// <summary>What is counted; not money.</summary>
    /// <exception cref="ArgumentException">Money.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Not a named unit.</exception>
    public required LineUnit Unit { get; init => field = Money.Sold(value, "bought"); }

    /// <summary>What one unit costs the shop, 0 to 10¹².</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required decimal Rate { get; init => field = Money.Amount(value, nameof(Rate)); }

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
