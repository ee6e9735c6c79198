using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>A rectangle that is not coated: a window, a soap dish, a valve plate, the cut-out for a sink.</summary>
/// <example><code>
/// RectangularOpening window = new(Length.FromInches(24), Length.FromInches(36));
/// double squareFeet = window.Area.SquareFeet;   // 6
/// </code></example>
public sealed record RectangularOpening
{
    private readonly double length;
    private readonly double height;

    /// <summary>Makes an opening.</summary>
    /// <param name="length">Length along the wall or along the counter, more than 0 and at most 10 m.</param>
    /// <param name="height">Height on the wall, or the other way on the counter, more than 0 and at most 10 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public RectangularOpening(Length length, Length height)
    {
        this.length = Guard.Within(length, Bounds.Positive(Measure.Length, 10));
        this.height = Guard.Within(height, Bounds.Positive(Measure.Length, 10));
    }

    /// <summary>Length along the wall or along the counter.</summary>
    public Length Length => Length.FromMeters(length);

    /// <summary>Height on the wall, or the other way on the counter.</summary>
    public Length Height => Length.FromMeters(height);

    /// <summary>The area that is left out.</summary>
    public Area Area => Area.FromSquareMeters(length * height);

    /// <summary>The length around, which is taped.</summary>
    public Length Perimeter => Length.FromMeters(2 * (length + height));

    /// <summary>The size in one line, in metric units.</summary>
    /// <returns>Text such as <c>609.6 mm × 914.4 mm</c>.</returns>
    public override string ToString() => $"{Measure.Length.Format(length)} × {Measure.Length.Format(height)}";

    internal static Num AreaOf(IReadOnlyList<RectangularOpening> openings, Trace? t = null, string across = "h_") =>
        openings.Total((t, across), static (of, one, i) => of.t.Tape("l_", i, one.Length) * of.t.Tape(of.across, i, one.Height));

    internal static IEnumerable<Num> Edges(IReadOnlyList<RectangularOpening> openings, Trace? t, string across = "h_") =>
        openings.Select((one, i) => 2 * (t.Tape("l_", i, one.Length) + t.Tape(across, i, one.Height)));

    internal bool FitsInto(double availableLength, double availableHeight) => length <= availableLength && height <= availableHeight;
}
