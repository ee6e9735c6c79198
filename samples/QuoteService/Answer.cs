using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Jobs;
using UnitsNet;

namespace Refinish.Samples.QuoteService;

/// <summary>A quote as the API gives it. What stands in the way comes with no price at all, never with a price and a footnote.</summary>
internal sealed record Answer(
    Guid Id,
    DateTimeOffset Stored,
    string Notice,
    Area CoatedArea,
    IReadOnlyList<string> Objections,
    IReadOnlyList<string> Conditions,
    IReadOnlyList<string> Protection,
    IReadOnlyList<Answer.Caution> Cautions,
    Answer.PriceOffered? Price,
    IReadOnlyList<Answer.Step> Timeline,
    DateTimeOffset? WaterFrom,
    string Job,
    IReadOnlyList<string> Pictures)
{
    public static Answer Of(Quote quote)
    {
        BathroomPlan plan = quote.Plan;
        string self = "/quotes/" + quote.Id;
        return new(
            quote.Id,
            quote.Stored,
            Shop.Invented,
            plan.CoatedArea,
            [.. quote.InTheWay(DisplayUnits.Si)],
            [.. plan.Conditions.Select(condition => condition.Sentence + ": " + condition.Remedy)],
            [.. plan.Protection.Select(comparison => comparison.ToString())],
            [.. plan.Cautions.Select(caution => new Caution(caution.Sentence, caution.DecidedBy))],
            quote.Price is { Net: decimal net, Tax: decimal tax, Total: decimal total } price
                ? new(price.Book.Currency, [.. price.Lines.Select(line => new Line(line.Code, line.Description, line.Quantity, line.Unit, line.Rate, line.Amount))], net, tax, total)
                : null,
            [.. plan.Schedule?.Steps.Select(step => new Step(step.Step.Name, step.Start, step.End)) ?? []],
            plan.Handover?.WaterFrom,
            self + "/job",
            [.. QuotePictures.Of(plan).Select(picture => self + "/pictures/" + picture.Name + ".svg")]);
    }

    internal sealed record Caution(string Sentence, string DecidedBy);

    internal sealed record PriceOffered(string Currency, IReadOnlyList<Line> Lines, decimal Net, decimal Tax, decimal Total);

    internal sealed record Line(string Code, string Description, decimal Quantity, string Unit, decimal Rate, decimal Amount);

    internal sealed record Step(string Name, DateTimeOffset Start, DateTimeOffset End);
}
