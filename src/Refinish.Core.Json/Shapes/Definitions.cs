using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;

namespace Refinish.Json.Shapes;

/// <summary>What places of a document have defined, by kind and identifier; later places name it by the identifier alone.</summary>
internal sealed class Definitions
{
    private readonly Dictionary<(Type Kind, string Id), object> known = [];

    /// <summary>
    /// Whether something that defines could not be read; what is not found may then be among it, and is no fault of its own.
    /// </summary>
    public bool IsDoubtful { get; set; }

    /// <summary>Notes a definition.</summary>
    /// <returns>Whether the identifier was free.</returns>
    public bool Add<T>(string id, T value)
        where T : class => known.TryAdd((typeof(T), id), value);

    public bool TryFind<T>(string id, [NotNullWhen(true)] out T? value)
        where T : class
    {
        value = known.TryGetValue((typeof(T), id), out object? found) ? (T)found : null;
        return value is not null;
    }

    public IEnumerable<string> Ids<T>()
    {
        foreach ((Type kind, string id) in known.Keys)
        {
            if (kind == typeof(T))
            {
                yield return id;
            }
        }
    }
}
