using System;
using System.Collections.Generic;
using System.Globalization;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>A straight counter or a plain panel: top less cut-outs, the edge that shows, and the upstand's face and top.</summary>
/// <remarks>
/// Top = L W − L_b t_b − cut-outs, with length and width from the wall and the strip below the upstand taken off; edge = length that shows
/// × developed height; upstand = length along the wall × (height + thickness), corners neither added nor taken off. Source: elementary
/// plane geometry.
/// </remarks>
/// <example><code>
/// FlatPanel counter = new(tape);                        // the counter of FlatPanelMeasurements
/// double squareFeet = counter.CoatedArea.SquareFeet;    // 16
/// </code></example>
public sealed record FlatPanel : IFixture
{
    private readonly double open;

    /// <summary>Works a panel out.</summary>
    /// <param name="measurements">What the tape gave.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measurements"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Two lengths cannot go together; the message names the one that cannot be.</exception>
    public FlatPanel(FlatPanelMeasurements measurements)
    {
        Measurements = Guard.NotNull(measurements, nameof(measurements));
        measurements.CheckConsistency();
        open = RectangularOpening.AreaOf(measurements.CutOuts);
    }

    /// <summary>What the tape gave.</summary>
    public FlatPanelMeasurements Measurements { get; }

    /// <inheritdoc/>
    public string Description => (Splash > 0 ? "countertop " : "panel ") + Measurements;

    /// <summary>Top, edge and upstand, as far as they are there.</summary>
    public IReadOnlyList<FixtureZone> Zones => FixtureZone.Present(
        FixtureZone.Level(FixtureZoneKind.Top, Top),
        FixtureZone.Upright(FixtureZoneKind.Edge, Edge),
        FixtureZone.Of(FixtureZoneKind.Backsplash, Splash, SplashSlope));

    /// <inheritdoc/>
    public Area CoatedArea => Area.FromSquareMeters(Top + Edge + Splash);

    /// <summary>
    /// The whole perimeter (below the edge that shows, at the wall or above the upstand elsewhere), the upstand's two ends, and every
    /// cut-out.
    /// </summary>
    public Length MaskedEdge => Length.FromMeters(Mask);

    /// <summary>A panel holds no water.</summary>
    public Volume? WaterCapacity => null;

    /// <summary>The top before the upstand, cut-outs taken off.</summary>
    public Area TopArea => Area.FromSquareMeters(Top);

    /// <summary>The edge that shows.</summary>
    public Area EdgeArea => Area.FromSquareMeters(Edge);

    /// <summary>The upstand's face and top.</summary>
    public Area BacksplashArea => Area.FromSquareMeters(Splash);

    /// <summary>The cut-outs together.</summary>
    public Area OpeningArea => Area.FromSquareMeters(open);

    private double Whole => (Measurements.Length.Meters * Measurements.Width.Meters) - Measurements.Strip;

    private double Top => Whole - open;

    private double Edge => Measurements.ExposedEdge.Meters * Measurements.EdgeHeight.Meters;

    private double SplashDeveloped => Measurements.BacksplashHeight.Meters + Measurements.BacksplashThickness.Meters;

    private double Splash => Measurements.BacksplashLength.Meters * SplashDeveloped;

    // Face upright, top level, weighted by area.
    private double SplashSlope => Splash > 0 ? Math.PI / 2 * Measurements.BacksplashHeight.Meters / SplashDeveloped : 0;

    private double Mask => (2 * (Measurements.Length.Meters + Measurements.Width.Meters))
        + (Splash > 0 ? 2 * Measurements.BacksplashHeight.Meters : 0)
        + RectangularOpening.EdgeOf(Measurements.CutOuts);

    /// <summary>Top, edge, and the upstand's face and top.</summary>
    public IReadOnlyList<SurfacePatch> Patches
    {
        get
        {
            Workings workings = Workings();
            double run = Measurements.BacksplashLength.Meters;
            double height = Measurements.BacksplashHeight.Meters;
            double thickness = Measurements.BacksplashThickness.Meters;
            double length = Measurements.Length.Meters;
            double width = Measurements.Width.Meters;
            return PatchLedger.Present(
                new SurfacePatch(Step("top", "A_top", (Tape("L", length) * Tape("W", width)) - (Tape("L_b", run) * Tape("t_b", thickness)),
                    Whole), FixtureZoneKind.Top, 0, openings: open),
                SurfacePatch.Of(workings, "Z_edge", FixtureZoneKind.Edge, Math.PI / 2),
                new SurfacePatch(Step("upstand's face", "A_face", Tape("L_b", run) * Tape("h_b", height), run * height), FixtureZoneKind.Backsplash, Math.PI / 2),
                new SurfacePatch(Step("upstand's top", "A_cap", Tape("L_b", run) * Tape("t_b", thickness), run * thickness), FixtureZoneKind.Backsplash, 0));
        }
    }

