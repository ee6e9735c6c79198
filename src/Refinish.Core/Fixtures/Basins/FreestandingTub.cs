using System;
using System.Collections.Generic;
using System.Globalization;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>A freestanding tub: the inside as of a recessed one, a rolled rim as a swept part of a tube, and the outside as a loft larger by the wall.</summary>
/// <remarks>
/// Inside: the ruled loft of <see cref="RecessedBathtub"/> with its cove. Roll: a t (P + 2π a) − 2π a² sin t, with the mouth's perimeter P, the tube's radius a and the turn t.
/// Outside: the walls of the loft whose outlines are larger all round by the wall's thickness and as deep as the inside, with its bottom from below; the feet's pads are taken off.
/// Where the roll covers the top of the outside, that strip is counted with the outside too: at most roll radius × outline. Source: derived (Pappus, Steiner, ruled loft).
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
        Measurements = Guard.NotNull(measurements, nameof(measurements));
        measurements.CheckConsistency();
        basin = measurements.Basin;
        shell = measurements.Shell;
        coated = basin.Interior - Drain - Overflow + Roll.Area + Outside + Underside - (Outside + Underside > 0 ? Pads : 0);
    }

    /// <summary>What the tape gave.</summary>
    public FreestandingTubMeasurements Measurements { get; }

    /// <inheritdoc/>
    public string Description => "freestanding tub " + Measure.Length.Format(Measurements.RimLength.Meters + (4 * Measurements.RollRadius.Meters)) + " × " + Measure.Length.Format(Measurements.RimWidth.Meters + (4 * Measurements.RollRadius.Meters));

    /// <summary>Floor, walls, rim (the roll) and outside, as far as it is coated.</summary>
    public IReadOnlyList<FixtureZone> Zones => PatchLedger.Zones(Patches);

    /// <inheritdoc/>
    public Area CoatedArea => Area.FromSquareMeters(coated);

    /// <summary>The end of the roll when the outside is not coated, the outside's foot when its underside is not, the feet's pads, and the rings of drain and overflow.</summary>
    public Length MaskedEdge => Length.FromMeters(Mask);

    /// <summary>The water it holds up to the mouth.</summary>
    public Volume? WaterCapacity => Volume.FromCubicMeters(basin.Capacity(basin.Depth));

    /// <summary>The whole inside, drain and overflow not taken off.</summary>
    public Area InteriorArea => Area.FromSquareMeters(basin.Interior);

    /// <summary>By how much the inside over-reads because the cove is taken along the sharp floor line; to second order in the cove radius.</summary>
    public Area CoveOverestimate => Area.FromSquareMeters(basin.CoveOverestimate);

    /// <summary>The rolled rim.</summary>
    public Area RollArea => Area.FromSquareMeters(Roll.Area);

    /// <summary>The outside walls; 0 when they are not coated.</summary>
    public Area OutsideArea => Area.FromSquareMeters(Outside);

    /// <summary>The bottom from below; 0 when it is not coated.</summary>
    public Area UndersideArea => Area.FromSquareMeters(Underside);

    /// <summary>The patches of the inside, the roll, the outside walls and the bottom from below.</summary>
    public IReadOnlyList<SurfacePatch> Patches
    {
        get
        {
            List<SurfacePatch> patches = Inside.Patches;
            patches.Add(Roll.Patch());
            if (Outside > 0)
            {
                RuledBasinExpressions symbols = new(shell);
                Expression slants = symbols.Sides() + symbols.End(symbols.HeadRun) + symbols.End(symbols.FootRun) + ((symbols.RimRadius + symbols.FloorRadius) * symbols.CornerSlant().Formula);
                WorkingStep walls = new("outside walls", "S_out", slants, shell.Walls, Measure.Area, RuledBasinExpressions.Loft);
                Expression tilt = (symbols.Sides() * symbols.NearSlope.Formula) + (symbols.End(symbols.HeadRun) * symbols.HeadSlope.Formula) + (symbols.End(symbols.FootRun) * symbols.FootSlope.Formula)
                    + ((symbols.RimRadius + symbols.FloorRadius) * symbols.CornerSlopedSlant().Formula);
                patches.Add(new(walls, FixtureZoneKind.Outside, Math.PI - (shell.WallTilt / shell.Walls), Expression.Pi() - (tilt / walls.Result()), RuledBasin.CornerError, 1, Underside > 0 ? 0 : Pads));
            }

            if (Underside > 0)
            {
                WorkingStep bottom = new("bottom from below", "A_under", new RuledBasinExpressions(shell).FloorArea(), shell.FloorArea, Measure.Area, PlaneShapes.Elementary);
                patches.Add(new(bottom, FixtureZoneKind.Outside, Math.PI, Expression.Pi(), 0, 1, Pads));
            }

            return PatchLedger.Present([.. patches]);
        }
    }

    private RuledBasinPatches Inside => new(basin, Drain, Overflow);

    private RimRoll Roll => new(PlaneShapes.RoundedRectangleEdge(basin.RimLength, basin.RimWidth, basin.RimRadius), Measurements.RollRadius.Meters, Measurements.RollTurn.Radians);

    private double Drain => PlaneShapes.Disc(Measurements.DrainDiameter.Meters);

    private double Overflow => PlaneShapes.Disc(Measurements.OverflowDiameter.Meters);

    private double Pads => Measurements.Feet * PlaneShapes.Disc(Measurements.FootPadDiameter.Meters);

    private double Outside => Measurements.OutsideIsCoated ? shell.Walls : 0;

    private double Underside => Measurements.UndersideIsCoated ? shell.FloorArea : 0;

    private double ShellFoot => PlaneShapes.RoundedRectangleEdge(shell.FloorLength, shell.FloorWidth, shell.FloorRadius);

    private double Mask => (Measurements.OutsideIsCoated ? 0 : Roll.OuterLine)
        + (Measurements.OutsideIsCoated != Measurements.UndersideIsCoated ? ShellFoot : 0)
        + (Measurements.OutsideIsCoated || Measurements.UndersideIsCoated ? Measurements.Feet * PlaneShapes.Circle(Measurements.FootPadDiameter.Meters) : 0)
        + PlaneShapes.Circle(Measurements.DrainDiameter.Meters) + PlaneShapes.Circle(Measurements.OverflowDiameter.Meters);

    /// <summary>The water up to a level below the mouth, such as the overflow.</summary>
    /// <param name="freeboard">From the mouth down to the water; 0 up to the depth less the cove radius.</param>
    /// <returns>The capacity.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="freeboard"/> is outside its range.</exception>
    public Volume CapacityBelowRim(Length freeboard) => Volume.FromCubicMeters(basin.Capacity(Level(freeboard)));

    /// <summary>How the capacity up to a level below the mouth follows.</summary>
    /// <param name="freeboard">From the mouth down to the water; 0 up to the depth less the cove radius.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="freeboard"/> is outside its range.</exception>
    public Workings CapacityWorkings(Length freeboard) => RecessedBathtubWorkings.Capacity(basin, Level(freeboard));

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
        if (Outside > 0)
        {
            under.Add(SurfaceBand.Ruled(FixtureZoneKind.Outside, outside.Rim, outside.Floor));
        }

        if (Underside > 0)
        {
            under.Add(SurfaceBand.Ruled(FixtureZoneKind.Outside, outside.Floor, _ => middle));
        }

        return (under.Count == 0 ? mesh : mesh.Add(PlanCurve.Pieces, [.. under])).Mesh();
    }

    /// <inheritdoc/>
    public Workings Workings()
    {
        RimRoll roll = Roll;
        Expression p = Tape("P", roll.Perimeter);
        Expression a = Tape("a", roll.Radius);
        RuledBasinExpressions symbols = new(shell);
        List<Expression> edges = [PlaneShapes.Circle(Tape("D_d", Measurements.DrainDiameter.Meters)), PlaneShapes.Circle(Tape("D_o", Measurements.OverflowDiameter.Meters))];
        if (Measurements.OutsideIsCoated != Measurements.UndersideIsCoated)
        {
            edges.Add(PlaneShapes.RoundedRectangleEdge(symbols.FloorLength, symbols.FloorWidth, symbols.FloorRadius));
        }

        if (!Measurements.OutsideIsCoated)
        {
            edges.Add(p + (2 * Expression.Pi() * a) - (2 * Expression.Pi() * a * Expression.Cos(Expression.Quantity("t", roll.Turn, Measure.Angle))));
        }

        if (Measurements.OutsideIsCoated || Measurements.UndersideIsCoated)
        {
            edges.Add(Expression.Quantity("n_f", Measurements.Feet, Measure.Number) * PlaneShapes.Circle(Tape("D_p", Measurements.FootPadDiameter.Meters)));
        }

        WorkingStep mouth = new("perimeter of the mouth", "P", PlaneShapes.RoundedRectangleEdge(Tape("L_t", basin.RimLength), Tape("W_t", basin.RimWidth), Tape("r_t", basin.RimRadius)), roll.Perimeter, Measure.Length, PlaneShapes.Elementary);
        return PatchLedger.Write(
            "Freestanding tub",
            Patches,
            coated,
            [.. Inside.Before, mouth],
            [new("edge to be taped", "P_mask", Expression.Sum(edges), Mask, Measure.Length, PlaneShapes.Elementary)],
            [RecessedBathtubWorkings.Capacity(basin, basin.Depth)]);
    }

    /// <summary>What it is, what gets coated and what it holds, in one line, in metric units.</summary>
    /// <returns>Text such as <c>freestanding tub 1524 mm × 762 mm: 4.08 m² coated, 252.4 L to the rim</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0}: {1} coated, {2} to the rim",
        Description,
        Measure.Area.Format(coated),
        Measure.Capacity.Format(basin.Capacity(basin.Depth)));

    private static Expression Tape(string symbol, double value) => Expression.Quantity(symbol, value, Measure.Length);

    private double Level(Length freeboard) =>
        basin.Depth - Guard.Within(freeboard, Bounds.NotNegative(Measure.Length, basin.Depth - basin.Cove), nameof(freeboard));
}
