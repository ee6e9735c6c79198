using System;
using System.Collections.Generic;
using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Routing;
using Refinish.Jobs;
using Refinish.Json;
using Refinish.Pictures;

namespace Refinish.Samples.QuoteService;

internal static class QuoteEndpoints
{
    private const string Problem = "application/problem+json";

    public static void MapQuotes(this IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder quotes = routes.MapGroup("/quotes").WithTags("Quotes");
        quotes.MapPost("/", Create).WithName("CreateQuote").WithSummary("Plans a bathroom and stores the quote.")
            .ProducesProblem(StatusCodes.Status400BadRequest).ProducesValidationProblem(StatusCodes.Status422UnprocessableEntity, Problem);
        quotes.MapGet("/{id:guid}", Get).WithName("GetQuote").WithSummary("A stored quote.").ProducesProblem(StatusCodes.Status404NotFound);
        quotes.MapGet("/{id:guid}/pictures/{name}.svg", GetPicture).WithName("GetPicture").WithSummary("A picture of the quote, in metric or US customary units.")
            .Produces(StatusCodes.Status200OK, contentType: "image/svg+xml").ProducesProblem(StatusCodes.Status404NotFound);

        RouteGroupBuilder shop = routes.MapGroup("/shop").WithTags("Shop").AddEndpointFilter<ShopOnly>();
        shop.MapGet("/{id:guid}/job", GetJob).WithName("GetJob").WithSummary("The job document that the quote follows from, for the shop.")
            .Produces(StatusCodes.Status200OK, contentType: "application/json").ProducesProblem(StatusCodes.Status401Unauthorized)
            .ProducesProblem(StatusCodes.Status404NotFound);
        shop.MapGet("/{id:guid}/lines", GetLines).WithName("GetLines")
            .WithSummary("What the quote costs and brings, line by line, for the shop.")
            .ProducesProblem(StatusCodes.Status401Unauthorized).ProducesProblem(StatusCodes.Status404NotFound);
    }

    private static Results<CreatedAtRoute<Answer>, ProblemHttpResult> Create(JsonElement ask, QuoteStore store)
    {
        if (ask.ValueKind != JsonValueKind.Object)
        {
            return Problems.Refused([("$", "A request is an object with name, start, premises and fixtures.")]);
        }

        if (!Ask.TryRead(JsonObject.Create(ask)!, out Job? job, out IReadOnlyList<(string Path, string Sentence)> faults))
        {
            return Problems.Refused(faults);
        }

        Quote quote = store.Add(job!);
        return TypedResults.CreatedAtRoute(Answer.Of(quote), "GetQuote", new RouteValueDictionary { ["id"] = quote.Id });
    }

    private static Results<Ok<Answer>, ProblemHttpResult> Get(Guid id, QuoteStore store) =>
        store.Find(id) is Quote quote ? TypedResults.Ok(Answer.Of(quote)) : Problems.NoSuchQuote(id);

    private static Results<ContentHttpResult, ProblemHttpResult> GetJob(Guid id, QuoteStore store) =>
        store.Find(id) is Quote quote ? TypedResults.Content(JobJson.Write(quote.Plan.Job), "application/json") : Problems.NoSuchQuote(id);

    private static Results<Ok<ShopLines>, ProblemHttpResult> GetLines(Guid id, QuoteStore store) => store.Find(id) switch
    {
        { Price: { } price } => TypedResults.Ok(ShopLines.Of(price)),
        null => Problems.NoSuchQuote(id),
        _ => Problems.NoPrice(id),
    };

    private static Results<ContentHttpResult, ProblemHttpResult> GetPicture(Guid id, string name, QuoteStore store, bool us = false, bool narrow = false)
    {
        if (store.Find(id) is not Quote quote)
        {
            return Problems.NoSuchQuote(id);
        }

        PictureStyle style = new() { Units = us ? DisplayUnits.UsCustomary : DisplayUnits.Si, Width = narrow ? 320 : 720 };
        return QuotePictures.Find(quote, name) is Picture picture
            ? TypedResults.Content(picture.ToSvg(style), "image/svg+xml")
            : Problems.NoSuchPicture(name);
    }
}
