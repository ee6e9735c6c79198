using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Curing;
using Refinish.Estimating;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Pictures;
using Refinish.Samples.BathroomJob;
using UnitsNet;

namespace Refinish.Samples.Gallery;

/// <summary>What hangs in the gallery. All of it is invented.</summary>
internal static class Exhibits
{
    // Without the shower pan that has to be refused, so that nothing stands in the way.
    private static readonly JobPlan Guesthouse =
        (Scenario.Guesthouse() with { Fixtures = [.. Scenario.Guesthouse().Fixtures.Where(fixture => fixture.Id != "shower-2")] }).Plan();

    private static readonly JobPlan OneBathroom = Scenario.OneBathroom().Plan();

    private static Job Revised() => OneBathroom.Job with
    {
        Shop = OneBathroom.Job.Shop with { Prices = OneBathroom.Job.Shop.Prices with { LabourRate = OneBathroom.Job.Shop.Prices.LabourRate + 2 } },
        Fixtures = [.. OneBathroom.Job.Fixtures.Select(fixture => fixture with { Options = [] })],
    };

    public static IReadOnlyList<Exhibit> All { get; } =
    [
        new("timeline", "The job", "`new TimelinePicture(plan)`: two people in three rooms", new TimelinePicture(Guesthouse)),
        new("timeline-one-room", "The job", "The same of one bathroom", new TimelinePicture(OneBathroom)),
        new("cure", "The job", "`new CurePicture(plan)`", new CurePicture(OneBathroom)),
        new("cure-conversion", "The job",
            "`new CurePicture(forecast, \"epoxy primer\", conversion)`: with the law of its chemistry, here invented", Conversion()),
        new("air", "The job", "`new AirPicture(plan)`; of several rooms one after the other", new AirPicture(OneBathroom)),
        new("air-room", "The job", "`new AirPicture(plan.Air[0])`: one room of several", new AirPicture(Guesthouse.Air[0])),
        new("film", "The job",
            "`new FilmPicture(map, \"a tub sprayed straight down, two coats\")`; where on the tub it is thin, `FilmMapDrawing` draws",
            Film()),
        new("price", "Money", "`new PricePicture(plan)`: for the shop", new PricePicture(Guesthouse)),
        new("quote", "Money", "`new QuotePicture(plan)`: for the customer, here with a discount, a deposit and two taxes", new QuotePicture(Quoted().Plan())),
        new("changes", "Money", "`new ChangesPicture(PlanChanges.Between(before, after))`: the quote without its options, an hour 2 dearer",
            new ChangesPicture(PlanChanges.Between(OneBathroom, Revised().Plan()))),
        new("cost", "Money", "`new CostPicture(JobRange.Of(job, doubts, options))`: the whole job planned a thousand times",
            new CostPicture(JobRange.Of(OneBathroom.Job, new JobUncertainty(), new SimulationOptions { Trials = 1000 }))),
        new("cost-estimate", "Money",
            "`new CostPicture(EstimateRange.Of(plan.Price, doubts))`: one estimate with other hours and quantities",
            new CostPicture(EstimateRange.Of(Guesthouse.Price!, Scenario.Doubts()))),
        new("recessed-bathtub", "Fixtures",
            "`new FixturePicture(tub, \"Bathtub\")`, and so for every kind of fixture, in the reader's units",
            new FixturePicture(OneBathroom.Job.Fixtures[0].Fixture, "Bathtub")),
        new("freestanding-tub", "Fixtures", "Freestanding tub with a rolled rim", new FixturePicture(OtherFixtures.Freestanding,
            "Freestanding tub"), DisplayUnits.UsCustomary),
        new("oval-tub", "Fixtures", "Oval tub in a deck", new FixturePicture(OtherFixtures.Oval, "Oval tub"), DisplayUnits.UsCustomary),
        new("corner-tub", "Fixtures", "Corner tub", new FixturePicture(OtherFixtures.Corner, "Corner tub"), DisplayUnits.UsCustomary),
        new("pedestal-sink", "Fixtures", "Pedestal sink", new FixturePicture(OneBathroom.Job.Fixtures[1].Fixture, "Pedestal sink")),
        new("counter-sink", "Fixtures", "Vessel sink on a counter", new FixturePicture(OtherFixtures.Vessel, "Vessel sink"),
            DisplayUnits.UsCustomary),
        new("shower-pan", "Fixtures", "Shower pan", new FixturePicture(OtherFixtures.Pan, "Shower pan"), DisplayUnits.UsCustomary),
        new("tiled-surround", "Fixtures", "Tiled walls", new FixturePicture(OneBathroom.Job.Fixtures[2].Fixture, "Tiled surround")),
        new("countertop", "Fixtures", "Countertop", new FixturePicture(OtherFixtures.Counter, "Kitchen counter"), DisplayUnits.UsCustomary),
        new("flat-panel", "Fixtures", "Panel", new FixturePicture(OtherFixtures.Panel, "Panel"), DisplayUnits.UsCustomary),
    ];

