
using System;

namespace Refinish.Fixtures;

/// <summary>
/// A triangle of a mesh: three corners by their place in the list of vertices, anticlockwise as seen from the coated side, and the zone
/// it belongs to.
/// </summary>
/// <param name="A">Place of the first corner.</param>
/// <param name="B">Place of the second corner.</param>
/// <param name="C">Place of the third corner.</param>
/// <param name="Zone">
/// The part of the fixture; <see langword="null"/> when it is not known, as in a scan that has not been classified.
/// </param>
/// <example><code>
/// MeshTriangle first = new(0, 1, 2, FixtureZoneKind.Floor);
/// </code></example>
public readonly record struct MeshTriangle(int A, int B, int C, FixtureZoneKind? Zone)
{
    /// <summary>The corners and the zone in one line.</summary>
    /// <returns>Text such as <c>0 1 2 Floor</c>.</returns>
    public override string ToString() =>
        FormattableString.Invariant($"{A} {B} {C} {(Zone is FixtureZoneKind zone ? zone.ToString() : "no zone")}");
}
