using System;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>Equivalent weights, grams that hold one mole of reactive groups, from what data sheets print, and back.</summary>
/// <remarks>
/// <para>Isocyanate: 42.02/w_NCO, printed as 4202 over per cent NCO; hydroxyl: 56 100 over the hydroxyl number in mg KOH/g (polyurethane
/// makers' association, virtual technical library, section 5). A molecule: molar mass over its active sites (guide to epoxy calculations).
/// Solvent and filler count as mass without groups.</para>
/// <para>Carboxyl: 56 100 over the acid number, the milligrams of potassium hydroxide that one gram takes (ASTM D3643, section 3.1). Data
/// sheets often print it for the solid resin; multiply by the solids for the resin as supplied. Of an anhydride the titration finds only
/// half of the groups (same section).</para>
/// </remarks>
/// <example><code>
/// double grams = EquivalentWeights.OfIsocyanate(Ratio.FromPercent(23)).GramsPerMole;   // 182.7
/// double content = EquivalentWeights.IsocyanateContentOf(MolarMass.FromGramsPerMole(183)).Percent;   // 22.96
/// double acid = EquivalentWeights.OfAcid(30).GramsPerMole;   // 1870
/// double number = EquivalentWeights.AcidNumberOf(MolarMass.FromGramsPerMole(1870));   // 30
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
    internal static readonly Bounds HydroxylNumbers = Bounds.Between(1e-6, 2000e-3, Measure.HydroxylNumber);

    // Both numbers are milligrams of potassium hydroxide per gram.
    private static readonly Bounds AcidNumbers = HydroxylNumbers;
    private static readonly Bounds IsocyanateContents = Bounds.Positive(Measure.Percent, 0.6);
    private static readonly Bounds IsocyanateGrams = Bounds.Between(IsocyanateGroup / 0.6, 20, Measure.EquivalentWeight);
    private static readonly Bounds PotashGrams = Bounds.Between(PotassiumHydroxide / 2, 20, Measure.EquivalentWeight);

    /// <summary>From the isocyanate content of a hardener as supplied.</summary>
    /// <param name="isocyanateContent">NCO groups by mass, more than 0 and at most 60 %.</param>
    /// <returns>Grams of hardener per mole of NCO.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static MolarMass OfIsocyanate(Ratio isocyanateContent) =>
        MolarMass.FromKilogramsPerMole(IsocyanateGroup / Guard.Within(isocyanateContent, IsocyanateContents));

    /// <summary>The isocyanate content of a hardener of which the equivalent weight is known.</summary>
    /// <param name="equivalentWeight">Grams of hardener as supplied per mole of NCO, 70.1 to 20 000: less would be more than 60 %
    /// NCO.</param>
    /// <returns>NCO groups by mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static Ratio IsocyanateContentOf(MolarMass equivalentWeight) =>
        Ratio.FromDecimalFractions(IsocyanateGroup / Guard.Within(equivalentWeight, IsocyanateGrams));

    /// <summary>From the hydroxyl number of a resin or an alcohol as supplied.</summary>
    /// <param name="hydroxylNumber">mg of potassium hydroxide per gram, 0.001 to 2000.</param>
    /// <returns>Grams per mole of hydroxyl.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static MolarMass OfHydroxyl(double hydroxylNumber) =>
        MolarMass.FromKilogramsPerMole(PotassiumHydroxide / Guard.Within(hydroxylNumber / 1000, HydroxylNumbers, nameof(hydroxylNumber)));

    /// <summary>The hydroxyl number of a resin or an alcohol of which the equivalent weight is known.</summary>
    /// <param name="equivalentWeight">Grams as supplied per mole of hydroxyl, 28.1 to 20 000: less would be more than 2000 mg
    /// KOH/g.</param>
    /// <returns>mg of potassium hydroxide per gram.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static double HydroxylNumberOf(MolarMass equivalentWeight) => Potash(equivalentWeight);

    /// <summary>From the acid number of a resin or an acid, per gram of what is weighed.</summary>
    /// <param name="acidNumber">mg of potassium hydroxide that one gram takes, more than 0 and at most 2000.</param>
    /// <returns>Grams per mole of carboxyl.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static MolarMass OfAcid(double acidNumber) =>
        MolarMass.FromKilogramsPerMole(PotassiumHydroxide / Guard.Within(acidNumber / 1000, AcidNumbers, nameof(acidNumber)));

    /// <summary>The acid number of a resin or an acid of which the equivalent weight is known.</summary>
    /// <param name="equivalentWeight">Grams per mole of carboxyl, 28.1 to 20 000: less would be more than 2000 mg KOH/g.</param>
    /// <returns>mg of potassium hydroxide that one gram takes.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static double AcidNumberOf(MolarMass equivalentWeight) => Potash(equivalentWeight);

    /// <summary>From a molecule and its active sites, such as the hydrogens on the nitrogen of an amine.</summary>
    /// <param name="molarMass">Molar mass, more than 0 and at most 10 000 g/mol.</param>
    /// <param name="activeSites">Reactive sites, 1 to 100.</param>
    /// <returns>Grams per mole of sites.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static MolarMass OfMolecule(MolarMass molarMass, int activeSites) =>
        MolarMass.FromKilogramsPerMole(Guard.Within(molarMass, Bounds.Positive(Measure.MolarMass, 10)) / Guard.Count(activeSites, 1, 100));

    private static double Potash(MolarMass equivalentWeight) => 1000 * PotassiumHydroxide / Guard.Within(equivalentWeight, PotashGrams);
}
