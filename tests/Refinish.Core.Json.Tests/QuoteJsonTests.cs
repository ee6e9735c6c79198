using System;
using System.IO;
using System.Linq;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Refinish.Estimating;
using Refinish.Jobs;
using UnitsNet;
using Xunit;

namespace Refinish.Json.Tests;

public class QuoteJsonTests
{
    private static readonly JobPlan Plan = (Examples.Bathroom() with { Terms = Examples.Terms() with { Exemption = null } }).Plan();

    // Invented; the amounts are worked by hand: 2 h × 30 + 30 + 40 + 20 = 150 of cost, sold at 300 with a margin of a half, an option at
    // 75, less 10 %, which leaves 337.50; 20 % of tax: 405.00, of which a tenth is 40.50.
    private static CustomerQuote Small()
    {
        PriceBook book = new()
        {
            Currency = Currency.Of("USD"), LabourRate = 30m, ConsumablesPerFixture = 30m, TravelPerTrip = 40m, DisposalPerJob = 20m,
            TargetMargin = new(Ratio.FromPercent(50)), Options = [new() { Code = "slip-floor", Description = "slip-resistant floor", Unit = LineUnit.Each, Cost = 6m, Price = 75m }],
            Taxes = [new() { Code = "vat", Name = "value added tax", Rate = Ratio.FromPercent(20) }],
        };
        QuoteTerms terms = new()
        {
            Number = "Q-1", Revision = "2", Issued = new DateTimeOffset(2027, 2, 15, 9, 0, 0, TimeSpan.FromHours(-5)), ValidFor = 30,
            Discount = Discount.Of(Ratio.FromPercent(10)) with { Reason = "neighbours" },
            Payments =
            [
                PaymentStage.OfShare("deposit", PaymentDue.OnAcceptance, Ratio.FromPercent(10)),
                PaymentStage.OfRest("rest", PaymentDue.AfterCompletion) with { Days = 14 },
            ],
        };
        EstimateRequest request = new()
        {
            Labour = new([new LabourTask { Standard = new LabourStandard { Code = "L-1", Description = "work", Fixed = ThreePoint.Exactly(2), Source = Source.Invented("test") } }]),
            Materials = [], Fixtures = 1, Options = [new() { Code = "slip-floor", Fixture = "tub" }], Discount = terms.Discount,
        };
        return new CustomerQuote(new PriceEstimate(book, request), [new FixtureWeight("tub", "bathtub", 3)], terms);
    }

    [Fact]
    public void A_quote_is_a_document_of_its_own()
    {
        JsonObject json = JsonNode.Parse(QuoteJson.Write(Small()))!.AsObject();
        Assert.Equal(("refinish/quote", 1), ((string?)json["format"], (int)json["version"]!));
        Assert.Equal(("Q-1", "2", "2027-02-15T09:00:00-05:00", "2027-03-17", "USD"),
            ((string?)json["number"], (string?)json["revision"], (string?)json["issued"], (string?)json["validUntil"], (string?)json["currency"]));
        Assert.Equal((375m, 37.5m, "neighbours", 337.5m, 67.5m, 405m, 0m, 405m),
            ((decimal)json["subtotal"]!, (decimal)json["discount"]!, (string?)json["discountReason"], (decimal)json["net"]!, (decimal)json["tax"]!, (decimal)json["total"]!,
                (decimal)json["cashRounding"]!, (decimal)json["payable"]!));
        JsonArray items = json["fixtures"]![0]!["items"]!.AsArray();
        Assert.Equal([("bathtub", 300m), ("slip-resistant floor", 75m)], items.Select(item => ((string)item!["description"]!, (decimal)item["price"]!)));
        Assert.Equal([("deposit", "on acceptance", 40.5m), ("rest", "14 days after completion", 364.5m)],
            json["payments"]!.AsArray().Select(payment => ((string)payment!["name"]!, (string)payment["when"]!, (decimal)payment["amount"]!)));
        Assert.Equal([("value added tax", 67.5m)], json["taxes"]!.AsArray().Select(tax => ((string)tax!["name"]!, (decimal)tax["amount"]!)));
        Assert.Empty(json["outOfUse"]!.AsArray());
        Assert.Null(json["warranty"]);
    }

    [Fact]
    public void Of_a_plan_it_holds_times_conditions_cautions_and_warranty_in_sentences()
    {
        CustomerQuote quote = Plan.Quote!;
        JsonObject json = JsonNode.Parse(QuoteJson.Write(quote, new JsonLayout { Units = DisplayUnits.UsCustomary }))!.AsObject();
        Assert.Equal(Plan.Job.Name, (string?)json["name"]);
        Assert.Equal(quote.Handover!.Fixtures.Select(fixture => fixture.WaterFrom),
            json["outOfUse"]!.AsArray().Select(fixture => (DateTimeOffset?)DateTimeOffset.Parse((string)fixture!["waterFrom"]!, System.Globalization.CultureInfo.InvariantCulture)));
        Assert.NotEmpty(quote.Conditions);
        Assert.Equal(quote.Conditions.Select(condition => condition.Sentence(DisplayUnits.UsCustomary)), json["conditions"]!.AsArray().Select(condition => (string)condition!["sentence"]!));
        Assert.Equal(quote.Cautions.Select(caution => caution.Caution.Sentence), json["cautions"]!.AsArray().Select(caution => (string)caution!["sentence"]!));
        Assert.Equal("occupants-out", (string?)json["cautions"]![0]!["code"]);
        Assert.Equal(quote.Warranty!.Years, (int)json["warranty"]!["years"]!);
        Assert.Equal(quote.Handover.Covers, json["warranty"]!["covers"]!.AsArray().Select(line => (string)line!));
    }

    /// <summary>No field of the shop's reckoning, no standard of labour, nobody of the crew, no wage and no cost.</summary>
    [Fact]
    public void Nothing_of_the_shop_is_in_it()
    {
        string json = QuoteJson.Write(Plan.Quote!);
        foreach (string word in (string[])["labour", "wage", "cost", "margin", "overhead", "consumables", "travel", "profit", "reserve", "hours\"", "crew\":", "hostCode", "taxed", "claimProbability"])
        {
            Assert.DoesNotContain(word, json, StringComparison.OrdinalIgnoreCase);
        }

        Assert.All(Plan.Job.Shop.Crew, worker => Assert.DoesNotContain("\"" + worker.Id + "\"", json, StringComparison.Ordinal));
        Assert.All(Plan.Price!.Lines.Where(line => line.Category == LineCategory.Labour), line => Assert.DoesNotContain("\"" + line.Description + "\"", json, StringComparison.Ordinal));
        Assert.True(json.Length < 60_000, "length " + json.Length);
    }

    [Fact]
    public void Text_stream_and_writer_give_the_same()
    {
        CustomerQuote quote = Small();
        using MemoryStream stream = new();
        QuoteJson.Write(stream, quote);
        string text = QuoteJson.Write(quote);
        Assert.Equal(text, Encoding.UTF8.GetString(stream.ToArray()));
        using MemoryStream larger = new();
        using (Utf8JsonWriter writer = new(larger))
        {
            QuoteJson.Write(writer, quote);
        }

        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(text), JsonNode.Parse(larger.ToArray())));
        Assert.Throws<ArgumentNullException>(() => QuoteJson.Write(null!));
        Assert.Throws<ArgumentNullException>(() => QuoteJson.Write(quote, null!));
        Assert.Throws<ArgumentNullException>(() => QuoteJson.Write((Stream)null!, quote));
    }
}
