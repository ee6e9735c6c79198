using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Films;

/// <summary>A base with tints in it: absorption and scattering add by volume of dry film (Duncan), K = Σ c K, S = Σ c S.</summary>
/// <remarks>
/// D. R. Duncan, Journal of the Oil and Colour Chemists' Association 32 (1949) (from memory). It holds for one band of light and for
/// pigments that do not crowd each other. A little black in a white hardly changes S and plainly raises K: the film gets greyer and
/// hides sooner. Use one blend a band for colours.
/// </remarks>
/// <example><code>
/// TintBlend grey = new([
///     new TintPart("white base", PaintOptics.FromReflectivity(Ratio.FromPercent(90), ReciprocalLength.FromInverseMillimeters(140)), Ratio.FromPercent(99)),
///     new TintPart("black tint", new PaintOptics(ReciprocalLength.FromInverseMillimeters(2000), ReciprocalLength.FromInverseMillimeters(20)), Ratio.FromPercent(1)),
/// ]);
/// double seen = grey.Optics.Reflectivity.DecimalFractions;      // 0.5825
/// </code></example>
public sealed record TintBlend
{
    private static readonly Source Duncan = Source.FromMemory("Duncan, Journal of the Oil and Colour Chemists' Association 32, 1949: absorption and scattering add by volume");

    private readonly ValueList<TintPart> parts;

    /// <summary>Blends.</summary>
    /// <param name="parts">The parts, at least one.</param>
    /// <exception cref="ArgumentException">No part is given.</exception>
    public TintBlend(IEnumerable<TintPart> parts)
    {
        this.parts = Guard.List(parts, 1);
        Optics = new(Absorption().Value, Scattering().Value);
    }

    /// <summary>The parts.</summary>
    public IReadOnlyList<TintPart> Parts => parts;

    /// <summary>Absorption and scattering of the blend.</summary>
    public PaintOptics Optics { get; }

    /// <summary>
    /// Tinting strength of a sample against a standard, both let down alike in one white: the ratio of what each tint adds to K/S.
    /// </summary>
    /// <param name="standard">Reflectivity of the standard's let-down, more than 0 and less than 100 %.</param>
    /// <param name="sample">Reflectivity of the sample's let-down, more than 0 and less than 100 %.</param>
    /// <param name="white">Reflectivity of the white alone, above both.</param>
    /// <returns>1 for equal strength, 1.1 for ten per cent stronger.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Ratio Strength(Ratio standard, Ratio sample, Ratio white)
    {
        Bounds bounds = Bounds.Below(1e-4, 1, Measure.Percent);
        double alone = Guard.Within(white, Bounds.Between(1e-4, 1, Measure.Percent));
        double first = Guard.Within(standard, bounds);
        double second = Guard.Within(sample, bounds);
        Guard.Rule(first < alone, nameof(standard), first, Measure.Percent, "less than the white alone, ", alone);
        Guard.Rule(second < alone, nameof(sample), second, Measure.Percent, "less than the white alone, ", alone);
        Num below = HidingKernel.Ratio(alone);
        return Ratio.FromDecimalFractions(((HidingKernel.Ratio(second) - below) / (HidingKernel.Ratio(first) - below)).Value);
    }

    /// <summary>How the blend follows.</summary>
    /// <returns>The derivation; the reflectivity is its part.</returns>
    public Workings Workings() => Trace.Of("Tint blend", [Optics.Workings()], Absorption, Scattering);

    /// <summary>The blend in one line.</summary>
    /// <returns>Text such as <c>2 parts: K 0.0207 1/µm, S 0.139 1/µm</c>.</returns>
    public override string ToString() => Figures.Significant(parts.Count) + (parts.Count == 1 ? " part: " : " parts: ") + Optics;

    private Num Absorption(Trace? t = null) => t.Step("absorption", "K", Measure.PerFilm, Duncan,
        Num.Sum(parts.Count, (Blend: this, t), static (of, i) =>
            of.Blend.Share(i, of.t) * of.t.Given("K_", i + 1, of.Blend.parts[i].Optics.K, Measure.PerFilm)) / All(t));

    private Num Scattering(Trace? t = null) => t.Step("scattering", "S", Measure.PerFilm, Duncan,
        Num.Sum(parts.Count, (Blend: this, t), static (of, i) =>
            of.Blend.Share(i, of.t) * of.t.Given("S_", i + 1, of.Blend.parts[i].Optics.S, Measure.PerFilm)) / All(t));

    private Num All(Trace? t) => Num.Sum(parts.Count, (Blend: this, t), static (of, i) => of.Blend.Share(i, of.t));

    private Num Share(int i, Trace? t) => t.Given("c_", i + 1, parts[i].Parts, Measure.Percent);
}
