using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using System.IO;
using System.Text.Json;
using Refinish.Jobs;
using Refinish.Json.Shapes;

namespace Refinish.Json;

/// <summary>
/// A job as a JSON document: shop, premises and everything that was measured, surveyed and chosen, every quantity with its unit, in format
/// <c>refinish/job</c>, version 2.
/// </summary>
/// <remarks>
/// A job that is written and read again is equal to the first one, to the last bit of every number. Optional fields may be left out by who
/// writes by hand; they are always written here, so that a document does not change its meaning when a default does. Objects may be nested
/// 64 deep, the limit of System.Text.Json; how long a document may be is for the caller to limit.
/// </remarks>
/// <example><code>
/// string json = "{ \"format\": \"refinish/job\", \"version\": 2 }";
/// bool read = JobJson.TryRead(json, out Job? job, out IReadOnlyList&lt;JsonFault&gt; faults);
/// string first = faults[0].ToString();               // "$.id: The field is missing."
/// </code></example>
public static class JobJson
{
    /// <summary>The job as text, in metric units and indented.</summary>
    /// <param name="job">The job.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="job"/> is missing.</exception>
    /// <exception cref="NotSupportedException">
    /// The job holds what has no form in JSON: a fixture of a type of one's own, a time zone that is not known by its name, a lag on a
    /// clock of its own, or an operation taken from a plan with its instructions by fixture.
    /// </exception>
    public static string Write(Job job) => Write(job, JsonLayout.Default);

    /// <summary>The job as text.</summary>
    /// <param name="job">The job.</param>
    /// <param name="layout">Units and layout.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="NotSupportedException">See <see cref="Write(Job)"/>.</exception>
    public static string Write(Job job, JsonLayout layout) => Document.Write(JobShapes.Job, job, layout);

    /// <summary>Writes the job as UTF-8, in metric units and indented.</summary>
    /// <param name="stream">Where to; it is left open.</param>
    /// <param name="job">The job.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="NotSupportedException">See <see cref="Write(Job)"/>.</exception>
    public static void Write(Stream stream, Job job) => Write(stream, job, JsonLayout.Default);

    /// <summary>Writes the job as UTF-8.</summary>
    /// <param name="stream">Where to; it is left open.</param>
    /// <param name="job">The job.</param>
    /// <param name="layout">Units and layout.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="NotSupportedException">See <see cref="Write(Job)"/>.</exception>
    public static void Write(Stream stream, Job job, JsonLayout layout) => Document.Write(JobShapes.Job, job, stream, layout);

    /// <summary>Writes the job as one value of a larger document, in metric units.</summary>
    /// <param name="json">The writer, which stands where a value may come.</param>
    /// <param name="job">The job.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="NotSupportedException">See <see cref="Write(Job)"/>.</exception>
    public static void Write(Utf8JsonWriter json, Job job) => Write(json, job, DisplayUnits.Si);

    /// <summary>Writes the job as one value of a larger document.</summary>
    /// <param name="json">The writer, which stands where a value may come.</param>
    /// <param name="job">The job.</param>
    /// <param name="units">The units in which quantities are written where that loses nothing.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a named value.</exception>
    /// <exception cref="NotSupportedException">See <see cref="Write(Job)"/>.</exception>
    public static void Write(Utf8JsonWriter json, Job job, DisplayUnits units) => Document.Write(JobShapes.Job, job, json, units);

    /// <summary>The inputs in which two jobs differ, value by value, in metric units.</summary>
    /// <param name="before">The job before.</param>
    /// <param name="after">The job after.</param>
    /// <returns>See <see cref="Compare(Job, Job, DisplayUnits)"/>.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="NotSupportedException">A job has no form in JSON; see <see cref="Write(Job)"/>.</exception>
    public static IReadOnlyList<ValueChange> Compare(Job before, Job after) => Compare(before, after, DisplayUnits.Si);

    /// <summary>The inputs in which two jobs differ, value by value.</summary>
    /// <remarks>
    /// Entries of lists are held against each other by identity: <c>id</c>, <c>code</c>, a material by item and size. Entries without one,
    /// such as defects and working hours, are held against the one that is alike, and the rest of a kind in order; so a chip that is gone
    /// is one change, wherever it stood. Coats of a system, stretches of a log, changes of operations and stages of payment are compared in
    /// order. What several places name, such as a product, is told once, in <c>$.catalogue</c>. Numbers are compared as shown, to twelve
    /// figures.
    /// </remarks>
    /// <param name="before">The job before.</param>
    /// <param name="after">The job after.</param>
    /// <param name="units">The units in which quantities are shown.</param>
    /// <returns>
    /// What differs: fixtures, extras, terms, start and premises first, then the shop. Empty when the jobs are the same but for the order
    /// of lists.
    /// </returns>
    /// <exception cref="ArgumentNullException">A job is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a named value.</exception>
    /// <exception cref="NotSupportedException">A job has no form in JSON; see <see cref="Write(Job)"/>.</exception>
    public static IReadOnlyList<ValueChange> Compare(Job before, Job after, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return InputComparer.Compare(before, after, Writing.In(units).Units);
    }

    /// <summary>Reads a job from text.</summary>
    /// <param name="json">The document.</param>
    /// <returns>The job.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is missing.</exception>
    /// <exception cref="RefinishJsonException">Something is wrong with the document; all that was found is listed.</exception>
    public static Job Read(string json) => Document.Read(JobShapes.Job, json);

    /// <summary>Reads a job from UTF-8.</summary>
    /// <param name="stream">The document; it is read to its end and left open.</param>
    /// <returns>The job.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stream"/> is missing.</exception>
    /// <exception cref="RefinishJsonException">Something is wrong with the document; all that was found is listed.</exception>
    public static Job Read(Stream stream) => Document.Read(JobShapes.Job, stream);

    /// <summary>Reads a job from UTF-8.</summary>
    /// <param name="utf8">The document.</param>
    /// <returns>The job.</returns>
    /// <exception cref="RefinishJsonException">Something is wrong with the document; all that was found is listed.</exception>
    public static Job Read(ReadOnlyMemory<byte> utf8) => Document.Read(JobShapes.Job, () => JsonDocument.Parse(utf8));

    /// <summary>Reads a job from text, without an exception when the document is wrong.</summary>
    /// <param name="json">The document.</param>
    /// <param name="job">The job; <see langword="null"/> when something is wrong.</param>
    /// <param name="faults">Everything that is wrong; empty when the job was read.</param>
    /// <returns>Whether the job was read.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is missing.</exception>
    public static bool TryRead(string json, [NotNullWhen(true)] out Job? job, out IReadOnlyList<JsonFault> faults) =>
        Document.TryRead(JobShapes.Job, json, out job!, out faults);

    /// <summary>Reads a job from UTF-8, without an exception when the document is wrong.</summary>
    /// <param name="utf8">The document.</param>
    /// <param name="job">The job; <see langword="null"/> when something is wrong.</param>
    /// <param name="faults">Everything that is wrong; empty when the job was read.</param>
    /// <returns>Whether the job was read.</returns>
    public static bool TryRead(ReadOnlyMemory<byte> utf8, [NotNullWhen(true)] out Job? job, out IReadOnlyList<JsonFault> faults) =>
        Document.TryRead(JobShapes.Job, () => JsonDocument.Parse(utf8), out job!, out faults, out _);
}
