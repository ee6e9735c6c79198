using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// A freestanding tub: the inside as of a recessed one, a rolled rim as a swept part of a tube, and the outside as a loft larger by the
/// wall.
/// </summary>
/// <remarks>
/// Inside: the ruled loft of <see cref="RecessedBathtub"/> with its cove. Roll: a t (P + 2π a) − 2π a² sin t, with the mouth's
/// perimeter P, the tube's radius a and the turn t. Outside: the walls of the loft whose outlines are larger all round by the wall's
/// thickness and as deep as the inside, with its bottom from below; the feet's pads are taken off. Where the roll covers the top of the
/// outside, that strip is counted with the outside too: at most roll radius × outline. Source: derived (Pappus, Steiner, ruled loft).
/// </remarks>
/// <example><code>
/// FreestandingTub tub = new(tape);                  // the tub of FreestandingTubMeasurements
/// double roll = tub.RollArea.SquareInches;          // 872.15
/// </code></example>
public sealed record FreestandingTub : IFixture
{
    private readonly RuledBasin basin;
    private readonly RuledBasin shell;
    private readonly double coated;

    /// <summary>Works a tub out.</summary>
    /// <param name="measurements">What the tape gave.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measurements"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Two lengths cannot go together; the message names the one that cannot be.</exception>
    public FreestandingTub(FreestandingTubMeasurements measurements)
    {
        Measurements = Guard.NotNull(measurements);
        measurements.CheckConsistency();
        basin = measurements.Basin;
        shell = measurements.Shell;
        List<SurfacePatch> patches =
            [.. basin.Patches(PlaneShapes.Disc(AcrossDrain(null)).Value, PlaneShapes.Disc(AcrossOverflow(null)).Value), Roll.Patch()];
        double pads = Measurements.Feet * PlaneShapes.Disc(AcrossPad(null)).Value;
        if (Measurements.OutsideIsCoated)
        {
            patches.Add(new(
                Outside, FixtureZoneKind.Outside, (t, area) => t.Pi() - (shell.WallTilt(Aside(t)) / area), RuledBasin.CornerError,
                openings: Measurements.UndersideIsCoated ? 0 : pads));
        }

        if (Measurements.UndersideIsCoated)
        {
            patches.Add(new(Underside, FixtureZoneKind.Outside, static (t, _) => t.Pi(), openings: pads));
        }

        Patches = PatchLedger.Present(patches);
        coated = PatchLedger.Coated(Patches);
    }

    /// <summary>What the tape gave.</summary>
    public FreestandingTubMeasurements Measurements { get; }

    /// <inheritdoc/>
    public string Description => "freestanding tub "
        + Measure.Length.Format(Measurements.RimLength.Meters + (4 * Measurements.RollRadius.Meters)) + " × "
            + Measure.Length.Format(Measurements.RimWidth.Meters + (4 * Measurements.RollRadius.Meters));

    /// <summary>Floor, walls, rim (the roll) and outside, as far as it is coated.</summary>
    public IReadOnlyList<FixtureZone> Zones => field ??= PatchLedger.Zones(Patches);

    /// <inheritdoc/>
    public Area CoatedArea => Area.FromSquareMeters(coated);

    /// <summary>
    /// The end of the roll when the outside is not coated, the outside's foot when its underside is not, the feet's pads, and the rings
    /// of drain and overflow.
    /// </summary>
    public Length MaskedEdge => Length.FromMeters(Edge().Value);

    /// <summary>The water it holds up to the mouth.</summary>
    public Volume? WaterCapacity => Volume.FromCubicMeters(basin.Water(basin.Depth).Value);

    /// <summary>The whole inside, drain and overflow not taken off.</summary>
    public Area InteriorArea => Area.FromSquareMeters((basin.Walls() + basin.FloorArea() + basin.CoveArea()).Value);

    /// <summary>
    /// By how much the inside over-reads because the cove is taken along the sharp floor line; to second order in the cove radius.
    /// </summary>
    public Area CoveOverestimate => Area.FromSquareMeters(basin.CoveOverestimate().Value);

    /// <summary>The rolled rim.</summary>
    public Area RollArea => Area.FromSquareMeters(Roll.Area().Value);

    /// <summary>The outside walls; 0 when they are not coated.</summary>
    public Area OutsideArea => Area.FromSquareMeters(Measurements.OutsideIsCoated ? shell.Walls().Value : 0);

    /// <summary>The bottom from below; 0 when it is not coated.</summary>
    public Area UndersideArea => Area.FromSquareMeters(Measurements.UndersideIsCoated ? shell.FloorArea().Value : 0);

    /// <summary>The patches of the inside, the roll, the outside walls and the bottom from below.</summary>
    public IReadOnlyList<SurfacePatch> Patches { get; }

