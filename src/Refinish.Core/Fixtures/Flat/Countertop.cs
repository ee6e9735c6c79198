using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>A counter of one to three runs with an edge profile, mitred at its corners, a backsplash and cut-outs.</summary>
/// <remarks>
/// With the edge's line L, corners that stand out less corners that turn in k, and a profile of developed length s, reach i and moment m:
/// edge = L s − 2 k m, top = gross − (L i − k i²) − strip − cut-outs. Runs and depths are from the wall; the strip of thickness t below the
/// backsplash along the walls W, less corners and the profiles of e open ends, is t (W − e i) − (n − 1) t². Backsplash: face (W − 2 (n − 1)
/// t) h, top t W − (n − 1) t², and an end cap h t at each open end. Source: derived, elementary geometry; the tests hold it to
/// triangulation.
/// </remarks>
/// <example><code>
/// Countertop counter = new(tape);                       // the L of CountertopMeasurements
/// double inches = counter.DevelopedEdge.Inches;         // 2.356
/// </code></example>
public sealed record Countertop : IFixture
{
    private readonly double open;
    private readonly double coated;

    /// <summary>Works a counter out.</summary>
    /// <param name="measurements">What the tape gave.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measurements"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Two lengths cannot go together; the message names the one that cannot be.</exception>
    public Countertop(CountertopMeasurements measurements)
    {
        Measurements = Guard.NotNull(measurements);
        measurements.CheckConsistency();
        open = RectangularOpening.AreaOf(measurements.CutOuts).Value;
        Patches = PatchLedger.Present(
            new SurfacePatch(Top, FixtureZoneKind.Top, openings: open),
            new SurfacePatch(Edge, FixtureZoneKind.Edge, (t, _) => Shape.Slope(t)),
            new SurfacePatch(Face, FixtureZoneKind.Backsplash, SurfacePatch.Upright),
            new SurfacePatch(Cap, FixtureZoneKind.Backsplash),
            new SurfacePatch(Ends, FixtureZoneKind.Backsplash, SurfacePatch.Upright));
        coated = PatchLedger.Coated(Patches);
    }

    /// <summary>What the tape gave.</summary>
    public CountertopMeasurements Measurements { get; }

    /// <inheritdoc/>
    public string Description =>
        (Measurements.Runs.Count switch { 1 => "straight countertop ", 2 => "L-shaped countertop ", _ => "U-shaped countertop " })
        + Measurements;

    /// <summary>Top, edge and backsplash, as far as they are there.</summary>
    public IReadOnlyList<FixtureZone> Zones => field ??= PatchLedger.Zones(Patches);

    /// <inheritdoc/>
    public Area CoatedArea => Area.FromSquareMeters(coated);

    /// <summary>
    /// The lower line of the edge, the walls or the upper line of the backsplash, closed ends, the backsplash's ends at walls, and every
    /// cut-out.
    /// </summary>
    public Length MaskedEdge => Length.FromMeters(Mask().Value);

    /// <summary>A counter holds no water.</summary>
    public Volume? WaterCapacity => null;

    /// <summary>The level top between the backsplash and the profile, cut-outs not taken off.</summary>
    public Area TopArea => Area.FromSquareMeters(Top().Value);

    /// <summary>The profiled edge.</summary>
    public Area EdgeArea => Area.FromSquareMeters(Edge().Value);

    /// <summary>The backsplash: face, top and the caps of open ends.</summary>
    public Area BacksplashArea => Area.FromSquareMeters(Backsplash().Value);

    /// <summary>The cut-outs together.</summary>
    public Area OpeningArea => Area.FromSquareMeters(open);

    /// <summary>The outermost line of the edge that shows.</summary>
    public Length EdgeLength => Length.FromMeters(Measurements.EdgeLine().Value);

    /// <summary>How long the profile is when it is laid flat.</summary>
    public Length DevelopedEdge => Length.FromMeters(Developed().Value);

    /// <summary>Top, edge, and the backsplash's face, top and end caps.</summary>
    public IReadOnlyList<SurfacePatch> Patches { get; }

    private EdgeShape Shape => Measurements.Edge;

    private double ClosedEnds => (Measurements.LeftEndIsOpen ? 0 : Measurements.Runs[0].Depth.Meters)
        + (Measurements.RightEndIsOpen ? 0 : Measurements.Runs[Measurements.Runs.Count - 1].Depth.Meters);

    /// <inheritdoc/>
    /// <remarks>Cut-outs are not cut out. The runs are drawn in plan from left to right, each turning towards the room.</remarks>
    public TriangleMesh Tessellate(Length chordTolerance) => CountertopShape.Mesh(Measurements, new Tessellation(chordTolerance));

    /// <inheritdoc/>
    public Workings Workings() => PatchLedger.Write(
        "Countertop", Patches, [t => Measurements.EdgeLine(t), t => Measurements.WallLine(t), Developed], [Backsplash, Mask]);

    /// <summary>Whether two are measured alike.</summary>
    /// <param name="other">The other one.</param>
    /// <returns><see langword="true"/> when their measurements are equal.</returns>
    public bool Equals(Countertop? other) => other is not null && Measurements.Equals(other.Measurements);

    /// <inheritdoc/>
    public override int GetHashCode() => Measurements.GetHashCode();

    /// <summary>What it is and what gets coated, in one line, in metric units.</summary>
    /// <returns>Text such as <c>straight countertop 2438.4 mm × 647.7 mm, Square edge: 1.4864 m² coated</c>.</returns>
    public override string ToString() => PatchLedger.Told(this);

    private Num Top(Trace? t = null)
    {
        Num reach = Shape.Reach(t);
        Num profile = (Measurements.EdgeLine(t) * reach) - (Measurements.OutwardCorners(t) * Num.Square(reach));
        return t.Area("top", "A_top", Measurements.Gross(t) - profile - Measurements.Strip(t));
    }

    private Num Edge(Trace? t = null) => t.Area("edge", "A_edge",
        (Measurements.EdgeLine(t) * Shape.Developed(t)) - (2 * Measurements.OutwardCorners(t) * Shape.Moment(t)));

    private Num Developed(Trace? t = null) => t.Step("developed profile", "s", Measure.Length, PlaneShapes.Elementary, Shape.Developed(t));

    private Num Face(Trace? t = null) => t.Area("backsplash, face", "A_face",
        (Measurements.WallLine(t) - (2 * Measurements.Turns(t) * Measurements.Deep(t))) * Height(t));

    private Num Cap(Trace? t = null) => t.Area("backsplash, top", "A_cap",
        (Measurements.Deep(t) * Measurements.WallLine(t)) - (Measurements.Turns(t) * Num.Square(Measurements.Deep(t))));

    private Num Ends(Trace? t = null) => t.Area("backsplash, open ends", "A_end", Measurements.Open(t) * Height(t) * Measurements.Deep(t));

    private Num Backsplash(Trace? t = null) => t.Area("backsplash", "A_back", Face(t) + Cap(t) + Ends(t));

    private Num Mask(Trace? t = null) => t.Edge(Num.Sum(
    [
        Measurements.EdgeLine(t), Measurements.WallLine(t), t.Given("L_c", ClosedEnds, Measure.Length), 2 * Height(t),
        .. RectangularOpening.Edges(Measurements.CutOuts, t),
    ]));

    private Num Height(Trace? t) => t.Tape("h_b", Measurements.BacksplashHeight);
}
