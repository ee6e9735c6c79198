using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;

namespace Refinish.Json.Shapes;

/// <summary>The customer's quote as a document of its own: what the customer may read, and nothing of what the shop reckons with.</summary>
internal static class SheetShapes
{
    private static readonly FieldsShape<QuoteItem> Item = QuoteResults.Sold(new Fields<QuoteItem>("quotedItem")).AsResults();

    private static readonly FieldsShape<QuotedFixture> Fixture = new Fields<QuotedFixture>("quotedFixture")
        .Show("id", Scalars.Text, fixture => fixture.Id)
        .Show("name", Scalars.Text, fixture => fixture.Name)
        .Show("items", CommonShapes.List(Item), fixture => [fixture.Work, .. fixture.Extras])
        .Show("price", Scalars.Money, fixture => fixture.Price)
        .Show("tax", Scalars.Money, fixture => fixture.Tax)
        .Show("withTax", Scalars.Money, fixture => fixture.WithTax)
        .AsResults();

    private static readonly FieldsShape<TaxAmount> Tax = new Fields<TaxAmount>("quotedTax")
        .Show("code", Scalars.Text, tax => tax.Rate.Code)
        .Show("name", Scalars.Text, tax => tax.Rate.Name)
        .Show("rate", Results.Percent, tax => tax.Rate.Rate.DecimalFractions)
        .Show("amount", Scalars.Money, tax => tax.Amount)
        .Show("exempt", Scalars.Text.OrNull(), tax => tax.Exemption?.Reason)
        .AsResults();

    private static readonly FieldsShape<QuotePayment> Payment = new Fields<QuotePayment>("quotedPayment")
        .Show("id", Scalars.Text, payment => payment.Id)
        .Show("name", Scalars.Text, payment => payment.Stage.Name)
        .Show("due", new WordShape<PaymentDue>(), payment => payment.Stage.Due)
        .Show("days", Scalars.Count, payment => payment.Stage.Days)
        .Show("when", Scalars.Text, payment => payment.Stage.When)
        .Show("amount", Scalars.Money, payment => payment.Amount)
        .AsResults();

    private static readonly FieldsShape<PlanObjection> LeftOut = new Fields<PlanObjection>("leftOut")
        .Show("fixture", Scalars.Text, objection => objection.About)
        .Show("reason", Results.Sentence, objection => objection.Sentence)
        .AsResults();

    private static readonly FieldsShape<PlanCondition> Condition = new Fields<PlanCondition>("quotedCondition")
        .Show("id", Scalars.Text, condition => condition.Id)
        .Show("about", Scalars.Text, condition => condition.About)
        .Show("concerns", CommonShapes.Audiences, condition => CommonShapes.Concerned(condition.Concerns))
        .Show("sentence", Results.Sentence, condition => condition.Sentence)
        .Show("remedy", Scalars.Text, condition => condition.Remedy)
        .AsResults();

    private static readonly FieldsShape<Caution> Caution = new Fields<Caution>("quotedCaution")
        .Show("code", Scalars.Text, caution => caution.Code)
        .Show("concerns", CommonShapes.Audiences, CommonShapes.Concerned)
        .Show("sentence", Scalars.Text, caution => caution.Sentence)
        .Show("decidedBy", Scalars.Text, caution => caution.DecidedBy)
        .AsResults();

    private static readonly FieldsShape<FixtureHandover> OutOfUse = new Fields<FixtureHandover>("outOfUse")
        .Show("fixture", Scalars.Text, fixture => fixture.Procedure.Fixture.Id)
        .Show("from", Times.Instant, fixture => fixture.Begun)
        .Show("waterFrom", Times.Instant.OrNull(), fixture => fixture.WaterFrom)
        .AsResults();

    private static readonly FieldsShape<CustomerQuote> Warranty = new Fields<CustomerQuote>("quotedWarranty")
        .Show("years", Scalars.Count, quote => quote.Warranty!.Years)
        .Show("until", Times.Day, quote => quote.Handover!.WarrantyUntil.Date)
        .Show("covers", Results.Sentences, quote => quote.Handover!.Covers)
        .Show("exclusions", Results.Sentences, quote => quote.Handover!.Exclusions)
        .AsResults();

    public static DocumentShape<CustomerQuote> Quote { get; } = new("quote", 1, new Fields<CustomerQuote>("quote")
        .Show("name", Scalars.Text, quote => quote.Name)
        .Show("shop", Scalars.Text.OrNull(), quote => quote.Shop)
        .Show("premises", Scalars.Text.OrNull(), quote => quote.Premises)
        .Show("number", Scalars.Text.OrNull(), quote => quote.Terms.Number)
        .Show("revision", Scalars.Text.OrNull(), quote => quote.Terms.Revision)
        .Show("issued", Times.Instant.OrNull(), quote => quote.Terms.Issued)
        .Show("isEstimate", Scalars.YesNo, quote => quote.IsEstimate)
        .Show("validUntil", Times.Day.OrNull(), quote => quote.Terms.ValidUntil)
        .Show("currency", CurrencyShape.Only, quote => quote.Currency)
        .Show("pricesShown", new WordShape<PricesShown>(), quote => quote.Terms.PricesShown)
        .Show("fixtures", CommonShapes.List(Fixture), quote => quote.Fixtures)
        .Show("forTheJob", CommonShapes.List(Item), quote => quote.ForTheJob)
        .Show("subtotal", Scalars.Money, quote => quote.Subtotal)
        .Show("discount", Scalars.Money, quote => quote.Discount)
        .Show("discountReason", Scalars.Text.OrNull(), quote => quote.Discount == 0 ? null : quote.Terms.Discount?.Reason)
        .Show("discountWithheld", Scalars.Money, quote => quote.DiscountWithheld)
        .Show("net", Scalars.Money, quote => quote.Net)
        .Show("taxes", CommonShapes.List(Tax), quote => quote.Taxes)
        .Show("tax", Scalars.Money, quote => quote.Tax)
        .Show("total", Scalars.Money, quote => quote.Total)
        .Show("cashRounding", Scalars.Money, quote => quote.CashRounding)
        .Show("payable", Scalars.Money, quote => quote.Payable)
        .Show("payments", CommonShapes.List(Payment), quote => quote.Payments)
        .Show("visitDays", CommonShapes.List(Times.Day), quote => quote.VisitDays)
        .Show("outOfUse", CommonShapes.List(OutOfUse), quote => quote.Handover?.Fixtures ?? [])
        .Show("cautions", CommonShapes.List<Caution>(Caution), quote => [.. quote.Cautions.Select(planned => planned.Caution)])
        .Show("conditions", CommonShapes.List(Condition), quote => quote.Conditions)
        .Show("leftOut", CommonShapes.List(LeftOut), quote => quote.LeftOut)
        .Show("warranty", Warranty.OrNull(), quote => quote is { Warranty: not null, Handover: not null } ? quote : null)
        .AsResults());
}
