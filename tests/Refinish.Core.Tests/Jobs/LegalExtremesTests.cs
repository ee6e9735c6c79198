using System;
using System.Linq;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Films;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>What is legal is planned or objected to by name; what no real thing has is refused where it is entered.</summary>
public class LegalExtremesTests
{
    private static readonly Job House = InventedJobs.OccupiedHouse();
    private static readonly FixtureJob Tub = House.Fixtures[0];
    private static readonly Source Own = Source.Invented("for this test");

    private static Job Charging(decimal least) =>
        House with { Shop = House.Shop with { Prices = House.Shop.Prices with { MinimumCharge = least } } };

    private static Job Ordering(Refinish.Jobs.Operation own, WorkKind after) => House with
    {
        Fixtures = [Tub with { Options = [.. Tub.Options, FixtureOption.Work("X-1", own, after)] }],
        Shop = House.Shop with
        {
            Prices = House.Shop.Prices with
            {
                Options =
                [
                    .. House.Shop.Prices.Options,
                    new() { Code = "X-1", Description = "own work", Unit = LineUnit.Each, Cost = 0, Price = 10 },
                ],
            },
        },
    };

    private static Refinish.Jobs.Operation Work(WorkKind kind) => new()
    {
        Id = "tub/own", Kind = kind, Instruction = "own work", Time = TimeSpan.FromMinutes(20),
    };

    [Fact]
    [Evidence(Basis.Independent, "by hand, 7 % of tax: 9.3 × 10¹¹ comes to 9.951 × 10¹¹, below 10¹²; 9.5 × 10¹¹ to 1.0165 × 10¹², above")]
    public void A_total_beyond_the_largest_amount_is_a_gap()
    {
        JobPlan dear = Charging(930_000_000_000m).Plan();
        Assert.Empty(dear.Objections);
        Assert.Equal(995_100_000_000m, dear.Price!.Total);
        Assert.Equal(995_100_000_000m, dear.Quote!.Total);
        JobPlan beyond = Charging(950_000_000_000m).Plan();
        Assert.Equal(ObjectionKind.Price, Assert.Single(beyond.Objections).Kind);
        Assert.Contains("price of the job with tax: more than 10¹²", beyond.Objections[0].ToString(), StringComparison.Ordinal);
        Assert.Null(beyond.Price!.Total);
        Assert.Empty(beyond.Price.Taxes);
        Assert.Null(beyond.Quote);
    }

    [Fact]
    [Evidence(Basis.Contract, "a claim of more than 10¹² and a life of less than 0.001 years are refused where they are entered")]
    public void Money_and_lives_are_refused_at_construction()
    {
        Numbers.Refuses("CostPerClaim", () => _ = House.Shop.Warranty with { CostPerClaim = 2e12m });
        Numbers.Refuses("RefinishLifeYears", () => _ = InventedJobs.Replacing with { RefinishLifeYears = 0.0005 });
        Assert.NotNull((House with { Replacement = InventedJobs.Replacing with { RefinishLifeYears = 0.001 } }).Plan().Comparison);
    }

