using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>What the schema asks of named values.</summary>
internal interface IWordShape
{
    IReadOnlyList<string> Words { get; }
}

/// <summary>One of the named values of an enumeration, written with a small first letter.</summary>
internal sealed class WordShape<T> : Shape<T>, IWordShape
    where T : struct, Enum
{
    private readonly T[] known;
    private readonly string[] words;

    public WordShape()
        : this(name => char.ToLowerInvariant(name[0]) + name[1..])
    {
    }

    public WordShape(Func<string, string> spell)
        : this(Enum.GetValues<T>(), spell)
    {
    }

    /// <summary>Only some of the values, as where a value stands for none of them.</summary>
    public WordShape(T[] known)
        : this(known, name => char.ToLowerInvariant(name[0]) + name[1..])
    {
    }

    private WordShape(T[] known, Func<string, string> spell)
    {
        this.known = known;
        words = [.. known.Select(value => spell(value.ToString()))];
    }

    public IReadOnlyList<string> Words => words;

    public override IEnumerable<T> StandIns => known;

    /// <summary>The value of a word; null when it is not known.</summary>
    public T? Find(string word) => Array.IndexOf(words, word) is >= 0 and int at ? known[at] : null;

    public override Outcome Read(JsonElement json, Reading reading, out T value)
    {
        if (json.ValueKind != JsonValueKind.String)
        {
            reading.WrongType(json, "a word as a text");
            return Nothing(out value);
        }

        for (int i = 0; i < words.Length; i++)
        {
            if (json.ValueEquals(words[i]))
            {
                value = known[i];
                return Outcome.Read;
            }
        }

        string given = json.GetString()!;
        reading.Fault(JsonFaultKind.UnknownKind, "\"" + given + "\" is not known; one of: " + string.Join(", ", words) + "."
            + Spelling.Suggestion(given, words));
        return Nothing(out value);
    }

    public override void Write(Utf8JsonWriter json, T value, Writing to) => json.WriteStringValue(words[Array.IndexOf(known, value)]);
}
