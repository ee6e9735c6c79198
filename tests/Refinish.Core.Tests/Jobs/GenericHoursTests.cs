using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>The generic hours, put to four usual jobs of the generic shop, against the ranges that the trade quotes to its customers.</summary>
public class GenericHoursTests
{
    // Hours with somebody of the shop on site, over all visits. Answers of the trade to "how long does it take", read on a dozen pages:
    // three to five, four to eight, five to six hours for a tub; six to nine for a tub with its walls; all without the short return for
    // caulk, up to an hour. For sinks and counters from memory: half a day. Common practice, no source behind it.
    [Theory]
    [InlineData("tub", 3, 9, 2)]
    [InlineData("tub and surround", 5, 12, 3)]
    [InlineData("sink", 2, 7, 2)]
    [InlineData("counter", 3, 9, 2)]
    [Evidence(Basis.Contract, "ranges that the trade quotes to customers (common practice, no source), a return for caulk included; they were set with the figures of the plan at hand")]
    public void Hours_and_visits_are_those_that_the_trade_quotes(string what, double least, double most, int visits)
    {
        JobPlan plan = Example(what).Plan();
        Assert.Empty(plan.Objections);
        Assert.InRange(OnSite(plan), least, most);
        Assert.InRange(plan.Schedule!.Trips, 1, visits);

        // The page on estimating prints the hours to a tenth.
        Assert.Contains(OnSite(plan).ToString("F1", System.Globalization.CultureInfo.InvariantCulture) + " | " + plan.Schedule.Trips, Printed(what), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Identity, "each operation is paid for its minutes on the clock, and so is each hour that is priced; travel is apart")]
    public void Priced_hours_are_paid_hours()
    {
        foreach (Job job in Enumerable.Range(0, 40).Select(RandomJobs.Tame).Concat([Example("tub"), Example("sink"), InventedJobs.ColdHouse()]))
        {
            if (job.Plan() is not { Costs: { } costs, Schedule: { } schedule })
            {
                continue;
            }

            double priced = costs.Request.Labour.Lines.Where(line => line.Task.Id != "travel").Sum(line => line.HourRange.Mean)
                + costs.Request.PaidTime.Sum(paid => paid.Time.TotalHours);
            Numbers.Close(schedule.Paid.Paid.TotalHours, priced, 1e-9);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "a coat that takes longer by the clock than by its standard is labour of its standard, under its own code")]
    public void A_coat_that_waits_for_mixing_keeps_its_code()
    {
        JobPlan plan = Example("sink").Plan();
        Assert.DoesNotContain(plan.Price!.Lines, line => line.Code.EndsWith("clock", StringComparison.Ordinal));
        decimal minutes = (decimal)plan.Schedule!.Runs.Where(run => run.Run.Id.Contains("topcoat")).Sum(run => (run.End - run.Start).TotalMinutes);
        Assert.InRange(plan.Price.Lines.Single(line => line.Item == "labour/L-51").Quantity - (minutes / 60), -0.005m, 0.005m);
    }

