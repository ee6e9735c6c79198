namespace Refinish.Substrates;

/// <summary>Why a verdict came out as it did: one rule, what it found, and the way out.</summary>
public sealed record VerdictReason
{
    private readonly Finding finding;

    internal VerdictReason(SurveyRule rule, Finding finding, RuleChange? change = null)
    {
        RuleCode = rule.Code;
        Change = change;
        Suitability effect = change?.Left ?? rule.Effect;
        Effect = finding.IsOpen && effect == Suitability.NotSuitable ? Suitability.SuitableWithConditions : effect;
        Concerns = rule.Concerns | (rule.ProtectsPeople && change is not null
            ? Audience.Crew | Audience.Customer | Audience.Occupant : Audience.None);
        Title = rule.Title;
        this.finding = finding;
        Comparison = finding.Comparison;
        Remedy = rule.Remedy;
        RepeatTest = rule.RepeatTest;
        Source = rule.Source;
    }

    /// <summary>Code of the rule, such as "S-04".</summary>
    public string RuleCode { get; }

    /// <summary>What this reason alone makes of the fixture.</summary>
    public Suitability Effect { get; }

    /// <summary>The change of the rule by the policy; <see langword="null"/> for a rule as it stands.</summary>
    public RuleChange? Change { get; }

    /// <summary>Who has to know.</summary>
    public Audience Concerns { get; }

    /// <summary>What the rule is about.</summary>
    public string Title { get; }

    /// <summary>What was found, with its numbers in metric units.</summary>
    public string Sentence => SentenceIn(DisplayUnits.Si);

    /// <summary>The threshold and how far off it is; <see langword="null"/> for a rule without one.</summary>
    public LimitComparison? Comparison { get; }

    /// <summary>What would help.</summary>
    public string Remedy { get; }

    /// <summary>Which test is repeated when that was done.</summary>
    public string RepeatTest { get; }

    /// <summary>What the rule rests on.</summary>
    public Source Source { get; }

    /// <summary>What was found, with its numbers.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>One sentence without a full stop.</returns>
    public string SentenceIn(DisplayUnits system) =>
        finding.Sentence(system)
            + (Change is null ? string.Empty : "; rule " + Change.Code + " was " + Change.Words + " [" + Change.Source + "]");

    /// <summary>Whether the other comes from the same rule and says the same.</summary>
    /// <param name="other">The other reason.</param>
    /// <returns><see langword="true"/> when it does.</returns>
    public bool Equals(VerdictReason? other) => other is not null && RuleCode == other.RuleCode && Sentence == other.Sentence;

    /// <summary>A hash of the rule.</summary>
    /// <returns>The hash.</returns>
    public override int GetHashCode() => System.StringComparer.Ordinal.GetHashCode(RuleCode);

    /// <summary>Code, finding and remedy in one line, in metric units.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => RuleCode + " " + Title + ": " + Sentence + ". Remedy: " + Remedy + ". Then repeat: " + RepeatTest + ".";
}
