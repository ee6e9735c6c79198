using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>One pouring into a cup: how much of which can, and where line and scale stand after it.</summary>
public sealed record PouredPart
{
    private readonly double volume;
    private readonly double mass;
    private readonly double line;
    private readonly double scale;

    internal PouredPart(CoatingComponent component, double volume, PouredPart? before)
    {
        Component = component;
        this.volume = volume;
        mass = volume * component.Density.KilogramsPerCubicMeter;
        line = volume + (before?.line ?? 0);
        scale = mass + (before?.scale ?? 0);
    }

    /// <summary>What is poured.</summary>
    public CoatingComponent Component { get; }

    /// <summary>How much of it by volume.</summary>
    public Volume Volume => Volume.FromCubicMeters(volume);

    /// <summary>How much of it by weight.</summary>
    public Mass Mass => Mass.FromKilograms(mass);

    /// <summary>The fill line after it.</summary>
    public Volume FillLine => Volume.FromCubicMeters(line);

    /// <summary>The reading on the scale after it, without taring.</summary>
    public Mass Scale => Mass.FromKilograms(scale);

    /// <summary>Volume and can, in metric units.</summary>
    /// <returns>Text such as <c>400 mL topcoat base</c>.</returns>
    public override string ToString() => Measure.Liquid.Format(volume, DisplayUnits.Si, 4) + " " + Component.Name;
}
