using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;

namespace Refinish.Json.Shapes;

/// <summary>The customer's quote of a plan, in the currency of the price book. What it only repeats stands there by identifier.</summary>
internal static class QuoteResults
{
    private static readonly FieldsShape<QuoteItem> Item = Sold(new Fields<QuoteItem>("quoteItem"))
        .Show("fixture", Scalars.Text.OrNull(), item => item.Fixture)
        .Show("room", Scalars.Text.OrNull(), item => item.Room)
        .Show("code", Scalars.Text, item => item.Code)
        .Show("hostCode", Scalars.Text.OrNull(), item => item.HostCode)
        .AsResults();

    private static readonly FieldsShape<QuotedFixture> Fixture = new Fields<QuotedFixture>("quotedFixture")
        .Show("id", Scalars.Text, fixture => fixture.Id)
        .Show("name", Scalars.Text, fixture => fixture.Name)
        .Show("work", Item, fixture => fixture.Work)
        .Show("extras", CommonShapes.List(Item), fixture => fixture.Extras)
        .Show("price", Scalars.Money, fixture => fixture.Price)
        .Show("tax", Scalars.Money, fixture => fixture.Tax)
        .Show("withTax", Scalars.Money, fixture => fixture.WithTax)
        .AsResults();

    private static readonly FieldsShape<QuotePayment> Payment = new Fields<QuotePayment>("quotePayment")
        .Show("id", Scalars.Text, payment => payment.Id)
        .Show("amount", Scalars.Money, payment => payment.Amount)
        .AsResults();

    public static FieldsShape<CustomerQuote> Quote { get; } = new Fields<CustomerQuote>("customerQuote")
        .Show("currency", CurrencyShape.Only, quote => quote.Currency)
        .Show("isEstimate", Scalars.YesNo, quote => quote.IsEstimate)
        .Show("validUntil", Times.Day.OrNull(), quote => quote.Terms.ValidUntil)
        .Show("fixtures", CommonShapes.List(Fixture), quote => quote.Fixtures)
        .Show("forTheJob", CommonShapes.List(Item), quote => quote.ForTheJob)
        .Show("subtotal", Scalars.Money, quote => quote.Subtotal)
        .Show("discount", Scalars.Money, quote => quote.Discount)
        .Show("discountWithheld", Scalars.Money, quote => quote.DiscountWithheld)
        .Show("net", Scalars.Money, quote => quote.Net)
        .Show("taxes", CommonShapes.List(PriceResults.Tax), quote => quote.Taxes)
        .Show("tax", Scalars.Money, quote => quote.Tax)
        .Show("total", Scalars.Money, quote => quote.Total)
        .Show("cashRounding", Scalars.Money, quote => quote.CashRounding)
        .Show("payable", Scalars.Money, quote => quote.Payable)
        .Show("payments", CommonShapes.List(Payment), quote => quote.Payments)
        .Show("deposit", Results.Comparison.OrNull(), quote => quote.Deposit)
        .Show("leftOut", Results.Sentences, quote => [.. quote.LeftOut.Select(objection => objection.Id)])
        .Show("conditions", Results.Sentences, quote => [.. quote.Conditions.Select(condition => condition.Id)])
        .Show("cautions", Results.CautionCodes, quote => [.. quote.Cautions.Select(planned => planned.Caution)])
        .AsResults();

    /// <summary>What the customer may read of an item.</summary>
    public static Fields<QuoteItem> Sold(Fields<QuoteItem> fields) => fields
        .Show("id", Scalars.Text, item => item.Id)
        .Show("kind", new WordShape<QuoteItemKind>(), item => item.Kind)
        .Show("description", Scalars.Text, item => item.Description)
        .Show("quantity", Scalars.Money, item => item.Quantity)
        .Show("unit", new WordShape<LineUnit>(), item => item.Unit)
        .Show("price", Scalars.Money, item => item.Price)
        .Show("discount", Scalars.Money, item => item.Discount)
        .Show("tax", Scalars.Money, item => item.Tax)
        .Show("withTax", Scalars.Money, item => item.WithTax);
}
