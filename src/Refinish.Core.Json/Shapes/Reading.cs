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
            faults.Add(new JsonFault(Path() + below, kind, sentence));
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

    private string Path()
    {
        StringBuilder text = new("$");
        foreach ((string? name, int index) in path)
        {
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
