using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;

namespace Refinish.Json.Shapes;

/// <summary>Reads the quote that a stored plan gave the customer; the terms of its job hold the names.</summary>
internal static class QuoteReader
{
    /// <summary>The quote; nothing when the plan had none.</summary>
    public static QuoteFigures? Read(Found quote, Found terms) => !quote["total"].IsThere ? null : new QuoteFigures
    {
        Number = terms["number"].Text,
        Revision = terms["revision"].Text,
        ValidUntil = quote["validUntil"].Day,
        PricesShown = terms["pricesShown"].Word<PricesShown>() ?? PricesShown.Net,
        Items = [.. quote["fixtures"].Items.SelectMany(fixture => Items(fixture["extras"], fixture["work"])), .. Items(quote["forTheJob"])],
        Payments = [.. Payments(quote, terms)],
        Cautions = [.. quote["cautions"].Items.Select(code => code.Text).OfType<string>()],
    };

    private static IEnumerable<ItemFigures> Items(Found list, params Found[] first)
    {
        foreach (Found item in first.Concat(list.Items))
        {
            if (!item.IsThere)
            {
                continue;
            }

            string id = Named(item["id"].Text, "(no id)");
            yield return new ItemFigures
            {
                Id = id,
                Kind = item["kind"].Word<QuoteItemKind>(),
                Fixture = item["fixture"].Text,
                Description = item["description"].Text ?? id,
                Quantity = item["quantity"].Money ?? 1,
                Unit = item["unit"].Word<LineUnit>()?.Symbol() ?? item["unit"].Text ?? string.Empty,
                Price = item["price"].Money ?? 0,
                WithTax = item["withTax"].Money ?? 0,
            };
        }
    }

    private static IEnumerable<PaymentFigures> Payments(Found quote, Found terms)
    {
        Dictionary<string, Found> stages = new(StringComparer.Ordinal);
        foreach (Found stage in terms["payments"].Items)
        {
            stages.TryAdd(stage["id"].Text ?? string.Empty, stage);
        }

        foreach (Found payment in quote["payments"].Items)
        {
            string id = Named(payment["id"].Text, "(no id)");
            PaymentFigures figures = new() { Id = id, Amount = payment["amount"].Money ?? 0 };
            yield return !stages.TryGetValue(id, out Found stage) ? figures
                : figures with { Name = stage["name"].Text ?? id, When = When(stage) };
        }
    }

    private static string When(Found stage)
    {
        if (stage["due"].Word<PaymentDue>() is not PaymentDue due)
        {
            return string.Empty;
        }

        PaymentStage told = PaymentStage.OfRest("stage", due);
        bool isAfter = due == PaymentDue.AfterCompletion && stage["days"].Count is >= 0 and <= 3650;
        return (isAfter ? told with { Days = stage["days"].Count!.Value } : told).When;
    }

    private static string Named(string? text, string otherwise) => string.IsNullOrWhiteSpace(text) ? otherwise : text;
}
