using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>One of a list that the library has, by its identifier.</summary>
internal sealed class NamedShape<T>(IReadOnlyList<T> all, Func<T, string> id)
    : ScalarShape<T>("\"enum\": [" + string.Join(", ", all.Select(one => "\"" + id(one) + "\"")) + "]", [.. all])
    where T : class
{
    public override Outcome Read(JsonElement json, Reading reading, out T value)
    {
        if (json.ValueKind != JsonValueKind.String)
        {
            reading.WrongType(json, "a word as a text");
            return Nothing(out value);
        }

        string given = json.GetString()!;
        if (all.FirstOrDefault(one => id(one) == given) is T known)
        {
            value = known;
            return Outcome.Read;
        }

        IEnumerable<string> words = all.Select(id);
        reading.Fault(JsonFaultKind.UnknownKind, "\"" + given + "\" is not known; one of: " + string.Join(", ", words) + "."
            + Spelling.Suggestion(given, words));
        return Nothing(out value);
    }

    public override void Write(Utf8JsonWriter json, T value, Writing to) => json.WriteStringValue(id(value));
}
