using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.Json;
using Refinish.Jobs;

namespace Refinish.Json.Shapes;

/// <summary>Holds two documents against each other, value by value, and entries of lists by what identifies them.</summary>
/// <param name="tolerance">Numbers that differ by less than this part of the larger one are the same.</param>
internal sealed class ValueComparer(double tolerance)
{
    private const int MostPairs = 250_000;

    private readonly List<ValueChange> changes = [];

    public static List<ValueChange> Compare(string path, JsonElement before, JsonElement after, double tolerance)
    {
        ValueComparer comparer = new(tolerance);
        comparer.Compare(path, string.Empty, before, after);
        return comparer.changes;
    }

    private void Compare(string path, string field, JsonElement before, JsonElement after)
    {
        if (before.ValueKind == JsonValueKind.Object && after.ValueKind == JsonValueKind.Object)
        {
            bool isWhole = Quantity.TryOf(before, out _, out _) || Quantity.TryOf(after, out _, out _) || KindOf(before) != KindOf(after);
            if (!isWhole)
            {
                CompareFields(path, before, after);
            }
            else if (!Alike(before, after))
            {
                Add(path, before, after);
            }
        }
        else if (before.ValueKind == JsonValueKind.Array && after.ValueKind == JsonValueKind.Array && !ListKeys.IsWhole(field))
        {
            CompareItems(path, field, before, after);
        }
        else if (!Alike(before, after))
        {
            Add(path, before, after);
        }
    }

    private void CompareFields(string path, JsonElement before, JsonElement after)
    {
        foreach (JsonProperty field in after.EnumerateObject())
        {
            if (before.TryGetProperty(field.Name, out JsonElement was))
            {
                Compare(path + "." + field.Name, field.Name, was, field.Value);
            }
            else
            {
                Add(path + "." + field.Name, null, field.Value);
            }
        }

        foreach (JsonProperty field in before.EnumerateObject())
        {
            if (!after.TryGetProperty(field.Name, out _))
            {
                Add(path + "." + field.Name, field.Value, null);
            }
        }
    }

    private void CompareItems(string path, string field, JsonElement before, JsonElement after)
    {
        List<Item> left = Items(path, before);
        List<Item> now = Items(path, after);
        bool isOrdered = ListKeys.IsOrdered(field)
            || (left.Count > 0 && left.TrueForAll(item => item.Json.ValueKind == JsonValueKind.Number));
        if (isOrdered)
        {
            DropAlikeEnds(left, now);
        }
        else
        {
            MatchKeys(left, now);
            DropAlike(left, now);
        }

        Dictionary<string, Queue<Item>> rest = [];
        foreach (Item was in left)
        {
            string kind = isOrdered ? string.Empty : was.Key + "/" + KindOf(was.Json);
            rest.TryAdd(kind, []);
            rest[kind].Enqueue(was);
        }

        foreach (Item item in now)
        {
            // An entry that nothing identifies is held against what is left of its kind; one with an identity of its own has come.
            if ((isOrdered || item.Key is null)
                && rest.TryGetValue(isOrdered ? string.Empty : "/" + KindOf(item.Json), out Queue<Item>? same) && same.Count > 0)
            {
                Compare(item.Path, string.Empty, same.Dequeue().Json, item.Json);
            }
            else
            {
                Add(item.Path, null, item.Json);
            }
        }

        foreach (Item was in rest.Values.SelectMany(queue => queue))
        {
            Add(was.Path, was.Json, null);
        }
    }

    private void MatchKeys(List<Item> left, List<Item> now)
    {
        Dictionary<(string Key, int Nth), Item> keyed = [];
        foreach (Item was in left.Where(was => was.Key is not null))
        {
            keyed.Add((was.Key!, was.Nth), was);
        }

        HashSet<Item> found = new(ReferenceEqualityComparer.Instance);
        foreach (Item item in now.Where(item => item.Key is not null))
        {
            if (keyed.TryGetValue((item.Key!, item.Nth), out Item? was))
            {
                Compare(was.Path, string.Empty, was.Json, item.Json);
                found.Add(was);
                found.Add(item);
            }
        }

        left.RemoveAll(found.Contains);
        now.RemoveAll(found.Contains);
    }

