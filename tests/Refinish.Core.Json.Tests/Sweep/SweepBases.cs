using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json.Nodes;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Json.Shapes;
using Refinish.Scheduling;
using Refinish.Substrates;
using Refinish.Tests.Fixtures;
using Refinish.Tests.Jobs;
using UnitsNet;

namespace Refinish.Json.Tests;

/// <summary>
/// The jobs in which inputs are swept, the richest and most usual first. Every figure is invented. An input is swept in the first job that
/// has it, at the place nearest the top, so that each later job adds only what none before it has.
/// </summary>
internal static class SweepBases
{
    private static readonly Lazy<IReadOnlyDictionary<string, JsonNode>> Documents = new(() => Jobs().ToDictionary(
        job => job.Name, job => JsonNode.Parse(JobJson.Write(Short(job.Job)))!));

    private static readonly Lazy<ILookup<string, SweptInput>> Shared = new(() =>
    {
        HashSet<string> taken = [];
        return Documents.Value.SelectMany(job => SweptInput.Of(job.Value).OrderBy(input => input.Depth).Where(input => taken.Add(input.Name)).Select(input => (job.Key, input)).ToArray())
            .ToLookup(each => each.Key, each => each.input);
    });

    public static IEnumerable<string> Names => Documents.Value.Keys;

    /// <summary>The document of a job, to be changed at will.</summary>
    public static JsonNode Document(string name) => Documents.Value[name].DeepClone();

    /// <summary>The inputs that are swept in this job.</summary>
    public static IEnumerable<SweptInput> Inputs(string name) => Shared.Value[name];

    // Three of four limits of exposure are of substances that no job here has; each is read and written a thousand times.
    private static Job Short(Job job)
    {
        HashSet<string> names = [.. Catalogue.Of(job).Solvents.Select(solvent => solvent.CasNumber)];
        LimitSet limits = job.Shop.Limits;
        return job with
        {
            Shop = job.Shop with
            {
                Effort = SearchEffort.Quick,
                Limits = limits with { Exposure = [.. limits.Exposure.Where(limit => limit.Period is not null || names.Contains(limit.CasNumber)).DistinctBy(limit => (limit.CasNumber, limit.Kind))] },
            },
        };
    }

    private static IEnumerable<(string Name, Job Job)> Jobs()
    {
        Job house = House();
        yield return ("house", house);
        yield return ("hiding", InventedJobs.ColdHouse());
        yield return ("own-coat", OwnProducts.With(OwnProducts.ThreePart, 2, Ratio.FromPercent(10)));
        yield return ("lamp", OwnProducts.With(OwnProducts.LampCured, 2));
        yield return ("brought", BroughtJob.Job());
        yield return ("daily", In(Examples.Daily()));
        yield return ("logged", In(Examples.Logged()));
        int one = 0;
        foreach (IFixture fixture in Tapes.Every().Append(Oval()).Concat(EveryFixture.Rough).Append(EveryFixture.Zoned))
        {
            yield return ("fixture/" + one++ + "/" + fixture.GetType().Name, With(new Survey { Material = FixtureMaterial.EnamelledSteel, Defects = [] }, fixture));
        }

        foreach (Defect defect in Examples.Defects)
        {
            yield return ("defect/" + one++ + "/" + defect.Kind.Code, With(new Survey { Material = MaterialOf(defect), Defects = [defect] }, InventedJobs.Tub));
        }

        yield return ("books", Books());
        yield return ("own-material", OwnMaterial());
        yield return ("own-cans", OwnCans());
        yield return ("calendar", Calendar());
        yield return ("rules", house with { Shop = house.Shop with { Survey = EveryShop.Make().Survey } });
        yield return ("work", OwnWork());
    }

    /// <summary>A bench of a material of one's own, of which every figure is set.</summary>
    private static Job OwnMaterial()
    {
        Job job = BroughtJob.Job();
        FixtureJob bench = job.Fixtures.Single(fixture => fixture.Id == "bench");
        return job with { Fixtures = [bench with { Survey = bench.Survey with { Material = EveryFixture.Panel, Defects = [] } }], Changes = [] };
    }

    /// <summary>A topcoat of which every figure is set, over preparation and grains.</summary>
    private static Job OwnCans()
    {
        Job house = InventedJobs.OccupiedHouse();
        CoatingSystem every = EveryShop.Make().System;
        CoatingLayer layer = every.Steps[3].Layer!;
        CoatingProduct product = layer.Product with { GoesOver = [CoatingRole.Primer, CoatingRole.Topcoat], Materials = GenericCatalogue.AcrylicUrethaneTopcoat.Materials };
        CoatingSystem system = new(
            "every-can",
            "every can (invented)",
            [
                SystemStep.Preparation(SystemStepKind.Clean, "clean twice", [FixtureMaterial.EnamelledSteel], Source.CommonPractice("two steps")),
                SystemStep.Wipe(GenericCatalogue.SilanePromoter),
                SystemStep.Coat(new CoatingLayer(GenericCatalogue.EpoxyPrimer, Length.FromMicrometers(30), 1, Ratio.FromPercent(10))),
                SystemStep.Coat(new CoatingLayer(product, Length.FromMicrometers(30), 2, Ratio.FromPercent(10))),
                every.Steps[4],
                SystemStep.CoatWithGrains(new CoatingLayer(product, Length.FromMicrometers(30), 1, Ratio.FromPercent(10)), GenericCatalogue.PolymerBeads),
            ],
            Length.FromMicrometers(300),
            Source.Invented("for the tests"));
        MaterialPrice[] prices = [.. product.KitSizes.Select(size => new MaterialPrice(product.Id, size, 95m))];
        return house with
        {
            Shop = house.Shop with { System = system, Prices = house.Shop.Prices with { Materials = [.. house.Shop.Prices.Materials, .. prices] } },
            Fixtures = [house.Fixtures[0] with { Options = [] }],
        };
    }

