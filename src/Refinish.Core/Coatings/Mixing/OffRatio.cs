using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// What was really poured of a product in several parts: how far the ratio is off, which groups are left over, and how that compares with
/// what the data sheet allows.
/// </summary>
/// <remarks>
/// Deviation of a part i: (V_i/V_A)/(p_i/p_A) − 1, A the first part. What a deviation does to a film is told in words only: no general
/// figure is published, and the data sheet's tolerance decides.
/// </remarks>
/// <example><code>
/// OffRatio poured = new(GenericCatalogue.AcrylicUrethaneTopcoat,
/// [
///     new("acrylic-urethane-topcoat-base", Volume.FromMilliliters(400)), new("isocyanate-hardener", Volume.FromMilliliters(110)),
/// ]);
/// double off = poured.Deviation.Percent;   // 10: ten per cent too much hardener
/// </code></example>
public sealed record OffRatio
{
    private static readonly Source Definition = Source.Derived("ratio poured over ratio stated");
    private static readonly Bounds Volumes = Bounds.NotNegative(Measure.Liquid, 0.1);

    private readonly ValueList<double> volumes;

    /// <summary>Compares what was poured.</summary>
    /// <param name="product">A product in two parts or more.</param>
    /// <param name="poured">What was poured of each part, each once; 0 to 100 L, and more than 0 of the first part.</param>
    /// <exception cref="ArgumentException">
    /// The product comes in one part, or <paramref name="poured"/> does not hold each part once.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A volume is outside its range, or the product's data contradict each other.
    /// </exception>
    public OffRatio(CoatingProduct product, IEnumerable<PartVolume> poured)
    {
        Product = Guard.NotNull(product);
        product.CheckConsistency();
        if (product.Parts.Count == 1)
        {
            throw new ArgumentException("product comes in one part; there is no ratio to be off.", nameof(product));
        }

        Poured = PartList.Of(product, poured, nameof(poured));
        volumes = new ValueList<double>(Poured.Select((one, i) =>
            Guard.Within(one.Volume, i == 0 ? Bounds.Positive(Measure.Liquid, 0.1) : Volumes, nameof(poured))));
    }

    /// <summary>The product.</summary>
    public CoatingProduct Product { get; }

    /// <summary>What was poured, in the order of the parts.</summary>
    public IReadOnlyList<PartVolume> Poured { get; }

    /// <summary>How far the ratio of each further part to the first is off, by component; negative where the part is short.</summary>
    public IReadOnlyDictionary<string, Ratio> Deviations =>
        Enumerable.Range(1, volumes.Count - 1).ToDictionary(i => Product.Parts[i].Component.Id, i =>
            Ratio.FromDecimalFractions(Off(i)), StringComparer.Ordinal);

    /// <summary>The largest of the deviations; negative when that part is short.</summary>
    public Ratio Deviation => Ratio.FromDecimalFractions(Off(Worst));

    /// <summary>
    /// Groups that harden per group of the resin at the stated ratio; <see langword="null"/> when the cans do not state their equivalents.
    /// </summary>
    public double? StatedIndex => ReactiveGroups.Stated(Product);

    /// <summary>The same as poured.</summary>
    public double? PouredIndex => ReactiveGroups.Index(Product, volumes);

    /// <summary>The size of the largest deviation against the data sheet's tolerance; it cannot be judged when none is stated.</summary>
    public LimitComparison Comparison => new(
        "ratio of the parts, deviation from the stated one", Math.Abs(Off(Worst)), Product.RatioTolerance?.DecimalFractions,
        LimitSense.AtMost, Measure.Percent, Product.Source,
        Off(Worst) == 0 ? null : "Do not spray it. Correct the cup by weight while it is fresh, or throw it away.");

    /// <summary>What is left over by the largest deviation, in words.</summary>
    public string Meaning
    {
        get
        {
            double off = Off(Worst);
            if (off == 0)
            {
                return "The ratio is the stated one.";
            }

            CoatingComponent can = Product.Parts[Worst].Component;
            string size = Measure.Percent.Format(Math.Abs(off), DisplayUnits.Si, 3);
            string much = off < 0 ? " short" : " too much";
            if (Product.Parts.Count > 2 && !ReactiveGroups.Hardens(can))
            {
                return can.Name + " is " + size + much + " against " + Product.Parts[0].Component.Name
                    + ": what that does to the film its data sheet says.";
            }

            string part = Product.Parts.Count > 2 ? can.Name : "Hardener";
            return part + " is " + size + much
                + (off < 0, can.IsocyanateContent is not null || Product.IsocyanateFraction.DecimalFractions > 0) switch
            {
                (true, true) => ": hydroxyl of the resin stays free, and the film stays softer and takes up solvent and water.",
                (false, true) => ": isocyanate is left over, which goes on to react with the moisture of the air; the film cures more slowly and turns brittle.",
                (true, false) => ": epoxide stays unreacted, and the film stays softer and takes up solvent.",
                _ => ": amine is left over, which may come to the surface as blush and hold the next coat off.",
            };
        }
    }

    /// <summary>What can hurt: what has not reacted.</summary>
    public IReadOnlyList<Caution> Cautions { get; } = new ValueList<Caution>([Refinish.Cautions.OffRatioMix]);

    private int Worst
    {
        get
        {
            int worst = 1;
            for (int i = 2; i < volumes.Count; i++)
            {
                worst = Math.Abs(Off(i)) > Math.Abs(Off(worst)) ? i : worst;
            }

            return worst;
        }
    }

    /// <summary>How the deviations and the index follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Trace trace = new();
        for (int i = 1; i < volumes.Count; i++)
        {
            trace.Step(
                "deviation of " + Product.Parts[i].Component.Name, "δ_" + ReactiveGroups.Letter(i), Measure.Percent, Definition,
                Off(i, trace));
        }

        if (StatedIndex is not null)
        {
            ReactiveGroups.Index(Product, ReactiveGroups.Shares(Product), "index at the stated ratio", "I", trace);
            ReactiveGroups.Index(Product, volumes, "index as poured", "I_p", trace);
        }

        return trace.Workings("Ratio as poured");
    }

    /// <summary>The largest deviation in one line.</summary>
    /// <returns>Text such as <c>10 % off the stated 4 : 1</c>.</returns>
    public override string ToString() => Measure.Percent.Format(Off(Worst), DisplayUnits.Si, 3) + " off the stated " + Product.MixRatio;

    private double Off(int part) => Off(part, null).Value;

    private Num Off(int part, Trace? t)
    {
        string letter = t is null ? string.Empty : ReactiveGroups.Letter(part);
        Num poured = t.Given("V_" + letter, volumes[part], Measure.Liquid) / t.Given("V_A", volumes[0], Measure.Liquid);
        return (poured * (t.Given("p_A", Product.Parts[0].Parts, Measure.Number)
            / t.Given("p_" + letter, Product.Parts[part].Parts, Measure.Number))) - 1;
    }
}
