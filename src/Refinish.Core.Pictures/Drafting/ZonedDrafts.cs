using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Pictures.Drafting;

/// <summary>A fixture without a type of its own: views of its mesh, or its parts as squares where only their areas are known.</summary>
internal static class ZonedDrafts
{
    // More lines than these are a grey blot; the finest ones are then left out.
    private const int MostLines = 4000;

    // A bend of less than 30° is a curve.
    private static readonly double Crease = Math.Cos(Math.PI / 6);

    public static Blueprint Of(ZonedFixture fixture, DisplayUnits units) =>
        fixture.Mesh is TriangleMesh mesh
            ? new Blueprint([.. Views(mesh)], [],
                ["Sizes are those of the mesh, over all. Lines are its edges, folds and outlines and the borders of its zones."])
            : new Blueprint([Squares(fixture.Parts, units)], [],
                ["Only areas and slopes are known: the shape of the parts, their lengths and where they lie are not."]);

    private static IEnumerable<View> Views(TriangleMesh mesh)
    {
        HashSet<FixtureZoneKind> hidden = [.. mesh.Zones().Select(zone => zone.Kind)];
        bool hangs = mesh.Zones().Sum(zone => zone.Area.SquareMeters * Math.Cos(zone.SlopeFromHorizontal.Radians)) < 0;
        MeshSide first = hangs ? MeshSide.Underneath : MeshSide.Above;
        (MeshSide Side, MeshRaster Raster)[] round =
        [
            .. MeshSide.Round.Select(side => (side, new MeshRaster(mesh, side))).OrderByDescending(seen =>
                seen.Item2.Coated(mesh.Triangles)),
        ];
        (MeshSide, MeshRaster)[] all =
            [(first, new(mesh, first)), .. round,
                .. ((MeshSide[])[MeshSide.Above, MeshSide.Underneath]).Select(side => (side, new MeshRaster(mesh, side)))];

        // From above and from the side that shows most; then whatever shows a zone that was not seen yet.
        for (int i = 0; i < all.Length; i++)
        {
            (MeshSide side, MeshRaster raster) = all[i];
            if (!raster.IsFlat && (i < 2 || hidden.Any(zone => raster.SpotOf(zone, mesh.Triangles) is not null)))
            {
                yield return Of(mesh, side, raster, hidden);
            }
        }
    }

    private static View Of(TriangleMesh mesh, MeshSide side, MeshRaster raster, HashSet<FixtureZoneKind> hidden)
    {
        View view = new View(side.Name, raster.Width, raster.Height)
            .Measured(Side.Top, 0, raster.Width, 0, side.Across, Length.FromMeters(raster.Width))
            .Measured(Side.Left, 0, raster.Height, 0, side.Down, Length.FromMeters(raster.Height));
        foreach ((DataPoint from, DataPoint to) in Lines(mesh, raster))
        {
            view.Edge([from, to]);
        }

        foreach (FixtureZoneKind zone in mesh.Zones().Select(zone => zone.Kind))
        {
            if (raster.SpotOf(zone, mesh.Triangles) is (double x, double y))
            {
                view.Zone(zone, x, y);
                hidden.Remove(zone);
            }
        }

        return view;
    }

