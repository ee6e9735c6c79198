using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;
using Refinish.Fixtures;

namespace Refinish.Pictures.Drafting;

/// <summary>Views of what is flat: shower pan, countertop, panel, tiled walls. Where cut-outs and openings lie is not measured.</summary>
internal static class FlatDrafts
{
    private const int MostJoints = 120;

    public static Blueprint Of(ShowerPan pan, DisplayUnits units)
    {
        ShowerPanMeasurements tape = pan.Measurements;
        double ledge = tape.LedgeWidth.Meters;
        double length = tape.FloorLength.Meters + (2 * ledge);
        double floor = tape.FloorWidth.Meters;
        double curb = tape.CurbTopWidth.Meters;
        double threshold = tape.ThresholdWidth.Meters;
        double width = ledge + floor + curb + threshold;
        double drain = tape.DrainDiameter.Meters;
        View plan = new View("From above, curb below", length, width)
            .Body(Shape.Rectangle(0, 0, length, ledge + floor + curb))
            .Hollow(Shape.Rectangle(ledge, ledge, tape.FloorLength.Meters, floor))
            .Edge([new(ledge, ledge + floor), new(length - ledge, ledge + floor)])
            .Measured(Side.Top, ledge, length - ledge, ledge, "floor", tape.FloorLength)
            .Measured(Side.Left, ledge, ledge + floor, ledge, "floor width", tape.FloorWidth)
            .Measured(Side.Right, ledge + floor, ledge + floor + curb, length, "curb width", tape.CurbTopWidth)
            .Zone(FixtureZoneKind.Floor, length / 2, ledge + (floor / 4))
            .Zone(FixtureZoneKind.Curb, length / 2, ledge + floor + (curb / 2));
        if (ledge > 0)
        {
            plan.Point(length - (ledge / 2), ledge + (floor / 3), Words.Length("ledge, width", tape.LedgeWidth, units), 180).Zone(FixtureZoneKind.Rim, ledge / 2, ledge / 2);
        }

        if (threshold > 0)
        {
            plan.Body(Shape.Rectangle(0, ledge + floor + curb, length, threshold))
                .Measured(Side.Right, width - threshold, width, length, "threshold", tape.ThresholdWidth);
        }

        if (drain > 0)
        {
            plan.Edge(Shape.Ellipse(length / 2, ledge + (floor / 2), drain, drain), closed: true).Point(length / 2, ledge + (floor / 2), Words.Length("drain, diameter", tape.DrainDiameter, units), 30);
        }

        // From the back at the left to the room at the right, downwards from the highest point.
        double wall = tape.WallHeight.Meters;
        double inside = tape.CurbInsideHeight.Meters;
        double top = Math.Max(wall, inside);
        double room = top - inside + tape.CurbOutsideHeight.Meters;
        double height = Math.Max(top, room);
        View section = new View("Cut from the back, left, to the room, right", width, height)
            .Edge([
                new(0, top - wall), new(ledge, top - wall), new(ledge, top), new(ledge + floor, top), new(ledge + floor, top - inside),
                new(ledge + floor + curb, top - inside), new(ledge + floor + curb, room), .. threshold > 0 ? (DataPoint[])[new(width, room)] : [],
            ])
            .Measured(Side.Left, top - wall, top, ledge, "wall height", tape.WallHeight)
            .Measured(Side.Right, top - inside, room, ledge + floor + curb, "curb height outside", tape.CurbOutsideHeight)
            .Measured(Side.Right, top - inside, top, ledge + floor, "curb height inside", tape.CurbInsideHeight)
            .Zone(FixtureZoneKind.Wall, ledge + (floor * 0.08), top - (wall * 0.5));
        return new Blueprint([plan, section], [], [Words.PlacesAreUsual]);
    }

    public static Blueprint Of(FlatPanel panel, DisplayUnits units)
    {
        FlatPanelMeasurements tape = panel.Measurements;
        double length = tape.Length.Meters;
        double width = tape.Width.Meters;
        View plan = new View("From above", length, width)
            .Body(Shape.Rectangle(0, 0, length, width))
            .Measured(Side.Top, 0, length, 0, "length", tape.Length)
            .Measured(Side.Right, 0, width, length, "width", tape.Width)
            .Zone(FixtureZoneKind.Top, length * 0.06, width * 0.3);
        CutOuts(plan, tape.CutOuts, 0, 0, length, width, units);
        List<string> further = [];
        if (tape.ExposedEdge.Meters > 0)
        {
            plan.Point(length * 0.8, width, Words.Length("edge that shows, together", tape.ExposedEdge, units) + ", developed height " + Measure.Length.Format(tape.EdgeHeight.Meters, units, 4), -120)
                .Zone(FixtureZoneKind.Edge, length * 0.2, width);
        }

        if (tape.BacksplashLength.Meters > 0)
        {
            plan.Wall([new(Math.Max(0, (length - tape.BacksplashLength.Meters) / 2), 0), new(Math.Min(length, (length + tape.BacksplashLength.Meters) / 2), 0)])
                .Point(length * 0.8, 0, Words.Length("upstand, together", tape.BacksplashLength, units) + Backsplash(tape.BacksplashHeight, tape.BacksplashThickness, units), 120)
                .Zone(FixtureZoneKind.Backsplash, length * 0.2, 0);
        }

        return new Blueprint([plan], further, tape.BacksplashLength.Meters > 0
            ? [Words.FromTheWall, Words.PlacesAreUsual] : [Words.PlacesAreUsual]);
    }

