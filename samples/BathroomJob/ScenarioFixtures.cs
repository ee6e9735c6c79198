using Refinish.Coatings;
using Refinish.Colours;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Samples.BathroomJob;

/// <summary>The invented fixtures: tape readings, findings and wishes.</summary>
internal static class ScenarioFixtures
{
    /// <summary>An avocado-green cast iron tub that is to be white, with a slip-resistant floor and new drain trim.</summary>
    public static FixtureJob Tub(string id, string room) => new()
    {
        Id = id,
        Name = "bathtub",
        Room = room,
        Fixture = new RecessedBathtub(new RecessedBathtubMeasurements
        {
            RimLength = Length.FromMillimeters(1346),
            RimWidth = Length.FromMillimeters(597),
            RimCornerRadius = Length.FromMillimeters(152),
            FloorLength = Length.FromMillimeters(1118),
            FloorWidth = Length.FromMillimeters(495),
            FloorCornerRadius = Length.FromMillimeters(127),
            Depth = Length.FromMillimeters(337),
            HeadRun = Length.FromMillimeters(178),
            FootRun = Length.FromMillimeters(50),
            CoveRadius = Length.FromMillimeters(64),
            OverallLength = Length.FromMillimeters(1524),
            OverallWidth = Length.FromMillimeters(762),
            ApronHeight = Length.FromMillimeters(368),
            DrainDiameter = Length.FromMillimeters(51),
            OverflowDiameter = Length.FromMillimeters(76),
        }),
        Survey = new Survey
        {
            Material = FixtureMaterial.EnamelledCastIron,
            Defects =
            [
                new Chip(Length.FromMillimeters(18), Length.FromMillimeters(1.5)),
                new Chip(Length.FromMillimeters(9), Length.FromMillimeters(1)),
                new WornPatch(Length.FromMillimeters(150), Length.FromMillimeters(100), Length.FromMillimeters(0.4)),
                new RustSpot(Length.FromMillimeters(25)),
                new SiliconeResidue(Length.FromMeters(3)),
            ],
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

    /// <summary>The same tub at an outside wall, so that it has to warm before it may be coated.</summary>
    public static FixtureJob ColdTub(string id, string room) =>
        Tub(id, room) with { Surface = Temperature.FromDegreesCelsius(14), Weight = Mass.FromKilograms(130) };

    /// <summary>A pedestal sink of vitreous china.</summary>
    public static FixtureJob Sink(string id, string room) => new()
    {
        Id = id,
        Name = "pedestal sink",
        Room = room,
        Fixture = new PedestalSink(new PedestalSinkMeasurements
        {
            Outline = PlanOutline.RoundedRectangle(Length.FromMillimeters(560), Length.FromMillimeters(460), Length.FromMillimeters(100)),
            BowlLength = Length.FromMillimeters(420),
            BowlWidth = Length.FromMillimeters(310),
            BowlDepth = Length.FromMillimeters(150),
            SkirtHeight = Length.FromMillimeters(90),
            WallContact = Length.FromMillimeters(480),
            ColumnTopDiameter = Length.FromMillimeters(180),
            ColumnBaseDiameter = Length.FromMillimeters(220),
            ColumnHeight = Length.FromMillimeters(650),
            DrainDiameter = Length.FromMillimeters(45),
            OverflowDiameter = Length.FromMillimeters(25),
            FaucetHoleDiameter = Length.FromMillimeters(35),
            FaucetHoles = 1,
        }),
        Survey = new Survey
        {
            Material = FixtureMaterial.VitreousChina,
            Defects = [new Chip(Length.FromMillimeters(12), Length.FromMillimeters(1.2))],
            YearBuilt = 1955,
            LeadTest = LeadTest.Negative,
        },
    };

    /// <summary>Three tiled walls with grout to renew.</summary>
    public static FixtureJob Surround(string id, string room) => new()
    {
        Id = id,
        Name = "tiled surround",
        Room = room,
        Fixture = new TiledSurround(new TiledWallMeasurements
        {
            Walls =
            [
                new WallRun(Length.FromMillimeters(1524), Length.FromMillimeters(1500)),
                new WallRun(Length.FromMillimeters(762), Length.FromMillimeters(1500)),
                new WallRun(Length.FromMillimeters(762), Length.FromMillimeters(1500)),
            ],
            TileLength = Length.FromMillimeters(108),
            TileWidth = Length.FromMillimeters(108),
            JointWidth = Length.FromMillimeters(3),
            JointDepth = Length.FromMillimeters(1.5),
            JointProfile = JointProfile.Sharp,
            Openings = [new RectangularOpening(Length.FromMillimeters(160), Length.FromMillimeters(110))],
        }),
        Survey = new Survey
        {
            Material = FixtureMaterial.CeramicTile,
            Defects = [new GroutFailure(Length.FromMeters(1.2))],
            YearBuilt = 1955,
            LeadTest = LeadTest.Negative,
        },
    };

    /// <summary>A drop-in sink of cultured marble, which takes the system for plastics.</summary>
    public static FixtureJob Vanity(string id, string room) => new()
    {
        Id = id,
        Name = "vanity sink",
        Room = room,
        System = GenericCatalogue.ClearedPlastic,
        Fixture = new CounterSink(new CounterSinkMeasurements
        {
            Mounting = SinkMounting.DropIn,
            Shape = BowlShape.HalfEllipsoid,
            MouthLength = Length.FromMillimeters(430),
            MouthWidth = Length.FromMillimeters(330),
            BowlDepth = Length.FromMillimeters(140),
            Outline = PlanOutline.Ellipse(Length.FromMillimeters(510), Length.FromMillimeters(410)),
            DrainDiameter = Length.FromMillimeters(45),
            OverflowDiameter = Length.FromMillimeters(25),
        }),
        Survey = new Survey
        {
            Material = FixtureMaterial.CulturedMarble,
            Defects = [new Crazing(Ratio.FromPercent(5))],
            YearBuilt = 1955,
            LeadTest = LeadTest.Negative,
        },
    };

    /// <summary>A gelcoat shower pan whose floor gives under a person: it has to be refused.</summary>
    public static FixtureJob FlexingPan(string id, string room) => new()
    {
        Id = id,
        Name = "shower pan",
        Room = room,
        System = GenericCatalogue.ClearedPlastic,
        Fixture = new ShowerPan(new ShowerPanMeasurements
        {
            FloorLength = Length.FromMillimeters(860),
            FloorWidth = Length.FromMillimeters(760),
            WallHeight = Length.FromMillimeters(60),
            LedgeWidth = Length.FromMillimeters(40),
            CurbInsideHeight = Length.FromMillimeters(90),
            CurbTopWidth = Length.FromMillimeters(70),
            CurbOutsideHeight = Length.FromMillimeters(130),
            DrainDiameter = Length.FromMillimeters(90),
        }),
        Survey = new Survey
        {
            Material = FixtureMaterial.Gelcoat,
            Defects = [new FlexingFloor(Length.FromMillimeters(9)), new Crazing(Ratio.FromPercent(10))],
            YearBuilt = 1995,
        },
    };

    /// <summary>A laminate counter with a burn, which takes the system for plastics.</summary>
    public static FixtureJob Counter(string id, string room) => new()
    {
        Id = id,
        Name = "kitchenette counter",
        Room = room,
        System = GenericCatalogue.ClearedPlastic,
        Fixture = new Countertop(new CountertopMeasurements
        {
            Runs = [new CounterRun(Length.FromMillimeters(2100), Length.FromMillimeters(620))],
            Thickness = Length.FromMillimeters(38),
            Profile = EdgeProfile.Bullnose,
            LeftEndIsOpen = false,
            RightEndIsOpen = true,
            BacksplashHeight = Length.FromMillimeters(100),
            BacksplashThickness = Length.FromMillimeters(18),
            CutOuts = [new RectangularOpening(Length.FromMillimeters(540), Length.FromMillimeters(440))],
        }),
        Survey = new Survey
        {
            Material = FixtureMaterial.Laminate,
            Defects = [new Burn(Length.FromMillimeters(40))],
            YearBuilt = 1995,
        },
    };
}
