using System;

namespace Refinish.Films;

/// <summary>
/// A tree of boxes over triangles that answers whether anything stands between two points. Split by the surface-area rule over sixteen
/// bins; the build and the answers depend on nothing but the mesh.
/// </summary>
internal sealed partial class SprayBvh
{
    /// <summary>Deeper than any tree that halves fairly; a branch that gets here becomes a leaf.</summary>
    public const int Deepest = 60;

    private const int Leaf = 4;
    private const int Bins = 16;

    /// <summary>The part of the way nearest to the surface that is not looked at: what touches the triangle does not hide it.</summary>
    private const double Touch = 1e-5;

    /// <summary>Boxes are a nanometre larger all round, so that a flat one has an inside.</summary>
    private const double Slack = 1e-9;

    /// <summary>A ray along the edge between two triangles meets both: rounding must not let it slip through.</summary>
    private const double Edge = 1e-9;

    private readonly double[] middles;
    private readonly double[] lows;
    private readonly double[] highs;
    private readonly double[] edges;
    private readonly double[] binLow = new double[3 * Bins];
    private readonly double[] binHigh = new double[3 * Bins];
    private readonly int[] binCount = new int[Bins];
    private readonly double[] rightCost = new double[Bins];
    private Node[] nodes;
    private int used;

    public SprayBvh(double[] corners, int count)
    {
        Order = new int[count];
        middles = new double[3 * count];
        lows = new double[3 * count];
        highs = new double[3 * count];
        for (int i = 0; i < count; i++)
        {
            Order[i] = i;
            for (int k = 0; k < 3; k++)
            {
                double a = corners[(9 * i) + k];
                double b = corners[(9 * i) + 3 + k];
                double c = corners[(9 * i) + 6 + k];
                lows[(3 * i) + k] = Math.Min(a, Math.Min(b, c)) - Slack;
                highs[(3 * i) + k] = Math.Max(a, Math.Max(b, c)) + Slack;
                middles[(3 * i) + k] = (lows[(3 * i) + k] + highs[(3 * i) + k]) / 2;
            }
        }

        nodes = new Node[Math.Max(1, count)];
        if (count > 0)
        {
            used = 1;
            Split(0, 0, count, 0);
        }

        // Corner and two edges of each triangle, in the order of the leaves.
        edges = new double[9 * count];
        for (int i = 0; i < count; i++)
        {
            int from = 9 * Order[i];
            for (int k = 0; k < 3; k++)
            {
                edges[(9 * i) + k] = corners[from + k];
                edges[(9 * i) + 3 + k] = corners[from + 3 + k] - corners[from + k];
                edges[(9 * i) + 6 + k] = corners[from + 6 + k] - corners[from + k];
            }
        }

        middles = lows = highs = [];
    }

    /// <summary>The triangle at each place of the leaves.</summary>
    public int[] Order { get; }

    /// <summary>
    /// Whether a triangle other than <paramref name="self"/> (its place in the leaves) stands between a point of it and another point.
    /// </summary>
    public bool Hidden(double x, double y, double z, double toX, double toY, double toZ, int self, int[] stack)
    {
        double dx = toX - x;
        double dy = toY - y;
        double dz = toZ - z;
        double ix = Inverse(dx);
        double iy = Inverse(dy);
        double iz = Inverse(dz);
        Node[] tree = nodes;
        int top = 0;
        int at = 0;
        if (used == 0 || !tree[0].Crosses(x, y, z, ix, iy, iz))
        {
            return false;
        }

        while (true)
        {
            ref Node node = ref tree[at];
            if (node.Count > 0)
            {
                int end = node.First + node.Count;
                for (int i = node.First; i < end; i++)
                {
                    if (i != self && Stands(9 * i, x, y, z, dx, dy, dz))
                    {
                        return true;
                    }
                }
            }
            else
            {
                bool left = tree[node.First].Crosses(x, y, z, ix, iy, iz);
                bool right = tree[node.First + 1].Crosses(x, y, z, ix, iy, iz);
                if (left)
                {
                    if (right)
                    {
                        stack[top++] = node.First + 1;
                    }

                    at = node.First;
                    continue;
                }

                if (right)
                {
                    at = node.First + 1;
                    continue;
                }
            }

            if (top == 0)
            {
                return false;
            }

            at = stack[--top];
        }
    }

    // Not infinite, so that zero times it is zero.
    private static double Inverse(double d) => d == 0 ? 1e300 : 1 / d;

    /// <summary>Ray against triangle by two edge coordinates and the way, all from one determinant.</summary>
    private bool Stands(int at, double x, double y, double z, double dx, double dy, double dz)
    {
        double[] e = edges;
        double ux = e[at + 3], uy = e[at + 4], uz = e[at + 5];
        double vx = e[at + 6], vy = e[at + 7], vz = e[at + 8];
        double px = (dy * vz) - (dz * vy);
        double py = (dz * vx) - (dx * vz);
        double pz = (dx * vy) - (dy * vx);
        double determinant = (ux * px) + (uy * py) + (uz * pz);
        if (determinant == 0)
        {
            return false;
        }

        double inverse = 1 / determinant;
        double sx = x - e[at];
        double sy = y - e[at + 1];
        double sz = z - e[at + 2];
        double u = ((sx * px) + (sy * py) + (sz * pz)) * inverse;
        if (u < -Edge || u > 1 + Edge)
        {
            return false;
        }

        double qx = (sy * uz) - (sz * uy);
        double qy = (sz * ux) - (sx * uz);
        double qz = (sx * uy) - (sy * ux);
        double v = ((dx * qx) + (dy * qy) + (dz * qz)) * inverse;
        if (v < -Edge || u + v > 1 + Edge)
        {
            return false;
        }

        double t = ((vx * qx) + (vy * qy) + (vz * qz)) * inverse;
        return t > Touch && t < 1;
    }

    private struct Node(double low, double high)
    {
        private double lowX = low, lowY = low, lowZ = low, highX = high, highY = high, highZ = high;

        public readonly double LowX => lowX;

        public readonly double LowY => lowY;

        public readonly double LowZ => lowZ;

        public readonly double HighX => highX;

        public readonly double HighY => highY;

        public readonly double HighZ => highZ;

        /// <summary>The first triangle of a leaf, or the first of two children.</summary>
        public int First { get; private set; }

        public int Count { get; private set; }

        public void Widen(double lx, double ly, double lz, double hx, double hy, double hz)
        {
            lowX = Math.Min(lowX, lx);
            lowY = Math.Min(lowY, ly);
            lowZ = Math.Min(lowZ, lz);
            highX = Math.Max(highX, hx);
            highY = Math.Max(highY, hy);
            highZ = Math.Max(highZ, hz);
        }

        public readonly Node WithContent(int first, int count)
        {
            Node node = this;
            node.First = first;
            node.Count = count;
            return node;
        }

        /// <summary>Whether the way from 0 to 1 passes through the box.</summary>
        public readonly bool Crosses(double x, double y, double z, double ix, double iy, double iz)
        {
            double a = (lowX - x) * ix;
            double b = (highX - x) * ix;
            double near = a < b ? a : b;
            double far = a < b ? b : a;
            a = (lowY - y) * iy;
            b = (highY - y) * iy;
            double low = a < b ? a : b;
            double high = a < b ? b : a;
            near = near > low ? near : low;
            far = far < high ? far : high;
            a = (lowZ - z) * iz;
            b = (highZ - z) * iz;
            low = a < b ? a : b;
            high = a < b ? b : a;
            near = near > low ? near : low;
            far = far < high ? far : high;
            return near <= far && far > 0 && near < 1;
        }
    }
}
