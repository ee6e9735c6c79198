using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Estimating;

public class TargetPriceTests
{
    private static readonly Currency Usd = Currency.Of("USD");

    private static PriceBook Book(double margin) => new()
    {
        Currency = Currency.Of("USD"),
        LabourRate = 30m,
        Burden = Ratio.FromPercent(22),
        TravelPerTrip = 25m,
        DisposalPerJob = 10m,
        ConsumablesPerFixture = 35m,
        Options =
        [
            new() { Code = "X-10", Description = "slip-resistant floor", Unit = LineUnit.Each, Cost = 6m, Price = 75m, Cautions = [Cautions.SlipGrains] },
            new() { Code = "X-20", Description = "colour change", Unit = LineUnit.Fixture, Cost = 40m },
            new() { Code = "X-40", Description = "strip an old coat", Unit = LineUnit.Fixture, Cost = 90m, Cautions = [Cautions.Strippers, Cautions.LeadUntested] },
            new() { Code = "X-30", Description = "new drain and overflow trim", Unit = LineUnit.Set, Cost = 18m },
            new() { Code = "X-50", Description = "renew hardware", Unit = LineUnit.Each, Cost = 12m },
        ],
        TargetMargin = new Margin(Ratio.FromPercent(margin)),
    };

    private static EstimateRequest Job(double discount, double hours, params string[] options) => new()
    {
        Labour = new LabourEstimate([new LabourTask { Standard = LabourStandards.SetUp with { PerUnit = ThreePoint.Exactly(hours) }, Units = 1 }]),
        Materials = [],
        Fixtures = 1,
        Options = [.. options.Select(code => new OptionOrder { Code = code })],
        Discount = Discount.Of(Ratio.FromPercent(discount)),
        HoldMargin = true,
    };

    [Fact]
    [Evidence(Basis.Independent, "by hand: 5 h at 36.60 = 183, + 35 + 25 + 10 + 6 = 259 cost; 45 % of the net price needs 259/.55 = 470.91; before 10 % discount 523.23, less 52.32")]
    public void A_margin_held_after_options_and_discount()
    {
        PriceEstimate estimate = new(Book(45), Job(10, 5, "X-10"));
        Assert.Equal(259m, estimate.Cost);
        Assert.Equal(470.91m, estimate.Net);
        Assert.Equal(523.23m, estimate.Subtotal);
        Assert.Equal(75m, estimate.Lines.Single(line => line.Code == "X-10").Price);
        Numbers.Near(0.45, estimate.RealisedMargin!.Value.DecimalFractions, 1e-5);
        Numbers.CanBeWritten(estimate.Workings());

        // Without holding it, discount and option eat into the margin: (253/.55 + 75) × .9 = 481.50 here, because the option earns more.
        PriceEstimate plain = new(Book(45), Job(10, 5, "X-10") with { HoldMargin = false });
        Assert.Equal(481.50m, plain.Net);
    }

    [Property]
    [Evidence(Basis.Identity, "the net price leaves the margin, one cent less would not; the lines add up; unless options at fixed price alone leave more")]
    public void The_target_is_hit_to_the_cent(PositiveInt a, PositiveInt b, PositiveInt c)
    {
        double margin = a.Get % 90;
        PriceEstimate estimate = new(Book(margin), Job(b.Get % 95, 1 + (c.Get % 1000 / 100.0), c.Get % 2 == 0 ? ["X-10", "X-20"] : ["X-30"]));
        decimal net = estimate.Net!.Value;
        decimal cost = estimate.Cost!.Value;
        decimal target = (decimal)margin / 100;
        Assert.True(net - cost >= target * net);
        if (estimate.Subtotal > 75m)
        {
            Assert.True(net - 0.01m - cost < target * (net - 0.01m));
        }

        Assert.Equal(estimate.Total, estimate.Lines.Sum(line => line.Price));
        Assert.Equal(net, estimate.Subtotal - Math.Round(estimate.Subtotal!.Value * (b.Get % 95) / 100, 2, MidpointRounding.AwayFromZero));
        Numbers.CanBeWritten(estimate.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "a discount of everything leaves no price; it is named and there is none")]
    public void Nothing_holds_a_margin_on_nothing()
    {
        PriceEstimate estimate = new(Book(45), Job(100, 5));
        Assert.False(estimate.IsComplete);
        Assert.Null(estimate.Total);
        Assert.Equal("discount", estimate.Gaps.Single().Code);
        Assert.Equal(0m, new PriceEstimate(Book(45), Job(100, 5) with { HoldMargin = false }).Net);
    }

