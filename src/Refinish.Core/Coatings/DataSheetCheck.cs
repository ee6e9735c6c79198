using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>A data sheet held against itself: weight ratio against volume ratio and densities, ratio against stoichiometry, volume solids against mass solids and against the cans.</summary>
/// <remarks>
/// Only figures that are stated are compared, so an empty list of findings means that nothing could be judged, not that all is well. Two per cent counts as
/// agreement for physics and 25 % for stoichiometry, because makers leave one to one on purpose: both defaults are invented.
/// </remarks>
/// <example><code>
/// DataSheetCheck check = new(GenericCatalogue.EpoxyPrimer with { StatedHardenerPer100Base = 50 });
/// string contradiction = check.Contradictions[0].ToString();   // stated 50, follows as 35: a volume ratio printed as a weight ratio
/// </code></example>
public sealed record DataSheetCheck
{
    private static readonly Source Physics = Source.Derived("definition of density, volumes additive");
    private static readonly Source Chemistry = Source.Derived("ratio of equivalents, both cans as supplied");

    private readonly double agreement;
    private readonly double stoichiometry;

    /// <summary>Checks with the defaults.</summary>
    /// <param name="product">The product.</param>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public DataSheetCheck(CoatingProduct product)
        : this(product, Ratio.FromPercent(2), Ratio.FromPercent(25))
    {
    }

    /// <summary>Checks with the caller's idea of agreement.</summary>
    /// <param name="product">The product.</param>
    /// <param name="agreement">Relative difference that counts as agreement between figures tied by density, more than 0 and at most 50 %.</param>
    /// <param name="stoichiometry">The same for the ratio against one to one, more than 0 and at most 200 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public DataSheetCheck(CoatingProduct product, Ratio agreement, Ratio stoichiometry)
    {
        Product = Guard.NotNull(product, nameof(product));
        this.agreement = Guard.Within(agreement, Bounds.Positive(Measure.Percent, 0.5), nameof(agreement));
        this.stoichiometry = Guard.Within(stoichiometry, Bounds.Positive(Measure.Percent, 2), nameof(stoichiometry));
        Findings = new ValueList<DataSheetFinding>(Find());
    }

    /// <summary>The product.</summary>
    public CoatingProduct Product { get; }

    /// <summary>Relative difference that counts as agreement.</summary>
    public Ratio Agreement => Ratio.FromDecimalFractions(agreement);

    /// <summary>The same for the ratio against one to one.</summary>
    public Ratio Stoichiometry => Ratio.FromDecimalFractions(stoichiometry);

    /// <summary>Every pair of figures that could be compared.</summary>
    public IReadOnlyList<DataSheetFinding> Findings { get; }

    /// <summary>Those that lie too far apart.</summary>
    public IReadOnlyList<DataSheetFinding> Contradictions =>
        new ValueList<DataSheetFinding>(Findings.Where(finding => finding.Comparison.Outcome == ComparisonOutcome.Beyond));

    /// <summary>How far each pair lies apart.</summary>
    /// <returns>The derivation; without steps when nothing could be compared.</returns>
    public Workings Workings() => new("Data sheet of " + Product.Name, Findings.Select(finding => finding.Step()));

    /// <summary>How many pairs agree and how many contradict.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Findings.Count == 0
        ? "nothing to compare"
        : Figures.Fixed(Findings.Count, 0) + " compared, " + Figures.Fixed(Contradictions.Count, 0) + " contradict" + (Contradictions.Count == 0 ? string.Empty : ": " + string.Join("; ", Contradictions));

    private IEnumerable<DataSheetFinding> Find()
    {
        const string Ask = "Ask the maker which figure holds before anything is mixed.";
        CoatingComponent a = Product.Base;
        if (Product.Hardener is CoatingComponent b && Product.MixRatio.HardenerParts > 0)
        {
            double phr = Product.MixRatio.HardenerPer100Base(a.Density, b.Density);
            if (Product.StatedHardenerPer100Base is double stated)
            {
                yield return new("hardener by weight to 100 of base, against volume ratio and densities", stated, phr, Measure.Number, agreement, Physics, Ask);
            }

            if (OffRatio.Equivalents(a, b) is (double ewA, double ewB))
            {
                yield return new("hardener by weight to 100 of base, against one to one of reactive groups", phr, 100 * ewB / ewA, Measure.Number, stoichiometry, Chemistry, Ask);
            }

            if (a.VolumeSolids is Ratio vsA && b.VolumeSolids is Ratio vsB)
            {
                double mixed = (vsA.DecimalFractions * Product.MixRatio.BaseFraction.DecimalFractions) + (vsB.DecimalFractions * Product.MixRatio.HardenerFraction.DecimalFractions);
                if (mixed > 0)
                {
                    yield return new("volume solids of the mix, against the cans", Product.VolumeSolids.DecimalFractions, mixed, Measure.Percent, agreement, Physics, Ask);
                }
            }
        }

        foreach (CoatingComponent can in new[] { a, Product.Hardener }.OfType<CoatingComponent>())
        {
            IReadOnlyList<SolventShare> solvents = can.Solvents.Count > 0 ? can.Solvents : Product.Solvents;
            if (can.VolumeSolids is Ratio volume && can.MassSolids is Ratio weight && solvents.Count > 0)
            {
                double follows = 1 - (can.Density.KilogramsPerCubicMeter * (1 - weight.DecimalFractions) / MixedCoating.BlendDensity(solvents));
                if (follows > 0)
                {
                    yield return new("volume solids of " + can.Name + ", against its solids by mass", volume.DecimalFractions, follows, Measure.Percent, agreement, Physics, Ask);
                }
            }
        }
    }
}
