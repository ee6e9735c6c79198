using System;
using System.Collections.Generic;

namespace Refinish.Fixtures;

/// <summary>Parts of which only area and slope are known, as squares in a row: each set at its slope, its lower edge at height 0.</summary>
internal static class PartSquares
{
    public static SurfaceBand[] Of(IReadOnlyList<ZonePart> parts)
    {
        SurfaceBand[] squares = new SurfaceBand[parts.Count];
        double start = 0;
        for (int i = 0; i < squares.Length; i++)
        {
            double side = Math.Sqrt(parts[i].SquareMetres);
            squares[i] = Square(parts[i], start, side);
            start += side;
        }

        return squares;
    }

    // At 0° it looks up, at 90° to the front (−y), at 180° down.
    private static SurfaceBand Square(ZonePart part, double start, double side)
    {
        double across = Math.Cos(part.Radians) * side;
        double up = Math.Sin(part.Radians) * side;
        return new(part.Kind, (u, v) => new(start + (u * side), (1 - v) * across, (1 - v) * up));
    }
}
