using System;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>What one graduation misread does to the ratio and the index of a cup, and how large a cup has to be for it not to matter.</summary>
/// <remarks>
/// The first line is read one graduation g too low or too high and the second line right, so that what base lacks is filled up with hardener:
/// (V_B ± g)/(V_A ∓ g) against V_B/V_A. Smallest cup for a tolerance τ: V = (1 + R)·g·(1/f_B + (1 + τ)/f_A)/τ. Source: algebra.
/// </remarks>
/// <example><code>
/// PouredMix cup = new(GenericCatalogue.AcrylicUrethaneTopcoat, Volume.FromMilliliters(550), Ratio.FromPercent(10));
/// CupReading reading = new(cup, Volume.FromMilliliters(5));
/// double worst = reading.DeviationHigh.Percent;   // 6.3 % too much hardener
/// </code></example>
public sealed record CupReading
{
    private static readonly Source Misread = Source.Derived("one graduation misread at the first line, the second read right");

    private readonly double graduation;

    /// <summary>Looks at a cup.</summary>
    /// <param name="cup">The cup of a two-part product.</param>
    /// <param name="graduation">Its graduation, more than 0 and less than either part.</param>
    /// <exception cref="ArgumentException">The product comes in one part.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="graduation"/> is outside its range.</exception>
    public CupReading(PouredMix cup, Volume graduation)
    {
        Cup = Guard.NotNull(cup, nameof(cup));
        if (cup.Product.Hardener is null)
        {
            throw new ArgumentException("cup holds a product in one part; there is no ratio to be off.", nameof(cup));
        }

        this.graduation = Guard.Within(graduation, Bounds.Positive(Measure.Liquid), nameof(graduation));
        double smaller = Math.Min(A, B);
        Guard.Rule(this.graduation < smaller, nameof(graduation), this.graduation, Measure.Liquid, "less than either part, ", smaller);
    }

    /// <summary>The cup.</summary>
    public PouredMix Cup { get; }

    /// <summary>Its graduation.</summary>
    public Volume Graduation => Volume.FromCubicMeters(graduation);

    /// <summary>Deviation of the ratio with hardener too much.</summary>
    public Ratio DeviationHigh => Ratio.FromDecimalFractions(High);

    /// <summary>Deviation of the ratio with hardener short; negative.</summary>
    public Ratio DeviationLow => Ratio.FromDecimalFractions(Low);

    /// <summary>Reactive groups of the hardener per group of the base, with hardener too much; <see langword="null"/> when the cans do not state their equivalents.</summary>
    public double? IndexHigh => OffRatio.IndexAtStatedRatio(Cup.Product) * (1 + High);

    /// <summary>The same with hardener short.</summary>
    public double? IndexLow => OffRatio.IndexAtStatedRatio(Cup.Product) * (1 + Low);

    /// <summary>The larger deviation against the data sheet's tolerance; it cannot be judged when none is stated.</summary>
    public LimitComparison Comparison => new(
        "ratio of hardener to base with one graduation misread", High, Tolerance, LimitSense.AtMost, Measure.Percent, Cup.Product.Source,
        High > Tolerance ? "Weigh instead, take a finer cup, or mix at least " + Measure.Liquid.Format(SmallestTotal!.Value.CubicMeters, DisplayUnits.Si, 3) + "." : null);

    /// <summary>Smallest reduced volume at which a graduation misread stays within the tolerance; <see langword="null"/> when none is stated.</summary>
    public Volume? SmallestTotal => Tolerance is double tolerance ? Volume.FromCubicMeters(Smallest(tolerance)) : null;

    private double? Tolerance => Cup.Product.RatioTolerance?.DecimalFractions;

    private double A => Cup.BaseVolume.CubicMeters;

    private double B => Cup.HardenerVolume.CubicMeters;

    private double High => ((B + graduation) / (A - graduation) / (B / A)) - 1;

    private double Low => ((B - graduation) / (A + graduation) / (B / A)) - 1;

    /// <summary>How the deviations follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression a = Expression.Quantity("V_A", A, Measure.Liquid);
        Expression b = Expression.Quantity("V_B", B, Measure.Liquid);
        Expression g = Expression.Quantity("g", graduation, Measure.Liquid);
        WorkingStep high = new("hardener too much", "δ_high", ((b + g) / (a - g) / (b / a)) - 1, High, Measure.Percent, Misread);
        WorkingStep low = new("hardener short", "δ_low", ((b - g) / (a + g) / (b / a)) - 1, Low, Measure.Percent, Misread);
        global::System.Collections.Generic.List<WorkingStep> steps = [high, low];
        if (OffRatio.IndexAtStatedRatio(Cup.Product) is double index)
        {
            WorkingStep stated = OffRatio.IndexStep(Cup.Product, index);
            steps.Add(stated);
            steps.Add(new("index, hardener too much", "I_high", stated.Result() * (1 + high.Result()), index * (1 + High), Measure.Number, Misread));
            steps.Add(new("index, hardener short", "I_low", stated.Result() * (1 + low.Result()), index * (1 + Low), Measure.Number, Misread));
        }

        if (Tolerance is double tolerance)
        {
            Expression t = Expression.Quantity("τ", tolerance, Measure.Percent);
            Expression fa = Expression.Quantity("f_A", Cup.Product.MixRatio.BaseFraction.DecimalFractions, Measure.Percent);
            Expression fb = Expression.Quantity("f_B", Cup.Product.MixRatio.HardenerFraction.DecimalFractions, Measure.Percent);
            Expression r = Expression.Quantity("R", Cup.Reducer.DecimalFractions, Measure.Percent);
            steps.Add(new("smallest cup for the tolerance", "V_min", (1 + r) * g * ((1 / fb) + ((1 + t) / fa)) / t, Smallest(tolerance), Measure.Liquid, Misread));
        }

        return new Workings("One graduation misread", steps);
    }

    /// <summary>The larger deviation in one line.</summary>
    /// <returns>Text such as <c>6.3 % off when 5 mL is misread</c>.</returns>
    public override string ToString() => Measure.Percent.Format(High, DisplayUnits.Si, 3) + " off when " + Measure.Liquid.Format(graduation) + " is misread";

    private double Smallest(double tolerance) =>
        (1 + Cup.Reducer.DecimalFractions) * graduation
        * ((1 / Cup.Product.MixRatio.HardenerFraction.DecimalFractions) + ((1 + tolerance) / Cup.Product.MixRatio.BaseFraction.DecimalFractions)) / tolerance;
}