    public static Blueprint Of(Countertop counter, DisplayUnits units)
    {
        CountertopMeasurements tape = counter.Measurements;
        IReadOnlyList<CounterRun> runs = tape.Runs;

        // A U lies with its middle run at the back; an L and a straight counter with their first run there.
        bool u = runs.Count == 3;
        CounterRun back = u ? runs[1] : runs[0];
        CounterRun? left = u ? runs[0] : null;
        CounterRun? right = runs.Count == 1 ? null : runs[runs.Count - 1];
        double length = back.Length.Meters;
        double depth = back.Depth.Meters;
        double leftDepth = left?.Depth.Meters ?? 0;
        double rightDepth = right?.Depth.Meters ?? 0;
        double leftLength = left?.Length.Meters ?? depth;
        double rightLength = right?.Length.Meters ?? depth;
        List<DataPoint> outline = [new(0, 0), new(length, 0), new(length, rightLength)];
        if (right is not null)
        {
            outline.AddRange([new(length - rightDepth, rightLength), new(length - rightDepth, depth)]);
        }

        if (left is not null)
        {
            outline.AddRange([new(leftDepth, depth), new(leftDepth, leftLength)]);
        }

        outline.Add(new(0, leftLength));
        double height = Math.Max(leftLength, rightLength);
        string shape = u ? "U" : right is not null ? "L" : "straight";
        View plan = new View("From above, " + shape + ", walls thick", length, height).Body([.. outline]);
        List<DataPoint> walls = [];
        if (left is not null && !tape.LeftEndIsOpen)
        {
            walls.Add(new(leftDepth, leftLength));
        }

        if (left is not null || !tape.LeftEndIsOpen)
        {
            walls.Add(new(0, leftLength));
        }

        walls.AddRange([new(0, 0), new(length, 0)]);
        if (right is not null || !tape.RightEndIsOpen)
        {
            walls.Add(new(length, rightLength));
        }

        if (right is not null && !tape.RightEndIsOpen)
        {
            walls.Add(new(length - rightDepth, rightLength));
        }

        plan.Wall([.. walls])
            .Measured(Side.Top, 0, length, 0, u ? "middle run" : right is null ? "length" : "first run", back.Length)
            .Measured(Side.Left, 0, depth, u ? leftDepth : 0, u ? "middle depth" : right is null ? "depth" : "first depth", back.Depth)
            .Zone(FixtureZoneKind.Top, length * 0.1, depth * 0.35)
            .Zone(FixtureZoneKind.Backsplash, length * 0.3, 0)
            .Zone(FixtureZoneKind.Edge, leftDepth + ((length - leftDepth - rightDepth) * 0.2), depth);
        if (left is not null)
        {
            plan.Measured(Side.Left, 0, leftLength, 0, "left run", left.Length).Measured(Side.Bottom, 0, leftDepth, leftLength, "left depth", left.Depth);
        }

        if (right is not null)
        {
            plan.Measured(Side.Right, 0, rightLength, length, u ? "right run" : "second run", right.Length).Measured(Side.Bottom, length - rightDepth, length, rightLength, u ? "right depth" : "second depth", right.Depth);
        }

        double front = leftDepth + ((length - leftDepth - rightDepth) * 0.75);
        plan.Point(
            front,
            depth,
            Words.Length("edge, " + tape.Profile.ToString("G").ToLowerInvariant() + ", thickness", tape.Thickness, units) + (tape.EdgeRadius.Meters > 0 ? ", radius " + Measure.Length.Format(tape.EdgeRadius.Meters, units, 4) : string.Empty),
            90);
        if (tape.BacksplashHeight.Meters > 0)
        {
            plan.Point(length * 0.7, 0, "backsplash" + Backsplash(tape.BacksplashHeight, tape.BacksplashThickness, units), 100);
        }

        // Each cut-out lies in the longest run that it fits, beside the others there.
        CutOuts(plan, tape.CutOuts, leftDepth, 0, length - leftDepth - rightDepth, depth, units);
        return new Blueprint([plan], [], [Words.FromTheWall, Words.PlacesAreUsual]);
    }

