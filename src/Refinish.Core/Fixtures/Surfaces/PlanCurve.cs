using System;

namespace Refinish.Fixtures;

/// <summary>Closed outlines in plan as functions of a parameter, anticlockwise as seen from above, at a height z, in SI.</summary>
internal static class PlanCurve
{
    /// <summary>Eight pieces: corners at even places, straights after them; corner k turns from k to k + 1 quarter turns.</summary>
    public static readonly double[] Pieces = [0, 1, 2, 3, 4, 5, 6, 7, 8];

    /// <summary>One turn in four smooth pieces.</summary>
    public static readonly double[] Turn = [0, Math.PI / 2, Math.PI, 3 * Math.PI / 2, 2 * Math.PI];

    /// <summary>One turn in eighths, so that a corner of a box falls on a break.</summary>
    public static readonly double[] Eighths = [0, Math.PI / 4, Math.PI / 2, 3 * Math.PI / 4, Math.PI, 5 * Math.PI / 4, 3 * Math.PI / 2, 7 * Math.PI / 4, 2 * Math.PI];

    /// <summary>The signs of the four corners along x and y.</summary>
    public static (double X, double Y) Sign(int corner) => (corner is 0 or 3 ? 1 : -1, corner < 2 ? 1 : -1);

    /// <summary>A rounded rectangle by eight pieces, its middle at (x, y).</summary>
    public static MeshPoint RoundedRectangle(double length, double width, double radius, double x, double y, double z, double u)
    {
        (int corner, double angle, double along) = Piece(u);
        MeshPoint start = Corner(corner, angle);
        return along == 0 ? start : MeshPoint.Between(start, Corner((corner + 1) % 4, angle), along);

        MeshPoint Corner(int k, double turn)
        {
            (double sx, double sy) = Sign(k);
            return new(
                x + (sx * ((length / 2) - radius)) + (radius * Math.Cos(turn)),
                y + (sy * ((width / 2) - radius)) + (radius * Math.Sin(turn)),
                z);
        }
    }

    /// <summary>The corner, the plan angle of the outward normal, and the share of the straight after the corner.</summary>
    public static (int Corner, double Angle, double Along) Piece(double u)
    {
        int piece = Math.Min(7, (int)Math.Floor(u));
        double share = u - piece;
        int corner = piece / 2;
        return piece % 2 == 0 ? (corner, (corner + share) * Math.PI / 2, 0) : (corner, (corner + 1) * Math.PI / 2, share);
    }

    public static MeshPoint Circle(double diameter, double z, double turn) =>
        new(diameter / 2 * Math.Cos(turn), diameter / 2 * Math.Sin(turn), z);

    /// <summary>The point of a centred ellipse towards an angle.</summary>
    public static MeshPoint Ellipse(double length, double width, double z, double turn)
    {
        double c = Math.Cos(turn);
        double s = Math.Sin(turn);
        double r = 1 / Math.Sqrt((4 * c * c / (length * length)) + (4 * s * s / (width * width)));
        return new(r * c, r * s, z);
    }

    /// <summary>The point of a centred rounded rectangle towards an angle.</summary>
    public static MeshPoint RoundedRectangleTowards(double length, double width, double radius, double z, double turn)
    {
        double c = Math.Cos(turn);
        double s = Math.Sin(turn);
        double halfX = length / 2;
        double halfY = width / 2;
        double ax = Math.Abs(c);
        double ay = Math.Abs(s);
        double r = Math.Min(ax == 0 ? double.PositiveInfinity : halfX / ax, ay == 0 ? double.PositiveInfinity : halfY / ay);
        double px = halfX - radius;
        double py = halfY - radius;
        if (r * ax > px && r * ay > py && radius > 0)
        {
            // Where the ray leaves the circle round (px, py).
            double along = (ax * px) + (ay * py);
            double square = (along * along) - ((px * px) + (py * py) - (radius * radius));
            r = along + Math.Sqrt(Math.Max(0, square));
        }

        return new(r * c, r * s, z);
    }

    /// <summary>The breaks of a centred rounded rectangle in the angle: the ends of its corners.</summary>
    public static double[] Breaks(double length, double width, double radius)
    {
        double first = Math.Atan2((width / 2) - radius, length / 2);
        double second = Math.Atan2(width / 2, (length / 2) - radius);
        double pi = Math.PI;
        return [0, first, second, pi / 2, pi - second, pi - first, pi, pi + first, pi + second, 3 * pi / 2, (2 * pi) - second, (2 * pi) - first, 2 * pi];
    }

    /// <summary>
    /// A box of half sides x and y round a superellipse of exponent 2/p, by that outline's own parameter: the ring between them never
    /// folds.
    /// </summary>
    public static MeshPoint Box(double x, double y, double p, double z, double turn)
    {
        double c = Math.Cos(turn);
        double s = Math.Sin(turn);
        double ac = Math.Abs(c);
        double along = Math.Abs(s);
        return ac >= along
            ? new(x * Math.Sign(c), y * Math.Sign(s) * Math.Pow(along / ac, p), z)
            : new(x * Math.Sign(c) * Math.Pow(ac / along, p), y * Math.Sign(s), z);
    }
}
