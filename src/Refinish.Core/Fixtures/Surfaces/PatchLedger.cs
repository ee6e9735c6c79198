using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>Adds patches up: to zones, and to a derivation that ends in the coated area.</summary>
internal static class PatchLedger
{
    public static readonly Source Plane = Source.Derived("sum over the patches");

    private static readonly Source Mean = Source.Derived("slope weighted by area over the patches of the zone");

    public static IReadOnlyList<SurfacePatch> Present(params IEnumerable<SurfacePatch> patches) =>
        new ValueList<SurfacePatch>(patches.Where(static patch => patch.Area.SquareMeters != 0));

    // Zone by zone, in the order of the derivation.
    public static double Coated(IReadOnlyList<SurfacePatch> patches)
    {
        double total = 0;
        int seen = 0;
        foreach (SurfacePatch patch in patches)
        {
            int zone = 1 << (int)patch.Zone;
            total += (seen & zone) == 0 ? Math.Max(0, Coated(patches, patch.Zone)) : 0;
            seen |= zone;
        }

        return total;
    }

    public static IReadOnlyList<FixtureZone> Zones(IReadOnlyList<SurfacePatch> patches) =>

        // The mean of undersides may lie a last digit beyond them.
        new ValueList<FixtureZone>(Gathered(patches, null).Select(zone =>
            FixtureZone.Of(zone.Kind, zone.Area.Value, Math.Min(Math.PI, (Tilt(zone.Patches, null) / zone.Area).Value))));

    /// <summary>A fixture in one line: what it is, what gets coated, what it holds.</summary>
    public static string Told(IFixture fixture) => $"{fixture.Description}: {Measure.Area.Format(fixture.CoatedArea.SquareMeters)} coated"
        + (fixture.WaterCapacity is Volume held ? $", {Measure.Capacity.Format(held.CubicMeters)} to the rim" : string.Empty);

    /// <summary>Patches, then each zone's area and slope, then the whole and the edge.</summary>
    public static Workings Write(
        string title, IReadOnlyList<SurfacePatch> patches, IEnumerable<Func<Trace, Num>> before, IEnumerable<Func<Trace, Num>> after,
        params IEnumerable<Workings> parts)
    {
        Trace t = new();
        foreach (Workings part in parts)
        {
            t.Part(part);
        }

        foreach (Func<Trace, Num> step in before)
        {
            step(t);
        }

        Num total = 0;
        foreach ((FixtureZoneKind kind, Num sum, Patch[] own) in Gathered(patches, t))
        {
            Num area = t.Step("zone " + kind, "Z_" + kind, Measure.Area, Plane, sum);
            t.Step("mean slope of zone " + kind, "φ_" + kind, Measure.Angle, Mean, Tilt(own, t) / area);
            total += area;
        }

        t.Step("coated area", "A", Measure.Area, Plane, total);
        foreach (Func<Trace, Num> step in after)
        {
            step(t);
        }

        return t.Workings(title);
    }

    private static double Coated(IReadOnlyList<SurfacePatch> patches, FixtureZoneKind zone)
    {
        double sum = 0;
        for (int i = 0; i < patches.Count; i++)
        {
            sum += patches[i].Zone == zone ? patches[i].Coated : 0;
        }

        return sum;
    }

    private static List<(FixtureZoneKind Kind, Num Area, Patch[] Patches)> Gathered(IReadOnlyList<SurfacePatch> patches, Trace? t)
    {
        Patch[] all = [.. patches.Select(patch => Patch.Of(patch, t))];
        return [.. all.GroupBy(patch => patch.Surface.Zone)
            .Select(zone => (zone.Key, Num.Sum(zone.Select(patch => patch.Coated)), zone.ToArray()))
            .Where(zone => zone.Item2.Value > 0)];
    }

    private static Num Tilt(Patch[] patches, Trace? t) =>
        Num.Sum(patches.Select(patch => patch.Coated * (t is null ? patch.Surface.Radians : patch.Surface.Slope(t, patch.Plain))));

    private readonly record struct Patch(SurfacePatch Surface, Num Plain, Num Coated)
    {
        public static Patch Of(SurfacePatch patch, Trace? t)
        {
            Num plain = patch.Plain(t);
            return new(patch, plain, t is null ? patch.Coated : patch.Written(t, plain));
        }
    }
}
