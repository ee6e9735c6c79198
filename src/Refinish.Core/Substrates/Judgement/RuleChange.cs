using System;
using System.Linq;

namespace Refinish.Substrates;

/// <summary>A ready rule of the survey that a shop strikes, or whose effect it changes, with who decided it.</summary>
/// <remarks>
/// No change goes unsaid: where a struck rule would have applied, the verdict still lists it with the source of the change. A rule that
/// protects people stays a condition there, and every plan of the shop says that it was struck or softened.
/// </remarks>
/// <example><code>
/// RuleChange change = RuleChange.Strike("S-24", Source.Supplied("owner of the shop, minutes of 3 May"));
/// SurveyPolicy policy = new() { RuleChanges = [change] };
/// </code></example>
public sealed record RuleChange
{
    private RuleChange(string code, Suitability? effect, Source source)
    {
        Rule = SurveyRule.All.FirstOrDefault(rule => rule.Code == Guard.Named(code))
            ?? throw new ArgumentException(
                "code is " + code + ", which no ready rule has; allowed: " + SurveyRule.All[0].Code + " to "
                    + SurveyRule.All[SurveyRule.All.Count - 1].Code + ".", nameof(code));
        Effect = effect;
        Source = Guard.NotNull(source);
        if (effect == Rule.Effect)
        {
            throw new ArgumentException("effect is what " + Rule + " has anyway, so that nothing would change.", nameof(effect));
        }
    }

    /// <summary>Code of the rule, such as "S-24".</summary>
    public string Code => Rule.Code;

    /// <summary>What it makes of the fixture from now on; <see langword="null"/> for a rule that is struck.</summary>
    public Suitability? Effect { get; }

    /// <summary>Who decided it.</summary>
    public Source Source { get; }

    /// <summary>Strikes a rule.</summary>
    /// <param name="code">Code of a ready rule.</param>
    /// <param name="source">Who decided it.</param>
    /// <returns>The change.</returns>
    /// <exception cref="ArgumentException">No ready rule has the code.</exception>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static RuleChange Strike(string code, Source source) => new(code, null, source);

    /// <summary>Changes what a rule makes of the fixture.</summary>
    /// <param name="code">Code of a ready rule.</param>
    /// <param name="effect">The effect from now on.</param>
    /// <param name="source">Who decided it.</param>
    /// <returns>The change.</returns>
    /// <exception cref="ArgumentException">No ready rule has the code, or it has that effect anyway.</exception>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="effect"/> is not a named value.</exception>
    public static RuleChange ToEffect(string code, Suitability effect, Source source) => new(code, Guard.Defined(effect), source);

    /// <summary>What is changed, and by whom.</summary>
    /// <returns>Text such as <c>S-24 waiting time refused: struck [supplied: owner of the shop]</c>.</returns>
    public override string ToString() => Rule + ": " + Words + " [" + Source + "]";

    internal SurveyRule Rule { get; }

    internal bool IsSofter => Effect is null || Effect < Rule.Effect;

    internal string Words => Effect switch
    {
        null => "struck",
        Suitability.Suitable => "changed to a note",
        Suitability.SuitableWithConditions => "changed to a condition", _ => "changed to forbid the work", };

    /// <summary>The effect that is left: of a struck rule a note, of one that protects people a condition at least.</summary>
    internal Suitability Left => Rule.ProtectsPeople && IsSofter && !(Effect > Suitability.Suitable)
        ? Suitability.SuitableWithConditions : Effect ?? Suitability.Suitable;
}
