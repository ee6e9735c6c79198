using System;
using System.Collections.Generic;
using System.Globalization;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>A box let into a tiled wall whose inside is coated too: its mouth comes off the wall, its flanks and its back are added.</summary>
/// <remarks>Flanks 2 (l + h) t, back l h (none for a window). Source: elementary plane geometry. A soap dish is taken as a box of its outer sizes.</remarks>
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
        Kind = Guard.Defined(kind, nameof(kind));
        Opening = new RectangularOpening(length, height);
        this.depth = Guard.Within(depth, Bounds.Positive(Measure.Length, 1), nameof(depth));
    }

    /// <summary>What it is.</summary>
    public WallRecessKind Kind { get; }

    /// <summary>Its mouth.</summary>
    public RectangularOpening Opening { get; }

    /// <summary>How deep it goes.</summary>
    public Length Depth => Length.FromMeters(depth);

    /// <summary>Flanks and back together, joints as if they were flush.</summary>
    public Area InsideArea => Area.FromSquareMeters(Faces);

    internal bool IsTiled => Kind != WallRecessKind.SoapDish;

    internal double Mouth => Opening.Length.Meters * Opening.Height.Meters;

    internal double Faces => (2 * (Opening.Length.Meters + Opening.Height.Meters) * depth) + (Kind == WallRecessKind.Window ? 0 : Mouth);

    /// <summary>The kind and the sizes in one line, in metric units.</summary>
    /// <returns>Text such as <c>Niche 355.6 mm × 304.8 mm, 88.9 mm deep</c>.</returns>
    public override string ToString() =>
        string.Format(CultureInfo.InvariantCulture, "{0} {1}, {2} deep", Kind, Opening, Measure.Length.Format(depth));

    internal static double EdgeOf(IReadOnlyList<WallRecess> recesses)
    {
        double edge = 0;
        for (int i = 0; i < recesses.Count; i++)
        {
            edge += recesses[i].Kind == WallRecessKind.Window ? recesses[i].Opening.Perimeter.Meters : 0;
        }

        return edge;
    }

    internal Expression MouthFormula(int index) => Tape("l_r", Opening.Length, index) * Tape("h_r", Opening.Height, index);

    internal Expression FacesFormula(int index)
    {
        Expression l = Tape("l_r", Opening.Length, index);
        Expression h = Tape("h_r", Opening.Height, index);
        Expression flanks = 2 * (l + h) * Tape("t_r", Depth, index);
        return Kind == WallRecessKind.Window ? flanks : flanks + (l * h);
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

    private static Expression Tape(string symbol, Length length, int index) =>
        Expression.Quantity(symbol + (index + 1).ToString(CultureInfo.InvariantCulture), length.Meters, Measure.Length);
}
