using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Colours;
using Refinish.Curing;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Scheduling;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Tests.Jobs;

/// <summary>Random whole jobs by seed: 1 to 3 rooms, 1 to 5 fixtures, 1 to 3 people; materials, defects, climates, options and policies
/// drawn at will.</summary>
internal sealed class RandomJobs
{
    private static readonly FixtureMaterial[] Materials =
    [
        FixtureMaterial.EnamelledCastIron, FixtureMaterial.EnamelledSteel, FixtureMaterial.Gelcoat, FixtureMaterial.Acrylic,
            FixtureMaterial.CulturedMarble,
        FixtureMaterial.VitreousChina, FixtureMaterial.CeramicTile, FixtureMaterial.SolidSurface, FixtureMaterial.Laminate,
    ];

    private readonly Random random;
    private readonly bool tame;

    private RandomJobs(int seed, bool tame)
    {
        random = new Random(seed);
        this.tame = tame;
    }

    /// <summary>Anything that can be typed in, sensible or not.</summary>
    public static Job Wild(int seed) => new RandomJobs(seed, tame: false).Make();

    /// <summary>What a shop would really take on: warm, dry rooms of a held climate, a fan that moves enough, two people or more. Most
    /// have a price.</summary>
    public static Job Tame(int seed) => new RandomJobs(seed, tame: true).Make();

    private Job Make()
    {
        string[] rooms = [.. new[] { "bath", "kitchen", "guest" }.Take(random.Next(1, 4))];
        return new Job
        {
            Id = "job",
            Shop = Shop(),
            Premises = new Premises
            {
                Id = "premises",
                Rooms = [.. rooms.Select(Room)],
                Difficulty = Pick(1.0, 1.0, 1.15, 0.8, 1.4),
                QuietHours = Chance(0.2) ? [new WorkShift(DayOfWeek.Monday, Hours(12, 14)), new WorkShift(DayOfWeek.Tuesday, Hours(8,
                    9.5))] : [],
                Closed = Chance(0.15) ? [new TimeInterval(InventedJobs.Monday.AddHours(2), InventedJobs.Monday.AddHours(random.Next(3,
                    30)))] : [],
            },
            Start = InventedJobs.Monday.AddMinutes(tame ? 15 * random.Next(0, 20) : random.Next(0, 3000)),
            Fixtures = [.. Enumerable.Range(1, random.Next(1, 6)).Select(i => Fixture("f" + i, rooms[random.Next(rooms.Length)]))],
            Days = !tame && Chance(0.1) ? [new DayRequest([new DateTime(2027, 3, 3), new DateTime(2027, 3, 5), new DateTime(2027, 3, 10)])]
                : [],
            Replacement = Chance(0.3) ? InventedJobs.Replacing : null,
        };
    }

    private Shop Shop()
    {
        int people = random.Next(tame ? 2 : 1, 4);
        bool wages = Chance(0.3);
        return InventedJobs.Shop with
        {
            Crew = [.. Enumerable.Range(1, people).Select(i => wages ? new Worker { Id = "p" + i, Wage = 20m + (4 * i) } : new Worker { Id = "p" + i })],
            StandsBy = tame || Chance(0.7),
            Guns = random.Next(1, 3),
            Paid = Pick(PaidTimeRule.OnSite, PaidTimeRule.Worked, PaidTimeRule.HalfDays),
            Prefers = Pick(SchedulePreference.FewestVisits, SchedulePreference.EarliestEnd),
            Calendar = Pick(
                InventedJobs.Weekdays,
                WorkCalendar.EveryDay(Hours(7, 18), LocalClock.Fixed(TimeSpan.FromHours(1))),
                new WorkCalendar(LocalClock.Fixed(TimeSpan.FromHours(1)), Enum.GetValues<DayOfWeek>().SelectMany(day =>
                    new[] { new WorkShift(day, Hours(8, 12)), new WorkShift(day, Hours(12.5, 17)) }), [])),
            AirborneFraction = Chance(0.5) ? Ratio.FromPercent(10) : null,
            Limits = !tame && Chance(0.2) ? LimitSets.Default with { Voc = [VocLimits.SouthCoast1113] } : LimitSets.Default,
            System = Pick(GenericCatalogue.EpoxyUrethaneSystem, GenericCatalogue.EpoxyUrethaneSystem, GenericCatalogue.EpoxyUrethaneSystem,
                GenericCatalogue.ClearedPlastic),
            Prices = InventedJobs.Shop.Prices with
            {
                Options = [.. InventedJobs.Shop.Prices.Options, new OptionPrice { Code = "polish", Description = "polish the taps", Unit = LineUnit.Each, Cost = 3m }],
                MinimumCharge = Pick(0m, 390m, 1200m),
                CashStep = Pick(0m, 0.05m, 1m),
            },
        };
    }

