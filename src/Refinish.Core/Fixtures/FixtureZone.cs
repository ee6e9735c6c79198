using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>A part of a fixture that gets coated: what it is, how large, and how steep.</summary>
/// <remarks>The slope is what makes a wet film sag; where it varies over the zone it is the mean weighted by area.</remarks>
/// <example><code>
/// FixtureZone wall = new(FixtureZoneKind.Wall, Area.FromSquareMeters(1.1), Angle.FromDegrees(75));
/// string text = wall.ToString();   // "Wall 1.1 m² at 75°"
/// </code></example>
public sealed record FixtureZone
{
    private readonly double area;
    private readonly double slope;

    /// <summary>Makes a zone.</summary>
    /// <param name="kind">Which part it is.</param>
    /// <param name="area">The area that gets coated; 0 or more.</param>
    /// <param name="slopeFromHorizontal">0° level, 90° upright, 180° an underside; the mean weighted by area where it varies.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FixtureZone(FixtureZoneKind kind, Area area, Angle slopeFromHorizontal)
    {
        Kind = Guard.Defined(kind);
        this.area = Guard.Within(area, Bounds.NotNegative(Measure.Area));
        slope = Guard.Within(slopeFromHorizontal, Bounds.Between(0, Math.PI, Measure.Angle));
    }

    /// <summary>Which part it is.</summary>
    public FixtureZoneKind Kind { get; }

    /// <summary>The area that gets coated, openings taken off.</summary>
    public Area Area => Area.FromSquareMeters(area);

    /// <summary>0° level, 90° upright; the mean weighted by area where it varies.</summary>
    public Angle SlopeFromHorizontal => Angle.FromRadians(slope);

    /// <summary>The kind, the area and the slope in one line, in metric units.</summary>
    /// <returns>Text such as <c>Wall 1.1 m² at 75°</c>.</returns>
    public override string ToString() => $"{Kind} {Measure.Area.Format(area)} at {(Measure.Angle.Format(slope, figures: 4))}";

    internal static FixtureZone Of(FixtureZoneKind kind, double squareMeters, double radians) =>
        new(kind, Area.FromSquareMeters(squareMeters), Angle.FromRadians(radians));

    internal static FixtureZone Level(FixtureZoneKind kind, double squareMeters) => Of(kind, squareMeters, 0);

    internal static FixtureZone Upright(FixtureZoneKind kind, double squareMeters) => Of(kind, squareMeters, Math.PI / 2);

    /// <summary>The zones that are there at all: a tub without an apron has no apron zone.</summary>
    internal static IReadOnlyList<FixtureZone> Present(params FixtureZone[] zones) =>
        new ValueList<FixtureZone>(Array.FindAll(zones, static zone => zone.area > 0));
}
