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
        Assert.Contains(plan.Objections, objection => objection.Contains("above dew point", StringComparison.Ordinal) && objection.Contains("beyond", StringComparison.Ordinal));
        Assert.NotNull(plan.Price);
    }

    [Fact]
    [Evidence(Basis.Contract, "outside the product's temperatures there are no times, so there is no timeline, air or price")]
    public void A_product_without_times_has_no_timeline()
    {
        BathroomPlan plan = (Job with { Site = Job.Site with { Surface = Temperature.FromDegreesCelsius(10) } }).Plan();
        Assert.Contains(plan.Objections, objection => objection.StartsWith("two-part epoxy primer gives no times:", StringComparison.Ordinal));
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
        Assert.Contains(plan.Objections, objection => objection.StartsWith("bathtub is left out:", StringComparison.Ordinal));
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
        Assert.Contains(plan.Objections, objection => objection.StartsWith("No price:", StringComparison.Ordinal) && objection.Contains("epoxy filler", StringComparison.Ordinal));
        Assert.Contains(plan.Objections, objection => objection.Contains("no labour rate", StringComparison.Ordinal));
        Assert.Null(plan.Price!.Total);
        Assert.Null(plan.Comparison);
    }

    [Fact]
    [Evidence(Basis.Contract, "a labour standard that is missing is named by its code")]
    public void A_missing_labour_standard_is_named()
    {
        BathroomPlan plan = (Job with { Labour = [.. LabourStandards.Generic.Where(standard => standard.Code != LabourStandards.Demask.Code)] }).Plan();
        Assert.Contains("There is no labour standard L-60 (demask and clean up).", plan.Objections);
    }

    [Fact]
    [Evidence(Basis.Contract, "no exhaust: the vapour builds up beyond the flammable comparison and the plan says so")]
    public void Without_exhaust_the_vapour_is_beyond_its_limit()
    {
        BathroomPlan plan = (Job with { Site = Job.Site with { Exhaust = new Refinish.Air.Exhaust { LabelFlow = VolumeFlow.Zero } } }).Plan();
        Assert.False(plan.IsPossible);
        Assert.Equal(ComparisonOutcome.Beyond, plan.Air!.FlammableLimit.Outcome);
        Assert.Contains(plan.Objections, objection => objection.Contains("lower flammable limit", StringComparison.Ordinal));
        Numbers.HoldsToKernel(plan.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "without an airborne fraction the mist is not screened and the plan still cautions")]
    public void An_unknown_airborne_fraction_is_no_pass()
    {
        BathroomPlan plan = (Job with { Site = Job.Site with { AirborneFraction = null } }).Plan();
        Assert.Empty(plan.IsocyanateScreens);
        Assert.Contains(plan.Cautions, caution => caution.Hazard == Hazard.Isocyanate);
        Assert.Contains(plan.Objections, objection => objection.Contains("isocyanate mist cannot be judged", StringComparison.Ordinal));
    }

    [Fact]
    [Evidence(Basis.Contract, "a cup below the smallest batch, a day too short and a promoter that closes too soon are named")]
    public void Impossible_work_is_named()
    {
        BathroomPlan cup = (Job with { Batches = new BatchRules { CupVolume = Volume.FromMilliliters(40) } }).Plan();
        Assert.Contains(cup.Objections, objection => objection.Contains("largest batch that cup and pot life allow is 40 mL", StringComparison.Ordinal));
        BathroomPlan day = (Job with { Hours = new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(8.4)) }).Plan();
        Assert.Contains(day.Objections, objection => objection.Contains("the working day has 0.4 h", StringComparison.Ordinal));
        CoatingSystem hasty = new(
            "hasty", [GenericCatalogue.SilanePromoter with { OpenTime = TimeSpan.FromMinutes(30) }], Job.System.Layers, Source.Invented("for this test"));
        Assert.Contains((Job with { System = hasty }).Plan().Objections, objection => objection.StartsWith("The promoter stays open for 30 min", StringComparison.Ordinal));
    }

    [Fact]
    [Evidence(Basis.Contract, "a recoat window that closes before the next coat could be on is named")]
    public void A_recoat_window_too_short_is_named()
    {
        CoatingProduct hasty = GenericCatalogue.EpoxyPrimer with { Cure = GenericCatalogue.EpoxyPrimer.Cure with { RecoatCloses = TimeSpan.FromMinutes(75) } };
        CoatingSystem system = new("hasty", Job.System.Promoters, [new CoatingLayer(hasty, Length.FromMicrometers(30), 1, Ratio.FromPercent(10)), Job.System.Layers[1]], Source.Invented("for this test"));
        BathroomPlan plan = (Job with { System = system }).Plan();
        Assert.Contains(plan.Objections, objection => objection.StartsWith("The recoat window of two-part epoxy primer is open from", StringComparison.Ordinal));
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
        Assert.Contains("pedestal sink is left out: two-part epoxy primer is not stated for vitreous china.", plan.Objections);
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
