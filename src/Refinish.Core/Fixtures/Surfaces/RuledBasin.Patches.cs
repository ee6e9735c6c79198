using System;

namespace Refinish.Fixtures;

/// <content>The patches with the steps they rest on: floor, sides, ends, corners, and what the cove changes.</content>
internal readonly partial record struct RuledBasin
{
    /// <summary>The runs and slopes of the walls.</summary>
    public Func<Trace, Num>[] RunsAndSlopes => [Growth, SideRun, Near, Far, NearSlope, FarSlope, HeadSlope, FootSlope];

    /// <summary>What the patches rest on.</summary>
    public Func<Trace, Num>[] Lines =>
    [
        .. RunsAndSlopes, CornerSlant, CornerSlopedSlant, LineSlope, LineTangent, CornerSlopeTangent, LineSlopeSquared, LineSlopeTangent,
    ];

    /// <summary>Both side walls between the corners.</summary>
    public Num SideWalls(Trace? t = null) => t.Step("both side walls", "S_side", Measure.Area, Loft, Sides(t));

    /// <summary>The backrest between the corners.</summary>
    public Num HeadWall(Trace? t = null) => t.Step("head wall", "S_head", Measure.Area, Loft, Head(t));

    /// <summary>The drain end between the corners.</summary>
    public Num FootWall(Trace? t = null) => t.Step("foot wall", "S_foot", Measure.Area, Loft, Foot(t));

    /// <summary>All four corners.</summary>
    public Num CornerWalls(Trace? t = null) => t.Step("four corners", "S_corner", Measure.Area, Loft, BothRadii(t) * CornerSlant(t));

    /// <summary>Area times slope over the corners.</summary>
    public Num CornerTilt(Trace? t = null) => BothRadii(t) * CornerSlopedSlant(t);

    /// <summary>The walls; an overflow is in the foot wall, in a corner where the foot is round.</summary>
    public SurfacePatch[] WallPatches(double overflow)
    {
        RuledBasin basin = this;
        bool isRound = Foot().Value == 0;
        return
        [
            new(SideWalls, FixtureZoneKind.Wall, (t, sides) => basin.SideTilt(sides, t) / sides),
            new(HeadWall, FixtureZoneKind.Wall, (t, _) => basin.HeadSlope(t)),
            new(FootWall, FixtureZoneKind.Wall, (t, _) => basin.FootSlope(t), openings: isRound ? 0 : overflow),
            new(
                CornerWalls, FixtureZoneKind.Wall, (t, _) => basin.CornerSlopedSlant(t) / basin.CornerSlant(t), CornerError,
                openings: isRound ? overflow : 0),
        ];
    }

    /// <summary>Floor, walls, and what the cove changes, half of it on the floor and half on the walls.</summary>
    public SurfacePatch[] Patches(double drain, double overflow)
    {
        RuledBasin basin = this;
        double cove = CoveArea().Value / 2;
        return
        [
            new(
                t => t.Step("floor inside the sharp floor line", "A_f", Measure.Area, Loft, basin.FloorArea(t)), FixtureZoneKind.Floor,
                openings: drain),
            .. WallPatches(overflow),
            new(
                t => t.Step("floor's half of the cove's change", "A_cove1", Measure.Area, Loft, Half(t)), FixtureZoneKind.Floor,
                (t, _) => basin.FloorTilt(t) / Half(t), CornerError),
            new(
                t => t.Step("wall's half of the cove's change", "A_cove2", Measure.Area, Loft, Half(t)), FixtureZoneKind.Wall,
                (t, _) => basin.WallCoveTilt(t) / Half(t), CornerError),
        ];

        Num Half(Trace? t) => t is null ? cove : basin.CoveArea(t) / 2;
    }
}
