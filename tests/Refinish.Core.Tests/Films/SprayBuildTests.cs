using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Films;

public class SprayBuildTests
{
    private static readonly Length Fine = Length.FromMillimeters(10);

    [Theory]
    [MemberData(nameof(SprayScene.PatternRows), MemberType = typeof(SprayScene))]
    [Evidence(Basis.Independent, "the definition step by step: 40 000 moments, solid angle dA cos θ / r², cosine of incidence, angles instead of coordinates")]
    public void Film_is_the_definition_summed_over_moments(int pattern)
    {
        StrokePlan plan = SprayScene.Askew(SprayScene.Patterns[pattern], 6);
        TriangleMesh mesh = SprayScene.Together(Spot(0, 0, 0.02, 0), Spot(-0.05, 0.06, 0.05, 0.5), Spot(0.15, -0.03, 0, -0.7), Spot(0.5, 0, 0.03, 0.2));
        SprayFaces faces = new(mesh);
        double[] films = SprayScene.Films(plan, faces, false, 1);
        for (int i = 0; i < films.Length; i++)
        {
            // A chord of a few centimetres has some thousand of the moments; where the pattern ends in a step, one of them more or less counts.
            double expected = plan.Strokes.Sum(stroke => ByMoments(plan, stroke, faces, i));
            Numbers.Near(expected, films[i], films.Max() * (pattern <= 1 ? 2e-3 : 5e-5));
        }

        Assert.True(films.Max() > 5e-6);
    }

    [Theory]
    [MemberData(nameof(SprayScene.PatternRows), MemberType = typeof(SprayScene))]
    [Evidence(Basis.Identity, "point by point, long parallel strokes leave mean × r(x) of the closed form, r from RelativeBuild; the mean is fluid rate × TE / (speed × spacing)")]
    public void A_flat_panel_gets_the_closed_form(int index)
    {
        FanPattern pattern = SprayScene.Patterns[index];
        foreach ((double overlap, double distance) in new[] { (0.5, 0.2), (0.3, 0.2), (0.6, 0.15), (0, 0.25) })
        {
            StrokeSettings hand = SprayScene.Hand with { Overlap = Ratio.FromDecimalFractions(overlap), Distance = Length.FromMeters(distance), TriggerLead = Length.FromMeters(0.2) };
            StrokeOverlap closed = new(SprayScene.Gun, pattern, hand);
            StrokePlan plan = StrokePlan.OverPanel(SprayScene.Gun, pattern, hand, Length.FromMeters(0.4), Length.FromMeters(2));
            double spacing = closed.Spacing.Meters;
            const int Spots = 199;
            SprayFaces faces = new(SprayScene.Together([.. Enumerable.Range(0, Spots).Select(i => Spot(0.2, 1 + (spacing * (i + 0.5) / Spots), 0, 0))]));
            double[] films = SprayScene.Films(plan, faces, SprayBuild.VectorIsSupported, 2);
            double[] strokes = [.. plan.Strokes.Select(stroke => stroke.Start.Y)];
            double peak = Enumerable.Range(0, 20_001).Average(i => pattern.RelativeBuild(Length.FromMeters((i - 10_000) * 5e-5), hand.Distance).DecimalFractions) * 20_001 * 5e-5;
            for (int i = 0; i < films.Length; i++)
            {
                double relative = strokes.Sum(y => pattern.RelativeBuild(Length.FromMeters(faces.Y[i] - y), hand.Distance).DecimalFractions) * spacing / peak;
                bool onEdge = index == 0 && strokes.Any(y => Math.Abs(Math.Abs(faces.Y[i] - y) - (closed.FanWidth.Meters / 2)) < 1e-6);
                if (!onEdge)
                {
                    Numbers.Near(closed.MeanWetFilm.Meters * relative, films[i], closed.MeanWetFilm.Meters * (index == 0 ? 5e-4 : 3e-5));
                }
            }

            Numbers.Close(closed.MeanWetFilm.Meters, films.Average(), index == 0 ? 6e-3 : 2e-3);
        }
    }

