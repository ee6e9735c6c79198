#:property PublishAot=false
#:property ManagePackageVersionsCentrally=false
// Writes a program that compiles and runs every <example> of the XML documentation and every C# block of the Markdown files.
// A declaration whose line ends in a comment with a number (and unit), a quoted text or the name of an enumeration's value is held to it,
// to the digits that the comment prints. In Markdown, a Console.Write that is followed by comment lines is held to print those lines.
// Usage: dotnet run examples.cs -- OUT_FOLDER FILE.xml… FILE.md…
//
// In Markdown:  ```csharp                    stands alone; if it begins with using directives it is held to those, else it may use every room
//               ```csharp continues          goes on from the block before it
//               ```csharp no-run: REASON     neither compiled nor run, and says why
using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;

string folder = args[0];
Directory.CreateDirectory(folder);
Dictionary<string, string> examples = args.Skip(1).Where(file => file.EndsWith(".xml", StringComparison.Ordinal))
    .SelectMany(file => XDocument.Load(file).Descendants("member"))
    .Where(member => member.Element("example")?.Element("code") is not null)
    .ToDictionary(member => (string)member.Attribute("name")!, member => member.Element("example")!.Element("code")!.Value);

string[] rooms = [.. args.Skip(1).Where(file => file.EndsWith(".xml", StringComparison.Ordinal))
    .SelectMany(file => XDocument.Load(file).Descendants("member"))
    .Select(member => Regex.Match((string)member.Attribute("name")!, @"^T:(?<room>Refinish(\.\w+)?)\.\w+$").Groups["room"].Value)
    .Where(room => room.Length > 0).Distinct().Order(StringComparer.Ordinal)];
string[] always = ["System", "System.Collections.Generic", "System.Globalization", "System.IO", "System.Linq", "System.Text", "System.Text.Json", "System.Text.Json.Nodes", "System.Threading", "UnitsNet", "UnitsNet.Units"];
string everything = string.Concat(always.Concat(rooms).Select(name => "using " + name + ";\n"));

List<(string Where, string Method)> calls = [];
int held = 0;

// "the tub of RecessedBathtubMeasurements": an example may go on from another type's.
string Whole(string code)
{
    Match of = Regex.Match(code, @"// the \w[\w -]* of (?<type>\w+)");
    return of.Success && examples.FirstOrDefault(other => other.Key.EndsWith("." + of.Groups["type"].Value, StringComparison.Ordinal)).Value is string before
        ? Whole(before) + "\n" + code
        : code;
}

static string Quoted(string text) => "\"" + text.Replace("\\", "\\\\").Replace("\"", "\\\"") + "\"";

string? Held(string where, string line)
{
    Match match = Regex.Match(line, @"^\s*[\w.<>?\[\]]+\s+(?<name>\w+)\s*=.*;\s*//\s*(?<said>.+?)\s*$");
    if (!match.Success || !Regex.IsMatch(match.Groups["said"].Value, "^(-?[0-9]|\"|[A-Z][a-zA-Z]+$|true|false|null)"))
    {
        return null;
    }

    held++;
    return "Said.Holds(" + Quoted(where) + ", " + match.Groups["name"].Value + ", " + Quoted(match.Groups["said"].Value) + ");";
}

StringBuilder program = new(everything);
program.AppendLine("#pragma warning disable").AppendLine("internal static class Examples").AppendLine("{");
foreach ((string name, string code) in examples.OrderBy(example => example.Key, StringComparer.Ordinal))
{
    string method = "Example" + calls.Count;
    program.AppendLine("    // " + name).AppendLine("    public static void " + method + "()").AppendLine("    {");
    foreach (string line in Whole(code).Split('\n'))
    {
        program.AppendLine("        " + line.TrimEnd()).AppendLine("        " + Held(name, line));
    }

    program.AppendLine("    }").AppendLine();
    calls.Add((name, "Examples." + method));
}

File.WriteAllText(Path.Combine(folder, "Examples.cs"), program.AppendLine("}").ToString());
int documented = calls.Count;
int documentedHeld = held;

