using System;
using System.Collections.Generic;
using System.Globalization;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>Holds stored results against new ones, place by place, and entries of lists by their identifiers.</summary>
internal static class PlanComparer
{
    /// <summary>
    /// Numbers are written to twelve figures; platforms whose functions differ in the last digit of a double stay far below this.
    /// </summary>
    private const double Tolerance = 1e-9;

    public static IReadOnlyList<PlanDifference> Compare(JsonElement stored, JsonElement now)
    {
        List<PlanDifference> differences = [];
        Compare("$.results", stored, now, differences);
        return differences;
    }

    private static void Compare(string path, JsonElement stored, JsonElement now, List<PlanDifference> differences)
    {
        if (stored.ValueKind == JsonValueKind.Object && now.ValueKind == JsonValueKind.Object)
        {
            CompareFields(path, stored, now, differences);
        }
        else if (stored.ValueKind == JsonValueKind.Array && now.ValueKind == JsonValueKind.Array)
        {
            CompareItems(path, stored, now, differences);
        }
        else if (!Same(stored, now))
        {
            differences.Add(new PlanDifference(path, stored.GetRawText(), now.GetRawText()));
        }
    }

    private static void CompareFields(string path, JsonElement stored, JsonElement now, List<PlanDifference> differences)
    {
        foreach (JsonProperty field in now.EnumerateObject())
        {
            if (stored.TryGetProperty(field.Name, out JsonElement was))
            {
                Compare(path + "." + field.Name, was, field.Value, differences);
            }
            else
            {
                differences.Add(new PlanDifference(path + "." + field.Name, null, field.Value.GetRawText()));
            }
        }

        foreach (JsonProperty field in stored.EnumerateObject())
        {
            if (!now.TryGetProperty(field.Name, out _))
            {
                differences.Add(new PlanDifference(path + "." + field.Name, field.Value.GetRawText(), null));
            }
        }
    }

    // Entries with an identifier are held against the entry of that identifier, wherever it stands; the n-th against the n-th where several
    // share one.
    private static void CompareItems(string path, JsonElement stored, JsonElement now, List<PlanDifference> differences)
    {
        Dictionary<(string Key, int Nth), (JsonElement Item, string Path)> left = [];
        foreach ((string key, int nth, string place, JsonElement item) in Keyed(path, stored))
        {
            left.Add((key, nth), (item, place));
        }

        foreach ((string key, int nth, string place, JsonElement item) in Keyed(path, now))
        {
            if (left.Remove((key, nth), out (JsonElement Item, string Path) was))
            {
                Compare(was.Path, was.Item, item, differences);
            }
            else
            {
                differences.Add(new PlanDifference(place, null, item.GetRawText()));
            }
        }

        foreach ((JsonElement item, string place) in left.Values)
        {
            differences.Add(new PlanDifference(place, item.GetRawText(), null));
        }
    }

    private static IEnumerable<(string Key, int Nth, string Path, JsonElement Item)> Keyed(string path, JsonElement list)
    {
        Dictionary<string, int> seen = new(StringComparer.Ordinal);
        int index = 0;
        foreach (JsonElement item in list.EnumerateArray())
        {
            (string Name, string Value)? identifier = IdentifierOf(item);
            string key = identifier?.Value ?? string.Empty;
            int nth = seen.GetValueOrDefault(key);
            seen[key] = nth + 1;
            string place = identifier is (string name, string value) && nth == 0
                ? "[?@." + name + "=='" + Quoted(value) + "']"
                : "[" + index.ToString(CultureInfo.InvariantCulture) + "]";
            yield return (key, nth, path + place, item);
            index++;
        }
    }

    private static (string Name, string Value)? IdentifierOf(JsonElement item)
    {
        foreach (string name in (ReadOnlySpan<string>)["id", "code"])
        {
            if (item.ValueKind == JsonValueKind.Object && item.TryGetProperty(name, out JsonElement id)
                && id.ValueKind == JsonValueKind.String && id.GetString() is { Length: > 0 } text)
            {
                return (name, text);
            }
        }

        return null;
    }

    private static string Quoted(string text) =>
        text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("'", "\\'", StringComparison.Ordinal);

    private static bool Same(JsonElement stored, JsonElement now) => stored.ValueKind == now.ValueKind && now.ValueKind switch
    {
        JsonValueKind.Number => stored.TryGetDouble(out double was) && double.IsFinite(was) && Near(was, now.GetDouble()),
        JsonValueKind.String => stored.ValueEquals(now.GetString()),
        _ => true,
    };

    private static bool Near(double was, double isNow) =>
        Math.Abs(was - isNow) <= Tolerance * Math.Max(Math.Abs(was), Math.Abs(isNow)) || Math.Abs(was - isNow) < 1e-12;
}
