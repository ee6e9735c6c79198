#:property PublishAot=false
#:property ManagePackageVersionsCentrally=false
// Takes every <example> out of the library's XML documentation and writes a program that compiles and runs them all.
// A line that ends in a comment with a number (and unit), a quoted text or the name of an enumeration's value is held to it,
// to the digits that the comment prints. Usage: dotnet run examples.cs -- Refinish.Core.xml OUT_FOLDER
using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;

Dictionary<string, string> examples = XDocument.Load(args[0]).Descendants("member")
    .Where(member => member.Element("example")?.Element("code") is not null)
    .ToDictionary(member => (string)member.Attribute("name")!, member => member.Element("example")!.Element("code")!.Value);

// "the tub of RecessedBathtubMeasurements": an example may go on from another type's.
string Whole(string code)
{
    Match of = Regex.Match(code, @"// the \w[\w -]* of (?<type>\w+)");
    return of.Success && examples.FirstOrDefault(other => other.Key.EndsWith("." + of.Groups["type"].Value, StringComparison.Ordinal)).Value is string before
        ? Whole(before) + "\n" + code
        : code;
}

StringBuilder program = new();
program.AppendLine("using System; using System.Collections.Generic; using System.IO; using System.Linq; using System.Threading; using UnitsNet; using Refinish;");
foreach (string room in examples.Keys.Select(name => name[2..].Split('.')).Where(parts => parts.Length > 2).Select(parts => parts[1]).Distinct().Order())
{
    program.AppendLine("using Refinish." + room + ";");
}

StringBuilder methods = new();
StringBuilder calls = new();
int number = 0;
int held = 0;
foreach ((string name, string code) in examples.OrderBy(example => example.Key, StringComparer.Ordinal))
{
    string body = Whole(code);
    methods.AppendLine("    // " + name).AppendLine("    private static void Example" + number + "()").AppendLine("    {");
    foreach (string line in body.Split('\n'))
    {
        methods.AppendLine("        " + line.TrimEnd());
        Match match = Regex.Match(line, @"^\s*[\w.<>?\[\]]+\s+(?<name>\w+)\s*=.*;\s*//\s*(?<said>.+?)\s*$");
        if (match.Success && Regex.IsMatch(match.Groups["said"].Value, "^(-?[0-9]|\"|[A-Z][a-zA-Z]+$|true|false|null)"))
        {
            held++;
            string said = match.Groups["said"].Value.Replace("\\", "\\\\").Replace("\"", "\\\"");
            methods.AppendLine("        Said.Holds(\"" + name + "\", " + match.Groups["name"].Value + ", \"" + said + "\");");
        }
    }

    methods.AppendLine("    }").AppendLine();
    calls.AppendLine("        Example" + number + "();");
    number++;
}

program.AppendLine("#pragma warning disable");
program.AppendLine("internal static class Examples").AppendLine("{").AppendLine("    private static int Main()").AppendLine("    {");
program.Append(calls);
program.AppendLine("        Console.WriteLine(\"examples: " + number + " compiled and run, " + held + " values held to their comments, \" + Said.Failures + \" wrong\");");
program.AppendLine("        return Said.Failures == 0 ? 0 : 1;").AppendLine("    }").AppendLine();
program.Append(methods).AppendLine("}");

Directory.CreateDirectory(args[1]);
File.WriteAllText(Path.Combine(args[1], "Examples.cs"), program.ToString());
File.WriteAllText(Path.Combine(args[1], "Said.cs"), """
    using System;
    using System.Globalization;
    using System.Text.RegularExpressions;
    using UnitsNet;

    /// <summary>Holds a value to what its comment says, to the printed digits.</summary>
    internal static class Said
    {
        public static int Failures { get; private set; }

        public static void Holds(string where, object value, string said)
        {
            if (Matches(value, said) is string fault)
            {
                Failures++;
                Console.Error.WriteLine(where + ": the comment says '" + said + "', the value is " + fault);
            }
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
                default:
                    return null;
            }
        }
    }
    """);
Console.WriteLine(number + " examples, " + held + " of their values held");
