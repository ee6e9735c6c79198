using System;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// Volatile organic compounds of a coating as it is applied: all of it, and "less water and exempt compounds" as rules limit it.
/// </summary>
/// <remarks>
/// <para>Material: (W_v − W_w − W_ec)/V. Regulatory: (W_v − W_w − W_ec)/(V − V_w − V_ec), W_v all volatile mass, w water, ec exempt
/// compounds. Variables as in 40 CFR 59.104(a)(1), read there; the equation itself is a picture in the copy seen and is from memory. A
/// district's page on the calculation says the same in words. Without water and exempt compounds the two are equal.</para>
/// <para>Per volume of solids: S = C/(1 − C/D), D the density of the volatile organic compounds (30 TAC 115.423(1)).</para>
/// </remarks>
/// <example><code>
/// VocContent voc = new()
/// {
///     Volume = Volume.FromLiters(1), Volatiles = Mass.FromGrams(500),
///     Water = Mass.FromGrams(100), WaterVolume = Volume.FromMilliliters(100),
///     Exempt = Mass.FromGrams(50), ExemptVolume = Volume.FromMilliliters(62.5),
/// };
/// double gramsPerLitre = voc.Regulatory.GramsPerLiter;   // 417.9
/// </code></example>
public sealed record VocContent
{
    internal static readonly Source Form = Source.Published("40 CFR 59.104", "(a)(1), variables; the equation is from memory");

    private static readonly Source Solids = Source.Published("30 TAC 115.423", "(1), S = C/(1 − C/D)");
    private static readonly Bounds Masses = Bounds.NotNegative(Measure.Mass, 1e5);

    private readonly double volume;
    private readonly double volatiles;
    private readonly double water;
    private readonly double waterVolume;
    private readonly double exempt;
    private readonly double exemptVolume;

    /// <summary>Volume of coating, more than 0 and at most 100 m³.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Volume Volume
    {
        get => Volume.FromCubicMeters(volume);
        init => volume = Guard.Within(value, Bounds.Positive(Measure.Capacity, 100));
    }

    /// <summary>Everything in it that evaporates, water and exempt compounds included; 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public required Mass Volatiles { get => Mass.FromKilograms(volatiles); init => volatiles = Guard.Within(value, Masses); }

    /// <summary>Water in it; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public Mass Water { get => Mass.FromKilograms(water); init => water = Guard.Within(value, Masses); }

    /// <summary>Volume of that water; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public Volume WaterVolume
    {
        get => Volume.FromCubicMeters(waterVolume);
        init => waterVolume = Guard.Within(value, Bounds.NotNegative(Measure.Capacity, 100));
    }

    /// <summary>Exempt compounds in it; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public Mass Exempt { get => Mass.FromKilograms(exempt); init => exempt = Guard.Within(value, Masses); }

    /// <summary>Volume of those exempt compounds; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public Volume ExemptVolume
    {
        get => Volume.FromCubicMeters(exemptVolume);
        init => exemptVolume = Guard.Within(value, Bounds.NotNegative(Measure.Capacity, 100));
    }

    /// <summary>Volatile organic compounds per volume of coating, water and exempt compounds in the volume.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Water and exempt compounds weigh more than all volatiles.</exception>
    public MassConcentration Material => MassConcentration.FromKilogramsPerCubicMeter(OfMaterial().Value);

    /// <summary>Volatile organic compounds per volume of coating less water and exempt compounds: what a limit is compared with.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// Water and exempt compounds weigh more than all volatiles, or fill the whole volume.
    /// </exception>
    public MassConcentration Regulatory => MassConcentration.FromKilogramsPerCubicMeter(LessWater().Value);

    /// <summary>Volatile organic compounds per volume of solids.</summary>
    /// <param name="content">Content less water and exempt compounds, 0 or more and less than <paramref name="density"/>.</param>
    /// <param name="density">Density of the volatile organic compounds, 0.5 to 2 g/mL; rules commonly take 7.36 lb/US gal.</param>
    /// <returns>Mass per volume of solids.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static MassConcentration PerSolids(MassConcentration content, Density density)
    {
        double d = Guard.Within(density, Bounds.Between(500, 2000, Measure.Density));
        double c = Guard.Within(content, Bounds.Below(0, d, Measure.CoatingContent));
        return MassConcentration.FromKilogramsPerCubicMeter(PerSolids(c, d, null).Value);
    }

    /// <summary>How both contents follow.</summary>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">See <see cref="Regulatory"/>.</exception>
    public Workings Workings() => Trace.Of("Volatile organic compounds", Organic, OfMaterial, LessWater);

    /// <summary>Both contents in one line.</summary>
    /// <returns>Text such as <c>350 g/L, 417.9 g/L less water and exempt compounds</c>.</returns>
    public override string ToString() =>
        Measure.CoatingContent.Format(OfMaterial().Value, DisplayUnits.Si, 4) + ", "
        + Measure.CoatingContent.Format(LessWater().Value, DisplayUnits.Si, 4) + " less water and exempt compounds";

    /// <summary>S = C/(1 − C/D).</summary>
    internal static Num PerSolids(double content, double density, Trace? t)
    {
        Num c = t.Given("C", content, Measure.CoatingContent);
        return t.Step(
            "VOC per volume of solids", "S", Measure.CoatingContent, Solids, c / (1 - (c / t.Given("D", density, Measure.Density))));
    }

    private Num Organic(Trace? t = null)
    {
        Guard.Rule(water + exempt <= volatiles * (1 + 1e-12), nameof(Volatiles), volatiles, Measure.Mass,
            "at least water and exempt compounds together");
        return t.Step(
            "volatile organic compounds", "W_voc", Measure.Mass, Form,
            Num.Max(0, t.Given("W_v", volatiles, Measure.Mass) - t.Given("W_w", water, Measure.Mass)
                - t.Given("W_ec", exempt, Measure.Mass)));
    }

    private Num OfMaterial(Trace? t = null) =>
        t.Step("VOC of the material", "VOC_m", Measure.CoatingContent, Form, Organic(t) / t.Given("V", volume, Measure.Capacity));

    private Num LessWater(Trace? t = null)
    {
        Guard.Rule(waterVolume + exemptVolume < volume, nameof(Volume), volume, Measure.Capacity,
            "more than water and exempt compounds together");
        return t.Step(
            "VOC less water and exempt compounds", "VOC_r", Measure.CoatingContent, Form,
            Organic(t) / (t.Given("V", volume, Measure.Capacity) - t.Given("V_w", waterVolume, Measure.Capacity)
                - t.Given("V_ec", exemptVolume, Measure.Capacity)));
    }
}
