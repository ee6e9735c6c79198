using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>The derivation of a <see cref="RecessedBathtub"/>, written out only when it is asked for.</summary>
internal static class RecessedBathtubWorkings
{
    private static readonly Source Plane = PlaneShapes.Elementary;

    public static Workings Of(RecessedBathtub tub)
    {
        RuledBasin basin = tub.Basin;
        RecessedBathtubMeasurements tape = tub.Measurements;
        RuledBasinExpressions symbols = new(basin);
        Workings capacity = Capacity(basin, basin.Depth);
        Expression water = capacity.Steps[capacity.Steps.Count - 1].Result();
        IReadOnlyList<FixtureZone> zones = tub.Zones;

        WorkingStep sides = Area("both side walls", "S_side", symbols.Sides(), basin.Sides, RuledBasinExpressions.Loft);
        WorkingStep head = Area("head wall", "S_head", symbols.End(symbols.HeadRun), basin.Head, RuledBasinExpressions.Loft);
        WorkingStep foot = Area("foot wall", "S_foot", symbols.End(symbols.FootRun), basin.Foot, RuledBasinExpressions.Loft);
        WorkingStep slant = symbols.CornerSlant();
        WorkingStep corners = Area("four corners", "S_corner", (symbols.RimRadius + symbols.FloorRadius) * slant.Result(), basin.Corners, RuledBasinExpressions.Loft);
        WorkingStep walls = Area("walls down to the sharp floor line", "A_wall", sides.Result() + head.Result() + foot.Result() + corners.Result(), basin.Walls, Plane);
        WorkingStep floor = Area("floor inside the sharp floor line", "A_f", symbols.FloorArea(), basin.FloorArea, Plane);
        WorkingStep mouth = Area("mouth", "A_t", symbols.RimArea(), basin.RimArea, Plane);
        WorkingStep[] lines = symbols.CoveLines();
        WorkingStep cove = Area("change by the cove", "A_cove", symbols.Radius * (lines[1].Result() - (2 * lines[3].Result())), basin.CoveArea, RuledBasinExpressions.Cove);
        WorkingStep slopeTangent = symbols.CornerSlopeTangent();
        WorkingStep versine = symbols.CornerVersine();
        WorkingStep excess = symbols.CoveExcess(slopeTangent, versine);
        WorkingStep interior = Area("whole inside", "A_in", walls.Result() + floor.Result() + cove.Result(), basin.Interior, Plane);
        WorkingStep least = Area(
            "least inside of that capacity and mouth",
            "A_min",
            Expression.Max(Expression.Power(18 * Expression.Pi() * Expression.Square(water), Expression.Number(1) / 3), mouth.Result()),
            tub.LeastInteriorArea.SquareMeters,
            Source.Derived("isoperimetric inequality over a plane mouth; a surface is no smaller than its projection"));
        WorkingStep greatest = Area(
            "inside of the box over the mouth",
            "A_max",
            (symbols.RimLength * symbols.RimWidth) + (2 * (symbols.RimLength + symbols.RimWidth) * symbols.Depth),
            tub.GreatestInteriorArea.SquareMeters,
            Source.Derived("a convex basin has no more surface than the box around it"));

        Expression overallLength = RuledBasinExpressions.Tape("L_o", tape.OverallLength.Meters);
        Expression overallWidth = RuledBasinExpressions.Tape("W_o", tape.OverallWidth.Meters);
        Expression apronHeight = RuledBasinExpressions.Tape("h_a", tape.ApronHeight.Meters);
        Expression profile = Expression.Quantity("k_a", tape.ApronProfileFactor, Measure.Number);
        Expression drainWidth = RuledBasinExpressions.Tape("D_d", tape.DrainDiameter.Meters);
        Expression overflowWidth = RuledBasinExpressions.Tape("D_o", tape.OverflowDiameter.Meters);
        WorkingStep drain = Area("drain", "A_d", PlaneShapes.Disc(drainWidth), tub.Drain, Plane);
        WorkingStep overflow = Area("overflow", "A_o", PlaneShapes.Disc(overflowWidth), tub.Overflow, Plane);
        WorkingStep openings = Area("openings", "A_open", drain.Result() + overflow.Result(), tub.OpeningArea.SquareMeters, Plane);
        WorkingStep deck = Area("deck, level: zone Rim", "A_deck", (overallLength * overallWidth) - mouth.Result(), tub.Deck, Plane);
        WorkingStep apron = Area("apron, upright: zone Apron", "A_apron", overallLength * apronHeight * profile, tub.Apron, Plane);
        Expression flangeHeight = RuledBasinExpressions.Tape("h_t", tape.TilingFlangeHeight.Meters);
        WorkingStep flange = Area("tiling flange at both ends and the back: zone Flange", "A_flange", (overallLength + (2 * overallWidth)) * flangeHeight, tub.Flange, Plane);
        WorkingStep[] flangeSteps = tub.Flange > 0 ? [flange, ZoneSteps.Upright("Flange", "φ_flange")] : [];
        WorkingStep floorZone = Area("zone Floor, with its half of the cove", "Z_floor", floor.Result() + (cove.Result() / 2) - drain.Result(), zones[0].Area.SquareMeters, Plane);
        WorkingStep wallZone = Area("zone Wall, with its half of the cove", "Z_wall", walls.Result() + (cove.Result() / 2) - overflow.Result(), zones[1].Area.SquareMeters, Plane);
        Source mean = Source.Derived("slope weighted by area over the patches of the zone");
        WorkingStep sloped = symbols.CornerSlopedSlant();
        WorkingStep[] tilts = symbols.TiltLines(slopeTangent);
        WorkingStep floorSlope = new("mean slope of zone Floor", "φ_floor", symbols.Radius * tilts[1].Result() / 8 / floorZone.Result(), zones[0].SlopeFromHorizontal.Radians, Measure.Angle, mean);
        WorkingStep wallSlope = new(
            "mean slope of zone Wall",
            "φ_wall",
            (symbols.SideTilt(sides) + (head.Result() * symbols.HeadSlope.Result()) + (foot.Result() * symbols.FootSlope.Result())
                + ((symbols.RimRadius + symbols.FloorRadius) * sloped.Result())
                + (symbols.Radius * ((3 * tilts[1].Result() / 8) - tilts[2].Result()))
                - (overflow.Result() * symbols.FootSlope.Result())) / wallZone.Result(),
            zones[1].SlopeFromHorizontal.Radians,
            Measure.Angle,
            mean);
        WorkingStep total = Area(
            "coated area",
            "A",
            tub.Flange > 0
                ? floorZone.Result() + wallZone.Result() + deck.Result() + apron.Result() + flange.Result()
                : floorZone.Result() + wallZone.Result() + deck.Result() + apron.Result(),
            tub.CoatedArea.SquareMeters,
            Plane);
        WorkingStep edge = new(
            "edge to be taped",
            "P_mask",
            (2 * (overallLength + overallWidth + apronHeight + (tub.Flange > 0 ? flangeHeight : 0))) + PlaneShapes.Circle(drainWidth) + PlaneShapes.Circle(overflowWidth),
            tub.MaskedEdge.Meters,
            Measure.Length,
            Plane);
        return new Workings(
            "Recessed bathtub",
            [
                symbols.RadiusChange, .. symbols.SideSteps, symbols.HeadSlope, symbols.FootSlope,
                sides, head, foot, slant, corners, walls, floor, mouth, .. lines, cove, slopeTangent, versine, excess, interior, least, greatest,
                drain, overflow, openings, floorZone, sloped, .. tilts, floorSlope, wallZone, wallSlope, deck, ZoneSteps.Level("Rim", "φ_rim"), apron, ZoneSteps.Upright("Apron", "φ_apron"), .. flangeSteps, total, edge,
            ],
            [capacity]);
    }