    public static Blueprint Of(TiledSurround surround, DisplayUnits units)
    {
        TiledWallMeasurements tape = surround.Measurements;
        double length = tape.Walls.Sum(wall => wall.Length.Meters);
        double height = tape.Walls.Max(wall => wall.Height.Meters);
        bool level = tape.Walls.All(wall => wall.Height.Meters.Equals(tape.Walls[0].Height.Meters));
        View view = new("The walls side by side, unfolded", length, height);
        double x = 0;
        int longest = 0;
        List<double> starts = [];
        List<string> further = [];
        for (int i = 0; i < tape.Walls.Count; i++)
        {
            WallRun wall = tape.Walls[i];
            double run = wall.Length.Meters;
            double top = height - wall.Height.Meters;
            starts.Add(x);
            longest = run > tape.Walls[longest].Length.Meters ? i : longest;
            view.Hollow(Shape.Rectangle(x, top, run, wall.Height.Meters));
            Joints(view, x, top, run, wall.Height.Meters, tape);
            view.Edge(Shape.Rectangle(x, top, run, wall.Height.Meters), closed: true)
                .Measured(Side.Top, x, x + run, top, tape.Walls.Count == 1 ? "wall" : "wall " + Figures.Fixed(i + 1, 0) + ":", wall.Length);
            if (i == 0)
            {
                view.Measured(Side.Left, top, height, 0, "height", wall.Height);
            }
            else if (!level && i == tape.Walls.Count - 1)
            {
                view.Measured(Side.Right, top, height, length, "height", wall.Height);
            }
            else if (!level)
            {
                view.Point(x + (run / 2), top, Words.Length("wall " + Figures.Fixed(i + 1, 0) + ", height", wall.Height, units), 90);
            }

            x += run;
        }

        view.Zone(FixtureZoneKind.Tile, starts[0] + (tape.Walls[0].Length.Meters / 2), height * 0.85);

        // What is in the walls stands in a row on the longest of them.
        List<(double Length, double Height, string Words)> holes =
        [
            .. tape.Openings.Select(opening => (opening.Length.Meters, opening.Height.Meters, "opening, not coated, " + Size(opening, units))),
            .. tape.Recesses.Select(recess => (recess.Opening.Length.Meters, recess.Opening.Height.Meters, Named(recess.Kind) + ", coated inside, " + Size(recess.Opening, units) + ", depth " + Measure.Length.Format(recess.Depth.Meters, units, 4))),
        ];
        double room = tape.Walls[longest].Length.Meters;
        double gap = (room - holes.Sum(hole => hole.Length)) / (holes.Count + 1);
        double at = starts[longest] + Math.Max(0, gap);
        foreach ((double wide, double tall, string words) in holes)
        {
            double upper = Math.Max(height - tape.Walls[longest].Height.Meters, (height * 0.55) - (tall / 2));
            view.Hollow(Shape.Rectangle(at, upper, wide, tall)).Point(at + (wide / 2), upper + (tall / 2), words, -60);
            at += wide + Math.Max(0, gap);
        }

        further.Add("tile " + Measure.Length.Format(tape.TileLength.Meters, units, 4) + " by " + Measure.Length.Format(tape.TileWidth.Meters, units, 4));
        further.Add("joint " + Measure.Length.Format(tape.JointWidth.Meters, units, 4) + " wide, " + Measure.Length.Format(tape.JointDepth.Meters, units, 4) + " deep, " + tape.JointProfile.ToString("G").ToLowerInvariant());
        return new Blueprint([view], further, [Words.PlacesAreUsual]);
    }

    private static void Joints(View view, double left, double top, double length, double height, TiledWallMeasurements tape)
    {
        double across = tape.TileLength.Meters + tape.JointWidth.Meters;
        double down = tape.TileWidth.Meters + tape.JointWidth.Meters;
        if ((length / across) + (height / down) > MostJoints)
        {
            return;
        }

        for (double x = across; x < length - 1e-9; x += across)
        {
            view.Fine([new(left + x, top), new(left + x, top + height)]);
        }

        for (double y = down; y < height - 1e-9; y += down)
        {
            view.Fine([new(left, top + height - y), new(left + length, top + height - y)]);
        }
    }

    private static void CutOuts(View view, IReadOnlyList<RectangularOpening> openings, double left, double top, double length, double width, DisplayUnits units)
    {
        double gap = (length - openings.Sum(opening => opening.Length.Meters)) / (openings.Count + 1);
        double x = left + Math.Max(0, gap);
        foreach (RectangularOpening opening in openings)
        {
            double tall = opening.Height.Meters;
            double y = top + Math.Max(0, (width - tall) / 2);
            view.Hollow(Shape.Rectangle(x, y, opening.Length.Meters, tall))
                .Point(x + (opening.Length.Meters / 2), y + (tall / 2), "cut-out " + Size(opening, units), -60);
            x += opening.Length.Meters + Math.Max(0, gap);
        }
    }

    private static string Backsplash(UnitsNet.Length height, UnitsNet.Length thickness, DisplayUnits units) =>
        ", height " + Measure.Length.Format(height.Meters, units, 4) + (thickness.Meters > 0 ? ", thickness of its top " + Measure.Length.Format(thickness.Meters, units, 4) : string.Empty);

    private static string Size(RectangularOpening opening, DisplayUnits units) =>
        Measure.Length.Format(opening.Length.Meters, units, 4) + " by " + Measure.Length.Format(opening.Height.Meters, units, 4);

    private static string Named(WallRecessKind kind) => kind switch { WallRecessKind.Niche => "niche", WallRecessKind.Window => "window", _ => "soap dish" };
}
