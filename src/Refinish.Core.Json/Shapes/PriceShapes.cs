using System;
using System.Collections.Generic;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Substrates;
using UnitsNet;
using static Refinish.Json.Shapes.Quantities;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>Prices, warranty and the offer of a replacement. Amounts are plain numbers in the currency of the price book.</summary>
internal static class PriceShapes
{
    /// <summary>Either the size of a kit or the unit that is sold loose.</summary>
    public static ObjectShape<MaterialPrice> Material { get; } = new Fields<MaterialPrice>("materialPrice")
        .With("item", Text, it => it.Item, out Slot<string> item)
        .WithOr("size", Quantities.Material.OrNull(), it => it.IsLoose ? null : (MaterialAmount?)it.Size, null,
            out Slot<MaterialAmount?> size)
        .WithOr("unit", new WordShape<LineUnit>().OrNull(), it => it.IsLoose ? it.Unit : null, null, out Slot<LineUnit?> unit)
        .With("price", Scalars.Money, it => it.Price, out Slot<decimal> amount)
        .Making(v => (size(v), unit(v)) switch
        {
            (MaterialAmount kit, null) => new MaterialPrice(item(v), kit, amount(v)),
            (null, LineUnit loose) => MaterialPrice.Loose(item(v), loose, amount(v)),
            _ => throw new ArgumentException("A price has either the size of a kit or the unit that is sold loose.", nameof(size)),
        });

    public static ObjectShape<OptionPrice> Option { get; } = new Fields<OptionPrice>("optionPrice")
        .With("code", Text, it => it.Code, out Slot<string> code)
        .With("description", Text, it => it.Description, out Slot<string> description)
        .With("unit", new WordShape<LineUnit>(), it => it.Unit, out Slot<LineUnit> unit)
        .With("cost", Scalars.Money, it => it.Cost, out Slot<decimal> cost)
        .WithOr("price", Scalars.Money.OrNull(), it => it.Price, null, out Slot<decimal?> price)
        .Optional("cautions", List(CommonShapes.Caution), it => it.Cautions, (it, cautions) => it with { Cautions = cautions })
        .Making(v => new OptionPrice { Code = code(v), Description = description(v), Unit = unit(v), Cost = cost(v), Price = price(v) });

    public static ObjectShape<PriceBook> Book { get; } = new Fields<PriceBook>("priceBook")
        .With("currency", CurrencyShape.Only, it => it.Currency, out Slot<Currency> currency)
        .Maybe("labourRate", Scalars.Money, it => it.LabourRate, (it, amount) => it with { LabourRate = amount })
        .Optional("burden", Percent, it => it.Burden, (it, share) => it with { Burden = share })
        .Optional("overheadPerHour", Scalars.Money, it => it.OverheadPerHour, (it, amount) => it with { OverheadPerHour = amount })
        .Optional("overheadOfDirectCost", Percent, it => it.OverheadOfDirectCost, (it, share) => it with { OverheadOfDirectCost = share })
        .Maybe("travelPerTrip", Scalars.Money, it => it.TravelPerTrip, (it, amount) => it with { TravelPerTrip = amount })
        .Maybe("disposalPerJob", Scalars.Money, it => it.DisposalPerJob, (it, amount) => it with { DisposalPerJob = amount })
        .Maybe("consumablesPerFixture", Scalars.Money, it => it.ConsumablesPerFixture,
            (it, amount) => it with { ConsumablesPerFixture = amount })
        .Optional("materials", List(Material), it => it.Materials, (it, materials) => it with { Materials = materials })
        .Optional("options", List(Option), it => it.Options, (it, options) => it with { Options = options })
        .Optional("minimumCharge", Scalars.Money, it => it.MinimumCharge, (it, amount) => it with { MinimumCharge = amount })
        .Optional("targetMargin", Percent, it => it.TargetMargin.OfPrice, (it, share) => it with { TargetMargin = new Margin(share) })
        .Optional("taxes", List(TaxShapes.Rate), it => it.Taxes, (it, taxes) => it with { Taxes = taxes })
        .Optional("taxRounding", new WordShape<TaxRounding>(), it => it.TaxRounding, (it, rounding) => it with { TaxRounding = rounding })
        .Optional("hostCodes", List(TaxShapes.HostCode), it => it.HostCodes, (it, codes) => it with { HostCodes = codes })
        .Optional("cashStep", Scalars.Money, it => it.CashStep, (it, amount) => it with { CashStep = amount })
        .Making(v => new PriceBook { Currency = currency(v) });

