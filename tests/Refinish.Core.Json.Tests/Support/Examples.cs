using System;
using System.Collections.Generic;
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
using Refinish.Samples.BathroomJob;
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
    ];

    /// <summary>A job in which no optional field is set.</summary>
    public static BathroomJob Least()
    {
        BathroomJob whole = Scenario.Guesthouse();
        return new BathroomJob
        {
            Name = whole.Name,
            Fixtures = [new FixtureJob { Name = "tub", Fixture = whole.Fixtures[0].Fixture, Survey = new Survey { Material = FixtureMaterial.EnamelledCastIron, Defects = [] } }],
            System = whole.System,
            Gun = new SprayGun { FluidRate = VolumeFlow.FromMillilitersPerMinute(160), TransferEfficiency = Ratio.FromPercent(60) },
            Residue = whole.Residue,
            Batches = new BatchRules { CupVolume = Volume.FromMilliliters(600) },
            Site = new SiteConditions
            {
                Room = new Room(Length.FromMeters(2.6), Length.FromMeters(2.1), Length.FromMeters(2.5)),
                Exhaust = new Exhaust { LabelFlow = VolumeFlow.FromCubicMetersPerHour(1700) },
                Air = new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(48)),
                Surface = Temperature.FromDegreesCelsius(20),
            },
            Start = whole.Start,
            Hours = whole.Hours,
            Prices = new PriceBook { Currency = "EUR" },
            Warranty = new WarrantyTerms { Years = 5, Life = new WeibullLife(2.2, 18), CostPerClaim = 320m, ClaimProbability = Ratio.FromPercent(80) },
        };
    }

    /// <summary>A job with one of every fixture and defect, in which every optional field is set to something else than what leaving it out would mean.</summary>
    public static BathroomJob Everything() => Scenario.Guesthouse() with
    {
        Fixtures = [.. Tapes.Every().Select(Surveyed)],
        System = WithEverything(),
        Batches = new BatchRules
        {
            CupVolume = Volume.FromMilliliters(600), Graduation = Volume.FromMilliliters(20), SmallestBatch = Volume.FromMilliliters(120),
            PotLifeShare = Ratio.FromPercent(55), MixingTime = TimeSpan.FromMinutes(7),
        },
        Site = new SiteConditions
        {
            Room = new Room(Length.FromMeters(2.6), Length.FromMeters(2.1), Length.FromMeters(2.5))
            {
                AirPressure = Pressure.FromHectopascals(985), Infiltration = VolumeFlow.FromCubicMetersPerHour(12), AirTemperature = Temperature.FromDegreesCelsius(22),
            },
            Exhaust = new Exhaust { LabelFlow = VolumeFlow.FromCubicFeetPerMinute(1000), DeliveredFraction = Ratio.FromPercent(70), MixingFactor = 4 },
            Air = new MoistAir(Temperature.FromDegreesFahrenheit(71.6), Ratio.FromPercent(48), Pressure.FromHectopascals(985)),
            Surface = Temperature.FromDegreesCelsius(20),
            AirborneFraction = Ratio.FromPercent(10),
            IsocyanateLimit = MassConcentration.FromMilligramsPerCubicMeter(1),
            IsocyanateLimitSource = Source.Published("a rule (invented)", "table 1"),
            FilmTimeConstant = TimeSpan.FromMinutes(37),
        },
        Calendar = new WorkCalendar(
            LocalClock.WithChanges(TimeSpan.FromHours(1), [new ClockChange(new DateTimeOffset(2027, 3, 28, 1, 0, 0, TimeSpan.Zero), TimeSpan.FromHours(2))]),
            [new WorkShift(DayOfWeek.Monday, new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(12.5))), new WorkShift(DayOfWeek.Wednesday, new WorkingHours(TimeSpan.Zero, TimeSpan.FromHours(24)))],
            [new DateTime(2027, 3, 29)]),
        Prices = Scenario.Guesthouse().Prices with
        {
            OverheadOfDirectCost = Ratio.FromPercent(3), CashStep = 0.05m,
            Options = [new OptionPrice("X-1", "an extra", "each", 10m, 20.50m) { Cautions = [new Caution(Hazard.Slip, "Wet floors are slippery.", "the owner", Source.CommonPractice("said"))] }],
        },
        Options = [new OptionOrder("X-1", 2.5m)],
        Warranty = Scenario.Guesthouse().Warranty,
        Labour =
        [
            new LabourStandard
            {
                Code = "L-1", Description = "work", Fixed = new ThreePoint(1, 2, 4), PerSquareMeter = new ThreePoint(0.1, 0.2, 0.3), PerUnit = ThreePoint.Exactly(0.25),
                Unit = "coat", OncePerVisit = Ratio.FromPercent(20), FromSize = Length.FromMillimeters(30), Repairs = DefectKind.Chip, IsOnSite = false,
                Source = Source.Supplied("time sheets (invented)"),
            },
        ],
        DefectMaterials = [new DefectMaterial { Repairs = DefectKind.RustSpot, Item = "spot primer", Each = Volume.FromMilliliters(5), Coverage = SpreadingRate.FromSquareFeetPerUsGallon(67), Source = Source.FromMemory("a guess") }],
        SurveyPolicy = new SurveyPolicy
        {
            MaximumFloorDeflection = Length.FromMillimeters(2.2), MaximumCrazing = Ratio.FromPercent(33), MinimumAdhesion = AdhesionGrade.Grade5B, CleaningCycles = 5,
            UsualFiller = Volume.FromMilliliters(33), MetalLossDepth = Length.FromMillimeters(1.7), SteelPerforationDepth = Length.FromMillimeters(1.3), Filler = Filler(),
        },
        Filler = Filler(),
        GroutWait = TimeSpan.FromHours(30),
        CaulkWait = TimeSpan.FromHours(18),
        DrainTrimWait = TimeSpan.FromMinutes(100),
    };

    private static FixtureJob Surveyed(IFixture fixture, int index) => new()
    {
        Name = fixture.GetType().Name + " " + index,
        Fixture = fixture,
        Survey = new Survey
        {
            Material = FixtureMaterial.EnamelledCastIron,
            Defects = index == 0 ? Defects : [],
            PreviouslyRefinished = true,
            OldCoatAdhesion = AdhesionGrade.Grade3B,
            BuiltBefore1978 = true,
            LeadTest = LeadTest.Positive,
            LeadSuspected = true,
            CertifiedForLead = true,
            NoPermittedStrippingRoute = true,
            FailedCleaningCycles = 2,
            LeakCannotBeStopped = true,
            SubstrateWet = true,
            SwollenOrDelaminated = true,
            StainsBleed = true,
            CuttingOrFoodContactExpected = true,
            NoExhaustPath = true,
            FlameCannotBeShutOff = true,
            SensitiveOccupantsCannotLeave = true,
            CureTimeRefused = true,
        },
        OldColour = new CieLab(71, -9, 14),
        NewColour = new CieLab(95, -0.5, 2),
    };

    private static FillerPolicy Filler() => new()
    {
        Product = FillerProduct.GenericEpoxy with { Chemistry = FillerChemistry.Polyester },
        Overfill = Ratio.FromPercent(44), Waste = Ratio.FromPercent(22), RustGrindingMargin = Length.FromMillimeters(6), RustGrindingDepth = Length.FromMillimeters(0.7),
        BurnCuttingMargin = Length.FromMillimeters(3.5), BurnCuttingDepth = Length.FromMillimeters(0.9), TotalDryFilm = Length.FromMicrometers(111), SinkPerDryFilm = Ratio.FromPercent(71),
    };

    private static CoatingSystem WithEverything()
    {
        CoatingSystem generic = GenericCatalogue.EpoxyUrethaneSystem;
        CoatingProduct topcoat = generic.Layers[1].Product;
        CureTimes times = topcoat.Cure with { RatePerTenKelvin = 1.8, Induction = TimeSpan.FromMinutes(5) };
        SolventShare xylene = new(GenericSolvents.Xylene with { VapourPressure = Pressure.FromPascals(880) }, Ratio.FromPercent(100));
        CoatingComponent can = new("can", Density.FromGramsPerMilliliter(1.2))
        {
            MassSolids = Ratio.FromPercent(57.3), VolumeSolids = Ratio.FromPercent(42.4), Water = Ratio.FromPercent(1), ExemptCompounds = Ratio.FromPercent(2),
            ExemptDensity = Density.FromGramsPerMilliliter(0.79), Solvents = [xylene], EpoxideEquivalent = MolarMass.FromGramsPerMole(480),
            AmineHydrogenEquivalent = MolarMass.FromGramsPerMole(230), HydroxylNumber = 46.1, IsocyanateContent = Ratio.FromPercent(16.5),
            Viscosity = DynamicViscosity.FromMillipascalSeconds(600), FlashPoint = Temperature.FromDegreesCelsius(24), ShelfLifeOpened = TimeSpan.FromDays(180),
            ShippingSizes = [Volume.FromMilliliters(500)],
        };
        CoatingProduct product = topcoat with
        {
            Base = can, Hardener = can with { HydroxylNumber = 12 }, Reducer = can with { HydroxylNumber = 700 },
            StatedHardenerPer100Base = 22, RatioTolerance = Ratio.FromPercent(5), MinimumReducer = Ratio.FromPercent(2), GoesOver = [CoatingRole.Primer], Solvents = [xylene],
            Cure = times, Materials = [FixtureMaterial.Acrylic],
            CureTable = new CureTable([times, times with { ReferenceTemperature = Temperature.FromDegreesCelsius(15), TouchDry = TimeSpan.FromHours(2) }]),
            SprayLimits = topcoat.SprayLimits with { MinimumSpreadAboveDewPoint = TemperatureDelta.FromKelvins(4) },
        };
        CoatingProduct onePart = topcoat with
        {
            Name = "one part", Hardener = null, Reducer = null, MixRatio = MixRatio.OnePart, MaximumReducer = Ratio.Zero, RatioTolerance = null, IsocyanateFraction = Ratio.Zero,
            Cure = topcoat.Cure with { PotLife = null, RecoatCloses = null },
        };
        return new CoatingSystem(
            "everything (invented)",
            [generic.Promoters[0] with { MixedLife = TimeSpan.FromHours(8), Solvents = [xylene] }],
            [new CoatingLayer(product, Length.FromMicrometers(30), 2, Ratio.FromPercent(10)), new CoatingLayer(onePart, Length.FromMicrometers(30), 1)],
            Source.Derived("put together"));
    }
}
