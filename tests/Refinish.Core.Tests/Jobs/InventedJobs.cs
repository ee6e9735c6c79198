using System;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Colours;
using Refinish.Estimating;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Scheduling;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Tests.Jobs;

/// <summary>Three whole jobs, invented for the tests. <c>whole_jobs.py</c> holds the same inputs and works them without this
/// library.</summary>
internal static class InventedJobs
{
    /// <summary>A Monday; all clocks of these jobs run an hour ahead of universal time.</summary>
    public static DateTimeOffset Monday { get; } = new(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1));

    public static WorkCalendar Weekdays { get; } =
        WorkCalendar.Weekdays(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)), LocalClock.Fixed(TimeSpan.FromHours(1)));

    public static ReplacementOffer Replacing { get; } = new()
    {
        Replacement = new RenewalOption { Name = "replacing", Parts = [new CostPart("new fixtures and tile", 5200m)], LifeYears = 20,
            DaysOutOfUse = 9 },
        RefinishLifeYears = 11,
        DiscountRate = Ratio.FromPercent(4),
        CostPerDayOutOfUse = 40m,
    };

    /// <summary>Two people, one of whom stands by; a limit of mist and a guess of what of the overspray stays in the air.</summary>
    public static Shop Shop { get; } = Shop.Generic with
    {
        Name = "invented shop",
        Calendar = Weekdays,
        Prices = Shop.Generic.Prices with { Taxes = [new() { Code = "sales", Name = "sales tax", Rate = Ratio.FromPercent(7) }] },
        AirborneFraction = Ratio.FromPercent(10),
    };

    /// <summary>The five-foot tub of the docs' example tape.</summary>
    public static RecessedBathtub Tub { get; } = TubOf(1, 53, 44);

    /// <summary>One tub of enamelled steel with chips and rust in an occupied house.</summary>
    public static Job OccupiedHouse() => new()
    {
        Id = "occupied",
        Shop = Shop,
        Premises = new Premises { Id = "house", Difficulty = 1.15, Rooms = [Bath("bath", 22, 20)] },
        Start = Monday,
        Replacement = Replacing,
        Fixtures =
        [
            new FixtureJob
            {
                Id = "tub",
                Room = "bath",
                Fixture = Tub,
                Survey = new Survey
                {
                    Material = FixtureMaterial.EnamelledSteel,
                    Defects =
                    [
                        new Chip(Length.FromMillimeters(18), Length.FromMillimeters(1.2)), new Chip(Length.FromMillimeters(30),
                            Length.FromMillimeters(2)),
                        new RustSpot(Length.FromMillimeters(20)), new SiliconeResidue(Length.FromMeters(2.4)),
                    ],
                    YearBuilt = 1955,
                    LeadTest = LeadTest.Negative,
                },
                Options =
                [
                    FixtureOption.SlipResistantFloor("slip-floor", GenericCatalogue.PolymerBeads, AreaDensity.FromGramsPerSquareMeter(20)),
                    FixtureOption.DrainTrim("drain-trim"),
                ],
            },
        ],
    };

    /// <summary>A peeling tub to be warmed and stripped, and a tiled surround, in a cold house; a colour change; two people of different
    /// wages.</summary>
    public static Job ColdHouse() => new()
    {
        Id = "cold",
        Shop = Shop with { Crew = [new Worker { Id = "ada", Wage = 32m }, new Worker { Id = "ben", Wage = 24m }], System = Hiding },
        Premises = new Premises { Id = "cottage", Rooms = [Bath("bath", 24, 20)] },
        Start = Monday,
        Fixtures =
        [
            new FixtureJob
            {
                Id = "tub",
                Room = "bath",
                Fixture = TubOf(1, 53, 44),
                Survey = new Survey
                {
                    Material = FixtureMaterial.EnamelledCastIron, Defects = [], PreviouslyRefinished = true,
                        OldCoatAdhesion = AdhesionGrade.Grade2B, YearBuilt = 1995,
                },
                Surface = Temperature.FromDegreesCelsius(12),
                OldColour = new CieLab(62, -12, 24),
                NewColour = new CieLab(94, -0.5, 2),
            },
            new FixtureJob
            {
                Id = "surround",
                Room = "bath",
                Fixture = Surround,
                Survey = new Survey { Material = FixtureMaterial.CeramicTile, Defects = [new GroutFailure(Length.FromMeters(1.2))],
                    YearBuilt = 1995 },
            },
        ],
    };

    /// <summary>A rental: a shower pan whose floor gives, an L of laminate in the kitchen, a vessel sink in the bath.</summary>
    public static Job Rental() => new()
    {
        Id = "rental",
        Shop = Shop,
        Premises = new Premises
        {
            Id = "flat",
            Rooms =
            [
                new SiteRoom
                {
                    Id = "kitchen", Room = new Room { Length = Length.FromMeters(4), Width = Length.FromMeters(3), Height = Length.FromMeters(2.5) },
                    Exhaust = new Exhaust { LabelFlow = VolumeFlow.FromCubicMetersPerHour(2400) }, Climate = Held(21, 21),
                },
                Bath("bath", 23, 19),
            ],
        },
        Start = Monday,
        Replacement = Replacing,
        Fixtures =
        [
            new FixtureJob { Id = "pan", Room = "bath", Fixture = Pan, Survey = new Survey { Material = FixtureMaterial.Gelcoat,
                Defects = [new FlexingFloor(Length.FromMillimeters(5))], YearBuilt = 1995 } },
            new FixtureJob { Id = "counter", Room = "kitchen", Fixture = Counter,
                Survey = new Survey { Material = FixtureMaterial.Laminate, Defects = [new Burn(Length.FromMillimeters(20))],
                    YearBuilt = 1995 } },
            new FixtureJob { Id = "vessel", Room = "bath", Fixture = Vessel,
                Survey = new Survey { Material = FixtureMaterial.VitreousChina, Defects = [new Chip(Length.FromMillimeters(10),
                    Length.FromMillimeters(1))], YearBuilt = 1995 } },
        ],
    };

    public static RoomClimate Held(double air, double surface) =>
        RoomClimate.Held(new MoistAir(Temperature.FromDegreesCelsius(air), Ratio.FromPercent(45)), Temperature.FromDegreesCelsius(surface));

    /// <summary>A bathroom of 8 by 5 by 8 ft with an exhaust of 1000 cfm on the label.</summary>
    public static SiteRoom Bath(string id, double air, double surface) => new()
    {
        Id = id,
        Room = new Room { Length = Length.FromFeet(8), Width = Length.FromFeet(5), Height = Length.FromFeet(8) },
        Exhaust = new Exhaust { LabelFlow = VolumeFlow.FromCubicFeetPerMinute(1000) },
        Climate = Held(air, surface),
    };

    /// <summary>The tub with its level lengths multiplied, for a larger or smaller one of the same shape.</summary>
    public static RecessedBathtub TubOf(double scale, double rim, double floor) => new(new RecessedBathtubMeasurements
    {
        RimLength = Length.FromInches(scale * rim), RimWidth = Length.FromInches(scale * 23.5),
            RimCornerRadius = Length.FromInches(scale * 6),
        FloorLength = Length.FromInches(scale * floor), FloorWidth = Length.FromInches(scale * 19.5),
            FloorCornerRadius = Length.FromInches(scale * 5),
        Depth = Length.FromInches(scale * 13.25), HeadRun = Length.FromInches(scale * (rim - floor - 2)),
            FootRun = Length.FromInches(scale * 2),
        CoveRadius = Length.FromInches(scale * 2.5), OverallLength = Length.FromInches(scale * 60),
            OverallWidth = Length.FromInches(scale * 30),
        ApronHeight = Length.FromInches(scale * 14.5), DrainDiameter = Length.FromInches(scale * 2),
            OverflowDiameter = Length.FromInches(scale * 3),
    });

    // Scattering and colours are invented: a white topcoat and a grey primer that hide in two coats of the three.
    private static CoatingSystem Hiding { get; } = new(
        "hiding",
        "generic system with hiding figures",
        [
            SystemStep.Wipe(GenericCatalogue.SilanePromoter),
            SystemStep.Coat(new CoatingLayer(
                GenericCatalogue.EpoxyPrimer with { Scattering = ReciprocalLength.FromInverseMils(2.3), Colour = new CieLab(84, -0.5, 1) },
                    Length.FromMicrometers(30), 1, Ratio.FromPercent(10))),
            SystemStep.Coat(new CoatingLayer(
                GenericCatalogue.AcrylicUrethaneTopcoat with { Scattering = ReciprocalLength.FromInverseMils(3.5) },
                    Length.FromMicrometers(30), 3, Ratio.FromPercent(10))),
        ],
        null,
        Source.Invented("for this test"));

    public static TiledSurround Surround { get; } = new(new TiledWallMeasurements
    {
        Walls =
        [
            new WallRun(Length.FromInches(30), Length.FromInches(60)), new WallRun(Length.FromInches(60), Length.FromInches(60)),
            new WallRun(Length.FromInches(30), Length.FromInches(60)),
        ],
        TileLength = Length.FromInches(4.25), TileWidth = Length.FromInches(4.25), JointWidth = Length.FromInches(0.125),
            JointDepth = Length.FromInches(0.0625),
        JointProfile = JointProfile.Sharp,
        Openings = [new RectangularOpening(Length.FromInches(6), Length.FromInches(4))],
    });

    private static ShowerPan Pan { get; } = new(new ShowerPanMeasurements
    {
        FloorLength = Length.FromInches(33), FloorWidth = Length.FromInches(33), WallHeight = Length.FromInches(3),
            LedgeWidth = Length.FromInches(1.5),
        CurbInsideHeight = Length.FromInches(3), CurbTopWidth = Length.FromInches(4.5), CurbOutsideHeight = Length.FromInches(5),
            DrainDiameter = Length.FromInches(2),
    });

    public static Countertop Counter { get; } = new(new CountertopMeasurements
    {
        Runs = [new CounterRun(Length.FromInches(96), Length.FromInches(25.5)), new CounterRun(Length.FromInches(72),
            Length.FromInches(25.5))],
        Thickness = Length.FromInches(1.5), Profile = EdgeProfile.Bullnose, LeftEndIsOpen = true, RightEndIsOpen = true,
        BacksplashHeight = Length.FromInches(4), BacksplashThickness = Length.FromInches(0.75),
        CutOuts = [new RectangularOpening(Length.FromInches(32), Length.FromInches(21))],
    });

    public static CounterSink Vessel { get; } = new(new CounterSinkMeasurements
    {
        Mounting = SinkMounting.Vessel, Shape = BowlShape.SphericalCap, MouthLength = Length.FromInches(16),
            MouthWidth = Length.FromInches(16),
        BowlDepth = Length.FromInches(5.5), WallThickness = Length.FromInches(0.5), BaseDiameter = Length.FromInches(3),
        DrainDiameter = Length.FromInches(1.75), OverflowDiameter = Length.Zero,
    });
}
