using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>The customer's quote of a plan, in the currency of the price book. What it only repeats stands there by identifier.</summary>
internal static class QuoteResults
{
    private static readonly FieldsShape<QuoteItem> Item = Sold(new Fields<QuoteItem>("quoteItem"))
        .Show("fixture", Text.OrNull(), it => it.Fixture)
        .Show("room", Text.OrNull(), it => it.Room)
        .Show("code", Text, it => it.Code)
        .Show("hostCode", Text.OrNull(), it => it.HostCode)
        .AsResults();

    private static readonly FieldsShape<QuotedFixture> Fixture = new Fields<QuotedFixture>("quotedFixture")
        .Show("id", Text, it => it.Id)
        .Show("name", Text, it => it.Name)
        .Show("work", Item, it => it.Work)
        .Show("extras", List(Item), it => it.Extras)
        .Show("price", Scalars.Money, it => it.Price)
        .Show("tax", Scalars.Money, it => it.Tax)
        .Show("withTax", Scalars.Money, it => it.WithTax)
        .AsResults();

    private static readonly FieldsShape<QuotePayment> Payment = new Fields<QuotePayment>("quotePayment")
        .Show("id", Text, it => it.Id)
        .Show("amount", Scalars.Money, it => it.Amount)
        .AsResults();

    public static FieldsShape<CustomerQuote> Quote { get; } = new Fields<CustomerQuote>("customerQuote")
        .Show("currency", CurrencyShape.Only, it => it.Currency)
        .Show("isEstimate", YesNo, it => it.IsEstimate)
        .Show("validUntil", Times.Day.OrNull(), it => it.Terms.ValidUntil)
        .Show("fixtures", List(Fixture), it => it.Fixtures)
        .Show("forTheJob", List(Item), it => it.ForTheJob)
        .Show("subtotal", Scalars.Money, it => it.Subtotal)
        .Show("discount", Scalars.Money, it => it.Discount)
        .Show("discountWithheld", Scalars.Money, it => it.DiscountWithheld)
        .Show("net", Scalars.Money, it => it.Net)
        .Show("taxes", List(PriceResults.Tax), it => it.Taxes)
        .Show("tax", Scalars.Money, it => it.Tax)
        .Show("total", Scalars.Money, it => it.Total)
        .Show("cashRounding", Scalars.Money, it => it.CashRounding)
        .Show("payable", Scalars.Money, it => it.Payable)
        .Show("payments", List(Payment), it => it.Payments)
        .Show("deposit", Results.Comparison.OrNull(), it => it.Deposit)
        .Show("leftOut", Results.Sentences, it => [.. it.LeftOut.Select(objection => objection.Id)])
        .Show("conditions", Results.Sentences, it => [.. it.Conditions.Select(condition => condition.Id)])
        .Show("cautions", Results.CautionCodes, it => [.. it.Cautions.Select(planned => planned.Caution)])
        .AsResults();

    /// <summary>What the customer may read of an item.</summary>
    public static Fields<QuoteItem> Sold(Fields<QuoteItem> fields) => fields
        .Show("id", Text, it => it.Id)
        .Show("kind", new WordShape<QuoteItemKind>(), it => it.Kind)
        .Show("description", Text, it => it.Description)
        .Show("quantity", Scalars.Money, it => it.Quantity)
        .Show("unit", new WordShape<LineUnit>(), it => it.Unit)
        .Show("price", Scalars.Money, it => it.Price)
        .Show("discount", Scalars.Money, it => it.Discount)
        .Show("tax", Scalars.Money, it => it.Tax)
        .Show("withTax", Scalars.Money, it => it.WithTax);
}
