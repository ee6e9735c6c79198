using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>Tiled walls with recessed joints: area = (walls − openings) · f, with the recess factor f from tile and joint.</summary>
/// <remarks>
/// With tile l × w, joint width j and depth d. Sharp joint: f = 1 + 2 d (l + w) / ((l + j)(w + j)).
/// Concave joint (d ≤ j/2), an arc of length s: f = 1 + (s − j)(l + w + j) / ((l + j)(w + j)). Source: derived.
/// A niche or a window reveal takes its mouth off the wall and adds its own faces, tiled alike; a soap dish adds smooth ones.
/// </remarks>
/// <example><code>
/// TiledSurround surround = new(tape);                    // the alcove of TiledWallMeasurements
/// double squareFeet = surround.CoatedArea.SquareFeet;    // 52.78 for 50 flat
/// </code></example>
public sealed record TiledSurround : IFixture
{
    private readonly double flat;
    private readonly double open;
    private readonly double mouths;
    private readonly double tiled;
    private readonly double smooth;

    /// <summary>Works tiled walls out.</summary>
    /// <param name="measurements">What the tape gave.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measurements"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Two lengths cannot go together; the message names the one that cannot be.</exception>
    public TiledSurround(TiledWallMeasurements measurements)
    {
        Measurements = Guard.NotNull(measurements, nameof(measurements));
        measurements.CheckConsistency();
        flat = measurements.FlatArea();
        open = RectangularOpening.AreaOf(measurements.Openings);
        mouths = measurements.Mouths();
        tiled = measurements.RecessFaces(true);
        smooth = measurements.RecessFaces(false);
    }

    /// <summary>What the tape gave.</summary>
    public TiledWallMeasurements Measurements { get; }

    /// <inheritdoc/>
    public string Description => string.Format(
        CultureInfo.InvariantCulture,
        "tiled surround of {0} {1}",
        Measurements.Walls.Count,
        Measurements.Walls.Count == 1 ? "wall" : "walls");

    /// <summary>Tile with its joints, upright.</summary>
    public IReadOnlyList<FixtureZone> Zones => FixtureZone.Present(FixtureZone.Upright(FixtureZoneKind.Tile, Coated));

    /// <inheritdoc/>
    public Area CoatedArea => Area.FromSquareMeters(Coated);

    /// <summary>The outline of the walls laid side by side, steps between walls of unequal height included, every opening, and the inner edge of every window reveal.</summary>
    public Length MaskedEdge => Length.FromMeters(Edge);

    /// <summary>Walls hold no water.</summary>
    public Volume? WaterCapacity => null;

    /// <summary>The walls and the tiled faces of recesses, joints as if they were flush, openings and mouths of recesses taken off.</summary>
    public Area FlatArea => Area.FromSquareMeters(Net);

    /// <summary>The openings together.</summary>
    public Area OpeningArea => Area.FromSquareMeters(open);

    /// <summary>Developed over flat area: 1 for flush joints, more for recessed ones.</summary>
    public double RecessFactor => Measurements.Joint.RecessFactor;

    /// <summary>The joints' share of the flat area.</summary>
    public Ratio JointShare => Ratio.FromDecimalFractions(Measurements.Joint.Share);

    /// <summary>The volume that would fill every recess flush with the tile, nothing lost.</summary>
    public Volume FlushFill => Volume.FromCubicMeters(Net * Measurements.Joint.FlushFillPerArea);

    private double Net => flat - open - mouths + tiled;

    private double Coated => (Net * Measurements.Joint.RecessFactor) + smooth;

    private double Edge
    {
        get
        {
            IReadOnlyList<WallRun> walls = Measurements.Walls;
            double edge = walls[0].Height.Meters + walls[walls.Count - 1].Height.Meters;
            for (int i = 0; i < walls.Count; i++)
            {
                edge += 2 * walls[i].Length.Meters;
                edge += i == 0 ? 0 : Math.Abs(walls[i].Height.Meters - walls[i - 1].Height.Meters);
            }

            return edge + RectangularOpening.EdgeOf(Measurements.Openings) + WallRecess.EdgeOf(Measurements.Recesses);
        }
    }

    /// <summary>The walls, the tiled faces of recesses, the smooth ones; openings and mouths are taken off developed, as the walls are.</summary>
    public IReadOnlyList<SurfacePatch> Patches
    {
        get
        {
            double factor = RecessFactor;
            Workings workings = Workings();
            SurfacePatch walls = SurfacePatch.Of(workings, "A_wall", FixtureZoneKind.Tile, Math.PI / 2, factor: factor, openings: (open + mouths) * factor);
            return Measurements.Recesses.Count == 0
                ? PatchLedger.Present(walls)
                : PatchLedger.Present(
                    walls,
                    SurfacePatch.Of(workings, "A_rec", FixtureZoneKind.Tile, Math.PI / 2, factor: factor),
                    SurfacePatch.Of(workings, "A_dish", FixtureZoneKind.Tile, Math.PI / 2));
        }
    }

    /// <inheritdoc/>
    /// <remarks>The walls are drawn side by side in one plane, openings closed, and every recess behind it in a row, for where they lie is not measured.</remarks>
    public TriangleMesh Tessellate(Length chordTolerance)
    {
        Tessellation mesh = new(chordTolerance);
        double x = 0;
        foreach (WallRun wall in Measurements.Walls)
        {
            double end = x + wall.Length.Meters;
            mesh.AddFaces(SurfaceBand.Upright(FixtureZoneKind.Tile, x, 0, end, 0, 0, wall.Height.Meters));
            x = end;
        }

        x = 0;
        foreach (WallRecess recess in Measurements.Recesses)
        {
            mesh.AddFaces(recess.Draw(x));
            x += recess.Opening.Length.Meters;
        }

        return mesh.Mesh();
    }

