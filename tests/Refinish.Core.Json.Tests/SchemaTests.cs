using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Refinish.Jobs;
using Refinish.Json.Shapes;
using Xunit;

namespace Refinish.Json.Tests;

public class SchemaTests
{
    private static readonly JsonSchema Job = JsonSchema.FromText(RefinishJson.JobSchema);
    private static readonly JsonSchema Quote = JsonSchema.FromText(RefinishJson.QuoteSchema);
    private static readonly JsonSchema Plan = JsonSchema.FromText(RefinishJson.PlanSchema);

    [Theory]
    [InlineData("job-2.schema.json")]
    [InlineData("plan-2.schema.json")]
    [InlineData("quote-1.schema.json")]
    public void The_published_schema_is_the_one_that_shapes_and_documentation_give(string file)
    {
        string now = file[0] == 'j'
            ? SchemaText.Of(JobShapes.Job, "A job of Refinish.Core, format refinish/job, version 2", out IReadOnlyList<string> unexplained)
            : file[0] == 'q' ? SchemaText.Of(SheetShapes.Quote, "A customer's quote of Refinish.Core, format refinish/quote, version 1", out unexplained)
            : SchemaText.Of(PlanShapes.Plan, "A plan of Refinish.Core, format refinish/plan, version 2", out unexplained);
        string published = Path.Combine(Repository(), "docs", "schema", file);
        if (!File.Exists(published) || File.ReadAllText(published).ReplaceLineEndings("\n") != now)
        {
            string received = Path.Combine(AppContext.BaseDirectory, file);
            File.WriteAllText(received, now);
            Assert.Fail("Shapes and schema differ. If the change keeps to the version, copy " + received + " over docs/schema/" + file
                + " and commit the difference.");
        }

        if (file[0] == 'j')
        {
            Assert.Equal([], unexplained);
        }
    }

    [Fact]
    public void The_schema_that_ships_is_the_published_one()
    {
        Assert.Equal(File.ReadAllText(Path.Combine(Repository(), "docs", "schema", "job-2.schema.json")), RefinishJson.JobSchema);
        Assert.Equal(File.ReadAllText(Path.Combine(Repository(), "docs", "schema", "plan-2.schema.json")), RefinishJson.PlanSchema);
        Assert.Equal(File.ReadAllText(Path.Combine(Repository(), "docs", "schema", "quote-1.schema.json")), RefinishJson.QuoteSchema);
    }

    [Fact]
    public void The_schemas_are_schemas_of_draft_2020_12()
    {
        foreach (string text in (string[])[RefinishJson.JobSchema, RefinishJson.PlanSchema, RefinishJson.QuoteSchema])
        {
            Assert.True(IsValid(MetaSchemas.Draft202012, text));
        }
    }

    [Theory]
    [InlineData("bathroom")]
    [InlineData("everything")]
    [InlineData("least")]
    public void Written_documents_keep_to_the_schema_in_either_system_of_units(string which)
    {
        Job job = Examples.Named(which);
        foreach (DisplayUnits units in Enum.GetValues<DisplayUnits>())
        {
            JsonLayout layout = new() { Units = units };
            Assert.Equal([], Errors(Job, JobJson.Write(job, layout)));
            JobPlan plan = job.Plan();
            Assert.Equal([], Errors(Plan, PlanJson.Write(plan, layout)));
            if (plan.Quote is CustomerQuote quote)
            {
                Assert.Equal([], Errors(Quote, QuoteJson.Write(quote, layout)));
            }
        }
    }

    /// <summary>
    /// What the schema can say it says, and what it cannot say is left to the reader: no document is refused by the schema alone.
    /// </summary>
    [Theory]
    [MemberData(nameof(FaultTests.Broken), MemberType = typeof(FaultTests))]
    public void A_broken_document_is_refused_by_the_schema_where_it_can_say_so(string at, string json, bool inSchema, string path,
        JsonFaultKind kind, string names)
    {
        _ = (path, names);
        string document = FaultTests.Put(JobJson.Write(Examples.Bathroom()), at, json);
        if (kind is JsonFaultKind.DuplicateField or JsonFaultKind.Malformed || json is "1e999" or "1e300" or "1e40")
        {
            return;
        }

        Assert.Equal(!inSchema, IsValid(Job, document));
    }

    /// <summary>The list of every place that was looked at takes most of the time, so it is made only for a document that fails.</summary>
    private static string[] Errors(JsonSchema schema, string document) => IsValid(schema, document)
        ? []
        : [.. (Evaluate(schema, document, OutputFormat.List).Details ?? []).Where(detail => detail.Errors is not null)
            .Select(detail => detail.InstanceLocation + ": " + string.Join(", ", detail.Errors!.Values)), "not valid"];

    private static bool IsValid(JsonSchema schema, string document) => Evaluate(schema, document, OutputFormat.Flag).IsValid;

    private static EvaluationResults Evaluate(JsonSchema schema, string document, OutputFormat format)
    {
        using JsonDocument parsed = JsonDocument.Parse(document);
        return schema.Evaluate(parsed.RootElement, new EvaluationOptions { OutputFormat = format });
    }

    private static string Repository()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Refinish.Core.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests are not run from within the repository.");
    }
}