    public static ObjectShape<DefectMaterial> DefectMaterial { get; } = new Fields<DefectMaterial>("defectMaterial")
        .With("repairs", DefectKindShape.Kind, it => it.Repairs, out Slot<DefectKind> repairs)
        .With("item", Text, it => it.Item, out Slot<string> item)
        .With("name", Text, it => it.Name, out Slot<string> name)
        .Maybe("work", LabourShapes.Work, it => it.Work, (it, work) => it with { Work = work })
        .Optional("each", Liquid, it => it.Each, (it, volume) => it with { Each = volume })
        .Maybe("coverage", Quantities.SpreadingRate, it => it.Coverage, (it, rate) => it with { Coverage = rate })
        .Maybe("density", Quantities.Density, it => it.Density, (it, density) => it with { Density = density })
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .Making(v => new DefectMaterial { Repairs = repairs(v), Item = item(v), Name = name(v), Source = source(v) });

    public static ObjectShape<WeibullLife> Life { get; } = new Fields<WeibullLife>("weibullLife")
        .With("shape", Number, it => it.Shape, out Slot<double> shape)
        .With("scaleYears", Number, it => it.ScaleYears, out Slot<double> scaleYears)
        .Making(v => new WeibullLife(shape(v), scaleYears(v)));

    public static ObjectShape<WarrantyTerms> Warranty { get; } = new Fields<WarrantyTerms>("warrantyTerms")
        .With("years", Count, it => it.Years, out Slot<int> years)
        .With("life", Life, it => it.Life, out Slot<WeibullLife> life)
        .With("costPerClaim", Scalars.Money, it => it.CostPerClaim, out Slot<decimal> costPerClaim)
        .With("claimProbability", Percent, it => it.ClaimProbability, out Slot<Ratio> claimProbability)
        .Optional("discountRate", Percent, it => it.DiscountRate, (it, rate) => it with { DiscountRate = rate })
        .Making(v => new WarrantyTerms { Years = years(v), Life = life(v), CostPerClaim = costPerClaim(v),
            ClaimProbability = claimProbability(v) });

    public static ObjectShape<CostPart> Part { get; } = new Fields<CostPart>("costPart")
        .With("name", Text, it => it.Name, out Slot<string> name)
        .With("amount", Scalars.Money, it => it.Amount, out Slot<decimal> amount)
        .Making(v => new CostPart(name(v), amount(v)));

    public static ObjectShape<RenewalOption> Renewal { get; } = new Fields<RenewalOption>("renewalOption")
        .With("name", Text, it => it.Name, out Slot<string> name)
        .With("parts", List(Part), it => it.Parts, out Slot<IReadOnlyList<CostPart>> parts)
        .With("lifeYears", Number, it => it.LifeYears, out Slot<double> lifeYears)
        .Optional("daysOutOfUse", Count, it => it.DaysOutOfUse, (it, days) => it with { DaysOutOfUse = days })
        .Optional("yearlyCost", Scalars.Money, it => it.YearlyCost, (it, amount) => it with { YearlyCost = amount })
        .Making(v => new RenewalOption { Name = name(v), Parts = parts(v), LifeYears = lifeYears(v) });

    public static ObjectShape<ReplacementOffer> Replacement { get; } = new Fields<ReplacementOffer>("replacementOffer")
        .With("replacement", Renewal, it => it.Replacement, out Slot<RenewalOption> replacement)
        .With("refinishLifeYears", Number, it => it.RefinishLifeYears, out Slot<double> refinishLifeYears)
        .With("discountRate", Percent, it => it.DiscountRate, out Slot<Ratio> discountRate)
        .Optional("costPerDayOutOfUse", Scalars.Money, it => it.CostPerDayOutOfUse, (it, amount) => it with { CostPerDayOutOfUse = amount })
        .Optional("refinishYearlyCost", Scalars.Money, it => it.RefinishYearlyCost, (it, amount) => it with { RefinishYearlyCost = amount })
        .Making(v => new ReplacementOffer { Replacement = replacement(v), RefinishLifeYears = refinishLifeYears(v),
            DiscountRate = discountRate(v) });
}
