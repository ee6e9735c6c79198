using System;
using UnitsNet;

namespace Refinish;

/// <summary>The area that a volume of coating covers: m²/L or ft²/US gal. A quantity of the trade that UnitsNet lacks.</summary>
/// <remarks>Held as metres to the power minus one (m² per m³). <see langword="default"/> is zero: a coating that covers nothing.</remarks>
/// <example><code>
/// SpreadingRate rate = SpreadingRate.FromSquareFeetPerUsGallon(1604.1667);
/// double metric = rate.SquareMetersPerLiter;                    // 39.37: one mil over one gallon's area
/// Volume needed = Area.FromSquareFeet(30) / rate;
/// </code></example>
public readonly record struct SpreadingRate : IComparable<SpreadingRate>
{
    private const double SquareMetersPerLiterInSi = 1000;

    // 231 in³ a US gallon (NIST Handbook 44, Appendix C) and 144 in² a square foot.
    private const double SquareFeetPerUsGallonInSi = 144 / (231 * 0.0254);

    /// <summary>Of what is put on a surface: 0.01 m²/L or more. Invented: nothing is put on thicker than 100 mm.</summary>
    internal static readonly Bounds OfUse = Bounds.Between(10, double.PositiveInfinity, Measure.SpreadingRate);

    private readonly double perMeter;

    private SpreadingRate(double perMeter, string name) =>
        this.perMeter = Guard.Within(perMeter, Bounds.NotNegative(Measure.SpreadingRate), name, name);

    /// <summary>Square metres per litre.</summary>
    public double SquareMetersPerLiter => perMeter / SquareMetersPerLiterInSi;

    /// <summary>Square feet per US gallon.</summary>
    public double SquareFeetPerUsGallon => perMeter / SquareFeetPerUsGallonInSi;

    /// <summary>Square metres per cubic metre, the SI unit: the reciprocal of the wet film.</summary>
    public double SquareMetersPerCubicMeter => perMeter;

    /// <summary>From square metres per litre.</summary>
    /// <param name="value">m²/L, zero or more.</param>
    /// <returns>The spreading rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static SpreadingRate FromSquareMetersPerLiter(double value) => new(value * SquareMetersPerLiterInSi, nameof(value));

    /// <summary>From square feet per US gallon.</summary>
    /// <param name="value">ft²/US gal, zero or more.</param>
    /// <returns>The spreading rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static SpreadingRate FromSquareFeetPerUsGallon(double value) => new(value * SquareFeetPerUsGallonInSi, nameof(value));

    /// <summary>From square metres per cubic metre.</summary>
    /// <param name="value">m²/m³, zero or more.</param>
    /// <returns>The spreading rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static SpreadingRate FromSquareMetersPerCubicMeter(double value) => new(value, nameof(value));

    /// <summary>The volume that covers an area.</summary>
    /// <param name="area">The area to cover.</param>
    /// <param name="rate">The spreading rate, more than zero.</param>
    /// <returns>The volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="rate"/> is zero.</exception>
    public static Volume operator /(Area area, SpreadingRate rate) =>
        Volume.FromCubicMeters(area.SquareMeters / Guard.Within(rate.perMeter, Bounds.Positive(Measure.SpreadingRate), nameof(rate)));

    /// <summary>The area that a volume covers.</summary>
    /// <param name="volume">The volume of coating.</param>
    /// <param name="rate">The spreading rate.</param>
    /// <returns>The area.</returns>
    public static Area operator *(Volume volume, SpreadingRate rate) => Area.FromSquareMeters(volume.CubicMeters * rate.perMeter);

    /// <summary>The area that a volume covers.</summary>
    /// <param name="rate">The spreading rate.</param>
    /// <param name="volume">The volume of coating.</param>
    /// <returns>The area.</returns>
    public static Area operator *(SpreadingRate rate, Volume volume) => volume * rate;

    /// <summary>Whether one rate covers less than another.</summary>
    /// <param name="left">One rate.</param>
    /// <param name="right">The other.</param>
    /// <returns>The comparison.</returns>
    public static bool operator <(SpreadingRate left, SpreadingRate right) => left.perMeter < right.perMeter;

    /// <summary>Whether one rate covers more than another.</summary>
    /// <param name="left">One rate.</param>
    /// <param name="right">The other.</param>
    /// <returns>The comparison.</returns>
    public static bool operator >(SpreadingRate left, SpreadingRate right) => left.perMeter > right.perMeter;

    /// <summary>Whether one rate covers at most as much as another.</summary>
    /// <param name="left">One rate.</param>
    /// <param name="right">The other.</param>
    /// <returns>The comparison.</returns>
    public static bool operator <=(SpreadingRate left, SpreadingRate right) => left.perMeter <= right.perMeter;

    /// <summary>Whether one rate covers at least as much as another.</summary>
    /// <param name="left">One rate.</param>
    /// <param name="right">The other.</param>
    /// <returns>The comparison.</returns>
    public static bool operator >=(SpreadingRate left, SpreadingRate right) => left.perMeter >= right.perMeter;

    /// <inheritdoc/>
    public int CompareTo(SpreadingRate other) => perMeter.CompareTo(other.perMeter);

    /// <summary>The rate in m²/L, in the invariant culture.</summary>
    /// <returns>Text such as <c>8.3333 m²/L</c>.</returns>
    public override string ToString() => ToString(DisplayUnits.Si);

    /// <summary>The rate in the unit of the system, in the invariant culture.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>Text with the unit.</returns>
    public string ToString(DisplayUnits system) => Measure.SpreadingRate.Format(perMeter, system);
}
