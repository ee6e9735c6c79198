using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>
/// Labour standards under a host's own codes, for every kind of work and of defect: each rate, given in each form, is worked as its arithmetic
/// says or refused by name. The rates are invented: half an hour, a quarter of an hour a unit, a tenth of an hour a square metre, 40 % once.
/// </summary>
public class LabourRateTests
{
    private static readonly Crack Crack = new(Length.FromMeters(0.8), Length.FromMillimeters(1.5), Length.FromMillimeters(2), movesUnderLoad: false);

    private static readonly Defect[] Every =
    [
        Crack, new Crack(Length.FromMeters(0.6), Length.FromMillimeters(1.5), Length.FromMillimeters(2), movesUnderLoad: false),
        new RustSpot(Length.FromMillimeters(20)), new RustSpot(Length.FromMillimeters(30)), new Crazing(Ratio.FromPercent(10)),
        new SiliconeResidue(Length.FromMeters(2)), new GroutFailure(Length.FromMeters(3)), new LooseTiles(2),
        new Chip(Length.FromMillimeters(18), Length.FromMillimeters(1)), new Chip(Length.FromMillimeters(28), Length.FromMillimeters(1)),
        new Burn(Length.FromMillimeters(15)), new Burn(Length.FromMillimeters(25)),
        new WornPatch(Length.FromMillimeters(90), Length.FromMillimeters(60), Length.FromMillimeters(0.5)),
        new Pitting(Area.FromSquareMeters(0.3), Length.FromMillimeters(0.3), Ratio.FromPercent(20)),
        new PeelingCoat(Area.FromSquareMeters(0.4), null),
        new LowSpot(Length.FromMillimeters(300), Length.FromMillimeters(200), Length.FromMillimeters(0.6), Length.FromMillimeters(40)),
    ];

    private static readonly RecessedBathtub Tub = InventedJobs.Tub;

    private static readonly double Whole = Tub.CoatedArea.SquareMeters;

    private static readonly double Floor = Tub.Zones.Where(zone => zone.Kind == FixtureZoneKind.Floor).Sum(zone => zone.Area.SquareMeters);

    private static LabourStandard Host(WorkKind kind) => new()
    {
        Code = "H-" + kind.ToString("G"), Description = "as the host counts it", Unit = "unit", Work = kind, Source = Source.Invented("for a test"),
    };

    private static LabourStandard Host(DefectKind kind) => new()
    {
        Code = "H-" + kind.Code, Description = "as the host counts it", Unit = "unit", Repairs = kind, Source = Source.Invented("for a test"),
    };

    private static readonly (string Form, Func<LabourStandard, LabourStandard> Give)[] Forms =
    [
        ("fixed", one => one with { Fixed = ThreePoint.Exactly(0.5) }),
        ("unit", one => one with { PerUnit = ThreePoint.Exactly(0.25) }),
        ("area", one => one with { PerSquareMeter = ThreePoint.Exactly(0.1) }),
        ("once", one => one with { PerUnit = ThreePoint.Exactly(0.25), OncePerVisit = Ratio.FromPercent(40) }),
        ("size", one => one with { Fixed = ThreePoint.Exactly(0.5), FromSize = Length.FromMillimeters(22) }),
        ("once without unit", one => one with { Fixed = ThreePoint.Exactly(0.5), OncePerVisit = Ratio.FromPercent(40) }),
        ("nothing", one => one),
    ];

