using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;

namespace Refinish.Jobs;

/// <summary>The slopes of what an entry of a job coats, and which of them look down.</summary>
internal static class CoatedSlopes
{
    // What is meant to be upright is so within a degree, by a level or by a scan (invented).
    private const double LooksDown = 91 * Math.PI / 180;

    /// <summary>Whether some of it looks down: a ceiling, a soffit, the underside of a tub.</summary>
    public static bool Hang(FixtureJob entry) => Of(entry).Any(slope => slope > LooksDown);

    /// <summary>Whether it is worked on from below. The outside of a sink looks down too, and is reached from the side.</summary>
    public static bool AreOverhead(FixtureJob entry) => FixtureKind.Of(entry.Fixture) is not { IsReachedFromTheSide: true } && Hang(entry);

    /// <summary>The slope nearest to upright, 0 to π/2: a film creeps alike on both sides of a sloping board.</summary>
    public static double Steepest(FixtureJob entry) => Of(entry).Select(slope => Math.Min(slope, Math.PI - slope)).DefaultIfEmpty().Max();

    // The mean of a zone would hide a part that looks down.
    private static IEnumerable<double> Of(FixtureJob entry) => entry.Fixture is ZonedFixture own
        ? own.Parts.Where(part => IsCoated(part.Kind, entry)).Select(part => part.SlopeFromHorizontal.Radians)
        : entry.Fixture.Zones.Where(zone => IsCoated(zone.Kind, entry)).Select(zone => zone.SlopeFromHorizontal.Radians);

    private static bool IsCoated(FixtureZoneKind kind, FixtureJob entry) => entry.Zones?.Contains(kind) != false;
}
