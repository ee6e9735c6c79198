using System;
using System.Collections.Generic;
using System.Globalization;
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

    /// <summary>Works a counter out.</summary>
    /// <param name="measurements">What the tape gave.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measurements"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Two lengths cannot go together; the message names the one that cannot be.</exception>
    public Countertop(CountertopMeasurements measurements)
    {
        Measurements = Guard.NotNull(measurements, nameof(measurements));
        measurements.CheckConsistency();
        open = RectangularOpening.AreaOf(measurements.CutOuts);
    }

    /// <summary>What the tape gave.</summary>
    public CountertopMeasurements Measurements { get; }

    /// <inheritdoc/>
    public string Description => (Measurements.Runs.Count switch { 1 => "straight countertop ", 2 => "L-shaped countertop ", _ => "U-shaped countertop " }) + Measurements;

    /// <summary>Top, edge and backsplash, as far as they are there.</summary>
    public IReadOnlyList<FixtureZone> Zones => PatchLedger.Zones(Patches);

    /// <inheritdoc/>
    public Area CoatedArea => Area.FromSquareMeters(Top - open + Edge + Face + Cap + Ends);

    /// <summary>
    /// The lower line of the edge, the walls or the upper line of the backsplash, closed ends, the backsplash's ends at walls, and every
    /// cut-out.
    /// </summary>
    public Length MaskedEdge => Length.FromMeters(Mask);

    /// <summary>A counter holds no water.</summary>
    public Volume? WaterCapacity => null;

    /// <summary>The level top between the backsplash and the profile, cut-outs not taken off.</summary>
    public Area TopArea => Area.FromSquareMeters(Top);

    /// <summary>The profiled edge.</summary>
    public Area EdgeArea => Area.FromSquareMeters(Edge);

    /// <summary>The backsplash: face, top and the caps of open ends.</summary>
    public Area BacksplashArea => Area.FromSquareMeters(Face + Cap + Ends);

    /// <summary>The cut-outs together.</summary>
    public Area OpeningArea => Area.FromSquareMeters(open);

    /// <summary>The outermost line of the edge that shows.</summary>
    public Length EdgeLength => Length.FromMeters(Measurements.EdgeLine);

    /// <summary>How long the profile is when it is laid flat.</summary>
    public Length DevelopedEdge => Length.FromMeters(Measurements.Edge.Developed);

    /// <summary>Top, edge, and the backsplash's face, top and end caps.</summary>
    public IReadOnlyList<SurfacePatch> Patches
    {
        get
        {
            Expression line = Tape("L_e", Measurements.EdgeLine);
            Expression corners = Expression.Quantity("k", Measurements.OutwardCorners, Measure.Number);
            Expression thickness = Tape("T", Measurements.Thickness.Meters);
            Expression radius = Tape("r", Measurements.EdgeRadius.Meters);
            Expression reach = Shape.ReachFormula(thickness, radius);
            Expression height = Tape("h_b", Measurements.BacksplashHeight.Meters);
            Expression deep = Tape("t_b", Deep);
            Expression wall = Tape("L_w", Measurements.WallLine);
            Expression open = Expression.Quantity("e", Measurements.OpenEnds, Measure.Number);
            Expression turns = Expression.Quantity("n", Measurements.Runs.Count, Measure.Number) - 1;
            Expression strip = (deep * (wall - (open * reach))) - (turns * Expression.Square(deep));
            return PatchLedger.Present(
                new SurfacePatch(Step("top", "A_top", GrossFormula() - ((line * reach) - (corners * Expression.Square(reach))) - strip,
                    Top), FixtureZoneKind.Top, 0, openings: this.open),
                new SurfacePatch(Step("edge", "A_edge", (line * Shape.DevelopedFormula(thickness, radius)) - (2 * corners * Shape.MomentFormula(thickness, radius)), Edge), FixtureZoneKind.Edge, Shape.Slope, Shape.SlopeFormula(thickness, radius)),
                new SurfacePatch(Step("backsplash, face", "A_face", (wall - (2 * turns * deep)) * height, Face),
                    FixtureZoneKind.Backsplash, Math.PI / 2),
                new SurfacePatch(Step("backsplash, top", "A_cap", (deep * wall) - (turns * Expression.Square(deep)), Cap),
                    FixtureZoneKind.Backsplash, 0),
                new SurfacePatch(Step("backsplash, open ends", "A_end", open * height * deep, Ends), FixtureZoneKind.Backsplash,
                    Math.PI / 2));
        }
    }

    private EdgeShape Shape => Measurements.Edge;

    private double Top =>
        Measurements.Gross - ((Measurements.EdgeLine * Shape.Reach) - (Measurements.OutwardCorners * (Shape.Reach * Shape.Reach))) - Measurements.Strip;

    private double Edge => (Measurements.EdgeLine * Shape.Developed) - (2 * Measurements.OutwardCorners * Shape.Moment);

    private double Height => Measurements.BacksplashHeight.Meters;

    private double Deep => Measurements.Covered;

    private double Face => (Measurements.WallLine - (2 * (Measurements.Runs.Count - 1) * Deep)) * Height;

    private double Cap => (Deep * Measurements.WallLine) - ((Measurements.Runs.Count - 1) * (Deep * Deep));

    private double Ends => Measurements.OpenEnds * Height * Deep;

    private double ClosedEnds => (Measurements.LeftEndIsOpen ? 0 : Measurements.Runs[0].Depth.Meters) + (Measurements.RightEndIsOpen ? 0 : Measurements.Runs[Measurements.Runs.Count - 1].Depth.Meters);

    private double Mask =>
        Measurements.EdgeLine + Measurements.WallLine + ClosedEnds + (2 * Height) + RectangularOpening.EdgeOf(Measurements.CutOuts);

    /// <inheritdoc/>
    /// <remarks>Cut-outs are not cut out. The runs are drawn in plan from left to right, each turning towards the room.</remarks>
    public TriangleMesh Tessellate(Length chordTolerance) => CountertopShape.Mesh(Measurements, new Tessellation(chordTolerance));

    /// <inheritdoc/>
    public Workings Workings()
    {
        List<Expression> around = [];
        for (int i = 0; i < Measurements.CutOuts.Count; i++)
        {
            around.Add(2 * (Tape("l_" + Index(i), Measurements.CutOuts[i].Length.Meters) + Tape("h_" + Index(i), Measurements.CutOuts[i].Height.Meters)));
        }

        Expression edge = Tape("L_e", Measurements.EdgeLine) + Tape("L_w", Measurements.WallLine) + Tape("L_c", ClosedEnds)
            + (2 * Tape("h_b", Height)) + Expression.Sum(around);
        List<Expression> fronts = [];
        List<Expression> walls = [];
        for (int i = 0; i < Measurements.Runs.Count; i++)
        {
            fronts.Add(Tape("f_" + Index(i), Measurements.Front(i)));
            walls.Add(Tape("L_" + Index(i), Measurements.Runs[i].Length.Meters));
        }

        if (Measurements.LeftEndIsOpen)
        {
            fronts.Add(Tape("D_left", Measurements.Runs[0].Depth.Meters));
        }

        if (Measurements.RightEndIsOpen)
        {
            fronts.Add(Tape("D_right", Measurements.Runs[Measurements.Runs.Count - 1].Depth.Meters));
        }

        Expression thickness = Tape("T", Measurements.Thickness.Meters);
        Expression radius = Tape("r", Measurements.EdgeRadius.Meters);
        return PatchLedger.Write(
            "Countertop",
            Patches,
            CoatedArea.SquareMeters,
            [
                new("line of the edge", "L_e", Expression.Sum(fronts), Measurements.EdgeLine, Measure.Length, PlaneShapes.Elementary),
                new("walls", "L_w", Expression.Sum(walls), Measurements.WallLine, Measure.Length, PlaneShapes.Elementary),
                new("developed profile", "s", Shape.DevelopedFormula(thickness, radius), Shape.Developed, Measure.Length, PlaneShapes.Elementary),
            ],
            [
                Step("backsplash", "A_back", Expression.Quantity("A_face", Face, Measure.Area) + Expression.Quantity("A_cap", Cap, Measure.Area) + Expression.Quantity("A_end", Ends, Measure.Area), Face + Cap + Ends),
                new("edge to be taped", "P_mask", edge, Mask, Measure.Length, PlaneShapes.Elementary),
            ]);
    }

    /// <summary>What it is and what gets coated, in one line, in metric units.</summary>
    /// <returns>Text such as <c>straight countertop 2438.4 mm × 647.7 mm, Square edge: 1.4864 m² coated</c>.</returns>
    public override string ToString() => Description + ": " + Measure.Area.Format(CoatedArea.SquareMeters) + " coated";

    private static string Index(int place) => (place + 1).ToString(CultureInfo.InvariantCulture);

    private static Expression Tape(string symbol, double value) => Expression.Quantity(symbol, value, Measure.Length);

    private static WorkingStep Step(string name, string symbol, Expression formula, double value) => new(name, symbol, formula, value, Measure.Area, PlaneShapes.Elementary);

    private Expression GrossFormula()
    {
        List<Expression> runs = [];
        for (int i = 0; i < Measurements.Runs.Count; i++)
        {
            Expression depth = Tape("D_" + Index(i), Measurements.Runs[i].Depth.Meters);
            Expression length = Tape("L_" + Index(i), Measurements.Runs[i].Length.Meters);
            runs.Add(i == 0 ? length * depth : (length - Tape("D_" + Index(i - 1), Measurements.Runs[i - 1].Depth.Meters)) * depth);
        }

        return Expression.Sum(runs);
    }
}
