using System;
using System.Collections.Generic;

namespace Refinish;

/// <summary>Refuses lists in which two entries have one identifier.</summary>
internal static class Unique
{
    public static ValueList<T> Ids<T>(ValueList<T> items, Func<T, string> id, string name)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (T item in items)
        {
            if (!seen.Add(id(item)))
            {
                throw new ArgumentException(name + " holds '" + id(item) + "' twice; each entry needs an identifier of its own.", name);
            }
        }

        return items;
    }
}