    [Fact]
    [Evidence(Basis.Contract, "the options carry what can hurt: texture and slips, strippers and lead; nothing claims to be non-slip or safe")]
    public void Options_carry_cautions()
    {
        PriceEstimate estimate = new(Book(45), Job(0, 5, "X-10", "X-10", "X-40", "X-30"));
        Assert.Equal([Hazard.Slip, Hazard.Stripper, Hazard.Lead], estimate.Cautions.Select(caution => caution.Hazard));
        Assert.Equal(["X-10", "X-20", "X-40", "X-30", "X-50"], Book(0).Options.Select(option => option.Code));
        Assert.Empty(new PriceEstimate(Book(45), Job(0, 5, "X-20", "X-50")).Cautions);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: costs 300 + 100 + 200 shared; tub 400/600, sink 200/600 of 1000; three like rooms share 100 as 33.34, 33.33, 33.33")]
    public void A_price_by_fixture()
    {
        PriceByFixture two = new(1000m, [new FixtureCost("tub-1", "tub", 300m, 1), new FixtureCost("sink-1", "sink", 100m, 1)], 200m, Usd);
        Assert.Equal([666.67m, 333.33m], two.Parts.Select(part => part.Amount));
        Assert.Equal("tub: 666.67, sink: 333.33", two.ToString());
        PriceByFixture three = new(100m, [new FixtureCost("a", "a", 10m, 1), new FixtureCost("b", "b", 10m, 1), new FixtureCost("c", "c", 10m, 1)], 0m, Usd);
        Assert.Equal([33.34m, 33.33m, 33.33m], three.Parts.Select(part => part.Amount));
        PriceByFixture weighted = new(300m, [new FixtureCost("tub-1", "tub", 0m, 2.6), new FixtureCost("sink-1", "sink", 0m, 0.4)], 30m, Usd);
        Assert.Equal([260m, 40m], weighted.Parts.Select(part => part.Amount));
        Numbers.CanBeWritten(two.Workings());
        Numbers.CanBeWritten(weighted.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: without any cost 90 goes by weight, 2 to 1; without any weight 100 of own cost and 50 shared go equally, 75 to 75 of 150 at 300")]
    public void A_price_without_costs_or_weights()
    {
        PriceByFixture free = new(90m, [new FixtureCost("a", "a", 0m, 2), new FixtureCost("b", "b", 0m, 1)], 0m, Usd);
        Assert.Equal([60m, 30m], free.Parts.Select(part => part.Amount));
        PriceByFixture unweighed = new(300m, [new FixtureCost("a", "a", 50m, 0), new FixtureCost("b", "b", 50m, 0)], 50m, Usd);
        Assert.Equal([150m, 150m], unweighed.Parts.Select(part => part.Amount));
        Assert.Equal(["a", "b"], unweighed.Parts.Select(part => part.Id));
        Assert.Equal([0.5m, 0.5m], new PriceByFixture(1m, [new FixtureCost("a", "a", 0m, 0), new FixtureCost("b", "b", 0m, 0)], 0m, Usd).Parts.Select(part => part.Amount));
        Numbers.CanBeWritten(free.Workings());
        Numbers.CanBeWritten(unweighed.Workings());
    }

    [Property]
    [Evidence(Basis.Identity, "parts add up to the cent, none is off by more than a cent, and a dearer fixture never bears less")]
    public void Parts_add_up(PositiveInt a, PositiveInt b, PositiveInt c)
    {
        decimal price = (a.Get * 7919 % 500_000) / 100m;
        FixtureCost[] fixtures = [.. Enumerable.Range(1, 1 + (b.Get % 9)).Select(i => new FixtureCost("f" + i, "fixture", c.Get * i % 97, i))];
        PriceByFixture parts = new(price, fixtures, 50m, Usd);
        Assert.Equal(price, parts.Parts.Sum(part => part.Amount));
        double total = (double)(fixtures.Sum(fixture => fixture.OwnCost) + 50m);
        double weights = fixtures.Sum(fixture => fixture.Weight);
        foreach (FixturePrice part in parts.Parts)
        {
            Numbers.Near((double)price * ((double)part.Cost.OwnCost + (50 * part.Cost.Weight / weights)) / total, (double)part.Amount, 0.01);
        }

        FixtureCost[] dearer = [fixtures[0] with { }, .. fixtures.Skip(1)];
        dearer[0] = new FixtureCost("f1", "fixture", fixtures[0].OwnCost + 10, 1);
        Assert.True(new PriceByFixture(price, dearer, 50m, Usd).Parts[0].Amount >= parts.Parts[0].Amount - 0.01m);
        Numbers.CanBeWritten(parts.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings")]
    public void Refuses_what_cannot_be()
    {
        FixtureCost[] one = [new("tub-1", "tub", 10m, 1)];
        Numbers.Refuses("price", () => _ = new PriceByFixture(0.001m, one, 0m, Usd));
        Numbers.Refuses("ownCost", () => _ = new FixtureCost("tub-1", "tub", -1m, 1));
        Numbers.Refuses("weight", () => _ = new FixtureCost("tub-1", "tub", 1m, -1));
        Assert.Throws<ArgumentException>(() => new PriceByFixture(1m, [], 0m, Usd));
        Assert.Throws<ArgumentException>(() => new PriceByFixture(1m, [one[0], new FixtureCost("tub-1", "other tub", 1m, 1)], 0m, Usd));
        Assert.Equal(new PriceByFixture(1m, one, 0m, Usd), new PriceByFixture(1m, [.. one], 0m, Usd));
    }
}
