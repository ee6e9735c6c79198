using System;
using System.Linq;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>A host's own books in a whole job: consumables of other kinds than volume, coatings bought by mass, overtime. All figures invented.</summary>
public class OwnBooksTests
{
    private static readonly Job House = InventedJobs.OccupiedHouse();

    [Fact]
    [Evidence(Basis.Independent, "by hand: 18 m² of film at 0.35 are 6.30; 24 m of tape are two rolls of 20 m at 2.90, 5.80; 5 discs at 0.80 are 4.00; 16.10 more cost in all, and no gap")]
    public void Film_tape_and_discs_belong_to_an_own_operation()
    {
        Refinish.Jobs.Operation cover = new()
        {
            Id = "bath/cover", Kind = WorkKind.Other, Room = "bath", Fixtures = ["tub"], Instruction = "cover walls and floor", Time = TimeSpan.FromMinutes(20),
            Materials =
            [
                new MaterialNeed("masking-film", "masking film", Area.FromSquareMeters(18)),
                new MaterialNeed("tape", "masking tape", Length.FromMeters(24)),
                new MaterialNeed("disc", "sanding disc", MaterialAmount.FromPieces(5)),
            ],
        };
        MaterialPrice[] own =
        [
            MaterialPrice.Loose("masking-film", LineUnit.SquareMetre, 0.35m),
            new("tape", Length.FromMeters(20), 2.90m),
            MaterialPrice.Loose("disc", LineUnit.Each, 0.80m),
        ];
        Job job = House with { Changes = [OperationChange.Add(cover, "bath/degrease")] };
        JobPlan without = job.Plan();
        Assert.Equal(["Price/material/masking-film", "Price/material/tape", "Price/material/disc"], without.Objections.Select(objection => objection.Id));
        JobPlan plan = (job with { Shop = job.Shop with { Prices = job.Shop.Prices with { Materials = [.. job.Shop.Prices.Materials, .. own] } } }).Plan();
        Assert.Empty(plan.Objections);
        Assert.Equal(
            [("material/masking-film/square-metre", 18m, 6.30m), ("material/tape/20-m", 2m, 5.80m), ("material/disc/each", 5m, 4.00m)],
            plan.Price!.Lines.Where(line => own.Any(price => line.Id.StartsWith("material/" + price.Item + "/", StringComparison.Ordinal)))
                .Select(line => (line.Id, line.Quantity, line.Cost)));
    }

    [Fact]
    [Evidence(Basis.Identity, "coatings, reducers, chemicals and filler know their density: a price by the kilogram stands for the price by the litre over it")]
    public void What_has_a_density_is_bought_by_mass()
    {
        JobPlan plan = House.Plan();
        foreach (KitPurchase purchase in plan.Price!.Purchases)
        {
            MaterialNeed need = plan.Costs!.Request.Materials.Single(one => one.Item == purchase.Item);
            if (need.Density is not Density density)
            {
                // Promoter and spot primer are known by volume alone.
                Assert.Contains(need.Item, new[] { "silane-promoter", "spot-primer" });
                continue;
            }

            KitPurchase byMass = new(need, [MaterialPrice.Loose(need.Item, LineUnit.Kilogram, 20m)]);
            decimal kilograms = (decimal)(purchase.Need.In(LineUnit.Litre) * density.KilogramsPerLiter);
            Assert.InRange(byMass.Cost - (20m * kilograms), -1e-6m, 20m * 0.0001m);
        }

        MaterialNeed primer = plan.Costs!.Request.Materials.Single(need => need.Item == "epoxy-primer");
        Numbers.Close(GenericCatalogue.EpoxyPrimer.MixedDensity.KilogramsPerLiter, primer.Density!.Value.KilogramsPerLiter, 1e-12);
        Assert.Contains(plan.Costs.Request.Materials, need => need.Item == "silicone-remover" && need.Density is not null);
        Assert.Contains(plan.Costs.Request.Materials, need => need.Item == "epoxy-filler" && need.Density is not null);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand from the visits of the plan: each day's paid hours and 1.125 h of travel, hours beyond four at half a wage on top, 26.00 burdened by 30 %; nothing else of the cost moves")]
    public void Overtime_is_a_line_for_each_person()
    {
        OvertimeRule rule = new() { Daily = [new(TimeSpan.FromHours(4), 1.5m)], Source = Source.Invented("for a test") };
        JobPlan plain = House.Plan();
        JobPlan plan = (House with { Shop = House.Shop with { Overtime = rule } }).Plan();
        EstimateLine[] lines = [.. plan.Price!.Lines.Where(line => line.Item == "overtime")];
        Assert.NotEmpty(lines);
        Assert.All(lines, line => Assert.Equal((LineCategory.Labour, 33.8m), (line.Category, line.Rate)));
        foreach (IGrouping<string, PersonVisit> person in plan.Schedule!.Visits.GroupBy(visit => visit.Worker))
        {
            double beyond = person.GroupBy(visit => visit.Arrives.Date).Sum(day => Math.Max(0, day.Sum(visit => visit.Paid.TotalHours + 1.125) - 4));
            decimal charged = lines.Where(line => line.Worker == person.Key).Sum(line => line.Quantity);
            Assert.InRange(charged - (decimal)(beyond / 2), -0.005m, 0.005m);
        }

        Assert.Equal(lines.Sum(line => line.Cost), plan.Price.Cost - plain.Price!.Cost);
        Assert.Equal(plan.Costs!.Overtime.Premiums.Count, lines.Length);
        foreach (OvertimeHours person in plan.Costs.Overtime.People)
        {
            Numbers.CanBeWritten(person.Workings());
        }
    }

    [Fact]
    [Evidence(Basis.Identity, "each is paid at their own wage: an hour of overtime of ada costs 32/24 of one of ben")]
    public void Overtime_goes_by_the_wage_of_each()
    {
        OvertimeRule rule = new() { Daily = [new(TimeSpan.FromHours(1), 2m)], Source = Source.Invented("for a test") };
        Job cold = InventedJobs.ColdHouse();
        JobPlan plan = (cold with { Shop = cold.Shop with { Overtime = rule } }).Plan();
        Assert.Equal([("ada", (decimal?)32m), ("ben", 24m)], plan.Costs!.Overtime.Premiums.Select(premium => (premium.Worker, premium.Wage)));
        Assert.Contains("ada", plan.Costs.Overtime.ToString(), StringComparison.Ordinal);
    }
}
