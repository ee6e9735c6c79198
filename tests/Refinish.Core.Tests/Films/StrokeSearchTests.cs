using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Films;

public class StrokeSearchTests
{
    private static readonly StrokeSearch Search = new()
    {
        Gun = SprayScene.Gun,
        Pattern = SprayScene.Patterns[2],
        Hand = SprayScene.Hand,
        SlowestSpeed = Speed.FromCentimetersPerSecond(8),
        FastestSpeed = Speed.FromCentimetersPerSecond(120),
        LongestEdge = Length.FromMillimeters(60),
        Overlaps = [Ratio.FromPercent(50)],
    };

    [Fact]
    [Evidence(Basis.Identity, "the proposal's own map keeps the promise: no triangle under the minimum, no speed outside the range, the volume of its sides")]
    public void The_minimum_is_met_on_every_triangle()
    {
        StrokeProposal proposal = Search.Propose(SprayScene.Tub.Tessellate(Length.FromMillimeters(20)), SprayScene.Limits);
        Assert.Empty(proposal.Shortfalls);
        Assert.Equal(0, proposal.Map!.Whole.UnderMinimum.DecimalFractions);
        Assert.True(proposal.Map.Whole.Minimum.Micrometers is >= 60 and < 60.01);
        Assert.All(proposal.Sides, side => Assert.InRange(side.Speed.CentimetersPerSecond, 8 - 1e-9, 120 + 1e-9));
        Numbers.Close(proposal.Plan!.SprayedVolume.CubicMeters, proposal.Sides.Sum(side => side.Sprayed.CubicMeters), 1e-9);
        Assert.Equal(4, proposal.Tried.Count);
    }

    [Fact]
    [Evidence(Basis.Identity, "optimum: any one side sprayed a thousandth faster leaves something under the minimum, unless it already runs at the fastest speed")]
    public void No_side_can_be_sprayed_less()
    {
        StrokeProposal proposal = Search.Propose(SprayScene.Tub.Tessellate(Length.FromMillimeters(20)), SprayScene.Limits);
        int first = 0;
        foreach (StrokeSide side in proposal.Sides)
        {
            if (side.Speed.CentimetersPerSecond < 120 - 1e-6)
            {
                int from = first;
                StrokePlan less = new(Search.Gun, Search.Pattern, proposal.Plan!.Strokes.Select((stroke, i) =>
                    i >= from && i < from + side.Strokes ? stroke with { Speed = stroke.Speed * 1.001 } : stroke));
                Assert.True(less.SprayOnto(proposal.Map!.Mesh, Length.FromMillimeters(60), SprayScene.Limits).Whole.UnderMinimum.DecimalFractions > 0, side.ToString());
            }

            first += side.Strokes;
        }
    }

    [Fact]
    [Evidence(Basis.Identity, "what is given up is within the tolerance and saves coating; more minimum takes more coating")]
    public void Tolerance_saves_and_minimum_costs()
    {
        TriangleMesh tub = SprayScene.Tub.Tessellate(Length.FromMillimeters(20));
        StrokeProposal strict = Search.Propose(tub, SprayScene.Limits);
        StrokeProposal eased = (Search with { ToleratedUnder = Ratio.FromPercent(3) }).Propose(tub, SprayScene.Limits);
        StrokeProposal thick = Search.Propose(tub, new SprayFilmLimits(Length.FromMicrometers(70), Length.FromMicrometers(130)));
        Assert.InRange(eased.Map!.Whole.UnderMinimum.DecimalFractions, 1e-6, 0.03);
        Assert.NotEmpty(eased.Shortfalls);
        Assert.True(eased.Plan!.SprayedVolume < strict.Plan!.SprayedVolume);
        Assert.True(thick.Plan!.SprayedVolume > strict.Plan.SprayedVolume);
    }

    [Fact]
    [Evidence(Basis.Contract, "a panel under a lid 30 mm above it cannot be reached, and a fast gun cannot lay a thick film: both are said, with zone and reason")]
    public void It_says_where_it_cannot()
    {
        TriangleMesh shaded = SprayScene.Together(SprayScene.Panel(0, 0, 1, 0.5), SprayScene.Panel(0.3, -0.5, 0.7, 1, 0.03));
        StrokeProposal proposal = Search.Propose(shaded, SprayScene.Limits);
        StrokeShortfall dark = Assert.Single(proposal.Shortfalls);
        Assert.Contains("no stroke reaches it", dark.Reason, StringComparison.Ordinal);
        Assert.InRange(dark.Area.SquareMeters, 0.12, 0.21);
        Assert.Equal(FixtureZoneKind.Top, dark.Zone);

        StrokeProposal hasty = (Search with { SlowestSpeed = Speed.FromCentimetersPerSecond(110) }).Propose(SprayScene.Panel(0, 0, 1, 0.5), SprayScene.Limits);
        Assert.Contains(hasty.Shortfalls, place => place.Reason.Contains("slowest speed", StringComparison.Ordinal));
        Assert.Contains("missed on", hasty.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings, cancellation, text")]
    public void Refuses_what_cannot_be()
    {
        TriangleMesh panel = SprayScene.Panel(0, 0, 1, 0.5);
        Numbers.Refuses("FastestSpeed", () => (Search with { FastestSpeed = Speed.FromCentimetersPerSecond(5) }).Propose(panel, SprayScene.Limits));
        Numbers.Refuses("Overlaps", () => (Search with { Overlaps = [Ratio.FromPercent(95)] }).Propose(panel, SprayScene.Limits));
        Numbers.Refuses("ToleratedUnder", () => _ = Search with { ToleratedUnder = Ratio.FromPercent(30) });
        Numbers.Refuses("LongestEdge", () => _ = Search with { LongestEdge = Length.Zero });
        Assert.Throws<ArgumentNullException>(() => Search.Propose(panel, null!));
        using CancellationTokenSource stop = new();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => Search.Propose(panel, SprayScene.Limits, null, stop.Token));
    }
}
