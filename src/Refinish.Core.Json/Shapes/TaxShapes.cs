using System.Collections.Generic;
using Refinish.Estimating;
using UnitsNet;
using static Refinish.Json.Shapes.Quantities;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>Taxes, discounts, extra items and the host's codes.</summary>
internal static class TaxShapes
{
    private static readonly Shape<LineCategory> Category = new WordShape<LineCategory>();

    public static ObjectShape<TaxRate> Rate { get; } = new Fields<TaxRate>("taxRate")
        .With("code", Text, it => it.Code, out Slot<string> code)
        .With("name", Text, it => it.Name, out Slot<string> name)
        .With("rate", Percent, it => it.Rate, out Slot<Ratio> share)
        .MaybeOf("categories", List(Category), it => it.Categories, (it, categories) => it with { Categories = categories })
        .Making(v => new TaxRate { Code = code(v), Name = name(v), Rate = share(v) });

    public static ObjectShape<TaxExemption> Exemption { get; } = new Fields<TaxExemption>("taxExemption")
        .With("reason", Text, it => it.Reason, out Slot<string> reason)
        .MaybeOf("codes", List(Text), it => it.Codes, (it, codes) => it with { Codes = codes })
        .Making(v => new TaxExemption { Reason = reason(v) });

    public static ObjectShape<HostCode> HostCode { get; } = new Fields<HostCode>("hostCode")
        .With("item", Text, it => it.Item, out Slot<string> item)
        .With("code", Text, it => it.Code, out Slot<string> code)
        .Making(v => new HostCode(item(v), code(v)));

    public static ObjectShape<ExtraItem> Extra { get; } = new Fields<ExtraItem>("extraItem")
        .With("id", Text, it => it.Id, out Slot<string> id)
        .With("category", Category, it => it.Category, out Slot<LineCategory> category)
        .With("description", Text, it => it.Description, out Slot<string> description)
        .With("quantity", Scalars.Money, it => it.Quantity, out Slot<decimal> quantity)
        .With("unit", new WordShape<LineUnit>(), it => it.Unit, out Slot<LineUnit> unit)
        .With("rate", Scalars.Money, it => it.Rate, out Slot<decimal> rate)
        .Maybe("unitPrice", Scalars.Money, it => it.UnitPrice, (it, price) => it with { UnitPrice = price })
        .MaybeOf("fixture", Text, it => it.Fixture, (it, fixture) => it with { Fixture = fixture })
        .MaybeOf("room", Text, it => it.Room, (it, room) => it with { Room = room })
        .Optional("cautions", List(CommonShapes.Caution), it => it.Cautions, (it, cautions) => it with { Cautions = cautions })
        .Making(v => new ExtraItem { Id = id(v), Category = category(v), Description = description(v), Quantity = quantity(v),
            Unit = unit(v), Rate = rate(v) });
}
