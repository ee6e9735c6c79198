using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Refinish.Samples.QuoteService;

/// <summary>What went wrong, as problem details (RFC 9457).</summary>
internal static class Problems
{
    /// <summary>Values that the library refuses, in its own words, by JSON path.</summary>
    public static ProblemHttpResult Refused(IEnumerable<(string Path, string Sentence)> faults) => TypedResults.Problem(new HttpValidationProblemDetails(
        faults.GroupBy(fault => fault.Path, StringComparer.Ordinal).ToDictionary(path => path.Key, path => path.Select(fault => fault.Sentence).ToArray()))
    {
        Status = StatusCodes.Status422UnprocessableEntity,
        Title = "The request holds values that cannot be.",
    });

    public static ProblemHttpResult NoSuchQuote(Guid id) =>
        TypedResults.Problem("There is no quote " + id + ".", statusCode: StatusCodes.Status404NotFound, title: "No such quote.");

    public static ProblemHttpResult NoPrice(Guid id) =>
        TypedResults.Problem("Something stands in the way of " + id + ".", statusCode: StatusCodes.Status404NotFound, title: "No price.");

    public static ProblemHttpResult NoSuchPicture(string name) =>
        TypedResults.Problem("This quote has no picture " + name + ".", statusCode: StatusCodes.Status404NotFound, title: "No such picture.");

    /// <summary>A body that is no JSON: what the reader says, with its place.</summary>
    public static void SayWhere(ProblemDetailsContext context)
    {
        if (context.Exception is BadHttpRequestException bad)
        {
            context.ProblemDetails.Title = "The request cannot be read.";
            context.ProblemDetails.Detail = bad.InnerException is JsonException unreadable ? unreadable.Message : bad.Message;
        }
    }
}
