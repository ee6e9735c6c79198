using System;
using System.Collections.Generic;
using System.Globalization;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>Holds stored results against new ones, place by place.</summary>
internal static class PlanComparer
{
    /// <summary>Numbers are written to twelve figures; platforms whose functions differ in the last digit of a double stay far below this.</summary>
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

    private static void CompareItems(string path, JsonElement stored, JsonElement now, List<PlanDifference> differences)
    {
        int were = stored.GetArrayLength();
        int are = now.GetArrayLength();
        for (int i = 0; i < Math.Max(were, are); i++)
        {
            string item = path + "[" + i.ToString(CultureInfo.InvariantCulture) + "]";
            if (i < were && i < are)
            {
                Compare(item, stored[i], now[i], differences);
            }
            else
            {
                differences.Add(new PlanDifference(item, i < were ? stored[i].GetRawText() : null, i < are ? now[i].GetRawText() : null));
            }
        }
    }

    private static bool Same(JsonElement stored, JsonElement now) => stored.ValueKind == now.ValueKind && now.ValueKind switch
    {
        JsonValueKind.Number => stored.TryGetDouble(out double was) && Near(was, now.GetDouble()),
        JsonValueKind.String => stored.ValueEquals(now.GetString()),
        _ => true,
    };

    private static bool Near(double was, double isNow) => Math.Abs(was - isNow) <= Tolerance * Math.Max(Math.Abs(was), Math.Abs(isNow)) || Math.Abs(was - isNow) < 1e-12;
}
