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
            [.. plan.Doubts.Select(doubt => new Doubtful(doubt.Id, doubt.About, doubt.Reading, doubt.Sentence(DisplayUnits.Si), doubt.Remedy))],
            [.. plan.Protection.Select(need => need.ToString())],
            [.. plan.Air.Where(room => room.Hardest is not null).Select(room => new Breathing(room.Room.Id, room.Hardest!.InWords()))],
            [.. plan.Cautions.Select(Caution.Of)],
            quote.Price is { Net: decimal net, Tax: decimal tax, Total: decimal total } price
                ? new(price.Book.Currency.Code, [.. price.Lines.Select(line => Line.Of(line))], net, tax, total)
                : null,
            [.. plan.Schedule?.Operations.Select(operation => Step.Of(operation)) ?? []],
            [.. plan.Schedule?.Windows.Select(Window.Of) ?? []],
            [.. plan.Schedule?.Visits.Select(visit => new Visit(visit.Worker, visit.Arrives, visit.Leaves)) ?? []],
            [.. plan.Handover?.Fixtures.Select(one => new Use(one.Procedure.Fixture.Id, one.WaterFrom, one.FullCure)) ?? []],
            self + "/job",
            [.. QuotePictures.Of(plan).Select(picture => self + "/pictures/" + Uri.EscapeDataString(picture.Name) + ".svg")]);
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

    internal sealed record PriceOffered(string Currency, IReadOnlyList<Line> Lines, decimal Net, decimal Tax, decimal Total);

    internal sealed record Line(string Id, string? Fixture, string Description, decimal Quantity, string Unit, decimal Price)
    {
        public static Line Of(EstimateLine line) =>
            new(line.Id, line.Fixture, line.Description, line.Quantity, line.Unit.Symbol(), line.Price);
    }

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
