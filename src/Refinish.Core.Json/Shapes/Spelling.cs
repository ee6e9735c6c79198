using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Json.Shapes;

/// <summary>Which known word a misspelt one is likely to be.</summary>
internal static class Spelling
{
    public static string Suggestion(string given, IEnumerable<string> known) =>
        Nearest(given, known) is string near ? " Is \"" + near + "\" meant?" : string.Empty;

    /// <summary>
    /// The symbol that a word or mark for a unit most likely stands for; the marks of inch and foot are one letter away from anything.
    /// </summary>
    public static string UnitSuggestion(string given, IEnumerable<string> known)
    {
        string? symbol = given.ToLowerInvariant() switch
        {
            "\"" or "″" or "inch" or "inches" => "in",
            "'" or "′" or "foot" or "feet" => "ft",
            _ => null,
        };
        return symbol is not null && known.Contains(symbol) ? " Is \"" + symbol + "\" meant?" : Suggestion(given, known);
    }

    /// <summary>The known word that takes the fewest letters to be changed, at most a third of them.</summary>
    private static string? Nearest(string given, IEnumerable<string> known) =>
        given.Length is < 2 or > 64 ? null : known
            .Select(word => (Word: word, Changes: Changes(given, word)))
            .Where(pair => pair.Changes <= Math.Max(1, Math.Max(given.Length, pair.Word.Length) / 3))
            .OrderBy(pair => pair.Changes)
            .Select(pair => pair.Word)
            .FirstOrDefault();

    // Letters put in, left out, replaced, or swapped with their neighbour; upper and lower case count as one.
    private static int Changes(string left, string right)
    {
        int[,] least = new int[left.Length + 1, right.Length + 1];
        for (int i = 0; i <= left.Length; i++)
        {
            for (int j = 0; j <= right.Length; j++)
            {
                least[i, j] = i == 0 ? j : j == 0 ? i : Math.Min(
                    Math.Min(least[i - 1, j], least[i, j - 1]) + 1,
                    least[i - 1, j - 1] + (Same(i, j) ? 0 : 1));
                if (i > 1 && j > 1 && Same(i, j - 1) && Same(i - 1, j))
                {
                    least[i, j] = Math.Min(least[i, j], least[i - 2, j - 2] + 1);
                }
            }
        }

        return least[left.Length, right.Length];

        bool Same(int i, int j) => char.ToUpperInvariant(left[i - 1]) == char.ToUpperInvariant(right[j - 1]);
    }
}
