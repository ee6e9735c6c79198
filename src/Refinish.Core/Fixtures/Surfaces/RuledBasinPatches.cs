using System.Collections.Generic;

namespace Refinish.Fixtures;

/// <summary>The patches of a <see cref="RuledBasin"/> with the steps they rest on: floor, sides, ends, corners, and what the cove changes.</summary>
internal sealed class RuledBasinPatches
{
    public RuledBasinPatches(RuledBasin basin, double drain, double overflow)
    {
        RuledBasinExpressions symbols = new(basin);
        WorkingStep slant = symbols.CornerSlant();
        WorkingStep sloped = symbols.CornerSlopedSlant();
        WorkingStep[] lines = symbols.CoveLines();
        WorkingStep slopeTangent = symbols.CornerSlopeTangent();
        WorkingStep[] tilts = symbols.TiltLines(slopeTangent);
        WorkingStep sides = Area("both side walls", "S_side", symbols.Sides(), basin.Sides);
        double half = basin.CoveArea / 2;
        Expression change = symbols.Radius * (lines[1].Result() - (2 * lines[3].Result())) / 2;
        Before = [symbols.RadiusChange, .. symbols.SideSteps, symbols.HeadSlope, symbols.FootSlope, slant, sloped, .. lines, slopeTangent, .. tilts];
        double nearTilt = RuledBasin.Slant(basin.NearRun, basin.Depth) * RuledBasin.Slope(basin.NearRun, basin.Depth);
        double farTilt = RuledBasin.Slant(basin.FarRun, basin.Depth) * RuledBasin.Slope(basin.FarRun, basin.Depth);
        double sideSlope = (nearTilt + farTilt) / (RuledBasin.Slant(basin.NearRun, basin.Depth) + RuledBasin.Slant(basin.FarRun, basin.Depth));
        Patches =
        [
            new(Area("floor inside the sharp floor line", "A_f", symbols.FloorArea(), basin.FloorArea), FixtureZoneKind.Floor, 0, openings: drain),
            new(sides, FixtureZoneKind.Wall, sideSlope, symbols.SideTilt(sides) / sides.Result()),
            new(Area("head wall", "S_head", symbols.End(symbols.HeadRun), basin.Head), FixtureZoneKind.Wall, RuledBasin.Slope(basin.HeadRun, basin.Depth), symbols.HeadSlope.Result()),
            new(Area("foot wall", "S_foot", symbols.End(symbols.FootRun), basin.Foot), FixtureZoneKind.Wall, RuledBasin.Slope(basin.FootRun, basin.Depth), symbols.FootSlope.Result(), openings: basin.Foot == 0 ? 0 : overflow),
            new(Area("four corners", "S_corner", (symbols.RimRadius + symbols.FloorRadius) * slant.Result(), basin.Corners), FixtureZoneKind.Wall, basin.CornerSlopedSlant / basin.CornerSlant, sloped.Result() / slant.Result(), RuledBasin.CornerError, 1, basin.Foot == 0 ? overflow : 0),
            new(Area("floor's half of the cove's change", "A_cove1", change, half), FixtureZoneKind.Floor, basin.FloorTilt / half, symbols.Radius * tilts[1].Result() / 8 / change, RuledBasin.CornerError),
            new(
                Area("wall's half of the cove's change", "A_cove2", change, half),
                FixtureZoneKind.Wall,
                basin.Cove * ((3 * basin.LineSlopeSquared / 8) - basin.LineSlopeTangent) / half,
                symbols.Radius * ((3 * tilts[1].Result() / 8) - tilts[2].Result()) / change,
                RuledBasin.CornerError),
        ];
    }

    public WorkingStep[] Before { get; }

    public List<SurfacePatch> Patches { get; }

    private static WorkingStep Area(string name, string symbol, Expression formula, double value) =>
        new(name, symbol, formula, value, Measure.Area, RuledBasinExpressions.Loft);
}
