using System;
using System.Collections.Generic;

namespace Refinish.Fixtures;

/// <summary>
/// The deck of a corner tub in plan, in SI: corner of the room at (0, 0), right wall R along x, left wall L along y, left return l from
/// (0, L) along x, right return r from (R, 0) along y, front from (R, r) to (l, L), bowed out by s.
/// </summary>
internal readonly record struct CornerPlan(double Left, double Right, double LeftReturn, double RightReturn, double Bow)
{
    public Num Deck(Trace? t = null)
    {
        Num straight = Straight(t);
        return Bow == 0 ? straight : straight + (Num.Square(Radius(t)) * (HalfAngle(t) - (Num.Sin(HalfAngle(t)) * Num.Cos(HalfAngle(t)))));
    }

    /// <summary>Returns and front by their length.</summary>
    public Num Front(Trace? t = null) => ShortLeft(t) + ShortRight(t) + (Bow == 0 ? Chord(t) : 2 * Radius(t) * HalfAngle(t));

    private Num Straight(Trace? t = null) =>
        (LongLeft(t) * LongRight(t)) - ((LongRight(t) - ShortLeft(t)) * (LongLeft(t) - ShortRight(t)) / 2);

    public Num Chord(Trace? t = null) => Num.Sqrt(Num.Square(LongRight(t) - ShortLeft(t)) + Num.Square(LongLeft(t) - ShortRight(t)));

    private Num HalfAngle(Trace? t = null) => 2 * Num.Arctan(2 * t.Given("s", Bow, Measure.Length) / Chord(t));

    private Num Radius(Trace? t = null) => Chord(t) / (2 * Num.Sin(HalfAngle(t)));

    private Num LongLeft(Trace? t) => t.Given("L", Left, Measure.Length);

    private Num LongRight(Trace? t) => t.Given("R", Right, Measure.Length);

    private Num ShortLeft(Trace? t) => t.Given("l", LeftReturn, Measure.Length);

    private Num ShortRight(Trace? t) => t.Given("r", RightReturn, Measure.Length);

    /// <summary>The centroid of the deck with a straight front.</summary>
    private (double X, double Y) Centre
    {
        get
        {
            double whole = Straight().Value;
            double cut = (Right - LeftReturn) * (Left - RightReturn) / 2;
            double x = ((Left * Right * Right / 2) - (cut * (Right - ((Right - LeftReturn) / 3)))) / whole;
            double y = ((Left * Right * Left / 2) - (cut * (Left - ((Left - RightReturn) / 3)))) / whole;
            return (x, y);
        }
    }

    /// <summary>
    /// The breaks of the ring round a mouth: its quarter turns and the corners of the deck, by the mouth's own parameter.
    /// </summary>
    public double[] Breaks(SuperellipseBasin basin)
    {
        SortedSet<double> marks = [.. PlanCurve.Turn];
        foreach (MeshPoint corner in Corners())
        {
            double angle = Math.Atan2(corner.Y, corner.X);
            double s = Math.Pow(Math.Abs(Math.Sin(angle)) / basin.MouthB, basin.MouthN / 2);
            double c = Math.Pow(Math.Abs(Math.Cos(angle)) / basin.MouthA, basin.MouthN / 2);
            double turn = Math.Atan2(Math.Sin(angle) < 0 ? -s : s, Math.Cos(angle) < 0 ? -c : c);
            marks.Add(turn < 0 ? turn + (2 * Math.PI) : turn);
        }

        return [.. marks];
    }

    /// <summary>Whether a mouth over the middle lies inside, at a point for every degree.</summary>
    public bool Holds(SuperellipseBasin basin)
    {
        for (int i = 0; i < 360; i++)
        {
            MeshPoint point = basin.Point(true, i * Math.PI / 180);
            MeshPoint edge = Towards(point, point.Z);
            if (Math.Abs(point.X) + Math.Abs(point.Y) > Math.Abs(edge.X) + Math.Abs(edge.Y))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Where the ray from the mouth's middle through one of its points leaves the deck.</summary>
    public MeshPoint Towards(MeshPoint point, double z)
    {
        MeshPoint[] corners = Corners();
        double length = Math.Sqrt((point.X * point.X) + (point.Y * point.Y));
        double dx = point.X / length;
        double dy = point.Y / length;
        double reach = double.MaxValue;
        int side = 0;
        for (int i = 0; i < corners.Length; i++)
        {
            MeshPoint a = corners[i];
            MeshPoint b = corners[(i + 1) % corners.Length];
            double ex = b.X - a.X;
            double ey = b.Y - a.Y;
            double cross = (dx * ey) - (dy * ex);
            double t = ((a.X * ey) - (a.Y * ex)) / cross;
            if (cross > 0 && t < reach)
            {
                reach = t;
                side = i;
            }
        }

        if (side == 2 && Bow > 0)
        {
            // Corners 2 and 3 end the front; the arc's middle lies behind the chord.
            MeshPoint a = corners[2];
            MeshPoint b = corners[3];
            double radius = Radius().Value;
            double chord = Chord().Value;
            double back = radius - Bow;
            double mx = ((a.X + b.X) / 2) - (back * (b.Y - a.Y) / chord);
            double my = ((a.Y + b.Y) / 2) + (back * (b.X - a.X) / chord);
            double along = (dx * mx) + (dy * my);
            reach = along + Math.Sqrt(Math.Max(0, (along * along) - ((mx * mx) + (my * my) - (radius * radius))));
        }

        return new(reach * dx, reach * dy, z);
    }

    /// <summary>Along right return, front and left return, u from 0 to 3, in the mouth's own directions.</summary>
    public MeshPoint AlongFront(double u, double z)
    {
        MeshPoint[] corners = Corners();
        int side = Math.Min(2, (int)Math.Floor(u));
        double share = u - side;
        MeshPoint a = corners[side + 1];
        MeshPoint b = corners[side + 2];
        MeshPoint flat = MeshPoint.Between(a, b, share);
        if (side == 1 && Bow > 0)
        {
            double turn = HalfAngle().Value * ((2 * share) - 1);
            double radius = Radius().Value;
            double chord = Chord().Value;
            double sine = radius * Math.Sin(turn);
            double rise = (radius * Math.Cos(turn)) - (radius - Bow);
            double ux = (b.X - a.X) / chord;
            double uy = (b.Y - a.Y) / chord;
            flat = new(((a.X + b.X) / 2) + (sine * ux) + (rise * uy), ((a.Y + b.Y) / 2) + (sine * uy) - (rise * ux), 0);
        }

        return flat with { Z = z };
    }

    /// <summary>The five corners, anticlockwise from the corner of the room, seen from the mouth's middle with x along the front.</summary>
    private MeshPoint[] Corners()
    {
        (double cx, double cy) = Centre;
        double chord = Chord().Value;
        double ux = chord == 0 ? 1 : (LeftReturn - Right) / chord;
        double uy = chord == 0 ? 0 : (Left - RightReturn) / chord;
        return [Turned(0, 0), Turned(Right, 0), Turned(Right, RightReturn), Turned(LeftReturn, Left), Turned(0, Left)];

        MeshPoint Turned(double x, double y) => new(((x - cx) * ux) + ((y - cy) * uy), ((y - cy) * ux) - ((x - cx) * uy), 0);
    }
}
