using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>What a shop brings reaches the plan: one job with one thing of its own at every place where it can bring one.</summary>
public class BroughtJobTests
{
    private static readonly JobPlan Plan = BroughtJob.Job().Plan();

    [Fact]
    [Evidence(Basis.Contract, "nothing of one's own stands in the way, and the whole is priced")]
    public void The_job_is_planned_and_priced()
    {
        Assert.Empty(Plan.Objections);
        Assert.NotNull(Plan.Price);
        Assert.Equal(Plan.Price!.Lines.Sum(line => line.Price), Plan.Price.Total);
    }

    [Fact]
    [Evidence(Basis.Contract, "the parts of a product by the identity of their cans, in every coat of it, bought in its kits")]
    public void The_product_is_mixed_from_its_parts()
    {
        CoatRun run = Plan.Work!.Runs.First(one => one.Layer.Product.Id == "three-part-topcoat");
        Assert.Equal(
            ["three-part-resin", "three-part-hardener", "three-part-flexibiliser", "urethane-reducer"],
            run.Mixes[0].Parts.Select(part => part.Component.Id));
        Assert.Contains(Plan.Price!.Lines, line => line.Id.Contains("three-part-topcoat"));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 0.54 + 0.42 + 0.04 m² of zones; what looks down may drip and is worked on overhead")]
    public void The_fixtures_are_coated_zone_by_zone()
    {
        Procedure bench = Plan.Procedures.Single(one => one.Fixture.Id == "bench");
        Numbers.Close(1.0, bench.CoatedArea.SquareMeters, 1e-12);
        Assert.Contains(Plan.Conditions, condition => condition.Id.EndsWith("/drip", System.StringComparison.Ordinal));
        Assert.Contains(Plan.Cautions, caution => caution.Caution == Cautions.OverheadWork);
        Procedure sink = Plan.Procedures.Single(one => one.Fixture.Id == "sink");
        Numbers.Close(sink.Fixture.Fixture.Zones.Sum(zone => zone.Area.SquareMeters), sink.CoatedArea.SquareMeters, 1e-12);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: three inlays of 0.3 h are 0.9 h, and three hollows of 4 mL are 12 mL of cured filler")]
    public void The_material_defect_and_rule_of_the_survey_count()
    {
        Procedure bench = Plan.Procedures.Single(one => one.Fixture.Id == "bench");
        Refinish.Jobs.Operation mend = bench.Operations.Single(one => one.Id == "bench/defect/loose-inlay");
        Numbers.Close(0.9, mend.Time?.TotalHours ?? mend.Labour.Sum(task => task.Hours.Mean), 1e-9);
        Assert.Contains(bench.Verdict.Reasons, reason => reason.RuleCode == "own-1");
        Assert.Contains(Plan.Conditions, condition => condition.Id.Contains("bonds-like"));
    }

    [Fact]
    [Evidence(Basis.Contract, "every comparison with a limit of one's own says whose it is")]
    public void The_limits_are_the_shops_own()
    {
        RoomAirPlan air = Assert.Single(Plan.Air);
        Assert.Equal("our insurer (invented) (our policy; 2027-01-15)", air.Study!.FlammableLimit.Whose);
        Numbers.Close(0.2, air.Study.FlammableLimit.Limit!.Value.Si, 1e-12);
        Assert.All(Plan.Voc.Values, voc => Assert.Contains("our house", voc.Whose, System.StringComparison.Ordinal));
        Assert.NotEmpty(Plan.Noise);
        Assert.All(Plan.Noise.SelectMany(day => day.Doses), dose => Assert.Equal("our noise rule (invented)", dose.Limit.Authority));
    }

    [Fact]
    [Evidence(Basis.Contract, "an operation of one's own has its place and its time in the schedule")]
    public void The_operation_is_scheduled()
    {
        ScheduledOperation own = Plan.Schedule!.Operations.Single(one => one.Operation.Id == "photographs");
        Numbers.Close(12, (own.End - own.Start).TotalMinutes, 1e-9);
    }
}
