using System;

namespace Refinish.Films;

/// <summary>
/// The film that one stroke lays on triangles, without line of sight; one triangle after the other. Symbols at <see cref="SprayFan"/>.
/// </summary>
internal static class SprayKernel
{
    /// <summary>Writes film and the middle of the way along which the fan is over the triangle. Returns whether anything landed.</summary>
    public static bool Lay(SprayFan fan, SprayFaces faces, int first, int count, double[] film, double[] middle)
    {
        bool any = false;
        for (int i = 0; i < count; i++)
        {
            film[i] = One(fan, faces, first + i, out middle[i]);
            any |= film[i] > 0;
        }

        return any;
    }

    /// <summary>Takes the film away from triangles that do not see the gun in the middle of their time.</summary>
    public static void Hide(SprayFan fan, SprayFaces faces, int first, int count, double[] film, double[] middle, int[] stack)
    {
        for (int i = 0; i < count; i++)
        {
            int at = first + i;
            double x = fan.Start.X + (middle[i] * fan.Travel.X);
            double y = fan.Start.Y + (middle[i] * fan.Travel.Y);
            double z = fan.Start.Z + (middle[i] * fan.Travel.Z);
            if (film[i] > 0 && faces.Tree.Hidden(faces.X[at], faces.Y[at], faces.Z[at], x, y, z, at, stack))
            {
                film[i] = 0;
            }
        }
    }

    /// <summary>
    /// e^−x for 0 ≤ x ≤ 12.5, by a polynomial and squaring; the vector path takes the same steps. Relative error below 1e-13.
    /// </summary>
    public static double Decay(double x)
    {
        double y = x * (-1.0 / 64);
        double p = 1 + (y * (1.0 / 11));
        p = 1 + (y * (1.0 / 10) * p);
        p = 1 + (y * (1.0 / 9) * p);
        p = 1 + (y * (1.0 / 8) * p);
        p = 1 + (y * (1.0 / 7) * p);
        p = 1 + (y * (1.0 / 6) * p);
        p = 1 + (y * (1.0 / 5) * p);
        p = 1 + (y * (1.0 / 4) * p);
        p = 1 + (y * (1.0 / 3) * p);
        p = 1 + (y * (1.0 / 2) * p);
        p = 1 + (y * p);
        p *= p;
        p *= p;
        p *= p;
        p *= p;
        p *= p;
        return p * p;
    }

    /// <summary>x^m for x ≥ 0, by roots and products where 2m is a whole number.</summary>
    public static double Raise(double x, double power, int halfSteps)
    {
        if (halfSteps < 0)
        {
            return Math.Pow(x, power);
        }

        double result = (halfSteps & 1) == 0 ? 1 : Math.Sqrt(x);
        for (int i = halfSteps >> 1; i > 0; i--)
        {
            result *= x;
        }

        return result;
    }

    private static double One(SprayFan fan, SprayFaces faces, int i, out double middle)
    {
        middle = 0;
        double rx = faces.X[i] - fan.Start.X;
        double ry = faces.Y[i] - fan.Start.Y;
        double rz = faces.Z[i] - fan.Start.Z;
        double x = fan.ScaleX * ((rx * fan.AxisX.X) + (ry * fan.AxisX.Y) + (rz * fan.AxisX.Z));
        double y = fan.ScaleY * ((rx * fan.AxisY.X) + (ry * fan.AxisY.Y) + (rz * fan.AxisY.Z));
        double z = (rx * fan.AxisZ.X) + (ry * fan.AxisZ.Y) + (rz * fan.AxisZ.Z);
        double xs = fan.ScaleX * fan.TravelX;
        double ys = fan.ScaleY * fan.TravelY;
        double zs = fan.TravelZ;

        // How far the nozzle stands in front of the triangle's plane, and how that changes with s.
        double front = -((rx * faces.NormalX[i]) + (ry * faces.NormalY[i]) + (rz * faces.NormalZ[i]));
        double fronts = (fan.Travel.X * faces.NormalX[i]) + (fan.Travel.Y * faces.NormalY[i]) + (fan.Travel.Z * faces.NormalZ[i]);
        double from = 0;
        double to = fan.Length;
        if (fan.Form == FanPatternShape.Uniform)
        {
            Cut(x - z, xs - zs, ref from, ref to);
            Cut(-x - z, -xs - zs, ref from, ref to);
            Cut(y - z, ys - zs, ref from, ref to);
            Cut(-y - z, -ys - zs, ref from, ref to);
        }
        else
        {
            double bend = fan.Bend;
            double slope = (xs * x) + (ys * y) - (zs * z);
            double offset = (x * x) + (y * y) - (z * z);
            double root = (slope * slope) - (bend * offset);
            if (!(root > 0))
            {
                return 0;
            }

            root = Math.Sqrt(root);
            from = Math.Max(from, (slope - root) / bend);
            to = Math.Min(to, (slope + root) / bend);
        }

        middle = (from + to) / 2;
        double half = (to - from) / 2;
        if (!(half > 0) || !(z - (middle * zs) > 0))
        {
            return 0;
        }

        double sum = 0;
        for (int k = 0; k < fan.Nodes.Length; k++)
        {
            double s = middle + (half * fan.Nodes[k]);
            double inverse = 1 / (z - (s * zs));
            double xi = (x - (s * xs)) * inverse;
            double eta = (y - (s * ys)) * inverse;
            double rho = (xi * xi) + (eta * eta);
            double form = fan.Form switch
            {
                FanPatternShape.Gaussian => Decay(Math.Min(fan.Power, fan.Power * rho)),
                FanPatternShape.Beta => Raise(Math.Max(0, 1 - rho), fan.Power, fan.HalfSteps),
                _ => 1,
            };
            double facing = Math.Max(0, front + (s * fronts));
            sum += fan.Weights[k] * form * facing * (inverse * inverse * inverse);
        }

        return fan.Factor * half * sum;
    }

    /// <summary>Keeps the s at which height − s · rate ≤ 0.</summary>
    private static void Cut(double height, double rate, ref double from, ref double to)
    {
        double at = height / rate;
        from = rate > 0 ? Math.Max(from, at) : from;
        to = rate < 0 ? Math.Min(to, at) : rate == 0 && height > 0 ? -1 : to;
    }
}
