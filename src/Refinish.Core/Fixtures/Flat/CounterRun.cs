using System;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// One straight run of a counter along a wall. Both lengths are from the bare walls, whatever backsplash stands before them.
/// </summary>
/// <example><code>
/// CounterRun run = new(Length.FromInches(96), Length.FromInches(25.5));
/// string text = run.ToString();   // "2438.4 mm × 647.7 mm"
/// </code></example>
public sealed record CounterRun
{
    private readonly double length;
    private readonly double depth;

    /// <summary>Makes a run.</summary>
    /// <param name="length">Length along the wall, from wall to wall or open end, corners included, 0.1 to 10 m.</param>
    /// <param name="depth">Depth from the wall, the strip below a backsplash included, to the outermost line of the edge, 0.1 to 3
    /// m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public CounterRun(Length length, Length depth)
    {
        this.length = Guard.Within(length, Bounds.Between(0.1, 10, Measure.Length));
        this.depth = Guard.Within(depth, Bounds.Between(0.1, 3, Measure.Length));
    }

    /// <summary>Length along the wall, corners included.</summary>
    public Length Length => Length.FromMeters(length);

    /// <summary>Depth from the wall to the outermost line of the edge.</summary>
    public Length Depth => Length.FromMeters(depth);

    /// <summary>The size in one line, in metric units.</summary>
    /// <returns>Text such as <c>2438.4 mm × 647.7 mm</c>.</returns>
    public override string ToString() => $"{Measure.Length.Format(length)} × {Measure.Length.Format(depth)}";
}
