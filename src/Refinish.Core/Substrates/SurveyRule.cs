using System;
using System.Collections.Generic;

namespace Refinish.Substrates;

/// <summary>One rule of the survey as data: its code, what it does to the verdict, the remedy, the test to repeat after, and what it rests on.</summary>
/// <remarks>The codes are this library's own. Thresholds stand in <see cref="SurveyPolicy"/>.</remarks>
public sealed class SurveyRule
{
    internal SurveyRule(
        string code,
        string title,
        Suitability effect,
        string remedy,
        string repeatTest,
        Source source,
        Func<Survey, SurveyPolicy, IEnumerable<Finding>> find)
    {
        Code = code;
        Title = title;
        Effect = effect;
        Remedy = remedy;
        RepeatTest = repeatTest;
        Source = source;
        Find = find;
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

    /// <summary>All rules, in the order of their codes.</summary>
    public static IReadOnlyList<SurveyRule> All => SurveyRules.All;

    internal Func<Survey, SurveyPolicy, IEnumerable<Finding>> Find { get; }

    /// <summary>Code and title.</summary>
    /// <returns>Text such as <c>S-04 floor gives</c>.</returns>
    public override string ToString() => Code + " " + Title;
}