    /// <summary>Up to a level above the floor, above the cove.</summary>
    public static Workings Capacity(RuledBasin basin, double level)
    {
        RuledBasinExpressions symbols = new(basin);
        Expression height = RuledBasinExpressions.Tape("h", level);
        WorkingStep floor = Area("section at the floor", "A_0", symbols.FloorArea(), basin.FloorArea, Plane);
        WorkingStep middle = Area("section at half the level", "A_1", symbols.Section(height / 2), basin.Section(level / 2), RuledBasinExpressions.Loft);
        WorkingStep surface = Area("section at the water", "A_2", symbols.Section(height), basin.Section(level), RuledBasinExpressions.Loft);
        WorkingStep[] lines = symbols.CoveLines();
        WorkingStep cove = new("change by the cove", "V_cove", Expression.Square(symbols.Radius) * ((lines[1].Result() / 2) - lines[3].Result()), basin.CoveVolume, Measure.Capacity, RuledBasinExpressions.Cove);
        WorkingStep water = new(
            "water up to the level",
            "V",
            (height * (floor.Result() + (4 * middle.Result()) + surface.Result()) / 6) + cove.Result(),
            basin.Capacity(level),
            Measure.Capacity,
            RuledBasinExpressions.Prismoid);
        return new Workings("Water in the basin", [symbols.RadiusChange, .. symbols.SideSteps, symbols.HeadSlope, symbols.FootSlope, floor, middle, surface, .. lines, cove, water]);
    }

    private static WorkingStep Area(string name, string symbol, Expression formula, double value, Source source) =>
        new(name, symbol, formula, value, Measure.Area, source);
}
