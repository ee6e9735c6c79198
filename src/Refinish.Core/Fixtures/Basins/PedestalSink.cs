using System;
using System.Collections.Generic;
using System.Globalization;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// A sink on a column: the bowl as the lower half of an ellipsoid, the rim as the outline less the bowl's mouth, an upright outside, the column as a cone's frustum.
/// </summary>
/// <remarks>
/// Bowl: 2π R_G(a²b², a²c², b²c²) with half axes a, b of the mouth and the depth c. Column: π/2 · (D₁ + D₂) √(h² + ((D₂ − D₁)/2)²) times the share that is coated.
/// The underside of the basin is not coated. Drain and overflow are taken as flat discs in the bowl, faucet holes as discs in the rim.
/// Without a column (height 0) and without a skirt it is a sink let into a counter, and the whole outline is taped.
/// Source: <see cref="Workings"/> names the source of each step; the tests hold the bowl to published areas of ellipsoids.
/// </remarks>
/// <example><code>
/// PedestalSink sink = new(tape);                   // the sink of PedestalSinkMeasurements
/// double bowl = sink.BowlArea.SquareInches;        // 313.67, drain and overflow not taken off
/// </code></example>
public sealed record PedestalSink : IFixture
{
    private readonly HalfEllipsoid bowl;
    private readonly double bowlArea;

    /// <summary>Works a sink out.</summary>
    /// <param name="measurements">What the tape gave.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measurements"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Two lengths cannot go together; the message names the one that cannot be.</exception>
    public PedestalSink(PedestalSinkMeasurements measurements)
    {
        Measurements = Guard.NotNull(measurements, nameof(measurements));
        measurements.CheckConsistency();
        bowl = measurements.Bowl;
        bowlArea = bowl.Area;
    }

    /// <summary>What the tape gave.</summary>
    public PedestalSinkMeasurements Measurements { get; }

    /// <inheritdoc/>
    public string Description => (HasColumn ? "pedestal sink " : "sink ") + Measure.Length.Format(Measurements.Outline.Length.Meters) + " × " + Measure.Length.Format(Measurements.Outline.Width.Meters);

    /// <summary>Bowl, rim, outside and column, as far as they are there.</summary>
    public IReadOnlyList<FixtureZone> Zones => FixtureZone.Present(
        FixtureZone.Of(FixtureZoneKind.Bowl, BowlZone, bowl.Tilt / bowlArea),
        FixtureZone.Level(FixtureZoneKind.Rim, Rim),
        FixtureZone.Upright(FixtureZoneKind.Outside, Skirt),
        FixtureZone.Of(FixtureZoneKind.Column, Column, ColumnSlope));

    /// <inheritdoc/>
    public Area CoatedArea => Area.FromSquareMeters(BowlZone + Rim + Skirt + Column);

    /// <summary>The edge at the wall (the whole outline when there is no skirt), the coated girth of the column at the floor, and every hole.</summary>
    public Length MaskedEdge => Length.FromMeters(
        OutlineEdge + Foot + PlaneShapes.Circle(Measurements.DrainDiameter.Meters) + PlaneShapes.Circle(Measurements.OverflowDiameter.Meters)
        + (Measurements.FaucetHoles * PlaneShapes.Circle(Measurements.FaucetHoleDiameter.Meters)));

    /// <summary>The water the bowl holds up to the rim: ⅔ π a b c.</summary>
    public Volume? WaterCapacity => Volume.FromCubicMeters(bowl.Capacity(bowl.C));

    /// <summary>The inside of the bowl, drain and overflow not taken off.</summary>
    public Area BowlArea => Area.FromSquareMeters(bowlArea);

    /// <summary>The rim round the bowl, faucet holes taken off.</summary>
    public Area RimArea => Area.FromSquareMeters(Rim);

    /// <summary>The outside below the rim, the wall's side left out.</summary>
    public Area OutsideArea => Area.FromSquareMeters(Skirt);

    /// <summary>The coated share of the column.</summary>
    public Area ColumnArea => Area.FromSquareMeters(Column);

    private bool HasColumn => Measurements.ColumnHeight.Meters > 0;

    private double Openings => PlaneShapes.Disc(Measurements.DrainDiameter.Meters) + PlaneShapes.Disc(Measurements.OverflowDiameter.Meters);

    private double BowlZone => bowlArea - Openings;

    private double Rim => Measurements.Outline.Area.SquareMeters - PlaneShapes.Ellipse(Measurements.BowlLength.Meters, Measurements.BowlWidth.Meters) - (Measurements.FaucetHoles * PlaneShapes.Disc(Measurements.FaucetHoleDiameter.Meters));

    private double Skirt => (Measurements.Outline.Perimeter.Meters - Measurements.WallContact.Meters) * Measurements.SkirtHeight.Meters * Measurements.SkirtProfileFactor;

    private double Taper => (Measurements.ColumnBaseDiameter.Meters - Measurements.ColumnTopDiameter.Meters) / 2;

