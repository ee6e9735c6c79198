using System;
using System.Linq;
using Refinish.Air;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

public class OpeningTests
{
    [Fact]
    [Evidence(Basis.Independent, "by hand: 150 ft³/min at 500 ft/min needs 0.3 ft² = 43.2 in²; through 0.15 ft² it is 1000 ft/min")]
    public void Openings_follow_by_hand()
    {
        MakeUpOpening opening = new(VolumeFlow.FromCubicFeetPerMinute(150), Speed.FromFeetPerMinute(500), Area.FromSquareFeet(0.15));
        MakeUpOpening unmeasured = new(opening.Flow, opening.Speed);

        // The units library holds a cubic foot a minute to eleven figures only.
        Numbers.Close(0.3, opening.Needed.SquareFeet, 1e-10);
        Numbers.Close(1000, opening.GivenSpeed!.Value.FeetPerMinute, 1e-10);
        Assert.Equal(ComparisonOutcome.Beyond, opening.Comparison.Outcome);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, unmeasured.Comparison.Outcome);
        Assert.Equal(ComparisonOutcome.Within, new MakeUpOpening(opening.Flow, opening.Speed, Area.FromSquareFeet(0.4)).Comparison.Outcome);
        Assert.Null(unmeasured.GivenSpeed);
        Assert.Contains(Cautions.MakeUpAir, opening.Cautions);
        Numbers.CanBeWritten(opening.Workings());
        Numbers.CanBeWritten(unmeasured.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: an 8-inch duct has π/9 ft²; 150 ft³/min are 429.7 ft/min in it, and 1146 ft/min in an 4.9-inch one")]
    public void Ducts_follow_by_hand()
    {
        ExhaustDuct duct = new(VolumeFlow.FromCubicFeetPerMinute(150), Length.FromInches(8));
        Numbers.Close(Math.PI / 9, duct.Section.SquareFeet, 1e-10);
        Numbers.Close(150 / (Math.PI / 9), duct.Speed.FeetPerMinute, 1e-10);
        Assert.Equal([ComparisonOutcome.Beyond, ComparisonOutcome.Within], duct.Comparisons.Select(comparison => comparison.Outcome));
        ExhaustDuct narrower = new(VolumeFlow.FromCubicFeetPerMinute(150), Length.FromInches(4.9));
        Assert.Equal([ComparisonOutcome.Within, ComparisonOutcome.Within], narrower.Comparisons.Select(comparison => comparison.Outcome));
        Numbers.CanBeWritten(duct.Workings());
    }

    [Fact]
    [Evidence(Basis.Cited, "New York City Mechanical Code 502.7.3.3.2: at least 100 ft/min in an occupied spray room; printed there as 0.51 m/s")]
    public void The_spray_room_speed_is_the_codes()
    {
        Numbers.Near(0.51, AirSpeedGuide.OccupiedSprayRoom.Least!.Value.MetersPerSecond, 0.005);
        Assert.Equal(ComparisonOutcome.Beyond, AirSpeedGuide.OccupiedSprayRoom.Compare(Speed.FromFeetPerMinute(30)).Single().Outcome);
        Assert.Equal(Standing.Seen, AirSpeedGuide.OccupiedSprayRoom.Standing);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, new AirSpeedGuide("nothing", null, null, Standing.Supplied, Source.Invented("test")).Compare(Speed.FromFeetPerMinute(30)).Single().Outcome);
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings; texts")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("flow", () => _ = new MakeUpOpening(VolumeFlow.Zero, Speed.FromMetersPerSecond(2)));
        Numbers.Refuses("speed", () => _ = new MakeUpOpening(VolumeFlow.FromCubicMetersPerSecond(1), Speed.FromMetersPerSecond(0)));
        Numbers.Refuses("given", () => _ = new MakeUpOpening(VolumeFlow.FromCubicMetersPerSecond(1), Speed.FromMetersPerSecond(2), Area.Zero));
        Numbers.Refuses("diameter", () => _ = new ExhaustDuct(VolumeFlow.FromCubicMetersPerSecond(1), Length.FromMillimeters(10)));
        Numbers.Refuses("speed", () => AirSpeedGuide.VapourDuct.Compare(Speed.FromMetersPerSecond(-1)));
        Numbers.Refuses("least", () => _ = new AirSpeedGuide("x", Speed.FromMetersPerSecond(60), null, Standing.Supplied, Source.Invented("test")));
        Assert.Equal("vapour in an exhaust duct: 5.08 m/s to 10.16 m/s", AirSpeedGuide.VapourDuct.ToString());
    }
}
