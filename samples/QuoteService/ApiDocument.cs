using System.Threading;
using System.Threading.Tasks;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace Refinish.Samples.QuoteService;

/// <summary>What the OpenAPI document says beyond the endpoints: what this is, and a request that can be answered.</summary>
internal static class ApiDocument
{
    public static Task Describe(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken stop)
    {
        document.Info = new OpenApiInfo
        {
            Title = "Quotes for refinished bathrooms",
            Version = "1",
            Description = OurShop.Invented + " A request holds the members of a job document that a customer knows; every amount is a value with its unit.",
        };
        document.Paths["/quotes"].Operations![System.Net.Http.HttpMethod.Post].RequestBody!.Content!["application/json"].Example = Ask.Example();
        return Task.CompletedTask;
    }
}
