using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;

namespace Refinish.Substrates;

/// <summary>
/// One observation and what it says about the material: for which it speaks and against which. It is a hint and never a proof.
/// </summary>
/// <example><code>
/// MaterialSign sticks = MaterialSigns.Generic.First(sign => sign.Code == "I-01");
/// </code></example>
public sealed record MaterialSign
{
    /// <summary>Makes a sign.</summary>
    /// <param name="code">Code, such as "I-01".</param>
    /// <param name="aid">What was done.</param>
    /// <param name="observation">What was seen, heard or felt.</param>
    /// <param name="speaksFor">Materials of which this is usual.</param>
    /// <param name="speaksAgainst">Materials of which this is not to be expected; none of those it speaks for.</param>
    /// <param name="source">What this rests on.</param>
    /// <exception cref="ArgumentException">A text is empty, a material stands on both sides, or a sign says nothing at all.</exception>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="aid"/> is not a named value.</exception>
    public MaterialSign(
        string code,
        IdentificationAid aid,
        string observation,
        IReadOnlyList<FixtureMaterial> speaksFor,
        IReadOnlyList<FixtureMaterial> speaksAgainst,
        Source source)
    {
        Code = Guard.Named(code);
        Aid = Guard.Defined(aid);
        Observation = Guard.Named(observation);
        SpeaksFor = Guard.List(speaksFor);
        SpeaksAgainst = Guard.List(speaksAgainst);
        Source = Guard.NotNull(source);
        if (SpeaksFor.Intersect(SpeaksAgainst).Any() || SpeaksFor.Count + SpeaksAgainst.Count == 0)
        {
            throw new ArgumentException("speaksAgainst names a material that the sign also speaks for, or the sign names none at all.", nameof(speaksAgainst));
        }
    }

    /// <summary>Code.</summary>
    public string Code { get; }

    /// <summary>What was done.</summary>
    public IdentificationAid Aid { get; }

    /// <summary>What was seen, heard or felt.</summary>
    public string Observation { get; }

    /// <summary>Materials of which this is usual.</summary>
    public IReadOnlyList<FixtureMaterial> SpeaksFor { get; }

    /// <summary>Materials of which this is not to be expected.</summary>
    public IReadOnlyList<FixtureMaterial> SpeaksAgainst { get; }

    /// <summary>What this rests on.</summary>
    public Source Source { get; }

    /// <summary>Code and observation.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Code + " " + Observation;
}