    private static Job Quoted()
    {
        Job job = Guesthouse.Job;
        return job with
        {
            Shop = job.Shop with
            {
                Prices = job.Shop.Prices with
                {
                    Taxes =
                    [
                        new() { Code = "state", Name = "state sales tax", Rate = Ratio.FromPercent(6.25),
                            Categories = [LineCategory.Material, LineCategory.Consumables, LineCategory.Option] },
                        new() { Code = "city", Name = "city tax", Rate = Ratio.FromPercent(1) },
                    ],
                },
            },
            Extras = [new() { Id = "rust", Category = LineCategory.Allowance, Description = "rust under the overflow", Quantity = 1,
                Unit = LineUnit.Job, Rate = 60m, UnitPrice = 60m }],
            Terms = new QuoteTerms
            {
                Number = "Q-1042",
                Discount = Discount.Of(Ratio.FromPercent(5)) with { Reason = "three rooms at once" },
                Payments = [PaymentStage.OfShare("deposit", PaymentDue.OnAcceptance, Ratio.FromPercent(10)), PaymentStage.OfRest("rest", PaymentDue.OnCompletion)],
            },
        };
    }

    private static CurePicture Conversion()
    {
        CureReaction epoxy = new()
        {
            Factor = Frequency.FromHertz(3000),
            ActivationEnergy = MolarEnergy.FromKilojoulesPerMole(48),
            AutocatalyticFactor = Frequency.FromHertz(1.2e5),
            AutocatalyticActivationEnergy = MolarEnergy.FromKilojoulesPerMole(52),
            AutocatalyticOrder = 1,
            Order = 2,
            Source = Source.Invented("an epoxy with an amine for this gallery"),
        };
        DateTimeOffset applied = new(2027, 3, 4, 9, 0, 0, TimeSpan.Zero);
        Temperature site = Temperature.FromDegreesCelsius(20);
        CureForecast forecast = new(GenericCatalogue.EpoxyUrethaneSystem.Layers[0].Product.Cure, site);
        return new CurePicture(forecast, "epoxy primer, invented chemistry", new ConversionCurve(epoxy,
            TemperatureHistory.Constant(applied, site), applied));
    }

    // The gun straight down over everything, 180 mm above the rim: walls see it at a grazing angle.
    private static FilmPicture Film()
    {
        SprayGun gun = new() { FluidRate = VolumeFlow.FromMillilitersPerMinute(180), TransferEfficiency = Ratio.FromPercent(65) };
        FanPattern fan = FanPattern.Beta(Length.FromMillimeters(220), Length.FromMillimeters(60), Length.FromMillimeters(180), 2);
        SprayFilmLimits limits = new(Length.FromMicrometers(60), Length.FromMicrometers(140));
        List<SprayStroke> above = [];
        for (int coat = 0; coat < 2; coat++)
        {
            for (double y = -0.385; y <= 0.39; y += 0.11)
            {
                above.Add(new() { Start = new(-0.8, y, 0.52), End = new(0.8, y, 0.52), Aim = new(0, 0, -1),
                    Speed = Speed.FromCentimetersPerSecond(20) });
            }
        }

        FilmMap map = new StrokePlan(gun, fan, above).SprayOnto(OneBathroom.Job.Fixtures[0].Fixture.Tessellate(Length.FromMillimeters(10)),
            Length.FromMillimeters(20), limits);
        return new FilmPicture(map, "a tub sprayed straight down, two coats");
    }
}
