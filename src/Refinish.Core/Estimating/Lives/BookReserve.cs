using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>
/// What to set aside for a whole book of jobs under warranty so that it suffices with a chosen confidence. The distribution of the cost is
/// added up exactly, job by job (Poisson-binomial), and beside it stands the normal approximation by name.
/// </summary>
/// <remarks>
/// Each job claims at most once and independently of the others. A bad drum or a bad month makes many fail together: then this is too low,
/// and <see cref="WeibullLife.WithHazardRatio"/> on the jobs concerned is the way to see by how much. Not discounted. Costs are counted on
/// a grid of their greatest common divisor; if that takes more than 20 000 cells, on a coarser grid with every cost rounded up, see
/// <see cref="IsExact"/>.
/// </remarks>
/// <example><code>
/// WarrantyJob tubs = new() { Name = "tubs", Life = new WeibullLife(1.8, 14), AgeYears = 0, TermYears = 5, CostPerClaim = 260m, ClaimProbability = Ratio.FromPercent(80), Count = 200 };
/// BookReserve book = new([tubs], Ratio.FromPercent(90), Currency.Of("USD"));
/// decimal amount = book.Reserve;   // 7540: 29 claims of 260; 23.2 are to be expected
/// </code></example>
public sealed record BookReserve
{
    private const int MostCells = 20_000;

    private static readonly Source Conditional =
        Source.Derived("share of those good today that fails within what is left of the term, times the chance of a claim");

    private static readonly Source Sums = Source.Derived("means and variances of independent claims add up");
    private static readonly Source Approximation = Source.Derived("normal approximation of the sum");

    private readonly double confidence;
    private readonly double[] claims;
    private readonly double[] costs;
    private readonly decimal cell;
    private readonly Measure money;

    /// <summary>Adds up a book.</summary>
    /// <param name="jobs">The jobs, at least one and together at most 20 000.</param>
    /// <param name="confidence">Chance that the reserve suffices, 50 to less than 100 %.</param>
    /// <param name="currency">The currency; the cost of a claim has no more decimals than it.</param>
    /// <exception cref="ArgumentException">The list is empty or holds an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// There are too many jobs or <paramref name="confidence"/> is outside its range.
    /// </exception>
    public BookReserve(IReadOnlyList<WarrantyJob> jobs, Ratio confidence, Currency currency)
    {
        Currency = Guard.NotNull(currency);
        money = Measure.Money(currency);
        Jobs = Guard.List(jobs, 1);
        long count = Jobs.Sum(job => (long)job.Count);
        Guard.Rule(count <= 20_000, nameof(jobs), count, Measure.Number, "at most 20000 jobs");
        foreach (WarrantyJob job in Jobs)
        {
            Money.Fits(job.CostPerClaim, currency, nameof(jobs), "costs");
        }

        this.confidence = Guard.Within(confidence, Bounds.Below(0.5, 1, Measure.Percent));
        claims = AddUp(_ => 1);
        decimal exact = (decimal)Jobs.Select(job => new BigInteger(job.CostPerClaim / currency.SmallestAmount))
            .Aggregate(BigInteger.Zero, BigInteger.GreatestCommonDivisor) * currency.SmallestAmount;
        decimal total = Jobs.Sum(job => job.Count * job.CostPerClaim);
        IsExact = exact == 0 || total / exact <= MostCells;
        cell = exact == 0 ? currency.SmallestAmount : IsExact ? exact : currency.RoundUp(total / MostCells);
        costs = AddUp(job => (int)Currency.CoinsUp(job.CostPerClaim, cell));
    }

    /// <summary>The jobs.</summary>
    public IReadOnlyList<WarrantyJob> Jobs { get; }

    /// <summary>The currency.</summary>
    public Currency Currency { get; }

    /// <summary>Chance that the reserve suffices.</summary>
    public Ratio Confidence => Ratio.FromDecimalFractions(confidence);

    /// <summary>Whether every cost lies on the grid. If not, costs were rounded up, so that the reserve errs to the high side.</summary>
    public bool IsExact { get; }

    /// <summary>Claims to expect.</summary>
    public double ExpectedClaims => Expected().Value;

    /// <summary>Number of claims that is not exceeded with the confidence.</summary>
    public int Claims => Quantile(claims);

    /// <summary>Cost to expect, rounded to the currency.</summary>
    public decimal ExpectedCost => MeanRounded().Value;

    /// <summary>Standard deviation of the cost, rounded to the currency.</summary>
    public decimal CostDeviation => DeviationRounded().Value;

    /// <summary>The least amount that suffices with the confidence, from the distribution itself.</summary>
    public decimal Reserve => Quantile(costs) * cell;

    /// <summary>
    /// The same by the normal approximation, mean + z · standard deviation, rounded to the currency: too low where claims are few.
    /// </summary>
    public decimal NormalReserve => Normal().Value;

