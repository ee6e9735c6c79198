using System;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Jobs;
using Refinish.Tests.Air;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>
/// A job with an invented stripper that does not burn and an invented topcoat with a part that does not burn, water and a coalescent that is
/// not volatile.
/// </summary>
public class NonBurningTests
{
    private static readonly Source Sheet = Source.Invented("a safety data sheet, made up for the test");

    private static readonly Solvent Inert = Rooms.Solvent("inert", 250) with
    {
        Density = Density.FromGramsPerMilliliter(1.5), Flammability = Flammability.NonBurning(Sheet),
        Volatility = Volatility.At20Celsius(Pressure.FromPascals(2000)),
    };

    private static readonly Solvent Coalescent = Rooms.Solvent("coalescent", 216, 0.6) with
    {
        Volatility = Volatility.NotVolatile(Temperature.FromDegreesCelsius(254), Sheet),
    };

    private static Job Job(Solvent inert)
    {
        Job cold = InventedJobs.ColdHouse();
        Shop shop = cold.Shop;
        CoatingSystem system = new(
            "quiet", "a system with a topcoat made up for the test",
            shop.System.Steps.Select(step => step.Layer is { Product.Role: CoatingRole.Topcoat } layer
                ? SystemStep.Coat(new CoatingLayer(
                    layer.Product with
                    {
                        Id = "quiet-topcoat",
                        Solvents =
                        [
                            new(Solvents.ButylAcetate, Ratio.FromPercent(40)), new(inert, Ratio.FromPercent(45)),
                            new(Coalescent, Ratio.FromPercent(15)),
                        ],
                        Parts = [.. layer.Product.Parts.Select(part => new MixPart(
                            new CoatingComponent { Id = part.Component.Id, Name = part.Component.Name, Density = part.Component.Density, Water = Ratio.FromPercent(10) },
                            part.Parts))],
                    }, layer.DryFilmPerCoat, layer.Coats, layer.Reducer))
                : step),
            null, Sheet);
        PrepChemical stripper = PrepChemicals.Generic.Single(one => one.Id == "stripper") with
        {
            Solvents = [new(inert, Ratio.FromPercent(60)), new(Solvents.Water, Ratio.FromPercent(30)), new(Coalescent, Ratio.FromPercent(10))],
            Source = Sheet,
        };
        return cold with
        {
            Shop = shop with
            {
                System = system,
                Chemicals = [.. shop.Chemicals.Select(one => one.Id == "stripper" ? stripper : one)],
                Limits = shop.Limits with { Exposure = [.. shop.Limits.Exposure, Rooms.Limit("inert", 200)] },
            },
        };
    }

    [Fact]
    [Evidence(Basis.Contract, "said not to burn is no objection and no unknown; not known still is one, for the same job")]
    public void A_job_that_does_not_burn_is_planned()
    {
        JobPlan plan = Job(Inert).Plan();
        RoomAirPlan air = Assert.Single(plan.Air);
        AirStudy study = air.Study!;
        Assert.Contains(study.Emissions, emission => emission.Name == "stripper");
        Assert.True(study.PeakFlammableFraction is not null);
        Assert.NotEqual(ComparisonOutcome.CannotBeJudged, study.FlammableLimit.Outcome);
        Assert.NotEqual(ComparisonOutcome.CannotBeJudged, air.FlammableAirflow!.Outcome);
        Assert.DoesNotContain(plan.Objections, one => one.Comparison?.Outcome == ComparisonOutcome.CannotBeJudged);
        Assert.Contains(Cautions.NonBurningVapour, air.Cautions);
        Assert.Contains(Cautions.StaysInFilm, air.Cautions);
        Numbers.CanBeWritten(air.Workings());

        JobPlan unknown = Job(Inert with { Flammability = Flammability.Unknown }).Plan();
        Assert.Contains(unknown.Objections, one => one.Kind == ObjectionKind.Flammability && one.Comparison?.Outcome == ComparisonOutcome.CannotBeJudged);
    }

    [Fact]
    [Evidence(Basis.Identity, "what a coat gives off is 85 % of its liquid, and the rest, which is not volatile, lies in the film at the end; water makes the air "
        + "humid and is asked no limit")]
    public void What_stays_stays_and_what_leaves_leaves()
    {
        JobPlan plan = Job(Inert).Plan();
        RoomAirPlan air = Assert.Single(plan.Air);
        AirStudy study = air.Study!;
        CoatRun[] coats = [.. plan.Work!.Runs.Where(run => run.Layer.Product.Id == "quiet-topcoat")];
        Assert.NotEmpty(coats);
        Assert.All(coats, run => Numbers.Close(0.85 * run.LiquidMass.Grams, run.VolatileMass.Grams));
        Assert.All(coats, run => Numbers.CanBeWritten(run.Workings()));
        Assert.Equal("coalescent", Assert.Single(study.NotGivenOff).Name);
        double stripped = study.Emissions.Where(emission => emission.Name == "stripper").Sum(emission => emission.VolatileMass.Grams);
        Numbers.Close(
            (0.15 * coats.Sum(run => run.LiquidMass.Grams)) + (0.1 * stripped),
            study.BalanceAt(Coalescent, TimeSpan.FromDays(100)).InFilm.Grams, 1e-9);
        double water = coats.Sum(run => run.WaterMass.Grams);
        Assert.True(water > 0);
        Numbers.Close(
            coats.Sum(run => run.LiquidMass.Grams) + water,
            study.Emissions.Where(emission => coats.Any(run => run.Id == emission.Name)).Sum(emission => emission.VolatileMass.Grams), 1e-9);
        Assert.True(air.Humidity!.Value?.Si > 0);
        Assert.DoesNotContain(study.Exposure, one => one.Solvent.IsWater);
        Assert.Contains(study.Exposure, one => one.Solvent.Name == "inert" && one.Limit is not null);
    }

    [Fact]
    [Evidence(Basis.Contract, "a vapour that does not burn keeps the others out as one does of which nothing is known: no flammable limit tells how much of it harms")]
    public void Others_stay_out_all_the_same()
    {
        JobPlan inert = Job(Inert).Plan();
        JobPlan unknown = Job(Inert with { Flammability = Flammability.Unknown }).Plan();
        Assert.Equal(
            unknown.Operations.Where(one => one.Beside is not null).Select(one => one.Id), inert.Operations.Where(one => one.Beside is not null).Select(one => one.Id));
    }
}
