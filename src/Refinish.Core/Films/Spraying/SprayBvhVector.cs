#if NET8_0_OR_GREATER
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Refinish.Films;

/// <summary>Four lines of sight at once. Those of neighbouring triangles to one gun take nearly the same way through the tree.</summary>
internal sealed partial class SprayBvh
{
    /// <summary>All bits set for each asked line that is blocked; <paramref name="self"/> is the place of the first of four triangles that lie side by side.</summary>
    public Vector256<double> Hidden(
        Vector256<double> x,
        Vector256<double> y,
        Vector256<double> z,
        Vector256<double> toX,
        Vector256<double> toY,
        Vector256<double> toZ,
        Vector256<double> asked,
        int self,
        int[] stack)
    {
        Vector256<double> hidden = Vector256<double>.Zero;
        Vector256<double> dx = toX - x;
        Vector256<double> dy = toY - y;
        Vector256<double> dz = toZ - z;
        Vector256<double> ix = Inverse(dx);
        Vector256<double> iy = Inverse(dy);
        Vector256<double> iz = Inverse(dz);
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
                    Vector256<double> stands = Stands(9 * i, x, y, z, dx, dy, dz) & asked;
                    if (stands != Vector256<double>.Zero)
                    {
                        if ((uint)(i - self) < 4)
                        {
                            stands = stands.WithElement(i - self, 0);
                        }

                        hidden |= stands;
                        asked = Vector256.AndNot(asked, stands);
                        if (asked == Vector256<double>.Zero)
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

    private static Vector256<double> Inverse(Vector256<double> d) =>
        Vector256.ConditionalSelect(Vector256.Equals(d, Vector256<double>.Zero), Vector256.Create(1e300), Vector256.Create(1.0) / d);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static bool Crosses(
        ref Node node,
        Vector256<double> x,
        Vector256<double> y,
        Vector256<double> z,
        Vector256<double> ix,
        Vector256<double> iy,
        Vector256<double> iz,
        Vector256<double> asked)
    {
        Vector256<double> a = (Vector256.Create(node.LowX) - x) * ix;
        Vector256<double> b = (Vector256.Create(node.HighX) - x) * ix;
        Vector256<double> near = Least(a, b);
        Vector256<double> far = Most(a, b);
        a = (Vector256.Create(node.LowY) - y) * iy;
        b = (Vector256.Create(node.HighY) - y) * iy;
        near = Most(near, Least(a, b));
        far = Least(far, Most(a, b));
        a = (Vector256.Create(node.LowZ) - z) * iz;
        b = (Vector256.Create(node.HighZ) - z) * iz;
        near = Most(near, Least(a, b));
        far = Least(far, Most(a, b));
        return (Vector256.LessThanOrEqual(near, far) & Vector256.GreaterThan(far, Vector256<double>.Zero) & Vector256.LessThan(near, Vector256.Create(1.0)) & asked)
            != Vector256<double>.Zero;
    }

    // No NaN comes here, so one instruction each is enough.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Least(Vector256<double> a, Vector256<double> b) =>
        System.Runtime.Intrinsics.X86.Avx.IsSupported ? System.Runtime.Intrinsics.X86.Avx.Min(a, b) : Vector256.Min(a, b);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Most(Vector256<double> a, Vector256<double> b) =>
        System.Runtime.Intrinsics.X86.Avx.IsSupported ? System.Runtime.Intrinsics.X86.Avx.Max(a, b) : Vector256.Max(a, b);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector256<double> Stands(
        int at,
        Vector256<double> x,
        Vector256<double> y,
        Vector256<double> z,
        Vector256<double> dx,
        Vector256<double> dy,
        Vector256<double> dz)
    {
        double[] e = edges;
        Vector256<double> ux = Vector256.Create(e[at + 3]), uy = Vector256.Create(e[at + 4]), uz = Vector256.Create(e[at + 5]);
        Vector256<double> vx = Vector256.Create(e[at + 6]), vy = Vector256.Create(e[at + 7]), vz = Vector256.Create(e[at + 8]);
        Vector256<double> px = (dy * vz) - (dz * vy);
        Vector256<double> py = (dz * vx) - (dx * vz);
        Vector256<double> pz = (dx * vy) - (dy * vx);
        Vector256<double> determinant = (ux * px) + (uy * py) + (uz * pz);
        Vector256<double> inverse = Vector256.Create(1.0) / determinant;
        Vector256<double> sx = x - Vector256.Create(e[at]);
        Vector256<double> sy = y - Vector256.Create(e[at + 1]);
        Vector256<double> sz = z - Vector256.Create(e[at + 2]);
        Vector256<double> u = ((sx * px) + (sy * py) + (sz * pz)) * inverse;
        Vector256<double> qx = (sy * uz) - (sz * uy);
        Vector256<double> qy = (sz * ux) - (sx * uz);
        Vector256<double> qz = (sx * uy) - (sy * ux);
        Vector256<double> v = ((dx * qx) + (dy * qy) + (dz * qz)) * inverse;
        Vector256<double> t = ((vx * qx) + (vy * qy) + (vz * qz)) * inverse;

        // A determinant of zero makes infinities or NaN, and those fail a comparison.
        return Vector256.GreaterThanOrEqual(u, Vector256.Create(-Edge)) & Vector256.GreaterThanOrEqual(v, Vector256.Create(-Edge))
            & Vector256.LessThanOrEqual(u + v, Vector256.Create(1 + Edge)) & Vector256.LessThanOrEqual(u, Vector256.Create(1 + Edge))
            & Vector256.GreaterThan(t, Vector256.Create(Touch)) & Vector256.LessThan(t, Vector256.Create(1.0));
    }
}
#endif
