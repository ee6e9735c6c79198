using System;
using System.Collections.Generic;
using System.Text.Json;
using Refinish.Jobs;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>What a plan's document holds: the job, and the results of whoever wrote it.</summary>
/// <param name="Library">Version of the library that planned.</param>
/// <param name="Units">Units in which the results are written.</param>
/// <param name="Job">The job.</param>
/// <param name="Results">The results, calculated or as stored.</param>
internal sealed record PlanDocument(string Library, DisplayUnits Units, Job Job, PlanDocumentResults Results);

/// <summary>Results to be written, or as they were found.</summary>
internal sealed record PlanDocumentResults(JobPlan? Calculated, JsonElement Stored);

/// <summary>A plan as a document of its own.</summary>
internal static class PlanShapes
{
    public static DocumentShape<PlanDocument> Plan { get; } = new("plan", 2, new Fields<PlanDocument>("plan")
        .With("library", Text, it => it.Library, out Slot<string> library)
        .With("units", new WordShape<DisplayUnits>(), it => it.Units, out Slot<DisplayUnits> units)
        .With("job", JobShapes.Job, it => it.Job, out Slot<Job> job)
        .With("results", new StoredResults(), it => it.Results, out Slot<PlanDocumentResults> results)
        .Making(v => new PlanDocument(library(v), units(v), job(v), results(v))));

    /// <summary>The document of a plan as this library makes it.</summary>
    public static PlanDocument Of(JobPlan plan, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(typeof(JobPlan).Assembly.GetName().Version!.ToString(3), units, plan.Job, new PlanDocumentResults(plan, default));
    }

    /// <summary>Results are written from the plan; read, they are kept as they stand, to be held against a new plan.</summary>
    private sealed class StoredResults : Shape<PlanDocumentResults>, IHolderShape
    {
        public Shape Item => PlanResults.Plan;

        public override IEnumerable<PlanDocumentResults> StandIns => [new(null, default)];

        public override Outcome Read(JsonElement json, Reading reading, out PlanDocumentResults value)
        {
            value = new(null, json);
            if (json.ValueKind == JsonValueKind.Object)
            {
                return Outcome.Read;
            }

            reading.WrongType(json, "an object with the results");
            return Outcome.Nothing;
        }

        public override void Write(Utf8JsonWriter json, PlanDocumentResults value, Writing to) =>
            PlanResults.Plan.Write(json, value.Calculated!, to);
    }
}
