using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text.Json.Nodes;
using Refinish.Jobs;
using Xunit;

namespace Refinish.Json.Tests;

/// <summary>What a stored plan told people, read from its document alone and held against the plan that wrote it.</summary>
public class StoredFiguresTests
{
    [Theory]
    [InlineData("bathroom", DisplayUnits.Si)]
    [InlineData("bathroom", DisplayUnits.UsCustomary)]
    [InlineData("everything", DisplayUnits.UsCustomary)]
    [InlineData("least", DisplayUnits.Si)]
    public void The_figures_are_those_of_the_plan(string which, DisplayUnits units)
    {
        JobPlan plan = Examples.Named(which).Plan();
        StoredFigures stored = PlanJson.ReadFigures(PlanJson.Write(plan, new JsonLayout { Units = units }));
        Assert.Empty(stored.Faults);
        PlanFigures figures = stored.Figures;
        Assert.Equal((plan.Job.Id, plan.Price?.Total, plan.Price?.Cost, plan.Price?.Payable), (figures.Job, figures.Total, figures.Cost, figures.Payable));
        Assert.Equal(plan.Price?.Total is null ? [] : plan.Price.Lines.Select(line => (line.Id, line.Quantity, line.Price)), figures.Lines.Select(line => (line.Id, line.Quantity, line.Price)));
        Assert.Equal((plan.Schedule?.Visits ?? []).Select(visit => (visit.Worker, visit.Arrives)), figures.Visits.Select(visit => (visit.Worker, visit.Arrives)));
        Assert.Equal(plan.Schedule is { IsPossible: true } found ? found.Trips : null, figures.Trips);
        Assert.Equal(plan.Handover?.WaterFrom, figures.WaterFrom);
        Assert.Equal(plan.Objections.Select(objection => objection.Sentence(units)), figures.Objections.Select(objection => objection.Sentence(units)));
        Assert.Equal(plan.Cautions.Select(planned => planned.Caution.Code), figures.Cautions.Select(caution => caution.Id));
        Assert.Equal(plan.Planned.Select(procedure => procedure.Fixture.Name), figures.Fixtures.Select(fixture => fixture.Name));
        Assert.Equal([], stored.Today().Sentences(units));
        Assert.Equal((plan.Job.Name, plan.Quote is null, plan.Job.Terms.Revision, plan.Quote?.Terms.ValidUntil),
            (figures.Name, figures.Quote is null, figures.Quote is null ? plan.Job.Terms.Revision : figures.Quote.Revision, figures.Quote?.ValidUntil));
        Assert.Equal(plan.Quote?.Items.Select(item => (item.Id, item.Description, item.Fixture, (QuoteItemKind?)item.Kind, item.Quantity, item.Price, item.WithTax)) ?? [],
            figures.Quote?.Items.Select(item => (item.Id, item.Description, item.Fixture, item.Kind, item.Quantity, item.Price, item.WithTax)) ?? []);
        Assert.Equal(plan.Quote?.Payments.Select(payment => (payment.Id, payment.Stage.Name, payment.Stage.When, payment.Amount)) ?? [],
            figures.Quote?.Payments.Select(payment => (payment.Id, payment.Name, payment.When, payment.Amount)) ?? []);
        Assert.Equal(plan.Quote?.Cautions.Select(planned => planned.Caution.Code) ?? [], figures.Quote?.Cautions ?? []);
        Assert.Empty(stored.Today().For(Estimating.LineReader.Customer).Changes);
        Assert.True(PlanJson.Read(PlanJson.Write(plan)).Changes.IsEmpty);
        Assert.Equal(typeof(JobPlan).Assembly.GetName().Version!.ToString(3), stored.Library);
        Assert.Equal(2, stored.Version);
    }

