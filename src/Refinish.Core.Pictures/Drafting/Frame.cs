using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Pictures.Drafting;

/// <summary>A view at a scale with its dimension lines placed, and the room that they take on each side, in pixels.</summary>
internal sealed class Frame
{
    /// <summary>From the view to its first dimension line.</summary>
    public const double First = 14;

    /// <summary>From one dimension line to the next.</summary>
    public const double Next = 20;

    public Frame(View view, double scale, DisplayUnits units)
    {
        View = view;
        Width = view.Width * scale;
        Left = Room(Side.Left, view.Height);
        Right = Room(Side.Right, view.Height);
        Above = Room(Side.Top, view.Width);
        Below = Room(Side.Bottom, view.Width) + 10;

        // A label that stands beyond its line may stick out at the ends.
        foreach (PlacedDimension placed in Placed.Where(placed => placed.Dimension.Side is Side.Top or Side.Bottom))
        {
            Left = Math.Max(Left, 4 - placed.LabelFrom);
            Right = Math.Max(Right, placed.LabelTo + 4 - Width);
        }

        foreach (PlacedDimension placed in Placed.Where(placed => placed.Dimension.Side is Side.Left or Side.Right))
        {
            Above = Math.Max(Above, 4 - placed.LabelFrom);
            Below = Math.Max(Below, placed.LabelTo + 14 - (view.Height * scale));
        }

        Width += Left + Right;

        double Room(Side side, double length)
        {
            IReadOnlyList<PlacedDimension> lines = PlacedDimension.Of(view.On(side), scale, length * scale, units);
            Placed.AddRange(lines);
            return lines.Count == 0 ? 10 : First + (lines.Max(line => line.Level) * Next) + 10;
        }
    }

    public View View { get; }

    public List<PlacedDimension> Placed { get; } = [];

    public double Left { get; }

    public double Right { get; }

    public double Above { get; }

    public double Below { get; }

    public double Width { get; }

    public double Beside => Left + Right;
}
