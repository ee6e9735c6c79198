using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using System.IO;
using System.Text.Json;
using Refinish.Jobs;
using Refinish.Json.Shapes;

namespace Refinish.Json;

/// <summary>
/// A plan as a JSON document for readers in any language: the whole job and, beside it, its results with their units, limits, sources and
/// cautions, in format <c>refinish/plan</c>, version 2.
/// </summary>
/// <remarks>
/// Results are written to twelve figures. Read again, the job is planned anew and every stored result is held against the new one; what
/// differs is told, not replaced. <see cref="ReadFigures(string)"/> reads the stored figures alone. A document of a stranger decides how
/// far its schedule is searched, in the effort of its shop, and so how long reading takes. Whoever shows the results to people shows the
/// cautions too.
/// </remarks>
/// <example><code>
/// static bool StillTheSame(string json) => PlanJson.Read(json).Agrees;
/// </code></example>
public static class PlanJson
{
    /// <summary>The plan as text, in metric units and indented.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is missing.</exception>
    /// <exception cref="NotSupportedException">The job of the plan has no form in JSON; see <see cref="JobJson.Write(Job)"/>.</exception>
    public static string Write(JobPlan plan) => Write(plan, JsonLayout.Default);

    /// <summary>The plan as text.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="layout">Units and layout.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="NotSupportedException">See <see cref="Write(JobPlan)"/>.</exception>
    public static string Write(JobPlan plan, JsonLayout layout)
    {
        ArgumentNullException.ThrowIfNull(layout);
        return Document.Write(PlanShapes.Plan, PlanShapes.Of(plan, layout.Units), layout);
    }

    /// <summary>Writes the plan as UTF-8, in metric units and indented.</summary>
    /// <param name="stream">Where to; it is left open.</param>
    /// <param name="plan">The plan.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="NotSupportedException">See <see cref="Write(JobPlan)"/>.</exception>
    public static void Write(Stream stream, JobPlan plan) => Write(stream, plan, JsonLayout.Default);

    /// <summary>Writes the plan as UTF-8.</summary>
    /// <param name="stream">Where to; it is left open.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="layout">Units and layout.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="NotSupportedException">See <see cref="Write(JobPlan)"/>.</exception>
    public static void Write(Stream stream, JobPlan plan, JsonLayout layout)
    {
        ArgumentNullException.ThrowIfNull(layout);
        Document.Write(PlanShapes.Plan, PlanShapes.Of(plan, layout.Units), stream, layout);
    }

    /// <summary>Writes the plan as one value of a larger document, in metric units.</summary>
    /// <param name="json">The writer, which stands where a value may come.</param>
    /// <param name="plan">The plan.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="NotSupportedException">See <see cref="Write(JobPlan)"/>.</exception>
    public static void Write(Utf8JsonWriter json, JobPlan plan) => Write(json, plan, DisplayUnits.Si);

    /// <summary>Writes the plan as one value of a larger document.</summary>
    /// <param name="json">The writer, which stands where a value may come.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="units">The units in which results are written, and quantities of the job where that loses nothing.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a named value.</exception>
    /// <exception cref="NotSupportedException">See <see cref="Write(JobPlan)"/>.</exception>
    public static void Write(Utf8JsonWriter json, JobPlan plan, DisplayUnits units) =>
        Document.Write(PlanShapes.Plan, PlanShapes.Of(plan, units), json, units);

    /// <summary>What changed between two plans, with every input that differs by its place.</summary>
    /// <param name="before">The plan before.</param>
    /// <param name="after">The plan after.</param>
    /// <param name="units">The units in which the inputs are shown.</param>
    /// <returns>The changes; <see cref="JobJson.Compare(Job, Job, DisplayUnits)"/> gives their inputs.</returns>
    /// <exception cref="ArgumentNullException">A plan is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a named value.</exception>
    /// <exception cref="NotSupportedException">A job has no form in JSON; see <see cref="JobJson.Write(Job)"/>.</exception>
    public static PlanChanges Compare(JobPlan before, JobPlan after, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return PlanChanges.Between(PlanFigures.Of(before), PlanFigures.Of(after), JobJson.Compare(before.Job, after.Job, units));
    }

