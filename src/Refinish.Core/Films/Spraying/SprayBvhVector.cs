#if NET8_0_OR_GREATER
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;
using Four = System.Runtime.Intrinsics.Vector256<double>;

namespace Refinish.Films;

/// <summary>Four lines of sight at once. Those of neighbouring triangles to one gun take nearly the same way through the tree.</summary>
internal sealed partial class SprayBvh
{
    /// <summary>
    /// All bits set for each asked line that is blocked; <paramref name="self"/> is the place of the first of four triangles that lie side
    /// by side.
    /// </summary>
    public Four Hidden(Four x, Four y, Four z, Four toX, Four toY, Four toZ, Four asked, int self, int[] stack)
    {
        Four hidden = Four.Zero;
        Four dx = toX - x;
        Four dy = toY - y;
        Four dz = toZ - z;
        Four ix = Inverse(dx);
        Four iy = Inverse(dy);
        Four iz = Inverse(dz);
        Node[] tree = nodes;
        int top = 0;
        int at = 0;
        if (used == 0 || !Crosses(ref tree[0], x, y, z, ix, iy, iz, asked))
        {
            return hidden;
        }

        while (true)
        {
            ref Node node = ref tree[at];
            if (node.Count > 0)
            {
                int end = node.First + node.Count;
                for (int i = node.First; i < end; i++)
                {
                    Four stands = Stands(9 * i, x, y, z, dx, dy, dz) & asked;
                    if (stands != Four.Zero)
                    {
                        if ((uint)(i - self) < 4)
                        {
                            stands = stands.WithElement(i - self, 0);
                        }

                        hidden |= stands;
                        asked = Vector256.AndNot(asked, stands);
                        if (asked == Four.Zero)
                        {
                            return hidden;
                        }
                    }
                }
            }
            else
            {
                bool left = Crosses(ref tree[node.First], x, y, z, ix, iy, iz, asked);
                bool right = Crosses(ref tree[node.First + 1], x, y, z, ix, iy, iz, asked);
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
                return hidden;
            }

            at = stack[--top];
        }
    }

    private static Four Inverse(Four d) =>
        Vector256.ConditionalSelect(Vector256.Equals(d, Four.Zero), Vector256.Create(1e300), Vector256.Create(1.0) / d);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static bool Crosses(ref Node node, Four x, Four y, Four z, Four ix, Four iy, Four iz, Four asked)
    {
        Four a = (Vector256.Create(node.LowX) - x) * ix;
        Four b = (Vector256.Create(node.HighX) - x) * ix;
        Four near = Least(a, b);
        Four far = Most(a, b);
        a = (Vector256.Create(node.LowY) - y) * iy;
        b = (Vector256.Create(node.HighY) - y) * iy;
        near = Most(near, Least(a, b));
        far = Least(far, Most(a, b));
        a = (Vector256.Create(node.LowZ) - z) * iz;
        b = (Vector256.Create(node.HighZ) - z) * iz;
        near = Most(near, Least(a, b));
        far = Least(far, Most(a, b));
        return (Vector256.LessThanOrEqual(near, far) & Vector256.GreaterThan(far, Four.Zero)
            & Vector256.LessThan(near, Vector256.Create(1.0)) & asked)
            != Four.Zero;
    }

    // No NaN comes here, so one instruction each is enough.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Four Least(Four a, Four b) => Avx.IsSupported ? Avx.Min(a, b) : Vector256.Min(a, b);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Four Most(Four a, Four b) => Avx.IsSupported ? Avx.Max(a, b) : Vector256.Max(a, b);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Four Stands(int at, Four x, Four y, Four z, Four dx, Four dy, Four dz)
    {
        double[] e = edges;
        Four ux = Vector256.Create(e[at + 3]), uy = Vector256.Create(e[at + 4]), uz = Vector256.Create(e[at + 5]);
        Four vx = Vector256.Create(e[at + 6]), vy = Vector256.Create(e[at + 7]), vz = Vector256.Create(e[at + 8]);
        Four px = (dy * vz) - (dz * vy);
        Four py = (dz * vx) - (dx * vz);
        Four pz = (dx * vy) - (dy * vx);
        Four determinant = (ux * px) + (uy * py) + (uz * pz);
        Four inverse = Vector256.Create(1.0) / determinant;
        Four sx = x - Vector256.Create(e[at]);
        Four sy = y - Vector256.Create(e[at + 1]);
        Four sz = z - Vector256.Create(e[at + 2]);
        Four u = ((sx * px) + (sy * py) + (sz * pz)) * inverse;
        Four qx = (sy * uz) - (sz * uy);
        Four qy = (sz * ux) - (sx * uz);
        Four qz = (sx * uy) - (sy * ux);
        Four v = ((dx * qx) + (dy * qy) + (dz * qz)) * inverse;
        Four t = ((vx * qx) + (vy * qy) + (vz * qz)) * inverse;

        // A determinant of zero makes infinities or NaN, and those fail a comparison.
        return Vector256.GreaterThanOrEqual(u, Vector256.Create(-Edge)) & Vector256.GreaterThanOrEqual(v, Vector256.Create(-Edge))
            & Vector256.LessThanOrEqual(u + v, Vector256.Create(1 + Edge)) & Vector256.LessThanOrEqual(u, Vector256.Create(1 + Edge))
            & Vector256.GreaterThan(t, Vector256.Create(Touch)) & Vector256.LessThan(t, Vector256.Create(1.0));
    }
}
#endif
