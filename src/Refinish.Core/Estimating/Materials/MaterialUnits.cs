using System;

namespace Refinish.Estimating;

/// <summary>
/// The five ways in which material is measured: what shows them, how much of each is reckoned with, and in which units it is sold.
/// </summary>
internal static class MaterialUnits
{
    // NIST Special Publication 811 (2008), Appendix B; the US gallon is 231 cubic inches, NIST Handbook 44, Appendix C.
    private const double Inch = 0.0254;
    private const double Foot = 0.3048;
    private const double UsGallon = 231 * Inch * Inch * Inch;
    private const double Pound = 0.45359237;

    public static Measure MeasureOf(MaterialDimension dimension) => dimension switch
    {
        MaterialDimension.Volume => Measure.Capacity,
        MaterialDimension.Mass => Measure.Weight,
        MaterialDimension.Area => Measure.Area,
        MaterialDimension.Length => Measure.Distance,
        _ => Measure.Number,
    };

    /// <summary>Most that is bought of one material, in SI; 10¹⁸ steps of the search.</summary>
    public static double Most(MaterialDimension dimension) => dimension == MaterialDimension.Volume ? 1000 : 1e6;

    /// <summary>Sizes of a kit that are allowed, in SI.</summary>
    public static Bounds KitSizes(MaterialDimension dimension) => dimension switch
    {
        MaterialDimension.Volume => Bounds.Between(1e-6, 1, Measure.Capacity),
        MaterialDimension.Mass => Bounds.Between(1e-3, 1e4, Measure.Weight),
        MaterialDimension.Area => Bounds.Between(1e-3, 1e4, Measure.Area),
        MaterialDimension.Length => Bounds.Between(1e-3, 1e5, Measure.Distance),
        _ => Bounds.Between(1, 1e6, Measure.Number),
    };

    /// <summary>
    /// What a loose unit measures and how large it is in SI; <see langword="null"/> for a unit that no material is sold in.
    /// </summary>
    public static (MaterialDimension Dimension, double Si)? Find(LineUnit unit) => unit switch
    {
        LineUnit.Each => (MaterialDimension.Pieces, 1),
        LineUnit.Millilitre => (MaterialDimension.Volume, 1e-6),
        LineUnit.Litre => (MaterialDimension.Volume, 1e-3),
        LineUnit.UsFluidOunce => (MaterialDimension.Volume, UsGallon / 128),
        LineUnit.UsQuart => (MaterialDimension.Volume, UsGallon / 4),
        LineUnit.UsGallon => (MaterialDimension.Volume, UsGallon),
        LineUnit.Gram => (MaterialDimension.Mass, 1e-3),
        LineUnit.Kilogram => (MaterialDimension.Mass, 1),
        LineUnit.Pound => (MaterialDimension.Mass, Pound),
        LineUnit.Metre => (MaterialDimension.Length, 1),
        LineUnit.Foot => (MaterialDimension.Length, Foot),
        LineUnit.SquareMetre => (MaterialDimension.Area, 1),
        LineUnit.SquareFoot => (MaterialDimension.Area, Foot * Foot),
        _ => null,
    };

    public static (MaterialDimension Dimension, double Si) Of(LineUnit unit, string name) =>
        Find(Guard.Defined(unit, name)) ?? throw new ArgumentOutOfRangeException(
            name,
            unit.ToString("G"),
            name + " is " + unit.ToString("G") + "; allowed: the units of volume, mass, area and length, and Each.");

    /// <summary>The dimension in words, behind "by".</summary>
    public static string Word(MaterialDimension dimension) => dimension switch
    {
        MaterialDimension.Volume => "volume",
        MaterialDimension.Mass => "mass",
        MaterialDimension.Area => "area",
        MaterialDimension.Length => "length",
        _ => "the piece",
    };

    /// <summary>
    /// An amount to twelve figures in one unit of its kind, as a part of an identity: one size, whatever unit it was given in.
    /// </summary>
    public static string Key(MaterialDimension dimension, double si) => dimension switch
    {
        MaterialDimension.Volume => Figures.Significant(si * 1e6, 12),
        MaterialDimension.Mass => Figures.Significant(si * 1e3, 12) + "-g",
        MaterialDimension.Area => Figures.Significant(si, 12) + "-m2",
        MaterialDimension.Length => Figures.Significant(si, 12) + "-m",
        _ => Figures.Significant(si, 12) + "-each",
    };

    /// <summary>A loose unit as a part of an identity.</summary>
    public static string Key(LineUnit unit) => unit switch
    {
        LineUnit.UsFluidOunce => "us-fluid-ounce",
        LineUnit.UsQuart => "us-quart",
        LineUnit.UsGallon => "us-gallon",
        LineUnit.SquareMetre => "square-metre",
        LineUnit.SquareFoot => "square-foot",
        _ => unit.ToString("G").ToLowerInvariant(),
    };
}
