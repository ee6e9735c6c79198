using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// How much amine hardener an epoxy takes when every epoxide is to find one amine hydrogen, and what another ratio amounts to.
/// </summary>
/// <remarks>
/// <para>phr = 100·AHEW/EEW, in parts by weight of hardener to 100 of resin, both as supplied. Source: guide to epoxy calculations;
/// worked examples in the tests.</para>
/// <para>Makers of coatings often stay below one hydrogen per epoxide on purpose, and polyamides react with more than their hydrogens:
/// the data sheet's ratio rules, and this number shows how far it lies from one to one.</para>
/// </remarks>
/// <example><code>
/// EpoxyAmine mix = new(MolarMass.FromGramsPerMole(475), MolarMass.FromGramsPerMole(115));
/// double parts = mix.PartsPerHundred;          // 24.2
/// double index = mix.IndexAt(21.8);            // 0.90 hydrogens an epoxide
/// </code></example>
public sealed record EpoxyAmine
{
    private readonly double epoxide;
    private readonly double amineHydrogen;

    /// <summary>From the equivalent weights of resin and hardener.</summary>
    /// <param name="epoxideEquivalent">Grams of resin per mole of epoxide, 5 to 20 000.</param>
    /// <param name="amineHydrogenEquivalent">Grams of hardener per mole of amine hydrogen, 5 to 20 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public EpoxyAmine(MolarMass epoxideEquivalent, MolarMass amineHydrogenEquivalent)
    {
        epoxide = Guard.Within(epoxideEquivalent, EquivalentWeights.Grams);
        amineHydrogen = Guard.Within(amineHydrogenEquivalent, EquivalentWeights.Grams);
    }

    /// <summary>From blends, fillers and solvents included.</summary>
    /// <param name="resin">The resin side.</param>
    /// <param name="hardener">The hardener side.</param>
    /// <exception cref="ArgumentNullException">One is missing.</exception>
    public EpoxyAmine(ReactiveBlend resin, ReactiveBlend hardener)
        : this(Guard.NotNull(resin).EquivalentWeight, Guard.NotNull(hardener).EquivalentWeight)
    {
    }

    /// <summary>Grams of resin per mole of epoxide.</summary>
    public MolarMass EpoxideEquivalent => MolarMass.FromKilogramsPerMole(epoxide);

    /// <summary>Grams of hardener per mole of amine hydrogen.</summary>
    public MolarMass AmineHydrogenEquivalent => MolarMass.FromKilogramsPerMole(amineHydrogen);

    /// <summary>Hardener by weight to 100 of resin at one hydrogen per epoxide.</summary>
    public double PartsPerHundred => Parts().Value;

    /// <summary>What resin and hardener can do to who mixes them.</summary>
    public IReadOnlyList<Caution> Cautions { get; } = new ValueList<Caution>([Refinish.Cautions.EpoxyHardener]);

    /// <summary>Amine hydrogens per epoxide at another ratio.</summary>
    /// <param name="partsPerHundred">Hardener by weight to 100 of resin, 0 to 10 000.</param>
    /// <returns>1 at <see cref="PartsPerHundred"/>; below 1 epoxide is left over, above 1 amine.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double IndexAt(double partsPerHundred) =>
        Guard.Within(partsPerHundred, Bounds.NotNegative(Measure.Number, 1e4)) / PartsPerHundred;

    /// <summary>How the parts follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Epoxy and amine", Parts);

    /// <summary>The parts in one line.</summary>
    /// <returns>Text such as <c>24.211 of hardener to 100 of resin by weight</c>.</returns>
    public override string ToString() => Figures.Significant(PartsPerHundred, 5) + " of hardener to 100 of resin by weight";

    private Num Parts(Trace? t = null) => t.Step(
        "hardener to 100 of resin by weight", "phr", Measure.Number, EquivalentWeights.EpoxySource,
        100 * t.Given("AHEW", amineHydrogen, Measure.EquivalentWeight) / t.Given("EEW", epoxide, Measure.EquivalentWeight));
}
