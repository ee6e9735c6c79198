using System;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Colours;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Scheduling;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Json.Tests;

/// <summary>A shop in which every optional field is set. Every figure is invented.</summary>
internal static class EveryShop
{
    public static LabourStandard Standard { get; } = new()
    {
        Code = "L-1", Description = "work", Fixed = new ThreePoint(1, 2, 4), PerSquareMeter = new ThreePoint(0.1, 0.2, 0.3),
            PerUnit = ThreePoint.Exactly(0.25),
        Unit = "coat", OncePerVisit = Ratio.FromPercent(20), Work = WorkKind.Fill, IsOnSite = false,
        Source = Source.Supplied("time sheets (invented)"),
    };

    public static LabourStandard Repair { get; } = new()
    {
        Code = "L-2", Description = "mend a large chip", Repairs = DefectKind.Chip, FromSize = Length.FromMillimeters(30),
        PerUnit = ThreePoint.Exactly(0.3), Unit = "chip",
        Source = Source.Supplied("time sheets (invented)"),
    };

    public static ApplicationLosses Losses { get; } = new()
    {
        EdgeOverspray = Ratio.FromPercent(7), HoldUp = Volume.FromMilliliters(23), Residue = Ratio.FromPercent(6),
            ProfileDepth = Length.FromMicrometers(40),
        ProfileFill = Ratio.FromPercent(60), UnusedPot = Ratio.FromPercent(2),
    };

