using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>What a plan says of money, in the currency of the price book.</summary>
internal static class PriceResults
{
    private static readonly FieldsShape<EstimateLine> Line = new Fields<EstimateLine>("estimateLine")
        .Show("id", Text, it => it.Id)
        .Show("category", new WordShape<LineCategory>(), it => it.Category)
        .Show("item", Text, it => it.Item)
        .Show("fixture", Text.OrNull(), it => it.Fixture)
        .Show("room", Text.OrNull(), it => it.Room)
        .Show("worker", Text.OrNull(), it => it.Worker)
        .Show("hostCode", Text.OrNull(), it => it.HostCode)
        .Show("code", Text, it => it.Code)
        .Show("description", Text, it => it.Description)
        .Show("quantity", Scalars.Money, it => it.Quantity)
        .Show("unit", new WordShape<LineUnit>(), it => it.Unit)
        .Show("rate", Scalars.Money, it => it.Rate)
        .Show("cost", Scalars.Money, it => it.Cost)
        .Show("price", Scalars.Money, it => it.Price)
        .Show("hasFixedPrice", YesNo, it => it.HasFixedPrice)
        .Show("taxes", List(Text), it => it.Taxes)
        .Show("seenBy", new WordShape<LineReader>(), it => it.SeenBy)
        .AsResults();

    public static readonly FieldsShape<TaxAmount> Tax = new Fields<TaxAmount>("taxAmount")
        .Show("code", Text, it => it.Rate.Code)
        .Show("name", Text, it => it.Rate.Name)
        .Show("rate", Results.Percent, it => it.Rate.Rate.DecimalFractions)
        .Show("taxed", Scalars.Money, it => it.Taxed)
        .Show("amount", Scalars.Money, it => it.Amount)
        .Show("exempt", Text.OrNull(), it => it.Exemption?.Reason)
        .AsResults();

    private static readonly FieldsShape<PriceGap> Gap = new Fields<PriceGap>("priceGap")
        .Show("id", Text, it => it.Id)
        .Show("code", Text, it => it.Code)
        .Show("what", Text, it => it.What)
        .Show("missing", Text, it => it.Missing)
        .AsResults();

    private static readonly FieldsShape<PurchaseLine> Bought = new Fields<PurchaseLine>("purchaseLine")
        .Show("key", Text, it => it.Key)
        .Show("description", Text, it => it.Description)
        .Show("quantity", Scalars.Money, it => it.Quantity)
        .Show("unit", new WordShape<LineUnit>(), it => it.Unit)
        .Show("rate", Scalars.Money, it => it.Rate)
        .Show("cost", Scalars.Money, it => it.Cost)
        .AsResults();

    private static readonly FieldsShape<KitPurchase> Purchase = new Fields<KitPurchase>("kitPurchase")
        .Show("id", Text, it => it.Item)
        .Show("name", Text, it => it.Name)
        .Show("need", Results.Amount, it => MaterialAmountShape.Result(it.Need))
        .Show("lines", List(Bought), it => it.Lines)
        .Show("cost", Scalars.Money, it => it.Cost)
        .Show("leastPossible", Scalars.Money, it => it.LeastPossible)
        .Show("isProvenCheapest", YesNo, it => it.IsProvenCheapest)
        .Show("bought", Results.Amount, it => MaterialAmountShape.Result(it.Bought))
        .Show("leftOver", Results.Amount, it => MaterialAmountShape.Result(it.LeftOver))
        .AsResults();

