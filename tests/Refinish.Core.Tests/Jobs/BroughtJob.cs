using System;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Fixtures;
using UnitsNet;

namespace Refinish.Tests.Jobs;

/// <summary>One job into which a shop brings one thing of its own at every place where it can. Every figure is invented.</summary>
internal static class BroughtJob
{
    private static readonly Source Own = Source.Invented("a shop's own, made up for the tests");

    public static FixtureMaterial Panel { get; } = new()
    {
        Id = "pressed-panel", Name = "pressed resin panel", Surface = MaterialSurface.FilledPolymer, BondsLike = FixtureMaterial.Acrylic, Source = Own,
    };

    /// <summary>A bench of zones: a seat, its front, and the underside of its front edge.</summary>
    public static ZonedFixture Bench { get; } = new(
        "bench",
        [
            new ZonePart("seat", FixtureZoneKind.Seat, Area.FromSquareMeters(0.54), Angle.FromDegrees(1)),
            new ZonePart("front", FixtureZoneKind.Front, Area.FromSquareMeters(0.42), Angle.FromDegrees(90)),
            new ZonePart("underside", FixtureZoneKind.Outside, Area.FromSquareMeters(0.04), Angle.FromDegrees(180)),
        ],
        Length.FromMeters(4.2))
    {
        MeasuredArea = Area.FromSquareMeters(1.005),
    };

    public static OwnDefect Inlay { get; } = new()
    {
        Code = "loose-inlay",
        Name = "loose inlay",
        Effect = Suitability.SuitableWithConditions,
        Remedy = "bed it again",
        RepeatTest = "tap test",
        Source = Own,
        Count = 3,
        Hollow = new Hollow(Volume.FromMilliliters(4), Length.FromMillimeters(3)),
        Work = new DefectWork { Kind = WorkKind.Fill, Instruction = "bed the inlay in epoxy", Hours = ThreePoint.Exactly(0.3), Source = Own },
    };

    public static SurveyRule Rule { get; } = new(
        "own-1", "inlays that have come loose", Suitability.SuitableWithConditions, "look for the cause", "tap test", Own,
        new SurveyCondition { Materials = [Panel], Defect = DefectKind.Own("loose-inlay"), MoreThan = 2 });

    public static LimitSet Limits { get; } = LimitSets.EuropeanUnion with
    {
        Id = "house", Name = "house limits (invented)", AsOf = "2027-01-15",
        Flammable = new FlammableShare
        {
            Share = Ratio.FromPercent(20), Authority = "our insurer (invented)", Jurisdiction = "our policy", AsOf = "2027-01-15", Source = Own,
        },
        Voc =
        [
            new VocLimit
            {
                Jurisdiction = "our house", Rule = "house rule (invented)", Category = "tub and tile refinish coating", EffectiveFrom = null,
                Limit = MassConcentration.FromGramsPerLiter(700), Source = Own,
            },
        ],
        Noise = [NoiseLimits.NioshRecommended with { Authority = "our noise rule (invented)", CriterionLevel = Level.FromDecibels(82) }],
    };

    public static Refinish.Jobs.Operation Photographs { get; } = new()
    {
        Id = "photographs", Kind = WorkKind.Other, Instruction = "photograph every fixture for the owner", Room = "bath", Fixtures = ["bench"],
        Time = TimeSpan.FromMinutes(12), Source = Own,
    };

    public static Job Job()
    {
        Job house = OwnProducts.With(OwnProducts.ThreePart, 2, Ratio.FromPercent(10));
        return house with
        {
            Id = "brought",
            Shop = house.Shop with
            {
                Limits = Limits,
                Survey = new SurveyPolicy { OwnRules = [Rule] },
                Noise = [.. house.Shop.Noise.Where(noise => noise.Work != WorkKind.Fill), new WorkNoise(WorkKind.Fill, "small grinder (invented)", Level.FromDecibels(91), Own)],
            },
            Fixtures =
            [
                house.Fixtures[0] with { Options = [] },
                new FixtureJob
                {
                    Id = "bench", Room = "bath", Fixture = Bench,
                    Survey = new Survey { Material = Panel, Defects = [Inlay], YearBuilt = 1995 },
                },
                new FixtureJob
                {
                    Id = "sink", Room = "bath", Fixture = ComposedTapes.Of(ComposedKind.DoubleBowlSink),
                    Survey = new Survey { Material = FixtureMaterial.EnamelledCastIron, Defects = [], YearBuilt = 1995 },
                },
            ],
            Changes = [OperationChange.Add(Photographs, null)],
        };
    }
}
