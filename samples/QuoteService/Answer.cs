using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using UnitsNet;

namespace Refinish.Samples.QuoteService;

/// <summary>A quote as the API gives it. What stands in the way comes with no price at all, never with a price and a footnote.</summary>
internal sealed record Answer(
    Guid Id,
    DateTimeOffset Stored,
    string Notice,
    Area CoatedArea,
    IReadOnlyList<Answer.Objection> Objections,
    IReadOnlyList<Answer.Condition> Conditions,
    IReadOnlyList<Answer.Doubtful> Doubts,
    IReadOnlyList<string> Protection,
    IReadOnlyList<Answer.Breathing> Respirators,
    IReadOnlyList<Answer.Caution> Cautions,
    Answer.PriceOffered? Price,
    IReadOnlyList<Answer.Step> Timeline,
    IReadOnlyList<Answer.Window> Windows,
    IReadOnlyList<Answer.Visit> Visits,
    IReadOnlyList<Answer.Use> Fixtures,
    string Job,
    IReadOnlyList<string> Pictures)
{
    public static Answer Of(Quote quote)
    {
        JobPlan plan = quote.Plan;
        string self = "/quotes/" + quote.Id;
        return new(
            quote.Id,
            quote.Stored,
            OurShop.Invented,
            plan.CoatedArea,
            [.. quote.InTheWay(DisplayUnits.Si)],
            [.. plan.Conditions.Select(condition =>
                new Condition(condition.Id, condition.About, condition.Sentence(DisplayUnits.Si), condition.Remedy))],
            [.. plan.Doubts.Select(doubt =>
                new Doubtful(doubt.Id, doubt.About, doubt.Reading, doubt.Sentence(DisplayUnits.Si), doubt.Remedy))],
            [.. plan.Protection.Select(need => need.ToString())],
            [.. plan.Air.Where(room => room.Hardest is not null).Select(room => new Breathing(room.Room.Id, room.Hardest!.InWords()))],
            [.. plan.Cautions.Select(Caution.Of)],
            quote.Offer is { } offer ? PriceOffered.Of(offer) : null,
            [.. plan.Schedule?.Operations.Select(operation => Step.Of(operation)) ?? []],
            [.. plan.Schedule?.Windows.Select(Window.Of) ?? []],
            [.. plan.Schedule?.Visits.Select(visit => new Visit(visit.Worker, visit.Arrives, visit.Leaves)) ?? []],
            [.. plan.Handover?.Fixtures.Select(one => new Use(one.Procedure.Fixture.Id, one.WaterFrom, one.FullCure)) ?? []],
            "/shop/" + quote.Id + "/job",
            [.. QuotePictures.Of(quote).Select(picture => self + "/pictures/" + Uri.EscapeDataString(picture.Name) + ".svg")]);
    }

    /// <summary>What stands in the way: an identifier to act upon, what it is about, and a sentence to show.</summary>
    internal sealed record Objection(string Id, string About, string Sentence);

    internal sealed record Condition(string Id, string About, string Sentence, string Remedy);

    /// <summary>A reading to look at again before the price is told: the form can mark it by its name.</summary>
    internal sealed record Doubtful(string Id, string About, string? Reading, string Sentence, string Remedy);

    /// <summary>What the hardest comparison of a room that can be judged asks of a respirator, and which kinds fall short.</summary>
    internal sealed record Breathing(string Room, string Sentence);

    /// <summary>What can hurt, and who has to read it: the customer and the occupants get a list of their own.</summary>
    internal sealed record Caution(string Code, string Sentence, string DecidedBy, IReadOnlyList<string> Concerns)
    {
        private static readonly (Audience Audience, string Name)[] Readers =
            [(Audience.Crew, "crew"), (Audience.Customer, "customer"), (Audience.Occupant, "occupant")];

        public static Caution Of(PlannedCaution planned)
        {
            Refinish.Caution caution = planned.Caution;
            return new(caution.Code, caution.Sentence, caution.DecidedBy,
                [.. Readers.Where(reader => caution.Concerns.HasFlag(reader.Audience)).Select(reader => reader.Name)]);
        }
    }

    /// <summary>When the next coat may go on after a coat or a promoter; an end that is null does not come.</summary>
    internal sealed record Window(string Operation, string Sentence, DateTimeOffset? Opens, DateTimeOffset? Closes)
    {
        public static Window Of(ScheduledWindow window) =>
            new(window.Operation.Operation.Id, window.ToString(), window.Opens, window.Closes);
    }

    /// <summary>What the customer pays for what: Σ items = subtotal; less discount, with each tax = total; Σ payments = payable.</summary>
    internal sealed record PriceOffered(
        string Currency, string? Number, IReadOnlyList<Item> Items, decimal Subtotal, decimal Discount, decimal Net,
        IReadOnlyList<Tax> Taxes, decimal Total, decimal Payable, IReadOnlyList<Payment> Payments, DateTime? ValidUntil)
    {
        public static PriceOffered Of(CustomerQuote quote) => new(
            quote.Currency.Code, quote.Terms.Number, [.. quote.Items.Select(Item.Of)], quote.Subtotal, quote.Discount, quote.Net,
            [.. quote.Taxes.Select(tax => new Tax(tax.Rate.Code, tax.Rate.ToString(), tax.Amount, tax.Exemption?.Reason))],
            quote.Total, quote.Payable, [.. quote.Payments.Select(payment => new Payment(payment.Id, payment.ToString(), payment.Amount))],
            quote.Terms.ValidUntil);
    }

    internal sealed record Item(string Id, string Kind, string? Fixture, string Description, decimal Quantity, string Unit, decimal Price)
    {
        public static Item Of(QuoteItem item) =>
            new(item.Id, item.Kind.ToString("G"), item.Fixture, item.Description, item.Quantity, item.Unit.Symbol(), item.Price);
    }

    internal sealed record Tax(string Code, string Name, decimal Amount, string? Exempt);

    internal sealed record Payment(string Id, string When, decimal Amount);

    internal sealed record Step(string Id, string Name, string? Room, IReadOnlyList<string> Fixtures, DateTimeOffset Start,
        DateTimeOffset End, IReadOnlyList<string> People)
    {
        public static Step Of(ScheduledOperation scheduled)
        {
            Operation operation = scheduled.Operation;
            return new(operation.Id, operation.Name, operation.Room, operation.Fixtures, scheduled.Start, scheduled.End, scheduled.People);
        }
    }

    internal sealed record Visit(string Worker, DateTimeOffset Arrives, DateTimeOffset Leaves);

    /// <summary>When a fixture may be used.</summary>
    internal sealed record Use(string Fixture, DateTimeOffset? WaterFrom, DateTimeOffset? FullCure);
}
