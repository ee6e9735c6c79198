using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>Reads what a temperature logger wrote, as comma-separated values, into a <see cref="TemperatureHistory"/>.</summary>
/// <remarks>
/// <para>First line: <c>time,celsius</c> or <c>time,fahrenheit</c>. Then a line for each reading: an instant as ISO 8601 with its
/// offset (<c>2026-03-03T17:00:00-05:00</c>, or <c>Z</c>), a comma, the temperature with a point as decimal sign. Empty lines and lines
/// that begin with # are skipped. Two readings or more, each later than the one before. An instant without an offset is refused: on the
/// night the clocks change it would be two.</para>
/// <para>Between two readings the temperature is taken as their mean. A gap longer than the one allowed is refused, not bridged.</para>
/// </remarks>
/// <example><code>
/// TemperatureHistory night = TemperatureLog.Parse(
///     "time,celsius\n" +
///     "2026-03-03T18:00:00-05:00,20.1\n" +
///     "2026-03-03T19:00:00-05:00,17.4\n" +
///     "2026-03-03T20:00:00-05:00,15.9\n");
/// </code></example>
public static class TemperatureLog
{
    private static readonly TimeSpan UsualGap = TimeSpan.FromHours(2);

    private static readonly Bounds Gaps = Bounds.Positive(Measure.Hours, 24 * 3600);

    private static readonly string[] Instants =
    [
        "yyyy-MM-dd'T'HH:mm:sszzz", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFzzz", "yyyy-MM-dd'T'HH:mmzzz", "yyyy-MM-dd HH:mm:sszzz", "yyyy-MM-dd HH:mmzzz",
        "yyyy-MM-dd'T'HH:mm:ss'Z'", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFF'Z'", "yyyy-MM-dd'T'HH:mm'Z'", "yyyy-MM-dd HH:mm:ss'Z'", "yyyy-MM-dd HH:mm'Z'",
    ];

    /// <summary>Reads a log from text, with at most 2 h between two readings.</summary>
    /// <param name="text">The log, lines ended by line feeds with or without carriage returns.</param>
    /// <returns>The history from the first reading to the last.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <exception cref="FormatException">The log is malformed; the message names the line.</exception>
    public static TemperatureHistory Parse(string text) => Parse(text, UsualGap);

    /// <summary>Reads a log from text.</summary>
    /// <param name="text">The log, lines ended by line feeds with or without carriage returns.</param>
    /// <param name="longestGap">Longest time allowed between two readings, more than 0 and at most 24 h.</param>
    /// <returns>The history from the first reading to the last.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="longestGap"/> is outside its range.</exception>
    /// <exception cref="FormatException">The log is malformed; the message names the line.</exception>
    public static TemperatureHistory Parse(string text, TimeSpan longestGap)
    {
        using StringReader reader = new(Guard.NotNull(text));
        return Read(reader, longestGap);
    }

    /// <summary>Reads a log from a reader that the caller opened and closes, with at most 2 h between two readings.</summary>
    /// <param name="reader">The log, read to its end.</param>
    /// <returns>The history from the first reading to the last.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="reader"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <exception cref="FormatException">The log is malformed; the message names the line.</exception>
    public static TemperatureHistory Read(TextReader reader) => Read(reader, UsualGap);

    /// <summary>Reads a log from a reader that the caller opened and closes.</summary>
    /// <param name="reader">The log, read to its end.</param>
    /// <param name="longestGap">Longest time allowed between two readings, more than 0 and at most 24 h.</param>
    /// <returns>The history from the first reading to the last.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="reader"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="longestGap"/> is outside its range.</exception>
    /// <exception cref="FormatException">The log is malformed; the message names the line.</exception>
    public static TemperatureHistory Read(TextReader reader, TimeSpan longestGap)
    {
        Guard.NotNull(reader);
        double gap = Guard.Within(longestGap, Gaps);
        bool? fahrenheit = null;
        DateTimeOffset start = default;
        DateTimeOffset last = default;
        double previous = double.NaN;
        int number = 0;
        List<TemperatureSegment> stretches = [];
        while (reader.ReadLine() is string line)
        {
            number++;
            line = line.Trim();
            if (line.Length == 0 || line[0] == '#')
            {
                continue;
            }

            if (fahrenheit is null)
            {
                fahrenheit = Unit(line, number);
                continue;
            }

            (DateTimeOffset instant, double kelvins) = Reading(line, number, fahrenheit.Value);
            if (double.IsNaN(previous))
            {
                start = instant;
            }
            else
            {
                double seconds = (instant.UtcTicks - last.UtcTicks) / (double)TimeSpan.TicksPerSecond;
                Require(seconds > 0, number, "the reading is not later than the one before");
                Require(seconds <= gap, number, "a gap of " + Measure.Hours.Format(seconds) + ", longer than the " + Measure.Hours.Format(gap) + " allowed");
                stretches.Add(new TemperatureSegment(instant - last, Temperature.FromKelvins((previous + kelvins) / 2)));
            }

            last = instant;
            previous = kelvins;
        }

        Require(fahrenheit is not null, number + 1, "there is no first line \"time,celsius\" or \"time,fahrenheit\"");
        Require(stretches.Count > 0, number + 1, "there are fewer than two readings");
        return new TemperatureHistory(start, stretches);
    }

    private static bool Unit(string line, int number)
    {
        string header = line.Replace(" ", string.Empty);
        bool fahrenheit = string.Equals(header, "time,fahrenheit", StringComparison.OrdinalIgnoreCase);
        Require(
            fahrenheit || string.Equals(header, "time,celsius", StringComparison.OrdinalIgnoreCase), number,
            "the first line has to be \"time,celsius\" or \"time,fahrenheit\"");
        return fahrenheit;
    }

    private static (DateTimeOffset Instant, double Kelvins) Reading(string line, int number, bool fahrenheit)
    {
        string[] cells = line.Split(',');
        Require(cells.Length == 2, number, "a time, a comma and a temperature are wanted");
        Require(
            DateTimeOffset.TryParseExact(
                cells[0].Trim(), Instants, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset instant),
            number,
            "the time is not ISO 8601 with an offset, such as 2026-03-03T17:00:00-05:00");
        Require(
            double.TryParse(
                cells[1], NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite | NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint,
                CultureInfo.InvariantCulture, out double shown),
            number,
            "the temperature is not a number with a point as decimal sign");
        double kelvins = Math.Round(fahrenheit ? (shown + 459.67) * 5 / 9 : shown + 273.15, 10);
        Require(TemperatureShift.Thermometer.Contains(kelvins), number, "the temperature has to be " + TemperatureShift.Thermometer);
        return (instant, kelvins);
    }

    private static void Require(bool holds, int line, string what)
    {
        if (!holds)
        {
            throw new FormatException("Line " + line.ToString(CultureInfo.InvariantCulture) + ": " + what + ".");
        }
    }
}
