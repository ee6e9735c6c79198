using System;
using System.Linq;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Fixtures;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Jobs;

public class ComposedJobTests
{
    private static FixtureJob Entry(ComposedFixture fixture) => new()
    {
        Id = "one", Name = fixture.Description, Room = "bath", Fixture = fixture,
        Survey = new Survey { Material = fixture.Kind.Materials[0], Defects = [], YearBuilt = 1995 },
    };

    private static JobPlan Plan(FixtureJob entry) => (InventedJobs.OccupiedHouse() with { Fixtures = [entry] }).Plan();

    [Fact]
    [Evidence(Basis.Contract, "every kind is planned by a job: its area is coated, it is cleared of what it has and put back, its cautions are there")]
    public void Every_kind_is_planned()
    {
        foreach (ComposedFixture fixture in ComposedTapes.Every())
        {
            JobPlan plan = Plan(Entry(fixture));
            Procedure procedure = Assert.Single(plan.Procedures);
            Numbers.Close(fixture.CoatedArea.SquareMeters, procedure.CoatedArea.SquareMeters);
            Refinish.Jobs.Operation clear = procedure.Operations.Single(operation => operation.Kind == WorkKind.Clear);
            Assert.EndsWith(fixture.Kind.Clearing, clear.Instruction, StringComparison.Ordinal);
            Assert.Equal(fixture.Kind.PuttingBack, procedure.Operations.Single(operation => operation.Kind == WorkKind.Caulk).Instruction);
            Assert.All(fixture.Kind.Cautions, caution => Assert.Contains(caution, clear.Cautions));
            bool drain = fixture.Taken.Any(reading => reading.Name == "DrainDiameter" && reading.Value > 0);
            Assert.Equal(drain, clear.Instruction.Contains("drain trim", StringComparison.Ordinal));
            bool faucet = fixture.Taken.Any(reading => reading.Name == "FaucetHoleDiameter");
            Assert.Equal(faucet, clear.Instruction.Contains("faucet", StringComparison.Ordinal));
            Assert.DoesNotContain(plan.Objections, objection => objection.Kind == ObjectionKind.FixtureLeftOut);
            Assert.DoesNotContain(plan.Doubts, doubt => doubt.Kind is DoubtKind.Reading or DoubtKind.Unit or DoubtKind.Material);
        }
    }

    [Theory]
    [InlineData("toilet")]
    [InlineData("urinal")]
    [Evidence(Basis.Contract, "who asks for the flushed inside is refused with the reason, alone and beside other zones")]
    public void A_flushed_inside_is_refused_with_its_reason(string kind)
    {
        ComposedFixture fixture = ComposedTapes.Of(ComposedKind.Of(kind));
        string why = fixture.Kind.NotCoated.Single(surface => surface.Zone == FixtureZoneKind.Bowl).Reason;
        foreach (FixtureZoneKind[] zones in new FixtureZoneKind[][] { [FixtureZoneKind.Bowl],
            [FixtureZoneKind.Bowl, FixtureZoneKind.Outside] })
        {
            JobPlan plan = Plan(Entry(fixture) with { Zones = zones });
            Assert.Contains(plan.Objections, objection => objection.ToString().Contains(why, StringComparison.Ordinal));
        }

        Assert.DoesNotContain(Plan(Entry(fixture)).Objections, objection => objection.ToString().Contains(why, StringComparison.Ordinal));
    }

    [Fact]
    [Evidence(Basis.Contract, "a seat is a floor to whoever may slip on it: the new coat's slip is handed over; a sill without one brings none")]
    public void A_seat_brings_the_caution_about_slips()
    {
        FixtureJob seat = Entry(ComposedTapes.Of(ComposedKind.ShowerBaseWithSeat)) with { Zones = [FixtureZoneKind.Seat] };
        Assert.Contains(Plan(seat).Handover!.Cautions, caution => caution.Equals(Cautions.NewCoatSlip));
        Assert.DoesNotContain(
            Plan(Entry(ComposedTapes.Of(ComposedKind.WindowSill))).Handover!.Cautions, caution => caution.Equals(Cautions.NewCoatSlip));
    }
}