    public static FieldsShape<PriceEstimate> Price { get; } = new Fields<PriceEstimate>("priceEstimate")
        .Show("currency", CurrencyShape.Only, it => it.Book.Currency)
        .Show("isComplete", YesNo, it => it.IsComplete)
        .Show("gaps", List(Gap), it => it.Gaps)
        .Show("lines", List(Line), it => it.Lines)
        .Show("purchases", List(Purchase), it => it.Purchases)
        .Show("cost", Scalars.Money.OrNull(), it => it.Cost)
        .Show("priceAtMargin", Scalars.Money.OrNull(), it => it.PriceAtMargin)
        .Show("minimumChargeApplied", YesNo, it => it.MinimumChargeApplied)
        .Show("subtotal", Scalars.Money.OrNull(), it => it.Subtotal)
        .Show("discountGiven", Scalars.Money.OrNull(), it => it.DiscountGiven)
        .Show("discountWithheld", Scalars.Money.OrNull(), it => it.DiscountWithheld)
        .Show("net", Scalars.Money.OrNull(), it => it.Net)
        .Show("taxes", List(Tax), it => it.Taxes)
        .Show("tax", Scalars.Money.OrNull(), it => it.Tax)
        .Show("total", Scalars.Money.OrNull(), it => it.Total)
        .Show("payable", Scalars.Money.OrNull(), it => it.Payable)
        .Show("profit", Scalars.Money.OrNull(), it => it.Profit)
        .Show("realisedMargin", Results.Percent.OrNull(), it => it.RealisedMargin?.DecimalFractions)
        .Show("realisedMarkup", Results.Percent.OrNull(), it => it.RealisedMarkup?.DecimalFractions)
        .Show("netAgainstCost", Results.Comparison, it => it.NetAgainstCost)
        .Show("cautions", Results.CautionCodes, it => it.Cautions)
        .AsResults();

    public static FieldsShape<RefinishOrReplace> Comparison { get; } = new Fields<RefinishOrReplace>("refinishOrReplace")
        .Show("currency", CurrencyShape.Only, it => it.Currency)
        .Show("refinishCost", Scalars.Money, it => it.RefinishCost)
        .Show("replaceCost", Scalars.Money, it => it.ReplaceCost)
        .Show("refinishPerYear", Scalars.Money, it => it.RefinishPerYear)
        .Show("replacePerYear", Scalars.Money, it => it.ReplacePerYear)
        .Show("horizonYears", Results.Number, it => it.HorizonYears)
        .Show("refinishPresentValue", Scalars.Money, it => it.RefinishPresentValue)
        .Show("replacePresentValue", Scalars.Money, it => it.ReplacePresentValue)
        .Show("refinishPerReplace", Results.Percent.OrNull(), it => it.RefinishPerReplace?.DecimalFractions)
        .Show("breakEvenYears", Results.Number.OrNull(), it => it.BreakEvenYears)
        .AsResults();

    public static FieldsShape<WarrantyReserve> Reserve { get; } = new Fields<WarrantyReserve>("warrantyReserve")
        .Show("termYears", Results.Number, it => it.TermYears)
        .Show("failedWithinTerm", Results.Percent, it => it.FailedWithinTerm.DecimalFractions)
        .Show("expectedClaims", Results.Number, it => it.ExpectedClaims)
        .Show("reserve", Scalars.Money, it => it.Reserve)
        .Show("discountedReserve", Scalars.Money, it => it.DiscountedReserve)
        .AsResults();

    private static readonly FieldsShape<PartVolume> Part = new Fields<PartVolume>("partTaken")
        .Show("component", Text, it => it.Component)
        .Show("volume", Results.Liquid, it => it.Volume.CubicMeters)
        .AsResults();

    private static readonly FieldsShape<StockUse> Use = new Fields<StockUse>("stockUse")
        .Show("opened", Times.Instant, it => it.Kit.Opened)
        .Show("mixed", Results.Liquid, it => it.Mixed.CubicMeters)
        .Show("parts", List(Part), it => it.Parts)
        .Show("age", Results.Comparison, it => it.Age)
        .AsResults();

    public static FieldsShape<StockDraw> Draw { get; } = new Fields<StockDraw>("stockDraw")
        .Show("id", Text, it => it.Product.Id)
        .Show("need", Results.Liquid, it => it.Need.CubicMeters)
        .Show("when", Times.Instant, it => it.When)
        .Show("uses", List(Use), it => it.Uses)
        .Show("notCounted", Results.Comparisons, it => it.NotCounted)
        .Show("covered", Results.Liquid, it => it.Covered.CubicMeters)
        .Show("toBuy", Results.Liquid, it => it.ToBuy.CubicMeters)
        .Show("cautions", Results.CautionCodes, it => it.Cautions)
        .AsResults();
}
