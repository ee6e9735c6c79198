using System;
using System.Collections.Generic;
using System.Globalization;

namespace Refinish.Fixtures;

/// <summary>Adds patches up: to zones, and to a derivation that ends in the coated area.</summary>
internal static class PatchLedger
{
    private static readonly Source Plane = Source.Derived("sum over the patches");
    private static readonly Source Mean = Source.Derived("slope weighted by area over the patches of the zone");

    public static IReadOnlyList<SurfacePatch> Present(params SurfacePatch[] patches) =>
        new ValueList<SurfacePatch>(Array.FindAll(patches, static patch => patch.Step.Value != 0));

    public static IReadOnlyList<FixtureZone> Zones(IReadOnlyList<SurfacePatch> patches)
    {
        List<FixtureZone> zones = [];
        foreach (FixtureZoneKind kind in Kinds(patches))
        {
            double area = 0;
            double tilt = 0;
            foreach (SurfacePatch patch in patches)
            {
                if (patch.Zone == kind)
                {
                    area += patch.Coated;
                    tilt += patch.Coated * patch.SlopeFromHorizontal.Radians;
                }
            }

            if (area > 0)
            {
                // The mean of undersides may lie a last digit beyond them.
                zones.Add(FixtureZone.Of(kind, area, Math.Min(Math.PI, tilt / area)));
            }
        }

        return new ValueList<FixtureZone>(zones);
    }

    /// <summary>Patches, then each zone's area and slope, then the whole and the edge.</summary>
    public static Workings Write(string title, IReadOnlyList<SurfacePatch> patches, double coated, IEnumerable<WorkingStep> before, IEnumerable<WorkingStep> after, IEnumerable<Workings>? parts = null)
    {
        List<WorkingStep> steps = [.. before];
        IReadOnlyList<FixtureZone> zones = Zones(patches);
        Expression total = 0;
        bool first = true;
        Dictionary<SurfacePatch, WorkingStep> lines = new(ReferenceComparer.Instance);
        foreach (SurfacePatch patch in patches)
        {
            steps.Add(patch.Step);
            WorkingStep line = patch.Step;
            if (!patch.IsPlain)
            {
                Expression formula = patch.Step.Result();
                formula = patch.DevelopedFactor == 1 ? formula : formula * Expression.Quantity("k", patch.DevelopedFactor, Measure.Number);
                formula = patch.OpeningArea.SquareMeters == 0 ? formula : formula - Expression.Quantity("A_open", patch.OpeningArea.SquareMeters, Measure.Area);
                line = new(patch.Name + ", coated", "C_" + steps.Count.ToString(CultureInfo.InvariantCulture), formula, patch.Coated, Measure.Area, Plane);
                steps.Add(line);
            }

            lines[patch] = line;
        }

        foreach (FixtureZone zone in zones)
        {
            List<Expression> areas = [];
            List<Expression> tilts = [];
            foreach (SurfacePatch patch in patches)
            {
                if (patch.Zone == zone.Kind)
                {
                    areas.Add(lines[patch].Result());
                    tilts.Add(lines[patch].Result() * patch.SlopeFormula);
                }
            }

            WorkingStep area = new("zone " + zone.Kind, "Z_" + zone.Kind, Expression.Sum(areas), zone.Area.SquareMeters, Measure.Area, Plane);
            steps.Add(area);
            steps.Add(new("mean slope of zone " + zone.Kind, "φ_" + zone.Kind, Expression.Sum(tilts) / area.Result(), zone.SlopeFromHorizontal.Radians, Measure.Angle, Mean));
            total = first ? area.Result() : total + area.Result();
            first = false;
        }

        steps.Add(new("coated area", "A", total, coated, Measure.Area, Plane));
        steps.AddRange(after);
        return new Workings(title, steps, parts);
    }

    private static IEnumerable<FixtureZoneKind> Kinds(IReadOnlyList<SurfacePatch> patches)
    {
        HashSet<FixtureZoneKind> seen = [];
        foreach (SurfacePatch patch in patches)
        {
            if (seen.Add(patch.Zone))
            {
                yield return patch.Zone;
            }
        }
    }

    private sealed class ReferenceComparer : IEqualityComparer<SurfacePatch>
    {
        public static readonly ReferenceComparer Instance = new();

        public bool Equals(SurfacePatch? x, SurfacePatch? y) => ReferenceEquals(x, y);

        public int GetHashCode(SurfacePatch obj) => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(obj);
    }
}
