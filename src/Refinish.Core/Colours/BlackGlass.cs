using System;
using UnitsNet;

namespace Refinish.Colours;

/// <summary>
/// What a polished black glass, or any smooth dark clear surface, reads on a gloss meter: the reference from its refractive index.
/// </summary>
/// <remarks>
/// Gloss = 100 · R(n, θ)/R(1.567, θ), R the Fresnel reflectance of unpolarised light; ISO 2813:1997, clause on the primary standard: n
/// = 1.567 at 587.6 nm is 100 at 20, 60 and 85° (seen in excerpts). It is also the most that a smooth coating of this index can read
/// over black: more needs a metal or a mirror below, and a coating that reads less is not smooth, not cured, or scatters.
/// </remarks>
/// <example><code>
/// BlackGlass tile = new(1.52);
/// double gloss = tile.Gloss(GlossAngle.Sixty);          // 92.4
/// </code></example>
public sealed record BlackGlass
{
    private static readonly Source Standard = Source.Published("ISO 2813:1997", "primary standard: index 1.567 at 587.6 nm is 100 at 20, 60 and 85° (seen in excerpts)");
    private static readonly Source Fresnel = Source.Derived("Fresnel's equations for unpolarised light from air");

    /// <summary>Takes the index.</summary>
    /// <param name="refractiveIndex">At 587.6 nm, 1.1 to 3.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public BlackGlass(double refractiveIndex) => RefractiveIndex = Guard.Within(refractiveIndex, Bounds.Between(1.1, 3, Measure.Number));

    /// <summary>Refractive index at 587.6 nm.</summary>
    public double RefractiveIndex { get; }

    /// <summary>Part of unpolarised light that the surface reflects at an angle.</summary>
    /// <param name="angle">Angle of the reading.</param>
    /// <returns>The reflectance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public Ratio Reflectance(GlossAngle angle)
    {
        double radians = GlossKernel.Radians(Guard.Defined(angle));
        return Ratio.FromDecimalFractions(GlossKernel.Reflectance(RefractiveIndex, radians).Value);
    }

    /// <summary>Gloss in gloss units at an angle.</summary>
    /// <param name="angle">Angle of the reading.</param>
    /// <returns>100 for an index of 1.567.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public double Gloss(GlossAngle angle)
    {
        double radians = GlossKernel.Radians(Guard.Defined(angle));
        Num standard = GlossKernel.Reflectance(GlossKernel.StandardIndex, radians);
        return GlossKernel.Gloss(GlossKernel.Reflectance(RefractiveIndex, radians), standard).Value;
    }

    /// <summary>How the gloss at the three angles follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Trace t = new();
        Num n = t.Given("n", RefractiveIndex, Measure.Number);
        Num standardIndex = t.Given("n_s", GlossKernel.StandardIndex, Measure.Number);
        foreach (GlossAngle angle in new GlossAngle[] { GlossAngle.Twenty, GlossAngle.Sixty, GlossAngle.EightyFive })
        {
            string degrees = Figures.Significant(GlossKernel.Degrees(angle));
            Num theta = t.Given("θ", GlossKernel.Radians(angle), Measure.Angle);
            Num own = GlossKernel.Reflectance(n, theta);
            Num standard = GlossKernel.Reflectance(standardIndex, theta);
            own = t.Step("reflectance at " + degrees + "°", "R_" + degrees, Measure.Percent, Fresnel, own);
            standard = t.Step("reflectance of the standard at " + degrees + "°", "R_s" + degrees, Measure.Percent, Standard, standard);
            t.Step("gloss at " + degrees + "°", "G_" + degrees, Measure.Gloss, Standard, GlossKernel.Gloss(own, standard));
        }

        return t.Workings("Gloss of black glass");
    }

    /// <summary>The gloss at 60° in one line.</summary>
    /// <returns>Text such as <c>index 1.52: 92.4 GU at 60°</c>.</returns>
    public override string ToString() => "index " + Figures.Significant(RefractiveIndex) + ": " + Measure.Gloss.Format(Gloss(GlossAngle.Sixty), DisplayUnits.Si, 3) + " at 60°";
}
