using UnitsNet;

namespace Refinish.Substrates;

/// <summary>A hollow of a defect of a caller's own: how much filler it holds when it is full, and how deep it is.</summary>
/// <example><code>
/// Hollow hollow = new(Volume.FromMilliliters(4), Length.FromMillimeters(3));
/// double cubicMillimetres = hollow.Volume.CubicMillimeters;   // 4000
/// </code></example>
public sealed record Hollow
{
    private readonly double volume;
    private readonly double depth;

    /// <summary>Records the hollow under one defect.</summary>
    /// <param name="volume">Volume, more than 0 and at most 10 L.</param>
    /// <param name="depth">Deepest point, at least 1 µm and at most 100 mm.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">A size is outside its range.</exception>
    public Hollow(Volume volume, Length depth)
    {
        this.volume = Guard.Within(volume, Bounds.Positive(Measure.Liquid, 0.01));
        this.depth = Guard.Within(depth, Defect.Depths(0.1));
    }

    /// <summary>Volume; shrinkage, sanding and waste of the filler come on top.</summary>
    public Volume Volume => Volume.FromCubicMeters(volume);

    /// <summary>Deepest point.</summary>
    public Length Depth => Length.FromMeters(depth);

    /// <summary>Volume and depth, in metric units.</summary>
    /// <returns>Text such as <c>hollow of 4 mL, 3 mm deep</c>.</returns>
    public override string ToString() => Describe(DisplayUnits.Si);

    internal string Describe(DisplayUnits system) =>
        "hollow of " + Measure.Liquid.Format(volume, system, 3) + ", " + Measure.Length.Format(depth, system, 4) + " deep";

    internal double CubicMetres => volume;

    internal double Metres => depth;
}
