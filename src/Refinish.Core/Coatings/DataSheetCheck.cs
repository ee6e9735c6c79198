using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// A data sheet held against itself: weight ratio against volume ratio and densities, ratio against stoichiometry, volume solids against
/// mass solids, water and the cans, polyisocyanate against the solids of the cans that hold it.
/// </summary>
/// <remarks>
/// Only figures that are stated are compared, so an empty list of findings means that nothing could be judged, not that all is well.
/// Two per cent counts as agreement for physics and 25 % for stoichiometry, because makers leave one to one on purpose: both defaults
/// are invented.
/// </remarks>
/// <example><code>
/// DataSheetCheck check = new(GenericCatalogue.EpoxyPrimer with
/// {
///     Parts =
///     [
///         GenericCatalogue.EpoxyPrimer.Parts[0], new MixPart(GenericCatalogue.EpoxyPrimer.Parts[1].Component, 1, 50),
///     ],
/// });
/// string contradiction = check.Contradictions[0].ToString();   // stated 50, follows as 35: a volume ratio printed as a weight ratio
/// </code></example>
public sealed record DataSheetCheck
{
    internal const string StoichiometryCode = "stoichiometry";

    private const string Ask = "Ask the maker which figure holds before anything is mixed.";

    private static readonly Source Physics = Source.Derived("definition of density, volumes additive");
    private static readonly Source Chemistry = Source.Derived("ratio of equivalents, all cans as supplied");

    private readonly double agreement;
    private readonly double stoichiometry;

    /// <summary>Checks with the defaults.</summary>
    /// <param name="product">The product.</param>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public DataSheetCheck(CoatingProduct product) : this(product, Ratio.FromPercent(2), Ratio.FromPercent(25))
    {
    }

    /// <summary>Checks with the caller's idea of agreement.</summary>
    /// <param name="product">The product.</param>
    /// <param name="agreement">
    /// Relative difference that counts as agreement between figures tied by density, more than 0 and at most 50 %.
    /// </param>
    /// <param name="stoichiometry">The same for the ratio against one to one, more than 0 and at most 200 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public DataSheetCheck(CoatingProduct product, Ratio agreement, Ratio stoichiometry)
    {
        Product = Guard.NotNull(product);
        this.agreement = Guard.Within(agreement, Bounds.Positive(Measure.Percent, 0.5));
        this.stoichiometry = Guard.Within(stoichiometry, Bounds.Positive(Measure.Percent, 2));
        Findings = new ValueList<DataSheetFinding>(Find());
    }

    /// <summary>The product.</summary>
    public CoatingProduct Product { get; }

    /// <summary>Every pair of figures that could be compared.</summary>
    public IReadOnlyList<DataSheetFinding> Findings { get; }

    /// <summary>Those that lie too far apart.</summary>
    public IReadOnlyList<DataSheetFinding> Contradictions =>
        new ValueList<DataSheetFinding>(Findings.Where(finding => finding.Comparison.Outcome == ComparisonOutcome.Beyond));

    /// <summary>How far each pair lies apart.</summary>
    /// <returns>The derivation; without steps when nothing could be compared.</returns>
    public Workings Workings() =>
        Trace.Of("Data sheet of " + Product.Name, [.. Findings.Select(finding => (Func<Trace, Num>)finding.Step)]);

    /// <summary>How many pairs agree and how many contradict.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Findings.Count == 0
        ? "nothing to compare"
        : Figures.Fixed(Findings.Count, 0) + " compared, " + Figures.Fixed(Contradictions.Count, 0) + " contradict" + (Contradictions.Count == 0 ? string.Empty : ": " + string.Join("; ", Contradictions));

    private IEnumerable<DataSheetFinding> Find()
    {
        for (int i = 1; i < Product.Parts.Count; i++)
        {
            MixPart part = Product.Parts[i];
            if (part.StatedPer100OfFirst is double stated)
            {
                yield return Held(
                    "weight-ratio/" + part.Component.Id, part.Component.Name + " by weight to 100 of " + Product.Parts[0].Component.Name
                        + ", against volume ratio and densities", stated, Product.Per100OfFirst[i], Measure.Number);
            }
        }

        if (ReactiveGroups.Stated(Product) is double index)
        {
            yield return new(
                StoichiometryCode, "groups that harden per group of the resin, against one to one", index, 1, Measure.Number, stoichiometry,
                Chemistry, Ask);
        }

        if (OfCans() is double mixed and > 0)
        {
            yield return Held("volume-solids", "volume solids of the mix, against the cans", Product.VolumeSolids.DecimalFractions, mixed,
                Measure.Percent);
        }

        if (Polyisocyanate() is double isocyanate)
        {
            yield return Held(
                "isocyanate", "polyisocyanate in the mix, against the solids of the cans that hold it",
                Product.IsocyanateFraction.DecimalFractions, isocyanate, Measure.Percent);
        }

        foreach (CoatingComponent can in Product.Parts.Select(part => part.Component))
        {
            if (can.VolumeSolids is Ratio volume && ByMass(can) is double follows and > 0)
            {
                yield return Held(
                    "volume-solids/" + can.Id, "volume solids of " + can.Name + ", against its solids and water by mass",
                    volume.DecimalFractions, follows, Measure.Percent);
            }
        }
    }

    private DataSheetFinding Held(string code, string subject, double stated, double follows, Measure measure) =>
        new(code, subject, stated, follows, measure, agreement, Physics, Ask);

    // Volume solids that each can states, or that follow from its solids and water by mass where it states none.
    private double? OfCans() => SumOf(can => can.VolumeSolids?.DecimalFractions ?? ByMass(can));

    // What solvents and water leave of the volume of a can.
    private double? ByMass(CoatingComponent can)
    {
        IReadOnlyList<SolventShare> solvents = can.Solvents.Count > 0 ? can.Solvents : Product.Solvents;
        double water = can.Water?.DecimalFractions ?? 0;
        if (can.MassSolids is not Ratio weight || (solvents.Count == 0 && water == 0))
        {
            return null;
        }

        double rest = Math.Max(0, 1 - weight.DecimalFractions - water);
        double density = can.Density.KilogramsPerCubicMeter;
        return 1 - (density * water / MixedCoating.WaterDensity) - (solvents.Count == 0
            ? 0 : density * rest / MixedCoating.BlendDensity(solvents));
    }

    // The solids of a can that states isocyanate groups are taken as polyisocyanate.
    private double? Polyisocyanate() => !Product.Parts.Any(part => part.Component.IsocyanateContent is not null) ? null
        : SumOf(can => can.IsocyanateContent is null ? 0 : can.Density.KilogramsPerCubicMeter * can.MassSolids?.DecimalFractions)
            / Product.MixedDensity.KilogramsPerCubicMeter;

    private double? SumOf(Func<CoatingComponent, double?> figure)
    {
        double? sum = 0;
        for (int i = 0; i < Product.Parts.Count; i++)
        {
            sum += Product.ShareOf(i) * figure(Product.Parts[i].Component);
        }

        return sum;
    }
}
