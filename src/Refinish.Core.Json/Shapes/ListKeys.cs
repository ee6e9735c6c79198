using System;
using System.Collections.Generic;
using System.Globalization;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>
/// What identifies an entry of a list: the first set of fields that it has. Entries without any, such as defects, are held against the one
/// that is alike, and what is left against what is left of the same kind.
/// </summary>
internal static class ListKeys
{
    private static readonly string[][] Sets =
    [
        ["id"], ["item", "size"], ["item", "unit"], ["repairs", "item"], ["item"], ["casNumber", "kind", "jurisdiction", "authority"],
        ["code"], ["before", "after"],
        ["operation", "kind"], ["operation"], ["worker"], ["zone"], ["solvent"],
    ];

    // Coats one on another, temperatures one after the other, changes that build on those before, stages of payment.
    private static readonly HashSet<string> Ordered = new(StringComparer.Ordinal) { "steps", "segments", "changes", "payments" };

    /// <summary>Whether the order of a list of this name says something.</summary>
    public static bool IsOrdered(string field) => Ordered.Contains(field);

    /// <summary>
    /// Whether a list of this name is one thing, such as the points of a mesh, of which no single entry tells anybody anything.
    /// </summary>
    public static bool IsWhole(string field) => field is "vertices" or "triangles";

    /// <summary>The condition of a JSON path that finds the entry; null when nothing identifies it.</summary>
    public static string? Of(JsonElement item)
    {
        if (item.ValueKind != JsonValueKind.Object)
        {
            return null;
        }

        foreach (string[] set in Sets)
        {
            List<string> conditions = [];
            foreach (string name in set)
            {
                if (item.TryGetProperty(name, out JsonElement value) && Condition(name, value) is string condition)
                {
                    conditions.Add(condition);
                }
            }

            if (conditions.Count == set.Length)
            {
                return string.Join(" && ", conditions);
            }
        }

        return null;
    }

    private static string? Condition(string name, JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.String when value.GetString() is { Length: > 0 } text => "@." + name + "=='" + Quoted(text) + "'",
        JsonValueKind.Object when Quantity.TryOf(value, out double number, out string unit) =>
            "@." + name + ".value==" + number.ToString("R", CultureInfo.InvariantCulture) + " && @." + name + ".unit=='" + Quoted(unit)
                + "'",
        _ => null,
    };

    private static string Quoted(string text) =>
        text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("'", "\\'", StringComparison.Ordinal);
}
