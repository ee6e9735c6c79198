using System;
using System.Collections.Generic;

namespace Refinish.Jobs;

/// <summary>
/// Two lists held against each other by the identity of their entries, wherever they stand; the n-th against the n-th where several share
/// one.
/// </summary>
internal sealed class Pairs<T>
    where T : class
{
    public Pairs(IEnumerable<T> before, IEnumerable<T> after, Func<T, string> id)
    {
        Dictionary<(string Id, int Nth), int> places = [];
        foreach (((string Id, int Nth) key, T item) in Numbered(before, id))
        {
            places.Add(key, All.Count);
            All.Add(new(item, null, key.Id, key.Nth));
        }

        foreach (((string Id, int Nth) key, T item) in Numbered(after, id))
        {
            if (places.TryGetValue(key, out int place))
            {
                All[place] = All[place] with { After = item };
            }
            else
            {
                All.Add(new(null, item, key.Id, key.Nth));
            }
        }
    }

    public List<Pair> All { get; } = [];

    private static IEnumerable<((string Id, int Nth) Key, T Item)> Numbered(IEnumerable<T> items, Func<T, string> id)
    {
        Dictionary<string, int> seen = new(StringComparer.Ordinal);
        foreach (T item in items)
        {
            string key = id(item);
            seen.TryGetValue(key, out int nth);
            seen[key] = nth + 1;
            yield return ((key, nth), item);
        }
    }

    public sealed record Pair(T? Before, T? After, string Id, int Nth)
    {
        /// <summary>The identity, with a number where several share one.</summary>
        public string Key => Nth == 0 ? Id : Id + "#" + Figures.Fixed(Nth + 1, 0);

        public ChangeKind Kind => ChangeKinds.Of(Before, After);
    }
}
