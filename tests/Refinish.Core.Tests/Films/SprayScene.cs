using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Films;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Tests.Films;

/// <summary>Guns, fans and surfaces that the spray tests share; all figures invented for the tests.</summary>
internal static class SprayScene
{
    private static readonly Length Width = Length.FromMillimeters(240);
    private static readonly Length Height = Length.FromMillimeters(60);
    private static readonly Length At = Length.FromMillimeters(200);

    public static SprayGun Gun { get; } = new() { FluidRate = VolumeFlow.FromMillilitersPerMinute(180), TransferEfficiency = Ratio.FromPercent(65) };

    public static SprayFilmLimits Limits { get; } = new(Length.FromMicrometers(60), Length.FromMicrometers(130));

    public static StrokeSettings Hand { get; } = new()
    {
        Distance = At,
        Speed = Speed.FromCentimetersPerSecond(45),
        Overlap = Ratio.FromPercent(50),
        TriggerLead = Length.FromMillimeters(50),
    };

    public static IReadOnlyList<FanPattern> Patterns { get; } =
    [
        FanPattern.Uniform(Width, Height, At),
        FanPattern.Elliptical(Width, Height, At),
        FanPattern.Beta(Width, Height, At, 2),
        FanPattern.Beta(Width, Height, At, 2.3),
        FanPattern.Beta(Width, Height, At, 3),
        FanPattern.Gaussian(Width, Height, At),
    ];

    public static IEnumerable<object[]> PatternRows => Enumerable.Range(0, Patterns.Count).Select(i => new object[] { i });

    public static RecessedBathtub Tub { get; } = new(new RecessedBathtubMeasurements
    {
        RimLength = Length.FromInches(53), RimWidth = Length.FromInches(23.5), RimCornerRadius = Length.FromInches(6),
        FloorLength = Length.FromInches(44), FloorWidth = Length.FromInches(19.5), FloorCornerRadius = Length.FromInches(5),
        Depth = Length.FromInches(13.25), HeadRun = Length.FromInches(7), FootRun = Length.FromInches(2), CoveRadius = Length.FromInches(2.5),
        OverallLength = Length.FromInches(60), OverallWidth = Length.FromInches(30), ApronHeight = Length.FromInches(14.5),
        DrainDiameter = Length.FromInches(2), OverflowDiameter = Length.FromInches(3),
    });

    /// <summary>A level rectangle that faces up, as two triangles.</summary>
    public static TriangleMesh Panel(double x0, double y0, double x1, double y1, double z = 0) => new(
        [new(x0, y0, z), new(x1, y0, z), new(x1, y1, z), new(x0, y1, z)],
        [new(0, 1, 2, FixtureZoneKind.Top), new(0, 2, 3, FixtureZoneKind.Top)]);

    public static TriangleMesh Together(params TriangleMesh[] meshes)
    {
        List<MeshPoint> points = [];
        List<MeshTriangle> triangles = [];
        foreach (TriangleMesh mesh in meshes)
        {
            int first = points.Count;
            points.AddRange(mesh.Vertices);
            triangles.AddRange(mesh.Triangles.Select(t => new MeshTriangle(t.A + first, t.B + first, t.C + first, t.Zone)));
        }

        return new(points, triangles);
    }

    /// <summary>A room whose six sides face inwards.</summary>
    public static TriangleMesh Room(double half)
    {
        MeshPoint[] corners = [.. Enumerable.Range(0, 8).Select(i => new MeshPoint((i & 1) == 0 ? -half : half, (i & 2) == 0 ? -half : half, (i & 4) == 0 ? -half : half))];
        int[][] sides = [[0, 1, 3, 2], [4, 6, 7, 5], [0, 4, 5, 1], [2, 3, 7, 6], [0, 2, 6, 4], [1, 5, 7, 3]];
        return new(corners, sides.SelectMany(s => new MeshTriangle[] { new(s[0], s[1], s[2], null), new(s[0], s[2], s[3], null) }));
    }

    public static SprayStroke Stroke(MeshPoint start, MeshPoint end, MeshPoint aim, double turn = 0) => new()
    {
        Start = start, End = end, Aim = aim, Speed = Speed.FromCentimetersPerSecond(45), FanTurn = Angle.FromRadians(turn),
    };

    /// <summary>Strokes into a tub (its middle is the origin, its floor at zero) from above, askew in every way, as nobody would lead a gun: what the kernels have to stand.</summary>
    public static StrokePlan Askew(FanPattern pattern, int count)
    {
        Random random = new(7);
        double Part() => random.NextDouble();
        return new(Gun, pattern, Enumerable.Range(0, count).Select(i =>
        {
            MeshPoint start = new(-0.6 + (0.2 * Part()), 0.3 * (Part() - 0.5), 0.25 + (0.2 * Part()));
            return Stroke(start, new(0.4 + (0.2 * Part()), start.Y + (0.1 * Part()), start.Z + (0.05 * Part())), new(0.3 * (Part() - 0.5), 2 * (Part() - 0.5), -1), 0.6 * (Part() - 0.5));
        }));
    }

    public static double[] Films(StrokePlan plan, SprayFaces faces, bool vector, int threads) =>
        SprayBuild.Films(faces, plan.Fans(), vector, threads, null, default);
}
