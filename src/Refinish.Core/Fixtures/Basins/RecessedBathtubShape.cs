using System;
using System.Collections.Generic;

namespace Refinish.Fixtures;

/// <summary>The patches and the mesh of a <see cref="RecessedBathtub"/>.</summary>
internal static class RecessedBathtubShape
{
    public static IReadOnlyList<SurfacePatch> Patches(RecessedBathtub tub)
    {
        Workings workings = tub.Workings();
        RuledBasin basin = tub.Basin;
        double foot = RuledBasin.Slope(basin.FootRun, basin.Depth);
        double near = RuledBasin.Slope(basin.NearRun, basin.Depth);
        double far = RuledBasin.Slope(basin.FarRun, basin.Depth);
        double nearSlant = RuledBasin.Slant(basin.NearRun, basin.Depth);
        double farSlant = RuledBasin.Slant(basin.FarRun, basin.Depth);
        return PatchLedger.Present(
            SurfacePatch.Of(workings, "A_f", FixtureZoneKind.Floor, 0, openings: tub.Drain),
            SurfacePatch.Of(workings, "S_side", FixtureZoneKind.Wall, ((near * nearSlant) + (far * farSlant)) / (nearSlant + farSlant)),
            SurfacePatch.Of(workings, "S_head", FixtureZoneKind.Wall, RuledBasin.Slope(basin.HeadRun, basin.Depth)),
            SurfacePatch.Of(workings, "S_foot", FixtureZoneKind.Wall, foot, openings: basin.Foot == 0 ? 0 : tub.Overflow),
            SurfacePatch.Of(workings, "S_corner", FixtureZoneKind.Wall, basin.Corners == 0 ? 0 : basin.CornerSlopedSlant / basin.CornerSlant, RuledBasin.CornerError, openings: basin.Foot == 0 ? tub.Overflow : 0),
            Half(workings, "floor's half of the cove's change", FixtureZoneKind.Floor),
            Half(workings, "wall's half of the cove's change", FixtureZoneKind.Wall),
            SurfacePatch.Of(workings, "A_deck", FixtureZoneKind.Rim, 0),
            new SurfacePatch(Plain(tub), FixtureZoneKind.Apron, Math.PI / 2, factor: tub.Measurements.ApronProfileFactor),
            tub.Flange > 0 ? SurfacePatch.Of(workings, "A_flange", FixtureZoneKind.Flange, Math.PI / 2) : Nothing());
    }

    public static TriangleMesh Mesh(RecessedBathtub tub, Tessellation mesh)
    {
        RuledBasin basin = tub.Basin;
        RecessedBathtubMeasurements tape = tub.Measurements;
        RuledBasinSurface inside = new(basin);
        double length = tape.OverallLength.Meters;
        double width = tape.OverallWidth.Meters;
        double x = length / 2;
        double y = width / 2;
        double top = basin.Depth;
        double foot = top - tape.ApronHeight.Meters;
        double crown = top + tape.TilingFlangeHeight.Meters;
        SurfaceBand deck = SurfaceBand.Ruled(FixtureZoneKind.Rim, inside.Rim, u => PlanCurve.RoundedRectangle(length, width, 0, 0, 0, top, u));
        mesh.Add(PlanCurve.Pieces, [.. inside.Bands(), deck]);

        // The apron stands at +y, towards the room; the flange faces the tub.
        mesh.AddFaces(SurfaceBand.Face(FixtureZoneKind.Apron, new(x, y, foot), new(-x, y, foot), new(-x, y, top), new(x, y, top)));
        if (crown > top)
        {
            mesh.AddFaces(
                SurfaceBand.Face(FixtureZoneKind.Flange, new(x, -y, top), new(-x, -y, top), new(-x, -y, crown), new(x, -y, crown)),
                SurfaceBand.Face(FixtureZoneKind.Flange, new(-x, -y, top), new(-x, y, top), new(-x, y, crown), new(-x, -y, crown)),
                SurfaceBand.Face(FixtureZoneKind.Flange, new(x, y, top), new(x, -y, top), new(x, -y, crown), new(x, y, crown)));
        }

        return mesh.Mesh();
    }

    private static SurfacePatch Half(Workings workings, string name, FixtureZoneKind zone)
    {
        WorkingStep whole = SurfacePatch.Of(workings, "A_cove", zone, 0).Step;
        return new(new(name, "A_cove/2", whole.Result() / 2, whole.Value / 2, Measure.Area, whole.Source), zone, 0, relativeError: RuledBasin.CornerError);
    }

    private static SurfacePatch Nothing() => new(new("nothing", "0", Expression.Number(0), 0, Measure.Area, PlaneShapes.Elementary), FixtureZoneKind.Flange, 0);

    private static WorkingStep Plain(RecessedBathtub tub)
    {
        double length = tub.Measurements.OverallLength.Meters;
        double height = tub.Measurements.ApronHeight.Meters;
        return new("apron", "A_apron", RuledBasinExpressions.Tape("L_o", length) * RuledBasinExpressions.Tape("h_a", height), length * height, Measure.Area, PlaneShapes.Elementary);
    }
}
