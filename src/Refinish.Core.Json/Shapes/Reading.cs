using System;
using System.Collections.Generic;
using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>One pass over a document: the path on which it stands and the faults found so far.</summary>
internal sealed class Reading
{
    /// <summary>More than this is not worth a reader's time, and would let a hostile document make work without end.</summary>
    public const int Most = 100;

    // A name or a text of the document may be as long as the document; what is told of it is not.
    private const int LongestName = 100;
    private const int LongestSentence = 4000;

    private readonly List<(string? Name, int Index)> path = [];
    private readonly List<JsonFault> faults = [];

    public IReadOnlyList<JsonFault> Faults => faults;

    public Definitions Definitions { get; } = new();

    public bool IsFull => faults.Count >= Most;

    public void Enter(string name) => path.Add((name, 0));

    public void Enter(int index) => path.Add((null, index));

    public void Leave() => path.RemoveAt(path.Count - 1);

    public void Fault(JsonFaultKind kind, string sentence, string below = "")
    {
        if (!IsFull)
        {
            faults.Add(new JsonFault(Path() + below, kind, Cut(sentence, LongestSentence)));
        }
    }

    public void FaultAt(string name, JsonFaultKind kind, string sentence)
    {
        Enter(name);
        Fault(kind, sentence);
        Leave();
    }

    public void WrongType(JsonElement json, string expected) =>
        Fault(JsonFaultKind.WrongType, "There is " + InWords(json.ValueKind) + "; expected: " + expected + ".");

    private static string InWords(JsonValueKind kind) => kind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "an array",
        JsonValueKind.String => "a text",
        JsonValueKind.Number => "a number",
        JsonValueKind.Null => "null",
        _ => "true or false",
    };

    // The two ends of a long text, no half of a pair of surrogates among them.
    private static string Cut(string text, int longest)
    {
        if (text.Length <= longest)
        {
            return text;
        }

        int head = longest / 2;
        int tail = text.Length - (longest / 2);
        return text[..(char.IsHighSurrogate(text[head - 1]) ? head - 1 : head)] + " … "
            + text[(char.IsLowSurrogate(text[tail]) ? tail + 1 : tail)..];
    }

    private string Path()
    {
        StringBuilder text = new("$");
        foreach ((string? given, int index) in path)
        {
            string? name = given is null ? null : Cut(given, LongestName);
            if (name is null)
            {
                text.Append(CultureInfo.InvariantCulture, $"[{index}]");
            }
            else if (IsPlain(name))
            {
                text.Append('.').Append(name);
            }
            else
            {
                text.Append("['").Append(name.Replace("'", "\\'", StringComparison.Ordinal)).Append("']");
            }
        }

        return text.ToString();
    }

    private static bool IsPlain(string name)
    {
        foreach (char c in name)
        {
            if (!char.IsAsciiLetterOrDigit(c) && c is not ('_' or '$'))
            {
                return false;
            }
        }

        return name.Length > 0;
    }
}
