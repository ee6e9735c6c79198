#if NET8_0_OR_GREATER
using System;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Refinish.Films;

/// <summary>The same as <see cref="SprayKernel"/>, four triangles at a time and in the same order of operations.</summary>
internal static class SprayKernelVector
{
    private const int Wide = 4;

    public static bool IsSupported => Vector256.IsHardwareAccelerated;

    public static bool Lay(SprayFan fan, SprayFaces faces, int first, int count, double[] film, double[] middle)
    {
        Vector256<double> zero = Vector256<double>.Zero;
        Vector256<double> any = zero;
        double xs = fan.ScaleX * fan.TravelX;
        double ys = fan.ScaleY * fan.TravelY;
        double zs = fan.TravelZ;
        double bend = fan.Bend;
        bool rectangle = fan.Form == FanPatternShape.Uniform;
        for (int i = 0; i < count; i += Wide)
        {
            // The arrays are padded to whole vectors with triangles that nothing reaches.
            int at = first + i;
            Vector256<double> rx = Load(faces.X, at) - Vector256.Create(fan.Start.X);
            Vector256<double> ry = Load(faces.Y, at) - Vector256.Create(fan.Start.Y);
            Vector256<double> rz = Load(faces.Z, at) - Vector256.Create(fan.Start.Z);
            Vector256<double> x = fan.ScaleX * ((rx * fan.AxisX.X) + (ry * fan.AxisX.Y) + (rz * fan.AxisX.Z));
            Vector256<double> y = fan.ScaleY * ((rx * fan.AxisY.X) + (ry * fan.AxisY.Y) + (rz * fan.AxisY.Z));
            Vector256<double> z = (rx * fan.AxisZ.X) + (ry * fan.AxisZ.Y) + (rz * fan.AxisZ.Z);
            Vector256<double> nx = Load(faces.NormalX, at);
            Vector256<double> ny = Load(faces.NormalY, at);
            Vector256<double> nz = Load(faces.NormalZ, at);
            Vector256<double> front = -((rx * nx) + (ry * ny) + (rz * nz));
            Vector256<double> fronts = (nx * fan.Travel.X) + (ny * fan.Travel.Y) + (nz * fan.Travel.Z);
            Vector256<double> from = zero;
            Vector256<double> to = Vector256.Create(fan.Length);
            if (rectangle)
            {
                Cut(x - z, xs - zs, ref from, ref to);
                Cut(-x - z, -xs - zs, ref from, ref to);
                Cut(y - z, ys - zs, ref from, ref to);
                Cut(-y - z, -ys - zs, ref from, ref to);
            }
            else
            {
                Vector256<double> slope = (xs * x) + (ys * y) - (zs * z);
                Vector256<double> offset = (x * x) + (y * y) - (z * z);
                Vector256<double> root = (slope * slope) - (bend * offset);
                Vector256<double> reached = Vector256.GreaterThan(root, zero);
                if (reached == zero)
                {
                    zero.CopyTo(film, i);
                    continue;
                }

                root = Vector256.Sqrt(Vector256.Max(root, zero));
                from = Vector256.Max(from, (slope - root) / Vector256.Create(bend));
                to = Vector256.ConditionalSelect(reached, Vector256.Min(to, (slope + root) / Vector256.Create(bend)), Vector256.Create(-1.0));
            }

            Vector256<double> mid = (from + to) / Vector256.Create(2.0);
            Vector256<double> half = (to - from) / Vector256.Create(2.0);
            Vector256<double> active = Vector256.GreaterThan(half, zero) & Vector256.GreaterThan(z - (mid * zs), zero)
                & (Vector256.GreaterThan(front + (from * fronts), zero) | Vector256.GreaterThan(front + (to * fronts), zero));
            if (active == zero)
            {
                zero.CopyTo(film, i);
                continue;
            }

            Vector256<double> laid = Vector256.ConditionalSelect(active, fan.Factor * half * Sum(fan, x, y, z, xs, ys, zs, front, fronts, mid, half), zero);
            laid.CopyTo(film, i);
            mid.CopyTo(middle, i);
            any |= Vector256.GreaterThan(laid, zero);
        }

        return any != zero;
    }

