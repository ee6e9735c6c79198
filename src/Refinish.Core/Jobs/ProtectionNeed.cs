using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;

namespace Refinish.Jobs;

/// <summary>
/// An exposure that is beyond its limit or cannot be judged, about a room or a person: how far off, and which respirators have an assigned protection
/// factor that reaches it. It is a screening number; the employer's respiratory protection programme decides.
/// </summary>
public sealed record ProtectionNeed
{
    internal ProtectionNeed(string about, LimitComparison comparison, bool asksForAir)
    {
        About = about;
        Comparison = comparison;
        AsksForAir = asksForAir;
    }

    /// <summary>Identifier of the room or of the person.</summary>
    public string About { get; }

    /// <summary>The value, its limit and how far off it is.</summary>
    public LimitComparison Comparison { get; }

    /// <summary>Whether only respirators that supply air come into question, as for isocyanates.</summary>
    public bool AsksForAir { get; }

    /// <summary>Value over limit: the least protection factor; <see langword="null"/> when it cannot be judged.</summary>
    public double? HazardRatio => Comparison.Value is double value && Comparison.Limit is double limit && limit > 0 ? value / limit : null;

    /// <summary>Respirators whose assigned protection factor reaches the ratio, smallest first; empty when none does or when it cannot be judged.</summary>
    public IReadOnlyList<RespiratorClass> Respirators => HazardRatio is double ratio
        ? new ValueList<RespiratorClass>(RespiratorClass.AtLeast(ratio).Where(kind => kind.SuppliesAir || !AsksForAir))
        : ValueList<RespiratorClass>.Empty;

    /// <summary>The comparison.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Comparison.ToString().StartsWith(About + ":", StringComparison.Ordinal) ? Comparison.ToString() : About + ": " + Comparison;

    /// <summary>Those that are not within their limit, beyond first.</summary>
    internal static ValueList<ProtectionNeed> Open(IEnumerable<ProtectionNeed> needs) => new(needs.Where(need => need.Comparison.Outcome != ComparisonOutcome.Within)
        .Distinct().OrderBy(need => need.Comparison.Outcome == ComparisonOutcome.Beyond ? 0 : 1));
}
