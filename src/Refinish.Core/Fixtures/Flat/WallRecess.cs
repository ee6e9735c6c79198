using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// A box let into a tiled wall whose inside is coated too: its mouth comes off the wall, its flanks and its back are added.
/// </summary>
/// <remarks>
/// Flanks 2 (l + h) t, back l h (none for a window). Source: elementary plane geometry. A soap dish is taken as a box of its outer
/// sizes.
/// </remarks>
/// <example><code>
/// WallRecess niche = new(WallRecessKind.Niche, Length.FromInches(14), Length.FromInches(12), Length.FromInches(3.5));
/// double squareInches = niche.InsideArea.SquareInches;   // 350
/// </code></example>
public sealed record WallRecess
{
    private readonly double depth;

    /// <summary>Makes a recess.</summary>
    /// <param name="kind">What it is.</param>
    /// <param name="length">Length along the wall, more than 0 and at most 10 m.</param>
    /// <param name="height">Height on the wall, more than 0 and at most 10 m.</param>
    /// <param name="depth">How deep it goes, more than 0 and at most 1 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public WallRecess(WallRecessKind kind, Length length, Length height, Length depth)
    {
        Kind = Guard.Defined(kind);
        Opening = new RectangularOpening(length, height);
        this.depth = Guard.Within(depth, Bounds.Positive(Measure.Length, 1));
    }

    /// <summary>What it is.</summary>
    public WallRecessKind Kind { get; }

    /// <summary>Its mouth.</summary>
    public RectangularOpening Opening { get; }

    /// <summary>How deep it goes.</summary>
    public Length Depth => Length.FromMeters(depth);

    /// <summary>Flanks and back together, joints as if they were flush.</summary>
    public Area InsideArea => Area.FromSquareMeters(Faces().Value);

    internal bool IsTiled => Kind != WallRecessKind.SoapDish;

    /// <summary>The kind and the sizes in one line, in metric units.</summary>
    /// <returns>Text such as <c>Niche 355.6 mm × 304.8 mm, 88.9 mm deep</c>.</returns>
    public override string ToString() => $"{Kind} {Opening}, {Measure.Length.Format(depth)} deep";

    internal static IEnumerable<Num> Edges(IReadOnlyList<WallRecess> recesses, Trace? t) => recesses
        .Where(static recess => recess.Kind == WallRecessKind.Window)
        .Select((recess, i) => 2 * (t.Tape("l_w_", i, recess.Opening.Length) + t.Tape("h_w_", i, recess.Opening.Height)));

    internal Num Mouth(Trace? t = null, int place = 0) => t.Tape("l_r", place, Opening.Length) * t.Tape("h_r", place, Opening.Height);

    internal Num Faces(Trace? t = null, int place = 0)
    {
        Num flanks = 2 * (t.Tape("l_r", place, Opening.Length) + t.Tape("h_r", place, Opening.Height)) * t.Tape("t_r", place, Depth);
        return Kind == WallRecessKind.Window ? flanks : flanks + Mouth(t, place);
    }

    /// <summary>Its faces behind the plane y = 0 from x on, standing on z = 0, seen from −y.</summary>
    internal SurfaceBand[] Draw(double x)
    {
        double end = x + Opening.Length.Meters;
        double top = Opening.Height.Meters;
        const FixtureZoneKind Tile = FixtureZoneKind.Tile;
        SurfaceBand[] flanks =
        [
            SurfaceBand.Upright(Tile, x, 0, x, depth, 0, top),
            SurfaceBand.Upright(Tile, end, depth, end, 0, 0, top),
            SurfaceBand.Level(Tile, x, 0, end, depth, 0),
            SurfaceBand.Face(Tile, new(x, 0, top), new(x, depth, top), new(end, depth, top), new(end, 0, top)),
        ];
        return Kind == WallRecessKind.Window ? flanks : [.. flanks, SurfaceBand.Upright(Tile, x, depth, end, depth, 0, top)];
    }
}
