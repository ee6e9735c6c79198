using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Fixtures;

/// <content>Bowls, shells and columns.</content>
internal sealed partial class Composition
{
    /// <summary>Round holes alike: together, and round about.</summary>
    public Expression Discs(string count, string diameter) => this[count] * PlaneShapes.Disc(this[diameter]);

    public Expression Rings(string count, string diameter) => this[count] * PlaneShapes.Circle(this[diameter]);

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
    public void RoundedBowl(string name, RuledBasin basin, Expression drain, MeshPoint centre, double cellLength, double cellWidth)
    {
        RuledBasinPatches inside = new(basin, 0, 0);
        SurfacePatch[] faces = [.. inside.Patches.Where(patch => patch.Step.Value != 0)];
        Expression area = Expression.Sum(faces.Select(face => face.Step.Result()));
        Expression tilt = Expression.Sum(faces.Select(face => face.Step.Result() * face.SlopeFormula));
        List<WorkingStep> steps = [.. inside.Before, .. faces.Select(face => face.Step)];
        Expression whole = area;
        if (basin.Cove > 0)
        {
            // Its corners are cones, where the over-reading is exact.
            RuledBasinExpressions symbols = new(basin);
            WorkingStep versine = symbols.CornerVersine();
            WorkingStep excess = symbols.CoveExcess(symbols.CornerSlopeTangent(), versine);
            steps.AddRange([versine, excess]);
            whole -= excess.Result();
        }

        Part(new Workings(name + ", faces", steps));
        Surface(
            name, FixtureZoneKind.Bowl, whole, (basin.WallTilt + basin.FloorTilt) / basin.Interior, tilt / area,
            basin.Interior - (basin.Cove > 0 ? basin.CoveOverestimate : 0), RuledBasin.CornerError, null, PlaneShapes.Disc(drain),
            RuledBasinExpressions.Loft);
        Workings water = RecessedBathtubWorkings.Capacity(basin, basin.Depth);
        Holds(new Workings(name + ", water", water.Steps));
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
        string name, string length, string width, string depth, Expression openings, MeshPoint centre, double[] breaks,
        FixtureZoneKind ringZone = FixtureZoneKind.Rim, Func<MeshPoint, MeshPoint>? outline = null)
    {
        HalfEllipsoid bowl = new(Of(length) / 2, Of(width) / 2, Of(depth));
        HalfEllipsoidExpressions symbols = new(bowl);
        double area = bowl.Area;
        Expression surface = symbols.Area();
        Surface(
            name, FixtureZoneKind.Bowl, surface, bowl.Tilt / area, symbols.Tilt() / Expression.Quantity("S", area, Measure.Area), area,
            HalfEllipsoid.Error, null, openings, HalfEllipsoid.Carlson);
        Expression level = Expression.Quantity("h", bowl.C, Measure.Length);
        Holds(new Workings(name + ", water",
            [new("water up to the rim", "V", symbols.Capacity(level), bowl.Capacity(bowl.C), Measure.Capacity,
                Source.Derived("slices of an ellipsoid"))]));
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
    public void Shell(string name, SuperellipseBasin body, double[] turns, Expression factor, Expression? openings,
        params SurfaceBand[] above)
    {
        SurfacePatch wall = new SuperellipseBasinExpressions(body).Patches(0, 0)[1];
        double share = (turns[turns.Length - 1] - turns[0]) / (2 * Math.PI);
        Part(new Workings(name + ", all round", [wall.Step]));
        Surface(
            name, FixtureZoneKind.Outside, share == 1 ? wall.Step.Result() : wall.Step.Result() * share,
            Math.PI - wall.SlopeFromHorizontal.Radians, Expression.Pi() - wall.SlopeFormula, wall.Step.Value * share,
            SuperellipseBasin.Error, factor, openings, wall.Step.Source);
        SurfaceBand inside = SurfaceBand.Ruled(FixtureZoneKind.Outside, turn => body.Point(false, turn), turn => body.Point(true, turn));
        Draw(mesh => mesh.Add(turns, [.. above, BowlSurface.Outside(inside)]));
    }

    /// <summary>Frustums alike by their girths, as a tape goes round them: the outside of a cone between two heights.</summary>
    public void Frustums(
        string name, FixtureZoneKind zone, Expression copies, Expression lower, Expression upper, Expression height, Expression factor,
            double low, double spacing)
    {
        Expression taper = (lower - upper) / (2 * Expression.Pi());
        Expression slant = Expression.Sqrt(Expression.Square(height) + Expression.Square(taper));
        Expression slope = 2 * Expression.Arctan((slant - taper) / height);
        Surface(name, zone, copies * (lower + upper) / 2 * slant, slope.Evaluate(), slope, factor: factor);
        double bottom = lower.Evaluate() / Math.PI;
        double top = upper.Evaluate() / Math.PI;
        double high = low + height.Evaluate();
        for (int i = 0; i < (int)Math.Round(copies.Evaluate()); i++)
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
