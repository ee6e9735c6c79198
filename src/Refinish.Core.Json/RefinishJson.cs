using System;
using System.IO;
using System.Text.Json.Serialization.Metadata;
using Refinish.Json.Shapes;

namespace Refinish.Json;

/// <summary>The library's types and the quantities of UnitsNet inside an app's own JSON, and the published schemas.</summary>
public static class RefinishJson
{
    private static readonly ShapeResolver Metric = new(DisplayUnits.Si);
    private static readonly Lazy<ShapeResolver> UsCustomary = new(() => new ShapeResolver(DisplayUnits.UsCustomary));

    /// <summary>
    /// Serves jobs, shops, premises, fixtures, measurements, surveys, defects, products, systems, prices, calendars, sources and quantities
    /// to <see cref="System.Text.Json.JsonSerializer"/>, in metric units. Everything else is left to the other resolvers of the chain.
    /// </summary>
    /// <remarks>
    /// A <see cref="Jobs.Job"/> keeps its format and version wherever it stands. A quantity is read in its SI base unit, as the library
    /// holds it. A fault is a <see cref="RefinishJsonException"/> whose paths begin at the root of the whole document. It needs no
    /// reflection.
    /// </remarks>
    /// <example><code>
    /// JsonSerializerOptions options = new();
    /// options.TypeInfoResolverChain.Insert(0, RefinishJson.Resolver);
    /// string json = JsonSerializer.Serialize(Length.FromMillimeters(1346), options);     // {"value":1346,"unit":"mm"}
    /// </code></example>
    public static IJsonTypeInfoResolver Resolver => Metric;

    /// <summary>The same, writing the units of one's choice. Any known unit is read by either.</summary>
    /// <param name="units">The units in which quantities are written where that loses nothing.</param>
    /// <returns>The resolver.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a named value.</exception>
    /// <example><code>
    /// JsonSerializerOptions options = new();
    /// options.TypeInfoResolverChain.Insert(0, RefinishJson.ResolverFor(DisplayUnits.UsCustomary));
    /// string json = JsonSerializer.Serialize(Length.FromInches(60), options);            // {"value":60,"unit":"in"}
    /// </code></example>
    public static IJsonTypeInfoResolver ResolverFor(DisplayUnits units) => units switch
    {
        DisplayUnits.Si => Metric,
        DisplayUnits.UsCustomary => UsCustomary.Value,
        _ => throw new ArgumentOutOfRangeException(nameof(units), "units is not a named value."),
    };

    /// <summary>
    /// The JSON Schema (draft 2020-12) of the document that <see cref="JobJson"/> writes. What it cannot say, such as a range in any unit,
    /// the reader checks.
    /// </summary>
    /// <example><code>
    /// JsonNode schema = JsonNode.Parse(RefinishJson.JobSchema)!;
    /// string id = (string)schema["$id"]!;                // "urn:refinish:schema:job:2"
    /// </code></example>
    public static string JobSchema => Published("job-2.schema.json");

    /// <summary>The JSON Schema (draft 2020-12) of the document that <see cref="PlanJson"/> writes; it holds that of the job.</summary>
    public static string PlanSchema => Published("plan-2.schema.json");

    /// <summary>The JSON Schema (draft 2020-12) of the document that <see cref="QuoteJson"/> writes.</summary>
    public static string QuoteSchema => Published("quote-1.schema.json");

    private static string Published(string file)
    {
        using Stream stream = typeof(RefinishJson).Assembly.GetManifestResourceStream(file)!;
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}