    /// <inheritdoc/>
    /// <remarks>
    /// Edge and upstand are drawn straight, along the front and along the back, whatever sides they run along; an upstand longer than the
    /// top covers a wider strip of the drawing, of the same area.
    /// </remarks>
    public TriangleMesh Tessellate(Length chordTolerance)
    {
        double x = Measurements.Length.Meters / 2;
        double y = Measurements.Width.Meters;
        double e = Measurements.ExposedEdge.Meters / 2;
        double b = Measurements.BacksplashLength.Meters / 2;
        double h = Measurements.BacksplashHeight.Meters;
        double t = b > 0 ? Measurements.BacksplashThickness.Meters : 0;
        Tessellation mesh = new(chordTolerance);
        mesh.AddFaces(SurfaceBand.Level(FixtureZoneKind.Top, -x, 0, x, y - (t * Math.Max(1, b / x)), 0));
        if (t > 0 && b < x)
        {
            mesh.AddFaces(SurfaceBand.Level(FixtureZoneKind.Top, -x, y - t, -b, y, 0),
                SurfaceBand.Level(FixtureZoneKind.Top, b, y - t, x, y, 0));
        }

        return mesh.AddFaces(
            SurfaceBand.Upright(FixtureZoneKind.Edge, -e, 0, e, 0, -Measurements.EdgeHeight.Meters, 0),
            SurfaceBand.Upright(FixtureZoneKind.Backsplash, -b, y - t, b, y - t, 0, h),
            SurfaceBand.Level(FixtureZoneKind.Backsplash, -b, y - t, b, y, h)).Mesh();
    }

    /// <inheritdoc/>
    public Workings Workings()
    {
        Source plane = PlaneShapes.Elementary;
        Expression length = Tape("L", Measurements.Length.Meters);
        Expression width = Tape("W", Measurements.Width.Meters);
        Expression height = Tape("h_b", Measurements.BacksplashHeight.Meters);
        Expression developed = height + Tape("t_b", Measurements.BacksplashThickness.Meters);
        List<Expression> areas = [];
        Expression mask = 2 * (length + width);
        if (Splash > 0)
        {
            mask += 2 * height;
        }

        Expression around = 0;
        foreach (RectangularOpening cutOut in Measurements.CutOuts)
        {
            string index = (areas.Count + 1).ToString(CultureInfo.InvariantCulture);
            Expression l = Tape("l_" + index, cutOut.Length.Meters);
            Expression w = Tape("w_" + index, cutOut.Height.Meters);
            around = areas.Count == 0 ? 2 * (l + w) : around + (2 * (l + w));
            areas.Add(l * w);
        }

        WorkingStep holes = Step("cut-outs", "A_open", Expression.Sum(areas), open);
        Expression strip = Tape("L_b", Measurements.BacksplashLength.Meters) * Tape("t_b", Measurements.BacksplashThickness.Meters);
        WorkingStep top = Step("zone Top", "Z_top", (length * width) - strip - holes.Result(), Top);
        WorkingStep edge = Step("zone Edge", "Z_edge", Tape("L_e", Measurements.ExposedEdge.Meters) * Tape("h_e", Measurements.EdgeHeight.Meters), Edge);
        WorkingStep splash = Step("zone Backsplash", "Z_back", Tape("L_b", Measurements.BacksplashLength.Meters) * developed, Splash);
        List<WorkingStep> steps = [holes, top, ZoneSteps.Level("Top", "φ_top"), edge, ZoneSteps.Upright("Edge", "φ_edge"), splash];
        if (Splash > 0)
        {
            steps.Add(new("mean slope of zone Backsplash", "φ_back", Expression.Pi() / 2 * height / developed, SplashSlope, Measure.Angle, Source.Derived("slope weighted by area over face and top")));
        }

        steps.Add(Step("coated area", "A", top.Result() + edge.Result() + splash.Result(), CoatedArea.SquareMeters));
        steps.Add(new("edge to be taped", "P_mask", areas.Count == 0 ? mask : mask + around, Mask, Measure.Length, plane));
        return new Workings("Flat panel", steps);
    }

    /// <summary>What it is and what gets coated, in one line, in metric units.</summary>
    /// <returns>Text such as <c>countertop 2438.4 mm × 647.7 mm: 1.4864 m² coated</c>.</returns>
    public override string ToString() => Description + ": " + Measure.Area.Format(CoatedArea.SquareMeters) + " coated";

    private static Expression Tape(string symbol, double value) => Expression.Quantity(symbol, value, Measure.Length);

    private static WorkingStep Step(string name, string symbol, Expression formula, double value) =>
        new(name, symbol, formula, value, Measure.Area, PlaneShapes.Elementary);
}
