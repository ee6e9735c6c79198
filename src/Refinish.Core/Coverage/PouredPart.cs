using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>One pouring into a cup: how much of which can, and where line and scale stand after it.</summary>
public sealed record PouredPart
{
    internal PouredPart(CoatingComponent component, double volume, PouredPart? before)
    {
        Component = component;
        Volume = Volume.FromCubicMeters(volume);
        Mass = Mass.FromKilograms(volume * component.Density.KilogramsPerCubicMeter);
        FillLine = Volume.FromCubicMeters(volume + (before?.FillLine.CubicMeters ?? 0));
        Scale = Mass.FromKilograms(Mass.Kilograms + (before?.Scale.Kilograms ?? 0));
    }

    /// <summary>What is poured.</summary>
    public CoatingComponent Component { get; }

    /// <summary>How much of it by volume.</summary>
    public Volume Volume { get; }

    /// <summary>How much of it by weight.</summary>
    public Mass Mass { get; }

    /// <summary>The fill line after it.</summary>
    public Volume FillLine { get; }

    /// <summary>The reading on the scale after it, without taring.</summary>
    public Mass Scale { get; }

    /// <summary>Volume and can, in metric units.</summary>
    /// <returns>Text such as <c>400 mL topcoat base</c>.</returns>
    public override string ToString() => Measure.Liquid.Format(Volume.CubicMeters, DisplayUnits.Si, 4) + " " + Component.Name;
}
