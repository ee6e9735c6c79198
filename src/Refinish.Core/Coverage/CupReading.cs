using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>
/// What one graduation misread does to the ratio and the index of a cup, and how large a cup has to be for it not to matter.
/// </summary>
/// <remarks>
/// One fill line between two parts is read one graduation g too low or too high and all others right, so that what the part before it lacks
/// is filled up with the part after it: (V_j ± g)/(V_i ∓ g) against V_j/V_i, for the two parts that the line divides; no other pair of
/// parts is off by more. Smallest cup for a tolerance τ: V = (1 + R)·g·(1/f_j + (1 + τ)/f_i)/τ, the largest over all lines. Source:
/// algebra.
/// </remarks>
/// <example><code>
/// PouredMix cup = new(GenericCatalogue.AcrylicUrethaneTopcoat, Volume.FromMilliliters(550), Ratio.FromPercent(10));
/// CupReading reading = new(cup, Volume.FromMilliliters(5));
/// double worst = reading.DeviationHigh.Percent;   // 6.3 % too much hardener
/// </code></example>
public sealed record CupReading
{
    private static readonly Source Misread = Source.Derived("one graduation misread at one line between two parts, the others read right");

    private readonly double graduation;

    /// <summary>Looks at a cup.</summary>
    /// <param name="cup">The cup of a product in two parts or more.</param>
    /// <param name="graduation">Its graduation, more than 0 and less than each part.</param>
    /// <exception cref="ArgumentException">The product comes in one part.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="graduation"/> is outside its range.</exception>
    public CupReading(PouredMix cup, Volume graduation)
    {
        Cup = Guard.NotNull(cup, nameof(cup));
        if (cup.Product.Parts.Count == 1)
        {
            throw new ArgumentException("cup holds a product in one part; there is no ratio to be off.", nameof(cup));
        }

        this.graduation = Guard.Within(graduation, Bounds.Positive(Measure.Liquid), nameof(graduation));
        double smallest = Enumerable.Range(0, Lines + 1).Min(VolumeOf);
        Guard.Rule(this.graduation < smallest, nameof(graduation), this.graduation, Measure.Liquid, "less than each part, ", smallest);
    }

    /// <summary>The cup.</summary>
    public PouredMix Cup { get; }

    /// <summary>Its graduation.</summary>
    public Volume Graduation => Volume.FromCubicMeters(graduation);

    /// <summary>Largest deviation of two parts' ratio with too much of the later one.</summary>
    public Ratio DeviationHigh => Ratio.FromDecimalFractions(High);

    /// <summary>Largest deviation of two parts' ratio with the later one short; negative.</summary>
    public Ratio DeviationLow => Ratio.FromDecimalFractions(Enumerable.Range(0, Lines).Min(line => Off(line, -graduation)));

    /// <summary>
    /// Groups that harden per group of the resin, the most that one misread line makes; <see langword="null"/> when the cans do not state
    /// their equivalents.
    /// </summary>
    public double? IndexHigh => Indices().Max();

    /// <summary>The same, the least that one misread line makes.</summary>
    public double? IndexLow => Indices().Min();

    /// <summary>The largest deviation against the data sheet's tolerance; it cannot be judged when none is stated.</summary>
    public LimitComparison Comparison => new(
        "ratio of two parts with one graduation misread", High, Tolerance, LimitSense.AtMost, Measure.Percent, Cup.Product.Source,
        High > Tolerance ? "Weigh instead, take a finer cup, or mix at least " + Measure.Liquid.Format(SmallestTotal!.Value.CubicMeters, DisplayUnits.Si, 3) + "." : null);

    /// <summary>
    /// Smallest reduced volume at which a graduation misread stays within the tolerance; <see langword="null"/> when none is stated.
    /// </summary>
    public Volume? SmallestTotal => Tolerance is double tolerance
        ? Volume.FromCubicMeters(Enumerable.Range(0, Lines).Max(line => Smallest(line, tolerance))) : null;

