using System;
using System.Linq;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>What goes wrong quietly when an operation, a survey or a chemical is stated carelessly.</summary>
public class CarelessInputTests
{
    private static readonly Job House = InventedJobs.OccupiedHouse();

    [Fact]
    [Evidence(Basis.Contract, "methylene chloride is refused as a vapour of any operation")]
    public void Methylene_chloride_is_no_vapour_of_an_operation()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() =>
            new Evaporation { Name = "stripper", Mass = Mass.FromGrams(300), Solvents = [new SolventShare(Solvents.MethyleneChloride, Ratio.FromPercent(100))] });
        Assert.Contains("methylene chloride", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "an added operation that gives off much vapour is watched and the room is cleared after it, as any other")]
    public void An_added_operation_is_watched()
    {
        Refinish.Jobs.Operation wash = new()
        {
            Id = "bath/wash", Kind = WorkKind.Other, Room = "bath", Fixtures = ["tub"], Instruction = "wash with solvent", Time = TimeSpan.FromMinutes(15),
            Vapours = [new Evaporation { Name = "wash", Mass = Mass.FromGrams(400), Solvents = [new SolventShare(Solvents.Acetone, Ratio.FromPercent(100))] }],
        };
        JobPlan plan = (House with { Changes = [OperationChange.Add(wash, "bath/degrease")] }).Plan();
        Assert.Contains(plan.Operations, operation => operation.Beside == "bath/wash" && operation.Kind == WorkKind.StandBy);
        Assert.True(plan.Operations.Single(operation => operation.Id == "bath/wash").Clearing > TimeSpan.Zero);
    }

    [Fact]
    [Evidence(Basis.Contract, "a flame and a missing way for the air stop the room, people who cannot leave stop the premises; another room goes on")]
    public void What_one_survey_finds_stops_the_others()
    {
        foreach ((Func<Survey, Survey> found, bool everywhere) in new (Func<Survey, Survey>, bool)[]
        {
            (survey => survey with { FlameCannotBeShutOff = true }, false),
            (survey => survey with { NoExhaustPath = true }, false),
            (survey => survey with { SensitiveOccupantsCannotLeave = true }, true),
        })
        {
            Job rental = InventedJobs.Rental();
            FixtureJob vessel = rental.Fixtures.Single(fixture => fixture.Id == "vessel");
            FixtureJob beside = vessel with { Id = "beside", Survey = new Survey { Material = FixtureMaterial.VitreousChina, Defects = [], YearBuilt = 1995 } };
            JobPlan plan = (rental with
            {
                Fixtures = [.. rental.Fixtures.Where(fixture => fixture.Id == "counter"), vessel with { Survey = found(vessel.Survey) }, beside],
            }).Plan();
            Assert.Equal(everywhere ? [] : ["counter"], plan.Planned.Select(procedure => procedure.Fixture.Id));
            Assert.Contains(plan.Objections, objection => objection.Kind == ObjectionKind.FixtureLeftOut && objection.About == "beside");
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "what is struck from the list is a condition of the plan, with the reason of its place")]
    public void What_is_struck_is_told()
    {
        JobPlan plan = (House with { Changes = [OperationChange.Strike("bath/key"), OperationChange.Strike("bath/set-up")] }).Plan();
        Assert.Contains(plan.Conditions, condition => condition.Id == "bath/key/struck");
        Assert.Contains(plan.Conditions, condition => condition.Id == "bath/set-up/struck");
    }

    [Fact]
    [Evidence(Basis.Contract, "an operation of the caller's own without time and labour, a year of building to come, chemicals that contradict themselves")]
    public void Careless_inputs_are_told()
    {
        Refinish.Jobs.Operation nothing = new() { Id = "bath/nothing", Kind = WorkKind.Other, Room = "bath", Instruction = "do something" };
        Assert.Contains((House with { Changes = [OperationChange.Add(nothing, "bath/degrease")] }).Plan().Objections, objection =>
            objection.Kind == ObjectionKind.Input && objection.About == "bath/nothing");
        FixtureJob tub = House.Fixtures[0];
        Assert.Contains((House with { Fixtures = [tub with { Survey = tub.Survey with { YearBuilt = 2050 } }] }).Plan().Objections, objection =>
            objection.Kind == ObjectionKind.Input && objection.About == tub.Id);
        PrepChemical wipe = PrepChemicals.Generic.Single(chemical => chemical.Id == "alcohol-wipe");
        Assert.Contains("VolatileFraction", Assert.Throws<ArgumentException>(() =>
            House.Shop with { Chemicals = [wipe with { VolatileFraction = Ratio.Zero }] }).Message, StringComparison.Ordinal);
        Assert.Contains("never be used", Assert.Throws<ArgumentException>(() =>
            House.Shop with { Chemicals = [wipe with { Coverage = null }] }).Message, StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "grains that do not fit side by side are told of the fixture with what does fit, by hand: 0.9069 · 2/3 · 1200 kg/m³ · 0.1 mm = 72.6 g/m²")]
    public void Too_many_grains_are_told_of_the_fixture()
    {
        FixtureJob tub = House.Fixtures[0];
        FixtureOption grains = FixtureOption.SlipResistantFloor("slip-floor", GenericCatalogue.PolymerBeads, AreaDensity.FromGramsPerSquareMeter(80));
        PlanObjection told = Assert.Single((House with { Fixtures = [tub with { Options = [grains] }] }).Plan().Objections);
        Assert.Equal(ObjectionKind.FixtureLeftOut, told.Kind);
        string sentence = told.ToString();
        Assert.Contains("80 g/m² of " + GenericCatalogue.PolymerBeads.Name + " do not fit side by side", sentence, StringComparison.Ordinal);
        Assert.Contains(tub.Name, sentence, StringComparison.Ordinal);
        Assert.Contains("at most 72.6 g/m²", sentence, StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "more pieces than can be estimated, and a share that vanishes when it is rounded, are refused where they are stated")]
    public void What_vanishes_or_overflows_later_is_refused_at_once()
    {
        Numbers.Refuses("Quantity", () => _ = FixtureOption.DrainTrim("drain-trim") with { Quantity = 1_000_001m });
        Assert.Equal(1_000_000m, (FixtureOption.DrainTrim("drain-trim") with { Quantity = 1_000_000m }).Quantity);
        Numbers.Refuses("share", () => PaymentStage.OfShare("deposit", PaymentDue.OnAcceptance, Ratio.FromPercent(1e-5)));
        Numbers.Refuses("HydroxylNumber", () => _ = GenericCatalogue.AcrylicUrethaneTopcoat.Parts[0].Component with { HydroxylNumber = 1e-7 });
    }

    [Fact]
    [Evidence(Basis.Contract, "where no second wipe fits after a night, here since it takes 20 h, the plan says so instead of leaving it out in silence")]
    public void A_wipe_that_does_not_fit_is_a_condition()
    {
        Job night = Enumerable.Range(0, 9).Select(hour => House with { Start = House.Start.AddHours(hour) })
            .First(job => job.Plan().Operations.Any(operation => operation.Kind == WorkKind.WipeAgain));
        LabourStandard endless = LabourStandards.WipeAgain with { PerUnit = ThreePoint.Exactly(20) };
        JobPlan plan = (night with { Shop = night.Shop with { Labour = LabourStandards.GenericWith(endless) } }).Plan();
        Assert.DoesNotContain(plan.Operations, operation => operation.Kind == WorkKind.WipeAgain);
        Assert.Contains(plan.Conditions, condition => condition.Id.EndsWith("/unwiped", StringComparison.Ordinal));
        Assert.DoesNotContain(night.Plan().Conditions, condition => condition.Id.EndsWith("/unwiped", StringComparison.Ordinal));
    }
}
