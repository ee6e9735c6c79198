using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>
/// One way to have a good surface again: everything it costs once and every year, how long it lasts, and how long the bathroom is out of
/// use.
/// </summary>
public sealed record RenewalOption
{
    internal static readonly Bounds Lives = Bounds.Between(0.001, 200, Measure.Years);

    /// <summary>What it is called, such as "refinishing".</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>Everything it costs once, at least one part.</summary>
    /// <exception cref="ArgumentException">The list is empty or holds an empty entry.</exception>
    public required IReadOnlyList<CostPart> Parts { get; init => field = Guard.List(value, 1); }

    /// <summary>Service life, 0.001 to 200 years.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double LifeYears { get; init => field = Guard.Within(value, Lives); }

    /// <summary>Days out of use, 0 to 73 050; none when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int DaysOutOfUse { get; init => field = Guard.Count(value, 0, 73_050); }

    /// <summary>
    /// What its care costs every year of its life, such as a cleaner that it needs or repairs of its finish; 0 to 10¹², nothing when left
    /// out.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public decimal YearlyCost { get; init => field = Money.Amount(value, nameof(YearlyCost)); }

    /// <summary>Name, cost and life.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Name + ": " + Figures.Fixed((double)Parts.Sum(part => part.Amount), 2) + " for " + Measure.Years.Format(LifeYears);
}
