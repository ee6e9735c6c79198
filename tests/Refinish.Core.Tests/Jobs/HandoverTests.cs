using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Scheduling;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

public class HandoverTests
{
    private static readonly Temperature Twenty = Temperature.FromDegreesCelsius(20);

    private static readonly string[] Items =
    [
        "two-part epoxy primer", "two-part acrylic urethane topcoat", "epoxy reducer", "urethane reducer", "silane adhesion promoter", "silicone remover",
    ];

    // Invented for the test.
    private static BathroomJob Job => new()
    {
        Name = "flat panel",
        Fixtures =
        [
            new FixtureJob
            {
                Name = "panel",
                Fixture = new FlatPanel(new FlatPanelMeasurements
                {
                    Length = Length.FromMillimeters(1500),
                    Width = Length.FromMillimeters(600),
                    ExposedEdge = Length.FromMillimeters(1500),
                    EdgeHeight = Length.FromMillimeters(38),
                    BacksplashLength = Length.Zero,
                    BacksplashHeight = Length.Zero,
                    BacksplashThickness = Length.Zero,
                    CutOuts = [],
                }),
                Survey = new Survey { Material = FixtureMaterial.EnamelledSteel, Defects = [], BuiltBefore1978 = false },
            },
        ],
        System = GenericCatalogue.EpoxyUrethaneSystem,
        Gun = new SprayGun { FluidRate = VolumeFlow.FromMillilitersPerMinute(160), TransferEfficiency = Ratio.FromPercent(60), TriggerFraction = Ratio.FromPercent(45) },
        Residue = Ratio.FromPercent(8),
        Batches = new BatchRules { CupVolume = Volume.FromMilliliters(600) },
        Site = new SiteConditions
        {
            Room = new Room(Length.FromMeters(2.6), Length.FromMeters(2.1), Length.FromMeters(2.5)),
            Exhaust = new Exhaust { LabelFlow = VolumeFlow.FromCubicMetersPerHour(2400) },
            Air = new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(48)),
            Surface = Twenty,
        },
        Start = new DateTimeOffset(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1)),
        Hours = new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)),
        Prices = new PriceBook
        {
            Currency = "EUR",
            LabourRate = 26m,
            TravelPerTrip = 28m,
            DisposalPerJob = 18m,
            ConsumablesPerFixture = 34m,
            Materials = [.. Items.Select(item => new MaterialPrice(item, Volume.FromMilliliters(500), 40m))],
            TargetMargin = new Margin(Ratio.FromPercent(40)),
        },
        Warranty = new WarrantyTerms { Years = 5, Life = new WeibullLife(2.2, 18), CostPerClaim = 320m, ClaimProbability = Ratio.FromPercent(80) },
    };

    private static CoatRecord Coat(CoatPlan plan, int day) => new()
    {
        Coat = plan.Name,
        Start = new DateTimeOffset(2027, 3, day, 9, 0, 0, TimeSpan.FromHours(1)),
        End = new DateTimeOffset(2027, 3, day, 9, 20, 0, TimeSpan.FromHours(1)),
        By = "the painter",
        Air = new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(50)),
        Surface = Twenty,
        Base = Mass.FromGrams(200),
        Hardener = Mass.FromGrams(50),
        WetFilm = Length.FromMicrometers(75),
    };

    private static WarrantyRecord Complete(BathroomPlan plan) => new()
    {
        Reference = "2027-014",
        Batches =
        [
            .. plan.Coats.Select(coat => coat.Layer.Product).Distinct()
                .SelectMany(product => new[] { product.Base, product.Hardener, product.Reducer }.OfType<CoatingComponent>().Select(part => new BatchNumber(product.Name, part.Name, "B-1"))),
        ],
        Coats = [.. plan.Coats.Select((coat, i) => Coat(coat, i + 1))],
        DryFilm = [.. Enumerable.Repeat(Length.FromMicrometers(110), plan.Handover!.Spots)],
        Gauge = "magnetic",
        Photographs = ["before", "after"],
        HandedOver = new DateTimeOffset(2027, 3, 4, 12, 0, 0, TimeSpan.FromHours(1)),
        HandedOverBy = "the painter",
        WaterFrom = plan.Handover.WaterFrom,
    };

    [Fact]
    [Evidence(Basis.Contract, "water waits for the slowest of coating, caulk and drain trim, each with its own wait")]
    public void Water_waits_for_the_slowest()
    {
        Handover plain = Job.Plan().Handover!;
        Assert.Equal(plain.CaulkReady, plain.DrainTrimReady);
        Handover slow = (Job with { DrainTrimWait = TimeSpan.FromDays(6) }).Plan().Handover!;
        Assert.Equal(slow.HandedOver + TimeSpan.FromDays(6), slow.DrainTrimReady);
        Assert.Equal(slow.DrainTrimReady, slow.WaterFrom);
        Handover caulk = (Job with { DrainTrimWait = TimeSpan.Zero, CaulkWait = TimeSpan.FromDays(5) }).Plan().Handover!;
        Assert.Equal(caulk.CaulkReady, caulk.WaterFrom);
        Assert.Equal(caulk.HandedOver, caulk.DrainTrimReady);
        Numbers.HoldsToKernel(slow.Workings());
        Numbers.HoldsToKernel(plain.Workings());
        Numbers.Refuses("DrainTrimWait", () => _ = Job with { DrainTrimWait = TimeSpan.FromDays(15) });
    }

    [Fact]
    [Evidence(Basis.Contract, "a colder surface holds the water longer, and the sheet names the temperature it holds for, in the reader's units")]
    public void The_hold_is_that_of_the_site()
    {
        Handover warm = Job.Plan().Handover!;
        Handover cold = (Job with { Site = Job.Site with { Surface = Temperature.FromDegreesCelsius(18) } }).Plan().Handover!;
        Assert.True(cold.CoatingReady > warm.CoatingReady);
        string sheet = warm.ToText(DisplayUnits.Si);
        Assert.Contains("coating, at 20 °C on the surface", sheet, StringComparison.Ordinal);
        Assert.Contains("no water hotter than 60 °C on the surface", sheet, StringComparison.Ordinal);
        Assert.Contains("coating, at 68 °F on the surface", warm.ToText(DisplayUnits.UsCustomary), StringComparison.Ordinal);
        Assert.Contains("no water hotter than 140 °F on the surface", warm.ToText(DisplayUnits.UsCustomary), StringComparison.Ordinal);
        foreach (string line in (IEnumerable<string>)[.. warm.Covers, .. warm.Exclusions, .. warm.Record, .. warm.Cautions.Select(caution => caution.Sentence)])
        {
            Assert.Contains(line, sheet, StringComparison.Ordinal);
        }

        Assert.DoesNotContain("\r", sheet, StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "the net price is divided over the fixtures to the cent, what a defect takes is priced, and without a price there is nothing to divide")]
    public void The_price_is_divided_over_the_fixtures()
    {
        Assert.Null((Job with { Prices = new PriceBook { Currency = "EUR" } }).Plan().NetByFixture);
        FixtureJob plain = Job.Fixtures[0];
        FixtureJob worn = plain with { Name = "worn panel", Survey = plain.Survey with { Defects = [new SiliconeResidue(Length.FromMeters(3))] } };
        BathroomPlan plan = (Job with { Fixtures = [plain, worn], DefectMaterials = DefectMaterials.Generic }).Plan();
        Assert.Equal(plan.Price!.Net, plan.NetByFixture!.Parts.Sum(part => part.Amount));
        Assert.True(plan.NetByFixture.Parts[1].Amount > plan.NetByFixture.Parts[0].Amount);
        Assert.Contains(plan.Price.Purchases, purchase => purchase.Prices[0].Item == "silicone remover");
        Numbers.HoldsToKernel(plan.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "a complete record lacks nothing; each thing taken out is named")]
    public void A_record_says_what_it_lacks()
    {
        BathroomPlan plan = Job.Plan();
        WarrantyRecord record = Complete(plan);
        Assert.Empty(record.MissingFor(plan));
        string coat = plan.Coats[0].Name;
        Assert.Contains(coat + ": wet film", (record with { Coats = [record.Coats[0] with { WetFilm = null }, .. record.Coats.Skip(1)] }).MissingFor(plan));
        Assert.Contains(coat + ": what was weighed of hardener", (record with { Coats = [record.Coats[0] with { Hardener = Mass.Zero }, .. record.Coats.Skip(1)] }).MissingFor(plan));
        Assert.Contains(coat + ": time, who, air, surface and what was weighed", (record with { Coats = [.. record.Coats.Skip(1)] }).MissingFor(plan));
        Assert.Single((record with { Batches = [.. record.Batches.Skip(1)] }).MissingFor(plan));
        Assert.Single((record with { DryFilm = [.. record.DryFilm.Skip(1)] }).MissingFor(plan));
        Assert.Contains("gauge that measured the dry film", (record with { Gauge = null }).MissingFor(plan));
        Assert.Contains("photographs before and after", (record with { Photographs = [] }).MissingFor(plan));
        Assert.Contains("day of the hand-over and by whom", (record with { HandedOver = null }).MissingFor(plan));
        Assert.Single((record with { WaterFrom = null }).MissingFor(plan));
    }

    [Fact]
    [Evidence(Basis.Independent, "200 g of base and 50 g of hardener are 25 to 100; air of 22 °C and 50 % has its dew point at 11.1 °C (any chart), so a surface of 20 °C is 8.9 K above it; two years of 365.25 days")]
    public void Numbers_of_a_record()
    {
        BathroomPlan plan = Job.Plan();
        WarrantyRecord record = Complete(plan);
        CoatRecord coat = record.Coats[0];
        Numbers.Close(25, coat.HardenerPer100Base, 1e-12);
        Numbers.Near(8.9, coat.SurfaceAboveDewPoint.Kelvins, 0.05);
        Numbers.HoldsToKernel(coat.Workings());
        LifeRecord life = record.AgeOn(record.HandedOver!.Value.AddDays(730.5), failed: true);
        Numbers.Close(2, life.AgeYears, 1e-12);
        Assert.True(life.Failed);
        Numbers.Refuses("day", () => record.AgeOn(record.HandedOver.Value, failed: true));
        Assert.Throws<InvalidOperationException>(() => (record with { HandedOver = null }).AgeOn(DateTimeOffset.MaxValue, failed: false));
        string text = record.ToText(DisplayUnits.Si);
        Assert.Contains("dew point 11.1 °C; surface 20 °C; weighed 200 g base, 50 g hardener, 0 g reducer; wet film 75 µm", text, StringComparison.Ordinal);
        Assert.Contains("handed over 2027-03-04 12:00 by the painter", text, StringComparison.Ordinal);
        Assert.Equal(record, Complete(plan));
        Assert.Equal("record 2027-014, " + plan.Coats.Count + " coats", record.ToString());
        Numbers.Refuses("Base", () => _ = coat with { Base = Mass.Zero });
        Numbers.Refuses("DryFilm", () => _ = record with { DryFilm = [Length.FromMillimeters(6)] });
        Assert.Throws<ArgumentException>(() => new BatchNumber("a", "b", " "));
    }
}
