using System;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>A job under warranty in the books, or several alike: how old it is, how long it is covered, what a claim would cost.</summary>
/// <example><code>
/// WarrantyJob lastYear = new() { Name = "hotel, 40 tubs", Life = new WeibullLife(1.8, 14), AgeYears = 1, TermYears = 5, CostPerClaim = 260m, ClaimProbability = Ratio.FromPercent(80), Count = 40 };
/// </code></example>
public sealed record WarrantyJob
{
    private readonly double claimed;

    /// <summary>What it is called.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>Lifetime of the work.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required WeibullLife Life { get; init => field = Guard.NotNull(value); }

    /// <summary>Age today, 0 to 50 years; still good.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double AgeYears { get; init => field = Guard.Within(value, Bounds.NotNegative(Measure.Years, 50)); }

    /// <summary>Warranty term from the day of the work, 0 to 50 years; nothing is left to claim once the age has passed it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double TermYears { get; init => field = Guard.Within(value, Bounds.NotNegative(Measure.Years, 50)); }

    /// <summary>Cost of one claim, at least 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public required decimal CostPerClaim { get; init => field = Money.Amount(value, nameof(CostPerClaim)); }

    /// <summary>Chance that a failure within the term becomes a claim, 0 to 100 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio ClaimProbability
    {
        get => Ratio.FromDecimalFractions(claimed);
        init => claimed = Guard.Within(value, Bounds.NotNegative(Measure.Percent, 1));
    }

    /// <summary>Jobs alike, 1 to 20 000; one when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int Count { get; init => field = Guard.Count(value, 1, 20_000); } = 1;

    /// <summary>Chance of a claim before the term ends, given that it is good today.</summary>
    public Ratio ChanceOfClaim => Ratio.FromDecimalFractions(Chance);

    internal double Chance => ClaimOf().Value;

    internal Num ClaimOf(Trace? t = null) => t.Given("p", claimed, Measure.Percent)
        * Life.FailedAfter(t.Given("t", AgeYears, Measure.Years), t.Given("W_left", Left, Measure.Years), t);

    private double Left => Math.Max(0, TermYears - AgeYears);

    /// <summary>Name, number and what is left of the term.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Figures.Fixed(Count, 0) + " × " + Name + ", " + Measure.Years.Format(Left, figures: 3) + " of warranty left";
}
