using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Substrates;

/// <summary>
/// One rule of the survey as data: its code, what it does to the verdict, the remedy, the test to repeat after, and what it rests on.
/// </summary>
/// <remarks>
/// The codes of the ready rules are this library's own, and their thresholds stand in <see cref="SurveyPolicy"/>. A rule of a caller's own
/// has a code of its own and a <see cref="SurveyCondition"/>, or a function where no condition is enough; the function cannot be stored.
/// </remarks>
/// <example><code>
/// SurveyRule old = new(
///     "own-1", "old acrylic", Suitability.SuitableWithConditions, "look for crazing under side light", "side light",
///     Source.Supplied("own records"),
///     new SurveyCondition { Materials = [FixtureMaterial.Acrylic], OlderThanYears = 25 });
/// SurveyPolicy policy = new() { OwnRules = [old] };
/// Survey survey = new() { Material = FixtureMaterial.Acrylic, Defects = [], YearBuilt = 1995, FixtureAge = 30 };
/// int found = new Verdict(survey, policy).Reasons.Count;   // 1
/// </code></example>
public sealed record SurveyRule
{
    private readonly Func<Survey, SurveyPolicy, IEnumerable<Finding>>? find;

    /// <summary>Makes a rule with a condition.</summary>
    /// <param name="code">Its code; none of a ready rule.</param>
    /// <param name="title">What it is about.</param>
    /// <param name="effect">What it makes of the fixture when it applies.</param>
    /// <param name="remedy">What would help.</param>
    /// <param name="repeatTest">Which test is repeated when that was done.</param>
    /// <param name="source">What the rule rests on.</param>
    /// <param name="when">When it applies.</param>
    /// <exception cref="ArgumentException">
    /// A text is empty, <paramref name="code"/> is no identity or that of a ready rule, or <paramref name="when"/> says nothing or
    /// contradicts itself.
    /// </exception>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="effect"/> is not a named value.</exception>
    public SurveyRule(
        string code, string title, Suitability effect, string remedy, string repeatTest, Source source, SurveyCondition when)
        : this(Own(code), title, effect, remedy, repeatTest, source, (Func<Survey, SurveyPolicy, IEnumerable<Finding>>?)null)
    {
        When = Guard.NotNull(when);
        if (when.Contradiction() is string fault)
        {
            throw new ArgumentException("when " + fault + ".", nameof(when));
        }
    }

    /// <summary>Makes a rule with a function, which cannot be stored.</summary>
    /// <param name="code">Its code; none of a ready rule.</param>
    /// <param name="title">What it is about.</param>
    /// <param name="effect">What it makes of the fixture when it applies.</param>
    /// <param name="remedy">What would help.</param>
    /// <param name="repeatTest">Which test is repeated when that was done.</param>
    /// <param name="source">What the rule rests on.</param>
    /// <param name="find">
    /// Gives a sentence without a full stop for each thing that it objects to; nothing when it does not apply. It must depend on the survey
    /// alone and throw nothing.
    /// </param>
    /// <exception cref="ArgumentException">A text is empty, or <paramref name="code"/> is no identity or that of a ready rule.</exception>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="effect"/> is not a named value.</exception>
    public SurveyRule(
        string code, string title, Suitability effect, string remedy, string repeatTest, Source source, Func<Survey,
            IEnumerable<string>> find)
        : this(Own(code), title, effect, remedy, repeatTest, source, Sentences(Guard.NotNull(find))) => IsByFunction = true;

    internal SurveyRule(
        string code,
        string title,
        Suitability effect,
        string remedy,
        string repeatTest,
        Source source,
        Func<Survey, SurveyPolicy, IEnumerable<Finding>>? find)
    {
        Code = code;
        Title = Guard.Named(title);
        Effect = Guard.Defined(effect);
        Remedy = Guard.Named(remedy);
        RepeatTest = Guard.Named(repeatTest);
        Source = Guard.NotNull(source);
        this.find = find;
    }

    /// <summary>Code, such as "S-04".</summary>
    public string Code { get; }

    /// <summary>What it is about.</summary>
    public string Title { get; }

    /// <summary>What it makes of the fixture when it applies.</summary>
    public Suitability Effect { get; }

    /// <summary>What would help.</summary>
    public string Remedy { get; }

    /// <summary>Which test is repeated when that was done.</summary>
    public string RepeatTest { get; }

    /// <summary>What the rule rests on.</summary>
    public Source Source { get; }

    /// <summary>When it applies; <see langword="null"/> for a ready rule and for one with a function.</summary>
    public SurveyCondition? When { get; }

    /// <summary>Whether it is a caller's own with a function, which cannot be stored.</summary>
    public bool IsByFunction { get; }

    /// <summary>Who has to know where it applies; crew and customer unless told by <see cref="Concerning"/>.</summary>
    public Audience Concerns { get; internal init; } = Audience.Crew | Audience.Customer;

    /// <summary>The same rule for others to know.</summary>
    /// <param name="concerns">Who has to know where it applies.</param>
    /// <returns>The rule.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="concerns"/> is nobody, or somebody unnamed.</exception>
    public SurveyRule Concerning(Audience concerns) => this with { Concerns = Caution.Somebody(concerns, nameof(concerns)) };

    /// <summary>
    /// Whether it protects people: lead, asbestos, flame, exhaust, those who cannot leave. Struck or softened, such a rule stays a
    /// condition.
    /// </summary>
    public bool ProtectsPeople { get; internal init; }

    /// <summary>All ready rules, in the order of their codes.</summary>
    public static IReadOnlyList<SurveyRule> All => SurveyRules.All;

    /// <summary>Code and title.</summary>
    /// <returns>Text such as <c>S-04 floor gives</c>.</returns>
    public override string ToString() => Code + " " + Title;

    internal IEnumerable<Finding> Find(Survey survey, SurveyPolicy policy) =>
        When is SurveyCondition when ? ConditionFindings.Of(when, survey, Source) : find?.Invoke(survey, policy) ?? [];

    private static string Own(string code) =>
        All.Any(rule => rule.Code.Equals(Guard.Id(code), StringComparison.OrdinalIgnoreCase))
            ? throw new ArgumentException(
                "code is " + code + ", which a ready rule has; give yours another, and strike or change the ready one by a RuleChange.",
                    nameof(code))
            : code;

    private static Func<Survey, SurveyPolicy, IEnumerable<Finding>> Sentences(Func<Survey, IEnumerable<string>> find) =>
        (survey, _) => (find(survey) ?? []).Select(sentence => (Finding)sentence);
}