    [Theory]
    [MemberData(nameof(SprayScene.PatternRows), MemberType = typeof(SprayScene))]
    [Evidence(Basis.Identity, "a closed room catches all that is transferred, whichever way the gun points: Σ film × area = fluid rate × time × TE, to the fineness of the mesh")]
    public void A_closed_room_catches_everything(int pattern)
    {
        SprayStroke[] strokes =
        [
            SprayScene.Stroke(new(-0.1, 0, 0), new(0.15, 0.02, 0.03), new(0, 0, -1)),
            SprayScene.Stroke(new(-0.1, 0.05, 0), new(0.1, 0.1, 0.02), new(0.2, 1, -0.7), 0.4),
            SprayScene.Stroke(new(0, -0.1, 0.1), new(0.05, 0.1, 0.1), new(-1, 0.3, 0.2), -1.2),
        ];
        StrokePlan plan = new(SprayScene.Gun, SprayScene.Patterns[pattern], strokes);
        FilmMap map = plan.SprayOnto(SprayScene.Room(0.35), Length.FromMillimeters(8), SprayScene.Limits);
        Numbers.Close(0.65 * 3e-6 * strokes.Sum(stroke => stroke.Length.Meters) / 0.45, map.Balance.Landed.CubicMeters, pattern == 0 ? 2e-3 : 2e-4);
        Numbers.Near(0, map.Balance.PassedBy.Milliliters / map.Balance.Sprayed.Milliliters, 2e-3);
    }

    [Fact]
    [Evidence(Basis.Independent, "what passes by, from the gun's side: rays over the fan's cross-section at even moments, held against every triangle one by one")]
    public void What_passes_by_is_what_the_gun_sees_past_the_tub()
    {
        FanPattern pattern = FanPattern.Elliptical(Length.FromMillimeters(240), Length.FromMillimeters(60), Length.FromMillimeters(200));
        SprayStroke[] strokes =
        [
            SprayScene.Stroke(new(-0.65, 0.25, 0.55), new(0.65, 0.25, 0.55), new(0, 0.1, -1)),
            SprayScene.Stroke(new(-0.45, 0.6, 0.3), new(0.45, 0.6, 0.35), new(0, -1, -0.2)),
            SprayScene.Stroke(new(-0.45, 0, 0.35), new(0.45, 0, 0.35), new(0.1, 0.8, -1), 0.3),
        ];
        StrokePlan plan = new(SprayScene.Gun, pattern, strokes);
        TriangleMesh tub = SprayScene.Tub.Tessellate(Length.FromMillimeters(10));
        FilmMap map = plan.SprayOnto(tub, Length.FromMillimeters(8), SprayScene.Limits);
        double caught = 0;
        foreach (SprayStroke stroke in strokes)
        {
            caught += stroke.Length.Meters / 0.45 * CaughtShare(new SprayFan(stroke, pattern, 1), tub);
        }

        double landed = map.Balance.Landed.CubicMeters / (0.65 * 3e-6);
        double sprayed = strokes.Sum(stroke => stroke.Length.Meters) / 0.45;
        Assert.InRange(caught / sprayed, 0.5, 0.95);

        // 40 × 400 rays a stroke leave about 0.5 %; sight is asked once for each triangle, which moves the edge of a shadow by less than half a fan's height.
        Numbers.Near(caught / sprayed, landed / sprayed, 0.012);
        SprayBalance balance = map.Balance;
        Numbers.Close(balance.Sprayed.CubicMeters, balance.Landed.CubicMeters + balance.Overspray.CubicMeters);
        Numbers.Close(balance.Overspray.CubicMeters, balance.NotTransferred.CubicMeters + balance.PassedBy.CubicMeters);
        Numbers.CanBeWritten(balance.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "a plate over a panel: its shadow by similar triangles; the panel's underside is a back face")]
    public void Shadows_and_backs_get_nothing()
    {
        // The gun runs along x at 0.2 m; the plate from y = 0.02 to 0.05 at 0.1 m hides y = 0.04 to 0.10 of the panel below.
        TriangleMesh panel = SprayScene.Panel(-1, -0.2, 1, 0.2);
        TriangleMesh plate = SprayScene.Panel(-2, 0.02, 2, 0.05, 0.1);
        StrokePlan plan = new(SprayScene.Gun, SprayScene.Patterns[2], [SprayScene.Stroke(new(-0.5, 0, 0.2), new(0.5, 0, 0.2), new(0, 0, -1))]);
        FilmMap open = plan.SprayOnto(panel, Fine, SprayScene.Limits);
        FilmMap shaded = plan.SprayOnto(SprayScene.Together(panel, plate), Fine, SprayScene.Limits);
        int dark = 0;
        for (int i = 0; i < open.Mesh.Triangles.Count; i++)
        {
            MeshTriangle t = shaded.Mesh.Triangles[i];
            double y = (shaded.Mesh.Vertices[t.A].Y + shaded.Mesh.Vertices[t.B].Y + shaded.Mesh.Vertices[t.C].Y) / 3;
            bool hidden = y is > 0.04 and < 0.10;
            bool onEdge = Math.Abs(y - 0.04) < 1e-9 || Math.Abs(y - 0.10) < 1e-9;
            if (shaded.Mesh.Vertices[t.A].Z == 0 && !onEdge)
            {
                dark += hidden && open.WetFilm(i).Meters > 0 ? 1 : 0;
                Assert.True(shaded.WetFilm(i).Meters == (hidden ? 0 : open.WetFilm(i).Meters), "at y = " + y);
            }
        }

        Assert.True(dark > 100);
        FilmMap back = plan.SprayOnto(panel.Reversed(), Fine, SprayScene.Limits);
        Assert.Equal(0, back.Balance.Landed.CubicMeters);
        Assert.Equal(1, back.Whole.Bare.DecimalFractions);
    }