    [Fact]
    [Evidence(Basis.Contract, "set-up is done once a room; what is handled piece by piece takes a small sink more than its share of a tub's hours")]
    public void Small_fixtures_have_a_floor()
    {
        JobPlan alone = Example("sink").Plan();
        JobPlan both = (Example("tub") with { Fixtures = [.. Example("tub").Fixtures, .. Example("sink").Fixtures] }).Plan();
        Assert.Single(both.Operations, operation => operation.Kind == WorkKind.SetUp);
        double share = alone.CoatedArea.SquareMeters / Example("tub").Plan().CoatedArea.SquareMeters;
        foreach (LabourStandard standard in new[] { LabourStandards.Key, LabourStandards.Degrease, LabourStandards.SprayTopcoat })
        {
            LabourTask sink = new() { Standard = standard, Area = alone.CoatedArea, Units = 1, Times = 1 };
            LabourTask tub = new() { Standard = standard, Area = Example("tub").Plan().CoatedArea, Units = 1, Times = 1 };
            Assert.True(sink.Hours.Mean > tub.Hours.Mean * share * 1.5, standard.Code);
            Assert.True(sink.Hours.Mean < tub.Hours.Mean, standard.Code);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "grout that dries for a day holds up the wall that has it, and neither tub nor sink beside it")]
    public void Grout_holds_up_only_its_own_fixture()
    {
        Job job = Example("tub and surround");
        FixtureJob wall = job.Fixtures[1] with { Survey = job.Fixtures[1].Survey with { Defects = [new GroutFailure(Length.FromMeters(1.2))] } };
        JobPlan plan = (job with { Fixtures = [job.Fixtures[0], wall, .. Example("sink").Fixtures] }).Plan();
        Assert.Empty(plan.Objections);
        ScheduledOperation grout = plan.Schedule!.Operations.Single(operation => operation.Operation.Kind == WorkKind.Regrout);
        ScheduledOperation KeyOf(string fixture) => plan.Schedule.Operations.Single(operation =>
            operation.Operation.Kind == WorkKind.Key && operation.Operation.Fixtures.Contains(fixture));
        Assert.True(KeyOf("surround").Start >= grout.End + Shop.Generic.GroutWait);
        Assert.True(KeyOf("tub").Start < grout.End + Shop.Generic.GroutWait);
        Assert.True(KeyOf("sink").Start < grout.End + Shop.Generic.GroutWait);

        // Nothing on tub and sink follows the wait: it leads to the wall alone.
        Assert.All(plan.Work!.Lags.Where(lag => lag.Minimum >= Shop.Generic.GroutWait && lag.Before == grout.Operation.Id), lag =>
            Assert.Equal(["surround"], plan.Operations.Single(operation => operation.Id == lag.After).Fixtures));
        Assert.Equal(plan.Operations.Count, plan.Operations.Select(operation => operation.Id).Distinct().Count());
    }

    [Fact]
    [Evidence(Basis.Contract, "no standard is given that nothing would use")]
    public void What_would_not_be_used_is_refused()
    {
        LabourStandard own = LabourStandards.SprayTopcoat with { Code = "own" };
        Assert.Contains("own and L-51", Refused([own, .. LabourStandards.Generic]), StringComparison.Ordinal);
        Assert.Contains("code L-51", Refused([.. LabourStandards.Generic, LabourStandards.SprayTopcoat]), StringComparison.Ordinal);
        Assert.Contains("FromSize", Refused([own with { FromSize = Length.FromMillimeters(5) }]), StringComparison.Ordinal);
        Assert.Contains("neither", Refused([own with { Work = null }]), StringComparison.Ordinal);
        IReadOnlyList<LabourStandard> mine = LabourStandards.GenericWith(own);
        Assert.Equal(LabourStandards.Generic.Count, mine.Count);
        Assert.Same(own, LabourStandards.For(WorkKind.SprayTopcoat, mine));
    }

    [Fact]
    [Evidence(Basis.Contract, "time and labour of one operation that contradict each other are objected to; a longer time is paid by the standards")]
    public void Time_goes_before_labour_and_is_never_shorter()
    {
        LabourTask hour = new() { Standard = LabourStandards.Inspect with { Code = "own", Work = null, PerUnit = ThreePoint.Exactly(1) }, Units = 1 };
        JobPlan With(TimeSpan? time, int people) => (Example("tub") with
        {
            Changes =
            [
                OperationChange.Add(
                    new Refinish.Jobs.Operation { Id = "extra", Kind = WorkKind.Other, Room = "bath", Instruction = "do more", Time = time, Labour = [hour], People = people },
                    "bath/inspect"),
            ],
        }).Plan();
        Assert.Equal("Input/extra/time", Assert.Single(With(TimeSpan.FromMinutes(30), 1).Objections).Id);
        Assert.Equal("Input/extra/labour", Assert.Single(With(TimeSpan.FromHours(2), 0).Objections).Id);
        foreach ((TimeSpan? time, int people, double hours) in new (TimeSpan?, int, double)[] { (null, 1, 1), (TimeSpan.FromHours(2), 1, 2), (null, 2, 2) })
        {
            JobPlan plan = With(time, people);
            Assert.Empty(plan.Objections);
            Numbers.Close(hours, plan.Costs!.Request.Labour.Lines.Where(line => line.Code == "own").Sum(line => line.HourRange.Mean), 1e-9);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "a plan compares each product with a limit of volatile organic compounds, and names the limit's source")]
    public void The_plan_compares_volatile_organic_compounds()
    {
        JobPlan plan = Example("tub").Plan();
        Assert.Equal(["acrylic-urethane-topcoat", "epoxy-primer"], plan.Voc.Keys.OrderBy(id => id, StringComparer.Ordinal));
        Assert.All(plan.Voc.Values, comparison => Assert.Equal(ComparisonOutcome.Beyond, comparison.Outcome));
        Assert.All(plan.Voc.Values, comparison => Assert.Equal(SourceKind.FromMemory, comparison.Source.Kind));
        Job lawful = Example("tub") with { Shop = Shop.Generic with { System = GenericCatalogue.HighSolidsSystem, Limits = LimitSets.Default with { Voc = [VocLimits.SouthCoast1113] } } };
        JobPlan within = lawful.Plan();
        Assert.Empty(within.Objections);
        Assert.NotNull(within.Price?.Total);
        Assert.All(within.Voc.Values, comparison => Assert.Equal(ComparisonOutcome.Within, comparison.Outcome));
    }