    // Of lists of thousands, as only a document made to keep a reader busy has them, the ends are compared and not every pair.
    private void DropAlike(List<Item> left, List<Item> now)
    {
        if ((long)left.Count * now.Count > MostPairs)
        {
            DropAlikeEnds(left, now);
            return;
        }

        for (int i = now.Count - 1; i >= 0; i--)
        {
            int at = now[i].Key is not null ? -1 : left.FindLastIndex(was => was.Key is null && Alike(was.Json, now[i].Json));
            if (at >= 0)
            {
                left.RemoveAt(at);
                now.RemoveAt(i);
            }
        }
    }

    // What stands the same at both ends of a list; what is left between is another stretch of it.
    private void DropAlikeEnds(List<Item> left, List<Item> now)
    {
        int most = Math.Min(left.Count, now.Count);
        int first = 0;
        while (first < most && Alike(left[first].Json, now[first].Json))
        {
            first++;
        }

        int last = 0;
        while (last < most - first && Alike(left[^(last + 1)].Json, now[^(last + 1)].Json))
        {
            last++;
        }

        left.RemoveRange(left.Count - last, last);
        now.RemoveRange(now.Count - last, last);
        left.RemoveRange(0, first);
        now.RemoveRange(0, first);
    }

    private static List<Item> Items(string path, JsonElement list)
    {
        Dictionary<string, int> seen = new(StringComparer.Ordinal);
        List<Item> items = [];
        foreach (JsonElement json in list.EnumerateArray())
        {
            string? key = ListKeys.Of(json);
            int nth = 0;
            if (key is not null)
            {
                nth = seen.GetValueOrDefault(key);
                seen[key] = nth + 1;
            }

            string place = key is not null && nth == 0 ? "[?" + key + "]" : "[" + items.Count.ToString(CultureInfo.InvariantCulture) + "]";
            items.Add(new Item(key, nth, path + place, json));
        }

        return items;
    }

    private void Add(string path, JsonElement? before, JsonElement? after)
    {
        (double? was, string? unitWas) = NumberOf(before);
        (double? now, string? unitNow) = NumberOf(after);
        changes.Add(new ValueChange
        {
            Path = path,
            Before = before?.GetRawText(),
            After = after?.GetRawText(),
            NumberBefore = was,
            UnitBefore = unitWas,
            NumberAfter = now,
            UnitAfter = unitNow,
        });
    }

    private static (double? Number, string? Unit) NumberOf(JsonElement? json) => json switch
    {
        { ValueKind: JsonValueKind.Number } given when given.TryGetDouble(out double number) && double.IsFinite(number) => (number, null),
        JsonElement given when Quantity.TryOf(given, out double number, out string unit) => (number, unit),
        _ => (null, null),
    };

    private static string? KindOf(JsonElement json) =>
        json.ValueKind == JsonValueKind.Object && json.TryGetProperty("kind", out JsonElement kind)
        && kind.ValueKind == JsonValueKind.String ? kind.GetString() : null;

    // Entry by entry in order: two objects whose lists stand in another order are told apart here and found alike when they are compared.
    private bool Alike(JsonElement before, JsonElement after) => before.ValueKind == after.ValueKind && after.ValueKind switch
    {
        JsonValueKind.Number => before.GetRawText() == after.GetRawText()
            || (before.TryGetDouble(out double was) && double.IsFinite(was) && after.TryGetDouble(out double now) && Near(was, now)),
        JsonValueKind.String => before.ValueEquals(after.GetString()),
        JsonValueKind.Object => before.EnumerateObject().Count() == after.EnumerateObject().Count()
            && before.EnumerateObject().All(field => after.TryGetProperty(field.Name, out JsonElement other) && Alike(field.Value, other)),
        JsonValueKind.Array => before.GetArrayLength() == after.GetArrayLength()
            && before.EnumerateArray().Zip(after.EnumerateArray()).All(pair => Alike(pair.First, pair.Second)),
        _ => true,
    };

    private bool Near(double was, double now) =>
        was == now || (tolerance > 0
            && (Math.Abs(was - now) <= tolerance * Math.Max(Math.Abs(was), Math.Abs(now)) || Math.Abs(was - now) < 1e-12));

    private sealed record Item(string? Key, int Nth, string Path, JsonElement Json);
}