    private SiteRoom Room(string id)
    {
        SiteRoom bath = InventedJobs.Bath(id, Uniform(21, 25), Uniform(18.5, 22));
        if (tame)
        {
            return bath with { Exhaust = new Exhaust { LabelFlow = VolumeFlow.FromCubicMetersPerHour(2400) } };
        }

        MoistAir air = new(Temperature.FromDegreesCelsius(Uniform(12, 34)), Ratio.FromPercent(Uniform(20, 90)));
        Temperature surface = Temperature.FromDegreesCelsius(air.DryBulb.DegreesCelsius + Uniform(-8, 3));
        return bath with
        {
            Room = new Room { Length = Length.FromMeters(Uniform(1.4, 4)), Width = Length.FromMeters(Uniform(1.4, 4)), Height = Length.FromMeters(2.4) },
            Exhaust = new Exhaust { LabelFlow = VolumeFlow.FromCubicMetersPerHour(Pick(0, 300, 1200, 2400, 4000)) },
            Climate = random.Next(3) switch
            {
                0 => RoomClimate.Held(air, surface),
                1 => RoomClimate.Daily(air, surface, TemperatureDelta.FromKelvins(Uniform(0.5, 6)), TimeSpan.FromHours(Uniform(0, 24))),
                _ => RoomClimate.Logged(
                    new TemperatureHistory(
                        InventedJobs.Monday.AddHours(-8),
                        Enumerable.Range(0, random.Next(4, 60)).Select(_ => new TemperatureSegment(TimeSpan.FromHours(random.Next(1, 7)),
                            Temperature.FromDegreesCelsius(Uniform(14, 30)))),
                        Chance(0.7)),
                    Temperature.FromDegreesCelsius(Uniform(4, 15)), surface),
            },
        };
    }

    private FixtureJob Fixture(string id, string room)
    {
        FixtureMaterial material = Materials[random.Next(Materials.Length)];
        bool change = Chance(0.2);
        List<FixtureOption> options = [];
        if (Chance(0.25))
        {
            options.Add(FixtureOption.DrainTrim("drain-trim"));
        }

        IFixture shape = Shape();
        if (Chance(0.25) && (!tame || shape.Zones.Any(zone => zone.Kind == FixtureZoneKind.Floor)))
        {
            options.Add(FixtureOption.SlipResistantFloor("slip-floor", GenericCatalogue.PolymerBeads,
                AreaDensity.FromGramsPerSquareMeter(20)));
        }

        if (Chance(0.2))
        {
            options.Add(FixtureOption.Work(
                "polish", new Refinish.Jobs.Operation { Id = id + "/polish", Kind = WorkKind.Other, Instruction = "polish the taps",
                    Time = TimeSpan.FromMinutes(random.Next(1, 90)) }, Pick(WorkKind.Inspect, WorkKind.Clear, WorkKind.Demask)));
        }

        bool refinished = Chance(0.2);
        return new FixtureJob
        {
            Id = id,
            Room = room,
            Fixture = shape,
            Survey = new Survey
            {
                Material = !tame && Chance(0.05) ? Pick(FixtureMaterial.Unknown, FixtureMaterial.Polyolefin) : material,
                Defects = [.. Enumerable.Range(0, random.Next(0, 4)).Select(_ => Defect()).GroupBy(defect => defect.Kind).Select(same => same.First())],
                YearBuilt = Chance(0.5) ? 1955 : 1995,
                LeadTest = Pick(LeadTest.Negative, LeadTest.NotTested),
                PreviouslyRefinished = refinished,
                OldCoatAdhesion = refinished && Chance(0.7) ? Pick(AdhesionGrade.Grade2B, AdhesionGrade.Grade5B) : null,
            },
            System = !tame && Chance(0.15) ? GenericCatalogue.SlipResistantTub : null,
            Surface = Chance(0.15) ? Temperature.FromDegreesCelsius(Uniform(tame ? 12 : 2, 20)) : null,
            Share = Chance(0.1) ? Ratio.FromPercent(50) : Ratio.FromPercent(100),
            OldColour = change ? new CieLab(60, -10, 20) : null,
            NewColour = change ? new CieLab(95, 0, 2) : null,
            Options = options,
        };
    }