    /// <summary>Takes the film away from triangles that do not see the gun in the middle of their time; four lines of sight go through the tree together.</summary>
    public static void Hide(SprayFan fan, SprayFaces faces, int first, int count, double[] film, double[] middle, int[] stack)
    {
        for (int i = 0; i < count; i += Wide)
        {
            Vector256<double> laid = Load(film, i);
            Vector256<double> lit = Vector256.GreaterThan(laid, Vector256<double>.Zero);
            if (lit == Vector256<double>.Zero)
            {
                continue;
            }

            int at = first + i;
            Vector256<double> s = Load(middle, i);
            Vector256<double> hidden = faces.Tree.Hidden(
                Load(faces.X, at),
                Load(faces.Y, at),
                Load(faces.Z, at),
                Vector256.Create(fan.Start.X) + (s * fan.Travel.X),
                Vector256.Create(fan.Start.Y) + (s * fan.Travel.Y),
                Vector256.Create(fan.Start.Z) + (s * fan.Travel.Z),
                lit,
                at,
                stack);
            Vector256.AndNot(laid, hidden).CopyTo(film, i);
        }
    }

    private static Vector256<double> Sum(
        SprayFan fan,
        Vector256<double> x,
        Vector256<double> y,
        Vector256<double> z,
        double xs,
        double ys,
        double zs,
        Vector256<double> front,
        Vector256<double> fronts,
        Vector256<double> mid,
        Vector256<double> half)
    {
        Vector256<double> zero = Vector256<double>.Zero;
        Vector256<double> one = Vector256.Create(1.0);
        Vector256<double> sum = zero;
        double[] nodes = fan.Nodes;
        double[] weights = fan.Weights;
        for (int k = 0; k < nodes.Length; k++)
        {
            Vector256<double> s = mid + (half * nodes[k]);
            Vector256<double> inverse = one / (z - (s * zs));
            Vector256<double> facing = Vector256.Max(zero, front + (s * fronts));
            Vector256<double> term = Vector256.Create(weights[k]);
            if (fan.Form is FanPatternShape.Gaussian or FanPatternShape.Beta)
            {
                Vector256<double> xi = (x - (s * xs)) * inverse;
                Vector256<double> eta = (y - (s * ys)) * inverse;
                Vector256<double> rho = (xi * xi) + (eta * eta);
                term *= fan.Form == FanPatternShape.Gaussian
                    ? Decay(Vector256.Min(Vector256.Create(fan.Power), fan.Power * rho))
                    : Raise(Vector256.Max(zero, one - rho), fan.Power, fan.HalfSteps);
            }

            sum += term * facing * (inverse * inverse * inverse);
        }

        return sum;
    }

    private static Vector256<double> Load(double[] values, int at) => Vector256.LoadUnsafe(ref MemoryMarshal.GetArrayDataReference(values), (nuint)at);

    private static void Cut(Vector256<double> height, double rate, ref Vector256<double> from, ref Vector256<double> to)
    {
        Vector256<double> at = height / Vector256.Create(rate);
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
            to = Vector256.ConditionalSelect(Vector256.GreaterThan(height, Vector256<double>.Zero), Vector256.Create(-1.0), to);
        }
    }

    private static Vector256<double> Decay(Vector256<double> x)
    {
        Vector256<double> one = Vector256.Create(1.0);
        Vector256<double> y = x * (-1.0 / 64);
        Vector256<double> p = one + (y * (1.0 / 11));
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

    private static Vector256<double> Raise(Vector256<double> x, double power, int halfSteps)
    {
        if (halfSteps < 0)
        {
            return Vector256.Create(Math.Pow(x[0], power), Math.Pow(x[1], power), Math.Pow(x[2], power), Math.Pow(x[3], power));
        }

        Vector256<double> result = (halfSteps & 1) == 0 ? Vector256.Create(1.0) : Vector256.Sqrt(x);
        for (int i = halfSteps >> 1; i > 0; i--)
        {
            result *= x;
        }

        return result;
    }
}
#endif
