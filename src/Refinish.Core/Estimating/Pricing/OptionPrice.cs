using System;
using System.Collections.Generic;

namespace Refinish.Estimating;

/// <summary>An extra that the customer can choose: slip-resistant floor, colour change, drain trim, hardware.</summary>
/// <example><code>
/// OptionPrice floor = new("X-10", "slip-resistant floor", LineUnit.Each, 6m, 75m);   // sold at 75
/// OptionPrice trim = new("X-30", "new drain and overflow trim", LineUnit.Set, 18m);  // sold at the margin of the job
/// </code></example>
public sealed record OptionPrice
{
    /// <summary>Makes an option that is sold at the margin of the job.</summary>
    /// <param name="code">Code of the shop's own.</param>
    /// <param name="description">What the customer reads.</param>
    /// <param name="unit">Unit of sale; not money.</param>
    /// <param name="cost">What one unit costs the shop beyond the labour and materials that the job already lists, 0 to 10⁹.</param>
    /// <exception cref="ArgumentException">
    /// A text is empty, <paramref name="code"/> is no identity, or <paramref name="unit"/> is money.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="cost"/> is outside its range.</exception>
    public OptionPrice(string code, string description, LineUnit unit, decimal cost) : this(code, description, unit, cost, null)
    {
    }

    /// <summary>Makes an option with a fixed price.</summary>
    /// <param name="code">Code of the shop's own.</param>
    /// <param name="description">What the customer reads.</param>
    /// <param name="unit">Unit of sale; not money.</param>
    /// <param name="cost">What one unit costs the shop beyond the labour and materials that the job already lists, 0 to 10⁹.</param>
    /// <param name="price">Fixed price of one unit, 0 to 10⁹; <see langword="null"/> when it is sold at the margin of the job.</param>
    /// <exception cref="ArgumentException">
    /// A text is empty, <paramref name="code"/> is no identity, or <paramref name="unit"/> is money.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">An amount is outside its range.</exception>
    public OptionPrice(string code, string description, LineUnit unit, decimal cost, decimal? price)
    {
        Code = Guard.Id(code);
        Description = Guard.Named(description);
        Unit = Guard.Defined(unit) != LineUnit.Money
            ? unit
            : throw new ArgumentException("unit is Money; allowed: a unit of what is sold.", nameof(unit));
        Cost = Money.Amount(cost, nameof(cost));
        Price = Money.Amount(price, nameof(price));
    }

    /// <summary>Code of the shop's own.</summary>
    public string Code { get; }

    /// <summary>What the customer reads.</summary>
    public string Description { get; }

    /// <summary>Unit of sale.</summary>
    public LineUnit Unit { get; }

    /// <summary>What one unit costs the shop.</summary>
    public decimal Cost { get; }

    /// <summary>Fixed price of one unit; <see langword="null"/> when it is sold at the margin of the job.</summary>
    public decimal? Price { get; }

    /// <summary>What can hurt with this option; nothing known when left out.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<Caution> Cautions { get; init => field = Guard.List(value); } = ValueList<Caution>.Empty;

    /// <summary>Code and description.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Code + " " + Description;
}