    private double Column => HasColumn
        ? Math.PI * (Measurements.ColumnTopDiameter.Meters + Measurements.ColumnBaseDiameter.Meters) / 2 * ColumnSlant * Measurements.ColumnShare.DecimalFractions
        : 0;

    private double ColumnSlant => Math.Sqrt((Measurements.ColumnHeight.Meters * Measurements.ColumnHeight.Meters) + (Taper * Taper));

    // A column that narrows towards the floor leans over: more than upright.
    private double ColumnSlope => HasColumn ? 2 * Math.Atan((ColumnSlant - Taper) / Measurements.ColumnHeight.Meters) : 0;

    private double OutlineEdge => Measurements.SkirtHeight.Meters > 0 ? Measurements.WallContact.Meters : Measurements.Outline.Perimeter.Meters;

    private double Foot => HasColumn ? PlaneShapes.Circle(Measurements.ColumnBaseDiameter.Meters) * Measurements.ColumnShare.DecimalFractions : 0;

    /// <summary>Bowl, rim, the outside (the wall's side counted as an opening) and column.</summary>
    public IReadOnlyList<SurfacePatch> Patches
    {
        get
        {
            Workings workings = Workings();
            PlanOutline outline = Measurements.Outline;
            double height = Measurements.SkirtHeight.Meters;
            double k = Measurements.SkirtProfileFactor;
            double holes = Measurements.FaucetHoles * PlaneShapes.Disc(Measurements.FaucetHoleDiameter.Meters);
            double mouth = PlaneShapes.Ellipse(Measurements.BowlLength.Meters, Measurements.BowlWidth.Meters);
            Expression ring = Expression.Quantity("A_o", outline.Area.SquareMeters, Measure.Area) - PlaneShapes.Ellipse(Tape("L_b", Measurements.BowlLength), Tape("W_b", Measurements.BowlWidth));
            Expression skirt = Expression.Quantity("P_o", outline.Perimeter.Meters, Measure.Length) * Tape("h_s", Measurements.SkirtHeight);
            List<SurfacePatch> patches =
            [
                SurfacePatch.Of(workings, "S_bowl", FixtureZoneKind.Bowl, bowl.Tilt / bowlArea, HalfEllipsoid.Error, openings: Openings),
                new(Step("rim", "A_rim", ring, outline.Area.SquareMeters - mouth, PlaneShapes.Elementary), FixtureZoneKind.Rim, 0, openings: holes),
                new(Step("outside, all round", "A_out", skirt, outline.Perimeter.Meters * height, PlaneShapes.Elementary), FixtureZoneKind.Outside, Math.PI / 2, factor: k, openings: Measurements.WallContact.Meters * height * k),
            ];
            if (HasColumn)
            {
                patches.Add(SurfacePatch.Of(workings, "Z_col", FixtureZoneKind.Column, ColumnSlope));
            }

            return PatchLedger.Present([.. patches]);
        }
    }

    /// <inheritdoc/>
    /// <remarks>The bowl's mouth stands in the middle of the outline, the outside goes all round, the column hangs below the bowl.</remarks>
    public TriangleMesh Tessellate(Length chordTolerance)
    {
        PlanOutline outline = Measurements.Outline;
        double depth = bowl.C;
        double low = depth - Measurements.SkirtHeight.Meters;
        Func<double, MeshPoint> mouth = turn => PlanCurve.Ellipse(Measurements.BowlLength.Meters, Measurements.BowlWidth.Meters, depth, turn);
        Func<double, MeshPoint> edge = turn => outline.Towards(turn, depth);
        Tessellation mesh = new(chordTolerance);
        mesh.Add(
            outline.Breaks(),
            BowlSurface.Inside(FixtureZoneKind.Bowl, mouth, depth),
            SurfaceBand.Ruled(FixtureZoneKind.Rim, mouth, edge),
            SurfaceBand.Ruled(FixtureZoneKind.Outside, edge, turn => outline.Towards(turn, low)));
        if (HasColumn)
        {
            double foot = -Measurements.ColumnHeight.Meters;
            double share = Measurements.ColumnShare.DecimalFractions;
            mesh.Add(
                [0, share * Math.PI / 2, share * Math.PI, share * 3 * Math.PI / 2, share * 2 * Math.PI],
                SurfaceBand.Ruled(FixtureZoneKind.Column, turn => PlanCurve.Circle(Measurements.ColumnTopDiameter.Meters, 0, turn), turn => PlanCurve.Circle(Measurements.ColumnBaseDiameter.Meters, foot, turn)));
        }

        return mesh.Mesh();
    }

    /// <summary>The water up to a level below the rim, such as the overflow.</summary>
    /// <param name="freeboard">From the rim down to the water; 0 up to the bowl's depth.</param>
    /// <returns>The capacity.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="freeboard"/> is outside its range.</exception>
    public Volume CapacityBelowRim(Length freeboard) =>
        Volume.FromCubicMeters(bowl.Capacity(bowl.C - Guard.Within(freeboard, Bounds.NotNegative(Measure.Length, bowl.C), nameof(freeboard))));