    [Fact]
    [Evidence(Basis.Independent, "cosine and inverse distance by hand: one stroke over small spots, tilted by 40° and half as far away")]
    public void Tilt_and_distance_do_what_geometry_says()
    {
        StrokePlan plan = new(SprayScene.Gun, SprayScene.Patterns[4], [SprayScene.Stroke(new(-0.5, 0, 0.2), new(0.5, 0, 0.2), new(0, 0, -1))]);
        double[] films = SprayScene.Films(plan, new SprayFaces(SprayScene.Together(Spot(0, 0, 0, 0))), true, 1);
        double[] tilted = SprayScene.Films(plan, new SprayFaces(SprayScene.Together(Spot(0, 0, 0, 40 * Math.PI / 180))), true, 1);
        double[] near = SprayScene.Films(plan, new SprayFaces(SprayScene.Together(Spot(0, 0, 0.1, 0))), true, 1);
        Numbers.Close(films[0] * Math.Cos(40 * Math.PI / 180), tilted[0], 1e-6);

        // A fan half as wide passed at the same speed: twice the film.
        Numbers.Close(2 * films[0], near[0], 1e-6);
    }

    [Theory]
    [MemberData(nameof(SprayScene.PatternRows), MemberType = typeof(SprayScene))]
    [Evidence(Basis.Independent, "the scalar path against the vector path to 1e-9, and a search of every triangle for every line of sight against the tree")]
    public void Vector_scalar_and_the_plain_double_loop_agree(int pattern)
    {
        StrokePlan plan = SprayScene.Askew(SprayScene.Patterns[pattern], 12);
        TriangleMesh mesh = SprayMeshRefinement.To(SprayScene.Tub.Tessellate(Length.FromMillimeters(20)), 0.12);
        SprayFaces faces = new(mesh);
        double[] scalar = SprayScene.Films(plan, faces, false, 1);
        double[] vector = SprayScene.Films(plan, faces, true, 1);
        double[] plain = Plain(plan, faces, mesh);
        double most = scalar.Max();
        Assert.True(scalar.Count(film => film > 0) > faces.Count / 4);
        for (int i = 0; i < scalar.Length; i++)
        {
            Numbers.Near(scalar[i], vector[i], 1e-9 * scalar[i]);
            Numbers.Near(plain[i], scalar[i], 1e-9 * most);
        }
    }

    [Fact]
    [Evidence(Basis.Identity, "the sums are the same to the last bit on one, two and seven threads")]
    public void Threads_do_not_matter()
    {
        StrokePlan plan = SprayScene.Askew(SprayScene.Patterns[5], 20);
        SprayFaces faces = new(SprayMeshRefinement.To(SprayScene.Tub.Tessellate(Length.FromMillimeters(10)), 0.03));
        double[] one = SprayScene.Films(plan, faces, true, 1);
        Assert.Equal(one, SprayScene.Films(plan, faces, true, 2));
        Assert.Equal(one, SprayScene.Films(plan, faces, true, 7));
    }