    [Fact]
    [Evidence(Basis.Identity, "however fixtures, rooms and the price book are listed, the plan takes the same times and costs the same: random jobs, wages of their own included")]
    public void The_price_does_not_depend_on_the_order_of_input()
    {
        for (int seed = 0; seed < 60; seed++)
        {
            Job job = RandomJobs.Tame(seed);
            Assert.True(job.Plan().Price?.Total == JobRules.Turned(job).Plan().Price?.Total, "seed " + seed);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "one item that several fixtures take is one entry of their operation")]
    public void One_item_is_one_entry()
    {
        Job job = Example("tub and surround");
        Chip chip = new(Length.FromMillimeters(20), Length.FromMillimeters(1));
        JobPlan plan = (job with { Fixtures = [.. job.Fixtures.Select(fixture => fixture with { Survey = fixture.Survey with { Defects = [chip] } })] }).Plan();
        Refinish.Jobs.Operation fill = plan.Operations.Single(operation => operation.Kind == WorkKind.Fill);
        Assert.Single(fill.Materials);
        Numbers.Close(plan.Planned.Sum(procedure => procedure.Filler.Volume.Milliliters), fill.Materials[0].Amount.In(LineUnit.Millilitre), 1e-9);
    }

    private static string Printed(string what)
    {
        string start = what switch { "tub" => "| five-foot tub", "tub and surround" => "| tub and tiled", "sink" => "| vessel sink", _ => "| L-shaped counter" };
        return System.IO.File.ReadAllLines(System.IO.Path.Combine(House.ReadmeTests.Root(), "docs", "estimating.md")).Single(line => line.StartsWith(start, StringComparison.Ordinal));
    }

    internal static double OnSite(JobPlan plan) => plan.Schedule!.Visits.GroupBy(visit => visit.Arrives.Date)
        .Sum(day => (day.Max(visit => visit.Leaves) - day.Min(visit => visit.Arrives)).TotalHours);

    internal static Job Example(string what) => new()
    {
        Id = "example",
        Shop = Shop.Generic,
        Premises = new Premises { Id = "house", Rooms = [InventedJobs.Bath("bath", 23, 22)] },
        Start = new DateTimeOffset(2027, 3, 1, 8, 0, 0, TimeSpan.Zero),
        Fixtures = what switch
        {
            "tub" => [Entry("tub", InventedJobs.Tub, FixtureMaterial.EnamelledSteel)],
            "tub and surround" =>
                [Entry("tub", InventedJobs.Tub, FixtureMaterial.EnamelledSteel), Entry("surround", InventedJobs.Surround, FixtureMaterial.CeramicTile)],
            "sink" => [Entry("sink", InventedJobs.Vessel, FixtureMaterial.VitreousChina)],
            _ => [Entry("counter", InventedJobs.Counter, FixtureMaterial.Laminate)],
        },
    };

    private static FixtureJob Entry(string id, IFixture fixture, FixtureMaterial material) => new()
    {
        Id = id, Room = "bath", Fixture = fixture, Survey = new Survey { Material = material, Defects = [], YearBuilt = 1995 },
    };

    private static string Refused(IReadOnlyList<LabourStandard> labour) =>
        Assert.Throws<ArgumentException>(() => Shop.Generic with { Labour = labour }).Message;
}
