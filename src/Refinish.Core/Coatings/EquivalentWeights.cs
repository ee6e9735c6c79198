using System;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>Equivalent weights, grams that hold one mole of reactive groups, from what data sheets print.</summary>
/// <remarks>
/// Isocyanate: 42.02/w_NCO, printed as 4202 over per cent NCO; hydroxyl: 56 100 over the hydroxyl number in mg KOH/g (polyurethane makers' association,
/// virtual technical library, section 5). A molecule: molar mass over its active sites (guide to epoxy calculations). Solvent and filler count as mass without groups.
/// </remarks>
/// <example><code>
/// double grams = EquivalentWeights.OfIsocyanate(Ratio.FromPercent(23)).GramsPerMole;   // 182.7
/// </code></example>
public static class EquivalentWeights
{
    /// <summary>kg/mol of the group N=C=O.</summary>
    internal const double IsocyanateGroup = 42.02e-3;

    /// <summary>kg/mol of potassium hydroxide, as the trade rounds it.</summary>
    internal const double PotassiumHydroxide = 56.1e-3;

    /// <summary>kg/mol of water; one mole of it uses up two of isocyanate.</summary>
    internal const double Water = 18.015e-3;

    internal static readonly Source IsocyanateSource = Source.Published("polyurethane makers' association, virtual technical library", "section 5: 4202 over per cent NCO");
    internal static readonly Source HydroxylSource = Source.Published("polyurethane makers' association, virtual technical library", "section 5: 56 100 over the hydroxyl number");
    internal static readonly Source WaterSource = Source.Published("cure terms glossary of a thermal-analysis laboratory", "percentage isocyanate: water takes two equivalents");
    internal static readonly Source EpoxySource = Source.Published("guide to epoxy calculations (paint makers' guide)", "amine equivalent × 100 over epoxy equivalent");

    internal static readonly Bounds Grams = Bounds.Between(5e-3, 20, Measure.EquivalentWeight);
    internal static readonly Bounds HydroxylNumbers = Bounds.Above(0, 2000e-3, Measure.HydroxylNumber);

    /// <summary>From the isocyanate content of a hardener as supplied.</summary>
    /// <param name="isocyanateContent">NCO groups by mass, more than 0 and at most 60 %.</param>
    /// <returns>Grams of hardener per mole of NCO.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static MolarMass OfIsocyanate(Ratio isocyanateContent) =>
        MolarMass.FromKilogramsPerMole(IsocyanateGroup / Guard.Within(isocyanateContent, Bounds.Positive(Measure.Percent, 0.6), nameof(isocyanateContent)));

    /// <summary>From the hydroxyl number of a resin or an alcohol as supplied.</summary>
    /// <param name="hydroxylNumber">mg of potassium hydroxide per gram, more than 0 and at most 2000.</param>
    /// <returns>Grams per mole of hydroxyl.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static MolarMass OfHydroxyl(double hydroxylNumber) =>
        MolarMass.FromKilogramsPerMole(PotassiumHydroxide / Guard.Within(hydroxylNumber / 1000, HydroxylNumbers, nameof(hydroxylNumber)));

    /// <summary>From a molecule and its active sites, such as the hydrogens on the nitrogen of an amine.</summary>
    /// <param name="molarMass">Molar mass, more than 0 and at most 10 000 g/mol.</param>
    /// <param name="activeSites">Reactive sites, 1 to 100.</param>
    /// <returns>Grams per mole of sites.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static MolarMass OfMolecule(MolarMass molarMass, int activeSites) =>
        MolarMass.FromKilogramsPerMole(Guard.Within(molarMass, Bounds.Positive(Measure.MolarMass, 10), nameof(molarMass)) / Guard.Count(activeSites, 1, 100, nameof(activeSites)));
}
