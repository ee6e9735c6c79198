using System;
using System.Linq;
using Refinish.Colours;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>Invented jobs in which one thing is changed; what may and what has to move follows from that one thing.</summary>
public class PlanChangesOfJobsTests
{
    private const string Tub = "$.fixtures[?@.id=='tub']";
    private static readonly Job House = InventedJobs.OccupiedHouse();
    private static readonly JobPlan Before = House.Plan();

    [Fact]
    [Evidence(Basis.Contract, "one chip less: less labour, though a chip that is left alone bears the whole of what is done once a visit")]
    public void A_chip_is_gone()
    {
        PlanChanges changes = With(tub => tub with { Survey = tub.Survey with { Defects = [.. tub.Survey.Defects.Skip(1)] } });
        Assert.Equal([(Tub + ".survey.defects", ChangeKind.Changed)], changes.Inputs.Select(input => (input.Path, input.Kind)));
        Assert.Contains(changes.Changes, change => change is { Subject: ChangeSubject.Labour, Time.Ticks: < 0, Cost: < 0, Place: "tub" });
        Assert.True(changes.Changes.Where(change => change.Subject == ChangeSubject.Labour).Sum(change => change.Cost) < 0);
        Assert.DoesNotContain(changes.Changes, change => change.Subject is ChangeSubject.Option or ChangeSubject.Fixture or ChangeSubject.LabourRate);
        Assert.Contains("fixtures[?@.id=='tub'].survey.defects: changed.", changes.Sentences(DisplayUnits.Si));
    }

    [Fact]
    [Evidence(Basis.Contract, "a wage 10 % higher moves rates and no hours: every labour line is in changes of rates, and kits stay")]
    public void A_wage_rises()
    {
        decimal wage = House.Shop.Prices.LabourRate!.Value;
        PlanChanges changes = To(House with { Shop = House.Shop with { Prices = House.Shop.Prices with { LabourRate = wage * 1.1m } } });
        Assert.Equal(["$.shop.prices.labourRate"], changes.Inputs.Select(input => input.Path));
        PlanChange rate = Assert.Single(changes.Changes, change => change.Subject == ChangeSubject.LabourRate);
        Assert.Equal(Before.Price!.Lines.Count(line => line.Category == LineCategory.Labour), rate.Lines.Count);

        // 30 % of burden on wages of 26 and 28.60: 33.80 and 37.18.
        Assert.Equal((33.80m, 37.18m), (rate.RateBefore, rate.RateAfter));
        Assert.Equal(TimeSpan.Zero, rate.Time);
        Assert.DoesNotContain(changes.Changes, change => change.Subject is ChangeSubject.Material or ChangeSubject.Labour or ChangeSubject.Visits);
    }

    [Fact]
    [Evidence(Basis.Contract, "an option with a fixed price of 85 that is declined takes 85 off, and the grains' hours with it")]
    public void An_option_is_declined()
    {
        PlanChanges changes = With(tub => tub with { Options = [.. tub.Options.Where(option => option.Code != "slip-floor")] });
        Assert.Equal([(Tub + ".options[?@.code=='slip-floor']", ChangeKind.Removed)], changes.Inputs.Select(input => (input.Path, input.Kind)));
        PlanChange option = Assert.Single(changes.Changes, change => change.Subject == ChangeSubject.Option);
        Assert.Equal(("option/slip-floor/tub", ChangeKind.Removed, -85m, -31m), (option.Key, option.Kind, option.Price, option.Cost));
    }

    [Fact]
    [Evidence(Basis.Contract, "another colour and another start are inputs with their places; a start two days later moves dates once")]
    public void A_colour_and_a_start_change()
    {
        PlanChanges colour = With(tub => tub with { NewColour = new CieLab(94, -0.5, 2) });
        Assert.Equal([(Tub + ".newColour", ChangeKind.Added)], colour.Inputs.Select(input => (input.Path, input.Kind)));
        PlanChanges start = To(House with { Start = House.Start.AddDays(7) });
        Assert.Equal(["$.start"], start.Inputs.Select(input => input.Path));
        PlanChange later = Assert.Single(start.Changes);
        Assert.Equal((ChangeSubject.Start, TimeSpan.FromDays(7)), (later.Subject, later.Time));
        Assert.Equal(0, start.Total);
    }

    [Fact]
    [Evidence(Basis.Contract, "a hole stops the job: the price goes, the objection comes, and nothing is added up")]
    public void A_job_that_can_no_longer_be_done_says_so_first()
    {
        PlanChanges changes = With(tub => tub with { Survey = tub.Survey with { Defects = [new Perforation(Length.FromMillimeters(40))] } });
        Assert.Null(changes.Total);
        Assert.Equal((ChangeSubject.Price, ChangeKind.Removed), (changes.Changes[0].Subject, changes.Changes[0].Kind));
        Assert.Contains(changes.Changes, change => change is { Subject: ChangeSubject.Objection, Kind: ChangeKind.Added });
        Assert.Contains(changes.Changes, change => change is { Subject: ChangeSubject.Fixture, Kind: ChangeKind.Removed, About: "tub" });
    }

    [Fact]
    [Evidence(Basis.Contract, "what a customer reads tells no cost, no rate and no kit, and adds up all the same")]
    public void A_customer_reads_no_costs()
    {
        PlanChanges changes = With(tub => tub with { Options = [], Survey = tub.Survey with { Defects = [] } });
        PlanChanges seen = changes.For(LineReader.Customer);
        string all = string.Join(" ", seen.Sentences(DisplayUnits.UsCustomary));
        Assert.DoesNotContain("cost", all, StringComparison.Ordinal);
        Assert.DoesNotContain("kit", all, StringComparison.Ordinal);
        Assert.Equal(changes.Total, seen.Changes.Sum(change => change.Price));
        Assert.Equal((LineReader.Customer, 0, null, null), (seen.Reader, seen.Inputs.Count, seen.Cost, seen.Before.Cost));
        Assert.DoesNotContain(seen.Before.Lines, line => line.Category is not (LineCategory.Discount or LineCategory.Tax));
        Assert.Same(seen, seen.For(LineReader.Shop));
        Assert.Same(changes, changes.For(LineReader.Shop));
        Assert.Throws<ArgumentOutOfRangeException>(() => changes.For((LineReader)9));
    }

    private static PlanChanges With(Func<FixtureJob, FixtureJob> change) => To(House with { Fixtures = [change(House.Fixtures[0])] });

    private static PlanChanges To(Job after) => PlanChanges.Between(Before, after.Plan());
}
