using System;
using System.Collections.Generic;
using System.Linq;
using BenchmarkDotNet.Attributes;
using Refinish.Films;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Benchmarks;

/// <summary>
/// 400 strokes over a tub of about 200 000 triangles, tree of boxes and figures by zone included, beside a double loop over every pair that takes the same
/// points of the same integral but asks for no line of sight. The target is two seconds on two cores, and nothing allocated per stroke.
/// </summary>
[MemoryDiagnoser]
public class SprayBenchmarks
{
    private readonly SprayFilmLimits limits = new(Length.FromMicrometers(60), Length.FromMicrometers(140));
    private readonly Length edge = Length.FromMillimeters(100);
    private TriangleMesh mesh = null!;
    private StrokePlan plan = null!;
    private StrokePlan bell = null!;

    [GlobalSetup]
    public void Tub()
    {
        RecessedBathtub tub = new(new RecessedBathtubMeasurements
        {
            RimLength = Length.FromInches(53), RimWidth = Length.FromInches(23.5), RimCornerRadius = Length.FromInches(6),
            FloorLength = Length.FromInches(44), FloorWidth = Length.FromInches(19.5), FloorCornerRadius = Length.FromInches(5),
            Depth = Length.FromInches(13.25), HeadRun = Length.FromInches(7), FootRun = Length.FromInches(2), CoveRadius = Length.FromInches(2.5),
            OverallLength = Length.FromInches(60), OverallWidth = Length.FromInches(30), ApronHeight = Length.FromInches(14.5),
            DrainDiameter = Length.FromInches(2), OverflowDiameter = Length.FromInches(3),
        });
        SprayGun gun = new() { FluidRate = VolumeFlow.FromMillilitersPerMinute(180), TransferEfficiency = Ratio.FromPercent(65) };
        FanPattern fan = FanPattern.Beta(Length.FromMillimeters(220), Length.FromMillimeters(60), Length.FromMillimeters(180), 2);
        StrokeSearch search = new()
        {
            Gun = gun, Pattern = fan, LongestEdge = edge, Overlaps = [],
            Hand = new()
            {
                Distance = Length.FromMillimeters(180), Speed = Speed.FromCentimetersPerSecond(45),
                Overlap = Ratio.FromPercent(50), TriggerLead = Length.FromMillimeters(40),
            },
            SlowestSpeed = Speed.FromCentimetersPerSecond(5), FastestSpeed = Speed.FromCentimetersPerSecond(200),
        };

        // The strokes of a proposal, repeated coat by coat until there are 400.
        IReadOnlyList<SprayStroke> strokes = search.Propose(tub.Tessellate(Length.FromMillimeters(10)), limits).Plan!.Strokes;
        plan = new(gun, fan, Enumerable.Range(0, 400).Select(i => strokes[i % strokes.Count]));
        bell = new(gun, FanPattern.Gaussian(fan.Width, fan.Height, fan.ReferenceDistance), plan.Strokes);
        mesh = plan.SprayOnto(tub.Tessellate(Length.FromMillimeters(10)), Length.FromMillimeters(9.8), limits).Mesh;
        Console.WriteLine("// " + mesh);
    }

    [Benchmark]
    public FilmMap Parabola() => plan.SprayOnto(mesh, edge, limits);

    [Benchmark]
    public FilmMap Gaussian() => bell.SprayOnto(mesh, edge, limits);

    /// <summary>The parabola again, one pair after the other.</summary>
    [Benchmark(Baseline = true)]
    public double[] DoubleLoop()
    {
        double[] nodes = [-0.9739065285171717, -0.8650633666889845, -0.6794095682990244, -0.4333953941292472, -0.1488743389816312, 0.1488743389816312, 0.4333953941292472, 0.6794095682990244, 0.8650633666889845, 0.9739065285171717];
        double[] weights = [0.0666713443086881, 0.1494513491505806, 0.2190863625159820, 0.2692667193099963, 0.2955242247147529, 0.2955242247147529, 0.2692667193099963, 0.2190863625159820, 0.1494513491505806, 0.0666713443086881];
        double[] films = new double[mesh.Triangles.Count];
        const double Distance = 0.18, Rate = 3e-6 * 0.65;
        for (int i = 0; i < films.Length; i++)
        {
            MeshTriangle t = mesh.Triangles[i];
            MeshPoint a = mesh.Vertices[t.A], b = mesh.Vertices[t.B], c = mesh.Vertices[t.C];
            MeshPoint p = new((a.X + b.X + c.X) / 3, (a.Y + b.Y + c.Y) / 3, (a.Z + b.Z + c.Z) / 3);
            MeshPoint n = Unit(Cross(Less(b, a), Less(c, a)));
            foreach (SprayStroke stroke in plan.Strokes)
            {
                MeshPoint travel = Unit(Less(stroke.End, stroke.Start));
                MeshPoint axisZ = Unit(stroke.Aim);
                MeshPoint axisX = Unit(Cross(axisZ, travel));
                MeshPoint axisY = Cross(axisZ, axisX);
                MeshPoint r = Less(p, stroke.Start);
                double x = Dot(r, axisX) * Distance / 0.11, y = Dot(r, axisY) * Distance / 0.03, z = Dot(r, axisZ);
                double rate = Dot(travel, axisY) * Distance / 0.03;
                double root = (z * z) - (x * x);
                if (!(root > 0) || z <= 0)
                {
                    continue;
                }

                root = Math.Sqrt(root) / Math.Abs(rate);
                double from = Math.Max(0, (y / rate) - root);
                double to = Math.Min(stroke.Length.Meters, (y / rate) + root);
                double sum = 0;
                for (int k = 0; k < nodes.Length && to > from; k++)
                {
                    double node = nodes[k] * (3 - (nodes[k] * nodes[k])) / 2;
                    double s = (from + to + ((to - from) * node)) / 2;
                    double eta = (y - (s * rate)) / z;
                    double facing = Math.Max(0, (s * Dot(travel, n)) - Dot(r, n));
                    sum += weights[k] * 1.5 * (1 - (nodes[k] * nodes[k])) * Math.Sqrt(Math.Max(0, 1 - (x * x / (z * z)) - (eta * eta))) * facing / (z * z * z);
                }

                films[i] += Rate / stroke.Speed.MetersPerSecond * 1.5 / (Math.PI * 0.11 * 0.03) * Distance * Distance * Math.Max(0, to - from) / 2 * sum;
            }
        }

        return films;
    }

    private static MeshPoint Less(MeshPoint a, MeshPoint b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    private static double Dot(MeshPoint a, MeshPoint b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);

    private static MeshPoint Cross(MeshPoint a, MeshPoint b) => new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));

    private static MeshPoint Unit(MeshPoint a)
    {
        double length = Math.Sqrt(Dot(a, a));
        return new(a.X / length, a.Y / length, a.Z / length);
    }
}
