using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>Who may go into a room with vapour, and when; flash, and what is about at its line.</summary>
public class ClearingTests
{
    private static Job WithFan(double cubicMetersPerHour, Job job) => job with
    {
        Premises = job.Premises with
        {
            Rooms = [.. job.Premises.Rooms.Select(room => room with { Exhaust = new Exhaust { LabelFlow = VolumeFlow.FromCubicMetersPerHour(cubicMetersPerHour) } })],
        },
    };

    [Fact]
    [Evidence(Basis.Independent, "read from the timeline: whoever goes into a room without supplied air does so when the vapour of all that was sprayed, stripped or "
        + "wiped on before is at most a tenth of its lower flammable limit and 1 on the index of the lowest limits known: random jobs")]
    public void Nobody_goes_in_too_soon()
    {
        JobProperties.Holds(60, RandomJobs.Tame, GoesInTooSoon);
        JobProperties.Holds(80, RandomJobs.Wild, GoesInTooSoon);
    }

    [Fact]
    [Evidence(Basis.Identity, "a weaker fan never lets people in sooner; the exposure limits are kept later than a tenth of the flammable limit, which alone was waited for")]
    public void A_weaker_fan_keeps_them_out_longer()
    {
        TimeSpan? before = null;
        foreach (double fan in new[] { 2400.0, 1200, 600, 300 })
        {
            JobPlan plan = WithFan(fan, InventedJobs.OccupiedHouse()).Plan();
            Refinish.Jobs.Operation coat = plan.Operations.Last(operation => operation.Sprays);
            Assert.True(coat.Clearing > TimeSpan.Zero);
            Assert.True(before is null || coat.Clearing >= before);
            before = coat.Clearing;
        }

        JobPlan house = InventedJobs.OccupiedHouse().Plan();
        CoatRun last = house.Work!.Runs[^1];
        AirStudy alone = new(house.Air[0].Study!.Room, house.Air[0].Room.Exhaust,
            [.. RoomAir.Of(last, TimeSpan.Zero, house.Job.Shop)], TimeSpan.FromHours(8));
        Assert.True(house.Operations.Single(operation => operation.Id == last.Id).Clearing >= alone.TimeToReEntry(1));
        Assert.True(alone.TimeToReEntry(1) > alone.TimeToClear(Ratio.FromPercent(10)));
    }

    [Fact]
    [Evidence(Basis.Contract, "a room that takes longer than a working day to clear is objected to, and the wait stands in the plan; limits that are not known leave the "
        + "fire line and a condition")]
    public void A_room_that_hardly_clears_is_objected_to()
    {
        JobPlan plan = WithFan(10, InventedJobs.OccupiedHouse()).Plan();
        PlanObjection objection = plan.Objections.Single(one => one.Id == "Flammability/bath/clearing");
        Assert.Contains("beyond", objection.Sentence(DisplayUnits.Si), StringComparison.Ordinal);
        Assert.Contains(plan.Operations, operation => operation.Clearing > TimeSpan.FromHours(9));
        Assert.DoesNotContain(InventedJobs.OccupiedHouse().Plan().Objections, one => one.Kind == ObjectionKind.Flammability);

        Job job = InventedJobs.OccupiedHouse();
        JobPlan unknown = (job with { Shop = job.Shop with { Limits = LimitSets.UnitedStates with { Exposure = [] } } }).Plan();
        Assert.Contains(unknown.Conditions, condition => condition.Id == "bath/re-entry" && condition.Sentence(DisplayUnits.Si).Contains("cannot be told", StringComparison.Ordinal));
        Assert.True(unknown.Operations.Last(operation => operation.Sprays).Clearing < job.Plan().Operations.Last(operation => operation.Sprays).Clearing);
    }

