using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;

namespace Refinish.Json.Shapes;

/// <summary>What a plan says of money, in the currency of the price book.</summary>
internal static class PriceResults
{
    private static readonly FieldsShape<EstimateLine> Line = new Fields<EstimateLine>("estimateLine")
        .Show("id", Scalars.Text, line => line.Id)
        .Show("category", new WordShape<LineCategory>(), line => line.Category)
        .Show("item", Scalars.Text, line => line.Item)
        .Show("fixture", Scalars.Text.OrNull(), line => line.Fixture)
        .Show("room", Scalars.Text.OrNull(), line => line.Room)
        .Show("worker", Scalars.Text.OrNull(), line => line.Worker)
        .Show("hostCode", Scalars.Text.OrNull(), line => line.HostCode)
        .Show("code", Scalars.Text, line => line.Code)
        .Show("description", Scalars.Text, line => line.Description)
        .Show("quantity", Scalars.Money, line => line.Quantity)
        .Show("unit", new WordShape<LineUnit>(), line => line.Unit)
        .Show("rate", Scalars.Money, line => line.Rate)
        .Show("cost", Scalars.Money, line => line.Cost)
        .Show("price", Scalars.Money, line => line.Price)
        .Show("hasFixedPrice", Scalars.YesNo, line => line.HasFixedPrice)
        .Show("taxes", CommonShapes.List(Scalars.Text), line => line.Taxes)
        .Show("seenBy", new WordShape<LineReader>(), line => line.SeenBy)
        .AsResults();

    public static readonly FieldsShape<TaxAmount> Tax = new Fields<TaxAmount>("taxAmount")
        .Show("code", Scalars.Text, tax => tax.Rate.Code)
        .Show("name", Scalars.Text, tax => tax.Rate.Name)
        .Show("rate", Results.Percent, tax => tax.Rate.Rate.DecimalFractions)
        .Show("taxed", Scalars.Money, tax => tax.Taxed)
        .Show("amount", Scalars.Money, tax => tax.Amount)
        .Show("exempt", Scalars.Text.OrNull(), tax => tax.Exemption?.Reason)
        .AsResults();

    private static readonly FieldsShape<PriceGap> Gap = new Fields<PriceGap>("priceGap")
        .Show("id", Scalars.Text, gap => gap.Id)
        .Show("code", Scalars.Text, gap => gap.Code)
        .Show("what", Scalars.Text, gap => gap.What)
        .Show("missing", Scalars.Text, gap => gap.Missing)
        .AsResults();

    private static readonly FieldsShape<PurchaseLine> Bought = new Fields<PurchaseLine>("purchaseLine")
        .Show("key", Scalars.Text, line => line.Key)
        .Show("description", Scalars.Text, line => line.Description)
        .Show("quantity", Scalars.Money, line => line.Quantity)
        .Show("unit", new WordShape<LineUnit>(), line => line.Unit)
        .Show("rate", Scalars.Money, line => line.Rate)
        .Show("cost", Scalars.Money, line => line.Cost)
        .AsResults();

    private static readonly FieldsShape<KitPurchase> Purchase = new Fields<KitPurchase>("kitPurchase")
        .Show("id", Scalars.Text, purchase => purchase.Item)
        .Show("name", Scalars.Text, purchase => purchase.Name)
        .Show("need", Results.Amount, purchase => MaterialAmountShape.Result(purchase.Need))
        .Show("lines", CommonShapes.List(Bought), purchase => purchase.Lines)
        .Show("cost", Scalars.Money, purchase => purchase.Cost)
        .Show("leastPossible", Scalars.Money, purchase => purchase.LeastPossible)
        .Show("isProvenCheapest", Scalars.YesNo, purchase => purchase.IsProvenCheapest)
        .Show("bought", Results.Amount, purchase => MaterialAmountShape.Result(purchase.Bought))
        .Show("leftOver", Results.Amount, purchase => MaterialAmountShape.Result(purchase.LeftOver))
        .AsResults();

