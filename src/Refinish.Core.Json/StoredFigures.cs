using System.Collections.Generic;
using System.Linq;
using Refinish.Jobs;

namespace Refinish.Json;

/// <summary>
/// What a stored plan told people, read without planning it again: total, lines, visits, dates, what stood in the way, cautions. It is
/// there even when today's library refuses the stored job, its version or its fields.
/// </summary>
/// <example><code>
/// static void Show(string json)
/// {
///     StoredFigures stored = PlanJson.ReadFigures(json);
///     Console.WriteLine(stored.Figures.Total);           // what the customer was told
///     foreach (string sentence in stored.Today().Sentences(DisplayUnits.Si))
///     {
///         Console.WriteLine(sentence);                   // what would be told today, or why it is refused
///     }
/// }
/// </code></example>
public sealed class StoredFigures
{
    internal StoredFigures(PlanFigures figures, string? library, int? version, Job? job, IReadOnlyList<JsonFault> faults)
    {
        Figures = figures;
        Library = library;
        Version = version;
        Job = job;
        Faults = faults;
    }

    /// <summary>
    /// The figures as they were stored; what the document does not have, or has in another form, is missing and told in
    /// <see cref="Faults"/>.
    /// </summary>
    public PlanFigures Figures { get; }

    /// <summary>Version of the library that wrote the document; <see langword="null"/> when it does not say.</summary>
    public string? Library { get; }

    /// <summary>Version of the document's format; <see langword="null"/> when it does not say.</summary>
    public int? Version { get; }

    /// <summary>The stored job; <see langword="null"/> when today's library refuses it.</summary>
    public Job? Job { get; }

    /// <summary>Why the job is refused, and which figures cannot be read; empty when nothing is wrong.</summary>
    public IReadOnlyList<JsonFault> Faults { get; }

    /// <summary>Plans the stored job and compares; for a job that is refused, the refusal is the change.</summary>
    /// <returns>What changed between the stored figures and today's.</returns>
    public PlanChanges Today() => Job is Job job
        ? PlanChanges.Between(Figures, PlanFigures.Of(job.Plan()), [])
        : PlanChanges.Refused(Figures, [.. Faults.Select(fault => new PlanRemark(fault.Path, fault.Path, fault.ToString()))]);

    /// <summary>The figures.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Figures.ToString();
}
