using System;
using System.Collections;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text.RegularExpressions;
using UnitsNet;

/// <summary>Holds a value, or what was printed, to what the comment beside it says, to the printed digits.</summary>
internal static class Said
{
    private static readonly TextWriter Screen = Console.Out;
    private static StringWriter paper = new();

    public static int Failures { get; private set; }

    /// <summary>Runs an example; what it prints is caught, what it throws is a failure.</summary>
    public static void Run(string where, Action example)
    {
        paper = new StringWriter(CultureInfo.InvariantCulture);
        Console.SetOut(paper);
        try
        {
            example();
        }
        catch (Exception thrown)
        {
            Fail(where + ": " + thrown.GetType().Name + ": " + thrown.Message);
        }
        finally
        {
            Console.SetOut(Screen);
        }
    }

    /// <summary>What is printed from here on is what the next comment is held to.</summary>
    public static void Mark() => paper.GetStringBuilder().Clear();

    /// <summary>A comment's lines against the lines printed since the mark. A line that ends in … leaves its rest out, a line that is … all that follow.</summary>
    public static void Printed(string where, params string[] said)
    {
        string[] printed = paper.ToString().TrimEnd().Replace("\r", string.Empty).Split('\n');
        bool open = said.Length > 0 && said[said.Length - 1] == "…";
        int count = open ? said.Length - 1 : said.Length;
        bool same = open ? printed.Length >= count : printed.Length == count;
        for (int i = 0; same && i < count; i++)
        {
            same = said[i].EndsWith('…') ? printed[i].TrimStart().StartsWith(said[i].TrimEnd('…'), StringComparison.Ordinal) : printed[i].Trim() == said[i];
        }

        if (!same)
        {
            Fail(where + ": the comment says\n    " + string.Join("\n    ", said) + "\n  and it prints\n    " + string.Join("\n    ", printed));
        }
    }

    /// <summary>A value against the comment on its line.</summary>
    public static void Holds(string where, object value, string said)
    {
        if (Matches(value, said) is string fault)
        {
            Fail(where + ": the comment says '" + said + "', the value is " + fault);
        }
    }

    private static void Fail(string message)
    {
        Failures++;
        Console.Error.WriteLine(message);
    }

    private static string Matches(object value, string said)
    {
        Match printed = Regex.Match(said, @"^(-?[0-9]+(?:\.(?<decimals>[0-9]+))?)(?:\s*(?<unit>[^\s,;:=(]+))?");
        double Number() => double.Parse(printed.Groups[1].Value, CultureInfo.InvariantCulture);
        double half = 0.51 * Math.Pow(10, -printed.Groups["decimals"].Value.Length);
        string Near(double actual) => Math.Abs(actual - Number()) <= half ? null : actual.ToString("R", CultureInfo.InvariantCulture);
        switch (value)
        {
            case null:
                return said.StartsWith("null", StringComparison.Ordinal) ? null : "null";
            case bool flag:
                return said.StartsWith(flag ? "true" : "false", StringComparison.Ordinal) ? null : flag.ToString();
            case string text:
                return said.StartsWith("\"" + text + "\"", StringComparison.Ordinal) ? null : text;
            case Enum:
                return said == value.ToString() ? null : value.ToString();
            case int count when printed.Success:
                return Near(count);
            case double real when printed.Success:
                return Near(real);
            case decimal money when printed.Success:
                return Near((double)money);
            case TimeSpan span when printed.Success:
                return Near(printed.Groups["unit"].Value switch { "h" or "hours" => span.TotalHours, "s" => span.TotalSeconds, "days" or "d" => span.TotalDays, _ => span.TotalMinutes });
            case Refinish.SpreadingRate rate when printed.Success:
                return Near(printed.Groups["unit"].Value.StartsWith("m", StringComparison.Ordinal) ? rate.SquareMetersPerLiter : rate.SquareFeetPerUsGallon);
            case IQuantity quantity when printed.Success:
                string unit = printed.Groups["unit"].Value switch { "cfm" => "ft³/min", "mL" => "ml", "L" => "l", string named => named };
                if (!UnitParser.Default.TryParse(unit, quantity.QuantityInfo.UnitType, CultureInfo.InvariantCulture, out Enum parsed))
                {
                    return "in a unit that the comment does not name: " + quantity.ToString("g", CultureInfo.InvariantCulture);
                }

                return Near((double)quantity.As(parsed));
            case DateTimeOffset instant:
                return said.StartsWith(instant.ToString("HH:mm", CultureInfo.InvariantCulture), StringComparison.Ordinal) ? null : instant.ToString("HH:mm", CultureInfo.InvariantCulture);
            case IFormattable:
                return value.ToString() + " (" + value.GetType().Name + ", which the comment does not tell)";
            case IEnumerable list:
                string joined = string.Join(", ", list.Cast<object>().Select(item => Convert.ToString(item, CultureInfo.InvariantCulture)));
                return said == joined ? null : joined;
            default:
                return Regex.IsMatch(said, "^" + Regex.Escape(value.ToString()) + "($|[:;,])") ? null : value.ToString();
        }
    }
}
