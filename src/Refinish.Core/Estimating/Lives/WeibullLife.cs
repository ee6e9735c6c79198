using System;
using Refinish.Numerics;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>
/// A lifetime as a Weibull distribution: the share failed by age t is F(t) = 1 − exp(−(t/η)^b), with shape b and scale η in years.
/// </summary>
/// <remarks>
/// f(t) = (b/η)(t/η)^(b−1) exp(−(t/η)^b), h(t) = (b/η)(t/η)^(b−1), mean η Γ(1 + 1/b). At t = η 63.2 % have failed.
/// A shape below 1 is early failure that wears off, 1 is chance, above 1 is wear. Formulas: MIL-HDBK-338B, 5.3.6.
/// </remarks>
/// <example><code>
/// WeibullLife coating = new(1.8, 14);
/// Ratio failed = coating.FailedBy(5);   // 14.5 %
/// </code></example>
public sealed record WeibullLife
{
    internal static readonly Bounds Ages = Bounds.NotNegative(Measure.Years, 1e6);

    private static readonly Source Handbook = Source.Published("MIL-HDBK-338B", "5.3.6");

    /// <summary>Makes a lifetime.</summary>
    /// <param name="shape">Shape b, 0.3 to 20.</param>
    /// <param name="scaleYears">Scale η in years, more than 0 and at most 10⁶.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public WeibullLife(double shape, double scaleYears)
    {
        Shape = Guard.Within(shape, Bounds.Between(0.3, 20, Measure.Number));
        ScaleYears = Guard.Within(scaleYears, Bounds.Positive(Measure.Years, 1e6));
    }

    /// <summary>Shape b.</summary>
    public double Shape { get; }

    /// <summary>Scale η in years.</summary>
    public double ScaleYears { get; }

    /// <summary>Mean life in years: η Γ(1 + 1/b).</summary>
    public double MeanYears => ScaleYears * Special.Gamma(1 + (1 / Shape));

    /// <summary>Standard deviation of the life in years: η √(Γ(1 + 2/b) − Γ(1 + 1/b)²).</summary>
    public double DeviationYears => MeanYears * Spread(Shape);

    /// <summary>Age in years by which half have failed: η (ln 2)^(1/b).</summary>
    public double MedianYears => AgeAtFailed(Ratio.FromPercent(50));

    /// <summary>The lifetime with a given mean and standard deviation.</summary>
    /// <param name="meanYears">Mean life, more than 0 and at most 10⁵ years.</param>
    /// <param name="deviationYears">Standard deviation, between 0.07 and 5 times the mean.</param>
    /// <returns>The lifetime, its shape found from the coefficient of variation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static WeibullLife FromMeanAndSpread(double meanYears, double deviationYears)
    {
        Guard.Within(meanYears, Bounds.Positive(Measure.Years, 1e5));
        Guard.Within(deviationYears, Bounds.Between(0.07 * meanYears, 5 * meanYears, Measure.Years));
        double shape = Roots.Rising(deviationYears / meanYears, static (wanted, b) => wanted - Spread(b), 0.3, 20);
        return new WeibullLife(shape, meanYears / Special.Gamma(1 + (1 / shape)));
    }

    /// <summary>Share that has failed by an age.</summary>
    /// <param name="years">Age, 0 to 10⁶ years.</param>
    /// <returns>F(t).</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="years"/> is outside its range.</exception>
    public Ratio FailedBy(double years) => Ratio.FromDecimalFractions(Failed(Guard.Within(years, Ages)).Value);

    /// <summary>Share that is still good at an age.</summary>
    /// <param name="years">Age, 0 to 10⁶ years.</param>
    /// <returns>R(t) = 1 − F(t).</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="years"/> is outside its range.</exception>
    public Ratio GoodAt(double years) => Ratio.FromDecimalFractions(Good(Guard.Within(years, Ages)).Value);

    /// <summary>Failures per year at an age, of all that were made.</summary>
    /// <param name="years">Age, more than 0 and at most 10⁶ years.</param>
    /// <returns>f(t) per year.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="years"/> is outside its range.</exception>
    public double DensityAt(double years) => HazardAt(years) * Good(years).Value;

    /// <summary>Failures per year at an age, of those that are still good.</summary>
    /// <param name="years">Age, more than 0 and at most 10⁶ years.</param>
    /// <returns>h(t) per year.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="years"/> is outside its range.</exception>
    public double HazardAt(double years) => Hazard(Guard.Within(years, Bounds.Positive(Measure.Years, 1e6))).Value;

