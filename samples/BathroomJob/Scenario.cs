using System;
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
using UnitsNet;

namespace Refinish.Samples.BathroomJob;

/// <summary>A bathroom of a guesthouse. People, place, measurements, rates and prices are invented.</summary>
internal static class Scenario
{
    public static Refinish.Jobs.BathroomJob Guesthouse() => new()
    {
        Name = "Guesthouse at the old ferry, bathroom 3 (invented)",
        Start = new DateTimeOffset(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1)),
        Hours = new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)),
        Fixtures = [Tub(), Sink(), Surround()],
        System = GenericCatalogue.EpoxyUrethaneSystem,
        Gun = new SprayGun
        {
            FluidRate = VolumeFlow.FromMillilitersPerMinute(160),
            TransferEfficiency = Ratio.FromPercent(60),
            TriggerFraction = Ratio.FromPercent(45),
        },
        Residue = Ratio.FromPercent(8),
        Batches = new BatchRules { CupVolume = Volume.FromMilliliters(600) },
        Site = new SiteConditions
        {
            Room = new Room(Length.FromMeters(2.6), Length.FromMeters(2.1), Length.FromMeters(2.5)),
            Exhaust = new Exhaust { LabelFlow = VolumeFlow.FromCubicMetersPerHour(1700) },
            Air = new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(48)),
            Surface = Temperature.FromDegreesCelsius(20),
            AirborneFraction = Ratio.FromPercent(10),
            IsocyanateLimit = MassConcentration.FromMilligramsPerCubicMeter(1),
            IsocyanateLimitSource = Source.Published("Oregon OSHA, rules for air contaminants", "polyisocyanates of hexamethylene diisocyanate, ceiling; seen second-hand"),
        },
        Prices = Prices(),
        Options = [new OptionOrder("X-SLIP"), new OptionOrder("X-DRAIN")],
        Difficulty = 1.1,
        DefectMaterials = DefectMaterials.Generic,
        Warranty = new WarrantyTerms
        {
            Years = 5,
            Life = new WeibullLife(2.2, 18),
            CostPerClaim = 320m,
            ClaimProbability = Ratio.FromPercent(80),
            DiscountRate = Ratio.FromPercent(3),
        },
        Replacement = new ReplacementOffer
        {
            Replacement = new RenewalOption
            {
                Name = "replacing",
                Parts = [new("tub, sink and tile", 2900m), new("demolition and haul-away", 850m), new("plumbing", 1150m), new("tile setting", 2600m)],
                LifeYears = 30,
                DaysOutOfUse = 12,
            },
            RefinishLifeYears = 12,
            DiscountRate = Ratio.FromPercent(3),
            CostPerDayOutOfUse = 70m,
        },
    };

    /// <summary>What the shop is not sure of: the tape, the gun and a second visit for touching up.</summary>
    public static EstimateUncertainty Doubts() => new()
    {
        Quantities =
        [
            new QuantityFactor("taped area", new TriangularDistribution(0.95, 1, 1.1)) { ScalesAreaLabour = true },
            QuantityFactor.Transfer(Ratio.FromPercent(60), new PertDistribution(0.45, 0.6, 0.7), ["two-part epoxy primer", "two-part acrylic urethane topcoat", "epoxy reducer", "urethane reducer"]),
        ],
        Extras = [new UncertainInput("touching up", new TriangularDistribution(0, 0, 80))],
    };

    private static FixtureJob Tub() => new()
    {
        Name = "bathtub",
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
            BuiltBefore1978 = true,
            LeadTest = LeadTest.Negative,
        },
        OldColour = new CieLab(71, -9, 14),
        NewColour = new CieLab(95, -0.5, 2),
    };

    private static FixtureJob Sink() => new()
    {
        Name = "pedestal sink",
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
            BuiltBefore1978 = true,
            LeadTest = LeadTest.Negative,
        },
    };

    private static FixtureJob Surround() => new()
    {
        Name = "tiled surround",
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
            BuiltBefore1978 = true,
            LeadTest = LeadTest.Negative,
        },
    };

    private static PriceBook Prices() => new()
    {
        Currency = "EUR",
        LabourRate = 26m,
        Burden = Ratio.FromPercent(32),
        OverheadPerHour = 9m,
        TravelPerTrip = 28m,
        DisposalPerJob = 18m,
        ConsumablesPerFixture = 34m,
        Materials =
        [
            new("two-part epoxy primer", Volume.FromMilliliters(750), 44m),
            new("two-part epoxy primer", Volume.FromMilliliters(3000), 149m),
            new("epoxy reducer", Volume.FromMilliliters(500), 9m),
            new("two-part acrylic urethane topcoat", Volume.FromMilliliters(1250), 92m),
            new("two-part acrylic urethane topcoat", Volume.FromMilliliters(5000), 318m),
            new("urethane reducer", Volume.FromMilliliters(500), 11m),
            new("silane adhesion promoter", Volume.FromMilliliters(250), 38m),
            new("epoxy filler", Volume.FromMilliliters(200), 24m),
            new("spot primer", Volume.FromMilliliters(100), 13m),
            new("silicone remover", Volume.FromMilliliters(250), 16m),
            new("grout", Volume.FromMilliliters(500), 7m),
        ],
        Options =
        [
            new("X-SLIP", "slip-resistant tub floor", "each", 31m, 85m),
            new("X-DRAIN", "new drain and overflow trim", "set", 42m),
        ],
        MinimumCharge = 390m,
        TargetMargin = new Margin(Ratio.FromPercent(38)),
        SalesTax = Ratio.FromPercent(20),
    };
}
