using System;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>An amount of material: a volume, a mass, an area, a length, or a number of pieces.</summary>
/// <remarks>
/// Quantities of the units library turn into amounts by themselves. An amount may be any number; what takes one states its range. Two
/// amounts are equal when they measure alike and hold the same number in SI. The default is no volume.
/// </remarks>
/// <example><code>
/// MaterialAmount film = Area.FromSquareMeters(12);
/// double feet = film.In(LineUnit.SquareFoot);   // 129.17
/// </code></example>
public readonly record struct MaterialAmount
{
    internal MaterialAmount(MaterialDimension dimension, double si)
    {
        Dimension = dimension;
        Si = si;
    }

    /// <summary>How it is measured.</summary>
    public MaterialDimension Dimension { get; }

    /// <summary>The volume; <see langword="null"/> for an amount that is measured otherwise.</summary>
    public Volume? Volume => Dimension == MaterialDimension.Volume ? UnitsNet.Volume.FromCubicMeters(Si) : null;

    /// <summary>The mass; <see langword="null"/> for an amount that is measured otherwise.</summary>
    public Mass? Mass => Dimension == MaterialDimension.Mass ? UnitsNet.Mass.FromKilograms(Si) : null;

    /// <summary>The area; <see langword="null"/> for an amount that is measured otherwise.</summary>
    public Area? Area => Dimension == MaterialDimension.Area ? UnitsNet.Area.FromSquareMeters(Si) : null;

    /// <summary>The length; <see langword="null"/> for an amount that is measured otherwise.</summary>
    public Length? Length => Dimension == MaterialDimension.Length ? UnitsNet.Length.FromMeters(Si) : null;

    /// <summary>The number of pieces; <see langword="null"/> for an amount that is measured otherwise.</summary>
    public double? Pieces => Dimension == MaterialDimension.Pieces ? Si : null;

    /// <summary>In m³, kg, m², m or pieces.</summary>
    internal double Si { get; }

    internal Measure Measure => MaterialUnits.MeasureOf(Dimension);

    /// <summary>A volume.</summary>
    /// <param name="volume">The volume.</param>
    /// <returns>The amount.</returns>
    public static MaterialAmount FromVolume(Volume volume) => new(MaterialDimension.Volume, volume.CubicMeters);

    /// <summary>A mass.</summary>
    /// <param name="mass">The mass.</param>
    /// <returns>The amount.</returns>
    public static MaterialAmount FromMass(Mass mass) => new(MaterialDimension.Mass, mass.Kilograms);

    /// <summary>An area.</summary>
    /// <param name="area">The area.</param>
    /// <returns>The amount.</returns>
    public static MaterialAmount FromArea(Area area) => new(MaterialDimension.Area, area.SquareMeters);

    /// <summary>A length.</summary>
    /// <param name="length">The length.</param>
    /// <returns>The amount.</returns>
    public static MaterialAmount FromLength(Length length) => new(MaterialDimension.Length, length.Meters);

    /// <summary>A number of pieces.</summary>
    /// <param name="pieces">How many; a part of one, as half a disc, is a need and no size.</param>
    /// <returns>The amount.</returns>
    public static MaterialAmount FromPieces(double pieces) => new(MaterialDimension.Pieces, pieces);

    /// <summary>The amount in a unit that lines are counted in.</summary>
    /// <param name="unit">A unit of volume, mass, area or length, or <see cref="LineUnit.Each"/>, that measures alike.</param>
    /// <returns>The number of such units.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="unit"/> is no unit of material.</exception>
    /// <exception cref="InvalidOperationException"><paramref name="unit"/> measures otherwise.</exception>
    public double In(LineUnit unit)
    {
        (MaterialDimension dimension, double si) = MaterialUnits.Of(unit, nameof(unit));
        return dimension == Dimension
            ? Si / si
            : throw new InvalidOperationException(
                "An amount by " + MaterialUnits.Word(Dimension) + " has no number of " + unit.Symbol()
                    + ", which measures by " + MaterialUnits.Word(dimension) + ".");
    }

    /// <summary>A volume as an amount.</summary>
    /// <param name="volume">The volume.</param>
    public static implicit operator MaterialAmount(Volume volume) => FromVolume(volume);

    /// <summary>A mass as an amount.</summary>
    /// <param name="mass">The mass.</param>
    public static implicit operator MaterialAmount(Mass mass) => FromMass(mass);

    /// <summary>An area as an amount.</summary>
    /// <param name="area">The area.</param>
    public static implicit operator MaterialAmount(Area area) => FromArea(area);

    /// <summary>A length as an amount.</summary>
    /// <param name="length">The length.</param>
    public static implicit operator MaterialAmount(Length length) => FromLength(length);

    /// <summary>The amount with its unit.</summary>
    /// <returns>Text such as <c>1.1829 L</c> or <c>12 pieces</c>.</returns>
    public override string ToString() => Text(5);

    internal string Text(int figures) => Measure.Format(Si, DisplayUnits.Si, figures)
        + (Dimension != MaterialDimension.Pieces ? string.Empty : Si == 1 ? " piece" : " pieces");

    /// <summary>
    /// In m³, kg, m², m or pieces of another dimension, by a density in kg/m³ where the two are a volume and a mass; <see langword="null"/>
    /// where nothing turns one into the other.
    /// </summary>
    internal Num? As(MaterialDimension other, double? density, Trace? t = null) => (density, Dimension, other) switch
    {
        _ when Dimension == other => t.Given("V", Si, Measure),
        (double known, MaterialDimension.Volume, MaterialDimension.Mass) =>
            t.Given("V", Si, Measure) * t.Given("ρ", known, Measure.Density),
        (double known, MaterialDimension.Mass, MaterialDimension.Volume) =>
            t.Given("m", Si, Measure) / t.Given("ρ", known, Measure.Density),
        _ => null,
    };
}
