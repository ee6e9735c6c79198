using System;
using System.Buffers;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using Refinish.Jobs;

namespace Refinish.Json.Shapes;

/// <summary>The inputs of two jobs, value by value.</summary>
internal static class InputComparer
{
    // What a customer asked for stands before what the shop set.
    private static readonly string[] Order =
        ["$.fixtures", "$.extras", "$.terms", "$.start", "$.days", "$.premises", "$.changes", "$.stock"];

    public static IReadOnlyList<ValueChange> Compare(Job before, Job after, DisplayUnits units)
    {
        using JsonDocument was = Shown(before, units);
        using JsonDocument now = Shown(after, units);
        return [.. ValueComparer.Compare("$", was.RootElement, now.RootElement, 0).OrderBy(change => Place(change.Path))];
    }

    private static JsonDocument Shown(Job job, DisplayUnits units)
    {
        ArrayBufferWriter<byte> bytes = new(65536);
        using (Utf8JsonWriter json = new(bytes, new JsonLayout { IsIndented = false }.Options))
        {
            JobShapes.Job.Write(json, job, new Writing(units) { IsShown = true });
        }

        return JsonDocument.Parse(bytes.WrittenMemory);
    }

    private static int Place(string path)
    {
        int place = Array.FindIndex(Order, start => path.StartsWith(start, StringComparison.Ordinal));
        return place < 0 ? Order.Length : place;
    }
}
