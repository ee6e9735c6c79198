using System.Collections.Generic;
using System.Linq;

namespace Refinish;

/// <summary>
/// How a result was reached: its steps in order, and the workings of the parts it rests on.
/// What a student checks against, an estimator shows a customer, and a reviewer audits.
/// </summary>
/// <example><code>
/// string derivation = new WetFilm(Length.FromMicrometers(30), Ratio.FromPercent(40)).Workings().ToPlainText(DisplayUnits.Si);
/// </code></example>
public sealed record Workings
{
    /// <summary>Puts several workings under one title.</summary>
    /// <param name="title">What was worked out.</param>
    /// <param name="parts">The workings, in order.</param>
    /// <exception cref="System.ArgumentException"><paramref name="title"/> is empty or the list holds an empty entry.</exception>
    public Workings(string title, IEnumerable<Workings> parts)
        : this(title, [], parts)
    {
    }

    internal Workings(string title, IEnumerable<WorkingStep> steps, IEnumerable<Workings>? parts = null)
    {
        Title = Guard.Named(title);
        Steps = Guard.List(steps);
        Parts = Guard.List(parts ?? [], name: nameof(parts));
    }

    /// <summary>What was worked out.</summary>
    public string Title { get; }

    /// <summary>The steps in order.</summary>
    public IReadOnlyList<WorkingStep> Steps { get; }

    /// <summary>The workings of the parts that the steps rest on.</summary>
    public IReadOnlyList<Workings> Parts { get; }

    /// <summary>
    /// The sources of all steps, each once. Figures that a formula was given bring none; a plan adds those of what it was fed.
    /// </summary>
    /// <returns>The sources by kind.</returns>
    public Provenance Provenance() => new(AllSteps().Select(step => step.Source));

    /// <summary>Every step of these workings and of their parts, parts first.</summary>
    /// <returns>The steps in the order in which a person would work them.</returns>
    public IEnumerable<WorkingStep> AllSteps()
    {
        foreach (Workings part in Parts)
        {
            foreach (WorkingStep step in part.AllSteps())
            {
                yield return step;
            }
        }

        foreach (WorkingStep step in Steps)
        {
            yield return step;
        }
    }

    /// <summary>The derivation as plain text.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>Lines that end in a line feed.</returns>
    public string ToPlainText(DisplayUnits system) => WorkingsText.Plain(this, system);

    /// <summary>The derivation as Markdown (CommonMark, formulas in code spans).</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>Lines that end in a line feed.</returns>
    public string ToMarkdown(DisplayUnits system) => WorkingsText.Markdown(this, system);

    /// <summary>The derivation as a LaTeX fragment for amsmath, without preamble.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>Lines that end in a line feed.</returns>
    public string ToLatex(DisplayUnits system) => WorkingsText.Latex(this, system);

    /// <summary>The title and the number of steps.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Title;
}