    [Theory]
    [InlineData("$.job.shop.guns", "0", "$.job.shop.guns")]
    [InlineData("$.job.version", "9", "$.job.version")]
    [InlineData("$.version", "1", "$.version")]
    [InlineData("$.job.fixtures[0].fixture.kind", "\"teapot\"", "$.job.fixtures[0].fixture.kind")]
    [InlineData("$.job.shop.prices.discountForFriends", "1", "$.job.shop.prices.discountForFriends")]
    public void A_job_that_is_refused_today_leaves_the_figures_readable(string at, string put, string path)
    {
        JobPlan plan = Examples.Bathroom().Plan();
        string json = FaultTests.Put(PlanJson.Write(plan), at, put);
        Assert.False(PlanJson.TryRead(json, out _, out _));
        StoredFigures stored = PlanJson.ReadFigures(json);
        Assert.Null(stored.Job);
        Assert.Equal((plan.Price!.Total, plan.Price.Lines.Count), (stored.Figures.Total, stored.Figures.Lines.Count));
        Assert.Equal(path, Assert.Single(stored.Faults).Path);
        PlanChanges today = stored.Today();
        PlanChange refusal = Assert.Single(today.Changes);
        Assert.Equal((ChangeSubject.Refusal, path), (refusal.Subject, refusal.About));
        Assert.StartsWith("Today's library refuses the input: " + path + ": ", refusal.ToString(), StringComparison.Ordinal);
        Assert.Null(today.Total);
    }

    [Fact]
    public void A_price_that_somebody_changed_is_told_with_its_size()
    {
        JobPlan plan = Examples.Bathroom().Plan();
        JsonNode root = JsonNode.Parse(PlanJson.Write(plan))!;
        JsonArray lines = root["results"]!["price"]!["lines"]!.AsArray();
        JsonNode travel = lines.Single(line => (string?)line!["id"] == "travel")!;
        decimal price = travel["price"]!.GetValue<decimal>();
        travel["price"] = price - 10;
        root["results"]!["price"]!["total"] = plan.Price!.Total - 10;
        StoredPlan stored = PlanJson.Read(root.ToJsonString());
        Assert.Equal((plan.Price.Total - 10, 10m), (stored.Figures.Total, stored.Changes.Total));

        // Its own figures stayed, so it is what the line carries that moved.
        PlanChange change = Assert.Single(stored.Changes.Changes);
        Assert.Equal((ChangeSubject.SharedCosts, 10m, 0m), (change.Subject, change.Price, change.Cost));
        Assert.Equal(["$.results.price.lines[?@.id=='travel'].price", "$.results.price.total"], stored.Differences.Select(difference => difference.Path));
    }

    /// <summary>Money first by size, then times, then the rest.</summary>
    [Fact]
    public void Differences_come_in_order_of_money_and_time()
    {
        JobPlan plan = Examples.Bathroom().Plan();
        string json = PlanJson.Write(plan);
        foreach ((string at, string put) in ((string, string)[])[("$.results.coatedArea.value", "1"), ("$.results.handover.spots", "1"),
            ("$.results.price.cost", "1"), ("$.results.price.tax", "1000000")])
        {
            json = FaultTests.Put(json, at, put);
        }

        Assert.Equal(["$.results.price.tax", "$.results.price.cost", "$.results.handover.spots", "$.results.coatedArea"],
            PlanJson.Read(json).Differences.Select(difference => difference.Path));
    }

    /// <summary>A plan that was stored before lines had cost and price in one.</summary>
    [Fact]
    public void A_plan_of_an_earlier_library_still_says_what_was_told()
    {
        string json = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Golden", "plan-2-bathroom-earlier.json"));
        JsonNode results = JsonNode.Parse(json)!["results"]!;
        StoredFigures stored = PlanJson.ReadFigures(json);
        Assert.Equal((decimal)results["price"]!["total"]!, stored.Figures.Total);
        Assert.Equal((string?)results["price"]!["currency"], stored.Figures.Currency);
        Assert.Equal(results["handover"]!["fixtures"]!.AsArray().Select(fixture => (string)fixture!["id"]!), stored.Figures.Fixtures.Select(fixture => fixture.Id));
        Assert.Equal(DateTimeOffset.Parse((string)results["handover"]!["waterFrom"]!, System.Globalization.CultureInfo.InvariantCulture), stored.Figures.WaterFrom);
        Assert.NotEmpty(stored.Today().Changes);

        // It had no quote yet, so that a customer is told the difference of the whole price.
        Assert.Null(stored.Figures.Quote);
        Assert.DoesNotContain(stored.Today().For(Estimating.LineReader.Customer).Changes, change => change.Subject is ChangeSubject.Labour or ChangeSubject.Material);
    }