    private double? Tolerance => Cup.Product.RatioTolerance?.DecimalFractions;

    private int Lines => Cup.Product.Parts.Count - 1;

    private double High => Enumerable.Range(0, Lines).Max(line => Off(line, graduation));

    /// <summary>How the deviations follow, line by line.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        List<WorkingStep> steps = [];
        for (int line = 0; line < Lines; line++)
        {
            string before = ReactiveGroups.Letter(line);
            string after = ReactiveGroups.Letter(line + 1);
            Expression a = Expression.Quantity("V_" + before, VolumeOf(line), Measure.Liquid);
            Expression b = Expression.Quantity("V_" + after, VolumeOf(line + 1), Measure.Liquid);
            Expression g = Expression.Quantity("g", graduation, Measure.Liquid);
            string name = Cup.Product.Parts[line + 1].Component.Name;
            steps.Add(new(name + " too much", "δ_high," + after, ((b + g) / (a - g) / (b / a)) - 1, Off(line, graduation), Measure.Percent,
                Misread));
            steps.Add(new(name + " short", "δ_low," + after, ((b - g) / (a + g) / (b / a)) - 1, Off(line, -graduation), Measure.Percent,
                Misread));
            if (ReactiveGroups.Stated(Cup.Product) is not null)
            {
                steps.Add(ReactiveGroups.Step(Cup.Product, Poured(line, graduation), "index, " + name + " too much", "I_high," + after));
                steps.Add(ReactiveGroups.Step(Cup.Product, Poured(line, -graduation), "index, " + name + " short", "I_low," + after));
            }

            if (Tolerance is double tolerance)
            {
                Expression t = Expression.Quantity("τ", tolerance, Measure.Percent);
                Expression fa = Expression.Quantity("f_" + before, Cup.Product.ShareOf(line), Measure.Percent);
                Expression fb = Expression.Quantity("f_" + after, Cup.Product.ShareOf(line + 1), Measure.Percent);
                Expression r = Expression.Quantity("R", Cup.Reducer.DecimalFractions, Measure.Percent);
                steps.Add(new(
                    "smallest cup for the tolerance, " + name, "V_min," + after, (1 + r) * g * ((1 / fb) + ((1 + t) / fa)) / t,
                        Smallest(line, tolerance),
                    Measure.Liquid, Misread));
            }
        }

        return new Workings("One graduation misread", steps);
    }

    /// <summary>The largest deviation in one line.</summary>
    /// <returns>Text such as <c>6.3 % off when 5 mL is misread</c>.</returns>
    public override string ToString() => Measure.Percent.Format(High, DisplayUnits.Si, 3) + " off when " + Measure.Liquid.Format(graduation) + " is misread";

    private double VolumeOf(int part) => Cup.Parts[part].Volume.CubicMeters;

    private double Off(int line, double misread) =>
        ((VolumeOf(line + 1) + misread) / (VolumeOf(line) - misread) / (VolumeOf(line + 1) / VolumeOf(line))) - 1;

    private double[] Poured(int line, double misread)
    {
        double[] poured = [.. Enumerable.Range(0, Lines + 1).Select(VolumeOf)];
        poured[line] -= misread;
        poured[line + 1] += misread;
        return poured;
    }

    private IEnumerable<double?> Indices() => Enumerable.Range(0, Lines).SelectMany(line => new[]
    {
        ReactiveGroups.Index(Cup.Product, Poured(line, graduation)), ReactiveGroups.Index(Cup.Product, Poured(line, -graduation)),
    });

    private double Smallest(int line, double tolerance) =>
        (1 + Cup.Reducer.DecimalFractions) * graduation
        * ((1 / Cup.Product.ShareOf(line + 1)) + ((1 + tolerance) / Cup.Product.ShareOf(line))) / tolerance;
}
