#if NET8_0_OR_GREATER
using System;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Four = System.Runtime.Intrinsics.Vector256<double>;

namespace Refinish.Films;

/// <summary>The same as <see cref="SprayKernel"/>, four triangles at a time and in the same order of operations.</summary>
internal static class SprayKernelVector
{
    private const int Wide = 4;

    public static bool IsSupported => Vector256.IsHardwareAccelerated;

    public static bool Lay(SprayFan fan, SprayFaces faces, int first, int count, double[] film, double[] middle)
    {
        Four zero = Four.Zero;
        Four any = zero;
        double xs = fan.ScaleX * fan.TravelX;
        double ys = fan.ScaleY * fan.TravelY;
        double zs = fan.TravelZ;
        double bend = fan.Bend;
        bool rectangle = fan.Form == FanPatternShape.Uniform;
        for (int i = 0; i < count; i += Wide)
        {
            // The arrays are padded to whole vectors with triangles that nothing reaches.
            int at = first + i;
            Four rx = Load(faces.X, at) - Vector256.Create(fan.Start.X);
            Four ry = Load(faces.Y, at) - Vector256.Create(fan.Start.Y);
            Four rz = Load(faces.Z, at) - Vector256.Create(fan.Start.Z);
            Four x = fan.ScaleX * ((rx * fan.AxisX.X) + (ry * fan.AxisX.Y) + (rz * fan.AxisX.Z));
            Four y = fan.ScaleY * ((rx * fan.AxisY.X) + (ry * fan.AxisY.Y) + (rz * fan.AxisY.Z));
            Four z = (rx * fan.AxisZ.X) + (ry * fan.AxisZ.Y) + (rz * fan.AxisZ.Z);
            Four nx = Load(faces.NormalX, at);
            Four ny = Load(faces.NormalY, at);
            Four nz = Load(faces.NormalZ, at);
            Four front = -((rx * nx) + (ry * ny) + (rz * nz));
            Four fronts = (nx * fan.Travel.X) + (ny * fan.Travel.Y) + (nz * fan.Travel.Z);
            Four from = zero;
            Four to = Vector256.Create(fan.Length);
            if (rectangle)
            {
                Cut(x - z, xs - zs, ref from, ref to);
                Cut(-x - z, -xs - zs, ref from, ref to);
                Cut(y - z, ys - zs, ref from, ref to);
                Cut(-y - z, -ys - zs, ref from, ref to);
            }
            else
            {
                Four slope = (xs * x) + (ys * y) - (zs * z);
                Four offset = (x * x) + (y * y) - (z * z);
                Four root = (slope * slope) - (bend * offset);
                Four reached = Vector256.GreaterThan(root, zero);
                if (reached == zero)
                {
                    zero.CopyTo(film, i);
                    continue;
                }

                root = Vector256.Sqrt(Vector256.Max(root, zero));
                from = Vector256.Max(from, (slope - root) / Vector256.Create(bend));
                to = Vector256.ConditionalSelect(reached, Vector256.Min(to, (slope + root) / Vector256.Create(bend)), Vector256.Create(-1.0));
            }

            Four mid = (from + to) / Vector256.Create(2.0);
            Four half = (to - from) / Vector256.Create(2.0);
            Four active = Vector256.GreaterThan(half, zero) & Vector256.GreaterThan(z - (mid * zs), zero)
                & (Vector256.GreaterThan(front + (from * fronts), zero) | Vector256.GreaterThan(front + (to * fronts), zero));
            if (active == zero)
            {
                zero.CopyTo(film, i);
                continue;
            }

            Four all = fan.Factor * half * Sum(fan, x, y, z, xs, ys, zs, front, fronts, mid, half);
            Four laid = Vector256.ConditionalSelect(active, all, zero);
            laid.CopyTo(film, i);
            mid.CopyTo(middle, i);
            any |= Vector256.GreaterThan(laid, zero);
        }

        return any != zero;
    }

