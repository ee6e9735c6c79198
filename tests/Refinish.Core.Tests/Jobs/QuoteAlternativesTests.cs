using System;
using System.Linq;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>Alternatives of one job, priced side by side.</summary>
public class QuoteAlternativesTests
{
    private static Job Job => InventedJobs.Rental() with { Fixtures = [.. InventedJobs.Rental().Fixtures.Skip(1)] };

    private static JobAlternative Nothing { get; } = new() { Id = "nothing" };

    private static JobAlternative Without { get; } = new() { Id = "without", Name = "without the vessel", LeftOut = ["vessel"] };

    private static JobAlternative Trimmed { get; } = new() { Id = "trimmed", Fixtures = [Job.Fixtures[1] with { Options = [FixtureOption.DrainTrim("drain-trim")] }] };

    [Fact]
    [Evidence(Basis.Identity, "an alternative that changes nothing, or names a fixture as it is, costs exactly the same, item by item")]
    public void Nothing_changed_is_nothing_changed()
    {
        Job job = Job with { Alternatives = [Nothing, new JobAlternative { Id = "same", Fixtures = [.. Job.Fixtures.Reverse()] }] };
        QuoteAlternatives both = new(job.Plan());
        Assert.Equal(job.Plan().Price, (job with { Alternatives = [] }).Plan().Price);
        foreach (AlternativePlan one in both.Alternatives)
        {
            Assert.Equal((0m, 0m, 0, 0), (one.TotalDifference!.Value, one.NetDifference!.Value, one.DaysDifference!.Value, one.Changes!.Trips!.Value));
            Assert.Equal(both.Quote!.Items.Select(item => (item.Id, item.Price, item.WithTax)), one.Quote!.Items.Select(item => (item.Id, item.Price, item.WithTax)));
            Assert.Empty(one.Changes!.Changes);
        }
    }

    [Fact]
    [Evidence(Basis.Identity, "a difference is the alternative's amount less the job's, and item by item it adds up; the job without the fixture costs as much as planned alone")]
    public void A_fixture_less()
    {
        AlternativePlan without = new QuoteAlternatives((Job with { Alternatives = [Without] }).Plan()).TryFind("without")!;
        JobPlan alone = (Job with { Fixtures = [Job.Fixtures[0]] }).Plan();
        Assert.Equal(alone.Price!.Total, without.Total);
        Assert.Equal(alone.Price.Total - Job.Plan().Price!.Total, without.TotalDifference);
        Assert.True(without.TotalDifference < 0);
        PlanChange[] items = [.. without.Changes!.For(LineReader.Customer).Changes.Where(change => change.Subject == ChangeSubject.Fixture)];
        Assert.Equal([("fixture/counter", ChangeKind.Changed), ("fixture/vessel", ChangeKind.Removed)], items.Select(change => (change.Key, change.Kind)));
        Assert.Equal(without.TotalDifference, without.Changes.For(LineReader.Customer).Changes.Sum(change => change.Price));
        Assert.Equal(-without.Quoted.Quote!.Items.Single(item => item.Id == "fixture/vessel").Price, items[1].Price);
    }

    [Fact]
    [Evidence(Basis.Identity, "an alternative does not depend on the others or on their order, and turning job and alternative round turns the sign")]
    public void Order_and_direction()
    {
        QuoteAlternatives one = new((Job with { Alternatives = [Without, Trimmed] }).Plan());
        QuoteAlternatives other = new((Job with { Alternatives = [Trimmed, Without] }).Plan());
        foreach (string id in (string[])["without", "trimmed"])
        {
            Assert.Equal(one.TryFind(id)!.Total, other.TryFind(id)!.Total);
            Assert.Equal(one.TryFind(id)!.TotalDifference, other.TryFind(id)!.TotalDifference);
        }

        Job turned = Trimmed.Of(Job) with { Alternatives = [new JobAlternative { Id = "back", Fixtures = [Job.Fixtures[1]] }] };
        AlternativePlan back = new QuoteAlternatives(turned.Plan()).Alternatives[0];
        Assert.Equal(-one.TryFind("trimmed")!.TotalDifference, back.TotalDifference);
    }

    [Fact]
    [Evidence(Basis.Contract, "lines of a fixture that is not touched keep their keys; the option of the alternative has its own")]
    public void Fixtures_not_touched_keep_their_lines()
    {
        AlternativePlan trimmed = new QuoteAlternatives((Job with { Alternatives = [Trimmed] }).Plan()).Alternatives[0];
        string[] Counter(JobPlan plan) => [.. plan.Price!.Lines.Where(line => line.Fixture == "counter").Select(line => line.Id)];
        Assert.NotEmpty(Counter(trimmed.Quoted));
        Assert.Equal(Counter(trimmed.Quoted), Counter(trimmed.Plan!));
        Assert.Equal(["option/drain-trim/vessel"], trimmed.Quote!.Items.Select(item => item.Id).Except(trimmed.Quoted.Quote!.Items.Select(item => item.Id)));
        Assert.Contains("trimmed: ", trimmed.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "an alternative that does not fit the job is an objection of the plan and has no plan of its own; one that cannot be done carries its objections")]
    public void Alternatives_that_cannot_be()
    {
        JobAlternative strange = new() { Id = "strange", LeftOut = ["bidet"] };
        JobAlternative empty = new() { Id = "empty", LeftOut = ["counter", "vessel"] };
        JobAlternative twice = new() { Id = "twice", LeftOut = ["vessel"], Fixtures = [Job.Fixtures[1]] };
        JobPlan plan = (Job with { Alternatives = [strange, empty, twice] }).Plan();
        Assert.Equal(["Input/strange/alternative/bidet", "Input/empty/alternative", "Input/twice/alternative/vessel"], plan.Objections.Select(objection => objection.Id));
        QuoteAlternatives all = new(plan);
        Assert.All(all.Alternatives, one => Assert.Equal((null, null), (one.Plan, one.Changes)));
        Assert.Equal(plan.Objections.Select(objection => objection.Id), all.Alternatives.SelectMany(one => one.Objections).Select(objection => objection.Id));
        Assert.Throws<ArgumentException>(() => strange.Of(Job));
        Assert.Null(all.TryFind("nobody"));
        JobAlternative slow = new() { Id = "grains", Fixtures = [Job.Fixtures[1] with { Options = [FixtureOption.Work("unknown-option", new Refinish.Jobs.Operation { Id = "own", Kind = WorkKind.Other, Instruction = "work", Time = TimeSpan.FromHours(1) }, WorkKind.Inspect)] }] };
        AlternativePlan unpriced = new QuoteAlternatives((Job with { Alternatives = [slow] }).Plan()).Alternatives[0];
        Assert.Null(unpriced.Total);
        Assert.Null(unpriced.TotalDifference);
        Assert.Null(unpriced.Changes!.Total);
        Assert.Contains(unpriced.Objections, objection => objection.Kind == ObjectionKind.Price);
        Assert.NotNull(unpriced.Quoted.Quote);
        Assert.Throws<ArgumentException>(() => _ = Job with { Alternatives = [Nothing, Nothing] });
        Assert.Throws<ArgumentException>(() => _ = new JobAlternative { Id = "a", LeftOut = ["vessel", "vessel"] });
        Assert.Throws<ArgumentException>(() => _ = new JobAlternative { Id = "a/b" });
    }
}
