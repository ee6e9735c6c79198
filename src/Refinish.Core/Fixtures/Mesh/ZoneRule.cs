using System;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>A rule that gives a triangle of a scan its zone by how steep it is and how high its middle lies.</summary>
/// <remarks>
/// The slope is taken without sign, 0° level to 90° upright, so that a scan whose triangles face the wrong way is classified alike.
/// </remarks>
/// <example><code>
/// ZoneRule floor = new(FixtureZoneKind.Floor, Angle.Zero, Angle.FromDegrees(30), Length.Zero, Length.FromMillimeters(80));
/// </code></example>
public sealed record ZoneRule
{
    private readonly double flattest;
    private readonly double steepest;
    private readonly double lowest;
    private readonly double highest;

    /// <summary>Makes a rule.</summary>
    /// <param name="zone">The zone that is given.</param>
    /// <param name="flattest">Least slope from level, 0 to 90°.</param>
    /// <param name="steepest">Greatest slope from level, from <paramref name="flattest"/> to 90°.</param>
    /// <param name="lowest">Least height of the triangle's middle.</param>
    /// <param name="highest">Greatest height of the triangle's middle, from <paramref name="lowest"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public ZoneRule(FixtureZoneKind zone, Angle flattest, Angle steepest, Length lowest, Length highest)
    {
        Zone = Guard.Defined(zone);
        this.flattest = Guard.Within(flattest, Bounds.Between(0, Math.PI / 2, Measure.Angle));
        this.steepest = Guard.Within(steepest, Bounds.Between(this.flattest, Math.PI / 2, Measure.Angle));
        this.lowest = Guard.Within(lowest, Bounds.Between(double.MinValue, double.MaxValue, Measure.Length));
        this.highest = Guard.Within(highest, Bounds.Between(this.lowest, double.MaxValue, Measure.Length));
    }

    /// <summary>The zone that is given.</summary>
    public FixtureZoneKind Zone { get; }

    /// <summary>Least slope from level.</summary>
    public Angle Flattest => Angle.FromRadians(flattest);

    /// <summary>Greatest slope from level.</summary>
    public Angle Steepest => Angle.FromRadians(steepest);

    /// <summary>Least height of the triangle's middle.</summary>
    public Length Lowest => Length.FromMeters(lowest);

    /// <summary>Greatest height of the triangle's middle.</summary>
    public Length Highest => Length.FromMeters(highest);

    /// <summary>The rule in one line, in metric units.</summary>
    /// <returns>Text such as <c>Floor: 0° to 30°, 0 mm to 80 mm high</c>.</returns>
    public override string ToString() =>
        $"{Zone}: {Measure.Angle.Format(flattest)} to {Measure.Angle.Format(steepest)}, {Measure.Length.Format(lowest)} to"
        + $" {Measure.Length.Format(highest)} high";

    internal bool Holds(double slope, double height) => slope >= flattest && slope <= steepest && height >= lowest && height <= highest;
}
