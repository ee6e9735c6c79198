using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using System.Text.Json.Nodes;
using Refinish.Jobs;

namespace Refinish.Json.Tests;

/// <summary>A job with some of its inputs at the ends of what is legal.</summary>
internal sealed class SweepCase
{
    private const string Separator = " | ";

    private readonly string text;

    public SweepCase(string name, IReadOnlyList<(SweptInput Input, JsonNode Value)> values)
        : this(name, [.. values.Select(each => (each.Input.Path, each.Value))])
    {
    }

    private SweepCase(string name, (string Path, JsonNode Value)[] values)
    {
        text = string.Join(Separator, values.Select(each => each.Path + "=" + each.Value.ToJsonString()).Prepend(name));
        JsonNode document = SweepBases.Document(name);
        foreach ((string path, JsonNode value) in values)
        {
            SweptInput.Set(document, path, value.DeepClone());
        }

        Refusal = JobJson.TryRead(JsonSerializer.SerializeToUtf8Bytes(document), out Job? job, out IReadOnlyList<JsonFault> faults)
            ? string.Empty
            : string.Join(' ', faults);
        Job = job;
    }

    /// <summary>The job; null where the values cannot stand together.</summary>
    public Job? Job { get; }

    public string Refusal { get; }

    public static SweepCase Parse(string text)
    {
        string[] parts = text.Split(Separator);
        return new SweepCase(parts[0], [.. parts[1..].Select(part => part.Split('=', 2)).Select(part => (part[0], JsonNode.Parse(part[1])!))]);
    }

    public IReadOnlyList<string> Faults(bool readAgain) => Job is null ? [] : PlanFaults.Of(Job, readAgain);

    public override string ToString() => "REFINISH_SWEEP_CASE='" + text + "'\n    ";
}
