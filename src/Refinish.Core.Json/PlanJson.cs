using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using System.IO;
using System.Text.Json;
using Refinish.Jobs;
using Refinish.Json.Shapes;

namespace Refinish.Json;

/// <summary>
/// A plan as a JSON document for readers in any language: the whole job and, beside it, its results with their units, limits, sources and cautions, in
/// format <c>refinish/plan</c>, version 1.
/// </summary>
/// <remarks>
/// Results are written to twelve figures. Read again, the job is planned anew and every stored result is held against the new one; what differs is told,
/// not replaced. Whoever shows the results to people shows the cautions too.
/// </remarks>
/// <example><code>
/// static bool StillTheSame(string json) => PlanJson.Read(json).Agrees;
/// </code></example>
public static class PlanJson
{
    /// <summary>The plan as text.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="layout">Units and layout; metric and indented when left out.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is missing.</exception>
    /// <exception cref="NotSupportedException">The job holds a kind of fixture of one's own or a time zone that is not known by its name.</exception>
    public static string Write(BathroomPlan plan, JsonLayout? layout = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Document.Write(PlanShapes.Plan, PlanShapes.Of(plan, (layout ?? JsonLayout.Default).Units), layout);
    }

    /// <summary>Writes the plan as UTF-8.</summary>
    /// <param name="stream">Where to; it is left open.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="layout">Units and layout; metric and indented when left out.</param>
    /// <exception cref="ArgumentNullException">The stream or the plan is missing.</exception>
    /// <exception cref="NotSupportedException">The job holds a kind of fixture of one's own or a time zone that is not known by its name.</exception>
    public static void Write(Stream stream, BathroomPlan plan, JsonLayout? layout = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Document.Write(PlanShapes.Plan, PlanShapes.Of(plan, (layout ?? JsonLayout.Default).Units), stream, layout);
    }

    /// <summary>Writes the plan as one value of a larger document.</summary>
    /// <param name="json">The writer, which stands where a value may come.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="units">The units in which quantities are written.</param>
    /// <exception cref="ArgumentNullException">The writer or the plan is missing.</exception>
    /// <exception cref="NotSupportedException">The job holds a kind of fixture of one's own or a time zone that is not known by its name.</exception>
    public static void Write(Utf8JsonWriter json, BathroomPlan plan, DisplayUnits units = DisplayUnits.Si)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(plan);
        PlanShapes.Plan.Write(json, PlanShapes.Of(plan, units), units);
    }

    /// <summary>Reads a plan from text.</summary>
    /// <param name="json">The document.</param>
    /// <returns>The job planned again, and where the stored results differ.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is missing.</exception>
    /// <exception cref="RefinishJsonException">Something is wrong with the document; all that was found is listed.</exception>
    public static StoredPlan Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        return Document.Read(StoredPlanShape.Only, () => JsonDocument.Parse(json));
    }

    /// <summary>Reads a plan from UTF-8.</summary>
    /// <param name="stream">The document; it is read to its end and left open.</param>
    /// <returns>The job planned again, and where the stored results differ.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stream"/> is missing.</exception>
    /// <exception cref="RefinishJsonException">Something is wrong with the document; all that was found is listed.</exception>
    public static StoredPlan Read(Stream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        return Document.Read(StoredPlanShape.Only, () => JsonDocument.Parse(stream));
    }

    /// <summary>Reads a plan from UTF-8.</summary>
    /// <param name="utf8">The document.</param>
    /// <returns>The job planned again, and where the stored results differ.</returns>
    /// <exception cref="RefinishJsonException">Something is wrong with the document; all that was found is listed.</exception>
    public static StoredPlan Read(ReadOnlyMemory<byte> utf8) => Document.Read(StoredPlanShape.Only, () => JsonDocument.Parse(utf8));

    /// <summary>Reads a plan from text, without an exception when the document is wrong.</summary>
    /// <param name="json">The document.</param>
    /// <param name="plan">The job planned again, and where the stored results differ; <see langword="null"/> when something is wrong with the document.</param>
    /// <param name="faults">Everything that is wrong; empty when the plan was read. A result that differs is no fault.</param>
    /// <returns>Whether the plan was read.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is missing.</exception>
    public static bool TryRead(string json, [NotNullWhen(true)] out StoredPlan? plan, out IReadOnlyList<JsonFault> faults)
    {
        ArgumentNullException.ThrowIfNull(json);
        return Document.TryRead(StoredPlanShape.Only, () => JsonDocument.Parse(json), out plan!, out faults, out _);
    }
}
