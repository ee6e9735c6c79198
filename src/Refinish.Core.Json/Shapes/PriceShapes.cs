using System;
using System.Collections.Generic;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>Prices, warranty and the offer of a replacement. Amounts are plain numbers in the currency of the price book.</summary>
internal static class PriceShapes
{
    /// <summary>Either the size of a kit or the unit that is sold loose.</summary>
    public static ObjectShape<MaterialPrice> Material { get; } = new Fields<MaterialPrice>("materialPrice")
        .With("item", Scalars.Text, price => price.Item, out Slot<string> item)
        .WithOr("size", Quantities.Material.OrNull(), price => price.IsLoose ? null : (MaterialAmount?)price.Size, null,
            out Slot<MaterialAmount?> size)
        .WithOr("unit", new WordShape<LineUnit>().OrNull(), price => price.IsLoose ? price.Unit : null, null, out Slot<LineUnit?> unit)
        .With("price", Scalars.Money, price => price.Price, out Slot<decimal> amount)
        .Making(v => (size(v), unit(v)) switch
        {
            (MaterialAmount kit, null) => new MaterialPrice(item(v), kit, amount(v)),
            (null, LineUnit loose) => MaterialPrice.Loose(item(v), loose, amount(v)),
            _ => throw new ArgumentException("A price has either the size of a kit or the unit that is sold loose.", nameof(size)),
        });

    public static ObjectShape<OptionPrice> Option { get; } = new Fields<OptionPrice>("optionPrice")
        .With("code", Scalars.Text, option => option.Code, out Slot<string> code)
        .With("description", Scalars.Text, option => option.Description, out Slot<string> description)
        .With("unit", new WordShape<LineUnit>(), option => option.Unit, out Slot<LineUnit> unit)
        .With("cost", Scalars.Money, option => option.Cost, out Slot<decimal> cost)
        .WithOr("price", Scalars.Money.OrNull(), option => option.Price, null, out Slot<decimal?> price)
        .Optional("cautions", CommonShapes.List(CommonShapes.Caution), option => option.Cautions,
            (option, cautions) => option with { Cautions = cautions })
        .Making(v => new OptionPrice { Code = code(v), Description = description(v), Unit = unit(v), Cost = cost(v), Price = price(v) });

    public static ObjectShape<PriceBook> Book { get; } = new Fields<PriceBook>("priceBook")
        .With("currency", CurrencyShape.Only, book => book.Currency, out Slot<Currency> currency)
        .Maybe("labourRate", Scalars.Money, book => book.LabourRate, (book, amount) => book with { LabourRate = amount })
        .Optional("burden", Quantities.Percent, book => book.Burden, (book, share) => book with { Burden = share })
        .Optional("overheadPerHour", Scalars.Money, book => book.OverheadPerHour, (book, amount) => book with { OverheadPerHour = amount })
        .Optional("overheadOfDirectCost", Quantities.Percent, book => book.OverheadOfDirectCost,
            (book, share) => book with { OverheadOfDirectCost = share })
        .Maybe("travelPerTrip", Scalars.Money, book => book.TravelPerTrip, (book, amount) => book with { TravelPerTrip = amount })
        .Maybe("disposalPerJob", Scalars.Money, book => book.DisposalPerJob, (book, amount) => book with { DisposalPerJob = amount })
        .Maybe("consumablesPerFixture", Scalars.Money, book => book.ConsumablesPerFixture,
            (book, amount) => book with { ConsumablesPerFixture = amount })
        .Optional("materials", CommonShapes.List(Material), book => book.Materials,
            (book, materials) => book with { Materials = materials })
        .Optional("options", CommonShapes.List(Option), book => book.Options, (book, options) => book with { Options = options })
        .Optional("minimumCharge", Scalars.Money, book => book.MinimumCharge, (book, amount) => book with { MinimumCharge = amount })
        .Optional("targetMargin", Quantities.Percent, book => book.TargetMargin.OfPrice,
            (book, share) => book with { TargetMargin = new Margin(share) })
        .Optional("taxes", CommonShapes.List(TaxShapes.Rate), book => book.Taxes, (book, taxes) => book with { Taxes = taxes })
        .Optional("taxRounding", new WordShape<TaxRounding>(), book => book.TaxRounding, (book, rounding) =>
            book with { TaxRounding = rounding })
        .Optional("hostCodes", CommonShapes.List(TaxShapes.HostCode), book => book.HostCodes, (book, codes) =>
            book with { HostCodes = codes })
        .Optional("cashStep", Scalars.Money, book => book.CashStep, (book, amount) => book with { CashStep = amount })
        .Making(v => new PriceBook { Currency = currency(v) });

