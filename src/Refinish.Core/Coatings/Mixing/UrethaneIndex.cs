using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>Isocyanate groups per hydroxyl of a two-part urethane, and what water and alcohol in the reducer take of them.</summary>
/// <remarks>
/// <para>n_NCO = m·w_NCO/42.02; n_OH = m·OHN/56 100; index = n_NCO/n_OH. Water takes two isocyanates a molecule, an alcohol one for
/// each hydroxyl, so that n_NCO − 2·m_w/18.015 − n_alc are left for the resin at the most. In a film part of the water leaves before it
/// reacts: this is the worst case.</para>
/// <para>Sources: polyurethane makers' association, virtual technical library, section 5; water's two equivalents, cure terms
/// glossary.</para>
/// </remarks>
/// <example><code>
/// UrethaneIndex mix = new()
/// {
///     Resin = Mass.FromGrams(100), HydroxylNumber = 60,
///     Isocyanate = Mass.FromGrams(25), IsocyanateContent = Ratio.FromPercent(16.5),
/// };
/// double index = mix.Index;   // 0.918
/// </code></example>
public sealed record UrethaneIndex
{
    private static readonly Source WorstCase =
        Source.Derived("ratio of equivalents; every water and alcohol molecule reacts, the worst case");
    private static readonly Bounds Masses = Bounds.Positive(Measure.Mass, 1000);

    private readonly double resin;
    private readonly double hydroxylNumber;
    private readonly double isocyanate;
    private readonly double isocyanateContent;
    private readonly double water;
    private readonly double alcoholHydroxyl;

    /// <summary>Resin component as supplied, more than 0 and at most 1000 kg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Mass Resin { get => Mass.FromKilograms(resin); init => resin = Guard.Within(value, Masses); }

    /// <summary>Hydroxyl number of the resin component as supplied, more than 0 and at most 2000 mg KOH/g.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double HydroxylNumber
    {
        get => hydroxylNumber * 1000;
        init => hydroxylNumber = Guard.Within(value / 1000, EquivalentWeights.HydroxylNumbers, nameof(HydroxylNumber));
    }

    /// <summary>Isocyanate component as supplied, more than 0 and at most 1000 kg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Mass Isocyanate { get => Mass.FromKilograms(isocyanate); init => isocyanate = Guard.Within(value, Masses); }

    /// <summary>NCO groups in the isocyanate component by mass, more than 0 and at most 60 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio IsocyanateContent
    {
        get => Ratio.FromDecimalFractions(isocyanateContent);
        init => isocyanateContent = Guard.Within(value, Bounds.Positive(Measure.Percent, 0.6));
    }

    /// <summary>Water in the reducer and elsewhere, 0 to 1000 kg; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Mass Water { get => Mass.FromKilograms(water); init => water = Guard.Within(value, Bounds.NotNegative(Measure.Mass, 1000)); }

    /// <summary>Hydroxyl of alcohols in the reducer, 0 to 10 000 mol; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public AmountOfSubstance AlcoholHydroxyl
    {
        get => AmountOfSubstance.FromMoles(alcoholHydroxyl);
        init => alcoholHydroxyl = Guard.Within(value.Moles, Bounds.NotNegative(Measure.Equivalents, 1e4), nameof(AlcoholHydroxyl));
    }

    /// <summary>Isocyanate groups per hydroxyl of the resin, water and alcohol left out.</summary>
    public double Index => Bare().Value;

    /// <summary>
    /// Isocyanate groups per hydroxyl of the resin after water and alcohol have taken theirs; negative when they could take more than
    /// there is.
    /// </summary>
    public double IndexAfterReducer => Reduced().Value;

    /// <summary>What the hardener holds.</summary>
    public IReadOnlyList<Caution> Cautions { get; } = new ValueList<Caution>([Refinish.Cautions.IsocyanateHardener]);