    private RimRoll Roll => new(Mouth().Value, Measurements.RollRadius.Meters, Measurements.RollTurn.Radians);

    /// <summary>The water up to a level below the mouth, such as the overflow.</summary>
    /// <param name="freeboard">From the mouth down to the water; 0 up to the depth less the cove radius.</param>
    /// <returns>The capacity.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="freeboard"/> is outside its range.</exception>
    public Volume CapacityBelowRim(Length freeboard) => Volume.FromCubicMeters(basin.Water(Level(freeboard)).Value);

    /// <summary>How the capacity up to a level below the mouth follows.</summary>
    /// <param name="freeboard">From the mouth down to the water; 0 up to the depth less the cove radius.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="freeboard"/> is outside its range.</exception>
    public Workings CapacityWorkings(Length freeboard) => basin.Capacity(Level(freeboard));

    /// <inheritdoc/>
    /// <remarks>The cove is drawn as the path of a rolling ball, as for a recessed tub; openings and feet are not cut out.</remarks>
    public TriangleMesh Tessellate(Length chordTolerance)
    {
        RuledBasinSurface inside = new(basin);
        RuledBasinSurface outside = new(shell);
        MeshPoint middle = new((shell.HeadRun - shell.FootRun) / 2, 0, 0);
        Tessellation mesh = new(chordTolerance);
        mesh.Add(PlanCurve.Pieces, [.. inside.Bands(), Roll.Band(inside.Rim, static u => PlanCurve.Piece(u).Angle)]);
        List<SurfaceBand> under = [];
        if (Measurements.OutsideIsCoated)
        {
            under.Add(SurfaceBand.Ruled(FixtureZoneKind.Outside, outside.Rim, outside.Floor));
        }

        if (Measurements.UndersideIsCoated)
        {
            under.Add(SurfaceBand.Ruled(FixtureZoneKind.Outside, outside.Floor, _ => middle));
        }

        return (under.Count == 0 ? mesh : mesh.Add(PlanCurve.Pieces, [.. under])).Mesh();
    }

    /// <inheritdoc/>
    public Workings Workings() => PatchLedger.Write(
        "Freestanding tub", Patches, [.. basin.Lines, Mouth], [Edge], basin.Capacity(basin.Depth));

    /// <summary>Whether two are measured alike.</summary>
    /// <param name="other">The other one.</param>
    /// <returns><see langword="true"/> when their measurements are equal.</returns>
    public bool Equals(FreestandingTub? other) => other is not null && Measurements.Equals(other.Measurements);

    /// <inheritdoc/>
    public override int GetHashCode() => Measurements.GetHashCode();

    /// <summary>What it is, what gets coated and what it holds, in one line, in metric units.</summary>
    /// <returns>Text such as <c>freestanding tub 1524 mm × 762 mm: 4.08 m² coated, 252.4 L to the rim</c>.</returns>
    public override string ToString() => PatchLedger.Told(this);

    private Num Mouth(Trace? t = null) => t.Step("perimeter of the mouth", "P", Measure.Length, PlaneShapes.Elementary, basin.RimEdge(t));

    private Num Outside(Trace? t) => t.Step("outside walls", "S_out", Measure.Area, RuledBasin.Loft, shell.Walls(Aside(t)));

    private Num Underside(Trace? t) => t.Area("bottom from below", "A_under", shell.FloorArea(t));

    private Num Edge(Trace? t = null)
    {
        Num edge = PlaneShapes.Circle(AcrossDrain(t)) + PlaneShapes.Circle(AcrossOverflow(t));
        edge = Measurements.OutsideIsCoated != Measurements.UndersideIsCoated ? edge + shell.FloorEdge(t) : edge;
        edge = Measurements.OutsideIsCoated ? edge : edge + Roll.OuterLine(t);
        if (Measurements.OutsideIsCoated || Measurements.UndersideIsCoated)
        {
            edge += t.Given("n_f", Measurements.Feet, Measure.Number) * PlaneShapes.Circle(AcrossPad(t));
        }

        return t.Edge(edge);
    }

    // The runs and slopes of the outside are those of the inside, which the derivation has.
    private static Trace? Aside(Trace? t) => t is null ? null : new Trace();

    private Num AcrossDrain(Trace? t) => t.Tape("D_d", Measurements.DrainDiameter);

    private Num AcrossOverflow(Trace? t) => t.Tape("D_o", Measurements.OverflowDiameter);

    private Num AcrossPad(Trace? t) => t.Tape("D_p", Measurements.FootPadDiameter);

    private double Level(Length freeboard) =>
        basin.Depth - Guard.Within(freeboard, Bounds.NotNegative(Measure.Length, basin.Depth - basin.Cove));
}