    public static ObjectShape<DefectMaterial> DefectMaterial { get; } = new Fields<DefectMaterial>("defectMaterial")
        .With("repairs", DefectKindShape.Kind, material => material.Repairs, out Slot<DefectKind> repairs)
        .With("item", Scalars.Text, material => material.Item, out Slot<string> item)
        .With("name", Scalars.Text, material => material.Name, out Slot<string> name)
        .Maybe("work", LabourShapes.Work, material => material.Work, (material, work) => material with { Work = work })
        .Optional("each", Quantities.Liquid, material => material.Each, (material, volume) => material with { Each = volume })
        .Maybe("coverage", Quantities.SpreadingRate, material => material.Coverage, (material, rate) => material with { Coverage = rate })
        .Maybe("density", Quantities.Density, material => material.Density, (material, density) => material with { Density = density })
        .With("source", CommonShapes.Source, material => material.Source, out Slot<Source> source)
        .Making(v => new DefectMaterial { Repairs = repairs(v), Item = item(v), Name = name(v), Source = source(v) });

    public static ObjectShape<WeibullLife> Life { get; } = new Fields<WeibullLife>("weibullLife")
        .With("shape", Scalars.Number, life => life.Shape, out Slot<double> shape)
        .With("scaleYears", Scalars.Number, life => life.ScaleYears, out Slot<double> scaleYears)
        .Making(v => new WeibullLife(shape(v), scaleYears(v)));

    public static ObjectShape<WarrantyTerms> Warranty { get; } = new Fields<WarrantyTerms>("warrantyTerms")
        .With("years", Scalars.Count, terms => terms.Years, out Slot<int> years)
        .With("life", Life, terms => terms.Life, out Slot<WeibullLife> life)
        .With("costPerClaim", Scalars.Money, terms => terms.CostPerClaim, out Slot<decimal> costPerClaim)
        .With("claimProbability", Quantities.Percent, terms => terms.ClaimProbability, out Slot<Ratio> claimProbability)
        .Optional("discountRate", Quantities.Percent, terms => terms.DiscountRate, (terms, rate) => terms with { DiscountRate = rate })
        .Making(v => new WarrantyTerms { Years = years(v), Life = life(v), CostPerClaim = costPerClaim(v),
            ClaimProbability = claimProbability(v) });

    public static ObjectShape<CostPart> Part { get; } = new Fields<CostPart>("costPart")
        .With("name", Scalars.Text, part => part.Name, out Slot<string> name)
        .With("amount", Scalars.Money, part => part.Amount, out Slot<decimal> amount)
        .Making(v => new CostPart(name(v), amount(v)));

    public static ObjectShape<RenewalOption> Renewal { get; } = new Fields<RenewalOption>("renewalOption")
        .With("name", Scalars.Text, option => option.Name, out Slot<string> name)
        .With("parts", CommonShapes.List(Part), option => option.Parts, out Slot<IReadOnlyList<CostPart>> parts)
        .With("lifeYears", Scalars.Number, option => option.LifeYears, out Slot<double> lifeYears)
        .Optional("daysOutOfUse", Scalars.Count, option => option.DaysOutOfUse, (option, days) => option with { DaysOutOfUse = days })
        .Optional("yearlyCost", Scalars.Money, option => option.YearlyCost, (option, amount) => option with { YearlyCost = amount })
        .Making(v => new RenewalOption { Name = name(v), Parts = parts(v), LifeYears = lifeYears(v) });

    public static ObjectShape<ReplacementOffer> Replacement { get; } = new Fields<ReplacementOffer>("replacementOffer")
        .With("replacement", Renewal, offer => offer.Replacement, out Slot<RenewalOption> replacement)
        .With("refinishLifeYears", Scalars.Number, offer => offer.RefinishLifeYears, out Slot<double> refinishLifeYears)
        .With("discountRate", Quantities.Percent, offer => offer.DiscountRate, out Slot<Ratio> discountRate)
        .Optional("costPerDayOutOfUse", Scalars.Money, offer => offer.CostPerDayOutOfUse,
            (offer, amount) => offer with { CostPerDayOutOfUse = amount })
        .Optional("refinishYearlyCost", Scalars.Money, offer => offer.RefinishYearlyCost,
            (offer, amount) => offer with { RefinishYearlyCost = amount })
        .Making(v => new ReplacementOffer { Replacement = replacement(v), RefinishLifeYears = refinishLifeYears(v),
            DiscountRate = discountRate(v) });
}
