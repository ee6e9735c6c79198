using System;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>One person of the crew.</summary>
/// <example><code>
/// Worker worker = new() { Id = "sprayer", Wage = 28m };
/// </code></example>
public sealed record Worker
{
    /// <summary>Identifier, unique within the crew.</summary>
    /// <exception cref="ArgumentException">Empty, longer than 100 characters, or it holds a slash.</exception>
    public required string Id { get; init => field = Guard.Id(value); }

    /// <summary>Name for job sheets; the identifier unless given.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public string Name { get => field ?? Id; init => field = Guard.Named(value); }

    /// <summary>
    /// Hourly wage before burden, in the currency of the price book, at least 0; <see langword="null"/> for the price book's labour
    /// rate.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or above 1 000 000 000.</exception>
    public decimal? Wage { get; init => field = Money.Amount(value, nameof(Wage)); }

    /// <summary>The name.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name;
}
