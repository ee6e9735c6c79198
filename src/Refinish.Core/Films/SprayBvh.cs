using System;

namespace Refinish.Films;

/// <summary>
/// A tree of boxes over triangles that answers whether anything stands between two points. Split by the surface-area rule over sixteen bins;
/// the build and the answers depend on nothing but the mesh.
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

    /// <summary>Whether a triangle other than <paramref name="self"/> (its place in the leaves) stands between a point of it and another point.</summary>
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

    private void Split(int place, int first, int count, int depth)
    {
        Node node = new(double.MaxValue, double.MinValue);
        double lowX = double.MaxValue, lowY = double.MaxValue, lowZ = double.MaxValue;
        double highX = double.MinValue, highY = double.MinValue, highZ = double.MinValue;
        for (int i = first; i < first + count; i++)
        {
            int t = 3 * Order[i];
            node.Widen(lows[t], lows[t + 1], lows[t + 2], highs[t], highs[t + 1], highs[t + 2]);
            lowX = Math.Min(lowX, middles[t]);
            lowY = Math.Min(lowY, middles[t + 1]);
            lowZ = Math.Min(lowZ, middles[t + 2]);
            highX = Math.Max(highX, middles[t]);
            highY = Math.Max(highY, middles[t + 1]);
            highZ = Math.Max(highZ, middles[t + 2]);
        }

        double spreadX = highX - lowX;
        double spreadY = highY - lowY;
        double spreadZ = highZ - lowZ;
        int axis = spreadX >= spreadY && spreadX >= spreadZ ? 0 : spreadY >= spreadZ ? 1 : 2;
        double low = axis == 0 ? lowX : axis == 1 ? lowY : lowZ;
        double spread = axis == 0 ? spreadX : axis == 1 ? spreadY : spreadZ;
        int left = count <= Leaf || depth >= Deepest || !(spread > 0) ? 0 : Cut(first, count, axis, low, spread);
        if (left == 0)
        {
            nodes[place] = node.WithContent(first, count);
            return;
        }

        int children = used;
        used += 2;
        if (used > nodes.Length)
        {
            Array.Resize(ref nodes, 2 * nodes.Length);
        }

        nodes[place] = node.WithContent(children, 0);
        Split(children, first, left, depth + 1);
        Split(children + 1, first + left, count - left, depth + 1);
    }

    /// <summary>Where the sum of area times count is least, the order is parted; returns how many come first.</summary>
    private int Cut(int first, int count, int axis, double low, double spread)
    {
        double scale = Bins / spread;
        for (int b = 0; b < Bins; b++)
        {
            binCount[b] = 0;
            for (int k = 0; k < 3; k++)
            {
                binLow[(3 * b) + k] = double.MaxValue;
                binHigh[(3 * b) + k] = double.MinValue;
            }
        }

        for (int i = first; i < first + count; i++)
        {
            int t = 3 * Order[i];
            int b = Bin(middles[t + axis]);
            binCount[b]++;
            Widen(binLow, binHigh, 3 * b, lows, highs, t);
        }

        double lx = double.MaxValue, ly = lx, lz = lx, hx = double.MinValue, hy = hx, hz = hx;
        int seen = 0;
        for (int b = Bins - 1; b > 0; b--)
        {
            Gather(b);
            rightCost[b] = seen == 0 ? 0 : seen * HalfArea();
        }

        lx = ly = lz = double.MaxValue;
        hx = hy = hz = double.MinValue;
        seen = 0;
        int best = 0;
        double least = double.MaxValue;
        for (int b = 0; b < Bins - 1; b++)
        {
            Gather(b);
            if (seen > 0 && seen < count && (seen * HalfArea()) + rightCost[b + 1] < least)
            {
                least = (seen * HalfArea()) + rightCost[b + 1];
                best = b + 1;
            }
        }

        int end = first;
        for (int i = first; i < first + count; i++)
        {
            if (Bin(middles[(3 * Order[i]) + axis]) < best)
            {
                (Order[end], Order[i]) = (Order[i], Order[end]);
                end++;
            }
        }

        return end - first;

        int Bin(double middle) => Math.Min(Bins - 1, (int)((middle - low) * scale));

        void Gather(int b)
        {
            seen += binCount[b];
            lx = Math.Min(lx, binLow[3 * b]);
            ly = Math.Min(ly, binLow[(3 * b) + 1]);
            lz = Math.Min(lz, binLow[(3 * b) + 2]);
            hx = Math.Max(hx, binHigh[3 * b]);
            hy = Math.Max(hy, binHigh[(3 * b) + 1]);
            hz = Math.Max(hz, binHigh[(3 * b) + 2]);
        }

        double HalfArea() => ((hx - lx) * (hy - ly)) + ((hy - ly) * (hz - lz)) + ((hz - lz) * (hx - lx));
    }

    private static void Widen(double[] low, double[] high, int at, double[] lows, double[] highs, int from)
    {
        for (int k = 0; k < 3; k++)
        {
            low[at + k] = Math.Min(low[at + k], lows[from + k]);
            high[at + k] = Math.Max(high[at + k], highs[from + k]);
        }
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
