using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>Takes the figures out of a plan.</summary>
internal static class FiguresOfPlan
{
    public static PlanFigures Of(JobPlan plan)
    {
        PriceEstimate? price = plan.Price;
        return new PlanFigures
        {
            Job = plan.Job.Id,
            Currency = price?.Total is null ? null : price.Book.Currency,
            Total = price?.Total,
            Cost = price?.Cost,
            Net = price?.Net,
            Tax = price?.Tax,
            MinimumChargeApplied = price?.MinimumChargeApplied ?? false,
            Lines = price?.Total is null ? ValueList<LineFigures>.Empty : new ValueList<LineFigures>(Lines(price)),
            Trips = plan.Schedule is { IsPossible: true } found ? found.Trips : null,
            Paid = plan.Schedule is { IsPossible: true } paid ? paid.Paid.Paid : null,
            Visits = new ValueList<VisitFigures>((plan.Schedule?.Visits ?? []).Select(visit =>
                new VisitFigures { Worker = visit.Worker, Arrives = visit.Arrives, Leaves = visit.Leaves, Paid = visit.Paid })),
            Fixtures = new ValueList<FixtureFigures>(plan.Planned.Select(procedure => Fixture(procedure, plan.Handover))),
            Objections = new ValueList<PlanRemark>(plan.Objections.Select(objection => new PlanRemark(objection.Id, objection.About, objection.Sentence))),
            Gaps = new ValueList<PlanRemark>((price?.Gaps ?? []).Select(gap => new PlanRemark(gap.Id, gap.Code, gap.What + ": " + gap.Missing))),
            Conditions = new ValueList<PlanRemark>(plan.Conditions.Select(condition => new PlanRemark(
                condition.Id, condition.About, units => condition.Sentence(units) + ". " + Sentences.Begun(Sentences.Closed(condition.Remedy))))),
            Cautions = new ValueList<PlanRemark>(plan.Cautions.Select(planned => new PlanRemark(planned.Caution.Code, string.Empty, planned.Caution.Sentence))),
        };
    }

    private static FixtureFigures Fixture(Procedure procedure, Handover? handover)
    {
        FixtureFigures figures = new() { Id = procedure.Fixture.Id, Name = procedure.Fixture.Name };
        FixtureHandover? dates = handover?.Fixtures.FirstOrDefault(fixture => fixture.Procedure.Fixture.Id == figures.Id);
        return dates is null
            ? figures
            : figures with { WaterFrom = dates.WaterFrom, FullCure = dates.FullCure, HandedOver = dates.HandedOver, WarrantyUntil = dates.WarrantyUntil };
    }

    // A cost line and a price line of one identity are one line; what is on one side only has nothing on the other.
    private static IEnumerable<LineFigures> Lines(PriceEstimate price)
    {
        Dictionary<string, decimal> prices = new(StringComparer.Ordinal);
        foreach (EstimateLine line in price.Lines)
        {
            prices.Add(line.Id, line.Amount);
        }

        Dictionary<string, string> names = new(StringComparer.Ordinal);
        foreach (KitPurchase purchase in price.Purchases)
        {
            names[purchase.Item] = purchase.Name;
        }

        HashSet<string> costs = new(StringComparer.Ordinal);
        foreach (EstimateLine line in price.CostLines)
        {
            costs.Add(line.Id);
            yield return Figures(price, names, line, line.Amount, prices.TryGetValue(line.Id, out decimal sold) ? sold : 0);
        }

        foreach (EstimateLine line in price.Lines.Where(line => !costs.Contains(line.Id)))
        {
            yield return Figures(price, names, line, 0, line.Amount);
        }
    }

    private static LineFigures Figures(PriceEstimate estimate, Dictionary<string, string> names, EstimateLine line, decimal cost, decimal price) => new()
    {
        Id = line.Id,
        Category = line.Category,
        Fixture = line.Fixture,
        Description = line.Category == LineCategory.Material && names.TryGetValue(LineKey.Part(line.Id, 1), out string? name) ? name : line.Description,
        Quantity = line.Quantity,
        Unit = line.Unit,
        Rate = line.Rate,
        Cost = cost,
        Price = price,
        IsPriceFixed = line.Category == LineCategory.Option && estimate.Book.Find(line.Code)?.Price is not null,
    };
}