    /// <summary>Share of those still good at an age that fails within a further time.</summary>
    /// <param name="age">Age reached, 0 to 10⁶ years.</param>
    /// <param name="further">Further time, 0 to 10⁶ years.</param>
    /// <returns>1 − R(age + further)/R(age).</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public Ratio FailedWithin(double age, double further)
    {
        Guard.Within(age, Ages);
        Guard.Within(further, Ages);
        return Ratio.FromDecimalFractions(FailedAfter(age, further).Value);
    }

    /// <summary>Age by which a given share has failed.</summary>
    /// <param name="failed">The share, 0 to less than 100 %.</param>
    /// <returns>η (−ln(1 − F))^(1/b) in years.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="failed"/> is outside its range.</exception>
    public double AgeAtFailed(Ratio failed) =>
        ScaleYears * Math.Pow(-Math.Log(1 - Guard.Within(failed, Bounds.Below(0, 1, Measure.Percent))), 1 / Shape);

    /// <summary>
    /// The lifetime when the hazard is multiplied at every age, as by worse preparation: η falls by the factor HR^(−1/b).
    /// </summary>
    /// <param name="ratio">Hazard ratio, more than 0 and at most 1000; it has to come from the caller's own records.</param>
    /// <returns>The lifetime with the same shape.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ratio"/> is outside its range.</exception>
    public WeibullLife WithHazardRatio(double ratio) =>
        new(Shape, ScaleYears * Math.Pow(Guard.Within(ratio, Bounds.Positive(Measure.Number, 1000)), -1 / Shape));

    /// <summary>
    /// Failures to expect up to an age when every failure is at once renewed as good as new, and may fail again: more than the share
    /// that has failed once.
    /// </summary>
    /// <param name="years">Age, 0 to η · 8^(1/b) years; beyond, the series behind it loses its digits.</param>
    /// <returns>Mean number of renewals M(t).</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="years"/> is outside its range.</exception>
    public double RenewalsBy(double years)
    {
        Guard.Within(years, Bounds.NotNegative(Measure.Years, ScaleYears * Math.Pow(8, 1 / Shape)));
        return WeibullKernel.Renewals(years, Shape, ScaleYears);
    }

    /// <summary>How share failed, share good and hazard at an age follow.</summary>
    /// <param name="years">Age, more than 0 and at most 10⁶ years.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="years"/> is outside its range.</exception>
    public Workings Workings(double years)
    {
        Trace t = new();
        Num age = t.Given("t", Guard.Within(years, Bounds.Positive(Measure.Years, 1e6)), Measure.Years);
        Num good = t.Step("share still good", "R", Measure.Percent, Handbook, Good(age, t));
        t.Step("share failed", "F", Measure.Percent, Handbook, Failed(age, t));
        Num hazard = t.Step("hazard per year", "h", Measure.Number, Handbook, Hazard(age, t));
        t.Step("failures per year", "f", Measure.Number, Handbook, hazard * good);
        return t.Workings("Lifetime");
    }

    /// <summary>Shape and scale.</summary>
    /// <returns>Text such as <c>Weibull, shape 1.8, scale 14 a</c>.</returns>
    public override string ToString() => "Weibull, shape " + Measure.Number.Format(Shape) + ", scale " + Measure.Years.Format(ScaleYears);

    /// <summary>F(t).</summary>
    internal Num Failed(Num age, Trace? t = null) => 1 - Num.Exp(-Cumulated(age, t));

    /// <summary>Of those still good at an age.</summary>
    internal Num FailedAfter(Num age, Num further, Trace? t = null) => 1 - Num.Exp(-(Cumulated(age + further, t) - Cumulated(age, t)));

    /// <summary>Each at its present worth, with the force of interest δ.</summary>
    internal Num Discounted(double term, Num delta, Trace? t = null) => WeibullKernel.Discounted(term, B(t), Eta(t), delta, t);

    // The coefficient of variation, √(Γ(1 + 2/b) − Γ(1 + 1/b)²)/Γ(1 + 1/b); falls as the shape rises.
    private static double Spread(double b)
    {
        double g = Special.Gamma(1 + (1 / b));
        return Math.Sqrt(Special.Gamma(1 + (2 / b)) - (g * g)) / g;
    }

    private Num Good(Num age, Trace? t = null) => Num.Exp(-Cumulated(age, t));

    private Num Hazard(Num age, Trace? t = null) => B(t) / Eta(t) * Num.Power(age / Eta(t), B(t) - 1);

    private Num Cumulated(Num age, Trace? t) => WeibullKernel.Cumulated(age, B(t), Eta(t));

    private Num B(Trace? t) => t.Given("b", Shape, Measure.Number);

    private Num Eta(Trace? t) => t.Given("η", ScaleYears, Measure.Years);
}
