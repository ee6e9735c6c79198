using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Scheduling;
using Refinish.Substrates;
using Refinish.Tests.Air;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>Jobs that last long, rooms with much in them and fans that hardly move: the plan answers, or says what to do.</summary>
public class FarReachTests
{
    private static Job House => InventedJobs.OccupiedHouse();

    [Theory]
    [Evidence(Basis.Identity, "hours before and after a closure of days are those without it: the air is the same, so many days later")]
    [InlineData(62)]
    [InlineData(300)]
    [InlineData(3600)]
    public void Premises_may_be_closed_for_long_between_two_visits(int days)
    {
        JobPlan plan = Closed(House, days).Plan();
        Assert.Empty(plan.Objections);
        Assert.NotNull(plan.Handover);
        Assert.NotNull(plan.Quote);
        RoomAirPlan air = Assert.Single(plan.Air);
        Assert.True(air.Study!.Emissions.Max(one => one.Start) > TimeSpan.FromDays(days - 1));
        RoomAirPlan usual = Assert.Single(House.Plan().Air);
        Numbers.Close(usual.Study!.PeakFlammableFraction!.Value.Percent, air.Study.PeakFlammableFraction!.Value.Percent, 1e-6);
        Assert.Contains(plan.Exposure, day => day.Day > House.Start.AddDays(days - 1) && day.Exposure.Stays.Count > 0);
    }

