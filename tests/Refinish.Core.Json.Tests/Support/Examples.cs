using System;
using System.Linq;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Colours;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Scheduling;
using Refinish.Substrates;
using Refinish.Tests.Fixtures;
using UnitsNet;

namespace Refinish.Json.Tests;

/// <summary>Jobs for the tests. Every figure is invented and only has to be allowed.</summary>
internal static class Examples
{
    public static Defect[] Defects { get; } =
    [
        new Chip(Length.FromMillimeters(18), Length.FromMillimeters(1.5)),
        new WornPatch(Length.FromMillimeters(150), Length.FromMillimeters(100), Length.FromMillimeters(0.4), BowlProfile.FlatPan),
        new RustSpot(Length.FromMillimeters(25)),
        new Crack(Length.FromMillimeters(120), Length.FromMillimeters(2), Length.FromMillimeters(3), true, GrooveProfile.Round),
        new Perforation(Length.FromMillimeters(4)),
        new FlexingFloor(Length.FromMillimeters(2)),
        new Crazing(Ratio.FromPercent(12)),
        new PeelingCoat(Area.FromSquareCentimeters(900), AdhesionGrade.Grade2B),
        new SiliconeResidue(Length.FromMeters(3)),
        new GroutFailure(Length.FromMeters(1.2)),
        new LooseTiles(3),
        new Burn(Length.FromMillimeters(9)),
        new Pitting(Area.FromSquareCentimeters(40), Length.FromMillimeters(0.3), Ratio.FromPercent(30)),
        new Chip(Length.FromMillimeters(30), Length.FromMillimeters(12), Length.FromMillimeters(2)),
        new LowSpot(Length.FromMillimeters(300), Length.FromMillimeters(200), Length.FromMillimeters(0.6), Length.FromMillimeters(40)),
        new Liner(Area.FromSquareMeters(2), LinerState.Loose, comesOff: true),
        Inlay("loose-inlay") with
        {
            Work = new DefectWork
            {
                Kind = WorkKind.Fill, Instruction = "bed it again", Hours = new ThreePoint(0.1, 0.2, 0.5), RaisesDust = true,
                Materials = [new MaterialNeed("bedding", "bedding epoxy", Volume.FromMilliliters(3))],
                Vapours = [new Evaporation { Name = "wipe", Mass = Mass.FromGrams(4), Solvents = [new SolventShare(Solvents.Isopropanol, Ratio.FromPercent(100))] }],
                Source = Source.Invented("for these tests"),
            },
        },
        Inlay("other-inlay") with
        {
            Work = new DefectWork { Kind = WorkKind.Fill, Instruction = "bed it again", LabourCode = "L-2", Source = Source.Invented("for these tests") },
        },
    ];

    private static OwnDefect Inlay(string code) => new()
    {
        Code = code,
        Name = "loose inlay",
        Effect = Suitability.SuitableWithConditions,
        Remedy = "bed it again",
        RepeatTest = "tap test",
        Source = Source.Invented("for these tests"),
        Count = 2, Hollow = new Hollow(Volume.FromMilliliters(4), Length.FromMillimeters(3)), Cautions = [Cautions.Dust],
    };

    public static Job Named(string which) => which switch
    {
        "bathroom" => Bathroom(),
        "everything" => Everything(),
        _ => Least(),
    };

