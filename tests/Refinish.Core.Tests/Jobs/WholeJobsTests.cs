using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>Three whole jobs from area to price against <c>whole_jobs.py</c>, which works them without this library.</summary>
public class WholeJobsTests
{
    private const double Tolerance = 1e-4;

    private static readonly string[] Money =
        ["labour", "stand-by", "waiting", "need", "kits", "warranty reserve", "cost", "price at margin", "net", "tax", "total",
            "refinishing a year", "replacing a year"];

    private static readonly Dictionary<string, JobPlan> Plans =
        new[] { InventedJobs.OccupiedHouse(), InventedJobs.ColdHouse(), InventedJobs.Rental() }.ToDictionary(job => job.Id, job =>
            job.Plan());

    [Theory]
    [InlineData("occupied", 100)]
    [InlineData("cold", 95)]
    [InlineData("rental", 170)]
    [Evidence(Basis.Independent, "whole_jobs.py, Python 3 standard library: areas by mesh, demand, cups, times, warming, hiding, air of "
        + "the box; starts are given there and held against every wait")]
    public void Work_times_and_air_come_out_as_in_another_language(string job, int least) =>
        Assert.True(Hold(job, row => !Money.Contains(Topic(row["key"])), Measured(Plans[job])) >= least);

    [Theory]
    [InlineData("occupied", 30)]
    [InlineData("cold", 30)]
    [InlineData("rental", 30)]
    [Evidence(Basis.Independent, "whole_jobs.py, Python 3 standard library: hours by standard and wage, kits, trips, overhead, reserve, "
        + "margin, tax and yearly cost, amounts in decimals")]
    public void Money_comes_out_as_in_another_language(string job, int least)
    {
        Assert.True(Plans[job].Price?.Total is not null, "no price: " + string.Join(" ", Plans[job].Objections));
        Assert.True(Hold(job, row => Money.Contains(Topic(row["key"])), Priced(Plans[job])) >= least);
    }

    [Fact]
    [Evidence(Basis.Independent, "whole_jobs.py leaves the shower pan out by hand: its floor gives 5 mm and the policy allows 2 mm")]
    public void The_pan_is_left_out_and_nothing_else()
    {
        PlanObjection objection = Assert.Single(Plans["rental"].Objections);
        Assert.Equal("FixtureLeftOut/pan", objection.Id);
        Assert.Empty(Plans["occupied"].Objections);
    }

    private static string Topic(string key) => key.Split('/')[0];

    private static int Hold(string job, Func<Table.Row, bool> which, Dictionary<string, double> actual)
    {
        List<string> off = [];
        int held = 0;
        foreach (Table.Row row in Table.Read("whole_jobs.csv").Rows.Where(row => row["job"] == job && which(row)))
        {
            double expected = row.Number("value");
            if (!actual.TryGetValue(row["key"], out double value))
            {
                off.Add(row["key"] + " is not in the plan");
            }
            else if (Math.Abs(value - expected) > Math.Max((row["unit"] == "USD" ? 0 : Tolerance) * Math.Abs(expected),
                row["unit"] switch { "min" => 0.01, "USD" => 0.006, _ => 1e-6 }))
            {
                off.Add(row["key"] + ": " + expected + " " + row["unit"] + " expected, " + value + " in the plan");
            }

            held++;
        }

        Assert.True(off.Count == 0, string.Join("\n", off));
        return held;
    }

    private static Dictionary<string, double> Measured(JobPlan plan)
    {
        Dictionary<string, double> all = [];
        DateTimeOffset start = plan.Job.Start;
        foreach (Procedure procedure in plan.Planned)
        {
            all["area/" + procedure.Fixture.Id] = procedure.CoatedArea.SquareMeters;
            if (procedure.Hiding is { IsJudged: true } hiding)
            {
                all["coats to hide/" + procedure.Fixture.Id] = hiding.CoatsNeeded!.Value;
                foreach (Refinish.Films.HidingCoat coat in hiding.Plan!.Coats)
                {
                    all["difference after " + coat.Coats + "/" + procedure.Fixture.Id] = coat.Difference!.Value;
                }
            }
        }

        foreach (IGrouping<string, Procedure> room in plan.Planned.GroupBy(procedure => procedure.Fixture.Room))
        {
            all["filler/" + room.Key] = room.Sum(procedure => procedure.Filler.Volume.Milliliters);
        }

        foreach (ScheduledOperation operation in plan.Schedule!.Operations)
        {
            for (int i = 0; i < operation.Pieces.Count; i++)
            {
                foreach (string person in operation.People.Count == 0 ? ["-"] : operation.People)
                {
                    all["given/" + operation.Operation.Id + "/" + (i + 1) + "/"
                        + person] = (operation.Pieces[i].Start - start).TotalMinutes;
                }
            }

            if (operation.Operation.Kind == WorkKind.Warm)
            {
                // The clock has it rounded up to the minute.
                all["warming/" + operation.Operation.Fixtures[0]] = Warming(plan, operation);
            }
        }

        foreach (ScheduledRun run in plan.Runs)
        {
            Of(run, all);
        }

        foreach (RoomAirPlan room in plan.Air)
        {
            all["peak of the flammable limit/" + room.Room.Id] = room.Study!.PeakFlammableFraction!.Value.Percent;
            all["airflow for a quarter/" + room.Room.Id] = room.Study.AirflowForFlammableLimit!.Value.CubicMetersPerHour;
            all["steady airflow for a quarter/" + room.Room.Id] = room.Study.SteadyAirflowForFlammableLimit!.Value.CubicMetersPerHour;
            string[] sprayed = [.. plan.Runs.Where(run => run.Operation.Operation.Room == room.Room.Id
                && run.Run.Layer.Product.IsocyanateFraction.Percent > 0).Select(run => run.Run.Id)];
            for (int i = 0; i < sprayed.Length; i++)
            {
                all["mist/" + sprayed[i]] = room.Screens[i].Concentration.MilligramsPerCubicMeter;
            }
        }

        foreach (CoatingLayer layer in plan.Runs.Select(run => run.Run.Layer).GroupBy(layer => layer.Product.Id).Select(same => same.First()))
        {
            all["voc/" + layer.Product.Id] = new MixedCoating(layer.Product, layer.Reducer).Voc!.Regulatory.GramsPerLiter;
        }

        all["trips"] = plan.Schedule.Trips;
        foreach (FixtureHandover handover in new Handover(plan.Schedule).Fixtures)
        {
            string key = "water/" + handover.Procedure.Fixture.Room;
            all[key] = Math.Max(all.TryGetValue(key, out double before) ? before : 0, (handover.WaterFrom!.Value - start).TotalMinutes);
        }

        return all;
    }