    /// <inheritdoc/>
    public Workings Workings()
    {
        Source plane = PlaneShapes.Elementary;
        HalfEllipsoidExpressions symbols = new(bowl);
        Workings outline = Measurements.Outline.Workings();
        Expression drain = Tape("D_d", Measurements.DrainDiameter);
        Expression overflow = Tape("D_o", Measurements.OverflowDiameter);
        Expression hole = Tape("D_h", Measurements.FaucetHoleDiameter);
        Expression holes = Expression.Quantity("n_h", Measurements.FaucetHoles, Measure.Number);
        Expression contact = Tape("L_w", Measurements.WallContact);
        Expression mouth = PlaneShapes.Ellipse(Tape("L_b", Measurements.BowlLength), Tape("W_b", Measurements.BowlWidth));
        Expression around = outline.Steps[1].Result();
        WorkingStep inside = Step("bowl, half an ellipsoid", "S_bowl", symbols.Area(), bowlArea, HalfEllipsoid.Carlson);
        WorkingStep bowlZone = Step("zone Bowl, drain and overflow taken off", "Z_bowl", inside.Result() - (PlaneShapes.Disc(drain) + PlaneShapes.Disc(overflow)), BowlZone, plane);
        WorkingStep bowlSlope = new("mean slope of zone Bowl", "φ_bowl", symbols.Tilt() / inside.Result(), bowl.Tilt / bowlArea, Measure.Angle, Source.Derived("slope weighted by area over the half ellipsoid"));
        WorkingStep rim = Step("zone Rim", "Z_rim", outline.Steps[0].Result() - mouth - (holes * PlaneShapes.Disc(hole)), Rim, plane);
        WorkingStep skirt = Step(
            "zone Outside",
            "Z_out",
            (around - contact) * Tape("h_s", Measurements.SkirtHeight) * Expression.Quantity("k_s", Measurements.SkirtProfileFactor, Measure.Number),
            Skirt,
            plane);
        List<WorkingStep> steps = [inside, bowlZone, bowlSlope, rim, ZoneSteps.Level("Rim", "φ_rim"), skirt, ZoneSteps.Upright("Outside", "φ_out")];
        Expression total = bowlZone.Result() + rim.Result() + skirt.Result();
        Expression edge = Measurements.SkirtHeight.Meters > 0 ? contact : around;
        if (HasColumn)
        {
            Expression top = Tape("D_1", Measurements.ColumnTopDiameter);
            Expression foot = Tape("D_2", Measurements.ColumnBaseDiameter);
            Expression height = Tape("h_c", Measurements.ColumnHeight);
            Expression share = Expression.Quantity("s_c", Measurements.ColumnShare.DecimalFractions, Measure.Percent);
            Expression taper = (foot - top) / 2;
            Expression slant = Expression.Sqrt(Expression.Square(height) + Expression.Square(taper));
            WorkingStep column = Step("zone Column, a frustum", "Z_col", Expression.Pi() * (top + foot) / 2 * slant * share, Column, plane);
            steps.Add(column);
            steps.Add(new("slope of zone Column", "φ_col", 2 * Expression.Arctan((slant - taper) / height), ColumnSlope, Measure.Angle, plane));
            total += column.Result();
            edge += PlaneShapes.Circle(foot) * share;
        }

        steps.Add(Step("coated area", "A", total, CoatedArea.SquareMeters, plane));
        steps.Add(new("edge to be taped", "P_mask", edge + PlaneShapes.Circle(drain) + PlaneShapes.Circle(overflow) + (holes * PlaneShapes.Circle(hole)), MaskedEdge.Meters, Measure.Length, plane));
        return new Workings("Pedestal sink", steps, [outline, Water(bowl.C)]);
    }

    /// <summary>How the capacity up to a level below the rim follows.</summary>
    /// <param name="freeboard">From the rim down to the water; 0 up to the bowl's depth.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="freeboard"/> is outside its range.</exception>
    public Workings CapacityWorkings(Length freeboard) =>
        Water(bowl.C - Guard.Within(freeboard, Bounds.NotNegative(Measure.Length, bowl.C), nameof(freeboard)));

    /// <summary>What it is, what gets coated and what it holds, in one line, in metric units.</summary>
    /// <returns>Text such as <c>pedestal sink 609.6 mm × 482.6 mm: 0.86786 m² coated, 11.815 L to the rim</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0}: {1} coated, {2} to the rim",
        Description,
        Measure.Area.Format(CoatedArea.SquareMeters),
        Measure.Capacity.Format(bowl.Capacity(bowl.C)));

    private static Expression Tape(string symbol, Length length) => Expression.Quantity(symbol, length.Meters, Measure.Length);

    private static WorkingStep Step(string name, string symbol, Expression formula, double value, Source source) =>
        new(name, symbol, formula, value, Measure.Area, source);

    private Workings Water(double level) => new(
        "Water in the bowl",
        [new("water up to the level", "V", new HalfEllipsoidExpressions(bowl).Capacity(Tape("h", Length.FromMeters(level))), bowl.Capacity(level), Measure.Capacity, Source.Derived("slices of an ellipsoid"))]);
}
