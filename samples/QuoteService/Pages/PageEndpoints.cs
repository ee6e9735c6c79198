using System;
using System.Collections.Generic;
using System.Threading.Tasks;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Routing;
using Refinish.Jobs;

namespace Refinish.Samples.QuoteService.Pages;

/// <summary>The form and its answer as plain pages. The form is read as the same request that the API takes, so there is one set of rules.</summary>
internal static class PageEndpoints
{
    public static void MapPages(this IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder pages = routes.MapGroup(string.Empty).ExcludeFromDescription();
        pages.MapGet("/", (TimeProvider time, bool us = false) => Show(New(time, us)));
        pages.MapPost("/", Send);
        pages.MapGet("/sheets/{id:guid}", (Guid id, QuoteStore store, bool us = false) => store.Find(id) is Quote quote
            ? new RazorComponentResult<QuotePage>(new { Quote = quote, Us = us })
            : (IResult)new RazorComponentResult<MissingPage> { StatusCode = StatusCodes.Status404NotFound });
        pages.MapGet("/shop/{id:guid}", (Guid id, QuoteStore store, bool us = false) => store.Find(id) is Quote quote
            ? new RazorComponentResult<ShopPage>(new { Quote = quote, Us = us })
            : (IResult)new RazorComponentResult<MissingPage> { StatusCode = StatusCodes.Status404NotFound }).AddEndpointFilter<ShopOnly>();
    }

    // Nothing here belongs to a signed-in person, so there is no forged request to guard against.
    private static async Task<IResult> Send(HttpRequest request, QuoteStore store, TimeProvider time, bool us = false)
    {
        Form form = New(time, us);
        form.Fill(await request.ReadFormAsync());
        if (Ask.TryRead(form.ToAsk(), out Job? job, out IReadOnlyList<(string Path, string Sentence)> faults))
        {
            return TypedResults.Redirect("/sheets/" + store.Add(job!).Id + (us ? "?us=true" : string.Empty));
        }

        form.Mark(faults);
        return Show(form, StatusCodes.Status422UnprocessableEntity);
    }

    private static RazorComponentResult<AskPage> Show(Form form, int status = StatusCodes.Status200OK) => new(new { Form = form }) { StatusCode = status };

    // Tomorrow at eight by the shop's clock.
    private static Form New(TimeProvider time, bool us) =>
        new(us ? DisplayUnits.UsCustomary : DisplayUnits.Si, time.GetUtcNow().ToOffset(OurShop.Clock).Date.AddDays(1).AddHours(8));
}