    [Fact]
    [Evidence(Basis.Identity, "half the speed is twice the film; twice the fluid too; strokes add up")]
    public void Film_scales_with_what_is_sprayed()
    {
        StrokePlan plan = SprayScene.Askew(SprayScene.Patterns[2], 5);
        SprayFaces faces = new(SprayMeshRefinement.To(SprayScene.Tub.Tessellate(Length.FromMillimeters(10)), 0.04));
        StrokePlan slow = new(plan.Gun, plan.Pattern, plan.Strokes.Select(stroke => stroke with { Speed = stroke.Speed / 2 }));
        StrokePlan rich = new(plan.Gun with { FluidRate = plan.Gun.FluidRate * 2 }, plan.Pattern, plan.Strokes);
        StrokePlan twice = new(plan.Gun, plan.Pattern, plan.Strokes.Concat(plan.Strokes));
        double[] films = SprayScene.Films(plan, faces, true, 2);
        foreach (StrokePlan other in new[] { slow, rich, twice })
        {
            double[] more = SprayScene.Films(other, faces, true, 2);
            for (int i = 0; i < films.Length; i++)
            {
                Numbers.Near(2 * films[i], more[i], 1e-15);
            }
        }
    }

    [Fact]
    [Evidence(Basis.Identity, "halving edges keeps area, outline and watertightness; no edge stays longer than asked")]
    public void Refinement_keeps_the_surface()
    {
        TriangleMesh tub = SprayScene.Tub.Tessellate(Length.FromMillimeters(10));
        TriangleMesh fine = SprayMeshRefinement.To(tub, 0.02);
        Numbers.Close(tub.Area.SquareMeters, fine.Area.SquareMeters, 1e-9);
        Assert.Equal(tub.Topology.BoundaryLoops, fine.Topology.BoundaryLoops);
        Assert.Equal(tub.Topology.EulerCharacteristic, fine.Topology.EulerCharacteristic);
        Assert.Equal(tub.Topology.NonManifoldEdges, fine.Topology.NonManifoldEdges);
        foreach (MeshTriangle t in fine.Triangles)
        {
            Assert.True(MeshPoint.Difference(fine.Vertices[t.A], fine.Vertices[t.B]).Norm <= 0.02);
            Assert.True(MeshPoint.Difference(fine.Vertices[t.B], fine.Vertices[t.C]).Norm <= 0.02);
            Assert.True(MeshPoint.Difference(fine.Vertices[t.C], fine.Vertices[t.A]).Norm <= 0.02);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "progress rises to 1; a cancelled build stops; no allocation per stroke")]
    public void Progress_cancellation_and_memory()
    {
        TriangleMesh tub = SprayScene.Tub.Tessellate(Length.FromMillimeters(10));
        StrokePlan plan = SprayScene.Askew(SprayScene.Patterns[2], 30);
        Heard heard = new();
        plan.SprayOnto(tub, Length.FromMillimeters(40), SprayScene.Limits, heard, CancellationToken.None);
        Assert.Equal(1, heard.Parts[^1]);
        Assert.Equal(heard.Parts.Order(), heard.Parts);
        using CancellationTokenSource stop = new();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => plan.SprayOnto(tub, Length.FromMillimeters(40), SprayScene.Limits, null, stop.Token));

        SprayFaces faces = new(SprayMeshRefinement.To(tub, 0.06));
        SprayFan[] few = SprayScene.Askew(SprayScene.Patterns[2], 10).Fans();
        SprayFan[] many = SprayScene.Askew(SprayScene.Patterns[2], 400).Fans();
        Assert.InRange(Allocated(many) - Allocated(few), -20_000, 20_000);

