using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;

namespace Refinish.Inspection;

/// <summary>Whether a gauge can measure the new film on a material, why not, and what has to be minded.</summary>
/// <remarks>
/// Magnetic gauges are for iron and steel, eddy-current gauges for other metals (ASTM D7091, ISO 2808; scope seen), ultrasonic gauges
/// for non-metals (ASTM D6132, from memory). A magnetic gauge sees everything down to the iron: vitreous enamel, itself about 0.2 to 1
/// mm, reads as coating.
/// </remarks>
/// <example><code>
/// GaugeFit fit = new(GaugeKind.Magnetic, FixtureMaterial.Gelcoat);
/// string? why = fit.Objection;                 // there is no metal for it to find
/// </code></example>
public sealed record GaugeFit
{
    private static readonly Source Scope = Source.Published("ASTM D7091 and SSPC-PA 2", "scope: magnetic gauges on ferrous, eddy-current gauges on non-ferrous metal");
    private static readonly Source Practice = Source.FromMemory("ASTM D6132, ultrasonic gauges on non-metal substrates; witness panels are common practice");

    /// <summary>Takes the gauge and the material.</summary>
    /// <param name="gauge">The gauge.</param>
    /// <param name="material">What the fixture is made of.</param>
    /// <exception cref="ArgumentNullException"><paramref name="material"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="gauge"/> is not a named value.</exception>
    public GaugeFit(GaugeKind gauge, FixtureMaterial material)
    {
        Gauge = Guard.Defined(gauge);
        Material = Guard.NotNull(material);
    }

    /// <summary>The gauge.</summary>
    public GaugeKind Gauge { get; }

    /// <summary>What the fixture is made of.</summary>
    public FixtureMaterial Material { get; }

    /// <summary>Whether the gauge can measure there.</summary>
    public bool IsUsable => Objection is null;

    /// <summary>Whether readings on the bare surface have to be taken off, as over enamel.</summary>
    public bool NeedsBaseReading => IsUsable && Gauge == GaugeKind.Magnetic;

    /// <summary>Why the gauge cannot measure there; <see langword="null"/> when it can.</summary>
    public string? Objection => Gauge switch
    {
        GaugeKind.WitnessPanel => null,
        _ when Material.IsUnknown => "the material is not known: find out what lies below before a reading means anything",
        _ when Material.IsOldCoating => "an old coating does not say what lies below it: name what the fixture is made of",
        GaugeKind.Magnetic when !Material.IsMagnetic =>
            "a magnetic gauge needs iron or steel below; " + Material.Name + " has no metal for it to find",
        GaugeKind.EddyCurrent when Material.IsMagnetic =>
            "an eddy-current gauge is for metals that are not magnetic; on " + Material.Name + " a magnetic gauge reads",
        GaugeKind.EddyCurrent when Material.Metal == MetalBelow.None =>
            "an eddy-current gauge needs metal below; " + Material.Name + " has none",
        _ => null,
    };

    /// <summary>What has to be minded.</summary>
    public string Note => Gauge switch
    {
        GaugeKind.Magnetic =>
            "The gauge counts enamel or zinc as coating: read the prepared surface in ten places or more before coating and take the mean off.",
        GaugeKind.EddyCurrent => "Use it on an aluminium panel sprayed along, or on the metal itself; adjust it on the bare metal.",
        GaugeKind.Ultrasonic => "Use a coupling gel and wash it off; coats of like resin give no echo between them; verify on a panel of the same coating and substrate.",
        _ => "A metal panel of postcard size beside the zone at the same slope, measured after cure; it tells what was sprayed there, not what ran.",
    };

    /// <summary>What this rests on.</summary>
    public Source Source => Gauge is GaugeKind.Magnetic or GaugeKind.EddyCurrent ? Scope : Practice;

    /// <summary>The gauges that can measure on a material, the direct ones first.</summary>
    /// <param name="material">What the fixture is made of.</param>
    /// <returns>The gauges with their notes.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="material"/> is missing.</exception>
    public static IReadOnlyList<GaugeFit> For(FixtureMaterial material)
    {
        Guard.NotNull(material);
        GaugeKind[] kinds = [GaugeKind.Magnetic, GaugeKind.EddyCurrent, GaugeKind.Ultrasonic, GaugeKind.WitnessPanel];
        return new ValueList<GaugeFit>(kinds.Select(kind => new GaugeFit(kind, material)).Where(fit => fit.IsUsable));
    }

    /// <summary>The fit in one line.</summary>
    /// <returns>Text such as <c>magnetic gauge on enamelled steel: usable, with a base reading</c>.</returns>
    public override string ToString() =>
        Words + " on " + Material.Name + ": " + (Objection ?? (NeedsBaseReading ? "usable, with a base reading" : "usable"));

    private string Words => Gauge switch
    {
        GaugeKind.Magnetic => "magnetic gauge",
        GaugeKind.EddyCurrent => "eddy-current gauge",
        GaugeKind.Ultrasonic => "ultrasonic gauge",
        _ => "witness panel",
    };
}
