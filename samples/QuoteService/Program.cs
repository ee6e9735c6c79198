using System;
using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using Refinish.Json;
using Refinish.Samples.QuoteService;
using Refinish.Samples.QuoteService.Pages;

WebApplicationBuilder builder = WebApplication.CreateBuilder(args);
builder.WebHost.ConfigureKestrel(kestrel => kestrel.Limits.MaxRequestBodySize = 256 * 1024);
builder.Services.AddSingleton(TimeProvider.System);
builder.Services.AddSingleton<QuoteStore>();
builder.Services.AddRazorComponents();
builder.Services.AddOpenApi(openApi => openApi.AddDocumentTransformer(ApiDocument.Describe));
builder.Services.ConfigureHttpJsonOptions(json =>
{
    json.SerializerOptions.AllowDuplicateProperties = false;
    json.SerializerOptions.TypeInfoResolverChain.Insert(0, RefinishJson.Resolver);
});

// A body that is no JSON is a fault of the document like any other: said as problem details, with its place.
builder.Services.Configure<RouteHandlerOptions>(routes => routes.ThrowOnBadRequest = true);
builder.Services.AddProblemDetails(problems => problems.CustomizeProblemDetails = Problems.SayWhere);

WebApplication app = builder.Build();
app.Services.GetRequiredService<QuoteStore>().Create();
app.UseExceptionHandler(new ExceptionHandlerOptions
{
    SuppressDiagnosticsCallback = failed => failed.Exception is BadHttpRequestException,
    StatusCodeSelector = error => error is BadHttpRequestException bad ? bad.StatusCode : StatusCodes.Status500InternalServerError,
});
app.UseStatusCodePages();
app.UseStaticFiles();
app.MapOpenApi();
app.MapQuotes();
app.MapPages();
app.Run();