    [Fact]
    [Evidence(Basis.Contract, "whoever sprays, strips, wipes on promoter, digests silicone with solvent or broadcasts grains is watched; a shop may say that somebody "
        + "else does it, and then a condition says so")]
    public void Somebody_stands_by()
    {
        JobPlan plan = InventedJobs.OccupiedHouse().Plan();
        string[] watched = [.. plan.Operations.Where(operation => operation.Kind == WorkKind.StandBy).Select(operation => operation.Beside!)];
        Assert.Equal(watched.Distinct(), watched);
        Assert.Equal(
            plan.Operations.Where(operation => operation.Sprays || operation.Kind is WorkKind.Promote or WorkKind.RemoveSilicone or WorkKind.Broadcast).Select(operation => operation.Id),
            watched);
        Job alone = InventedJobs.OccupiedHouse();
        JobPlan unwatched = (alone with { Shop = alone.Shop with { StandsBy = false } }).Plan();
        Assert.DoesNotContain(unwatched.Operations, operation => operation.Kind == WorkKind.StandBy);
        Assert.Contains(unwatched.Conditions, condition => condition.Id == "occupied/stand-by");
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: at 60 % transfer and 25 % of what lands, 40 + 15 = 55 % flashes; more flash never lowers the peak; the careful bound of one coat "
        + "lets all of it flash whatever is stated")]
    public void Flash_is_overspray_and_a_part_of_what_lands()
    {
        Numbers.Close(0.55, SolventEmission.FlashOf(Ratio.FromPercent(60), Ratio.FromPercent(25)).DecimalFractions);
        Numbers.Close(1, SolventEmission.FlashOf(Ratio.FromPercent(60), Ratio.FromPercent(100)).DecimalFractions);
        Numbers.Refuses("transferEfficiency", () => SolventEmission.FlashOf(Ratio.Zero, Ratio.Zero));
        Numbers.Refuses("ofLanded", () => SolventEmission.FlashOf(Ratio.FromPercent(60), Ratio.FromPercent(101)));
        Numbers.Refuses("FlashOfLanded", () => _ = InventedJobs.Shop with { FlashOfLanded = Ratio.FromPercent(-1) });

        Job job = InventedJobs.OccupiedHouse();
        double peak = 0;
        foreach (double part in new[] { 0.0, 10, 25, 40, 100 })
        {
            JobPlan plan = (job with { Shop = job.Shop with { FlashOfLanded = Ratio.FromPercent(part) } }).Plan();
            RoomAirPlan air = plan.Air[0];
            Numbers.CanBeWritten(air.Workings());
            Assert.Contains(air.Workings().Steps, step => step.Symbol == "f" && Math.Abs(step.Value - (0.4 + (0.6 * part / 100))) < 1e-12);
            CoatRun run = plan.Work!.Runs[0];
            AirStudy alone = new(air.Study!.Room, air.Room.Exhaust,
                [.. RoomAir.Of(run, TimeSpan.Zero, plan.Job.Shop)], TimeSpan.FromHours(8));
            Assert.True(alone.PeakFlammableFraction!.Value.DecimalFractions >= peak);
            peak = alone.PeakFlammableFraction.Value.DecimalFractions;
            AirStudy none = new(air.Study.Room, air.Room.Exhaust,
                [.. RoomAir.Of(run, TimeSpan.Zero, job.Shop with { FlashOfLanded = Ratio.Zero })], TimeSpan.FromHours(8));
            Numbers.Close(none.SteadyAirflowForFlammableLimit!.Value.CubicMetersPerHour, alone.SteadyAirflowForFlammableLimit!.Value.CubicMetersPerHour, 1e-9);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "from half the line up to the line is about at the line, of flammability alone, and the caution says so; no remedy where none is needed")]
    public void Near_a_line_is_told_as_about_at_it()
    {
        LimitComparison Of(double value, LimitSense sense) => new("x", value, 0.25, sense, Measure.Percent, Source.Invented("for this test")) { GoodToFactor = 2, Digits = 2 };
        Assert.False(Of(0.1249, LimitSense.AtMost).IsAboutAtLimit);
        Assert.True(Of(0.125, LimitSense.AtMost).IsAboutAtLimit);
        Assert.True(Of(0.25, LimitSense.AtMost).IsAboutAtLimit);
        Assert.False(Of(0.2501, LimitSense.AtMost).IsAboutAtLimit);
        Assert.True(Of(0.5, LimitSense.AtLeast).IsAboutAtLimit);
        Assert.False(Of(0.5001, LimitSense.AtLeast).IsAboutAtLimit);
        Assert.Equal("x: 22 %; limit at most 25 %; 3 % within, which is about at the line: the model is good to a factor of 2", Of(0.2123, LimitSense.AtMost).ToString());
        Assert.Equal("x: 21 %; limit at least 25 %; 4 % beyond", Of(0.2123, LimitSense.AtLeast).ToString());
        Numbers.Refuses("GoodToFactor", () => _ = Of(0.2, LimitSense.AtMost) with { GoodToFactor = 0.5 });
        Numbers.Refuses("Digits", () => _ = Of(0.2, LimitSense.AtMost) with { Digits = 1 });

        JobPlan house = InventedJobs.OccupiedHouse().Plan();
        LimitComparison flow = house.Air[0].FlammableAirflow!;
        Assert.True(flow.IsAboutAtLimit);
        Assert.Null(flow.Remedy);
        Assert.Contains(house.Air[0].Cautions, caution => caution.Code == "near-flammable-vapour");
        Assert.NotNull(WithFan(300, InventedJobs.OccupiedHouse()).Plan().Air[0].FlammableAirflow!.Remedy);
        RoomAirPlan strong = WithFan(9000, InventedJobs.OccupiedHouse()).Plan().Air[0];
        Assert.False(strong.FlammableAirflow!.IsAboutAtLimit);
        Assert.DoesNotContain(strong.Cautions, caution => caution.Code == "near-flammable-vapour");
        Assert.All(house.Air[0].Study!.Exposure, exposure => Assert.Null(exposure.Comparison.GoodToFactor));
    }

    // Only what keeps others out is looked at: a wipe that does not may go on beside them.
    private static string? GoesInTooSoon(Job job)
    {
        if (job.Plan() is not { Schedule: { IsPossible: true } schedule } plan)
        {
            return null;
        }

        foreach (RoomAirPlan air in plan.Air.Where(air => air.Study is { AirChangesPerHour: > 0 }))
        {
            ScheduledOperation[] here = [.. schedule.Operations.Where(one => one.Operation.Room == air.Room.Id && one.Operation.Beside is null && one.Operation.People > 0)];
            ScheduledOperation[] closed = [.. here.Where(one => RoomWatch.KeepsOthersOut(one.Operation, job.Premises, job.Shop.Limits))];
            foreach ((ScheduledOperation entered, DateTimeOffset at) in here.Except(closed).SelectMany(one => one.Pieces.Select(piece => (one, piece.Start))))
            {
                Emission[] emissions = [.. closed.Where(one => one.End <= at).SelectMany(one => Emissions(one, schedule, air.Zero))];
                if (emissions.Length == 0)
                {
                    continue;
                }

                AirStudy before = new(air.Study!.Room, air.Room.Exhaust, emissions, TimeSpan.FromHours(8), job.Shop.Limits);
                double fire = before.FlammableFractionAt(at - air.Zero)?.DecimalFractions ?? 0;
                double index = 0;
                foreach (SubstanceAir substance in before.Substances)
                {
                    double[] limits = [.. job.Shop.Limits.Exposure.Where(limit => limit.CasNumber == substance.Solvent.CasNumber && limit.Kind == ExposureLimitKind.Twa8h)
                        .Select(limit => limit.VolumeFractionOf(substance.Solvent.MolarMass)?.DecimalFractions).OfType<double>()];
                    index = limits.Length == 0 ? double.NaN
                        : index + (before.ConcentrationAt(substance.Solvent, at - air.Zero).KilogramsPerCubicMeter * 24.45e-3 / substance.Solvent.MolarMass.KilogramsPerMole / limits.Min());
                }

                if (fire > 0.1 * (1 + 1e-6) || index > 1 + 1e-6)
                {
                    return entered.Operation.Id + " at " + at.ToString("ddd HH:mm", null) + ": " + fire + " of the flammable limit, index " + index;
                }
            }
        }

        return null;
    }

    private static IEnumerable<Emission> Emissions(ScheduledOperation operation, CrewSchedule schedule, DateTimeOffset zero)
    {
        ScheduledRun? run = schedule.Runs.FirstOrDefault(one => one.Run.Id == operation.Operation.Id);
        return run is null
            ? operation.Operation.Vapours.SelectMany(vapour => RoomAir.Of(vapour, [.. operation.Pieces.Select(piece => (piece.Start - zero, piece.End - piece.Start))]))
            : run.Run.VolatileMass.Kilograms > 0 ? RoomAir.Of(run.Run, run.SprayingFrom - zero, schedule.Work.Shop) : [];
    }
}
