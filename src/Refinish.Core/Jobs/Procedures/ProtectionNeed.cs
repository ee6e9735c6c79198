using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;

namespace Refinish.Jobs;

/// <summary>
/// An exposure that is beyond its limit or cannot be judged, about a room or a person: how far off, and which respirators have an
/// assigned protection factor that reaches it. It is a screening number; the employer's respiratory protection programme decides.
/// </summary>
/// <remarks>
/// That an exposure which nobody can estimate is taken as immediately dangerous: 29 CFR 1910.134(d)(1)(iii), from memory; NIOSH 2005-100,
/// chapter III, step 3, in like words.
/// </remarks>
public sealed record ProtectionNeed
{
    internal ProtectionNeed(string about, LimitComparison comparison, bool asksForAir, bool isImmediatelyDangerous)
    {
        About = about;
        Comparison = comparison;
        AsksForAir = asksForAir;
        IsImmediatelyDangerous = isImmediatelyDangerous;
    }

    /// <summary>Identifier of the room or of the person.</summary>
    public string About { get; }

    /// <summary>The value, its limit and how far off it is.</summary>
    public LimitComparison Comparison { get; }

    /// <summary>Whether only respirators that supply air come into question, as for isocyanates.</summary>
    public bool AsksForAir { get; }

    /// <summary>
    /// Whether the air of that room, or of a room that the person is in, is immediately dangerous to life or health at its peak: then only
    /// two kinds of respirator are listed, whatever the ratio. An exposure that nobody can estimate is to be taken for that too.
    /// </summary>
    public bool IsImmediatelyDangerous { get; }

    /// <summary>Value over limit: the least protection factor; <see langword="null"/> when it cannot be judged.</summary>
    public double? HazardRatio => Comparison.OfLimit;

    /// <summary>
    /// Respirators that nothing excludes and whose assigned protection factor reaches the ratio, smallest first; empty when none does or
    /// when it cannot be judged.
    /// </summary>
    public IReadOnlyList<RespiratorClass> Respirators => HazardRatio is null
        ? ValueList<RespiratorClass>.Empty
        : new ValueList<RespiratorClass>(RespiratorClass.AtLeast(0).Where(kind => Of(kind).Reaches));

    /// <summary>
    /// The common kinds of respirator held against the exposure, smallest factor first: by how much each falls short, or why it is
    /// excluded.
    /// </summary>
    public IReadOnlyList<RespiratorCheck> Checks => new ValueList<RespiratorCheck>(RespiratorClass.Common.Select(Of));

    /// <summary>
    /// Which of the common kinds fall short and by how much, which are excluded, and which factor reaches, in plain words.
    /// </summary>
    /// <returns>One line of text; it names what the factors say, and is no permission to wear one or to take it off.</returns>
    public string InWords()
    {
        if (HazardRatio is not double ratio)
        {
            return "No factor can be named: value or limit is not known. What nobody can estimate is taken as immediately dangerous.";
        }

        ILookup<bool, RespiratorCheck> checks = Checks.ToLookup(check => check.Reaches);
        string[] reach = [.. checks[true].Select(check => check.Respirator
            + (IsImmediatelyDangerous ? " (" + check.Respirator.ForImmediateDanger + ")" : string.Empty))];
        string[] small = [.. checks[false].Where(check => check.Exclusion == RespiratorExclusion.None).Select(check => check.ToString())];
        return "Asked for: a protection factor of " + Figures.Significant(ratio, 2) + ". "
            + (IsImmediatelyDangerous
                ? "The air is immediately dangerous at its peak, so only the two kinds listed for that are left; "
                    + "better not to go in and to change the job. "
                : string.Empty)
            + (AsksForAir ? "Isocyanates: nothing that only filters. " : string.Empty)
            + (small.Length > 0 ? "Too little: " + string.Join("; ", small) + ". " : string.Empty)
            + (reach.Length > 0 ? "Factor reaches: " + string.Join("; ", reach) + "." : "No common kind reaches it: change the job.");
    }

    /// <summary>The comparison.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Comparison.ToString().StartsWith(About + ":", StringComparison.Ordinal) ? Comparison.ToString() : About + ": " + Comparison;

    /// <summary>Those that are not within their limit, beyond first.</summary>
    internal static ValueList<ProtectionNeed> Open(IEnumerable<ProtectionNeed> needs) => new(needs.Where(need => need.Comparison.Outcome != ComparisonOutcome.Within)
        .Distinct().OrderBy(need => need.Comparison.Outcome == ComparisonOutcome.Beyond ? 0 : 1));

    private RespiratorCheck Of(RespiratorClass kind) => new(kind, Comparison, AsksForAir, IsImmediatelyDangerous);
}
