using System;
using System.Collections.Generic;
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
    private static readonly Source Mean = Source.Derived("slope weighted by area over face and top");

    /// <summary>Works a panel out.</summary>
    /// <param name="measurements">What the tape gave.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measurements"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Two lengths cannot go together; the message names the one that cannot be.</exception>
    public FlatPanel(FlatPanelMeasurements measurements)
    {
        Measurements = Guard.NotNull(measurements);
        measurements.CheckConsistency();
    }

    /// <summary>What the tape gave.</summary>
    public FlatPanelMeasurements Measurements { get; }

    /// <inheritdoc/>
    public string Description => (HasSplash ? "countertop " : "panel ") + Measurements;

    /// <summary>Top, edge and upstand, as far as they are there.</summary>
    public IReadOnlyList<FixtureZone> Zones => field ??= FixtureZone.Present(
        FixtureZone.Level(FixtureZoneKind.Top, Top().Value),
        FixtureZone.Upright(FixtureZoneKind.Edge, Edge().Value),
        FixtureZone.Of(FixtureZoneKind.Backsplash, Splash().Value, SplashSlope().Value));

    /// <inheritdoc/>
    public Area CoatedArea => Area.FromSquareMeters(Coated().Value);

    /// <summary>
    /// The whole perimeter (below the edge that shows, at the wall or above the upstand elsewhere), the upstand's two ends, and every
    /// cut-out.
    /// </summary>
    public Length MaskedEdge => Length.FromMeters(Mask().Value);

    /// <summary>A panel holds no water.</summary>
    public Volume? WaterCapacity => null;

    /// <summary>The top before the upstand, cut-outs taken off.</summary>
    public Area TopArea => Area.FromSquareMeters(Top().Value);

    /// <summary>The edge that shows.</summary>
    public Area EdgeArea => Area.FromSquareMeters(Edge().Value);

    /// <summary>The upstand's face and top.</summary>
    public Area BacksplashArea => Area.FromSquareMeters(Splash().Value);

    /// <summary>The cut-outs together.</summary>
    public Area OpeningArea => Area.FromSquareMeters(CutOuts().Value);

    /// <summary>Top, edge, and the upstand's face and top.</summary>
    public IReadOnlyList<SurfacePatch> Patches => field ??= PatchLedger.Present(
        new SurfacePatch(t => t.Area("top", "A_top", Whole(t)), FixtureZoneKind.Top, openings: CutOuts().Value),
        new SurfacePatch(Edge, FixtureZoneKind.Edge, SurfacePatch.Upright),
        new SurfacePatch(t => t.Area("upstand's face", "A_face", Run(t) * Height(t)), FixtureZoneKind.Backsplash, SurfacePatch.Upright),
        new SurfacePatch(t => t.Area("upstand's top", "A_cap", Run(t) * Thickness(t)), FixtureZoneKind.Backsplash));

    private bool HasSplash => Splash().Value > 0;

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
    public Workings Workings() => Trace.Of(
        "Flat panel", CutOuts, Top, t => ZoneSteps.Level(t, "Top", "φ_top"), Edge, t => ZoneSteps.Upright(t, "Edge", "φ_edge"), Splash,
        SplashSlope, Coated, Mask);

    /// <summary>Whether two are measured alike.</summary>
    /// <param name="other">The other one.</param>
    /// <returns><see langword="true"/> when their measurements are equal.</returns>
    public bool Equals(FlatPanel? other) => other is not null && Measurements.Equals(other.Measurements);

    /// <inheritdoc/>
    public override int GetHashCode() => Measurements.GetHashCode();

    /// <summary>What it is and what gets coated, in one line, in metric units.</summary>
    /// <returns>Text such as <c>countertop 2438.4 mm × 647.7 mm: 1.4864 m² coated</c>.</returns>
    public override string ToString() => PatchLedger.Told(this);

    private Num CutOuts(Trace? t = null) => t.Area("cut-outs", "A_open", RectangularOpening.AreaOf(Measurements.CutOuts, t, "w_"));

    private Num Whole(Trace? t) => (L(t) * W(t)) - (Run(t) * Thickness(t));

    private Num Top(Trace? t = null) => t.Area("zone Top", "Z_top", Whole(t) - CutOuts(t));

    private Num Edge(Trace? t = null) =>
        t.Area("zone Edge", "Z_edge", t.Tape("L_e", Measurements.ExposedEdge) * t.Tape("h_e", Measurements.EdgeHeight));

    private Num Splash(Trace? t = null) => t.Area("zone Backsplash", "Z_back", Run(t) * (Height(t) + Thickness(t)));

    // Face upright, top level, weighted by area.
    private Num SplashSlope(Trace? t = null) => HasSplash
        ? t.Step("mean slope of zone Backsplash", "φ_back", Measure.Angle, Mean, t.Pi() / 2 * Height(t) / (Height(t) + Thickness(t)))
        : 0;

    private Num Coated(Trace? t = null) => t.Area("coated area", "A", Top(t) + Edge(t) + Splash(t));

    private Num Mask(Trace? t = null)
    {
        Num edge = 2 * (L(t) + W(t));
        return t.Edge(Num.Sum(
            [HasSplash ? edge + (2 * Height(t)) : edge, .. RectangularOpening.Edges(Measurements.CutOuts, t, "w_")]));
    }

    private Num L(Trace? t) => t.Tape("L", Measurements.Length);

    private Num W(Trace? t) => t.Tape("W", Measurements.Width);

    private Num Run(Trace? t) => t.Tape("L_b", Measurements.BacksplashLength);

    private Num Height(Trace? t) => t.Tape("h_b", Measurements.BacksplashHeight);

    private Num Thickness(Trace? t) => t.Tape("t_b", Measurements.BacksplashThickness);
}
