using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Fixtures;

/// <summary>Adds patches up: to zones, and to a derivation that ends in the coated area.</summary>
internal static class PatchLedger
{
    public static readonly Source Plane = Source.Derived("sum over the patches");

    private static readonly Source Mean = Source.Derived("slope weighted by area over the patches of the zone");

    public static IReadOnlyList<SurfacePatch> Present(params IEnumerable<SurfacePatch> patches) =>
        new ValueList<SurfacePatch>(patches.Where(static patch => patch.Area.SquareMeters != 0));

    public static double Coated(IReadOnlyList<SurfacePatch> patches) => Num.Sum(Gathered(patches, null).Select(zone => zone.Area)).Value;

    public static IReadOnlyList<FixtureZone> Zones(IReadOnlyList<SurfacePatch> patches) =>

        // The mean of undersides may lie a last digit beyond them.
        new ValueList<FixtureZone>(Gathered(patches, null).Select(zone =>
            FixtureZone.Of(zone.Kind, zone.Area.Value, Math.Min(Math.PI, (Tilt(zone.Patches, null) / zone.Area).Value))));

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

    private static List<(FixtureZoneKind Kind, Num Area, Patch[] Patches)> Gathered(IReadOnlyList<SurfacePatch> patches, Trace? t)
    {
        Patch[] all = [.. patches.Select(patch => new Patch(patch, t))];
        return [.. all.GroupBy(patch => patch.Of.Zone)
            .Select(zone => (zone.Key, Num.Sum(zone.Select(patch => patch.Coated)), zone.ToArray()))
            .Where(zone => zone.Item2.Value > 0)];
    }

    private static Num Tilt(Patch[] patches, Trace? t) => Num.Sum(patches.Select(patch => patch.Coated * patch.Of.Slope(t, patch.Plain)));

    private sealed class Patch
    {
        public Patch(SurfacePatch patch, Trace? t)
        {
            Of = patch;
            Plain = patch.Plain(t);
            Coated = t is null ? patch.Coated : patch.Written(t, Plain);
        }

        public SurfacePatch Of { get; }

        public Num Plain { get; }

        public Num Coated { get; }
    }
}