    [Fact]
    [Evidence(Basis.Independent,
        "closed form of a steady release without a film, C = m/(T F) · (1 − exp(−F T/V)), at the end of two sprays 300 days apart")]
    public void Two_sprays_in_one_room_may_lie_far_apart()
    {
        const double Apart = 300 * 24 * 60;
        AirStudy study = new(
            Rooms.Of(10), Rooms.Fan(100, 1), [Rooms.Coat(0, 10, 60, 1, 15), Rooms.Coat(Apart, 10, 120, 1, 15)], TimeSpan.FromHours(8));
        double flow = 100 * Math.Pow(0.3048, 3) / 60;
        double once = 0.060 / (600 * flow) * (1 - Math.Exp(-flow * 600 / 10));
        Numbers.Close(once, At(10), 1e-9);
        Numbers.Close(2 * once, At(Apart + 10), 1e-9);
        Numbers.Close(2 * once, study.Substances[0].PeakConcentration.KilogramsPerCubicMeter, 1e-9);
        Numbers.Close(Apart + 10, study.Substances[0].PeakAt!.Value.TotalMinutes, 1e-9);
        Numbers.Refuses("Start", () => Rooms.Coat((400.0 * 366 * 24 * 60) + 1, 10, 60, 1, 15));

        double At(double minutes) => study.ConcentrationAt(Solvents.ButylAcetate, TimeSpan.FromMinutes(minutes)).KilogramsPerCubicMeter;
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 45 panels of 2 m by 1.3 m have 117 m²; at 100 m²/L that is 1.17 L of isopropanol")]
    public void More_than_a_hundred_square_metres_are_wiped_in_one_room()
    {
        JobPlan plan = Panels(45, 2, 1.3).Plan();
        Assert.DoesNotContain(plan.Objections, one => one.Kind == ObjectionKind.OutOfRange);
        Numbers.Close(1.17 * Solvents.Isopropanol.Density.KilogramsPerLiter, plan.Work!.Operations
            .Where(operation => operation.Kind == WorkKind.Promote)
            .Sum(operation => operation.Vapours.Sum(vapour => vapour.Mass.Kilograms)), 1e-9);
        Assert.Contains("longest shift", Assert.Single(plan.Objections).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Identity, "a coat of more than 100 L is told to be too long, not refused; what it gives off in two days adds up to all of it")]
    public void A_coat_of_hundreds_of_litres_is_told_to_be_too_long()
    {
        JobPlan plan = Panels(250, 4, 3).Plan();
        CoatRun run = plan.Work!.Runs.First(one => one.Demand.Total.Liters > 100 && one.SprayTime > TimeSpan.FromHours(24));
        List<SolventEmission> days = [.. RoomAir.Of(run, TimeSpan.FromHours(3), House.Shop)];
        Assert.True(days.Count > 1);
        Numbers.Close(run.VolatileMass.Kilograms, days.Sum(day => day.VolatileMass.Kilograms), 1e-9);
        Numbers.Close(3 + run.SprayTime.TotalHours, days[days.Count - 1].End.TotalHours, 1e-9);
        Assert.NotEmpty(plan.Objections);
        Assert.All(plan.Objections, one => Assert.NotEqual(ObjectionKind.OutOfRange, one.Kind));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 850 panels of 4 m by 3 m have 10 200 m²")]
    public void A_room_with_more_than_labour_takes_is_told_with_its_area()
    {
        Job job = Panels(850, 4, 3);
        job = job with
        {
            Premises = job.Premises with { Rooms = [.. job.Premises.Rooms, InventedJobs.Bath("other", 22, 20)] },
            Fixtures = [.. job.Fixtures, House.Fixtures[0] with { Room = "other" }],
        };
        JobPlan plan = job.Plan();
        string told = Assert.Single(plan.Objections).ToString();
        Assert.Contains("'bath' have 10200 m² to be coated; allowed in one room: at most 10000 m²", told, StringComparison.Ordinal);
        Assert.NotEmpty(plan.Schedule!.Operations);
    }

    [Theory]
    [Evidence(Basis.Contract, "a flow below a millilitre a second (0.0036 m³/h) is no fan, and its reciprocal no number")]
    [InlineData(1e-300)]
    [InlineData(1e-6)]
    [InlineData(0.0035)]
    public void A_fan_that_moves_next_to_nothing_is_refused(double flow)
    {
        VolumeFlow given = VolumeFlow.FromCubicMetersPerHour(flow);
        Numbers.Refuses("LabelFlow", () => _ = new Exhaust { LabelFlow = given });
        Numbers.Refuses("Infiltration", () => _ = Rooms.Bathroom with { Infiltration = given });
        Numbers.Refuses("DeliveredFraction", () => _ = Rooms.Fan(1, 1) with { DeliveredFraction = Ratio.FromPercent(0.009) });
    }

    [Theory]
    [Evidence(Basis.Independent,
        "by hand: a fan of 0.0036 m³/h at 60 % with K = 3 takes 0.2 % of 9 m³ out in a day, so all that was given off is in the room: m/V")]
    [InlineData(0)]
    [InlineData(0.0036)]
    public void The_least_fan_and_none_leave_all_of_it_in_the_room(double flow)
    {
        Exhaust fan = new() { LabelFlow = VolumeFlow.FromCubicMetersPerHour(flow) };
        AirStudy study = new(Rooms.Of(9), fan, [Rooms.Coat(0, 10, 90, 0.4, 15)], TimeSpan.FromHours(8));
        Numbers.Close(0.010, study.Substances[0].PeakConcentration.KilogramsPerCubicMeter, 1e-3);
        Assert.Equal("0 m³/h, or at least 0.0036 m³/h and at most 36000 m³/h", Exhaust.Inputs["LabelFlow"].ToString().Split(": ")[1]);
        JobPlan plan = (House with { Premises = House.Premises with { Rooms = [House.Premises.Rooms[0] with { Exhaust = fan }] } }).Plan();
        Assert.NotNull(Assert.Single(plan.Air).Hardest);
        Assert.All(plan.Objections, one => Assert.Equal(ObjectionKind.Flammability, one.Kind));
    }

    [Theory]
    [Evidence(Basis.Contract, "days that the search does not look at are told with what it looks at: from the start to 3650 days later")]
    [InlineData(2050)]
    [InlineData(2026)]
    public void A_day_that_is_not_looked_at_is_named(int year)
    {
        JobPlan plan = (House with { Days = [new DayRequest([new DateTime(year, 3, 5)])] }).Plan();
        string told = Assert.Single(plan.Objections).ToString();
        Assert.Contains(FormattableString.Invariant($"all work on {year}-03-05. "), told, StringComparison.Ordinal);
        Assert.Contains("from 2027-03-01, when the work starts, to 2037-02-26", told, StringComparison.Ordinal);
        Assert.NotEmpty(plan.Schedule!.Operations);
        Assert.Null(plan.Handover);
    }

    [Fact]
    [Evidence(Basis.Contract, "what was asked for and how far was looked stands beside the conflict")]
    public void A_conflict_names_the_days_asked_for_and_the_horizon()
    {
        string asked = Assert.Single((House with { Days = [new DayRequest([new DateTime(2035, 3, 5)])] }).Plan().Objections).ToString();
        Assert.Contains("Asked for: all work on 2035-03-05. Hours were looked at until 2037-", asked, StringComparison.Ordinal);
        Says("Hours were looked at until 2037-", Closed(House, 4000));
        RoomClimate swing = RoomClimate.Daily(
            new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(45)), Temperature.FromDegreesCelsius(20),
            TemperatureDelta.FromKelvins(1), TimeSpan.FromHours(15));
        Job daily = House with { Premises = House.Premises with { Rooms = [House.Premises.Rooms[0] with { Climate = swing }] } };
        Assert.Empty(Closed(daily, 80).Plan().Objections);
        Says("for 90 days from the start", Closed(daily, 100));
        WorkShift noon = new(DayOfWeek.Monday, new WorkingHours(TimeSpan.FromHours(12), TimeSpan.FromHours(13)));
        Job quiet = House with { Premises = House.Premises with { QuietHours = [noon] } };
        Says("for 150 days from the start", Closed(quiet, 200));

        static void Says(string words, Job job) =>
            Assert.Contains(words, Assert.Single(job.Plan().Objections).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "an amount that no job takes is refused with what to do")]
    public void A_coat_of_more_than_ten_cubic_metres_is_refused_with_what_to_do()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => new CupPlan(
            Volume.FromCubicMeters(11), VolumeFlow.FromMillilitersPerMinute(60), null, TimeSpan.Zero, House.Shop.Cups));
        Assert.Contains("for one coat; divide the work", refused.Message, StringComparison.Ordinal);
    }

    private static Job Closed(Job job, int days) => job with
    {
        Premises = job.Premises with { Closed = [new TimeInterval(job.Start.AddHours(6), job.Start.AddDays(days))] },
    };

    private static Job Panels(int count, double length, double width) => House with
    {
        Fixtures =
        [
            .. Enumerable.Range(0, count).Select(i => new FixtureJob
            {
                Id = FormattableString.Invariant($"panel-{i}"), Room = "bath", Fixture = RandomJobs.Panel(length, width),
                Survey = new Survey { Material = FixtureMaterial.CeramicTile, Defects = [], YearBuilt = 1995 },
            }),
        ],
    };
}
