using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Reflection;
using System.Text.RegularExpressions;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.House;

/// <summary>A room (namespace) has sub-folders by subject, which are no namespaces: docs/decisions/0011-rooms-inside-rooms.md.</summary>
public class FolderTests
{
    private const int MostFiles = 40;

    private static readonly string Core = Path.Combine(ReadmeTests.Root(), "src", "Refinish.Core");

    // A declaration of a type that is not nested stands at the beginning of its line.
    private static readonly Regex Declared = new(
        @"^(?:(?:public|internal|static|sealed|abstract|readonly|ref|partial|unsafe) )+(?:class|record struct|record|struct|enum|interface) (\w+)",
        RegexOptions.Multiline);

    private static readonly Regex Namespace = new(@"^namespace ([\w.]+);", RegexOptions.Multiline);

    private static readonly Dictionary<string, string> FolderOfType = Read();

    [Fact]
    [Evidence(Basis.Contract, "decision 11: every type of the compiled assembly is found in the source tree, and its namespace is its room, never its sub-folder")]
    public void A_namespace_is_a_room_and_not_a_folder_of_it()
    {
        Type[] types = [.. Library().Where(type => !type.IsNested)];
        Assert.True(types.Length > 500, "The assembly has next to no types.");
        Assert.Empty(types.Where(type => FolderOf(type) is null).Select(type => type.FullName));
        Assert.Empty(types.Where(type => type.Namespace != NamespaceOf(Room(FolderOf(type)!))).Select(type => type.FullName + " stands in " + FolderOf(type)));
    }

    [Fact]
    [Evidence(Basis.Contract, "decision 11: the sub-folders of a room use one another without a cycle; what stands at the top of the room is left out")]
    public void No_sub_folders_of_a_room_use_each_other_in_a_circle()
    {
        (string From, string To, string Why)[] uses =
        [
            .. from type in Library()
               from used in IlReferences.Of(type).Where(used => used.Assembly == type.Assembly)
               let here = FolderOf(type)
               let there = FolderOf(used)
               where here is not null && there is not null && here != there && Room(here) == Room(there) && here != Room(here) && there != Room(there)
               select (here, there, here + ": " + Outermost(type).Name + " uses " + there + ": " + Outermost(used).Name),
        ];
        Assert.True(uses.Length > 500, "The reader of instructions found next to nothing.");

        ILookup<string, string> steps = uses.Select(use => (use.From, use.To)).Distinct().ToLookup(use => use.From, use => use.To);
        Dictionary<string, HashSet<string>> reached = steps.ToDictionary(step => step.Key, step => Reached(step.Key, steps));
        string circles = string.Join("\n", uses
            .Where(use => reached.TryGetValue(use.To, out HashSet<string>? back) && back.Contains(use.From))
            .Select(use => use.Why).Distinct().Order(StringComparer.Ordinal));
        Assert.True(circles.Length == 0, circles);
    }

    [Fact]
    [Evidence(Basis.Contract, "decision 11: a folder that cannot be looked over at a glance is parted by subject")]
    public void No_folder_is_crowded() =>
        Assert.Empty(Files().GroupBy(Folder).Where(folder => folder.Count() > MostFiles).Select(folder => folder.Key + " has " + folder.Count().ToString(CultureInfo.InvariantCulture) + " files"));

    private static HashSet<string> Reached(string start, ILookup<string, string> steps)
    {
        HashSet<string> found = [];
        Queue<string> open = new([start]);
        while (open.Count > 0)
        {
            foreach (string next in steps[open.Dequeue()].Where(found.Add))
            {
                open.Enqueue(next);
            }
        }

        return found;
    }

    private static IEnumerable<Type> Library() => typeof(Measure).Assembly.GetTypes()
        .Where(type => Outermost(type) is { Namespace: string room } outer && (room + ".").StartsWith("Refinish.", StringComparison.Ordinal) && outer.Name[0] != '<');

    private static Type Outermost(Type type) => type.DeclaringType is Type outer ? Outermost(outer) : type;

    private static string? FolderOf(Type type) =>
        FolderOfType.TryGetValue(Key(Outermost(type).Namespace ?? string.Empty, Outermost(type).Name.Split('`')[0]), out string? folder) ? folder : null;

    private static string Key(string room, string name) => room + "." + name;

    private static string Room(string folder) => folder.Split('/')[0];

    private static string NamespaceOf(string room) => room == "Foundation" ? "Refinish" : "Refinish." + room;

    private static string Folder(string file) => Path.GetDirectoryName(file)!.Substring(Core.Length + 1).Replace('\\', '/');

    // Every source file of the core, and no folder that a build makes.
    private static IEnumerable<string> Files() => Directory.EnumerateDirectories(Core)
        .Where(room => Path.GetFileName(room) is not ("obj" or "bin"))
        .SelectMany(room => Directory.EnumerateFiles(room, "*.cs", SearchOption.AllDirectories));

    private static Dictionary<string, string> Read()
    {
        Dictionary<string, string> folders = new(StringComparer.Ordinal);
        foreach (string file in Files())
        {
            string text = File.ReadAllText(file).ReplaceLineEndings("\n");
            string room = Namespace.Match(text).Groups[1].Value;
            foreach (string name in Declared.Matches(text).Cast<Match>().Select(match => match.Groups[1].Value))
            {
                string key = Key(room, name);
                if (folders.TryGetValue(key, out string? other) && other != Folder(file))
                {
                    throw new InvalidDataException(key + " is parted between " + other + " and " + Folder(file) + ".");
                }

                folders[key] = Folder(file);
            }
        }

        return folders;
    }
}
