using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using Refinish.Estimating;
using Refinish.Jobs;

namespace Refinish.Json.Shapes;

/// <summary>Reads what a stored plan told people, field by field, and needs nothing else of the document to be right.</summary>
internal static class FiguresReader
{
    /// <summary>The figures, and those that cannot be read.</summary>
    public static (PlanFigures Figures, List<JsonFault> Faults) Read(JsonElement root)
    {
        List<JsonFault> faults = [];
        Found document = new(root, "$", faults);
        Found results = document["results"];
        Found price = results["price"];
        Found schedule = results["schedule"];
        bool isPriced = price["total"].IsThere;
        bool isScheduled = schedule["isPossible"].YesNo ?? false;
        PlanFigures figures = new()
        {
            Job = Named(document["job"]["id"].Text, "(no id)"),
            Name = Named(document["job"]["name"].Text, Named(document["job"]["id"].Text, "(no id)")),
            Quote = QuoteReader.Read(results["quote"], document["job"]["terms"]),
            Units = document["units"].Word<DisplayUnits>() ?? DisplayUnits.Si,
            Currency = isPriced ? price["currency"].Text : null,
            Total = price["total"].Money,
            Payable = price["payable"].Money,
            Cost = price["cost"].Money,
            Net = price["net"].Money,
            Tax = price["tax"].Money,
            MinimumChargeApplied = price["minimumChargeApplied"].YesNo ?? false,
            Lines = isPriced ? [.. Lines(price)] : [],
            Gaps = [.. Remarks(price["gaps"], "id", "code", gap => gap["what"].Text + ": " + gap["missing"].Text)],
            Trips = isScheduled ? schedule["trips"].Count : null,
            Paid = isScheduled ? schedule["paid"]["paid"].Duration : null,
            Visits = [.. Visits(schedule)],
            Fixtures = [.. Fixtures(results)],
            Objections = [.. Remarks(results["objections"], "id", "about", remark => remark["sentence"].Text)],
            Conditions = [.. Remarks(results["conditions"], "id", "about", remark =>
                remark["sentence"].Text + "; " + remark["remedy"].Text)],
            Cautions = [.. Remarks(results["cautions"], "code", null, remark => remark["sentence"].Text)],
        };
        return (figures, faults);
    }

    private static IEnumerable<LineFigures> Lines(Found price)
    {
        Dictionary<string, string> materials = new(StringComparer.Ordinal);
        foreach (Found purchase in price["purchases"].Items)
        {
            if (purchase["id"].Text is string id && purchase["name"].Text is string name)
            {
                materials[id] = name;
            }
        }

        foreach (Found line in price["lines"].Items)
        {
            LineCategory? category = line["category"].Word<LineCategory>();
            string id = Named(line["id"].Text, "(no id)");
            string? material = category == LineCategory.Material && line["code"].Text is string code
                ? materials.GetValueOrDefault(code) : null;
            yield return new LineFigures
            {
                Id = id,
                Item = line["item"].Text ?? id,
                Category = category,
                Fixture = line["fixture"].Text,
                Room = line["room"].Text,
                Description = material ?? line["description"].Text ?? string.Empty,
                Quantity = line["quantity"].Money ?? 0,
                Unit = line["unit"].Word<LineUnit>()?.Symbol() ?? line["unit"].Text ?? string.Empty,
                Rate = line["rate"].Money ?? 0,
                Cost = line["cost"].Money ?? 0,
                Price = line["price"].Money ?? 0,
                IsPriceFixed = line["hasFixedPrice"].YesNo ?? false,
            };
        }
    }

    private static IEnumerable<VisitFigures> Visits(Found schedule)
    {
        foreach (Found visit in schedule["visits"].Items)
        {
            if (visit["arrives"].Instant is DateTimeOffset arrives && visit["leaves"].Instant is DateTimeOffset leaves)
            {
                yield return new VisitFigures
                {
                    Worker = Named(visit["worker"].Text, "(no id)"), Arrives = arrives, Leaves = leaves,
                        Paid = visit["paid"].Duration ?? TimeSpan.Zero,
                };
            }
        }
    }

    private static IEnumerable<FixtureFigures> Fixtures(Found results)
    {
        Dictionary<string, Found> dates = new(StringComparer.Ordinal);
        foreach (Found fixture in results["handover"]["fixtures"].Items)
        {
            dates.TryAdd(fixture["id"].Text ?? string.Empty, fixture);
        }

        foreach (Found procedure in results["procedures"].Items.Where(procedure => procedure["isPlanned"].YesNo ?? false))
        {
            string id = Named(procedure["id"].Text, "(no id)");
            FixtureFigures figures = new() { Id = id, Name = Named(procedure["name"].Text, id) };
            yield return !dates.TryGetValue(id, out Found told) ? figures : figures with
            {
                WaterFrom = told["waterFrom"].Instant,
                FullCure = told["fullCure"].Instant,
                HandedOver = told["handedOver"].Instant,
                WarrantyUntil = told["warrantyUntil"].Instant,
            };
        }
    }

    private static IEnumerable<PlanRemark> Remarks(Found list, string id, string? about, Func<Found, string?> sentence) =>
        list.Items.Select(remark => new PlanRemark(
            Named(remark[id].Text, "(no id)"), about is null
                ? string.Empty : remark[about].Text ?? string.Empty, sentence(remark) ?? string.Empty));

    private static string Named(string? text, string otherwise) => string.IsNullOrWhiteSpace(text) ? otherwise : text;
}
