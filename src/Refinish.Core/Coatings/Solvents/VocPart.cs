using System;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>One part of a mixture by volume with its own content of volatile organic compounds.</summary>
public sealed record VocPart
{
    private readonly double volume;
    private readonly double content;

    /// <summary>Makes a part that counts.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="volume">Its volume, more than 0 and at most 100 m³; parts do as litres.</param>
    /// <param name="content">Its content less water and exempt compounds, 0 to 2 kg/L.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public VocPart(string name, Volume volume, MassConcentration content) : this(name, volume, content, false)
    {
    }

    /// <summary>Makes a part.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="volume">Its volume, more than 0 and at most 100 m³; parts do as litres.</param>
    /// <param name="content">Its content less water and exempt compounds, 0 to 2 kg/L.</param>
    /// <param name="isIgnored">
    /// Whether it is water or exempt solvent, which a rule leaves out of the volume; its content then has to be zero.
    /// </param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public VocPart(string name, Volume volume, MassConcentration content, bool isIgnored)
    {
        Name = Guard.Named(name);
        this.volume = Guard.Within(volume, Bounds.Positive(Measure.Capacity, 100));
        this.content = Guard.Within(content, Bounds.NotNegative(Measure.CoatingContent, isIgnored ? 0 : 2000));
        IsIgnored = isIgnored;
    }

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>Its volume.</summary>
    public Volume Volume => Volume.FromCubicMeters(volume);

    /// <summary>Its content less water and exempt compounds.</summary>
    public MassConcentration Content => MassConcentration.FromKilogramsPerCubicMeter(content);

    /// <summary>Whether it is water or exempt solvent.</summary>
    public bool IsIgnored { get; }

    /// <summary>Volume, name and content in one line.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Measure.Capacity.Format(volume) + " " + Name + (IsIgnored ? ", left out" : ", " + Measure.CoatingContent.Format(content));
}
