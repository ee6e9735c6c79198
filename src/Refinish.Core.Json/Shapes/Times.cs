using System;
using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>Instants, days and clock times: texts of ISO 8601, whatever the culture and the time zone of the machine.</summary>
internal static class Times
{
    private const string DateTimeText = "yyyy-MM-dd'T'HH:mm:ss.FFFFFFF";

    /// <summary>
    /// An instant with the offset of its clock, such as 2027-03-01T08:00:00+01:00. An offset is required: without one it would be another
    /// instant on every machine.
    /// </summary>
    public static Shape<DateTimeOffset> Instant { get; } = new TextOf<DateTimeOffset>(
        "\"type\": \"string\", \"format\": \"date-time\"",
        "an instant with its offset from UTC, such as 2027-03-01T08:00:00+01:00",
        TryInstant,
        instant => instant.ToString(DateTimeText + "zzz", CultureInfo.InvariantCulture),
        new DateTimeOffset(2000, 1, 3, 8, 0, 0, TimeSpan.Zero));

    /// <summary>A day, such as 2027-03-01.</summary>
    public static Shape<DateTime> Day { get; } = new TextOf<DateTime>(
        "\"type\": \"string\", \"format\": \"date\"",
        "a date, such as 2027-03-01",
        (string text, out DateTime day) => DateTime.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None,
            out day),
        day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        new DateTime(2000, 1, 3));

    /// <summary>A time on the clock of the site, such as 08:00; 24:00 is the end of the day.</summary>
    public static Shape<TimeSpan> Clock { get; } = new TextOf<TimeSpan>(
        "\"type\": \"string\", \"pattern\": \"^([01][0-9]|2[0-3]):[0-5][0-9](:[0-5][0-9](\\\\.[0-9]{1,7})?)?$|^24:00$\"",
        "a time on the clock from 00:00 to 24:00, such as 08:00",
        TryClock,
        WriteClock,
        TimeSpan.FromHours(8));

    /// <summary>How far a clock is ahead of UTC, such as +01:00.</summary>
    public static Shape<TimeSpan> Offset { get; } = new TextOf<TimeSpan>(
        "\"type\": \"string\", \"pattern\": \"^[+-](0[0-9]|1[0-4]):[0-5][0-9]$\"",
        "an offset from UTC, such as +01:00",
        TryOffset,
        offset => (offset < TimeSpan.Zero ? "-" : "+") + offset.ToString("hh\\:mm", CultureInfo.InvariantCulture),
        TimeSpan.Zero);

    private delegate bool TryParse<T>(string text, out T value);

    private static bool TryInstant(string text, out DateTimeOffset instant) =>
        DateTimeOffset.TryParseExact(
            text,
            [DateTimeText + "zzz", "yyyy-MM-dd'T'HH:mmzzz"],
            CultureInfo.InvariantCulture,
            DateTimeStyles.None,
            out instant)
        || DateTimeOffset.TryParseExact(
            text,
            [DateTimeText + "'Z'", "yyyy-MM-dd'T'HH:mm'Z'"],
            CultureInfo.InvariantCulture,
            DateTimeStyles.AssumeUniversal,
            out instant);

    private static bool TryClock(string text, out TimeSpan time)
    {
        if (text == "24:00")
        {
            time = TimeSpan.FromDays(1);
            return true;
        }

        return TimeSpan.TryParseExact(text, ["hh\\:mm", "hh\\:mm\\:ss", "hh\\:mm\\:ss\\.FFFFFFF"], CultureInfo.InvariantCulture, out time);
    }

    private static string WriteClock(TimeSpan time) =>
        time == TimeSpan.FromDays(1) ? "24:00" : time.ToString(
            time.Ticks % TimeSpan.TicksPerMinute == 0 ? "hh\\:mm" : time.Ticks % TimeSpan.TicksPerSecond == 0
                ? "hh\\:mm\\:ss"
                : "hh\\:mm\\:ss\\.FFFFFFF",
            CultureInfo.InvariantCulture);

    private static bool TryOffset(string text, out TimeSpan offset)
    {
        bool isRead = TimeSpan.TryParseExact(text.Length == 6 ? text[1..] : string.Empty, "hh\\:mm", CultureInfo.InvariantCulture,
            out offset);
        offset = isRead && text[0] == '-' ? -offset : offset;
        return isRead && text[0] is '+' or '-';
    }

    private sealed class TextOf<T>(string keywords, string expected, TryParse<T> parse, Func<T, string> write, T standIn)
        : ScalarShape<T>(keywords, standIn)
    {
        public override Outcome Read(JsonElement json, Reading reading, out T value)
        {
            if (json.ValueKind != JsonValueKind.String)
            {
                reading.WrongType(json, expected);
                return Nothing(out value);
            }

            string text = json.GetString()!;
            if (!parse(text, out value))
            {
                reading.Fault(JsonFaultKind.WrongType, "\"" + text + "\" is not " + expected + ".");
                return Nothing(out value);
            }

            return Outcome.Read;
        }

        public override void Write(Utf8JsonWriter json, T value, Writing to) =>

            // Digits and signs alone: the plus sign, which some encoders would spell out, stays a plus sign.
            json.WriteStringValue(JsonEncodedText.Encode(write(value), JavaScriptEncoder.UnsafeRelaxedJsonEscaping));
    }
}
