using System;
using System.Collections.Generic;

namespace Refinish.Air;

/// <summary>
/// The maxima of every weighted sum of a study, searched once for all sums whose weights are in proportion: substances that come from one
/// product rise and fall together, and so does their mixture index.
/// </summary>
internal sealed class AirShapes(RoomTimeline line, double changes, string symbol = "λ", string mark = "")
{
    private readonly List<AirShape> shapes = [];
    private readonly List<RoomGrid> grids = [];

    /// <summary>The room's answer to each term.</summary>
    public TermAnswers Answers => field ??= new TermAnswers(line, changes, symbol, mark);

    /// <summary>The shape to which the weights belong.</summary>
    public AirShape Of(double[] weights)
    {
        lock (shapes)
        {
            foreach (AirShape shape in shapes)
            {
                if (InProportion(shape.Weights, weights))
                {
                    return shape;
                }
            }

            AirShape another = new(this, weights);
            shapes.Add(another);
            return another;
        }
    }

    public RoomGrid Grid(double window)
    {
        lock (grids)
        {
            foreach (RoomGrid grid in grids)
            {
                if (grid.Window == window)
                {
                    return grid;
                }
            }

            RoomGrid another = new(line, changes, window);
            grids.Add(another);
            return another;
        }
    }

    // To the rounding of the products that the weights are: the place of a maximum does not feel it.
    private static bool InProportion(double[] a, double[] b)
    {
        int first = 0;
        while (first < a.Length && a[first] == 0 && b[first] == 0)
        {
            first++;
        }

        // As quotients: products of tiny weights are nothing.
        if (first < a.Length && (a[first] == 0 || b[first] == 0))
        {
            return false;
        }

        for (int i = first; i < a.Length; i++)
        {
            double left = a[i] / a[first];
            double right = b[i] / b[first];
            if (!(Math.Abs(left - right) <= 1e-14 * Math.Max(left, right)))
            {
                return false;
            }
        }

        return true;
    }
}