// Markdown: one file for a block and those that continue it. Errors of the compiler name the line of the Markdown file.
int blocks = 0;
int left = 0;
foreach (string file in args.Skip(1).Where(file => file.EndsWith(".md", StringComparison.Ordinal)).Order(StringComparer.Ordinal))
{
    List<List<(int Number, string Text)>> chains = [];
    string[] lines = File.ReadAllLines(file);
    for (int i = 0; i < lines.Length; i++)
    {
        Match fence = Regex.Match(lines[i], @"^\s*```(?<info>\S.*)?$");
        if (!fence.Success)
        {
            continue;
        }

        List<(int Number, string Text)> block = [];
        int opened = i + 1;
        for (i++; i < lines.Length && !lines[i].TrimStart().StartsWith("```", StringComparison.Ordinal); i++)
        {
            block.Add((i + 1, lines[i]));
        }

        string info = fence.Groups["info"].Value.Trim();
        switch (info)
        {
            case "csharp":
                chains.Add(block);
                blocks++;
                break;
            case "csharp continues" when chains.Count > 0:
                chains[^1].AddRange(block);
                blocks++;
                break;
            case string when Regex.IsMatch(info, @"^csharp no-run: \w+"):
                left++;
                break;
            case string when Regex.IsMatch(info, @"^(csharp|cs|c#)\b", RegexOptions.IgnoreCase):
                Console.Error.WriteLine(file + ":" + opened + ": a C# block is 'csharp', 'csharp continues' after another, or 'csharp no-run: REASON'");
                return 1;
        }
    }

    foreach (List<(int Number, string Text)> chain in chains)
    {
        string name = "Block" + calls.Count;
        List<(int Number, string Text)> directives = [.. chain.Where(line => Regex.IsMatch(line.Text, @"^using (static )?[\w.]+( = [\w.]+)?;\s*$"))];
        StringBuilder source = new(directives.Count == 0 ? everything : string.Concat(directives.Select(line => line.Text.Trim() + "\n")));
        source.AppendLine("#pragma warning disable").AppendLine("internal static class " + name).AppendLine("{").AppendLine("    public static void Run()").AppendLine("    {");
        List<string> statement = [];
        int start = 0;
        List<(int Number, string Text)> body = [.. chain.Except(directives)];
        for (int i = 0; i < body.Count; i++)
        {
            (int number, string text) = body[i];
            if (statement.Count == 0)
            {
                start = source.Length;
            }

            source.AppendLine("#line " + number + " " + "\"" + Path.GetFullPath(file) + "\"").AppendLine(text);
            string bare = Regex.Replace(text, @"\s*//.*$", string.Empty).Trim();
            if (bare.Length > 0)
            {
                statement.Add(bare);
            }

            source.AppendLine("#line hidden");
            if (Held(file + ":" + number, text) is string holds)
            {
                source.AppendLine(holds);
            }

            if (statement.Count == 0 || statement[^1][^1] is not (';' or '{' or '}'))
            {
                continue;
            }

            if (statement[0].StartsWith("Console.Write", StringComparison.Ordinal))
            {
                List<string> said = [];
                Match beside = Regex.Match(text, @";\s*//\s?(?<said>.*)$");
                if (beside.Success)
                {
                    said.Add(beside.Groups["said"].Value.Trim());
                }

                while (i + 1 < body.Count && body[i + 1].Text.TrimStart().StartsWith("//", StringComparison.Ordinal))
                {
                    said.Add(body[++i].Text.TrimStart()[2..].Trim());
                }

                if (said.Count > 0)
                {
                    held++;
                    source.Insert(start, "Said.Mark();\n");
                    source.AppendLine("Said.Printed(" + Quoted(file + ":" + number) + ", " + string.Join(", ", said.Select(Quoted)) + ");");
                }
            }

            statement.Clear();
        }

        source.AppendLine("    }").AppendLine("}");
        File.WriteAllText(Path.Combine(folder, name + ".cs"), source.ToString());
        calls.Add((file + ":" + chain[0].Number, name + ".Run"));
    }
}

StringBuilder main = new("using System;\n#pragma warning disable\ninternal static class Program\n{\n    private static int Main()\n    {\n");
foreach ((string where, string method) in calls)
{
    main.AppendLine("        Said.Run(" + Quoted(where) + ", " + method + ");");
}

string count = documented + " examples of the XML documentation (" + documentedHeld + " values held) and " + blocks + " blocks of Markdown (" + (held - documentedHeld)
    + " held, " + left + " not meant to run)";
main.AppendLine("        Console.WriteLine(\"compiled and run: " + count + "; \" + Said.Failures + \" wrong\");").AppendLine("        return Said.Failures == 0 ? 0 : 1;").AppendLine("    }").AppendLine("}");
File.WriteAllText(Path.Combine(folder, "Program.cs"), main.ToString());
return 0;