    private static List<(DataPoint From, DataPoint To)> Lines(TriangleMesh mesh, MeshRaster raster)
    {
        Dictionary<(int, int), List<MeshTriangle>> edges = [];
        foreach (MeshTriangle t in mesh.Triangles)
        {
            foreach ((int from, int to) in ((int, int)[])[(t.A, t.B), (t.B, t.C), (t.C, t.A)])
            {
                (int, int) key = (Math.Min(from, to), Math.Max(from, to));
                if (!edges.TryGetValue(key, out List<MeshTriangle>? beside))
                {
                    edges.Add(key, beside = []);
                }

                beside.Add(t);
            }
        }

        (int From, int To, int Rank)[] ranked = [.. edges.Select(edge => (edge.Key.Item1, edge.Key.Item2, RankOf(edge.Value)))];
        List<(DataPoint, DataPoint)> lines = [];
        for (int rank = 0; rank <= 2; rank++)
        {
            (DataPoint, DataPoint)[] more = [.. ranked.Where(edge => edge.Rank == rank).SelectMany(edge => Shown(edge.From, edge.To))];
            if (lines.Count + more.Length > MostLines)
            {
                break;
            }

            lines.AddRange(more);
        }

        return lines;

        // Open edges and borders first, then outlines, then folds; 3 is no line.
        int RankOf(List<MeshTriangle> faces) =>
            faces.Count != 2 || faces[0].Zone != faces[1].Zone ? 0
            : raster.Faces(faces[0]) != raster.Faces(faces[1]) ? 1
            : Cosine(Normal(faces[0]), Normal(faces[1])) < Crease ? 2 : 3;

        (double X, double Y, double Z) Normal(MeshTriangle t)
        {
            MeshPoint a = mesh.Vertices[t.A];
            MeshPoint b = mesh.Vertices[t.B];
            MeshPoint c = mesh.Vertices[t.C];
            return (((b.Y - a.Y) * (c.Z - a.Z)) - ((b.Z - a.Z) * (c.Y - a.Y)), ((b.Z - a.Z) * (c.X - a.X)) - ((b.X - a.X) * (c.Z - a.Z)),
                ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X)));
        }

        IEnumerable<(DataPoint, DataPoint)> Shown(int from, int to)
        {
            foreach ((double first, double last) in raster.Shown(from, to))
            {
                yield return (At(first), At(last));
            }

            DataPoint At(double part) => new(
                raster.Points[from].X + ((raster.Points[to].X - raster.Points[from].X) * part),
                raster.Points[from].Y + ((raster.Points[to].Y - raster.Points[from].Y) * part));
        }
    }

    private static double Cosine((double X, double Y, double Z) a, (double X, double Y, double Z) b) =>
        ((a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z))
        / Math.Max(double.Epsilon, Math.Sqrt(((a.X * a.X) + (a.Y * a.Y) + (a.Z * a.Z)) * ((b.X * b.X) + (b.Y * b.Y) + (b.Z * b.Z))));

    // In rows of about twice the height of all, so that many parts stay legible.
    private static View Squares(IReadOnlyList<ZonePart> parts, DisplayUnits units)
    {
        double[] sides = [.. parts.Select(part => Math.Sqrt(part.Area.SquareMeters))];
        double gap = 0.12 * sides.Max();
        double widest = Math.Max(sides.Max(), 1.5 * Math.Sqrt(sides.Sum(side => side * side)));
        List<(double X, double Y)> places = [];
        double x = 0;
        double y = 0;
        double row = 0;
        foreach (double side in sides)
        {
            if (x > 0 && x + side > widest)
            {
                x = 0;
                y += row + gap;
                row = 0;
            }

            places.Add((x, y));
            x += side + gap;
            row = Math.Max(row, side);
        }

        View view = new("Each part as a square of its area", places.Zip(sides, (place, wide) => place.X + wide).Max(), y + row);
        for (int i = 0; i < sides.Length; i++)
        {
            (double left, double top) = places[i];
            view.Body(Shape.Rectangle(left, top, sides[i], sides[i]))
                .Zone(parts[i].Kind, left + (sides[i] * 0.3), top + (sides[i] * 0.35))
                .Point(left + (sides[i] * 0.6), top + (sides[i] * 0.65), Words(parts[i], units), -45);
        }

        return view;
    }

    private static string Words(ZonePart part, DisplayUnits units) =>
        part.Name + ", " + Measure.Area.Format(part.Area.SquareMeters, units, 3) + " at "
        + Measure.Angle.Format(part.SlopeFromHorizontal.Radians, units, 3)
        + (part.DevelopedFactor > 1 ? ", developed " + Measure.Number.Format(part.DevelopedFactor, units, 3) : string.Empty)
        + (part.OpeningArea.SquareMeters > 0 ? ", openings " + Measure.Area.Format(part.OpeningArea.SquareMeters, units, 2) : string.Empty);
}
