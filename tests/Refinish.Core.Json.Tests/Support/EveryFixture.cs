using System;
using Refinish.Coatings;
using Refinish.Colours;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Json.Tests;

/// <summary>Fixtures and operations in which every optional field is set. Every figure is invented.</summary>
internal static class EveryFixture
{
    /// <summary>Fixtures of which some readings were taken, with every form of reading and of assumption.</summary>
    public static IFixture[] Rough { get; } =
    [
        RoughFixture.FreestandingTub(Length.FromInches(55), Length.FromInches(25), allRound: true)
            .With("RollTurn", Angle.FromDegrees(250)).With("Feet", 3).With("Depth", Length.FromInches(17)),
        RoughFixture.RecessedBathtub(Length.FromInches(60), Length.FromInches(30))
            .Assuming(ReadingAssumption.Usual("Depth", Length.FromInches(12), Length.FromInches(13), Length.FromInches(15), Own()))
            .Assuming(ReadingAssumption.Usual("ApronProfileFactor", 1, 1.03, 1.05, Own()))
            .Assuming(ReadingAssumption.Share("RimLength", "OverallLength", 0.85, 0.88, 0.91, Own()))
            .Assuming(ReadingAssumption.ShareOfRest("HeadRun", "RimLength", "FloorLength", 0.6, 0.7, 0.9, Own()))
            .Assuming(ReadingAssumption.Beyond("ApronHeight", "Depth", Length.FromInches(0.5), Length.FromInches(1), Length.FromInches(2),
                Own())),
        RoughFixture.FreestandingTub(Length.FromMeters(1.5), Length.FromMeters(0.7), allRound: false)
            .Assuming(ReadingAssumption.Usual("RollTurn", Angle.FromDegrees(170), Angle.FromDegrees(180), Angle.FromDegrees(200), Own())),
    ];

    /// <summary>A fixture without a type of its own, with a mesh of which no coordinate is round.</summary>
    public static ZonedFixture Zoned { get; } = new(
        "niche",
        [
            new ZonePart("bottom", FixtureZoneKind.Floor, Area.FromSquareMeters(0.7 / 3), Angle.FromDegrees(1.5))
            {
                DevelopedFactor = 1.07, OpeningArea = Area.FromSquareMeters(0.011), Source = Own(),
            },
            new ZonePart("back", FixtureZoneKind.Wall, Area.FromSquareMeters(0.7 / 3), Angle.FromDegrees(91.5)),
        ],
        Length.FromMeters(2.9))
    {
        WaterCapacity = Volume.FromLiters(3.7),
        MeasuredArea = Area.FromSquareMeters(0.471),
        Mesh = new TriangleMesh(
            [new(0, 0, 0), new(0.7, 0, 0), new(0.7, 1.0 / 3, 1e-17), new(0, 1.0 / 3, 0), new(0.7, 1.0 / 3, 1.0 / 3), new(0, 1.0 / 3, 1.0 / 3)],
            [
                new(0, 1, 2, FixtureZoneKind.Floor), new(0, 2, 3, FixtureZoneKind.Floor), new(3, 2, 4, FixtureZoneKind.Wall),
                new(3, 4, 5, FixtureZoneKind.Wall),
            ]),
    };

    public static FixtureMaterial Panel { get; } = new()
    {
        Id = "pressed-panel", Name = "pressed resin panel", Surface = MaterialSurface.FilledPolymer, Metal = MetalBelow.NotMagnetic,
        BondsLike = FixtureMaterial.SolidSurface with
        {
            Id = "other-panel", Metal = MetalBelow.CastIron, MayBeEtched = true, BondsInTheField = false, CrazesInSolvent = true,
            IsFlexibleSheet = true, HasJoints = true, Body = FixtureMaterial.Acrylic.Body,
        },
        BondsInTheField = false, MayBeEtched = true, CrazesInSolvent = true, IsFlexibleSheet = true, HasJoints = true,
        Keying = new MaterialKeying("scuff", 320, 400), Body = FixtureMaterial.Gelcoat.Body, Source = Own(),
    };

