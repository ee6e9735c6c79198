using System;
using System.Collections.Generic;

namespace Refinish.Estimating;

/// <summary>All orders of one option for one fixture, to be one line of an estimate.</summary>
internal sealed class OrderedOption
{
    private OrderedOption(OptionOrder order)
    {
        Code = order.Code;
        Fixture = order.Fixture;
    }

    public string Code { get; }

    public string? Fixture { get; }

    public decimal Quantity { get; private set; }

    public static IReadOnlyList<OrderedOption> Of(IReadOnlyList<OptionOrder> orders)
    {
        if (orders.Count == 0)
        {
            return [];
        }

        List<OrderedOption> all = new(orders.Count);
        Dictionary<string, OrderedOption> byId = new(StringComparer.Ordinal);
        for (int i = 0; i < orders.Count; i++)
        {
            string id = new LineKey(orders[i].Code, orders[i].Fixture).Id;
            if (!byId.TryGetValue(id, out OrderedOption? one))
            {
                one = new OrderedOption(orders[i]);
                byId.Add(id, one);
                all.Add(one);
            }

            one.Quantity += orders[i].Quantity;
        }

        return all;
    }
}
