using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Fixtures;

/// <content>Bowls, shells and columns.</content>
internal sealed partial class Composition
{
    private static readonly Source Slices = Source.Derived("slices of an ellipsoid");

    /// <summary>Round holes alike: together, and round about.</summary>
    public Num Discs(string count, string diameter) => this[count] * PlaneShapes.Disc(this[diameter]);

    public Num Rings(string count, string diameter) => this[count] * PlaneShapes.Circle(this[diameter]);

    /// <summary>One turn of an ellipse by its own parameter, broken where the corners of a rectangle round it lie.</summary>
    public static double[] CornerTurns(double length, double width, double cellLength, double cellWidth)
    {
        double corner = Math.Atan2(cellWidth / width, cellLength / length);
        double pi = Math.PI;
        return [0, corner, pi / 2, pi - corner, pi, pi + corner, 3 * pi / 2, (2 * pi) - corner, 2 * pi];
    }

    /// <summary>
    /// A bowl whose floor is its mouth drawn in evenly: straight walls between rounded rectangles with a cove, its mouth at z = 0, in a
    /// level
    /// rectangle that is drawn and not added.
    /// </summary>
    public void RoundedBowl(string name, RuledBasin basin, Num drain, MeshPoint centre, double cellLength, double cellWidth)
    {
        Num slope = 0;
        Num whole = Part(name, ", faces", Trace is null ? [] : basin.Lines, own =>
        {
            Num area = 0;
            Num tilt = 0;
            foreach (SurfacePatch face in PatchLedger.Present(basin.Patches(0, 0)))
            {
                Num plain = face.Plain(own);
                area += plain;
                tilt += plain * face.Slope(own, plain);
            }

            // Its corners are cones, where the over-reading of the cove is exact.
            slope = tilt / area;
            return basin.Cove > 0 ? area - basin.CoveOverestimate(own) : area;
        });
        Surface(name, FixtureZoneKind.Bowl, whole, slope, 1, PlaneShapes.Disc(drain), RuledBasin.CornerError, RuledBasin.Loft);
        Holds(Part(name, ", water", Trace is null ? [] : basin.RunsAndSlopes, own =>
            basin.Water(own.Given("h", basin.Depth, Measure.Length), own)));
        RuledBasinSurface surface = new(basin);
        MeshPoint shift = centre with { Z = centre.Z - basin.Depth };
        SurfaceBand[] bowl = [.. surface.Bands().Select(band => Moved(band with { Zone = FixtureZoneKind.Bowl }, shift))];
        SurfaceBand ring = SurfaceBand.Ruled(
            FixtureZoneKind.Rim,
            u => MeshPoint.Sum(surface.Rim(u), shift),
            u => PlanCurve.RoundedRectangle(cellLength, cellWidth, 0, centre.X, centre.Y, centre.Z, u));
        Draw(mesh => mesh.Add(PlanCurve.Pieces, [.. bowl, ring]));
    }

    /// <summary>A bowl that is half an ellipsoid; a ring goes from its mouth to an outline where one is given.</summary>
    public void EllipsoidBowl(
        string name, string length, string width, string depth, Num openings, MeshPoint centre, double[] breaks,
        FixtureZoneKind ringZone = FixtureZoneKind.Rim, Func<MeshPoint, MeshPoint>? outline = null)
    {
        HalfEllipsoid bowl = new(Of(length) / 2, Of(width) / 2, Of(depth));
        Num area = bowl.Area(Trace);
        Surface(
            name, FixtureZoneKind.Bowl, area, bowl.Tilt(Trace) / Trace.Given("S", area.Value, Measure.Area), 1, openings,
                HalfEllipsoid.Error,
            HalfEllipsoid.Carlson);
        Holds(Part(name, ", water", [], own => own.Step(
            "water up to the rim", "V", Measure.Capacity, Slices, bowl.Capacity(own.Given("h", bowl.C, Measure.Length), own))));
        SurfaceBand inside = Moved(BowlSurface.Inside(FixtureZoneKind.Bowl, Mouth, bowl.C), centre);
        SurfaceBand[] ring = outline is null
            ? []
            : [SurfaceBand.Ruled(
                ringZone, turn => MeshPoint.Sum(Mouth(turn), centre), turn => MeshPoint.Sum(outline(Mouth(turn)), centre))];
        Draw(mesh => mesh.Add(breaks, [inside, .. ring]));

        MeshPoint Mouth(double turn) => new(bowl.A * Math.Cos(turn), bowl.B * Math.Sin(turn), 0);
    }

    /// <summary>
    /// The outside between two level ellipses, the upper one at the rim, seen from without; a part of a turn from a plane through the
    /// middle.
    /// </summary>
    public void Shell(string name, SuperellipseBasin body, double[] turns, double factor, Num openings, params SurfaceBand[] above)
    {
        double share = (turns[turns.Length - 1] - turns[0]) / (2 * Math.PI);
        Num whole = Part(name, ", all round", [], body.Walls);
        Surface(
            name, FixtureZoneKind.Outside, share == 1
                ? whole : whole * share, Trace.Pi() - (body.WallTilt(Trace) / whole), factor, openings,
            SuperellipseBasin.Error, SuperellipseBasin.Loft);
        SurfaceBand inside = SurfaceBand.Ruled(FixtureZoneKind.Outside, turn => body.Point(false, turn), turn => body.Point(true, turn));
        Draw(mesh => mesh.Add(turns, [.. above, BowlSurface.Outside(inside)]));
    }

    /// <summary>Frustums alike by their girths, as a tape goes round them: the outside of a cone between two heights.</summary>
    public void Frustums(
        string name, FixtureZoneKind zone, Num copies, Num lower, Num upper, Num height, double factor, double low,
        double spacing)
    {
        Num taper = (lower - upper) / (2 * Trace.Pi());
        Num slant = Num.Sqrt(Num.Square(height) + Num.Square(taper));
        Surface(name, zone, copies * (lower + upper) / 2 * slant, 2 * Num.Arctan((slant - taper) / height), factor);
        double bottom = lower.Value / Math.PI;
        double top = upper.Value / Math.PI;
        double high = low + height.Value;
        for (int i = 0; i < (int)Math.Round(copies.Value); i++)
        {
            MeshPoint centre = new(i * spacing, 0, 0);
            SurfaceBand band = SurfaceBand.Ruled(
                zone, turn => MeshPoint.Sum(PlanCurve.Circle(top, high, turn), centre),
                    turn => MeshPoint.Sum(PlanCurve.Circle(bottom, low, turn), centre));
            Draw(mesh => mesh.Add(PlanCurve.Turn, band));
        }
    }

    /// <summary>Draws level rings side by side, which are added by their formula.</summary>
    public void Rings(FixtureZoneKind zone, int count, double inner, double outer, double height, double spacing)
    {
        for (int i = 0; i < count && outer > inner; i++)
        {
            MeshPoint centre = new(i * spacing, 0, height);
            SurfaceBand ring = SurfaceBand.Ruled(
                zone, turn => MeshPoint.Sum(PlanCurve.Circle(inner, 0, turn), centre),
                    turn => MeshPoint.Sum(PlanCurve.Circle(outer, 0, turn), centre));
            Draw(mesh => mesh.Add(PlanCurve.Turn, ring));
        }
    }

    private static SurfaceBand Moved(SurfaceBand band, MeshPoint by) => band with { Map = (u, v) => MeshPoint.Sum(band.Map(u, v), by) };
}
