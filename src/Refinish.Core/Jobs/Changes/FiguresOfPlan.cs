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
            Name = plan.Job.Name,
            Quote = plan.Quote is CustomerQuote quote ? Quote(quote) : null,
            Currency = price?.Total is null ? null : price.Book.Currency.Code,
            Total = price?.Total,
            Payable = price?.Payable,
            Cost = price?.Cost,
            Net = price?.Net,
            Tax = price?.Tax,
            MinimumChargeApplied = price?.MinimumChargeApplied ?? false,
            Lines = price?.Total is null ? ValueList<LineFigures>.Empty : new ValueList<LineFigures>(Lines(price)),
            Trips = plan.Found?.Trips,
            Paid = plan.Found?.Paid.Paid,
            Visits = new ValueList<VisitFigures>((plan.Schedule?.Visits ?? []).Select(visit =>
                new VisitFigures { Worker = visit.Worker, Arrives = visit.Arrives, Leaves = visit.Leaves, Paid = visit.Paid })),
            Fixtures = new ValueList<FixtureFigures>(plan.Planned.Select(procedure => Fixture(procedure, plan.Handover))),
            Objections = new ValueList<PlanRemark>(plan.Objections.Select(objection =>
                new PlanRemark(objection.Id, objection.About, objection.Sentence))),
            Gaps = new ValueList<PlanRemark>((price?.Gaps ?? []).Select(gap =>
                new PlanRemark(gap.Id, gap.Code, gap.What + ": " + gap.Missing))),
            Conditions = new ValueList<PlanRemark>(plan.Conditions.Select(condition => new PlanRemark(
                condition.Id, condition.About, units => condition.Sentence(units) + "; " + condition.Remedy))),
            Cautions = new ValueList<PlanRemark>(plan.Cautions.Select(planned =>
                new PlanRemark(planned.Caution.Code, string.Empty, planned.Caution.Sentence))),
        };
    }

    private static QuoteFigures Quote(CustomerQuote quote) => new()
    {
        Number = quote.Terms.Number,
        Revision = quote.Terms.Revision,
        ValidUntil = quote.Terms.ValidUntil,
        PricesShown = quote.Terms.PricesShown,
        Items = new ValueList<ItemFigures>(quote.Items.Select(item => new ItemFigures
        {
            Id = item.Id,
            Kind = item.Kind,
            Fixture = item.Fixture,
            Description = item.Description,
            Quantity = item.Quantity,
            Unit = item.Unit.Symbol(),
            Price = item.Price,
            WithTax = item.WithTax,
        })),
        Payments = new ValueList<PaymentFigures>(quote.Payments.Select(payment => new PaymentFigures
        {
            Id = payment.Id, Name = payment.Stage.Name, When = payment.Stage.When, Amount = payment.Amount,
        })),
        Cautions = new ValueList<string>(quote.Cautions.Select(planned => planned.Caution.Code)),
    };

    private static FixtureFigures Fixture(Procedure procedure, Handover? handover)
    {
        FixtureHandover? dates = handover?.Fixtures.FirstOrDefault(fixture => fixture.Procedure.Fixture.Id == procedure.Fixture.Id);
        return new FixtureFigures
        {
            Id = procedure.Fixture.Id, Name = procedure.Fixture.Name, WaterFrom = dates?.WaterFrom, FullCure = dates?.FullCure,
            HandedOver = dates?.HandedOver, WarrantyUntil = dates?.WarrantyUntil,
        };
    }

    private static IEnumerable<LineFigures> Lines(PriceEstimate price) =>
        price.Lines.Select(line => new LineFigures
        {
            Id = line.Id,
            Item = line.Item,
            Category = line.Category,
            Fixture = line.Fixture,
            Room = line.Room,
            // A kit is told by the name of what is in it.
            Description = (line.Category == LineCategory.Material
                ? price.Purchases.LastOrDefault(purchase => purchase.Item == line.Code)?.Name : null) ?? line.Description,
            Quantity = line.Quantity,
            Unit = line.Unit.Symbol(),
            Rate = line.Rate,
            Cost = line.Cost,
            Price = line.Price,
            IsPriceFixed = line.HasFixedPrice,
        });
}
