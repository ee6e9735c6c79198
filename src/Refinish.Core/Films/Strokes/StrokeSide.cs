using System.Globalization;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Films;

/// <summary>One side of a fixture in a proposal: which, with how many strokes, how fast.</summary>
/// <example><code>
/// foreach (StrokeSide side in proposal.Sides)       // the proposal of StrokeSearch
/// {
///     string line = side.ToString();
/// }
/// </code></example>
public sealed record StrokeSide
{
    internal StrokeSide(FixtureZoneKind? zone, string facing, int strokes, double speed, double volume)
    {
        Zone = zone;
        Facing = facing;
        Strokes = strokes;
        Speed = Speed.FromMetersPerSecond(speed);
        Sprayed = Volume.FromCubicMeters(volume);
    }

    /// <summary>The zone; <see langword="null"/> for triangles without one.</summary>
    public FixtureZoneKind? Zone { get; }

    /// <summary>Which way it faces, in words; directions anticlockwise from the mesh's x axis.</summary>
    public string Facing { get; }

    /// <summary>Number of strokes.</summary>
    public int Strokes { get; }

    /// <summary>Speed of the gun over this side.</summary>
    public Speed Speed { get; }

    /// <summary>Coating through the gun over this side.</summary>
    public Volume Sprayed { get; }

    /// <summary>The side in one line, in metric units.</summary>
    /// <returns>Text such as <c>Wall, facing 90°: 4 strokes at 38.2 cm/s, 31.5 mL</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0}, {1}: {2} strokes at {3}, {4}",
        Zone is FixtureZoneKind zone ? zone.ToString() : "No zone", Facing, Strokes,
        Measure.Speed.Format(Speed.MetersPerSecond, DisplayUnits.Si, 3),
        Measure.Liquid.Format(Sprayed.CubicMeters, DisplayUnits.Si, 3));
}
