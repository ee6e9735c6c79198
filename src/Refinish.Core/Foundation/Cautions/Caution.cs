using System;

namespace Refinish;

/// <summary>A warning that travels with a result: what can hurt, one plain sentence, who decides, and what it rests on.</summary>
/// <remarks>
/// A caution never says that something is safe. It adds to, and never replaces, local codes, the product's safety data sheet and
/// licensed practice.
/// </remarks>
public sealed record Caution
{
    private const Audience Everybody = Audience.Crew | Audience.Customer | Audience.Occupant;

    /// <summary>Makes a caution.</summary>
    /// <param name="code">Stable name of this caution, kebab-case, such as <c>never-alone</c>; the library's own codes differ from one
    /// another.</param>
    /// <param name="hazard">What can hurt.</param>
    /// <param name="sentence">One plain sentence for the person at work or the customer.</param>
    /// <param name="decidedBy">Who decides: a code, a data sheet, a licensed practice.</param>
    /// <param name="source">What the sentence rests on.</param>
    /// <param name="concerns">Whom it concerns; somebody at least.</param>
    /// <exception cref="ArgumentException">A text is empty, or <paramref name="code"/> is not lower-case letters and digits in groups
    /// joined by single hyphens.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="hazard"/> is not a named value, or <paramref name="concerns"/> is nobody or somebody unnamed.
    /// </exception>
    public Caution(string code, Hazard hazard, string sentence, string decidedBy, Source source, Audience concerns)
    {
        Code = IsKebabCase(Guard.Named(code))
            ? code
            : throw new ArgumentException(
                "code is \"" + code + "\"; allowed: lower-case letters and digits in groups joined by single hyphens.", nameof(code));
        Hazard = Guard.Defined(hazard);
        Sentence = Guard.Named(sentence);
        DecidedBy = Guard.Named(decidedBy);
        Source = Guard.NotNull(source);
        Concerns = Somebody(concerns, nameof(concerns));
    }

    /// <summary>Stable name by which a program finds, groups or leaves out this caution; it stays when the sentence is reworded.</summary>
    public string Code { get; }

    /// <summary>What can hurt; its place in <see cref="Refinish.Hazard"/> is its place in a list, what kills fastest first.</summary>
    public Hazard Hazard { get; }

    /// <summary>One plain sentence.</summary>
    public string Sentence { get; }

    /// <summary>Who decides.</summary>
    public string DecidedBy { get; }

    /// <summary>What the sentence rests on.</summary>
    public Source Source { get; }

    /// <summary>Whom it concerns.</summary>
    public Audience Concerns { get; }

    /// <summary>A hash of the code: hashing every sentence of every list of a plan would cost more than the plan.</summary>
    /// <returns>The hash.</returns>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Code);

    /// <summary>The sentence and who decides.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Sentence + " Decided by: " + DecidedBy + ".";

    internal static Audience Somebody(Audience audience, string name) => audience is not Audience.None && (audience & ~Everybody) == 0
        ? audience
        : throw new ArgumentOutOfRangeException(
            name, audience, name + " is " + audience.ToString("D") + "; allowed: crew, customer, occupant, or several of them.");

    private static bool IsKebabCase(string code)
    {
        bool hyphen = true;
        foreach (char c in code)
        {
            if (c == '-' ? hyphen : c is not ((>= 'a' and <= 'z') or (>= '0' and <= '9')))
            {
                return false;
            }

            hyphen = c == '-';
        }

        return !hyphen;
    }
}
