using System;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// What the surface of a film adds to and takes from what its inside reflects (Saunderson): measured R = k₁ + (1 − k₁)(1 − k₂) R′/(1 −
/// k₂ R′).
/// </summary>
/// <remarks>
/// k₁ is the outer reflection at the meter's incidence, (n − 1)²/(n + 1)² near the normal, 0.04 for n = 1.5; with the gloss excluded
/// the term k₁ alone is left out. k₂ is the inner reflection of diffuse light: 0.60 is the theory's for n = 1.5, 0.4 to 0.5 often fits
/// paint better. J. L. Saunderson, Journal of the Optical Society of America 32 (1942); figures from memory.
/// </remarks>
/// <example><code>
/// SurfaceReflection surface = new(Ratio.FromPercent(4), Ratio.FromPercent(60), glossIncluded: true);
/// double seen = surface.Measured(Ratio.FromPercent(90)).DecimalFractions;       // 0.7913
/// </code></example>
public sealed record SurfaceReflection
{
    private static readonly Source Saunderson = Source.FromMemory("Saunderson, Journal of the Optical Society of America 32, 1942");

    /// <summary>Takes both reflections.</summary>
    /// <param name="outer">k₁, 0 to 20 %.</param>
    /// <param name="inner">k₂, 0 to 80 %.</param>
    /// <param name="glossIncluded">Whether the meter includes the outer reflection, as most do.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public SurfaceReflection(Ratio outer, Ratio inner, bool glossIncluded)
    {
        Outer = Guard.Checked(outer, Bounds.Between(0, 0.2, Measure.Percent));
        Inner = Guard.Checked(inner, Bounds.Between(0, 0.8, Measure.Percent));
        GlossIncluded = glossIncluded;
    }

    /// <summary>k₁, the outer reflection.</summary>
    public Ratio Outer { get; }

    /// <summary>k₂, the inner reflection.</summary>
    public Ratio Inner { get; }

    /// <summary>Whether the meter includes the outer reflection.</summary>
    public bool GlossIncluded { get; }

    private double Gloss => GlossIncluded ? Outer.DecimalFractions : 0;

    /// <summary>What a meter reads.</summary>
    /// <param name="inside">Reflectance inside the film, 0 to 100 %.</param>
    /// <returns>The measured reflectance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio Measured(Ratio inside) => Ratio.FromDecimalFractions(MeasuredOf(inside).Value);

    /// <summary>What the inside reflects.</summary>
    /// <param name="measured">Measured reflectance: from that of a black inside to that of a white one.</param>
    /// <returns>The reflectance inside the film, 0 to 100 %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No inside has this reading.</exception>
    public Ratio Inside(Ratio measured)
    {
        double most = Gloss + 1 - Outer.DecimalFractions;
        double m = Guard.Within(measured, Bounds.Between(Gloss, most, Measure.Percent)) - Gloss;
        return Ratio.FromDecimalFractions(
            Math.Min(1, m / (((1 - Outer.DecimalFractions) * (1 - Inner.DecimalFractions)) + (Inner.DecimalFractions * m))));
    }

    /// <summary>How a measured reflectance follows.</summary>
    /// <param name="inside">Reflectance inside the film, 0 to 100 %.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Workings Workings(Ratio inside) => Trace.Of("Reflection at the surface", t => MeasuredOf(inside, t));

    /// <summary>Both reflections in one line.</summary>
    /// <returns>Text such as <c>k1 4 %, k2 60 %, gloss included</c>.</returns>
    public override string ToString() =>
        "k1 " + Measure.Percent.Format(Outer.DecimalFractions) + ", k2 " + Measure.Percent.Format(Inner.DecimalFractions)
            + (GlossIncluded ? ", gloss included" : ", gloss excluded");

    private Num MeasuredOf(Ratio inside, Trace? t = null)
    {
        Num r = t.Given("R′", Guard.Within(inside, Bounds.Between(0, 1, Measure.Percent)), Measure.Percent);
        Num k1 = t.Given("k_1", Outer.DecimalFractions, Measure.Percent);
        Num k2 = t.Given("k_2", Inner.DecimalFractions, Measure.Percent);
        Num diffuse = (1 - k1) * (1 - k2) * r / (1 - (k2 * r));
        return t.Step("measured reflectance", "R_m", Measure.Percent, Saunderson, GlossIncluded ? k1 + diffuse : diffuse);
    }
}