    public static FixtureJob Of(IFixture fixture, int index) => new()
    {
        Id = "fixture-" + index,
        Name = fixture.GetType().Name + " " + index,
        Room = "bath-" + (3 + (index % 3)),
        Fixture = fixture,
        Survey = new Survey
        {
            Material = index == 1 ? Panel : FixtureMaterial.EnamelledCastIron,
            Defects = index == 0 ? Examples.Defects : [],
            FixtureAge = 31,
            OwnFacts = ["salvaged"],
            PreviouslyRefinished = true,
            OldCoatAdhesion = AdhesionGrade.Grade3B,
            YearBuilt = 1955,
            LeadTest = LeadTest.Positive,
            LeadSuspected = true,
            CertifiedForLead = true,
            AsbestosTest = AsbestosTest.Positive,
            AsbestosSuspected = true,
            CertifiedForAsbestos = true,
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
        Zones = [FixtureZoneKind.Floor, FixtureZoneKind.Wall],
        Share = Ratio.FromPercent(40),
        System = GenericCatalogue.SlipResistantTub,
        Gun = Shop.Generic.Gun with { TransferEfficiency = Ratio.FromPercent(52) },
        Losses = EveryShop.Losses,
        Efficiencies = [new ZoneEfficiency(FixtureZoneKind.Floor, Ratio.FromPercent(61))],
        Surface = Temperature.FromDegreesCelsius(17.5),
        Weight = Mass.FromPounds(307),
        WallThickness = Length.FromMillimeters(6.5),
        OldColour = new CieLab(71, -9, 14),
        NewColour = new CieLab(95, -0.5, 2),
        Options =
        [
            FixtureOption.SlipResistantFloor("slip-floor", GenericCatalogue.PolymerBeads,
                AreaDensity.FromGramsPerSquareMeter(17.3)) with { Loss = Ratio.FromPercent(31) },
            FixtureOption.DrainTrim("drain-trim") with { Quantity = 2m },
            FixtureOption.Work("X-1", Own("lamp-" + index), WorkKind.Demask) with { Quantity = 2.5m },
        ],
    };

    public static Operation Own(string id) => new()
    {
        Id = id,
        Kind = WorkKind.Other,
        Instruction = "cure the coat under the lamp",
        Name = "lamp",
        Room = "bath-3",
        Fixtures = ["fixture-0"],
        People = 2,
        Time = TimeSpan.FromMinutes(35),
        Labour =
        [
            new LabourTask { Standard = EveryShop.Standard, Area = Area.FromSquareMeters(1.7), Units = 3, Times = 2, Id = "own-task", Fixture = "fixture-0", Room = "bath-3", Worker = "ada", Wage = 31.5m, Repeats = 4,
                    Learning = new LearningCurve(LearningModel.Unit, Ratio.FromPercent(88)) },
        ],
        Beside = "bath-3/tack",
        IsInterruptible = true,
        Sprays = true,
        Clearing = TimeSpan.FromMinutes(25),
        RaisesDust = true,
        DustFree = TimeSpan.FromMinutes(45),
        IsLoud = true,
        SoundLevel = Level.FromDecibels(88),
        Tools = ["lamp"],
        Materials =
        [
            new MaterialNeed("stripper", "stripper", Volume.FromMilliliters(120), Density.FromGramsPerMilliliter(1.05)),
            new MaterialNeed("film", "film", Area.FromSquareMeters(12.5)), new MaterialNeed("disc", "disc", MaterialAmount.FromPieces(3.5)),
        ],
        Vapours = [new Evaporation { Name = "degreaser", Mass = Mass.FromGrams(40),
            Solvents = [new SolventShare(Solvents.Isopropanol, Ratio.FromPercent(100))], TimeConstant = TimeSpan.FromMinutes(3),
                TakenOffAfter = TimeSpan.FromMinutes(20) }],
        Cautions = [new Caution("own-caution", Hazard.Electricity, "The lamp stays dry.", "the electrical code",
            Source.CommonPractice("said"), Audience.Crew | Audience.Occupant)],
        Source = Source.Invented("for a test"),
    };

    private static Source Own() => Source.Supplied("tubs of this house (invented)");
}
