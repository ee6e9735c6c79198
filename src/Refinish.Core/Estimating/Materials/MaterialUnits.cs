using System;
using System.Linq;

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

    // In the order of the enumeration.
    private static readonly Row[] Rows =
    [
        new(1000, Bounds.Between(1e-6, 1, Measure.Capacity), "volume", 1e6, string.Empty),
        new(1e6, Bounds.Between(1e-3, 1e4, Measure.Weight), "mass", 1e3, "-g"),
        new(1e6, Bounds.Between(1e-3, 1e4, Measure.Area), "area", 1, "-m2"),
        new(1e6, Bounds.Between(1e-3, 1e5, Measure.Distance), "length", 1, "-m"),
        new(1e6, Bounds.Between(1, 1e6, Measure.Number), "the piece", 1, "-each"),
    ];

    public static Measure MeasureOf(MaterialDimension dimension) => Rows[(int)dimension].Sizes.Measure;

    /// <summary>Most that is bought of one material, in SI; 10¹⁸ steps of the search.</summary>
    public static double Most(MaterialDimension dimension) => Rows[(int)dimension].Most;

    /// <summary>Sizes of a kit that are allowed, in SI.</summary>
    public static Bounds KitSizes(MaterialDimension dimension) => Rows[(int)dimension].Sizes;

    /// <summary>The dimension in words, behind "by".</summary>
    public static string Word(MaterialDimension dimension) => Rows[(int)dimension].Word;

    /// <summary>
    /// An amount to twelve figures in one unit of its kind, as a part of an identity: one size, whatever unit it was given in.
    /// </summary>
    public static string Key(MaterialDimension dimension, double si) =>
        Figures.Significant(si * Rows[(int)dimension].PerSi, 12) + Rows[(int)dimension].Key;

    /// <summary>A loose unit as a part of an identity, such as <c>us-fluid-ounce</c>.</summary>
    public static string Key(LineUnit unit) => string.Concat(unit.ToString("G").Select((letter, i) =>
        (i > 0 && char.IsUpper(letter) ? "-" : string.Empty) + char.ToLowerInvariant(letter)));

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

    // Most that is bought, sizes of a kit, the word behind "by", and the number and end of a key.
    private sealed record Row(double Most, Bounds Sizes, string Word, double PerSi, string Key);
}
