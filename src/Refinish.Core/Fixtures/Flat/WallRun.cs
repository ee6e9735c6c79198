using System;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>One wall of a surround: how long it runs and how high the tile goes.</summary>
/// <example><code>
/// WallRun back = new(Length.FromInches(60), Length.FromInches(60));
/// double squareFeet = back.Area.SquareFeet;   // 25
/// </code></example>
public sealed record WallRun
{
    private readonly double length;
    private readonly double height;

    /// <summary>Makes a wall run.</summary>
    /// <param name="length">Length along the wall, more than 0 and at most 20 m.</param>
    /// <param name="height">Height of the tile, more than 0 and at most 5 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public WallRun(Length length, Length height)
    {
        this.length = Guard.Within(length, Bounds.Positive(Measure.Length, 20));
        this.height = Guard.Within(height, Bounds.Positive(Measure.Length, 5));
    }

    /// <summary>Length along the wall.</summary>
    public Length Length => Length.FromMeters(length);

    /// <summary>Height of the tile.</summary>
    public Length Height => Length.FromMeters(height);

    /// <summary>The flat area, joints as if they were flush and openings not taken off.</summary>
    public Area Area => Area.FromSquareMeters(length * height);

    /// <summary>The size in one line, in metric units.</summary>
    /// <returns>Text such as <c>1524 mm × 1524 mm</c>.</returns>
    public override string ToString() => $"{Measure.Length.Format(length)} × {Measure.Length.Format(height)}";
}
