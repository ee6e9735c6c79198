using System;
using System.Collections.Generic;
using System.Globalization;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>
/// A place in a stored document that is read for what it is, whatever else is wrong: a value that is missing is no fault, one in another
/// form is told and left out.
/// </summary>
/// <param name="json">The value; nothing when the place is not there.</param>
/// <param name="path">Its path.</param>
/// <param name="faults">Where faults are told.</param>
internal readonly struct Found(JsonElement? json, string path, List<JsonFault> faults)
{
    /// <summary>A field below; nothing when it is missing or null.</summary>
    public Found this[string field] => new(
        json is { ValueKind: JsonValueKind.Object } owner && owner.TryGetProperty(field, out JsonElement value)
            && value.ValueKind != JsonValueKind.Null
            ? value
            : null,
        path + "." + field,
        faults);

    public bool IsThere => json is not null;

    public string? Text
    {
        get
        {
            try
            {
                return json is { ValueKind: JsonValueKind.String } text ? text.GetString() : Fault<string>("a text");
            }
            catch (InvalidOperationException)
            {
                // Half of a surrogate pair, which the parser lets through.
                return Fault<string>("valid Unicode");
            }
        }
    }

    public decimal? Money => json is { ValueKind: JsonValueKind.Number } amount && amount.TryGetDecimal(out decimal number)
        ? number
        : Fault<decimal?>("an amount");

    public int? Count =>
        json is { ValueKind: JsonValueKind.Number } count && count.TryGetInt32(out int number) ? number : Fault<int?>("a whole number");

    public bool? YesNo =>
        json is { ValueKind: JsonValueKind.True or JsonValueKind.False } said ? said.GetBoolean() : Fault<bool?>("true or false");

    public DateTimeOffset? Instant => json is { ValueKind: JsonValueKind.String } text
        && Times.Instant.Read(text, new Reading(), out DateTimeOffset instant) == Outcome.Read
            ? instant : Fault<DateTimeOffset?>("an instant with its offset");

    public DateTime? Day => json is { ValueKind: JsonValueKind.String } text
        && Times.Day.Read(text, new Reading(), out DateTime day) == Outcome.Read ? day : Fault<DateTime?>("a date");

    public TimeSpan? Duration => json is JsonElement given && Quantity.TryOf(given, out _, out _)
        && Quantities.Duration.Read(given, new Reading(), out TimeSpan time) == Outcome.Read ? time : Fault<TimeSpan?>("a duration");

    /// <summary>The entries of a list; none when it is missing.</summary>
    public IEnumerable<Found> Items
    {
        get
        {
            if (json is not { ValueKind: JsonValueKind.Array } list)
            {
                Fault<string>("a list");
                yield break;
            }

            int index = 0;
            foreach (JsonElement item in list.EnumerateArray())
            {
                yield return new Found(item, path + "[" + index++.ToString(CultureInfo.InvariantCulture) + "]", faults);
            }
        }
    }

    /// <summary>A named value by its word; nothing for a word that this library does not know, which is no fault.</summary>
    public T? Word<T>()
        where T : struct, Enum => Text is string word ? Words<T>.All.Find(word) : null;

    private T? Fault<T>(string expected)
    {
        if (json is not null && faults.Count < Reading.Most)
        {
            faults.Add(new JsonFault(path, JsonFaultKind.WrongType, "The stored figure is not " + expected + "; it is left out."));
        }

        return default;
    }

    private static class Words<T>
        where T : struct, Enum
    {
        public static readonly WordShape<T> All = new();
    }
}