    /// <summary>What the product's components amount to at its own ratio and a share of reducer.</summary>
    /// <param name="product">The product; one part needs a hydroxyl number and another an isocyanate content.</param>
    /// <param name="reducer">Reducer per volume of mixed product, 0 to 100 %.</param>
    /// <returns>The index for 1 L of mixed product; <see langword="null"/> when no part states one of them.</returns>
    /// <remarks>
    /// Water counts where a component states it, and the reducer's hydroxyl number is that of its alcohols. What is not stated counts
    /// as none.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="reducer"/> is outside its range.</exception>
    public static UrethaneIndex? Of(CoatingProduct product, Ratio reducer)
    {
        Guard.NotNull(product);
        double share = Guard.Within(reducer, Bounds.NotNegative(Measure.Percent, 1));
        double resin = 0, hydroxyl = 0, hardener = 0, isocyanate = 0, water = 0;
        for (int i = 0; i < product.Parts.Count; i++)
        {
            CoatingComponent can = product.Parts[i].Component;
            double mass = 1e-3 * product.ShareOf(i) * can.Density.KilogramsPerCubicMeter;
            water += mass * (can.Water?.DecimalFractions ?? 0);
            if (can.IsocyanateContent is Ratio content)
            {
                hardener += mass;
                isocyanate += mass * content.DecimalFractions;
            }
            else if (can.HydroxylNumber is double number)
            {
                resin += mass;
                hydroxyl += mass * number;
            }
        }

        if (resin == 0 || hardener == 0)
        {
            return null;
        }

        double r = 1e-3 * share * (product.Reducer?.Density.KilogramsPerCubicMeter ?? 0);
        return new UrethaneIndex
        {
            Resin = Mass.FromKilograms(resin),
            HydroxylNumber = hydroxyl / resin,
            Isocyanate = Mass.FromKilograms(hardener),
            IsocyanateContent = Ratio.FromDecimalFractions(isocyanate / hardener),
            Water = Mass.FromKilograms(water + (r * (product.Reducer?.Water?.DecimalFractions ?? 0))),
            AlcoholHydroxyl = AmountOfSubstance.FromMoles(r * (product.Reducer?.HydroxylNumber ?? 0) / 1000 / EquivalentWeights.PotassiumHydroxide),
        };
    }

    /// <summary>The isocyanate component needed for an index, with the resin, water and alcohol as they are.</summary>
    /// <param name="index">Isocyanate groups per hydroxyl of the resin after water and alcohol, more than 0 and at most 10.</param>
    /// <returns>Mass as supplied.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Mass IsocyanateFor(double index) => Mass.FromKilograms(
        ((Guard.Within(index, Bounds.Positive(Measure.Number, 10)) * Oh().Value) + Taken().Value)
            * EquivalentWeights.IsocyanateGroup / isocyanateContent);

    /// <summary>How the index follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Isocyanate index", Nco, Oh, Taken, Bare, Reduced);

    /// <summary>The index in one line.</summary>
    /// <returns>Text such as <c>1.05 NCO per OH, 1.02 after water and alcohol</c>.</returns>
    public override string ToString() =>
        Figures.Significant(Index, 3) + " NCO per OH"
        + (Taken().Value > 0 ? ", " + Figures.Significant(IndexAfterReducer, 3) + " after water and alcohol" : string.Empty);

    private Num Nco(Trace? t = null) => t.Step(
        "isocyanate groups", "n_NCO", Measure.Equivalents, EquivalentWeights.IsocyanateSource,
        t.Given("m_B", isocyanate, Measure.Mass) * t.Given("w_NCO", isocyanateContent, Measure.Percent)
            / t.Given("M_NCO", EquivalentWeights.IsocyanateGroup, Measure.MolarMass));

    private Num Oh(Trace? t = null) => t.Step(
        "hydroxyl of the resin", "n_OH", Measure.Equivalents, EquivalentWeights.HydroxylSource,
        t.Given("m_A", resin, Measure.Mass) * t.Given("OHN", hydroxylNumber, Measure.HydroxylNumber)
            / t.Given("M_KOH", EquivalentWeights.PotassiumHydroxide, Measure.MolarMass));

    private Num Taken(Trace? t = null) => t.Step(
        "taken by water and alcohol", "n_r", Measure.Equivalents, EquivalentWeights.WaterSource,
        (2 * t.Given("m_w", water, Measure.Mass) / t.Given("M_w", EquivalentWeights.Water, Measure.MolarMass))
            + t.Given("n_alc", alcoholHydroxyl, Measure.Equivalents));

    private Num Bare(Trace? t = null) => t.Step("isocyanate per hydroxyl", "I", Measure.Number, WorstCase, Nco(t) / Oh(t));

    private Num Reduced(Trace? t = null) =>
        t.Step("isocyanate per hydroxyl after the reducer", "I_r", Measure.Number, WorstCase, (Nco(t) - Taken(t)) / Oh(t));
}