    /// <inheritdoc/>
    public Workings Workings()
    {
        TileJoint joint = Measurements.Joint;
        Source recess = Source.Derived("developed area of one module of tile and joint");
        Expression l = Tape("l", joint.TileLength);
        Expression w = Tape("w", joint.TileWidth);
        Expression j = Tape("j", joint.Width);
        Expression d = Tape("d", joint.Depth);
        WorkingStep walls = Step("walls", "A_wall", Expression.Sum(Measurements.Walls.Select(static (wall, i) => Tape("L", wall.Length.Meters, i) * Tape("H", wall.Height.Meters, i))), flat);
        WorkingStep openings = Step("openings", "A_open", Expression.Sum(Measurements.Openings.Select(static (opening, i) => Tape("l", opening.Length.Meters, i) * Tape("h", opening.Height.Meters, i))), open);
        WorkingStep mouth = Step("mouths of recesses", "A_mouth", Expression.Sum(Measurements.Recesses.Select(static (recess, i) => recess.MouthFormula(i))), mouths);
        WorkingStep faces = Step("tiled faces of recesses", "A_rec", Expression.Sum(Measurements.Recesses.Where(static recess => recess.IsTiled).Select(static (recess, i) => recess.FacesFormula(i))), tiled);
        WorkingStep dishes = Step("smooth faces of recesses", "A_dish", Expression.Sum(Measurements.Recesses.Where(static recess => !recess.IsTiled).Select(static (recess, i) => recess.FacesFormula(i))), smooth);
        bool recessed = Measurements.Recesses.Count > 0;
        WorkingStep net = Step("flat area", "A_flat", recessed ? walls.Result() - openings.Result() - mouth.Result() + faces.Result() : walls.Result() - openings.Result(), Net);
        WorkingStep module = new("module of one tile and its joints", "A_1", (l + j) * (w + j), joint.Module, Measure.SmallArea, recess);
        List<WorkingStep> steps = recessed ? [walls, openings, mouth, faces, dishes, net, module] : [walls, openings, net, module];
        Expression developed = 2 * d * (l + w);
        Expression section = j * d;
        if (joint.Profile == JointProfile.Concave)
        {
            WorkingStep angle = new("half angle of the joint's arc", "α", 2 * Expression.Arctan(2 * d / j), joint.HalfAngle, Measure.Angle, recess);
            Expression alpha = angle.Result();
            WorkingStep arc = new("joint's arc", "s", joint.Depth == 0 ? j : j * alpha / Expression.Sin(alpha), joint.Arc, Measure.Length, recess);
            steps.AddRange([angle, arc]);
            developed = (arc.Result() - j) * (l + w + j);
            section = joint.Depth == 0
                ? section
                : Expression.Square(j / (2 * Expression.Sin(alpha))) * (alpha - (Expression.Sin(alpha) * Expression.Cos(alpha)));
        }

        WorkingStep factor = new("recess factor", "f", 1 + (developed / module.Result()), joint.RecessFactor, Measure.Number, recess);
        WorkingStep share = new("joints' share of the flat area", "g", 1 - (l * w / module.Result()), joint.Share, Measure.Percent, recess);
        WorkingStep fill = new("volume that fills the joints flush", "V_fill", net.Result() * (section * (l + w + j) / module.Result()), FlushFill.CubicMeters, Measure.Liquid, recess);
        WorkingStep total = Step("coated area: zone Tile", "A", recessed ? (net.Result() * factor.Result()) + dishes.Result() : net.Result() * factor.Result(), Coated);
        steps.AddRange([factor, share, fill, total, ZoneSteps.Upright("Tile", "φ_tile"), EdgeStep()]);
        return new Workings("Tiled surround", steps);
    }

    /// <summary>What it is and what gets coated, in one line, in metric units.</summary>
    /// <returns>Text such as <c>tiled surround of 3 walls: 4.903 m² coated</c>.</returns>
    public override string ToString() => Description + ": " + Measure.Area.Format(Coated) + " coated";

    private static Expression Tape(string symbol, double value, int index) => Tape(symbol + "_" + (index + 1).ToString(CultureInfo.InvariantCulture), value);

    private static Expression Tape(string symbol, double value) => Expression.Quantity(symbol, value, Measure.Length);

    private static WorkingStep Step(string name, string symbol, Expression formula, double value) =>
        new(name, symbol, formula, value, Measure.Area, PlaneShapes.Elementary);

    private WorkingStep EdgeStep()
    {
        IReadOnlyList<WallRun> walls = Measurements.Walls;
        Expression edge = Tape("H", walls[0].Height.Meters, 0) + Tape("H", walls[walls.Count - 1].Height.Meters, walls.Count - 1);
        for (int i = 0; i < walls.Count; i++)
        {
            edge += 2 * Tape("L", walls[i].Length.Meters, i);
            if (i > 0)
            {
                Expression left = Tape("H", walls[i - 1].Height.Meters, i - 1);
                Expression right = Tape("H", walls[i].Height.Meters, i);
                edge += Expression.Max(right - left, left - right);
            }
        }

        Expression around = Expression.Sum(Measurements.Openings.Select(static (opening, i) => 2 * (Tape("l", opening.Length.Meters, i) + Tape("h", opening.Height.Meters, i))));
        Expression reveals = Expression.Sum(Measurements.Recesses.Where(static recess => recess.Kind == WallRecessKind.Window).Select(static (recess, i) => 2 * (Tape("l_w", recess.Opening.Length.Meters, i) + Tape("h_w", recess.Opening.Height.Meters, i))));
        return new("edge to be taped", "P_mask", Measurements.Recesses.Count == 0 ? edge + around : edge + around + reveals, Edge, Measure.Length, PlaneShapes.Elementary);
    }
}