        long Allocated(SprayFan[] fans)
        {
            SprayBuild.Films(faces, fans, true, 1, null, default);
            long before = GC.GetAllocatedBytesForCurrentThread();
            SprayBuild.Films(faces, fans, true, 1, null, default);
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings")]
    public void Refuses_what_cannot_be()
    {
        TriangleMesh panel = SprayScene.Panel(0, 0, 1, 1);
        StrokePlan plan = SprayScene.Askew(SprayScene.Patterns[2], 1);
        Numbers.Refuses("longestEdge", () => plan.SprayOnto(panel, Length.FromMillimeters(0.5), SprayScene.Limits));
        Numbers.Refuses("mesh", () => plan.SprayOnto(new TriangleMesh(Array.Empty<MeshPoint>(), Array.Empty<MeshTriangle>()), Fine, SprayScene.Limits));
        Numbers.Refuses("wetLimit", () => _ = new SprayFilmLimits(Length.FromMicrometers(60), Length.FromMicrometers(60)));
        Numbers.Refuses("Aim", () => SprayScene.Stroke(new(0, 0, 0), new(1, 0, 0), new(0, 0, 0)));
        Numbers.Refuses("strokes", () => _ = new StrokePlan(SprayScene.Gun, SprayScene.Patterns[0], [SprayScene.Stroke(new(0, 0, 0), new(0, 0, 0), new(0, 0, -1))]));
        Numbers.Refuses("strokes", () => _ = new StrokePlan(SprayScene.Gun, SprayScene.Patterns[0], [SprayScene.Stroke(new(0, 0, 0), new(1, 0, 0), new(1, 0, -0.2))]));
        Assert.Throws<ArgumentException>(() => _ = new StrokePlan(SprayScene.Gun, SprayScene.Patterns[0], []));
        Assert.Throws<ArgumentNullException>(() => plan.SprayOnto(null!, Fine, SprayScene.Limits));
    }

    /// <summary>A triangle of a tenth of a millimetre about a place, tilted about x.</summary>
    private static TriangleMesh Spot(double x, double y, double z, double tilt)
    {
        const double Size = 1e-4;
        MeshPoint Corner(double a, double b) => new(x + (Size * a), y + (Size * b * Math.Cos(tilt)), z + (Size * b * Math.Sin(tilt)));
        return new([Corner(-1, -1), Corner(1, -1), Corner(0, 2)], [new(0, 1, 2, FixtureZoneKind.Top)]);
    }

    private static double ByMoments(StrokePlan plan, SprayStroke stroke, SprayFaces faces, int i)
    {
        const int Moments = 40_000;
        SprayFan fan = new(stroke, plan.Pattern, 1);
        double a = plan.Pattern.Width.Meters / 2;
        double b = plan.Pattern.Height.Meters / 2;
        double reference = plan.Pattern.ReferenceDistance.Meters;
        double sum = 0;
        for (int k = 0; k < Moments; k++)
        {
            MeshPoint gun = MeshPoint.Between(stroke.Start, stroke.End, (k + 0.5) / Moments);
            MeshPoint ray = MeshPoint.Difference(new(faces.X[i], faces.Y[i], faces.Z[i]), gun);
            double r = ray.Norm;
            double cos = MeshPoint.Dot(ray, fan.AxisZ) / r;
            double incidence = -MeshPoint.Dot(ray, new(faces.NormalX[i], faces.NormalY[i], faces.NormalZ[i])) / r;
            if (cos <= 0 || incidence <= 0)
            {
                continue;
            }

            double x = reference * MeshPoint.Dot(ray, fan.AxisX) / (r * cos);
            double y = reference * MeshPoint.Dot(ray, fan.AxisY) / (r * cos);
            sum += Density(plan.Pattern, x, y, a, b) * reference * reference / (cos * cos * cos) * incidence / (r * r);
        }

        return 3e-6 * 0.65 * sum * stroke.Length.Meters / Moments / 0.45;
    }

    /// <summary>The patterns as their docstring says, once more.</summary>
    private static double Density(FanPattern pattern, double x, double y, double a, double b)
    {
        double inside = 1 - (x * x / (a * a)) - (y * y / (b * b));
        return pattern.Shape switch
        {
            FanPatternShape.Uniform => Math.Abs(x) < a && Math.Abs(y) < b ? 1 / (4 * a * b) : 0,
            FanPatternShape.Gaussian => 4 / (2 * Math.PI * a * b) * Math.Exp(-2 * (1 - inside)),
            _ => inside > 0 ? (pattern.Exponent - 0.5) / (Math.PI * a * b) * Math.Pow(inside, pattern.Exponent - 1.5) : 0,
        };
    }

    private static double[] Plain(StrokePlan plan, SprayFaces faces, TriangleMesh mesh)
    {
        double[] films = new double[faces.Count];
        double[] film = new double[1];
        double[] middle = new double[1];
        MeshPoint[] corners = [.. faces.Order.Select(i => mesh.Triangles[i]).SelectMany(t => new[] { mesh.Vertices[t.A], mesh.Vertices[t.B], mesh.Vertices[t.C] })];
        foreach (SprayFan fan in plan.Fans())
        {
            for (int i = 0; i < films.Length; i++)
            {
                if (SprayKernel.Lay(fan, faces, i, 1, film, middle))
                {
                    MeshPoint gun = MeshPoint.Sum(fan.Start, MeshPoint.Scaled(fan.Travel, middle[0]));
                    bool hidden = Blocked(corners, new(faces.X[i], faces.Y[i], faces.Z[i]), gun, i);
                    films[i] += hidden ? 0 : film[0];
                }
            }
        }

        return films;
    }

    /// <summary>Signed volumes of the tetrahedra over the three edges: another test than the tree's.</summary>
    private static bool Blocked(MeshPoint[] corners, MeshPoint from, MeshPoint to, int self)
    {
        MeshPoint way = MeshPoint.Difference(to, from);
        for (int i = 0; i < corners.Length / 3; i++)
        {
            MeshPoint a = MeshPoint.Difference(corners[3 * i], from);
            MeshPoint b = MeshPoint.Difference(corners[(3 * i) + 1], from);
            MeshPoint c = MeshPoint.Difference(corners[(3 * i) + 2], from);
            double ab = MeshPoint.Dot(way, MeshPoint.Cross(a, b));
            double bc = MeshPoint.Dot(way, MeshPoint.Cross(b, c));
            double ca = MeshPoint.Dot(way, MeshPoint.Cross(c, a));
            if (i == self || !((ab > 0 && bc > 0 && ca > 0) || (ab < 0 && bc < 0 && ca < 0)))
            {
                continue;
            }

            double t = MeshPoint.Dot(a, MeshPoint.Cross(b, c)) / (ab + bc + ca);
            if (t is > 1e-5 and < 1)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The part of the fan that meets a front face first, by rays through an even grid of the ellipse.</summary>
    private static double CaughtShare(SprayFan fan, TriangleMesh mesh)
    {
        const int Moments = 40;
        const int Rays = 400;
        int hits = 0;
        for (int m = 0; m < Moments; m++)
        {
            MeshPoint gun = MeshPoint.Sum(fan.Start, MeshPoint.Scaled(fan.Travel, fan.Length * (m + 0.5) / Moments));
            for (int k = 0; k < Rays; k++)
            {
                // A sunflower fills the disc evenly.
                double radius = Math.Sqrt((k + 0.5) / Rays);
                double turn = (k + (0.37 * m)) * Math.PI * (3 - Math.Sqrt(5));
                MeshPoint way = MeshPoint.Sum(
                    fan.AxisZ,
                    MeshPoint.Sum(MeshPoint.Scaled(fan.AxisX, radius * Math.Cos(turn) / fan.ScaleX), MeshPoint.Scaled(fan.AxisY, radius * Math.Sin(turn) / fan.ScaleY)));
                double nearest = double.MaxValue;
                bool front = false;
                foreach (MeshTriangle t in mesh.Triangles)
                {
                    MeshPoint a = MeshPoint.Difference(mesh.Vertices[t.A], gun);
                    MeshPoint b = MeshPoint.Difference(mesh.Vertices[t.B], gun);
                    MeshPoint c = MeshPoint.Difference(mesh.Vertices[t.C], gun);
                    double ab = MeshPoint.Dot(way, MeshPoint.Cross(a, b));
                    double bc = MeshPoint.Dot(way, MeshPoint.Cross(b, c));
                    double ca = MeshPoint.Dot(way, MeshPoint.Cross(c, a));
                    if ((ab >= 0 && bc >= 0 && ca >= 0) || (ab <= 0 && bc <= 0 && ca <= 0))
                    {
                        double way1 = MeshPoint.Dot(a, MeshPoint.Cross(b, c)) / (ab + bc + ca);
                        if (way1 > 0 && way1 < nearest)
                        {
                            nearest = way1;
                            front = ab + bc + ca < 0;
                        }
                    }
                }

                hits += front ? 1 : 0;
            }
        }

        return hits / (double)(Moments * Rays);
    }

    private sealed class Heard : IProgress<double>
    {
        public List<double> Parts { get; } = [];

        public void Report(double value) => Parts.Add(value);
    }
}