    [Fact]
    public void Whatever_is_taken_out_the_rest_is_read()
    {
        string json = PlanJson.Write(Examples.Bathroom().Plan(), new JsonLayout { IsIndented = false });
        Random random = new(7);
        int readable = 0;
        for (int i = 0; i < 300; i++)
        {
            JsonNode root = JsonNode.Parse(json)!;
            string path = Strip(root, i % 3 == 0 ? root["results"]!["price"]! : i % 3 == 1 ? root["results"]! : root, random);
            StoredFigures stored = PlanJson.ReadFigures(root.ToJsonString());
            readable += stored.Figures.Total is not null ? 1 : 0;
            PlanChanges changes = PlanChanges.Between(stored.Figures, stored.Figures, []);
            Assert.True(changes.Changes.All(change => change.Subject == ChangeSubject.Remainder) || changes.IsEmpty, path);
        }

        Assert.InRange(readable, 200, 300);
    }

    [Fact]
    public void What_is_no_document_at_all_is_refused()
    {
        Assert.Equal(JsonFaultKind.Malformed, Assert.Throws<RefinishJsonException>(() => PlanJson.ReadFigures("{")).Faults[0].Kind);
        Assert.Equal(JsonFaultKind.WrongType, Assert.Throws<RefinishJsonException>(() => PlanJson.ReadFigures("[]")).Faults[0].Kind);
        Assert.Throws<ArgumentNullException>(() => PlanJson.ReadFigures((string)null!));
        StoredFigures nothing = PlanJson.ReadFigures("{}"u8.ToArray().AsMemory());
        Assert.Equal((null, 0, null), (nothing.Figures.Total, nothing.Figures.Lines.Count, nothing.Job));
        Assert.NotEmpty(nothing.Today().Changes);
    }

    [Fact]
    public void A_figure_in_another_form_is_told_and_left_out()
    {
        string json = FaultTests.Put(PlanJson.Write(Examples.Bathroom().Plan()), "$.results.price.total", "\"a lot\"");
        json = FaultTests.Put(json, "$.results.schedule.visits[0].arrives", "\"at eight\"");
        StoredFigures stored = PlanJson.ReadFigures(json);
        Assert.Null(stored.Figures.Total);
        Assert.NotNull(stored.Job);
        Assert.Equal(["$.results.price.total", "$.results.schedule.visits[0].arrives"], stored.Faults.Select(fault => fault.Path));
        Assert.Contains(stored.Today().Changes, change => change is { Subject: ChangeSubject.Price, Kind: ChangeKind.Added });
    }

    // Takes out a field or an entry, or puts another kind of value in its place.
    private static string Strip(JsonNode root, JsonNode node, Random random)
    {
        while (random.Next(4) > 0)
        {
            JsonNode[] below = node switch
            {
                JsonObject owner => [.. owner.Select(pair => pair.Value).OfType<JsonNode>().Where(child => child is not JsonValue)],
                JsonArray list => [.. list.OfType<JsonNode>().Where(child => child is not JsonValue)],
                _ => [],
            };
            if (below.Length == 0)
            {
                break;
            }

            node = below[random.Next(below.Length)];
        }

        string path = node == root ? "$" : node.GetPath();
        if (node is JsonObject { Count: > 0 } fields)
        {
            string name = fields.ElementAt(random.Next(fields.Count)).Key;
            path += "." + name;
            if (random.Next(2) == 0)
            {
                fields.Remove(name);
            }
            else
            {
                fields[name] = (new Func<JsonNode?>[] { () => 7, () => "seven", () => new JsonArray(), () => new JsonObject(), () => null, () => true })[random.Next(6)]();
            }
        }
        else if (node is JsonArray { Count: > 0 } items)
        {
            items.RemoveAt(random.Next(items.Count));
        }

        return path;
    }
}