    /// <summary>A tub, a sink and tiled walls in one room, all of which can be done.</summary>
    public static Job Bathroom() => new()
    {
        Id = "quote-1",
        Name = "Guesthouse at the old ferry, bathroom 3 (invented)",
        Shop = Shop.Generic with
        {
            Name = "refinishers at the ferry (invented)",
            Calendar = WorkCalendar.EveryDay(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)),
                LocalClock.Fixed(TimeSpan.FromHours(1))),
            AirborneFraction = Ratio.FromPercent(10),
        },
        Premises = new Premises { Id = "guesthouse", Difficulty = 1.1, Rooms = [Room("bath-3", Held())] },
        Start = new DateTimeOffset(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1)),
        Fixtures = [Tub(), Sink(), Surround()],
        Replacement = Replacement(),
    };

    /// <summary>A job in which no optional field is set.</summary>
    public static Job Least() => new()
    {
        Id = "least",
        Shop = new Shop
        {
            Name = "one person (invented)",
            Crew = [new Worker { Id = "one" }],
            Calendar = WorkCalendar.EveryDay(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)),
                LocalClock.Fixed(TimeSpan.Zero)),
            Prices = new PriceBook { Currency = Currency.Of("EUR") },
            Warranty = new WarrantyTerms { Years = 5, Life = new WeibullLife(2.2, 18), CostPerClaim = 320m,
                ClaimProbability = Ratio.FromPercent(80) },
            System = GenericCatalogue.EpoxyUrethaneSystem,
            Gun = new SprayGun { FluidRate = VolumeFlow.FromMillilitersPerMinute(160), TransferEfficiency = Ratio.FromPercent(60) },
        },
        Premises = new Premises { Id = "flat", Rooms = [Room("bath", Held())] },
        Start = new DateTimeOffset(2027, 3, 1, 8, 0, 0, TimeSpan.Zero),
        Fixtures = [new FixtureJob { Id = "tub", Room = "bath", Fixture = Tub().Fixture,
            Survey = new Survey { Material = FixtureMaterial.EnamelledCastIron, Defects = [] } }],
    };

    /// <summary>
    /// A job with one of every kind of thing, in which every optional field is set to something else than what leaving it out would mean.
    /// </summary>
    public static Job Everything() => Bathroom() with
    {
        Shop = EveryShop.Make(),
        Premises = new Premises
        {
            Id = "guesthouse",
            Name = "the old ferry",
            Difficulty = 1.1,
            Rooms =
            [
                new SiteRoom
                {
                    Id = "bath-3",
                    Name = "bathroom 3",
                    Room = new Room
                    {
                        Length = Length.FromMeters(2.6), Width = Length.FromMeters(2.1), Height = Length.FromMeters(2.5),
                        AirPressure = Pressure.FromHectopascals(985), Infiltration = VolumeFlow.FromCubicMetersPerHour(12),
                            AirTemperature = Temperature.FromDegreesCelsius(22),
                    },
                    Exhaust = new Exhaust { LabelFlow = VolumeFlow.FromCubicFeetPerMinute(1000), DeliveredFraction = Ratio.FromPercent(70),
                        MixingFactor = 4 },
                    Climate = RoomClimate.Held(new MoistAir(Temperature.FromDegreesFahrenheit(71.6), Ratio.FromPercent(48),
                        Pressure.FromHectopascals(985)), Temperature.FromDegreesCelsius(20)),
                },
                Room("bath-4", Daily()),
                Room("bath-5", Logged()),
            ],
            QuietHours = [new WorkShift(DayOfWeek.Monday, new WorkingHours(TimeSpan.FromHours(12), TimeSpan.FromHours(14.5)))],
            Closed = [new TimeInterval(new DateTimeOffset(2027, 3, 4, 0, 0, 0, TimeSpan.FromHours(1)),
                new DateTimeOffset(2027, 3, 5, 0, 0, 0, TimeSpan.FromHours(1)))],
        },
        Fixtures = [.. Tapes.Every().Concat(EveryFixture.Rough).Append(EveryFixture.Zoned).Select(EveryFixture.Of)],
        Days = [new DayRequest([new DateTime(2027, 3, 2), new DateTime(2027, 3, 3)], ["bath-3/inspect"])],
        Changes =
        [
            OperationChange.Add(EveryFixture.Own("notice"), "bath-3/set-up") with
            {
                Lags = [new StepLag("notice", "bath-3/clear", TimeSpan.FromMinutes(20), TimeSpan.FromHours(3), "neighbours told")],
            },
            OperationChange.Replace("bath-3/mask", EveryFixture.Own("masking")),
            OperationChange.Move("bath-3/caulk", "bath-3/demask"),
            OperationChange.Strike("bath-3/clean-gun/1"),
        ],
        Stock = [new OpenedKit(GenericCatalogue.EpoxyPrimer,
            [new("epoxy-primer-base", Volume.FromMilliliters(400)), new("epoxy-primer-hardener", Volume.FromMilliliters(100))],
            new DateTimeOffset(2027, 2, 1, 9, 0, 0, TimeSpan.FromHours(1))), EveryShop.LampPowder()],
        Extras =
        [
            new ExtraItem { Id = "plumber", Category = LineCategory.Subcontract, Description = "refits the waste", Quantity = 1.5m, Unit = LineUnit.Hour, Rate = 62.345m, UnitPrice = 95.50m, Fixture = "fixture-0", Room = "bath-3", Cautions = [Cautions.MakeUpAir] },
            new ExtraItem { Id = "lift", Category = LineCategory.Equipment, Description = "hoist for the cast-iron tub", Quantity = 1, Unit = LineUnit.Day, Rate = 48m },
        ],
        Terms = Terms(),
        Alternatives =
        [
            new JobAlternative { Id = "white", Name = "the tub in white", Fixtures = [EveryFixture.Of(Tapes.Every()[0], 0)], LeftOut = [EveryFixture.Of(Tapes.Every()[1], 1).Id] },
        ],
        Replacement = Replacement(),
    };

    public static QuoteTerms Terms() => new()
    {
        Number = "Q-1042",
        Revision = "B",
        Issued = new DateTimeOffset(2027, 2, 20, 9, 30, 0, TimeSpan.FromHours(1)),
        ValidFor = 30,
        Discount = Discount.Of(Ratio.FromPercent(5)) with { Reason = "neighbours", MayUndercutMinimum = true },
        Exemption = new TaxExemption { Reason = "public body (invented)", Codes = ["local"] },
        HoldMargin = true,
        Payments =
        [
            PaymentStage.OfShare("deposit", PaymentDue.OnAcceptance, Ratio.FromPercent(10)) with { Name = "deposit against the calendar" },
            PaymentStage.OfAmount("goods", PaymentDue.AtStart, 120.50m) with { Name = "goods delivered" },
            PaymentStage.OfAmount("later", PaymentDue.AfterCompletion, 10m) with { Days = 7 },
            PaymentStage.OfShare("much-later", PaymentDue.AfterCompletion, Ratio.FromPercent(2)) with { Days = 14 },
            PaymentStage.OfRest("rest", PaymentDue.AfterCompletion) with { Name = "the rest", Days = 30 },
        ],
        PricesShown = PricesShown.WithTax,
    };

    public static RoomClimate Held() =>
        RoomClimate.Held(new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(48)), Temperature.FromDegreesCelsius(20));

    public static RoomClimate Daily() => RoomClimate.Daily(
        new MoistAir(Temperature.FromDegreesCelsius(20), Ratio.FromPercent(45)), Temperature.FromDegreesCelsius(19),
            TemperatureDelta.FromKelvins(2.5), TimeSpan.FromHours(15.5));

    public static RoomClimate Logged() => RoomClimate.Logged(
        new Curing.TemperatureHistory(
            new DateTimeOffset(2027, 3, 1, 0, 0, 0, TimeSpan.FromHours(1)),
            [new(TimeSpan.FromHours(9), Temperature.FromDegreesFahrenheit(67)),
                new(TimeSpan.FromMinutes(500), Temperature.FromDegreesCelsius(21.7))],
            lastHoldsOn: true),
        Temperature.FromDegreesFahrenheit(47.3),
        Temperature.FromDegreesCelsius(18.2));

    public static SiteRoom Room(string id, RoomClimate climate) => new()
    {
        Id = id,
        Room = new Room { Length = Length.FromMeters(2.6), Width = Length.FromMeters(2.1), Height = Length.FromMeters(2.5) },
        Exhaust = new Exhaust { LabelFlow = VolumeFlow.FromCubicMetersPerHour(1700) },
        Climate = climate,
    };

    private static FixtureJob Tub() => new()
    {
        Id = "tub",
        Name = "bathtub",
        Room = "bath-3",
        Fixture = new RecessedBathtub(new RecessedBathtubMeasurements
        {
            RimLength = Length.FromMillimeters(1346), RimWidth = Length.FromMillimeters(597), RimCornerRadius = Length.FromMillimeters(152),
            FloorLength = Length.FromMillimeters(1118), FloorWidth = Length.FromMillimeters(495),
                FloorCornerRadius = Length.FromMillimeters(127),
            Depth = Length.FromMillimeters(337), HeadRun = Length.FromMillimeters(178), FootRun = Length.FromMillimeters(50),
                CoveRadius = Length.FromMillimeters(64),
            OverallLength = Length.FromMillimeters(1524), OverallWidth = Length.FromMillimeters(762),
                ApronHeight = Length.FromMillimeters(368),
            DrainDiameter = Length.FromMillimeters(51), OverflowDiameter = Length.FromMillimeters(76),
        }),
        Survey = new Survey
        {
            Material = FixtureMaterial.EnamelledCastIron,
            Defects = [new Chip(Length.FromMillimeters(18), Length.FromMillimeters(1.5)), new RustSpot(Length.FromMillimeters(25)),
                new SiliconeResidue(Length.FromMeters(3))],
            YearBuilt = 1955,
            LeadTest = LeadTest.Negative,
        },
        OldColour = new CieLab(71, -9, 14),
        NewColour = new CieLab(95, -0.5, 2),
        Options =
        [
            FixtureOption.SlipResistantFloor("slip-floor", GenericCatalogue.PolymerBeads, AreaDensity.FromGramsPerSquareMeter(20)),
            FixtureOption.DrainTrim("drain-trim"),
        ],
    };

    private static FixtureJob Sink() => new()
    {
        Id = "sink",
        Room = "bath-3",
        Fixture = new PedestalSink(Tapes.Sink()),
        Survey = new Survey
        {
            Material = FixtureMaterial.VitreousChina, Defects = [new Chip(Length.FromMillimeters(12), Length.FromMillimeters(1.2))],
            YearBuilt = 1955, LeadTest = LeadTest.Negative,
        },
    };

    private static FixtureJob Surround() => new()
    {
        Id = "surround",
        Room = "bath-3",
        Fixture = new TiledSurround(new TiledWallMeasurements
        {
            Walls = [new WallRun(Length.FromMillimeters(1524), Length.FromMillimeters(1500)),
                new WallRun(Length.FromMillimeters(762), Length.FromMillimeters(1500))],
            TileLength = Length.FromMillimeters(108), TileWidth = Length.FromMillimeters(108), JointWidth = Length.FromMillimeters(3),
                JointDepth = Length.FromMillimeters(1.5),
            JointProfile = JointProfile.Sharp,
                Openings = [new RectangularOpening(Length.FromMillimeters(160), Length.FromMillimeters(110))],
        }),
        Survey = new Survey { Material = FixtureMaterial.CeramicTile, Defects = [new GroutFailure(Length.FromMeters(1.2))],
            YearBuilt = 1955, LeadTest = LeadTest.Negative },
    };

    private static ReplacementOffer Replacement() => new()
    {
        Replacement = new RenewalOption { Name = "replacing", Parts = [new("tub, sink and tile", 2900m)], LifeYears = 30,
            DaysOutOfUse = 12, YearlyCost = 15m },
        RefinishLifeYears = 12,
        RefinishYearlyCost = 35m,
        DiscountRate = Ratio.FromPercent(3),
        CostPerDayOutOfUse = 70m,
    };
}