    private IFixture Shape() => random.Next(4) switch
    {
        0 => InventedJobs.TubOf(Uniform(0.8, 1.2), 53, 44),
        1 => Panel(Uniform(0.4, 2.6), Uniform(0.3, 0.9)),
        2 => Panel(Uniform(0.3, 0.8), Uniform(0.3, 0.6)),
        _ => Panel(Uniform(1, 4), Uniform(1, tame ? 1.5 : 3)),
    };

    public static FlatPanel Panel(double length, double width) => new(new FlatPanelMeasurements
    {
        Length = Length.FromMeters(length), Width = Length.FromMeters(width), ExposedEdge = Length.Zero, EdgeHeight = Length.Zero,
        BacksplashLength = Length.Zero, BacksplashHeight = Length.Zero, BacksplashThickness = Length.Zero, CutOuts = [],
    });

    private Defect Defect() => random.Next(tame ? 9 : 13) switch
    {
        0 => new Chip(Length.FromMillimeters(Uniform(4, 40)), Length.FromMillimeters(Uniform(0.3, 2))),
        1 => new WornPatch(Length.FromMillimeters(150), Length.FromMillimeters(90), Length.FromMillimeters(0.4)),
        2 => new RustSpot(Length.FromMillimeters(Uniform(5, 40))),
        3 => new SiliconeResidue(Length.FromMeters(Uniform(0.3, 4))),
        4 => new PeelingCoat(Area.FromSquareMeters(Uniform(0.05, 0.3)), Pick<AdhesionGrade?>(null, AdhesionGrade.Grade2B,
            AdhesionGrade.Grade4B)),
        5 => new GroutFailure(Length.FromMeters(Uniform(0.2, 3))),
        6 => new Burn(Length.FromMillimeters(Uniform(5, 40))),
        7 => new Crack(Length.FromMillimeters(Uniform(50, 300)), Length.FromMillimeters(1), Length.FromMillimeters(1),
            movesUnderLoad: false),
        8 => new Crazing(Ratio.FromPercent(Uniform(1, 15))),
        9 => new Crazing(Ratio.FromPercent(Uniform(20, 90))),
        10 => new LooseTiles(random.Next(1, 6)),
        11 => new Perforation(Length.FromMillimeters(8)),
        _ => new FlexingFloor(Length.FromMillimeters(Uniform(0.5, 6))),
    };

    private static WorkingHours Hours(double from, double until) => new(TimeSpan.FromHours(from), TimeSpan.FromHours(until));

    private bool Chance(double share) => random.NextDouble() < share;

    private double Uniform(double low, double high) => Math.Round(low + (random.NextDouble() * (high - low)), 3);

    private T Pick<T>(params T[] from) => from[random.Next(from.Length)];
}
