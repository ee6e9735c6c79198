using System;
using OxyPlot;

namespace Refinish.Pictures.Drawing;

/// <summary>What lies within a rectangle, worked out rather than left to the viewer: a clip path would need a name.</summary>
internal static class Clipping
{
    /// <summary>
    /// The part of a segment inside, by its two parameters (Liang and Barsky, ACM Transactions on Graphics 3 (1984)); nothing when it
    /// misses.
    /// </summary>
    public static (ScreenPoint From, ScreenPoint To)? Segment(OxyRect window, ScreenPoint from, ScreenPoint to)
    {
        double dx = to.X - from.X;
        double dy = to.Y - from.Y;
        double enter = 0;
        double leave = 1;
        if (!Cut(-dx, from.X - window.Left) || !Cut(dx, window.Right - from.X) || !Cut(-dy, from.Y - window.Top) || !Cut(dy, window.Bottom - from.Y))
        {
            return null;
        }

        return (At(enter), At(leave));

        ScreenPoint At(double t) => t == 0 ? from : t == 1 ? to : new ScreenPoint(from.X + (t * dx), from.Y + (t * dy));

        bool Cut(double direction, double distance)
        {
            if (direction == 0)
            {
                return distance >= 0;
            }

            double t = distance / direction;
            if (direction < 0)
            {
                enter = Math.Max(enter, t);
            }
            else
            {
                leave = Math.Min(leave, t);
            }

            return enter <= leave;
        }
    }
}
