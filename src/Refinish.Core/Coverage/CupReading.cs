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

    /// <summary>Looks at a cup.</summary>
    /// <param name="cup">The cup of a product in two parts or more.</param>
    /// <param name="graduation">Its graduation, more than 0 and less than each part.</param>
    /// <exception cref="ArgumentException">The product comes in one part.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="graduation"/> is outside its range.</exception>
    public CupReading(PouredMix cup, Volume graduation)
    {
        Cup = Guard.NotNull(cup);
        if (cup.Product.Parts.Count == 1)
        {
            throw new ArgumentException("cup holds a product in one part; there is no ratio to be off.", nameof(cup));
        }

        Graduation = Guard.Checked(graduation, Bounds.Positive(Measure.Liquid));
        double smallest = Enumerable.Range(0, Lines + 1).Min(VolumeOf);
        Guard.Rule(Graduation.CubicMeters < smallest, nameof(graduation), Graduation.CubicMeters, Measure.Liquid, "less than each part, ",
            smallest);
    }

    /// <summary>The cup.</summary>
    public PouredMix Cup { get; }

    /// <summary>Its graduation.</summary>
    public Volume Graduation { get; }

    /// <summary>Largest deviation of two parts' ratio with too much of the later one.</summary>
    public Ratio DeviationHigh => Ratio.FromDecimalFractions(High);

    /// <summary>Largest deviation of two parts' ratio with the later one short; negative.</summary>
    public Ratio DeviationLow => Ratio.FromDecimalFractions(Enumerable.Range(0, Lines).Min(line => Off(line, -1).Value));

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
        ? Volume.FromCubicMeters(Enumerable.Range(0, Lines).Max(line => Smallest(line, tolerance).Value)) : null;

    private double? Tolerance => Cup.Product.RatioTolerance?.DecimalFractions;

    private int Lines => Cup.Product.Parts.Count - 1;

    private double High => Enumerable.Range(0, Lines).Max(line => Off(line, 1).Value);

    /// <summary>How the deviations follow, line by line.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Trace t = new();
        bool isStated = ReactiveGroups.Stated(Cup.Product) is not null;
        for (int line = 0; line < Lines; line++)
        {
            string after = ReactiveGroups.Letter(line + 1);
            string name = Cup.Product.Parts[line + 1].Component.Name;
            t.Step(name + " too much", "δ_high," + after, Measure.Percent, Misread, Off(line, 1, t));
            t.Step(name + " short", "δ_low," + after, Measure.Percent, Misread, Off(line, -1, t));
            if (isStated)
            {
                ReactiveGroups.Index(
                    Cup.Product, Poured(line, Graduation.CubicMeters), "index, " + name + " too much", "I_high," + after, t);
                ReactiveGroups.Index(Cup.Product, Poured(line, -Graduation.CubicMeters), "index, " + name + " short", "I_low," + after, t);
            }

            if (Tolerance is double tolerance)
            {
                t.Step("smallest cup for the tolerance, " + name, "V_min," + after, Measure.Liquid, Misread, Smallest(line, tolerance, t));
            }
        }

        return t.Workings("One graduation misread");
    }

    /// <summary>The largest deviation in one line.</summary>
    /// <returns>Text such as <c>6.3 % off when 5 mL is misread</c>.</returns>
    public override string ToString() =>
        Measure.Percent.Format(High, DisplayUnits.Si, 3) + " off when " + Measure.Liquid.Format(Graduation.CubicMeters) + " is misread";

    private double VolumeOf(int part) => Cup.Parts[part].Volume.CubicMeters;

    /// <summary>With one graduation taken for the later part from the earlier, or the other way.</summary>
    private Num Off(int line, int graduations, Trace? t = null)
    {
        Num a = VolumeOf(line, t);
        Num b = VolumeOf(line + 1, t);
        Num g = Graduations(t);
        return (graduations > 0 ? (b + g) / (a - g) / (b / a) : (b - g) / (a + g) / (b / a)) - 1;
    }

    private double[] Poured(int line, double misread)
    {
        double[] poured = [.. Enumerable.Range(0, Lines + 1).Select(VolumeOf)];
        poured[line] -= misread;
        poured[line + 1] += misread;
        return poured;
    }

    private IEnumerable<double?> Indices() => Enumerable.Range(0, Lines).SelectMany(line => new[]
    {
        ReactiveGroups.Index(Cup.Product, Poured(line, Graduation.CubicMeters)),
            ReactiveGroups.Index(Cup.Product, Poured(line, -Graduation.CubicMeters)),
    });

    private Num Smallest(int line, double tolerance, Trace? t = null)
    {
        Num allowed = t.Given("τ", tolerance, Measure.Percent);
        Num shares = (1 / Share(line + 1, t)) + ((1 + allowed) / Share(line, t));
        return (1 + t.Given("R", Cup.Reducer.DecimalFractions, Measure.Percent)) * Graduations(t) * shares / allowed;
    }

    private Num Graduations(Trace? t) => t.Given("g", Graduation.CubicMeters, Measure.Liquid);

    private Num VolumeOf(int part, Trace? t) =>
        t is null ? VolumeOf(part) : t.Given("V_" + ReactiveGroups.Letter(part), VolumeOf(part), Measure.Liquid);

    private Num Share(int part, Trace? t) => t is null
        ? Cup.Product.ShareOf(part) : t.Given("f_" + ReactiveGroups.Letter(part), Cup.Product.ShareOf(part), Measure.Percent);
}
