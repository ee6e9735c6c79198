using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Inspection;

/// <summary>
/// What was inspected on one fixture, by whom and when, with every comparison and its limit: a value to keep, to compare and to print.
/// </summary>
/// <remarks>
/// What was not tested is not in it and counts neither for nor against. The whole is within only when something was compared and all of
/// it is within; one comparison beyond its limit decides; one that cannot be judged leaves the whole open.
/// </remarks>
/// <example><code>
/// InspectionRecord record = new()
/// {
///     Subject = "bathtub, upper floor", At = new DateTimeOffset(2026, 3, 5, 9, 30, 0, TimeSpan.FromHours(-5)), Inspector = "A. Finisher",
///     Adhesion = new CrossCut(Ratio.Zero), LeastAdhesion = AdhesionGrade.Grade4B,
/// };
/// ComparisonOutcome outcome = record.Outcome;          // Within
/// string text = record.ToText(DisplayUnits.Si);
/// </code></example>
public sealed record InspectionRecord
{
    private static readonly LimitComparison[] None = [];

    private ValueList<string> notes = ValueList<string>.Empty;

    /// <summary>What was inspected.</summary>
    /// <exception cref="ArgumentException">The text is empty.</exception>
    public required string Subject { get; init => field = Guard.Named(value); }

    /// <summary>When.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>By whom.</summary>
    /// <exception cref="ArgumentException">The text is empty.</exception>
    public required string Inspector { get; init => field = Guard.Named(value); }

    /// <summary>The gauge and what it was used on; <see langword="null"/> when no film was measured.</summary>
    public GaugeFit? Gauge { get; init; }

    /// <summary>Films against a rule; <see langword="null"/> when not tested.</summary>
    public FilmJudgement? Film { get; init; }

    /// <summary>Films by a tolerance interval; <see langword="null"/> when not tested.</summary>
    public FilmTolerance? Tolerance { get; init; }

    /// <summary>Cross-cut test; <see langword="null"/> when not tested.</summary>
    public CrossCut? Adhesion { get; init; }

    /// <summary>Least adhesion grade wanted; without it a cross-cut is noted and not judged.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public AdhesionGrade? LeastAdhesion
    {
        get;
        init => field = value is AdhesionGrade grade ? Guard.Defined(grade, nameof(LeastAdhesion)) : null;
    }

    /// <summary>Pencil hardness; <see langword="null"/> when not tested.</summary>
    public PencilTest? Pencil { get; init; }

    /// <summary>Least pencil hardness wanted; without it a pencil test is noted and not judged.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public PencilGrade? LeastPencil { get; init => field = value is PencilGrade grade ? Guard.Defined(grade, nameof(LeastPencil)) : null; }

    /// <summary>Gloss; <see langword="null"/> when not tested.</summary>
    public GlossAcceptance? Gloss { get; init; }

    /// <summary>Colour; <see langword="null"/> when not tested.</summary>
    public ColourAcceptance? Colour { get; init; }

    /// <summary>Slip test of the floor zone; <see langword="null"/> when not tested.</summary>
    public SlipComparison? Slip { get; init; }

    /// <summary>What else was seen: runs, nibs, dry spray, repairs.</summary>
    /// <exception cref="ArgumentException">An entry is empty.</exception>
    public IReadOnlyList<string> Notes
    {
        get => notes;
        init => notes = new ValueList<string>(Guard.List(value).Select(note => Guard.Named(note, nameof(Notes))));
    }

    /// <summary>Every comparison of every test.</summary>
    public IReadOnlyList<LimitComparison> Comparisons =>
    [
        .. Film?.Comparisons ?? [], .. Tolerance?.Comparisons ?? [],
        .. Adhesion is not null && LeastAdhesion is AdhesionGrade grade ? [Adhesion.Against(grade)] : None,
        .. Pencil is not null && LeastPencil is PencilGrade hardness ? [Pencil.Against(hardness)] : None,
        .. Gloss?.Comparisons ?? [],
        .. Colour is null ? None : [Colour.Comparison],
        .. Slip is null ? None : [Slip.Comparison],
    ];

    /// <summary>What the comparisons come to together.</summary>
    public ComparisonOutcome Outcome
    {
        get
        {
            IReadOnlyList<LimitComparison> all = Comparisons;
            return all.Any(one => one.Outcome == ComparisonOutcome.Beyond) ? ComparisonOutcome.Beyond
                : all.Count == 0 || Gauge?.IsUsable == false || all.Any(one => one.Outcome == ComparisonOutcome.CannotBeJudged) ? ComparisonOutcome.CannotBeJudged
                : ComparisonOutcome.Within;
        }
    }

    /// <summary>What can hurt.</summary>
    public IReadOnlyList<Caution> Cautions => Slip?.Cautions ?? ValueList<Caution>.Empty;

    /// <summary>The record as plain text, one line a finding, each line ended by a line feed.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public string ToText(DisplayUnits system)
    {
        Guard.Defined(system);
        StringBuilder text = new();
        Line(text, "Inspection: " + Subject);
        Line(text, "At: " + At.ToString("yyyy-MM-dd HH:mm zzz", CultureInfo.InvariantCulture) + ", by " + Inspector);
        Line(text, "Outcome: " + InWords(Outcome));
        Tested("Gauge", Gauge);
        if (Film is FilmJudgement film)
        {
            Line(text, "Film, rule: " + film.Rule.Name + " (" + film.Rule.Source + ")");
            Line(
                text,
                "Film, values: " + film.Statistics.Count.ToString(CultureInfo.InvariantCulture) + ", mean " + Measure.Film.Format(film.Statistics.Mean.Meters, system, 3)
                    + (film.Statistics.StandardDeviation is Length s ? ", standard deviation " + Measure.Film.Format(s.Meters, system, 3) : string.Empty));
        }

        if (Tolerance is FilmTolerance tolerance)
        {
            Line(text, "Film, tolerance interval: " + Measure.Percent.Format(tolerance.Coverage.DecimalFractions) + " with " + Measure.Percent.Format(tolerance.Confidence.DecimalFractions) + " confidence");
        }

        Tested("Adhesion", Adhesion);
        Tested("Pencil hardness", Pencil);
        Tested("Gloss", Gloss);
        Tested("Colour", Colour);
        Tested("Slip test", Slip);
        foreach (LimitComparison comparison in Comparisons)
        {
            Line(text, "- " + comparison.Sentence(system) + (comparison.Outcome != ComparisonOutcome.Within && comparison.Remedy is string remedy ? "; " + remedy : string.Empty));
        }

        foreach (string note in notes)
        {
            Line(text, "Note: " + note);
        }

        foreach (Caution caution in Cautions)
        {
            Line(text, "Caution: " + caution);
        }

        return text.ToString();

        void Tested(string name, object? test)
        {
            if (test is not null)
            {
                Line(text, name + ": " + test);
            }
        }
    }

    /// <summary>The record in one line.</summary>
    /// <returns>Text such as <c>bathtub, upper floor: within every limit compared</c>.</returns>
    public override string ToString() => Subject + ": " + InWords(Outcome);

    private static string InWords(ComparisonOutcome outcome) => outcome switch
    {
        ComparisonOutcome.Within => "within every limit compared",
        ComparisonOutcome.Beyond => "beyond a limit",
        _ => "cannot be judged",
    };

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');
}