    public static FieldsShape<PriceEstimate> Price { get; } = new Fields<PriceEstimate>("priceEstimate")
        .Show("currency", CurrencyShape.Only, price => price.Book.Currency)
        .Show("isComplete", Scalars.YesNo, price => price.IsComplete)
        .Show("gaps", CommonShapes.List(Gap), price => price.Gaps)
        .Show("lines", CommonShapes.List(Line), price => price.Lines)
        .Show("purchases", CommonShapes.List(Purchase), price => price.Purchases)
        .Show("cost", Scalars.Money.OrNull(), price => price.Cost)
        .Show("priceAtMargin", Scalars.Money.OrNull(), price => price.PriceAtMargin)
        .Show("minimumChargeApplied", Scalars.YesNo, price => price.MinimumChargeApplied)
        .Show("subtotal", Scalars.Money.OrNull(), price => price.Subtotal)
        .Show("discountGiven", Scalars.Money.OrNull(), price => price.DiscountGiven)
        .Show("discountWithheld", Scalars.Money.OrNull(), price => price.DiscountWithheld)
        .Show("net", Scalars.Money.OrNull(), price => price.Net)
        .Show("taxes", CommonShapes.List(Tax), price => price.Taxes)
        .Show("tax", Scalars.Money.OrNull(), price => price.Tax)
        .Show("total", Scalars.Money.OrNull(), price => price.Total)
        .Show("payable", Scalars.Money.OrNull(), price => price.Payable)
        .Show("profit", Scalars.Money.OrNull(), price => price.Profit)
        .Show("realisedMargin", Results.Percent.OrNull(), price => price.RealisedMargin?.DecimalFractions)
        .Show("realisedMarkup", Results.Percent.OrNull(), price => price.RealisedMarkup?.DecimalFractions)
        .Show("netAgainstCost", Results.Comparison, price => price.NetAgainstCost)
        .Show("cautions", Results.CautionCodes, price => price.Cautions)
        .AsResults();

    public static FieldsShape<RefinishOrReplace> Comparison { get; } = new Fields<RefinishOrReplace>("refinishOrReplace")
        .Show("currency", CurrencyShape.Only, comparison => comparison.Currency)
        .Show("refinishCost", Scalars.Money, comparison => comparison.RefinishCost)
        .Show("replaceCost", Scalars.Money, comparison => comparison.ReplaceCost)
        .Show("refinishPerYear", Scalars.Money, comparison => comparison.RefinishPerYear)
        .Show("replacePerYear", Scalars.Money, comparison => comparison.ReplacePerYear)
        .Show("horizonYears", Results.Number, comparison => comparison.HorizonYears)
        .Show("refinishPresentValue", Scalars.Money, comparison => comparison.RefinishPresentValue)
        .Show("replacePresentValue", Scalars.Money, comparison => comparison.ReplacePresentValue)
        .Show("refinishPerReplace", Results.Percent.OrNull(), comparison => comparison.RefinishPerReplace?.DecimalFractions)
        .Show("breakEvenYears", Results.Number.OrNull(), comparison => comparison.BreakEvenYears)
        .AsResults();

    public static FieldsShape<WarrantyReserve> Reserve { get; } = new Fields<WarrantyReserve>("warrantyReserve")
        .Show("termYears", Results.Number, reserve => reserve.TermYears)
        .Show("failedWithinTerm", Results.Percent, reserve => reserve.FailedWithinTerm.DecimalFractions)
        .Show("expectedClaims", Results.Number, reserve => reserve.ExpectedClaims)
        .Show("reserve", Scalars.Money, reserve => reserve.Reserve)
        .Show("discountedReserve", Scalars.Money, reserve => reserve.DiscountedReserve)
        .AsResults();

    private static readonly FieldsShape<PartVolume> Part = new Fields<PartVolume>("partTaken")
        .Show("component", Scalars.Text, part => part.Component)
        .Show("volume", Results.Liquid, part => part.Volume.CubicMeters)
        .AsResults();

    private static readonly FieldsShape<StockUse> Use = new Fields<StockUse>("stockUse")
        .Show("opened", Times.Instant, use => use.Kit.Opened)
        .Show("mixed", Results.Liquid, use => use.Mixed.CubicMeters)
        .Show("parts", CommonShapes.List(Part), use => use.Parts)
        .Show("age", Results.Comparison, use => use.Age)
        .AsResults();

    public static FieldsShape<StockDraw> Draw { get; } = new Fields<StockDraw>("stockDraw")
        .Show("id", Scalars.Text, draw => draw.Product.Id)
        .Show("need", Results.Liquid, draw => draw.Need.CubicMeters)
        .Show("when", Times.Instant, draw => draw.When)
        .Show("uses", CommonShapes.List(Use), draw => draw.Uses)
        .Show("notCounted", Results.Comparisons, draw => draw.NotCounted)
        .Show("covered", Results.Liquid, draw => draw.Covered.CubicMeters)
        .Show("toBuy", Results.Liquid, draw => draw.ToBuy.CubicMeters)
        .Show("cautions", Results.CautionCodes, draw => draw.Cautions)
        .AsResults();
}