    /// <summary>The chance that claims cost more than an amount.</summary>
    /// <param name="amount">The amount, at least 0.</param>
    /// <returns>The chance; on a coarse grid an upper bound.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="amount"/> is negative or too large.</exception>
    public Ratio ChanceOfMoreThan(decimal amount)
    {
        decimal last = Currency.CoinsDown(Money.Amount(amount, nameof(amount)), cell);
        double more = 0;
        for (int i = costs.Length - 1; i > last; i--)
        {
            more += costs[i];
        }

        return Ratio.FromDecimalFractions(more);
    }

    /// <summary>
    /// How expectation, spread and the normal approximation follow. The exact reserve is a sum over all outcomes and has no formula to
    /// write out.
    /// </summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of(
        "Reserve for a book of jobs",
        Expected,
        Mean,
        Deviation,
        t => MeanRounded(t).ToNum(),
        t => DeviationRounded(t).ToNum(),
        t => Normal(t).ToNum());

    /// <summary>Reserve and confidence.</summary>
    /// <returns>Text such as <c>7540.00 USD suffices with 90 %; 6034.24 USD is to be expected</c>.</returns>
    public override string ToString() =>
        Currency.Text(Reserve) + " suffices with " + Measure.Percent.Format(confidence) + "; " + Currency.Text(ExpectedCost)
            + " is to be expected";

    /// <summary>Whether jobs and confidence are the same; everything else follows from them.</summary>
    /// <param name="other">The reserve to compare with.</param>
    /// <returns><see langword="true"/> when they are alike.</returns>
    public bool Equals(BookReserve? other) => other is not null && Jobs.Equals(other.Jobs) && confidence.Equals(other.confidence);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((Jobs.GetHashCode() * 31) + confidence.GetHashCode());

    private Num Chance(int i, Trace? t) => t is null
        ? Jobs[i].ClaimOf()
        : t.Step("chance of a claim, " + Jobs[i].Name, "p_" + Figures.Fixed(i + 1, 0), Measure.Percent, Conditional, Jobs[i].ClaimOf(t));

    private Num Expected(Trace? t = null) =>
        t.Step("claims to expect", "n_c", Measure.Number, Sums, Num.Sum(Jobs.Count, (Book: this, t), static (of, i) => of.Book.Of(i,
            of.t)));

    private Num Mean(Trace? t = null) =>
        t.Step("mean cost", "µ", money, Sums, Num.Sum(
        Jobs.Count, (Book: this, t), static (of, i) => of.Book.Of(i, of.t) * of.Book.Cost(i, of.t)));

    private Num Deviation(Trace? t = null) => t.Step("standard deviation of the cost", "σ", money, Sums, Num.Sqrt(
        Num.Sum(Jobs.Count, (Book: this, t), static (of, i) =>
            of.Book.Of(i, of.t) * (1 - of.Book.Chance(i, of.t)) * Num.Square(of.Book.Cost(i, of.t)))));

    private Amount MeanRounded(Trace? t = null) => t.Step("cost to expect", "Q_µ", money, Sums, Money.Rounded(Mean(t), Currency));

    private Amount DeviationRounded(Trace? t = null) =>
        t.Step("standard deviation, rounded", "Q_σ", money, Sums, Money.Rounded(Deviation(t), Currency));

    private Amount Normal(Trace? t = null) => t.Step("reserve by the normal approximation", "Q_z", money, Approximation,
        Money.Rounded(Mean(t) + (t.Given("z", Distribution.ScoreOf(confidence), Measure.Number) * Deviation(t)), Currency));

    // Claims to expect of jobs alike.
    private Num Of(int i, Trace? t) => t.Given("n", Jobs[i].Count, Measure.Number) * Chance(i, t);

    private Num Cost(int i, Trace? t) => t.Given("c", (double)Jobs[i].CostPerClaim, money);

    // The distribution of the sum of what each job adds with its chance, cell by cell.
    private double[] AddUp(Func<WarrantyJob, int> cells)
    {
        double[] chances = new double[Jobs.Sum(job => job.Count * cells(job)) + 1];
        chances[0] = 1;
        int top = 0;
        foreach (WarrantyJob job in Jobs)
        {
            int step = cells(job);
            double p = job.Chance;
            for (int n = 0; n < job.Count && step > 0 && p > 0; n++)
            {
                top += step;
                for (int i = top; i >= 0; i--)
                {
                    chances[i] = (chances[i] * (1 - p)) + (i >= step ? chances[i - step] * p : 0);
                }
            }
        }

        return chances;
    }

    private int Quantile(double[] chances)
    {
        double sum = 0;
        for (int i = 0; i < chances.Length; i++)
        {
            sum += chances[i];
            if (sum >= confidence)
            {
                return i;
            }
        }

        return chances.Length - 1;
    }
}