    /// <summary>Clocks that are set forward, days off, quiet and closed hours, a day asked for.</summary>
    private static Job Calendar()
    {
        Job house = InventedJobs.OccupiedHouse();
        Job every = Examples.Everything();
        return house with
        {
            Shop = house.Shop with
            {
                Calendar = new WorkCalendar(every.Shop.Calendar.Clock, [.. InventedJobs.Weekdays.Shifts, .. every.Shop.Calendar.Shifts.Skip(2)], every.Shop.Calendar.DaysOff),
            },
            Premises = house.Premises with
            {
                Rooms = [house.Premises.Rooms[0] with { Room = every.Premises.Rooms[0].Room, Exhaust = every.Premises.Rooms[0].Exhaust }],
                QuietHours = every.Premises.QuietHours, Closed = every.Premises.Closed,
            },
            Days = [new DayRequest([new DateTime(2027, 3, 1), new DateTime(2027, 3, 3)], ["bath/inspect"])],
        };
    }

    /// <summary>Work of one's own as an option and as changes, opened cans, extras and an alternative.</summary>
    private static Job OwnWork()
    {
        Job house = InventedJobs.OccupiedHouse();
        Job every = Examples.Everything();
        FixtureJob tub = house.Fixtures[0];
        Operation Own(string id) => EveryFixture.Own(id) with { Room = "bath", Fixtures = ["tub"], Beside = null, IsInterruptible = false, Time = null, Labour = [EveryFixture.Own(id).Labour[0] with { Fixture = "tub", Room = "bath" }] };
        return house with
        {
            Shop = house.Shop with
            {
                Crew = [new Worker { Id = "ada", Wage = 31.25m }, new Worker { Id = "ben" }], Guns = 2,
                Prices = house.Shop.Prices with { Options = [.. house.Shop.Prices.Options, every.Shop.Prices.Options[^1]] },
            },
            Fixtures =
            [
                tub with { Options = [.. tub.Options, FixtureOption.Work("X-1", Own("lamp"), WorkKind.Demask) with { Quantity = 2.5m }], Zones = [FixtureZoneKind.Floor, FixtureZoneKind.Wall] },
            ],
            Changes =
            [
                OperationChange.Add(Own("notice"), "bath/set-up") with
                {
                    Lags = [new StepLag("notice", "bath/clear", TimeSpan.FromMinutes(20), TimeSpan.FromHours(300), "neighbours told")],
                },
            ],
            Stock = every.Stock,
            Extras = [.. every.Extras.Select(extra => extra with { Fixture = null, Room = null })],
            Alternatives = [new JobAlternative { Id = "white", Name = "in white", Fixtures = [tub with { Options = [] }] }],
            Terms = every.Terms with { Discount = Discount.Of(20m) with { Reason = "a friend", MayUndercutMinimum = true } },
        };
    }

    /// <summary>One tub with everything that one can say of it, terms, extras, stock and an alternative.</summary>
    private static Job House()
    {
        Job house = InventedJobs.OccupiedHouse();
        Job every = Examples.Everything();
        FixtureJob tub = house.Fixtures[0];
        return house with
        {
            Fixtures =
            [
                tub with
                {
                    Efficiencies = [new ZoneEfficiency(FixtureZoneKind.Floor, Ratio.FromPercent(61))], Surface = Temperature.FromDegreesCelsius(19),
                    Weight = Mass.FromKilograms(45), WallThickness = Length.FromMillimeters(3), Survey = tub.Survey with { FixtureAge = 31 },
                },
            ],
            Terms = every.Terms with { Exemption = new TaxExemption { Reason = "public body (invented)", Codes = ["sales"] } },
        };
    }

    /// <summary>The house with the books of a shop in which every optional figure is set.</summary>
    private static Job Books()
    {
        Job house = House();
        Shop every = EveryShop.Make();
        return house with
        {
            Shop = house.Shop with
            {
                Crew = every.Crew, Guns = every.Guns, Overtime = every.Overtime, LongestAfterKey = TimeSpan.FromHours(48), DepositLimit = every.DepositLimit,
                Losses = every.Losses, Cups = every.Cups, Filler = every.Filler, Warranty = every.Warranty, Labour = every.Labour, Prices = every.Prices,
                Noise = every.Noise, DefectMaterials = every.DefectMaterials,
            },
        };
    }

    private static PedestalSink Oval() =>
        new(Tapes.Sink() with { Outline = PlanOutline.Ellipse(Length.FromInches(24), Length.FromInches(19)) });

    private static Job In(RoomClimate climate)
    {
        Job house = InventedJobs.OccupiedHouse();
        return house with { Premises = house.Premises with { Rooms = [house.Premises.Rooms[0] with { Climate = climate }] } };
    }

    private static Job With(Survey survey, IFixture fixture)
    {
        Job house = InventedJobs.OccupiedHouse();
        return house with { Replacement = null, Fixtures = [new FixtureJob { Id = "one", Room = "bath", Fixture = fixture, Survey = survey }] };
    }

    private static FixtureMaterial MaterialOf(Defect defect) => defect switch
    {
        GroutFailure or LooseTiles => FixtureMaterial.CeramicTile,
        Burn => FixtureMaterial.Laminate,
        FlexingFloor or Crack or Crazing => FixtureMaterial.Gelcoat,
        _ => FixtureMaterial.EnamelledSteel,
    };
}
