using System;
using Refinish.Substrates;

namespace Refinish.Jobs;

/// <summary>
/// What has to be done or found out before a plan holds, though nothing stands in its way: from the verdicts, from colours that cannot be
/// judged, from flow, from units that look mixed up.
/// </summary>
public sealed record PlanCondition
{
    private readonly Func<DisplayUnits, string> sentence;

    internal PlanCondition(string about, VerdictReason reason, int number)
        : this(
            about, reason.RuleCode + (number > 1 ? "/" + Figures.Fixed(number, 0) : string.Empty), reason.SentenceIn, reason.Remedy,
            reason.Source, reason.Concerns) => Reason = reason;

    internal PlanCondition(string about, string code, LimitComparison comparison, Audience concerns)
        : this(about, code, comparison.Sentence, comparison.Remedy ?? string.Empty, comparison.Source, concerns)
    {
    }

    internal PlanCondition(
        string about, string code, Func<DisplayUnits, string> sentence, string remedy, Source source,
        Audience concerns = Audience.Crew | Audience.Customer)
    {
        About = about;
        Id = about + "/" + code;
        this.sentence = sentence;
        Remedy = remedy;
        Source = source;
        Concerns = concerns;
    }

    /// <summary>
    /// Identifier, formed from what it is about and the code of the rule, with a number where a rule finds more than one thing.
    /// </summary>
    public string Id { get; }

    /// <summary>Identifier of the fixture, operation, room, person or job that it is about.</summary>
    public string About { get; }

    /// <summary>The rule of the survey that it comes from; <see langword="null"/> when it comes from elsewhere.</summary>
    public VerdictReason? Reason { get; }

    /// <summary>What is to be done.</summary>
    public string Remedy { get; }

    /// <summary>What it rests on.</summary>
    public Source Source { get; }

    /// <summary>
    /// Who has to do, decide or know it: the crew alone where it is about how the work is done; the customer too where price, result or
    /// doubt is theirs; the occupants too where it can hurt them.
    /// </summary>
    public Audience Concerns { get; }

    /// <summary>What was found.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>One sentence without a full stop.</returns>
    public string Sentence(DisplayUnits system) => sentence(system);

    /// <summary>Whether the other has the same identifier and says the same.</summary>
    /// <param name="other">The other condition.</param>
    /// <returns><see langword="true"/> when it does.</returns>
    public bool Equals(PlanCondition? other) => other is not null && Id == other.Id && ToString() == other.ToString();

    /// <summary>A hash of the identifier.</summary>
    /// <returns>The hash.</returns>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Id);

    /// <summary>Finding and remedy in metric units.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => In(DisplayUnits.Si, About);

    /// <summary>Finding and remedy under a name for what it is about.</summary>
    internal string In(DisplayUnits system, string about) =>
        about + ": " + Sentence(system) + ". " + Sentences.Begun(Sentences.Closed(Remedy));
}
