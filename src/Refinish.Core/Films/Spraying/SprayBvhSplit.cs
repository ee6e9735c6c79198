using System;

namespace Refinish.Films;

/// <summary>How the tree is parted: along the longest side of the middles, where area times count of both parts adds up to least.</summary>
internal sealed partial class SprayBvh
{
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
}