    /// <summary>
    /// Reads what a stored plan told people. Nothing is planned, and a job that today's library refuses stands in the way of nothing.
    /// </summary>
    /// <param name="json">The document.</param>
    /// <returns>The figures, and beside them what is wrong with the document.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is missing.</exception>
    /// <exception cref="RefinishJsonException">The text is no JSON object.</exception>
    public static StoredFigures ReadFigures(string json) => Document.Read(StoredFiguresShape.Only, json);

    /// <summary>Reads what a stored plan told people, from UTF-8.</summary>
    /// <param name="utf8">The document.</param>
    /// <returns>See <see cref="ReadFigures(string)"/>.</returns>
    /// <exception cref="RefinishJsonException">The text is no JSON object.</exception>
    public static StoredFigures ReadFigures(ReadOnlyMemory<byte> utf8) =>
        Document.Read(StoredFiguresShape.Only, () => JsonDocument.Parse(utf8));

    /// <summary>Reads a plan from text.</summary>
    /// <param name="json">The document.</param>
    /// <returns>The job planned again, and where the stored results differ.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is missing.</exception>
    /// <exception cref="RefinishJsonException">Something is wrong with the document; all that was found is listed.</exception>
    public static StoredPlan Read(string json) => Document.Read(StoredPlanShape.Only, json);

    /// <summary>Reads a plan from UTF-8.</summary>
    /// <param name="stream">The document; it is read to its end and left open.</param>
    /// <returns>The job planned again, and where the stored results differ.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stream"/> is missing.</exception>
    /// <exception cref="RefinishJsonException">Something is wrong with the document; all that was found is listed.</exception>
    public static StoredPlan Read(Stream stream) => Document.Read(StoredPlanShape.Only, stream);

    /// <summary>Reads a plan from UTF-8.</summary>
    /// <param name="utf8">The document.</param>
    /// <returns>The job planned again, and where the stored results differ.</returns>
    /// <exception cref="RefinishJsonException">Something is wrong with the document; all that was found is listed.</exception>
    public static StoredPlan Read(ReadOnlyMemory<byte> utf8) => Document.Read(StoredPlanShape.Only, () => JsonDocument.Parse(utf8));

    /// <summary>Reads a plan from text, without an exception when the document is wrong.</summary>
    /// <param name="json">The document.</param>
    /// <param name="plan">
    /// The job planned again, and where the stored results differ; <see langword="null"/> when something is wrong with the document.
    /// </param>
    /// <param name="faults">Everything that is wrong; empty when the plan was read. A result that differs is no fault.</param>
    /// <returns>Whether the plan was read.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is missing.</exception>
    public static bool TryRead(string json, [NotNullWhen(true)] out StoredPlan? plan, out IReadOnlyList<JsonFault> faults) =>
        Document.TryRead(StoredPlanShape.Only, json, out plan!, out faults);

    /// <summary>Reads a plan from UTF-8, without an exception when the document is wrong.</summary>
    /// <param name="utf8">The document.</param>
    /// <param name="plan">
    /// The job planned again, and where the stored results differ; <see langword="null"/> when something is wrong with the document.
    /// </param>
    /// <param name="faults">Everything that is wrong; empty when the plan was read. A result that differs is no fault.</param>
    /// <returns>Whether the plan was read.</returns>
    public static bool TryRead(ReadOnlyMemory<byte> utf8, [NotNullWhen(true)] out StoredPlan? plan, out IReadOnlyList<JsonFault> faults) =>
        Document.TryRead(StoredPlanShape.Only, () => JsonDocument.Parse(utf8), out plan!, out faults, out _);
}