    [Fact]
    [Evidence(Basis.Independent, "by hand for two tubs of 2.57 m² in one room: operations, units and areas of each kind of work counted on the list of the trade; 0.25 h × (1 + 0.6 (n − 1)) for n units of which 40 % is done once")]
    public void Every_kind_of_work()
    {
        // Units and square metres of one operation, and how many operations there are.
        Dictionary<WorkKind, (int Operations, double Units, double Area)> counted = new()
        {
            [WorkKind.SetUp] = (1, 1, 2 * Whole),                       // one room
            [WorkKind.ReinforceCrack] = (1, 2 * 1.4, double.NaN),       // metres of crack: 0.8 + 0.6 in each tub
            [WorkKind.Broadcast] = (1, 2, 2 * Floor),
            [WorkKind.CleanGun] = (2, 1, double.NaN),                   // after the primer and after the topcoat
            [WorkKind.FitTrim] = (1, 2, double.NaN),                    // one set for each tub
        };
        WorkKind[] aside = [WorkKind.Warm, WorkKind.StandBy];
        WorkKind[] pieces = [WorkKind.Travel, WorkKind.CleanGun, WorkKind.FitTrim, WorkKind.ReinforceCrack];
        WorkKind[] alone = [WorkKind.Travel, WorkKind.CleanGun, WorkKind.SetUp];
        foreach (WorkKind kind in Enum.GetValues<WorkKind>())
        {
            foreach ((string form, Func<LabourStandard, LabourStandard> give) in Forms)
            {
                bool refused = form is "size" or "nothing" or "once without unit" || aside.Contains(kind)
                    || (form == "area" && pieces.Contains(kind)) || (form == "once" && alone.Contains(kind));
                LabourStandard standard = give(Host(kind));
                if (refused)
                {
                    Assert.Contains(standard.Code + " ", Refused(standard), StringComparison.Ordinal);
                    continue;
                }

                Shop shop = Shop.Generic with { Labour = LabourStandards.GenericWith(standard) };

                // Trips and a second wipe are there once there is a schedule; see below.
                if (kind is WorkKind.Travel or WorkKind.WipeAgain)
                {
                    continue;
                }

                WorkList work = Work(shop, kind);
                int coats = work.Procedures[0].Coats.Count(coat => coat.Kind == kind);
                (int operations, double units, double area) = counted.TryGetValue(kind, out (int, double, double) one) ? one
                    : (coats > 0 ? coats : 1, 2, 2 * Whole);
                double once = units > 1 ? 1 + (0.6 * (units - 1)) : units;
                double expected = operations * (form switch { "fixed" => 0.5, "unit" => 0.25 * units, "area" => 0.1 * area, _ => 0.25 * once });
                Numbers.Close(expected, Hours(work, standard.Code), 1e-9);
                Assert.DoesNotContain(work.Objections, objection => objection.Kind == ObjectionKind.Labour);
            }
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand for one fixture with two of each kind that goes by size: units in metres, square metres, tiles or pieces as the docs list them; the smaller of two stays below 22 mm")]
    public void Every_kind_of_defect()
    {
        Dictionary<DefectKind, (int Count, double Units, double Area, int FromSize)> counted = new()
        {
            [DefectKind.Crack] = (2, 1.4, 0, 2),
            [DefectKind.RustSpot] = (2, 2, 0, 1),
            [DefectKind.Crazing] = (1, 1, 0, 0),
            [DefectKind.SiliconeResidue] = (1, 2, 0, 0),
            [DefectKind.GroutFailure] = (1, 3, 0, 0),
            [DefectKind.LooseTiles] = (1, 2, 0, 0),
            [DefectKind.Chip] = (2, 2, 0, 1),
            [DefectKind.Burn] = (2, 2, 0, 1),
            [DefectKind.WornPatch] = (1, 1, 0, 1),
            [DefectKind.Pitting] = (1, 0.3, 0.3, 0),
            [DefectKind.PeelingCoat] = (1, 0.4, 0.4, 0),
            [DefectKind.LowSpot] = (1, 1, 0, 1),
        };
        DefectKind[] anothers = [DefectKind.Perforation, DefectKind.FlexingFloor];
        // A liner comes off one fixture by itself: see the tests of own defects.
        foreach (DefectKind kind in DefectKind.All.Where(kind => kind != DefectKind.Liner))
        {
            (int count, double units, double area, int fromSize) = counted.TryGetValue(kind, out (int, double, double, int) one) ? one : default;
            foreach ((string form, Func<LabourStandard, LabourStandard> give) in Forms)
            {
                bool refused = form is "nothing" or "once without unit" || anothers.Contains(kind) || (form == "area" && area == 0)
                    || (form == "size" && fromSize == 0);
                LabourStandard standard = give(Host(kind));
                if (refused)
                {
                    Assert.Contains(standard.Code + " ", Refused(standard), StringComparison.Ordinal);
                    continue;
                }

                // Alone for its kind, since a generic one from a larger size would take the larger chip.
                Shop shop = Shop.Generic with { Labour = [standard, .. LabourStandards.Generic.Where(other => other.Repairs != kind)] };
                Procedure procedure = new(Of("a", Every, false), shop);
                double once = units > 1 ? 1 + (0.6 * (units - 1)) : units;
                double expected = form switch { "fixed" => 0.5 * count, "unit" => 0.25 * units, "area" => 0.1 * area, "size" => 0.5 * fromSize, _ => 0.25 * once };
                Numbers.Close(expected, procedure.Operations.SelectMany(operation => operation.Labour).Where(task => task.Standard.Code == standard.Code).Sum(task => task.Hours.Mean), 1e-9);
                Assert.Equal(form == "size" ? count - fromSize : 0, procedure.LabourGaps.Count);

                // Without a job, the same.
                Numbers.Close(expected, LabourStandards.ForDefects(Every, [standard]).Sum(task => task.Hours.Mean), 1e-9);

                // On two fixtures of one room the part done once is done once for both.
                if (form == "once")
                {
                    double both = 2 * units > 1 ? 1 + (0.6 * ((2 * units) - 1)) : 2 * units;
                    WorkList work = Work(shop, WorkKind.Clear, Every, false);
                    Numbers.Close(0.25 * both, Hours(work, standard.Code), 1e-9);
                    Numbers.CanBeWritten(new LabourEstimate([.. work.Operations.SelectMany(operation => operation.Labour).Where(task => task.Standard.Code == standard.Code)]).Workings());
                }
            }
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 0.5 h and 0.25 h a trip are 0.75 h for each person and visit")]
    public void Each_trip_counts_its_fixed_hours()
    {
        Job job = InventedJobs.OccupiedHouse();
        LabourStandard travel = Host(WorkKind.Travel) with { Fixed = ThreePoint.Exactly(0.5), PerUnit = ThreePoint.Exactly(0.25), IsOnSite = false };
        JobPlan plan = (job with { Shop = job.Shop with { Labour = LabourStandards.GenericWith(travel) } }).Plan();
        Assert.True(plan.Schedule!.Visits.Count > 1);
        Numbers.Close(0.75 * plan.Schedule.Visits.Count, plan.Costs!.Request.Labour.Lines.Where(line => line.Code == travel.Code).Sum(line => line.HourRange.Mean), 1e-9);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand for one tub that is wiped again after a night: half an hour, a quarter of an hour for one unit, a tenth of an hour for each square metre")]
    public void A_second_wipe_is_worked_by_each_rate()
    {
        Job house = InventedJobs.OccupiedHouse();
        Job night = Enumerable.Range(0, 9).Select(hour => house with { Start = house.Start.AddHours(hour) })
            .First(job => job.Plan().Operations.Any(operation => operation.Kind == WorkKind.WipeAgain));
        foreach ((string form, Func<LabourStandard, LabourStandard> give) in Forms.Take(4))
        {
            LabourStandard standard = give(Host(WorkKind.WipeAgain));
            JobPlan plan = (night with { Shop = night.Shop with { Labour = LabourStandards.GenericWith(standard) } }).Plan();
            Refinish.Jobs.Operation wipe = Assert.Single(plan.Operations, operation => operation.Kind == WorkKind.WipeAgain);
            Numbers.Close(form switch { "fixed" => 0.5, "area" => 0.1 * Whole, _ => 0.25 }, Assert.Single(wipe.Labour).Hours.Mean, 1e-9);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "an own operation without hours takes those of its kind; by area it needs a fixture, and is objected to by the standard's name without one")]
    public void Own_operations_take_the_hours_of_their_kind()
    {
        Shop shop = Shop.Generic with { Labour = LabourStandards.GenericWith(Host(WorkKind.Notice) with { PerSquareMeter = ThreePoint.Exactly(0.1) }) };
        WorkList nowhere = Work(shop, WorkKind.Notice, fixtures: []);
        Assert.Contains(nowhere.Objections, objection => objection.About == "own" && objection.ToString().Contains("H-Notice", StringComparison.Ordinal));
        WorkList known = Work(shop, WorkKind.Notice);
        Assert.DoesNotContain(known.Objections, objection => objection.About == "own");
        Assert.DoesNotContain(Work(Shop.Generic, WorkKind.Degrease).Objections, objection => objection.About == "own");
    }

    [Fact]
    [Evidence(Basis.Contract, "a clash with a generic standard is told as one: whose code, what for, and what to do; two for one work are refused wherever they are looked up")]
    public void Clashes_name_the_right_list()
    {
        LabourStandard mine = Host(WorkKind.Notice) with { Code = "L-31", Fixed = ThreePoint.Exactly(1) };
        string clash = Assert.Throws<ArgumentException>(() => LabourStandards.GenericWith(mine)).Message;
        Assert.Contains("L-31 as the host counts it", clash, StringComparison.Ordinal);
        Assert.Contains("generic standard L-31 fill and sand a chip", clash, StringComparison.Ordinal);

        // The code of the one that it replaces is free.
        LabourStandard chip = Host(DefectKind.Chip) with { Code = "L-31", Fixed = ThreePoint.Exactly(1) };
        Assert.Equal(LabourStandards.Generic.Count, LabourStandards.GenericWith(chip).Count);
        Assert.Contains("own holds two", Assert.Throws<ArgumentException>(() => LabourStandards.GenericWith(chip, chip with { Repairs = DefectKind.Burn })).Message, StringComparison.Ordinal);
        LabourStandard twin = chip with { Code = "twin" };
        Assert.Contains("L-31 and twin", Assert.Throws<ArgumentException>(() => LabourStandards.GenericWith(chip, twin)).Message, StringComparison.Ordinal);
        Assert.Contains("L-31 and twin", Assert.Throws<ArgumentException>(() => LabourStandards.ForDefect(Every[8], [chip, twin])).Message, StringComparison.Ordinal);
        Assert.Contains("two standards with the code L-31", Assert.Throws<ArgumentException>(() => LabourStandards.ForDefects(Every, [chip, chip])).Message, StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "a task refuses a standard whose rate it has no number for, and one without any hours; with all numbers given each counts")]
    public void A_task_loses_no_rate()
    {
        LabourStandard both = Host(WorkKind.Key) with { PerUnit = ThreePoint.Exactly(0.25), PerSquareMeter = ThreePoint.Exactly(0.1) };
        Assert.Contains("H-Key has hours by unit", Assert.Throws<ArgumentException>(() => new LabourEstimate([new LabourTask { Standard = both, Area = Area.FromSquareMeters(2) }])).Message, StringComparison.Ordinal);
        Assert.Contains("H-Key has hours by area", Assert.Throws<ArgumentException>(() => new Refinish.Jobs.Operation { Id = "own", Kind = WorkKind.Key, Instruction = "own", Labour = [new LabourTask { Standard = both, Units = 2 }] }).Message, StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => new LabourTask { Standard = both }.Hours);
        Assert.Contains("no hours at all", Assert.Throws<ArgumentException>(() => new LabourTask { Standard = Host(WorkKind.Key), Area = Area.Zero, Units = 1 }).Message, StringComparison.Ordinal);
        Numbers.Close(0.7, new LabourTask { Standard = both, Area = Area.FromSquareMeters(2), Units = 2 }.Hours.Mean, 1e-12);

        // No time that is stated is an answer.
        Assert.Equal(0, new LabourTask { Standard = Host(WorkKind.Key) with { PerUnit = ThreePoint.Exactly(0) }, Area = Area.Zero, Units = 1, Times = 1 }.Hours.Mean);
    }

    [Fact]
    [Evidence(Basis.Contract, "the generic standards keep the rules that a shop's own are held to")]
    public void Generic_standards_keep_the_rules()
    {
        Assert.Equal(LabourStandards.Generic.Count, (Shop.Generic with { Labour = [.. LabourStandards.Generic] }).Labour.Count);
        Assert.Equal(LabourStandards.Generic.Count, LabourStandards.GenericWith().Count);
    }

    private static string Refused(LabourStandard standard) =>
        Assert.Throws<ArgumentException>(() => Shop.Generic with { Labour = LabourStandards.GenericWith(standard) }).Message;

    private static double Hours(WorkList work, string code) =>
        work.Operations.SelectMany(operation => operation.Labour).Where(task => task.Standard.Code == code).Sum(task => task.Hours.Mean);

    private static FixtureJob Of(string id, Defect[] defects, bool strips) => new()
    {
        Id = id,
        Room = "bath",
        Fixture = Tub,
        Survey = new Survey
        {
            Material = FixtureMaterial.Gelcoat, Defects = defects, PreviouslyRefinished = true, OldCoatAdhesion = strips ? AdhesionGrade.Grade1B : AdhesionGrade.Grade5B,
            YearBuilt = 1995,
        },
        Options =
        [
            FixtureOption.SlipResistantFloor("slip-floor", GenericCatalogue.PolymerBeads, AreaDensity.FromGramsPerSquareMeter(20)),
            FixtureOption.DrainTrim("drain-trim"),
        ],
    };

    // Two tubs whose old coat comes off; work that no rule makes is an operation of the caller's own.
    private static WorkList Work(Shop shop, WorkKind kind, Defect[]? defects = null, bool strips = true, string[]? fixtures = null)
    {
        OperationChange[] changes = kind is WorkKind.Notice or WorkKind.Other || fixtures is not null
            ? [OperationChange.Add(new Refinish.Jobs.Operation { Id = "own", Kind = kind, Room = "bath", Fixtures = fixtures ?? ["a", "b"], Instruction = "as the host does it" }, null)]
            : [];
        Procedure[] procedures = [new(Of("a", defects ?? Every, strips), shop), new(Of("b", defects ?? Every, strips), shop)];
        return new WorkList(procedures, new Premises { Id = "house", Rooms = [InventedJobs.Bath("bath", 22, 22)] }, shop, InventedJobs.Monday, changes);
    }
}
