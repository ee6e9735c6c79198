using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish;

/// <summary>
/// What a result rests on: its sources, each once, by kind. An application shows with it how much is invented or recalled.
/// </summary>
/// <remarks>
/// It counts sources and not their weight: one invented figure can carry more of a price than twenty published ones. Nor does it know of
/// inputs: a default that was left as it is, such as the delivered share of a fan, counts by the formula it enters.
/// </remarks>
/// <example><code>
/// Provenance behind = new WetFilm(Length.FromMicrometers(30), Ratio.FromPercent(40)).Workings().Provenance();
/// int invented = behind.Of(SourceKind.Invented).Count;   // 0
/// </code></example>
public sealed class Provenance
{
    internal Provenance(IEnumerable<Source> sources) => Sources = new ValueList<Source>(sources.Distinct());

    /// <summary>The sources, each once, in the order in which the result meets them.</summary>
    public IReadOnlyList<Source> Sources { get; }

    /// <summary>Those of one kind, in the same order.</summary>
    /// <param name="kind">Which kind.</param>
    /// <returns>A part of <see cref="Sources"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is not a named value.</exception>
    public IReadOnlyList<Source> Of(SourceKind kind)
    {
        Guard.Defined(kind);
        return new ValueList<Source>(Sources.Where(source => source.Kind == kind));
    }

    /// <summary>How many sources of each kind there are; of the published ones, how many were not read in the document itself.</summary>
    /// <returns>
    /// Text such as <c>12 published (3 second-hand, 2 partly from memory), 4 from memory, 5 common practice, 6 invented, 30 derived,
    /// 2 supplied</c>; kinds that do not occur are left out.
    /// </returns>
    public override string ToString()
    {
        int second = Count(SourceKind.Published, Standing.SecondHand);
        int recalled = Count(SourceKind.Published, Standing.FromMemory);
        string notRead = Listed((second, "second-hand"), (recalled, "partly from memory"));
        return Listed(
            (Count(SourceKind.Published), "published" + (notRead.Length == 0 ? string.Empty : " (" + notRead + ")")),
            (Count(SourceKind.FromMemory), "from memory"),
            (Count(SourceKind.CommonPractice), "common practice"),
            (Count(SourceKind.Invented), "invented"),
            (Count(SourceKind.Derived), "derived"),
            (Count(SourceKind.Supplied), "supplied"));
    }

    private static string Listed(params (int Count, string What)[] counts) =>
        string.Join(", ", counts.Where(each => each.Count > 0).Select(each => Figures.Fixed(each.Count, 0) + " " + each.What));

    private int Count(SourceKind kind, Standing? standing = null) =>
        Sources.Count(source => source.Kind == kind && (standing is null || source.Standing == standing));
}
