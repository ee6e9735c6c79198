using System.Collections.Generic;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>Taxes, discounts, extra items and the host's codes.</summary>
internal static class TaxShapes
{
    private static readonly Shape<LineCategory> Category = new WordShape<LineCategory>();

    public static ObjectShape<TaxRate> Rate { get; } = new Fields<TaxRate>("taxRate")
        .With("code", Scalars.Text, rate => rate.Code, out Slot<string> code)
        .With("name", Scalars.Text, rate => rate.Name, out Slot<string> name)
        .With("rate", Quantities.Percent, rate => rate.Rate, out Slot<Ratio> share)
        .MaybeOf("categories", CommonShapes.List(Category), rate => rate.Categories, (rate, categories) =>
            rate with { Categories = categories })
        .Making(v => new TaxRate { Code = code(v), Name = name(v), Rate = share(v) });

    public static ObjectShape<TaxExemption> Exemption { get; } = new Fields<TaxExemption>("taxExemption")
        .With("reason", Scalars.Text, exemption => exemption.Reason, out Slot<string> reason)
        .MaybeOf("codes", CommonShapes.List(Scalars.Text), exemption => exemption.Codes, (exemption, codes) =>
            exemption with { Codes = codes })
        .Making(v => new TaxExemption { Reason = reason(v) });

    public static ObjectShape<HostCode> HostCode { get; } = new Fields<HostCode>("hostCode")
        .With("item", Scalars.Text, code => code.Item, out Slot<string> item)
        .With("code", Scalars.Text, code => code.Code, out Slot<string> code)
        .Making(v => new HostCode(item(v), code(v)));

    public static ObjectShape<ExtraItem> Extra { get; } = new Fields<ExtraItem>("extraItem")
        .With("id", Scalars.Text, extra => extra.Id, out Slot<string> id)
        .With("category", Category, extra => extra.Category, out Slot<LineCategory> category)
        .With("description", Scalars.Text, extra => extra.Description, out Slot<string> description)
        .With("quantity", Scalars.Money, extra => extra.Quantity, out Slot<decimal> quantity)
        .With("unit", new WordShape<LineUnit>(), extra => extra.Unit, out Slot<LineUnit> unit)
        .With("rate", Scalars.Money, extra => extra.Rate, out Slot<decimal> rate)
        .Maybe("unitPrice", Scalars.Money, extra => extra.UnitPrice, (extra, price) => extra with { UnitPrice = price })
        .MaybeOf("fixture", Scalars.Text, extra => extra.Fixture, (extra, fixture) => extra with { Fixture = fixture })
        .MaybeOf("room", Scalars.Text, extra => extra.Room, (extra, room) => extra with { Room = room })
        .Optional("cautions", CommonShapes.List(CommonShapes.Caution), extra => extra.Cautions, (extra, cautions) =>
            extra with { Cautions = cautions })
        .Making(v => new ExtraItem { Id = id(v), Category = category(v), Description = description(v), Quantity = quantity(v),
            Unit = unit(v), Rate = rate(v) });
}
