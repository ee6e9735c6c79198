using System;

namespace Refinish.Substrates;

/// <summary>What a rule objects to: a sentence in either system of units and, for a threshold, the comparison.</summary>
internal sealed class Finding(Func<DisplayUnits, string> sentence, LimitComparison? comparison = null)
{
    public Func<DisplayUnits, string> Sentence { get; } = sentence;

    public LimitComparison? Comparison { get; } = comparison;

    /// <summary>Whether it cannot be judged, so that it is a condition at most.</summary>
    public bool IsOpen { get; init; }

    public static implicit operator Finding(string sentence) => new(_ => sentence);

    public static Finding About(Defect defect) => new(defect.Describe);

    public static Finding About(Defect defect, LimitComparison comparison) =>
        new(system => defect.Describe(system) + "; " + comparison.Sentence(system), comparison);

    public static Finding About(LimitComparison comparison) => new(comparison.Sentence, comparison);

    public Finding Open() => new(Sentence, Comparison) { IsOpen = true };
}
