using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// Turns bands of surface into triangles. Bands that are added together share the samples of their outline parameter, so that
/// neighbours meet without a gap.
/// </summary>
/// <remarks>
/// Each smooth piece is halved until the surface lies within half of the chord tolerance of its chord along the outline, and within
/// half of it across; for a surface with bounded curvature the mesh's area then converges with the square of the mesh width.
/// </remarks>
internal sealed class Tessellation
{
    /// <summary>Corners nearer than a nanometre are one: the two ends of a closed outline, or a pole.</summary>
    private const double Seam = 1e-9;

    /// <summary>2¹⁴ samples a piece; a tolerance that asked for more is refused by the range of <see cref="Tolerance"/>.</summary>
    private const int MostHalvings = 14;

    private readonly double tolerance;
    private readonly List<MeshPoint> points = [];
    private readonly List<MeshTriangle> triangles = [];

    public Tessellation(Length chordTolerance) => tolerance = Guard.Within(chordTolerance, Bounds.Between(1e-6, 0.05, Measure.Length));

    public double Tolerance => tolerance;

    /// <summary>
    /// Bands one after the other, each beginning where the last one ended, over the same breaks of the outline parameter.
    /// </summary>
    public Tessellation Add(double[] breaks, params SurfaceBand[] bands)
    {
        double[] along = Along(breaks, bands);
        foreach (SurfaceBand band in bands)
        {
            Fill(band, along, Across(band, along));
        }

        return this;
    }

    /// <summary>Flat faces: two triangles each.</summary>
    public Tessellation AddFaces(params SurfaceBand[] faces)
    {
        foreach (SurfaceBand face in faces)
        {
            Fill(face, [0, 1], [0, 1]);
        }

        return this;
    }

    public TriangleMesh Mesh() => MeshEdges.Welded(points.ToArray(), triangles.ToArray(), Seam);

    private static double Sagitta(MeshPoint from, MeshPoint to, MeshPoint point)
    {
        MeshPoint chord = MeshPoint.Difference(to, from);
        MeshPoint arm = MeshPoint.Difference(point, from);
        double length = chord.Norm;
        return length == 0 ? arm.Norm : MeshPoint.Cross(chord, arm).Norm / length;
    }

    private double[] Along(double[] breaks, SurfaceBand[] bands)
    {
        List<double> samples = [breaks[0]];
        for (int piece = 0; piece + 1 < breaks.Length; piece++)
        {
            double low = breaks[piece];
            double high = breaks[piece + 1];
            int count = Count(low, high, (from, to) =>
            {
                foreach (SurfaceBand band in bands)
                {
                    for (int k = 0; k <= 4; k++)
                    {
                        double v = k / 4.0;
                        if (!Straight(t => band.Map(t, v), from, to))
                        {
                            return false;
                        }
                    }
                }

                return true;
            });
            for (int i = 1; i <= count; i++)
            {
                samples.Add(i == count ? high : low + ((high - low) * i / count));
            }
        }

        return samples.ToArray();
    }

    private double[] Across(SurfaceBand band, double[] along)
    {
        int stride = Math.Max(1, along.Length / 16);
        int count = Count(0, 1, (from, to) =>
        {
            for (int i = 0; i < along.Length; i += stride)
            {
                double u = along[i];
                if (!Straight(t => band.Map(u, t), from, to))
                {
                    return false;
                }
            }

            return true;
        });

        // A twisted cell bends off its diagonal although both of its ways are straight; narrower cells twist less.
        while (count < 1 << MostHalvings && Twist(band, along, count) > tolerance / 2)
        {
            count *= 2;
        }

        double[] samples = new double[count + 1];
        for (int i = 0; i <= count; i++)
        {
            samples[i] = (double)i / count;
        }

        return samples;
    }

    private static double Twist(SurfaceBand band, double[] along, int count)
    {
        double worst = 0;
        for (int i = 0; i + 1 < along.Length; i++)
        {
            MeshPoint a = band.Map(along[i], 0);
            MeshPoint b = band.Map(along[i], 1.0 / count);
            MeshPoint c = band.Map(along[i + 1], 1.0 / count);
            MeshPoint d = band.Map(along[i + 1], 0);
            MeshPoint normal = TriangleMesh.DoubleNormal(a, c, b);
            double area = normal.Norm;
            worst = area == 0 ? worst : Math.Max(worst, Math.Abs(MeshPoint.Dot(MeshPoint.Difference(d, a), normal)) / area / 4);
        }

        return worst;
    }

    private static int Count(double low, double high, Func<double, double, bool> fits)
    {
        for (int halvings = 0; halvings < MostHalvings; halvings++)
        {
            int count = 1 << halvings;
            bool all = true;
            for (int i = 0; i < count && all; i++)
            {
                all = fits(low + ((high - low) * i / count), low + ((high - low) * (i + 1) / count));
            }

            if (all)
            {
                return count;
            }
        }

        return 1 << MostHalvings;
    }

    // Quarters too: an S has its middle on the chord.
    private bool Straight(Func<double, MeshPoint> curve, double from, double to)
    {
        MeshPoint first = curve(from);
        MeshPoint last = curve(to);
        double step = (to - from) / 4;
        return Sagitta(first, last, curve(from + step)) <= tolerance / 2
            && Sagitta(first, last, curve(from + (2 * step))) <= tolerance / 2
            && Sagitta(first, last, curve(from + (3 * step))) <= tolerance / 2;
    }

    private void Fill(SurfaceBand band, double[] along, double[] across)
    {
        int start = points.Count;
        int row = across.Length;
        foreach (double u in along)
        {
            foreach (double v in across)
            {
                points.Add(band.Map(u, v));
            }
        }

        for (int i = 0; i + 1 < along.Length; i++)
        {
            for (int k = 0; k + 1 < row; k++)
            {
                int a = start + (i * row) + k;
                int b = a + 1;
                int c = b + row;
                int d = a + row;

                // First along v, then along u: the normal is ∂v × ∂u, the coated side.
                triangles.Add(new(a, b, c, band.Zone));
                triangles.Add(new(a, c, d, band.Zone));
            }
        }
    }
}
