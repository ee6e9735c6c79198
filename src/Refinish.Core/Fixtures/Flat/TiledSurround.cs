using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>Tiled walls with recessed joints: area = (walls − openings) · f, with the recess factor f from tile and joint.</summary>
/// <remarks>
/// With tile l × w, joint width j and depth d. Sharp joint: f = 1 + 2 d (l + w) / ((l + j)(w + j)). Concave joint (d ≤ j/2), an arc of
/// length s: f = 1 + (s − j)(l + w + j) / ((l + j)(w + j)). Source: derived. A niche or a window reveal takes its mouth off the wall and
/// adds its own faces, tiled alike; a soap dish adds smooth ones.
/// </remarks>
/// <example><code>
/// TiledSurround surround = new(tape);                    // the alcove of TiledWallMeasurements
/// double squareFeet = surround.CoatedArea.SquareFeet;    // 52.78 for 50 flat
/// </code></example>
public sealed record TiledSurround : IFixture
{
    /// <summary>Works tiled walls out.</summary>
    /// <param name="measurements">What the tape gave.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measurements"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Two lengths cannot go together; the message names the one that cannot be.</exception>
    public TiledSurround(TiledWallMeasurements measurements)
    {
        Measurements = Guard.NotNull(measurements);
        measurements.CheckConsistency();
    }

    /// <summary>What the tape gave.</summary>
    public TiledWallMeasurements Measurements { get; }

    /// <inheritdoc/>
    public string Description => $"tiled surround of {Measurements.Walls.Count} {(Measurements.Walls.Count == 1 ? "wall" : "walls")}";

    /// <summary>Tile with its joints, upright.</summary>
    public IReadOnlyList<FixtureZone> Zones => field ??= FixtureZone.Present(FixtureZone.Upright(FixtureZoneKind.Tile, Coated().Value));

    /// <inheritdoc/>
    public Area CoatedArea => Area.FromSquareMeters(Coated().Value);

    /// <summary>
    /// The outline of the walls laid side by side, steps between walls of unequal height included, every opening, and the inner edge of
    /// every window reveal.
    /// </summary>
    public Length MaskedEdge => Length.FromMeters(Edge().Value);

    /// <summary>Walls hold no water.</summary>
    public Volume? WaterCapacity => null;

    /// <summary>
    /// The walls and the tiled faces of recesses, joints as if they were flush, openings and mouths of recesses taken off.
    /// </summary>
    public Area FlatArea => Area.FromSquareMeters(Net().Value);

    /// <summary>The openings together.</summary>
    public Area OpeningArea => Area.FromSquareMeters(Open().Value);

    /// <summary>Developed over flat area: 1 for flush joints, more for recessed ones.</summary>
    public double RecessFactor => Joint.RecessFactor().Value;

    /// <summary>The joints' share of the flat area.</summary>
    public Ratio JointShare => Ratio.FromDecimalFractions(Joint.Share().Value);

    /// <summary>The volume that would fill every recess flush with the tile, nothing lost.</summary>
    public Volume FlushFill => Volume.FromCubicMeters(Fill().Value);

    /// <summary>
    /// The walls, the tiled faces of recesses, the smooth ones; openings and mouths are taken off developed, as the walls are.
    /// </summary>
    public IReadOnlyList<SurfacePatch> Patches
    {
        get
        {
            double factor = RecessFactor;
            return field ??= PatchLedger.Present(
                new SurfacePatch(
                    Walls, FixtureZoneKind.Tile, SurfacePatch.Upright, factor: factor, openings: (Open() + Mouths()).Value * factor),
                new SurfacePatch(Tiled, FixtureZoneKind.Tile, SurfacePatch.Upright, factor: factor),
                new SurfacePatch(Smooth, FixtureZoneKind.Tile, SurfacePatch.Upright));
        }
    }

    private TileJoint Joint => Measurements.Joint;

    private bool HasRecesses => Measurements.Recesses.Count > 0;

    /// <inheritdoc/>
    /// <remarks>
    /// The walls are drawn side by side in one plane, openings closed, and every recess behind it in a row, for where they lie is not
    /// measured.
    /// </remarks>
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
    public Workings Workings() => Trace.Of(
        "Tiled surround", Net, t => Joint.Module(t), t => Joint.RecessFactor(t), t => Joint.Share(t), Fill, Coated,
        t => ZoneSteps.Upright(t, "Tile", "φ_tile"), Edge);

    /// <summary>Whether two are measured alike.</summary>
    /// <param name="other">The other one.</param>
    /// <returns><see langword="true"/> when their measurements are equal.</returns>
    public bool Equals(TiledSurround? other) => other is not null && Measurements.Equals(other.Measurements);

    /// <inheritdoc/>
    public override int GetHashCode() => Measurements.GetHashCode();

    /// <summary>What it is and what gets coated, in one line, in metric units.</summary>
    /// <returns>Text such as <c>tiled surround of 3 walls: 4.903 m² coated</c>.</returns>
    public override string ToString() => PatchLedger.Told(this);

    private Num Walls(Trace? t) => t.Area("walls", "A_wall", Measurements.WallArea(t));

    private Num Open(Trace? t = null) => t.Area("openings", "A_open", RectangularOpening.AreaOf(Measurements.Openings, t));

    private Num Mouths(Trace? t = null) => t.Area("mouths of recesses", "A_mouth", Measurements.Mouths(t));

    private Num Tiled(Trace? t) => t.Area("tiled faces of recesses", "A_rec", Measurements.RecessFaces(true, t));

    private Num Smooth(Trace? t) => t.Area("smooth faces of recesses", "A_dish", Measurements.RecessFaces(false, t));

    private Num Net(Trace? t = null) => t.Area("flat area", "A_flat",
        HasRecesses ? Walls(t) - Open(t) - Mouths(t) + Tiled(t) : Walls(t) - Open(t));

    private Num Coated(Trace? t = null) => t.Area("coated area: zone Tile", "A",
        HasRecesses ? (Net(t) * Joint.RecessFactor(t)) + Smooth(t) : Net(t) * Joint.RecessFactor(t));

    private Num Fill(Trace? t = null) => t.Step("volume that fills the joints flush", "V_fill", Measure.Liquid, TileJoint.Recess,
        Net(t) * Joint.FlushFillPerArea(t));

    private Num Edge(Trace? t = null)
    {
        IReadOnlyList<WallRun> walls = Measurements.Walls;
        Num edge = High(0) + High(walls.Count - 1);
        for (int i = 0; i < walls.Count; i++)
        {
            edge += 2 * t.Tape("L_", i, walls[i].Length);
            edge = i == 0 ? edge : edge + Num.Max(High(i) - High(i - 1), High(i - 1) - High(i));
        }

        return t.Edge(Num.Sum(
            [edge, .. RectangularOpening.Edges(Measurements.Openings, t), .. WallRecess.Edges(Measurements.Recesses, t)]));

        Num High(int place) => t.Tape("H_", place, walls[place].Height);
    }
}
