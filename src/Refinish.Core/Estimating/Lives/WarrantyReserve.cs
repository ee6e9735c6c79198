using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>
/// What to set aside for warranty claims on one job: reserve = F(W) · p · c, with F(W) the share that fails within the term, p the chance
/// that a failure becomes a claim and c the cost of a claim. Discounted, each claim counts at its own date: p c ∫ f(t) (1 + r)^(−t) dt.
/// </summary>
/// <remarks>
/// The first failure of each job only; a mended job that fails again adds little within a short term and is left out. Lifetimes that are a
/// mixture, such as a few badly prepared jobs among many good ones, are given as shares. It is a mean: a book of few jobs can cost far
/// more, so it is no measure of what may happen at worst. The integral is taken by Gauss–Legendre quadrature after t = T z^k, which is
/// smooth for every shape.
/// </remarks>
/// <example><code>
/// WarrantyReserve reserve = new(new WeibullLife(1.8, 14), 5, 260m, Ratio.FromPercent(80), Currency.Of("USD"), Ratio.FromPercent(5));
/// decimal amount = reserve.Reserve;   // 30.17 = 14.51 % × 80 % × 260
/// </code></example>
public sealed record WarrantyReserve
{
    private static readonly Source Handbook = Source.Published("MIL-HDBK-338B", "5.3.6");
    private static readonly Source Mean = Source.Derived("expected value over first failures");
    private static readonly Source Interest = Source.Derived("continuous form of the yearly rate");
    private static readonly Source Present =
        Source.Derived("integral of the density times the discount factor, T the term or the age by which nothing is left");

    private readonly double claimed;
    private readonly double rate;

    /// <summary>Reckons the reserve for one lifetime.</summary>
    /// <param name="life">The lifetime of the work.</param>
    /// <param name="termYears">Warranty term, 0 to 50 years.</param>
    /// <param name="costPerClaim">Cost of one claim, at least 0.</param>
    /// <param name="claimProbability">Chance that a failure within the term becomes a claim, 0 to 100 %.</param>
    /// <param name="currency">The currency of the cost.</param>
    /// <param name="discountRate">Interest per year, 0 to 100 %; 0 for none.</param>
    /// <exception cref="ArgumentNullException"><paramref name="life"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public WarrantyReserve(WeibullLife life, double termYears, decimal costPerClaim, Ratio claimProbability, Currency currency,
        Ratio discountRate)
        : this([new LifeShare(Ratio.FromPercent(100), life)], termYears, costPerClaim, claimProbability, currency, discountRate)
    {
    }

    /// <summary>Reckons the reserve for a mixture of lifetimes.</summary>
    /// <param name="lives">The lifetimes with shares that add up to 100 % within 10⁻⁹.</param>
    /// <param name="termYears">Warranty term, 0 to 50 years.</param>
    /// <param name="costPerClaim">Cost of one claim, at least 0.</param>
    /// <param name="claimProbability">Chance that a failure within the term becomes a claim, 0 to 100 %.</param>
    /// <param name="currency">The currency of the cost.</param>
    /// <param name="discountRate">Interest per year, 0 to 100 %; 0 for none.</param>
    /// <exception cref="ArgumentException">The list is empty or holds an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public WarrantyReserve(IReadOnlyList<LifeShare> lives, double termYears, decimal costPerClaim, Ratio claimProbability,
        Currency currency, Ratio discountRate)
    {
        Lives = Guard.List(lives, 1);
        double shares = Lives.Sum(life => life.Share.DecimalFractions);
        Guard.Rule(Math.Abs(shares - 1) <= 1e-9, nameof(lives), shares, Measure.Percent, "shares that add up to 100 %");
        TermYears = Guard.Within(termYears, Bounds.NotNegative(Measure.Years, 50));
        Currency = Guard.NotNull(currency);
        CostPerClaim = Money.Amount(costPerClaim, nameof(costPerClaim));
        claimed = Guard.Within(claimProbability, Bounds.NotNegative(Measure.Percent, 1));
        rate = Guard.Within(discountRate, Bounds.NotNegative(Measure.Percent, 1));
    }

    /// <summary>The lifetimes with their shares.</summary>
    public IReadOnlyList<LifeShare> Lives { get; }

    /// <summary>Warranty term in years.</summary>
    public double TermYears { get; }

    /// <summary>The currency of the cost.</summary>
    public Currency Currency { get; }

    /// <summary>Cost of one claim.</summary>
    public decimal CostPerClaim { get; }

    /// <summary>Chance that a failure within the term becomes a claim.</summary>
    public Ratio ClaimProbability => Ratio.FromDecimalFractions(claimed);

    /// <summary>Interest per year.</summary>
    public Ratio DiscountRate => Ratio.FromDecimalFractions(rate);

    /// <summary>Share of jobs that fails within the term.</summary>
    public Ratio FailedWithinTerm => Ratio.FromDecimalFractions(Failed().Value);

    /// <summary>Claims to expect for one job.</summary>
    public double ExpectedClaims => Claims().Value;

    /// <summary>Reserve for one job, rounded to the currency.</summary>
    public decimal Reserve => Reserved().Value;

    /// <summary>Reserve for one job with every claim discounted from its own date, rounded to the currency.</summary>
    public decimal DiscountedReserve => Discounted().Value;

    /// <summary>How the reserve follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() =>
        Trace.Of("Warranty reserve", Failed, Claims, t => Reserved(t).ToNum(), Force, Worth, t => Discounted(t).ToNum());

    /// <summary>Term and reserve.</summary>
    /// <returns>Text such as <c>30.17 USD reserved for 5 a of warranty</c>.</returns>
    public override string ToString() => Currency.Text(Reserve) + " reserved for " + Measure.Years.Format(TermYears) + " of warranty";

    private Num Failed(Trace? t = null) => t.Step("share that fails within the term", "F", Measure.Percent, Handbook,
        Num.Sum(Lives.Count, (Reserve: this, t), static (of, i) => Share(of.Reserve.Lives[i], of.t)
            * of.Reserve.Lives[i].Life.Failed(of.t.Given("W", of.Reserve.TermYears, Measure.Years), of.t)));

    private Num Claims(Trace? t = null) => t.Step("claims to expect", "n", Measure.Number, Mean, Failed(t) * Claimed(t));

    private Amount Reserved(Trace? t = null) =>
        t.Step("reserve", "Q", Measure.Money(Currency), Mean, Money.Rounded(Claims(t) * Cost(t), Currency));

    private Num Force(Trace? t = null) =>
        t.Step("force of interest per year", "δ", Measure.Number, Interest, Num.Ln(1 + t.Given("r", rate, Measure.Percent)));

    private Num Worth(Trace? t = null) => t.Step("share that fails, each at its present worth (t = T z^k)", "F_δ", Measure.Percent, Present,
        Num.Sum(Lives.Count, (Reserve: this, Force: Force(t), t), static (of, i) => Share(of.Reserve.Lives[i], of.t)
            * of.Reserve.Lives[i].Life.Discounted(of.Reserve.TermYears, of.Force, of.t)));

    private Amount Discounted(Trace? t = null) =>
        t.Step("discounted reserve", "Q_δ", Measure.Money(Currency), Mean, Money.Rounded(Worth(t) * Claimed(t) * Cost(t), Currency));

    private Num Claimed(Trace? t) => t.Given("p", claimed, Measure.Percent);

    private Num Cost(Trace? t) => t.Given("c", (double)CostPerClaim, Measure.Money(Currency));

    private static Num Share(LifeShare life, Trace? t) => t.Given("a", life.Share.DecimalFractions, Measure.Percent);
}
