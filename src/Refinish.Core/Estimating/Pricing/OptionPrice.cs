using System;
using System.Collections.Generic;

namespace Refinish.Estimating;

/// <summary>An extra that the customer can choose: slip-resistant floor, colour change, drain trim, hardware.</summary>
/// <example><code>
/// // Sold at 75, and at the margin of the job.
/// OptionPrice floor = new() { Code = "X-10", Description = "slip-resistant floor", Unit = LineUnit.Each, Cost = 6m, Price = 75m };
/// OptionPrice trim = new() { Code = "X-30", Description = "new drain and overflow trim", Unit = LineUnit.Set, Cost = 18m };
/// </code></example>
public sealed record OptionPrice
{
    /// <summary>Code of the shop's own.</summary>
    /// <exception cref="ArgumentException">No identity: empty, too long, or with a '/'.</exception>
    public required string Code { get; init => field = Guard.Id(value); }

    /// <summary>What the customer reads.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Description { get; init => field = Guard.Named(value); }

    /// <summary>Unit of sale; not money.</summary>
    /// <exception cref="ArgumentException">Money.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Not a named unit.</exception>
    public required LineUnit Unit { get; init => field = Money.Sold(value, "sold"); }

    /// <summary>What one unit costs the shop beyond the labour and materials that the job already lists, 0 to 10¹².</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required decimal Cost { get; init => field = Money.Amount(value, nameof(Cost)); }

    /// <summary>Fixed price of one unit, 0 to 10¹²; <see langword="null"/>, sold at the margin of the job, when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public decimal? Price { get; init => field = Money.Amount(value, nameof(Price)); }

    /// <summary>What can hurt with this option; nothing known when left out.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<Caution> Cautions { get; init => field = Guard.List(value); } = ValueList<Caution>.Empty;

    /// <summary>Code and description.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Code + " " + Description;
}