    [Fact]
    [Evidence(Basis.Independent, "two coats of at most 5 mm and a primer of at most 50 µm come to 10.05 mm")]
    public void A_system_of_thick_coats_is_handed_over()
    {
        CoatingSystem thick = new("thick", "thick",
        [
            SystemStep.Wipe(GenericCatalogue.SilanePromoter),
            SystemStep.Coat(new CoatingLayer(
                GenericCatalogue.EpoxyPrimer with { MaximumDryFilm = Length.FromMicrometers(50) }, Length.FromMicrometers(30), 1)),
            SystemStep.Coat(new CoatingLayer(
                GenericCatalogue.AcrylicUrethaneTopcoat with { MaximumDryFilm = Length.FromMillimeters(5) },
                Length.FromMicrometers(30), 2)),
        ], null, Own);
        JobPlan plan = (House with { Shop = House.Shop with { System = thick } }).Plan();
        Assert.Empty(plan.Objections);
        Numbers.Close(10.05, Assert.Single(plan.Handover!.Fixtures).Film.Maximum.Millimeters, 1e-12);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: (0 + 4 · 0 + 10 000) / 6 · 1.15 = 1916.7 h, more than a day")]
    public void Trips_of_weeks_are_objected_to_where_overtime_is_counted()
    {
        Shop shop = House.Shop with
        {
            Overtime = OvertimeRule.UsFederal,
            Labour = [.. House.Shop.Labour.Select(standard => standard.Work == WorkKind.Travel
                ? new LabourStandard
                {
                    Code = standard.Code, Description = standard.Description, Work = WorkKind.Travel, Fixed = new ThreePoint(0, 0, 10_000),
                    Source = Own,
                }
                : standard)],
        };
        PlanObjection objection = Assert.Single((House with { Shop = shop }).Plan().Objections);
        Assert.Equal((ObjectionKind.Labour, "travel"), (objection.Kind, objection.About));
        Assert.Contains("One trip takes 1916.7 h", objection.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "amounts below those of any real thing are refused where they are entered; no solids at all are a wipe")]
    public void Least_values_are_refused_at_construction()
    {
        CoatingProduct topcoat = GenericCatalogue.AcrylicUrethaneTopcoat;
        Numbers.Refuses("parts", () => _ = new MixPart(topcoat.Parts[0].Component, 5e-324));
        Numbers.Refuses("VolumeSolids", () => _ = topcoat with { VolumeSolids = Ratio.FromPercent(0.05) });
        Assert.Equal(Ratio.Zero, (topcoat with { VolumeSolids = Ratio.Zero }).VolumeSolids);
        Numbers.Refuses("FluidRate", () => _ = House.Shop.Gun with { FluidRate = VolumeFlow.FromMillilitersPerMinute(0.09) });
        SpreadingRate thick = SpreadingRate.FromSquareMetersPerLiter(0.009);
        Numbers.Refuses("SpreadingRate", () =>
            _ = GenericCatalogue.SilanePromoter with { SpreadingRate = SpreadingRate.FromSquareMetersPerLiter(0.9) });
        Numbers.Refuses("Coverage", () => _ = PrepChemicals.Generic[0] with { Coverage = thick });
        Numbers.Refuses("Coverage", () => _ = DefectMaterials.Generic[0] with { Coverage = thick });
        Numbers.Refuses("Share", () => _ = Tub with { Share = Ratio.FromPercent(0.00009) });
        Assert.Contains("0.01 m²/L", Assert.Throws<ArgumentOutOfRangeException>(() =>
            PrepChemicals.Generic[0] with { Coverage = thick }).Message, StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "a gun of 0.1 mL/min is days at one coat: no time of the schedule fits, and the coat is named")]
    public void A_coat_of_days_is_named()
    {
        SprayGun slow = House.Shop.Gun with { FluidRate = VolumeFlow.FromMillilitersPerMinute(0.1) };
        JobPlan plan = (House with { Shop = House.Shop with { Gun = slow } }).Plan();
        Assert.DoesNotContain(plan.Objections, objection => objection.Kind == ObjectionKind.OutOfRange);
        Assert.Contains(plan.Objections, objection =>
            objection.ToString().Contains("two-part acrylic urethane topcoat", StringComparison.Ordinal));
        Assert.Contains(plan.Objections, objection => objection.Kind is ObjectionKind.Schedule or ObjectionKind.Batch);
    }

    [Fact]
    [Evidence(Basis.Independent, "bright metal is primed within the hour after it was ground, by the clock of the schedule")]
    public void Rust_is_ground_in_one_go_where_its_primer_stands_apart()
    {
        Job job = House with
        {
            Shop = House.Shop with
            {
                Labour =
                [
                    .. House.Shop.Labour,
                    new LabourStandard
                    {
                        Code = "L-99", Description = "spot prime", Work = WorkKind.SpotPrime, Fixed = ThreePoint.Exactly(0.1), Source = Own,
                    },
                ],
            },
        };
        JobPlan plan = job.Plan();
        Assert.Empty(plan.Objections);
        ScheduledOperation ground = plan.Schedule!.TryFind("bath/rust")!;
        Assert.InRange(plan.Schedule.TryFind("bath/spot-prime")!.Start - ground.End, TimeSpan.Zero, TimeSpan.FromHours(1));

        Refinish.Jobs.Operation loose = ground.Operation with { IsInterruptible = true };
        PlanObjection objection = Assert.Single((job with { Changes = [OperationChange.Replace("bath/rust", loose)] }).Plan().Objections);
        Assert.Equal((ObjectionKind.Schedule, "bath/rust"), (objection.Kind, objection.About));
        Assert.Contains("'treat rust' may be interrupted, and 'spot prime' has to follow within 1 h", objection.ToString(),
            StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "1900-01-01 at fourteen hours ahead is 1899 by universal time, which no schedule takes")]
    public void The_year_of_the_start_is_that_of_universal_time()
    {
        DateTimeOffset midnight = new(1900, 1, 1, 0, 0, 0, TimeSpan.FromHours(14));
        Assert.Throws<ArgumentOutOfRangeException>(() => House with { Start = midnight });
        Assert.NotNull((House with { Start = midnight.AddHours(14) }).Plan().Schedule!.TryFind("bath/key"));
    }

    [Theory]
    [InlineData(WorkKind.Promote)]
    [InlineData(WorkKind.Broadcast)]
    [InlineData(WorkKind.Degrease)]
    [Evidence(Basis.Contract, "own work of a kind that the rules bring too is done once, beside that of the rules and not within it")]
    public void Own_work_of_any_kind_stands_by_itself(WorkKind kind)
    {
        Refinish.Jobs.Operation own = Work(kind) with { ByFixture = [new FixtureInstruction("tub", "own work", null, null)] };
        JobPlan plan = Ordering(own, WorkKind.Demask).Plan();
        Assert.Empty(plan.Objections);
        Refinish.Jobs.Operation[] all = [.. plan.Operations.Where(operation => operation.Kind == kind)];
        Assert.Equal(2, all.Length);
        Assert.All(all, operation => Assert.Single(operation.Fixtures));
        ScheduledOperation done = plan.Schedule!.TryFind("tub/own")!;
        Assert.True(done.Start >= plan.Schedule.TryFind("bath/demask")!.End);
    }

    [Fact]
    [Evidence(Basis.Contract, "an operation that names its fixture twice is done on it once and waits for nothing of its own")]
    public void A_fixture_named_twice_is_one()
    {
        Refinish.Jobs.Operation twice = Work(WorkKind.Other) with { Room = "bath", Fixtures = ["tub", "tub"] };
        JobPlan plan = (House with { Changes = [OperationChange.Add(twice, "bath/degrease")] }).Plan();
        Assert.Empty(plan.Objections);
        Assert.NotNull(plan.Schedule!.TryFind("tub/own"));
    }

    [Theory]
    [InlineData(WorkKind.FitTrim)]
    [InlineData(WorkKind.Caulk)]
    [InlineData(WorkKind.Inspect)]
    [Evidence(Basis.Contract, "what is ordered is in the procedure of its fixture and in the schedule, after the work before it")]
    public void Ordered_work_is_in_procedure_and_schedule(WorkKind after)
    {
        JobPlan plan = Ordering(Work(WorkKind.Other), after).Plan();
        Assert.Single(plan.Planned[0].Operations, operation => operation.Id == "tub/own");
        ScheduledOperation before = plan.Schedule!.Operations.Single(operation => operation.Operation.Kind == after);
        Assert.True(plan.Schedule.TryFind("tub/own")!.Start >= before.End);
    }

    [Fact]
    [Evidence(Basis.Contract, "a kind of work after which something can be ordered gives a place in the schedule; others are refused")]
    public void Work_is_ordered_where_it_has_a_place()
    {
        foreach (WorkKind after in Enum.GetValues<WorkKind>())
        {
            if (after is WorkKind.SetUp or WorkKind.Warm or WorkKind.Promote or WorkKind.SprayPrimer or WorkKind.SprayTopcoat
                or WorkKind.Broadcast or WorkKind.Notice or WorkKind.Travel or WorkKind.CleanGun or WorkKind.StandBy or WorkKind.Other)
            {
                ArgumentException refused = Assert.Throws<ArgumentException>(() => Ordering(Work(WorkKind.Other), after));
                Assert.StartsWith("after is " + after + "; allowed: Clear, ", refused.Message, StringComparison.Ordinal);
            }
            else
            {
                Assert.NotNull(Ordering(Work(WorkKind.Other), after).Plan().Schedule!.TryFind("tub/own"));
            }
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "a margin just below the whole is not written as the whole; others as before")]
    public void A_margin_near_the_whole_is_written_out()
    {
        Assert.Equal("margin of 99.99999 % of the price", new Margin(Ratio.FromPercent(99.99999)).ToString());
        Assert.Equal("margin of 45 % of the price", new Margin(Ratio.FromPercent(45)).ToString());
        Assert.Equal("margin of 33.3333 % of the price", new Margin(Ratio.FromPercent(100 / 3.0)).ToString());
    }

    [Fact]
    [Evidence(Basis.Independent, "three kits at 10.00 are 30.00")]
    public void A_line_of_kits_ends_with_its_total() =>
        Assert.Equal("3 × a, 1 L, at 10.00: 30.00; in all 30.00",
            new KitPurchase(Volume.FromLiters(3), [new MaterialPrice("a", Volume.FromLiters(1), 10m)]).ToString());
}
