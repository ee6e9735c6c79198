using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.RegularExpressions;

namespace Refinish.Tests.Support;

/// <summary>How much of one caution's wording stands in another's.</summary>
internal static class CautionWords
{
    /// <summary>
    /// Half of the shorter text's words of more than three letters. Pairs that said the same before they were merged shared 53 to 93 % where
    /// they used the same words; the closest pair that says two things (a quarter and a tenth of the flammable limit) shares 46 %. It finds
    /// copies, not paraphrases.
    /// </summary>
    public const double Threshold = 0.5;

    public static bool SayTheSame(Caution one, Caution other) => one.Hazard == other.Hazard && Overlap(one.Sentence, other.Sentence) >= Threshold;

    public static double Overlap(string one, string other)
    {
        HashSet<string> first = Words(one);
        HashSet<string> second = Words(other);
        return (double)first.Intersect(second).Count() / Math.Min(first.Count, second.Count);
    }

    private static HashSet<string> Words(string text) =>
        [.. Regex.Matches(text.ToLowerInvariant(), "[a-z]+").Cast<Match>().Select(match => match.Value).Where(word => word.Length > 3)];
}
