using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Fixtures;

/// <summary>Adds patches up: to zones, and to a derivation that ends in the coated area.</summary>
internal static partial class PatchLedger
{
    public static readonly Source Plane = Source.Derived("sum over the patches");

    private static readonly Source Mean = Source.Derived("slope weighted by area over the patches of the zone");

    public static IReadOnlyList<SurfacePatch> Present(params SurfacePatch[] patches) =>
        new ValueList<SurfacePatch>(Array.FindAll(patches, static patch => patch.Area.SquareMeters != 0));

    public static IReadOnlyList<FixtureZone> Zones(IReadOnlyList<SurfacePatch> patches)
    {
        Num[] areas = [.. patches.Select(patch => (Num)patch.Coated)];
        return new ValueList<FixtureZone>(Kinds(patches, areas).Select(kind => FixtureZone.Of(
            kind,
            Area(kind, patches, areas).Value,

            // The mean of undersides may lie a last digit beyond them.
            Math.Min(Math.PI, (Tilt(kind, patches, areas, null) / Area(kind, patches, areas)).Value))));
    }

    public static double Coated(IReadOnlyList<FixtureZone> zones) => zones.Sum(zone => zone.Area.SquareMeters);

    /// <summary>Patches, then each zone's area and slope, then the whole and the edge.</summary>
    public static Workings Write(
        string title, IReadOnlyList<SurfacePatch> patches, Func<Trace, Num>[] before, Func<Trace, Num>[] after, params IEnumerable<Workings> parts)
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

        Num[] areas = [.. patches.Select(patch => patch.Written(t))];
        Num total = 0;
        foreach (FixtureZoneKind kind in Kinds(patches, areas))
        {
            Num area = t.Step("zone " + kind, "Z_" + kind, Measure.Area, Plane, Area(kind, patches, areas));
            t.Step("mean slope of zone " + kind, "φ_" + kind, Measure.Angle, Mean, Tilt(kind, patches, areas, t) / area);
            total += area;
        }

        t.Step("coated area", "A", Measure.Area, Plane, total);
        foreach (Func<Trace, Num> step in after)
        {
            step(t);
        }

        return t.Workings(title);
    }

    private static IEnumerable<FixtureZoneKind> Kinds(IReadOnlyList<SurfacePatch> patches, Num[] areas) =>
        patches.Select(patch => patch.Zone).Distinct().Where(kind => Area(kind, patches, areas).Value > 0);

    private static Num Area(FixtureZoneKind kind, IReadOnlyList<SurfacePatch> patches, Num[] areas) =>
        Num.Sum(areas.Where((_, i) => patches[i].Zone == kind));

    private static Num Tilt(FixtureZoneKind kind, IReadOnlyList<SurfacePatch> patches, Num[] areas, Trace? t) =>
        Num.Sum(areas.Zip(patches, (area, patch) => (area, patch)).Where(of => of.patch.Zone == kind).Select(of => of.area * of.patch.Slope(t)));
}