    private static void Of(ScheduledRun scheduled, Dictionary<string, double> all)
    {
        CoatRun run = scheduled.Run;
        all["film/" + run.Id] = run.Demand.Film.Milliliters;
        all["overspray/" + run.Id] = run.Demand.Overspray.Milliliters;
        all["hose/" + run.Id] = run.Demand.HoldUp.Milliliters;
        all["clings/" + run.Id] = run.Demand.ResidueLoss.Milliliters;
        all["to mix/" + run.Id] = run.Demand.Total.Milliliters;
        all["wet film/" + run.Id] = run.Demand.WetFilm.Thickness.Micrometers;
        all["spraying/" + run.Id] = run.SprayTime.TotalMinutes;
        all["clock/" + run.Id] = (scheduled.End - scheduled.Start).TotalMinutes;
        all["touch dry/" + run.Id] = run.OnSurface.TouchDry!.Value.TotalHours;
        all["recoat opens/" + run.Id] = run.OnSurface.RecoatOpens!.Value.TotalHours;
        all["recoat closes/" + run.Id] = run.AtWarmest.RecoatCloses!.Value.TotalHours;
        all["water/" + run.Id] = run.OnSurface.WaterService!.Value.TotalHours;
        all["cups/" + run.Id] = scheduled.Cups.Batches.Count;
        all["mixed/" + run.Id] = scheduled.Cups.Mixed.Milliliters;
        all["carried/" + run.Id] = scheduled.FromBefore.Milliliters;
        all["solvent/" + run.Id] = run.VolatileMass.Grams;
    }

    // The operation has the minutes of the clock, so the time itself is taken from the stage that made it.
    private static double Warming(JobPlan plan, ScheduledOperation operation)
    {
        FixtureJob fixture = plan.Job.Fixtures.Single(one => one.Id == operation.Operation.Fixtures[0]);
        Refinish.Fixtures.MaterialBody body = fixture.Survey.Material.Body!;
        Length wall = body.UsualThickness;
        Area area = plan.Planned.Single(procedure => procedure.Fixture.Id == fixture.Id).CoatedArea;
        Refinish.Climate.WarmUp warming = new()
        {
            Mass = Volume.FromCubicMeters(wall.Meters * area.SquareMeters) * body.Density,
            Material = body.Heat, WallThickness = wall, HeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(9), Area = area,
            Start = fixture.Surface!.Value, Room = plan.Job.Premises.Rooms[0].Climate.Air.DryBulb,
                Target = Temperature.FromDegreesCelsius(16),
        };
        TimeSpan clock = operation.End - operation.Start;
        Assert.InRange(clock - warming.Time!.Value, TimeSpan.Zero, TimeSpan.FromMinutes(1));
        return warming.Time.Value.TotalMinutes;
    }

    private static Dictionary<string, double> Priced(JobPlan plan)
    {
        Dictionary<string, double> all = [];
        PriceEstimate price = plan.Price!;
        foreach (IGrouping<string, LabourLine> line in plan.Costs!.Request.Labour.Lines.GroupBy(line => line.Code))
        {
            all["labour/" + line.Key] = line.Sum(one => one.HourRange.Mean);
        }

        foreach (string kind in new[] { "stand-by", "waiting" })
        {
            all[kind] = plan.Costs.Request.PaidTime.Where(paid => paid.Id.StartsWith(kind, StringComparison.Ordinal)).Sum(paid =>
                paid.Time.TotalHours);
        }

        all["labour"] = (double)price.Lines.Where(line => line.Category == LineCategory.Labour).Sum(line => line.Cost);
        foreach (IGrouping<string, MaterialNeed> need in plan.Costs.Request.Materials.GroupBy(need => need.Item))
        {
            all["need/" + need.Key] = need.Sum(one => one.Amount.In(LineUnit.Millilitre));
        }

        foreach (KitPurchase purchase in price.Purchases)
        {
            all["kits/" + purchase.Item] = (double)purchase.Cost;
        }

        all["warranty reserve"] = (double)plan.Costs.ReserveForAll;
        all["cost"] = (double)price.Cost!.Value;
        all["price at margin"] = (double)price.PriceAtMargin!.Value;
        all["net"] = (double)price.Net!.Value;
        all["tax"] = (double)price.Tax!.Value;
        all["total"] = (double)price.Total!.Value;
        if (plan.Comparison is not null)
        {
            all["refinishing a year"] = (double)plan.Comparison.RefinishPerYear;
            all["replacing a year"] = (double)plan.Comparison.ReplacePerYear;
        }

        return all;
    }
}