    /// <summary>
    /// Takes the film away from triangles that do not see the gun in the middle of their time; four lines of sight go through the tree
    /// together.
    /// </summary>
    public static void Hide(SprayFan fan, SprayFaces faces, int first, int count, double[] film, double[] middle, int[] stack)
    {
        for (int i = 0; i < count; i += Wide)
        {
            Four laid = Load(film, i);
            Four lit = Vector256.GreaterThan(laid, Four.Zero);
            if (lit == Four.Zero)
            {
                continue;
            }

            int at = first + i;
            Four s = Load(middle, i);
            Four x = Vector256.Create(fan.Start.X) + (s * fan.Travel.X);
            Four y = Vector256.Create(fan.Start.Y) + (s * fan.Travel.Y);
            Four z = Vector256.Create(fan.Start.Z) + (s * fan.Travel.Z);
            Four hidden = faces.Tree.Hidden(Load(faces.X, at), Load(faces.Y, at), Load(faces.Z, at), x, y, z, lit, at, stack);
            Vector256.AndNot(laid, hidden).CopyTo(film, i);
        }
    }

    private static Four Sum(
        SprayFan fan, Four x, Four y, Four z, double xs, double ys, double zs, Four front, Four fronts, Four mid, Four half)
    {
        Four zero = Four.Zero;
        Four one = Vector256.Create(1.0);
        Four sum = zero;
        double[] nodes = fan.Nodes;
        double[] weights = fan.Weights;
        for (int k = 0; k < nodes.Length; k++)
        {
            Four s = mid + (half * nodes[k]);
            Four inverse = one / (z - (s * zs));
            Four facing = Vector256.Max(zero, front + (s * fronts));
            Four term = Vector256.Create(weights[k]);
            if (fan.Form is FanPatternShape.Gaussian or FanPatternShape.Beta)
            {
                Four xi = (x - (s * xs)) * inverse;
                Four eta = (y - (s * ys)) * inverse;
                Four rho = (xi * xi) + (eta * eta);
                term *= fan.Form == FanPatternShape.Gaussian
                    ? Decay(Vector256.Min(Vector256.Create(fan.Power), fan.Power * rho))
                    : Raise(Vector256.Max(zero, one - rho), fan.Power, fan.HalfSteps);
            }

            sum += term * facing * (inverse * inverse * inverse);
        }

        return sum;
    }

    private static Four Load(double[] values, int at) => Vector256.LoadUnsafe(ref MemoryMarshal.GetArrayDataReference(values), (nuint)at);

    private static void Cut(Four height, double rate, ref Four from, ref Four to)
    {
        Four at = height / Vector256.Create(rate);
        if (rate > 0)
        {
            from = Vector256.Max(from, at);
        }
        else if (rate < 0)
        {
            to = Vector256.Min(to, at);
        }
        else
        {
            to = Vector256.ConditionalSelect(Vector256.GreaterThan(height, Four.Zero), Vector256.Create(-1.0), to);
        }
    }

    private static Four Decay(Four x)
    {
        Four one = Vector256.Create(1.0);
        Four y = x * (-1.0 / 64);
        Four p = one + (y * (1.0 / 11));
        p = one + (y * (1.0 / 10) * p);
        p = one + (y * (1.0 / 9) * p);
        p = one + (y * (1.0 / 8) * p);
        p = one + (y * (1.0 / 7) * p);
        p = one + (y * (1.0 / 6) * p);
        p = one + (y * (1.0 / 5) * p);
        p = one + (y * (1.0 / 4) * p);
        p = one + (y * (1.0 / 3) * p);
        p = one + (y * (1.0 / 2) * p);
        p = one + (y * p);
        p *= p;
        p *= p;
        p *= p;
        p *= p;
        p *= p;
        return p * p;
    }

    private static Four Raise(Four x, double power, int halfSteps)
    {
        if (halfSteps < 0)
        {
            return Vector256.Create(Math.Pow(x[0], power), Math.Pow(x[1], power), Math.Pow(x[2], power), Math.Pow(x[3], power));
        }

        Four result = (halfSteps & 1) == 0 ? Vector256.Create(1.0) : Vector256.Sqrt(x);
        for (int i = halfSteps >> 1; i > 0; i--)
        {
            result *= x;
        }

        return result;
    }
}
#endif