    public static Shop Make() => Shop.Generic with
    {
        Name = "everything (invented)",
        Crew = [new Worker { Id = "ada", Name = "Ada", Wage = 31.25m }, new Worker { Id = "ben" }],
        Calendar = new WorkCalendar(
            LocalClock.WithChanges(TimeSpan.FromHours(1),
                [new ClockChange(new DateTimeOffset(2027, 3, 28, 1, 0, 0, TimeSpan.Zero), TimeSpan.FromHours(2))]),
            [
                new WorkShift(DayOfWeek.Monday, new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(12.5))),
                new WorkShift(DayOfWeek.Wednesday, new WorkingHours(TimeSpan.Zero, TimeSpan.FromHours(24))),
            ],
            [new DateTime(2027, 3, 29)]),
        Prices = Shop.Generic.Prices with
        {
            Materials =
            [
                .. Shop.Generic.Prices.Materials, new("grout", Mass.FromPounds(10), 9.5m), new("film", Area.FromSquareFeet(400), 12m),
                new("tape", Length.FromFeet(180), 4m), new("disc", MaterialAmount.FromPieces(50), 21m),
                .. new[] { LineUnit.Each, LineUnit.UsQuart, LineUnit.Gram, LineUnit.Metre, LineUnit.SquareFoot }
                    .Select(unit => MaterialPrice.Loose("loose", unit, 0.125m)),
            ],
            OverheadOfDirectCost = Ratio.FromPercent(3),
            Taxes =
            [
                new() { Code = "sales", Name = "sales tax on goods", Rate = Ratio.FromPercent(7.25), Categories = [LineCategory.Material, LineCategory.Consumables] },
                new() { Code = "local", Name = "local tax", Rate = Ratio.FromPercent(1.5) },
            ],
            TaxRounding = TaxRounding.PerLine,
            CashStep = 0.05m,
            HostCodes = [new("labour/L-1", "5-2100"), new("material/" + GenericCatalogue.EpoxyPrimer.Id, "ART-771")],
            Options =
            [
                .. Shop.Generic.Prices.Options,
                new OptionPrice { Code = "X-1", Description = "an extra", Unit = LineUnit.Each, Cost = 10m, Price = 20.50m, Cautions = [new Caution("own-slip", Hazard.Slip, "Wet floors are slippery.", "the owner",
                        Source.CommonPractice("said"), Audience.Customer)] },
            ],
        },
        Warranty = Shop.Generic.Warranty with { DiscountRate = Ratio.FromPercent(2.5) },
        System = System(),
        Losses = Losses,
        Cups = new CupRules
        {
            Cups = [new MixingCup(Volume.FromMilliliters(400), Volume.FromMilliliters(10), Volume.FromMilliliters(60)),
                new MixingCup(Volume.FromMilliliters(1100), Volume.FromMilliliters(25), Volume.FromMilliliters(200))],
            PotLifeShare = Ratio.FromPercent(55), MixingTime = TimeSpan.FromMinutes(7), Residue = Volume.FromMilliliters(4),
                EqualBatches = true,
        },
        Guns = 2,
        Labour = [Standard, Repair, .. LabourStandards.Generic],
        Overtime = new OvertimeRule
        {
            Daily = [new OvertimeStep(TimeSpan.FromHours(7.5), 1.25m), new OvertimeStep(TimeSpan.FromHours(11), 2m)],
            Weekly = [new OvertimeStep(TimeSpan.FromHours(38), 1.5m)],
            WeekStarts = DayOfWeek.Saturday,
            Source = Source.Invented("for a test"),
        },
        Chemicals =
        [
            new PrepChemical
            {
                Id = "own-stripper", Name = "own stripper", For = WorkKind.Strip, Surfaces = [FixtureMaterial.EnamelledCastIron],
                    Coverage = SpreadingRate.FromSquareMetersPerLiter(3),
                PerMeterOfJoint = Volume.FromMilliliters(11), Each = Volume.FromMilliliters(22),
                    Density = Density.FromGramsPerMilliliter(1.02),
                VolatileFraction = Ratio.FromPercent(33), Solvents = [new SolventShare(Solvents.BenzylAlcohol, Ratio.FromPercent(100))],
                    TimeConstant = TimeSpan.FromHours(20),
                Dwell = TimeSpan.FromHours(5), Cautions = [Cautions.MakeUpAir], Source = Source.Invented("for a test"),
            },
        ],
        DefectMaterials =
        [
            new DefectMaterial
            {
                Repairs = DefectKind.RustSpot, Work = WorkKind.SpotPrime, Item = "spot-primer", Name = "spot primer", Each = Volume.FromMilliliters(5),
                    Coverage = SpreadingRate.FromSquareFeetPerUsGallon(67), Density = Density.FromGramsPerMilliliter(1.3),
                Source = Source.FromMemory("a guess"),
            },
        ],
        Survey = new SurveyPolicy
        {
            MaximumFloorDeflection = Length.FromMillimeters(2.2), MaximumCrazing = Ratio.FromPercent(33),
                MinimumAdhesion = AdhesionGrade.Grade5B, CleaningCycles = 5,
            UsualFiller = Volume.FromMilliliters(33), MetalLossDepth = Length.FromMillimeters(1.7),
                SteelPerforationDepth = Length.FromMillimeters(1.3), Filler = Filler(),
            RuleChanges = [RuleChange.Strike("S-24", Source.Invented("own")), RuleChange.ToEffect("S-33", Suitability.SuitableWithConditions, Source.Invented("own"))],
            OwnRules =
            [
                new SurveyRule("own-1", "old panel", Suitability.NotSuitable, "replace", "look", Source.Invented("own"), new SurveyCondition
                {
                    Materials = [EveryFixture.Panel], Surfaces = [MaterialSurface.FilledPolymer], Facts = [SurveyFact.StainsBleed],
                    OwnFacts = ["salvaged"], BuiltBefore = 1970, OlderThanYears = 20, Defect = DefectKind.Chip, MoreThan = 2,
                    LargerThan = Length.FromMillimeters(3), DeeperThan = Length.FromMillimeters(1), WiderThan = Area.FromSquareCentimeters(2),
                }).Concerning(Audience.Crew),
                new SurveyRule("own-2", "inlay", Suitability.NotSuitable, "replace", "look", Source.Invented("own"),
                    new SurveyCondition { Defect = DefectKind.Own("loose-inlay") }),
            ],
        },
        Filler = Filler(),
        Paid = PaidTimeRule.HalfDays,
        HalfDay = TimeSpan.FromHours(4.5),
        StandsBy = false,
        Prefers = SchedulePreference.EarliestEnd,
        Effort = new SearchEffort { Nodes = 500, NodesPerGroup = 40, Orders = 3, StepsForProof = 30 },
        GroutWait = TimeSpan.FromHours(30),
        CaulkWait = TimeSpan.FromHours(18),
        DrainTrimWait = TimeSpan.FromMinutes(100),
        SpotPrimerWait = TimeSpan.FromMinutes(25),
        LongestAfterKey = TimeSpan.FromHours(9),
        GunCleaningWithin = TimeSpan.FromMinutes(40),
        Limits = Limits(),
        Noise = [new WorkNoise(WorkKind.Key, "our sander (invented)", Level.FromDecibels(84), Source.Supplied("read at the ear"))],
        DepositLimit = new DepositLimit(Ratio.FromPercent(10), 1000m, Source.Invented("a limit for this test"), PaymentDue.OnAcceptance),
        AirborneFraction = Ratio.FromPercent(10),
        FilmTimeConstant = TimeSpan.FromMinutes(37),
        FlashOfLanded = Ratio.FromPercent(15),
        HidingTolerance = 1.5,
    };

    private static LimitSet Limits() => new()
    {
        Id = "ours", Name = "our limits (invented)", Jurisdiction = "here", AsOf = "2026-05-01",
        Exposure =
        [
            new ExposureLimit
            {
                CasNumber = "123-86-4", Substance = "butyl acetate", Authority = "a rule (invented)", Jurisdiction = "here",
                    Kind = ExposureLimitKind.Twa8h,
                Period = TimeSpan.FromMinutes(10), VolumeFraction = Ratio.FromPartsPerMillion(62),
                    MassConcentration = MassConcentration.FromMilligramsPerCubicMeter(300),
                AsOf = "2026", Standing = Standing.Supplied, Source = Source.Supplied("a sheet"),
            },
        ],
        Flammable = Line(20),
        FlammableDesign = Line(8),
        Voc =
        [
            new VocLimit
            {
                Jurisdiction = "here", Rule = "a rule (invented)", Category = "tub and tile", EffectiveFrom = "2026-01-01",
                    Limit = MassConcentration.FromGramsPerLiter(420),
                Source = Source.Invented("for a test"), Basis = VocBasis.ReadyToUse,
            },
        ],
        Slip = [new SlipClass("our floors (invented)", SlipScale.RampAngle, 19.5, true, true, "here", "2026", Source.Invented("for a test"))],
        Noise =
        [
            new NoiseLimit
            {
                Authority = "our noise rule (invented)", Jurisdiction = "here", CriterionLevel = Level.FromDecibels(84.5),
                ExchangeRate = Level.FromDecibels(4), Threshold = Level.FromDecibels(75), AsksFor = "ear muffs", AsOf = "2026",
                Source = Source.Invented("for a test"),
            },
        ],
    };

    private static FlammableShare Line(double percent) => new()
    {
        Share = Ratio.FromPercent(percent), Authority = "our insurer (invented)", Jurisdiction = "here", AsOf = "2026",
        Source = Source.Invented("for a test"),
    };

    /// <summary>What no product of the systems has: a form of its own, cautions and an operation that ride on it.</summary>
    public static OpenedKit LampPowder()
    {
        CoatOperation lamp = new()
        {
            Id = "lamp", Name = "lamp (invented)", Instruction = "pass the lamp", SetUp = TimeSpan.FromMinutes(10),
            PerSquareMeter = TimeSpan.FromMinutes(4), People = 2, Wait = TimeSpan.FromMinutes(5), Within = TimeSpan.FromHours(1), Cures = true,
            Tools = ["uv-lamp"], Cautions = [Cautions.UltravioletLight],
            Conditions = GenericCatalogue.EpoxyPrimer.SprayLimits with { MinimumRelativeHumidity = Ratio.FromPercent(30) },
            Source = Source.Invented("a lamp for the tests"),
        };
        CoatingProduct powder = GenericCatalogue.EpoxyPrimer with
        {
            Id = "lamp-powder",
            Parts = [.. GenericCatalogue.EpoxyPrimer.Parts, new(new CoatingComponent { Id = "flexibiliser", Name = "flexibiliser", Density = Density.FromGramsPerMilliliter(1) }, 0.5)],
            Form = CoatingForm.Powder, Cautions = [Cautions.Acrylates], Operations = [lamp],
        };
        return new OpenedKit(
            powder, [.. powder.Parts.Select(part => new PartVolume(part.Component.Id, Volume.FromMilliliters(50)))],
            new DateTimeOffset(2027, 2, 2, 9, 0, 0, TimeSpan.FromHours(1)));
    }

    private static FillerPolicy Filler() => new()
    {
        Product = FillerProduct.GenericEpoxy with { Chemistry = FillerChemistry.Polyester },
        Overfill = Ratio.FromPercent(44), Waste = Ratio.FromPercent(22), RustGrindingMargin = Length.FromMillimeters(6),
            RustGrindingDepth = Length.FromMillimeters(0.7),
        BurnCuttingMargin = Length.FromMillimeters(3.5), BurnCuttingDepth = Length.FromMillimeters(0.9),
            TotalDryFilm = Length.FromMicrometers(111), SinkPerDryFilm = Ratio.FromPercent(71),
    };

    private static CoatingSystem System()
    {
        CoatingProduct topcoat = GenericCatalogue.AcrylicUrethaneTopcoat;
        CureTimes times = topcoat.Cure with { RatePerTenKelvin = 1.8, Induction = TimeSpan.FromMinutes(5) };
        Solvent plasticiser = Solvents.Xylene with
        {
            CasNumber = "plasticiser", Flammability = Flammability.NonBurning(Source.Invented("an example")),
            Volatility = Volatility.NotVolatile(Temperature.FromDegreesCelsius(340), Source.Invented("an example")),
        };
        SolventShare[] xylene =
        [
            new(Solvents.Xylene with { Volatility = Volatility.At20Celsius(Pressure.FromPascals(880)) }, Ratio.FromPercent(97)),
            new(plasticiser, Ratio.FromPercent(3)),
        ];
        CoatingComponent Can(string id) => new()
        {
            Id = id, Name = "a can", Density = Density.FromGramsPerMilliliter(1.2),
            MassSolids = Ratio.FromPercent(57.3), VolumeSolids = Ratio.FromPercent(42.4), Water = Ratio.FromPercent(1),
                ExemptCompounds = Ratio.FromPercent(2),
            ExemptDensity = Density.FromGramsPerMilliliter(0.79), Solvents = xylene, EpoxideEquivalent = MolarMass.FromGramsPerMole(480),
            AmineHydrogenEquivalent = MolarMass.FromGramsPerMole(230), HydroxylNumber = 46.1, IsocyanateContent = Ratio.FromPercent(16.5),
            Viscosity = DynamicViscosity.FromMillipascalSeconds(600), FlashPoint = Temperature.FromDegreesCelsius(24),
                ShelfLifeOpened = TimeSpan.FromDays(180),
            ShippingSizes = [Volume.FromMilliliters(500)],
        };
        CoatingProduct product = topcoat with
        {
            Id = "every-topcoat", Reducer = Can("can-reducer") with { HydroxylNumber = 700 },
            Parts = [new(Can("can"), 4), new(Can("can-hardener") with { HydroxylNumber = 12 }, 1, 22)],
            RatioTolerance = Ratio.FromPercent(5), MinimumReducer = Ratio.FromPercent(2),
                GoesOver = [CoatingRole.Primer], Solvents = xylene,
            Cure = times, Materials = [FixtureMaterial.Acrylic],
            CureTable = new CureTable([times,
                times with { ReferenceTemperature = Temperature.FromDegreesCelsius(15), TouchDry = TimeSpan.FromHours(2) }]),
            SprayLimits = topcoat.SprayLimits with { MinimumSpreadAboveDewPoint = TemperatureDelta.FromKelvins(4) },
            Scattering = ReciprocalLength.FromInverseMeters(137_000), Colour = new CieLab(92, 0.5, 3),
            Flow = new FlowFigures
            {
                Fluidity = 210, SurfaceTension = ForcePerLength.FromMillinewtonsPerMeter(29.5), SagAllowed = Length.FromMillimeters(4),
                    Wavelength = Length.FromMillimeters(2.5),
                RippleLeft = 0.2, YieldStress = Pressure.FromPascals(0.3), Source = Source.Supplied("a test panel"),
            },
        };
        CoatingProduct onePart = topcoat with
        {
            Id = "one-part", Name = "one part", Parts = [new(topcoat.Parts[0].Component, 1)], Reducer = null, MaximumReducer = Ratio.Zero,
                RatioTolerance = null,
            IsocyanateFraction = Ratio.Zero, Cure = topcoat.Cure with { PotLife = null, RecoatCloses = null },
        };
        return new CoatingSystem(
            "everything",
            "everything (invented)",
            [
                SystemStep.Preparation(SystemStepKind.Clean, "clean twice", [FixtureMaterial.EnamelledCastIron],
                    Source.CommonPractice("two steps")),
                SystemStep.Wipe(GenericCatalogue.SilanePromoter with { MixedLife = TimeSpan.FromHours(8), Solvents = xylene }),
                SystemStep.Coat(new CoatingLayer(onePart, Length.FromMicrometers(30), 1)),
                SystemStep.Coat(new CoatingLayer(product, Length.FromMicrometers(30), 2, Ratio.FromPercent(10))),
                SystemStep.Broadcast(GenericCatalogue.PolymerBeads, AreaDensity.FromGramsPerSquareMeter(15)),
                SystemStep.CoatWithGrains(new CoatingLayer(product, Length.FromMicrometers(30), 1, Ratio.FromPercent(10)),
                    GenericCatalogue.PolymerBeads),
            ],
            Length.FromMicrometers(300),
            Source.Derived("put together"));
    }
}
