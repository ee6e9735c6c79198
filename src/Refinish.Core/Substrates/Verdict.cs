using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;

namespace Refinish.Substrates;

/// <summary>Whether a surveyed fixture may be refinished: the worst rule decides, and every rule that applies is listed.</summary>
/// <remarks>
/// The order in which defects were written down does not matter. Lead and structural warnings are made from the survey itself and
/// not from the outcome, so that no verdict can hide them. It is a judgement by rules of trade practice, not a structural,
/// lead or air survey.
/// </remarks>
/// <example><code>
/// Survey survey = new() { Material = FixtureMaterial.Acrylic, Defects = [new FlexingFloor(Length.FromMillimeters(4))], YearBuilt = 1995 };
/// Verdict verdict = new(survey);
/// string why = verdict.Reasons[0].Sentence;   // "give of the floor: 4 mm; limit at most 2 mm; 2 mm beyond"
/// </code></example>
public sealed record Verdict
{
    /// <summary>Judges a survey by the thresholds of <see cref="SurveyPolicy.Generic"/>.</summary>
    /// <param name="survey">What was found.</param>
    /// <exception cref="ArgumentNullException"><paramref name="survey"/> is missing.</exception>
    public Verdict(Survey survey) : this(survey, SurveyPolicy.Generic)
    {
    }

    /// <summary>Judges a survey.</summary>
    /// <param name="survey">What was found.</param>
    /// <param name="policy">The thresholds.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public Verdict(Survey survey, SurveyPolicy policy)
    {
        Survey = Guard.NotNull(survey);
        Policy = Guard.NotNull(policy);
        List<VerdictReason> reasons = [];
        foreach (SurveyRule rule in SurveyRules.All.Concat(Policy.OwnRules))
        {
            RuleChange? change = Policy.ChangeOf(rule);
            foreach (Finding finding in rule.Find(survey, Policy))
            {
                reasons.Add(new VerdictReason(rule, finding, change));
            }
        }

        foreach (Defect defect in survey.Defects)
        {
            if (defect.OwnRule is SurveyRule rule)
            {
                reasons.Add(new VerdictReason(rule, Finding.About(defect)));
            }
        }

        reasons.Sort(WorstFirst);
        Reasons = new ValueList<VerdictReason>(reasons);
        Suitability = Reasons.Count == 0 ? Suitability.Suitable : Reasons[0].Effect;
        Cautions = new ValueList<Caution>(SurveyCautions.Of(survey));
    }

    /// <summary>What was judged.</summary>
    public Survey Survey { get; }

    /// <summary>By which thresholds.</summary>
    public SurveyPolicy Policy { get; }

    /// <summary>The outcome: that of the worst rule that applies.</summary>
    public Suitability Suitability { get; }

    /// <summary>Every rule that applies with what it found, the worst first.</summary>
    public IReadOnlyList<VerdictReason> Reasons { get; }

    /// <summary>What can hurt.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>Whether the work may be planned at all; the conditions among the reasons still have to be met first.</summary>
    public bool MayBePlanned => Suitability != Suitability.NotSuitable;

    /// <summary>The verdict as text: the outcome, every reason with its numbers and remedy, and the cautions.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>Lines that end in a line feed.</returns>
    public string ToText(DisplayUnits system)
    {
        System.Text.StringBuilder text = new();
        text.Append(Survey.Material.Name).Append(": ").Append(Outcome).Append('\n');
        foreach (VerdictReason reason in Reasons)
        {
            text.Append("  ").Append(reason.RuleCode).Append(' ').Append(reason.Title).Append(": ").Append(reason.SentenceIn(system))
                .Append("; remedy: ").Append(reason.Remedy).Append("; then repeat: ").Append(reason.RepeatTest).Append(" [").Append(reason.Source).Append("]\n");
        }

        foreach (Caution caution in Cautions)
        {
            text.Append("  ! ").Append(caution).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>The outcome and the codes of the rules behind it.</summary>
    /// <returns>Text such as <c>not suitable as it stands: S-04</c>.</returns>
    public override string ToString() => Reasons.Count == 0 ? Outcome : Outcome + ": " + string.Join(", ", Reasons.Select(reason => reason.RuleCode).Distinct());

    // Sentences are compared only between findings of one rule.
    private static int WorstFirst(VerdictReason one, VerdictReason other)
    {
        int order = other.Effect.CompareTo(one.Effect);
        order = order != 0 ? order : string.CompareOrdinal(one.RuleCode, other.RuleCode);
        return order != 0 ? order : string.CompareOrdinal(one.Sentence, other.Sentence);
    }

    private string Outcome => Suitability switch
    {
        Suitability.Suitable => "suitable",
        Suitability.SuitableWithConditions => "suitable with conditions", _ => "not suitable as it stands", };
}
