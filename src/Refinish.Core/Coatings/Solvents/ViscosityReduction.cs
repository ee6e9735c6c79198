using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// How much reducer brings a coating down to a spray viscosity, by a logarithmic mixing rule: a first guess, to be tried on a small
/// cup.
/// </summary>
/// <remarks>
/// <para>ln ν = φ_c·ln ν_c + φ_r·ln ν_r with φ the parts by volume, so R = φ_r/φ_c = ln(ν_c/ν)/ln(ν/ν_r). The form is Arrhenius's rule
/// for mixtures of liquids (from memory).</para>
/// <para>It knows nothing of how well a solvent dissolves a resin or of thickeners. Against six pairs of Ford cup readings of a
/// waterborne paint before and after 10 % of water, printed in a public forum, it reads 0 to 8 % too many seconds, worst for the
/// thickest (3 to 13 % if that 10 % was of the paint, not of the whole). One trial in the shop does better: <see cref="FromTrial"/>
/// finds the reducer viscosity that the rule would have needed for it.</para>
/// </remarks>
/// <example><code>
/// ViscosityReduction reduce = new(
///     FlowCups.Ford4.ViscosityAt(TimeSpan.FromSeconds(35)),
///     KinematicViscosity.FromCentistokes(0.9),
///     FlowCups.Ford4.ViscosityAt(TimeSpan.FromSeconds(22)));
/// double percent = reduce.Reducer.Percent;   // 12.9 % of the mixed product
/// </code></example>
public sealed record ViscosityReduction
{
    private static readonly Source Rule = Source.FromMemory("Arrhenius's logarithmic mixing rule, by parts of volume; a first guess");
    private static readonly Bounds Viscosities = Bounds.Between(1e-8, 1e-1, Measure.KinematicViscosity);

    private readonly double coating;
    private readonly double reducer;
    private readonly double target;

    /// <summary>Finds the reducer.</summary>
    /// <param name="coating">Viscosity of the mixed, unreduced coating, 0.01 to 100 000 mm²/s.</param>
    /// <param name="reducer">Viscosity of the reducer, less than the target's.</param>
    /// <param name="target">Viscosity wanted, at most that of the coating.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public ViscosityReduction(KinematicViscosity coating, KinematicViscosity reducer, KinematicViscosity target)
    {
        this.coating = Guard.Within(coating, Viscosities);
        this.target = Guard.Within(target, Bounds.Between(1e-8, this.coating, Measure.KinematicViscosity));
        this.reducer = Guard.Within(reducer, Viscosities);
        Guard.Rule(this.reducer < this.target, nameof(reducer), this.reducer, Measure.KinematicViscosity, "less than the viscosity wanted");
    }

    /// <summary>Viscosity of the mixed, unreduced coating.</summary>
    public KinematicViscosity Coating => KinematicViscosity.FromSquareMetersPerSecond(coating);

    /// <summary>Viscosity wanted.</summary>
    public KinematicViscosity Target => KinematicViscosity.FromSquareMetersPerSecond(target);

    /// <summary>Reducer per volume of mixed coating.</summary>
    public Ratio Reducer => Ratio.FromDecimalFractions(Share().Value);

    /// <summary>How to use the number.</summary>
    public IReadOnlyList<Caution> Cautions { get; } = new ValueList<Caution>([Refinish.Cautions.ReduceInSteps]);

    /// <summary>The reducer viscosity with which the rule describes one trial in the shop.</summary>
    /// <param name="coating">Viscosity before, 0.01 to 100 000 mm²/s.</param>
    /// <param name="reducer">Reducer per volume of mixed coating that was put in, 0.1 to 100 %.</param>
    /// <param name="result">Viscosity after, less than before.</param>
    /// <returns>An effective viscosity, which may lie far from the reducer's own.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static KinematicViscosity FromTrial(KinematicViscosity coating, Ratio reducer, KinematicViscosity result)
    {
        double before = Guard.Within(coating, Viscosities);
        double share = Guard.Within(reducer, Bounds.Between(1e-3, 1, Measure.Percent));
        double after = Guard.Within(result, Bounds.Below(1e-8, before, Measure.KinematicViscosity));
        return KinematicViscosity.FromSquareMetersPerSecond(after * Math.Exp(-Math.Log(before / after) / share));
    }

    /// <summary>Viscosity of a coating with a share of reducer, by the same rule.</summary>
    /// <param name="share">Reducer per volume of mixed coating, 0 to 100 %.</param>
    /// <returns>The viscosity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public KinematicViscosity ViscosityWith(Ratio share)
    {
        double r = Guard.Within(share, Bounds.NotNegative(Measure.Percent, 1));
        return KinematicViscosity.FromSquareMetersPerSecond(Math.Exp((Math.Log(coating) + (r * Math.Log(reducer))) / (1 + r)));
    }

    /// <summary>The reducer needed against what the product's data sheet allows.</summary>
    /// <param name="product">The product.</param>
    /// <returns>The comparison.</returns>
    public LimitComparison Compare(CoatingProduct product)
    {
        double share = Share().Value;
        double most = Guard.NotNull(product).MaximumReducer.DecimalFractions;
        return new(
            "reducer for the viscosity wanted", share, most, LimitSense.AtMost, Measure.Percent, product.Source,
            share <= most
                ? null
                : "Warm the coating, take a larger fluid tip, or ask for a lower viscosity; do not thin beyond the data sheet.");
    }

    /// <summary>How the reducer follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Reducer for a spray viscosity", Share);

    /// <summary>The reducer in one line.</summary>
    /// <returns>Text such as <c>about 12.9 % reducer, to be tried</c>.</returns>
    public override string ToString() => "about " + Measure.Percent.Format(Share().Value, DisplayUnits.Si, 3) + " reducer, to be tried";

    private Num Share(Trace? t = null)
    {
        Num wanted = t.Given("ν", target, Measure.KinematicViscosity);
        return t.Step(
            "reducer per volume of mixed coating", "R", Measure.Percent, Rule,
            Num.Ln(t.Given("ν_c", coating, Measure.KinematicViscosity) / wanted)
                / Num.Ln(wanted / t.Given("ν_r", reducer, Measure.KinematicViscosity)));
    }
}
