using System;
using System.Linq;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Jobs;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>A whole job with each kind of product: three parts, one part in water, cured by a lamp, powder.</summary>
public class OwnProductTests
{
    private static readonly VocLimit Limit = new()
    {
        Jurisdiction = "a district (invented)", Rule = "a rule (invented)", Category = "tub and tile", EffectiveFrom = "2027-01-01",
        Limit = MassConcentration.FromGramsPerLiter(420), Source = Source.Invented("a limit for the tests"),
    };

    [Fact]
    [Evidence(Basis.Independent, "by hand: 100 : 25 : 10 by weight are 80 : 23.81 : 10 mL; 135 g with 48.25 g of volatiles in 113.81 "
        + "mL; at 15 % reducer of 0.88 g/mL, of which 0.05 % is water, "
        + "(423.95 + 131.93)/(1.15 − 0.00007) g/L")]
    public void Three_parts_are_mixed_held_against_the_limit_and_recorded()
    {
        Job job = OwnProducts.With(OwnProducts.ThreePart, 2, Ratio.FromPercent(10));
        JobPlan plan = (job with { Shop = job.Shop with { Limits = job.Shop.Limits with { Voc = [Limit] } } }).Plan();
        Assert.DoesNotContain(plan.Objections, objection => objection.Kind != ObjectionKind.Voc);
        CoatRun run = plan.Work!.Runs.First(one => one.Layer.Product.Id == "three-part-topcoat");
        PouredMix cup = run.Mixes[0];
        Assert.Equal(["three-part-resin", "three-part-hardener", "three-part-flexibiliser", "urethane-reducer"],
            cup.Parts.Select(part => part.Component.Id));
        Numbers.Close(0.25, cup.Parts[1].Mass / cup.Parts[0].Mass, 1e-12);
        Numbers.Close(0.10, cup.Parts[2].Mass / cup.Parts[0].Mass, 1e-12);
        Numbers.Close(cup.Total.CubicMeters, cup.Parts[3].FillLine.CubicMeters, 1e-12);
        Numbers.CanBeWritten(run.Workings());

        double millilitres = 80 + (25 / 1.05) + 10;
        double water = 0.15 * 880 * 0.0005;
        double content = ((48.25e3 / millilitres) + (0.15 * 880) - water) / (1.15 - (water / 998.15));
        LimitComparison voc = Assert.Single(plan.Objections, objection => objection.Id == "Voc/three-part-topcoat").Comparison!;
        Numbers.Close(content, voc.Value!.Value.Si, 1e-9);
        Numbers.Close(content, plan.Voc["three-part-topcoat"].Value!.Value.Si, 1e-9);

        WarrantyRecord record = new() { Reference = "1", Batches = [], Coats = [] };
        Assert.Contains("batch number of three-part urethane topcoat (invented), flexibiliser", record.MissingFor(plan));
        Assert.Contains(plan.Cautions, caution => caution.Caution == Cautions.SuppliedAir && caution.Operations.Contains(run.Id));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: of 1.10 kg a litre 54 % is water, 0.5951 L, and 6 % solvent, 66 g: 66/(1 − 0.5951) g/L "
        + "less water at any share of water added; 30 µm dry are 30·1.05/0.337 µm wet")]
    public void Water_leaves_the_film_and_is_no_solvent()
    {
        Job job = OwnProducts.With(OwnProducts.Waterborne, 2, Ratio.FromPercent(5));
        VocLimit wide = Limit with { Limit = MassConcentration.FromGramsPerLiter(600) };
        JobPlan plan = (job with { Shop = job.Shop with { Limits = job.Shop.Limits with { Voc = [wide] } } }).Plan();
        Assert.Empty(plan.Objections);
        CoatRun run = plan.Work!.Runs.First(one => one.Layer.Product.Id == "waterborne-topcoat");
        Numbers.Close(66 / (1 - (0.54 * 1100 / 998.15)), plan.Voc["waterborne-topcoat"].Value!.Value.Si, 1e-9);
        Numbers.Close(run.Demand.Sprayed.Liters * 66 / 1.05, run.VolatileMass.Grams, 1e-9);
        Numbers.Close(run.Demand.Sprayed.Liters * (594 + (0.05 * 998.15)) / 1.05, run.WaterMass.Grams, 1e-9);
        Numbers.Close(30 * 1.05 / 0.337, run.Demand.WetFilm.Thickness.Micrometers, 1e-9);
        Numbers.CanBeWritten(run.Workings());
        RoomAirPlan air = Assert.Single(plan.Air);
        Assert.Contains(air.Study!.Emissions, emission =>
            emission.Name == run.Id && Math.Abs(emission.VolatileMass.Grams - run.VolatileMass.Grams - run.WaterMass.Grams) < 1e-9);
        Assert.DoesNotContain(plan.Cautions, caution => caution.Caution == Cautions.SuppliedAir && caution.Operations.Contains(run.Id));
        Assert.DoesNotContain(plan.Cautions, caution => caution.Caution == Cautions.EpoxyHardener && caution.Operations.Contains(run.Id));

        CoatingProduct pure = OwnProducts.Waterborne with
        {
            Parts =
            [
                new(new CoatingComponent
                {
                    Id = "pure-can", Name = "topcoat", Density = Density.FromGramsPerMilliliter(1.10),
                    MassSolids = Ratio.FromPercent(46), Water = Ratio.FromPercent(54),
                }, 1),
            ],
            VolumeSolids = Ratio.FromPercent(40.5), Solvents = [],
        };
        JobPlan dry = OwnProducts.With(pure, 2).Plan();
        Assert.Empty(dry.Objections);
        Assert.All(dry.Work!.Runs.Where(one => one.Layer.Product.Id == pure.Id), one => Assert.Equal(0, one.VolatileMass.Kilograms));
        Assert.Equal(0, dry.Voc[pure.Id].Value!.Value.Si, 1e-9);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 10 min and 4 min for each square metre, to the whole minute; 5 to 60 min after the last "
        + "stroke; times of 25 °C shift by a doubling for 10 K: the window closes 4·2^0.3 h after the first pass began in air of 22 "
        + "°C, water comes 48·2^0.5 h after the last one on a surface of 20 °C")]
    public void A_lamp_follows_every_coat_and_the_cure_follows_the_lamp()
    {
        // Slower than the primer, so that the last pass decides when water may run.
        CoatingProduct slow = OwnProducts.LampCured with
        {
            Cure = OwnProducts.LampCured.Cure with { WaterService = TimeSpan.FromHours(48), FullCure = TimeSpan.FromHours(72) },
        };
        JobPlan plan = OwnProducts.With(slow, 2).Plan();
        Assert.Empty(plan.Objections);
        ScheduledRun[] coats = [.. plan.Runs.Where(run => run.Run.Layer.Product.Id == "lamp-topcoat").OrderBy(run => run.Start)];
        ScheduledOperation[] passes = [.. coats.Select(run => plan.Schedule!.TryFind(run.Run.Id + "/lamp")!)];
        Assert.Equal(2, passes.Length);
        double area = plan.Planned[0].CoatedArea.SquareMeters;
        for (int i = 0; i < 2; i++)
        {
            Assert.Equal(Math.Ceiling(10 + (4 * area)), (passes[i].End - passes[i].Start).TotalMinutes, 1e-9);
            Assert.InRange((passes[i].Start - coats[i].End).TotalMinutes, 5, 60);
            Assert.Contains("uv-lamp", passes[i].Operation.Tools);
            Assert.NotEmpty(passes[i].People);
        }

        Assert.True(coats[1].Start >= passes[0].End);
        string[] ids = [.. passes.Select(pass => pass.Operation.Id)];
        Assert.All(ids, id => Assert.Contains(plan.Price!.Lines, line => line.Item == "operation/" + id));
        foreach (Caution caution in new[] { Cautions.UltravioletLight, Cautions.LampIgnites, Cautions.Acrylates, Cautions.Overspray })
        {
            Assert.Superset(ids.ToHashSet(), plan.Cautions.Single(planned => planned.Caution == caution).Operations.ToHashSet());
        }

        ScheduledWindow window = plan.Schedule!.Windows.Single(one => one.Operation.Operation.Id == ids[0]);
        Assert.Equal(passes[0].End, window.LastStroke);
        Assert.Equal(passes[0].End, window.Opens);
        Assert.InRange((window.Closes!.Value - passes[0].Start).TotalHours, (4 * Math.Pow(2, 0.3)) - (1 / 60.0), 4 * Math.Pow(2, 0.3));
        DateTimeOffset ready = plan.Handover!.Fixtures[0].CoatingReady!.Value;
        Assert.InRange((ready - passes[1].End).TotalHours, 48 * Math.Sqrt(2), (48 * Math.Sqrt(2)) + (1 / 60.0));
        Numbers.CanBeWritten(plan.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "a pass outside its humidity, a sheet that contradicts itself and a powder are objected to by name, and "
        + "nothing is thrown")]
    public void What_cannot_be_done_is_said()
    {
        Job lamp = OwnProducts.With(OwnProducts.LampCured, 2);
        SiteRoom room = lamp.Premises.Rooms[0];
        JobPlan arid = (lamp with
        {
            Premises = lamp.Premises with
            {
                Rooms =
                [
                    room with
                    {
                        Climate = RoomClimate.Held(
                            new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(20)), Temperature.FromDegreesCelsius(20)),
                    },
                ],
            },
        }).Plan();
        PlanObjection[] dryness = [.. arid.Objections.Where(objection => objection.Kind == ObjectionKind.SprayWindow)];
        Assert.Equal(2, dryness.Length);
        PlanObjection dry = dryness[0];
        Assert.EndsWith("/lamp/humidity-low", dry.Id, StringComparison.Ordinal);
        Numbers.Close(0.20, dry.Comparison!.Value!.Value.Si, 1e-9);
        Numbers.Close(0.30, dry.Comparison.Limit!.Value.Si, 1e-12);

        JobPlan wrong = OwnProducts.With(OwnProducts.Waterborne with { VolumeSolids = Ratio.FromPercent(30) }, 2).Plan();
        Assert.Contains(wrong.Objections, objection => objection.Id == "Input/waterborne-topcoat/volume-solids");

        JobPlan powder = OwnProducts.With(OwnProducts.Powder, new CoatingSystem(
            "powder", "powder", [SystemStep.Coat(new CoatingLayer(OwnProducts.Powder, Length.FromMicrometers(40), 1))], null,
            Source.Invented("a test"))).Plan();
        PlanObjection refused = Assert.Single(powder.Objections, objection => objection.Kind == ObjectionKind.FixtureLeftOut);
        Assert.Contains("powder coating: it melts and cures in an oven", refused.ToString(), StringComparison.Ordinal);
        Assert.Empty(powder.Planned);
    }

    [Fact]
    [Evidence(Basis.Contract, "figures of an operation that cannot be are refused where the product is put to use")]
    public void Refuses_operations_that_cannot_be()
    {
        CoatOperation lamp = OwnProducts.Lamp;
        Numbers.Refuses("SetUp", () => _ = lamp with { SetUp = TimeSpan.FromMinutes(-1) });
        Numbers.Refuses("area", () => lamp.TimeFor(Area.Zero));
        Refused("SetUp", lamp with { SetUp = TimeSpan.Zero, PerSquareMeter = TimeSpan.Zero });
        Refused("Within", lamp with { Within = TimeSpan.FromMinutes(1) });
        Refused("MinimumRelativeHumidity", lamp with { Conditions = lamp.Conditions! with { MinimumRelativeHumidity = Ratio.FromPercent(90) } });
        Assert.Throws<ArgumentException>(() => OwnProducts.LampCured with { Operations = [lamp, lamp] });
        Numbers.Refuses("Operations", () => Layer(OwnProducts.LampCured with { Operations = [lamp, lamp with { Id = "again" }] }));

        static void Refused(string name, CoatOperation operation) =>
            Numbers.Refuses(name, () => Layer(OwnProducts.LampCured with { Operations = [operation] }));
        static CoatingLayer Layer(CoatingProduct product) => new(product, Length.FromMicrometers(30), 1);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: of 80 : 23.81 : 10 mL, 5 mL too much of the last is half as much again; one line 1 mL off "
        + "between 23.81 and 10 makes (10 + 1)/(23.81 − 1) of 10/23.81, 14.8 % off")]
    public void What_is_measured_by_parts_works_with_three()
    {
        CoatingProduct product = OwnProducts.ThreePart;
        OffRatio poured = new(product,
            [Part("three-part-flexibiliser", 15), Part("three-part-resin", 80), Part("three-part-hardener", 25 / 1.05)]);
        Numbers.Close(0.5, poured.Deviation.DecimalFractions, 1e-9);
        Numbers.Near(0, poured.Deviations["three-part-hardener"].DecimalFractions, 1e-9);
        Numbers.Close(poured.StatedIndex!.Value, poured.PouredIndex!.Value, 1e-12);
        Numbers.Close((25 * 0.165 / 42.02) / (100 * 52 / 56100.0), poured.StatedIndex.Value, 1e-6);
        Assert.StartsWith("flexibiliser is 50 % too much against resin", poured.Meaning, StringComparison.Ordinal);
        Numbers.CanBeWritten(poured.Workings());

        CupReading reading = new(new PouredMix(product, Volume.FromMilliliters(90 + (25 / 1.05)), Ratio.Zero), Volume.FromMilliliters(1));
        double b = 25 / 1.05;
        Numbers.Close((11 / (b - 1) / (10 / b)) - 1, reading.DeviationHigh.DecimalFractions, 1e-9);
        Numbers.CanBeWritten(reading.Workings());
        CupReading smallest = new(new PouredMix(product, reading.SmallestTotal!.Value, Ratio.Zero), Volume.FromMilliliters(1));
        Numbers.Close(0.05, smallest.DeviationHigh.DecimalFractions, 1e-9);

        OpenedKit left = new(
            product, [Part("three-part-resin", 160), Part("three-part-hardener", 100), Part("three-part-flexibiliser", 10)],
            DateTimeOffset.MinValue);
        Numbers.Close(90 + b, left.Usable.Milliliters, 1e-9);
        Assert.Equal(TimeSpan.FromDays(30), left.ShelfLife);
        Assert.Empty(new DataSheetCheck(product).Contradictions);
        Assert.Empty(new DataSheetCheck(OwnProducts.Waterborne).Contradictions);
        Assert.NotEmpty(new DataSheetCheck(OwnProducts.Waterborne).Findings);

        static PartVolume Part(string component, double millilitres) => new(component, Volume.FromMilliliters(millilitres));
    }
}
