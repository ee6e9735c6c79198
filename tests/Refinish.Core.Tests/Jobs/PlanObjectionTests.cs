using System;
using System.Linq;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Samples.BathroomJob;
using Refinish.Scheduling;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

public class PlanObjectionTests
{
    private static readonly Refinish.Jobs.BathroomJob Job = Scenario.Guesthouse();

    [Fact]
    [Evidence(Basis.Contract, "a cold, damp fixture is planned but held, with how far off and what helps")]
    public void A_cold_surface_is_held()
    {
        BathroomPlan plan = (Job with { Site = Job.Site with { Surface = Temperature.FromDegreesCelsius(13.2), Air = new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(60)) } }).Plan();
        Assert.False(plan.IsPossible);
        Assert.Contains(plan.Objections, objection => objection.ToString().Contains("above dew point", StringComparison.Ordinal) && objection.ToString().Contains("beyond", StringComparison.Ordinal));
        PlanObjection spread = plan.Objections.First(objection => objection.Comparison?.Subject == "surface above dew point");
        Assert.Equal(ObjectionKind.SprayWindow, spread.Kind);
        Assert.Contains("Δ°F beyond", spread.Sentence(DisplayUnits.UsCustomary), StringComparison.Ordinal);
        Assert.NotNull(plan.Price);
        Assert.Null(plan.Handover);
    }

    [Fact]
    [Evidence(Basis.Contract, "outside the product's temperatures there are no times, so there is no timeline, air or price")]
    public void A_product_without_times_has_no_timeline()
    {
        BathroomPlan plan = (Job with { Site = Job.Site with { Surface = Temperature.FromDegreesCelsius(10) } }).Plan();
        Assert.Contains(plan.Objections, objection => objection.ToString().StartsWith("two-part epoxy primer: lowest temperature for cure: 10 °C", StringComparison.Ordinal));
        Assert.Null(plan.Schedule);
        Assert.Null(plan.Air);
        Assert.Null(plan.Price);
        Assert.Null(plan.Handover);
        Numbers.HoldsToKernel(plan.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "a fixture that may not be refinished is left out by name, the others are planned")]
    public void An_unsuitable_fixture_is_left_out()
    {
        FixtureJob rusted = Job.Fixtures[0] with { Survey = Job.Fixtures[0].Survey with { Defects = [new Perforation(Length.FromMillimeters(12))] } };
        BathroomPlan plan = (Job with { Fixtures = [rusted, .. Job.Fixtures.Skip(1)] }).Plan();
        Assert.Contains(plan.Objections, objection => objection.ToString().StartsWith("bathtub is left out:", StringComparison.Ordinal));
        Numbers.Close(Job.Fixtures.Skip(1).Sum(fixture => fixture.Fixture.CoatedArea.SquareMeters), plan.CoatedArea.SquareMeters);
        Assert.NotNull(plan.Price);
    }

    [Fact]
    [Evidence(Basis.Contract, "polyolefin and the unknown get no plan at all")]
    public void Nothing_suitable_means_no_plan()
    {
        FixtureJob plastic = Job.Fixtures[0] with { Survey = new Survey { Material = FixtureMaterial.Polyolefin, Defects = [] } };
        BathroomPlan plan = (Job with { Fixtures = [plastic] }).Plan();
        Assert.False(plan.IsPossible);
        Assert.Empty(plan.Coats);
        Assert.Equal(0, plan.CoatedArea.SquareMeters);
        Assert.Null(plan.Reserve);
        Assert.NotEmpty(plan.Cautions);
    }

    [Fact]
    [Evidence(Basis.Contract, "a price that is missing is named, and there is no total")]
    public void A_missing_price_is_named()
    {
        PriceBook without = Job.Prices with { Materials = [.. Job.Prices.Materials.Where(price => price.Item != "epoxy filler")], LabourRate = null };
        BathroomPlan plan = (Job with { Prices = without }).Plan();
        Assert.Contains(plan.Objections, objection => objection.ToString().StartsWith("No price:", StringComparison.Ordinal) && objection.ToString().Contains("epoxy filler", StringComparison.Ordinal));
        Assert.Contains(plan.Objections, objection => objection.ToString().Contains("no labour rate", StringComparison.Ordinal));
        Assert.Null(plan.Price!.Total);
        Assert.Null(plan.Comparison);
    }

    [Fact]
    [Evidence(Basis.Contract, "a labour standard that is missing is named by its code")]
    public void A_missing_labour_standard_is_named()
    {
        BathroomPlan plan = (Job with { Labour = [.. LabourStandards.Generic.Where(standard => standard.Code != LabourStandards.Demask.Code)] }).Plan();
        Assert.Contains(plan.Objections, objection => objection.ToString() == "There is no labour standard L-60 (demask and clean up), so there is no price.");
        Assert.Null(plan.Price);
        Assert.Null(plan.Handover);
    }

    [Fact]
    [Evidence(Basis.Contract, "a shop's own list without a repair, or without travel, never makes the job cheaper: there is no price, and the filler still hardens")]
    public void A_missing_repair_standard_is_named_too()
    {
        BathroomPlan plan = (Job with { Labour = [.. LabourStandards.Generic.Where(standard => standard.Repairs is null && standard.Code != LabourStandards.Travel.Code)] }).Plan();
        Assert.Contains(plan.Objections, objection => objection.ToString() == "There is no labour standard for a chip of bathtub, so there is no price.");
        Assert.Contains(plan.Objections, objection => objection.ToString().Contains("L-01", StringComparison.Ordinal));
        Assert.Null(plan.Price);
        Assert.Contains(plan.Schedule!.Lags, lag => lag.Reason == "filler hard in 1 lift");
        BathroomPlan empty = (Job with { Labour = [] }).Plan();
        Assert.Null(empty.Price);
    }

    [Fact]
    [Evidence(Basis.Contract, "no exhaust: the vapour builds up beyond the flammable comparison and the plan says so")]
    public void Without_exhaust_the_vapour_is_beyond_its_limit()
    {
        BathroomPlan plan = (Job with { Site = Job.Site with { Exhaust = new Refinish.Air.Exhaust { LabelFlow = VolumeFlow.Zero } } }).Plan();
        Assert.False(plan.IsPossible);
        Assert.Equal(ComparisonOutcome.Beyond, plan.Air!.FlammableLimit.Outcome);
        Assert.Contains(plan.Objections, objection => objection.ToString().Contains("lower flammable limit", StringComparison.Ordinal));
        Numbers.HoldsToKernel(plan.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "mist and vapour beyond their limits are for protection to cover, and so is what cannot be judged for want of a fraction or a limit")]
    public void What_protection_has_to_cover_is_listed()
    {
        BathroomPlan known = Job.Plan();
        Assert.Equal(ComparisonOutcome.Beyond, known.Protection[0].Outcome);
        Assert.Contains(known.Protection, comparison => comparison.Subject.StartsWith("polyisocyanate mist", StringComparison.Ordinal));
        Assert.Contains(known.Protection, comparison => comparison.Subject.StartsWith("xylene", StringComparison.Ordinal));
        foreach (SiteConditions unknown in new[] { Job.Site with { AirborneFraction = null }, Job.Site with { IsocyanateLimit = null } })
        {
            BathroomPlan plan = (Job with { Site = unknown }).Plan();
            Assert.Contains(plan.Protection, comparison => comparison.Subject.StartsWith("polyisocyanate mist", StringComparison.Ordinal) && comparison.Outcome == ComparisonOutcome.CannotBeJudged);
            Assert.Contains(plan.Cautions, caution => caution.Hazard == Hazard.Isocyanate);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "one product in two layers is numbered through, and new grout dries before it is etched")]
    public void One_product_in_two_layers_and_new_grout_are_planned()
    {
        CoatingLayer topcoat = new(GenericCatalogue.AcrylicUrethaneTopcoat, Length.FromMicrometers(30), 2, Ratio.FromPercent(15));
        CoatingSystem system = new("two reductions", Job.System.Promoters, [Job.System.Layers[0], Job.System.Layers[1], topcoat], Source.Invented("for this test"));
        BathroomPlan plan = (Job with { System = system, Fixtures = [Job.Fixtures[2]] }).Plan();
        Assert.Equal("two-part acrylic urethane topcoat, coat 5", plan.Coats[^1].Name);
        ScheduledStep mend = plan.Schedule!.Steps.Single(step => step.Step.Name.StartsWith("mend", StringComparison.Ordinal));
        ScheduledStep etch = plan.Schedule.Steps.Single(step => step.Step.Name.StartsWith("etch", StringComparison.Ordinal));
        Assert.True(etch.Start - mend.End >= TimeSpan.FromHours(24));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: in air of 31 °C over a surface of 20 °C the 16 h window of 25 °C closes after 16 / 2^0.6 = 10.56 h, not after 22.6 h")]
    public void The_recoat_window_closes_where_it_is_warmest()
    {
        BathroomPlan plan = (Job with { Site = Job.Site with { Air = new MoistAir(Temperature.FromDegreesCelsius(31), Ratio.FromPercent(30)) } }).Plan();
        Numbers.Near(16 / Math.Pow(2, 0.6), plan.Coats[1].AtWarmest.RecoatCloses!.Value.TotalHours, 1e-6);
        Assert.All(
            plan.Schedule!.Lags.Where(lag => lag.Reason.StartsWith("recoat window of two-part acrylic", StringComparison.Ordinal)),
            lag => Assert.True(lag.Maximum < TimeSpan.FromHours(10.56)));
    }

    [Fact]
    [Evidence(Basis.Contract, "a cup below the smallest batch, a day too short and a promoter that closes too soon are named")]
    public void Impossible_work_is_named()
    {
        BathroomPlan cup = (Job with { Batches = new BatchRules { CupVolume = Volume.FromMilliliters(40) } }).Plan();
        Assert.Contains(cup.Objections, objection => objection.ToString().Contains("largest batch that cup and pot life allow is 40 mL", StringComparison.Ordinal));
        BathroomPlan day = (Job with { Hours = new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(8.4)) }).Plan();
        Assert.Contains(day.Objections, objection => objection.ToString().Contains("the working day has 0.4 h", StringComparison.Ordinal));
        CoatingSystem hasty = new(
            "hasty", [GenericCatalogue.SilanePromoter with { OpenTime = TimeSpan.FromMinutes(30) }], Job.System.Layers, Source.Invented("for this test"));
        Assert.Contains((Job with { System = hasty }).Plan().Objections, objection => objection.ToString().StartsWith("The promoter stays open for 30 min", StringComparison.Ordinal));
    }

    [Fact]
    [Evidence(Basis.Contract, "a recoat window that closes before the next coat could be on is named")]
    public void A_recoat_window_too_short_is_named()
    {
        CoatingProduct hasty = GenericCatalogue.EpoxyPrimer with { Cure = GenericCatalogue.EpoxyPrimer.Cure with { RecoatCloses = TimeSpan.FromMinutes(75) } };
        CoatingSystem system = new("hasty", Job.System.Promoters, [new CoatingLayer(hasty, Length.FromMicrometers(30), 1, Ratio.FromPercent(10)), Job.System.Layers[1]], Source.Invented("for this test"));
        BathroomPlan plan = (Job with { System = system }).Plan();
        Assert.Contains(plan.Objections, objection => objection.ToString().StartsWith("The recoat window of two-part epoxy primer is open from", StringComparison.Ordinal));
        Assert.Null(plan.Schedule);
    }

    [Fact]
    [Evidence(Basis.Contract, "a system that is not stated for the material leaves the fixture out")]
    public void A_system_has_to_suit_the_material()
    {
        CoatingProduct metalOnly = GenericCatalogue.EpoxyPrimer with { Materials = [FixtureMaterial.EnamelledCastIron] };
        CoatingSystem system = new(
            "for iron", Job.System.Promoters, [new CoatingLayer(metalOnly, Length.FromMicrometers(30), 1), Job.System.Layers[1]], Source.Invented("for this test"));
        BathroomPlan plan = (Job with { System = system }).Plan();
        Assert.Contains(plan.Objections, objection => objection.ToString() == "pedestal sink is left out: two-part epoxy primer is not stated for vitreous china.");
    }

    [Fact]
    [Evidence(Basis.Contract, "inputs that cannot be are refused where they are given")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("Residue", () => _ = Job with { Residue = Ratio.FromPercent(60) });
        Numbers.Refuses("Difficulty", () => _ = Job with { Difficulty = double.NaN });
        Numbers.Refuses("CaulkWait", () => _ = Job with { CaulkWait = TimeSpan.FromHours(-1) });
        Numbers.Refuses("Surface", () => _ = Job.Site with { Surface = Temperature.FromDegreesCelsius(80) });
        Numbers.Refuses("AirborneFraction", () => _ = Job.Site with { AirborneFraction = Ratio.FromPercent(0) });
        Numbers.Refuses("Years", () => _ = Job.Warranty with { Years = 0 });
        Numbers.Refuses("ClaimProbability", () => _ = Job.Warranty with { ClaimProbability = Ratio.FromPercent(101) });
        Numbers.Refuses("RefinishLifeYears", () => _ = Job.Replacement! with { RefinishLifeYears = 0 });
        Assert.Throws<ArgumentException>(() => Job with { Fixtures = [] });
        Assert.Throws<ArgumentException>(() => Job with { Fixtures = [Job.Fixtures[0], Job.Fixtures[0]] });
        Assert.Throws<ArgumentException>(() => Job with { Name = " " });
    }
}
