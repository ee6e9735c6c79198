using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using System.Xml.Linq;

namespace Refinish.Json.Tests;

/// <summary>The sentences of the library's own documentation: what a field means is said once, where the property is.</summary>
internal sealed class Documentation
{
    private readonly Dictionary<string, XElement> members = [];

    public Documentation()
    {
        foreach (string file in (string[])["Refinish.Core.xml", "Refinish.Core.Json.xml"])
        {
            foreach (XElement member in XDocument.Load(Path.Combine(AppContext.BaseDirectory, file)).Descendants("member"))
            {
                members[(string)member.Attribute("name")!] = member;
            }
        }
    }

    public string? Of(Type type) => Summary("T:" + type.FullName);

    /// <summary>The property of that name, or the parameter of the constructor or factory that takes it.</summary>
    public string? Of(Type type, string field)
    {
        string property = char.ToUpperInvariant(field[0]) + field[1..];
        return Summary("P:" + type.FullName + "." + property)
            ?? members.Where(member => member.Key.StartsWith("M:" + type.FullName + ".", StringComparison.Ordinal))
                .SelectMany(member => member.Value.Elements("param"))
                .Where(parameter => (string)parameter.Attribute("name")! == field)
                .Select(Flat)
                .FirstOrDefault();
    }

    private string? Summary(string member) =>
        members.TryGetValue(member, out XElement? found) && found.Element("summary") is XElement summary ? Flat(summary) : null;

    private static string Flat(XElement element)
    {
        StringBuilder text = new();
        foreach (XNode node in element.Nodes())
        {
            text.Append(node switch
            {
                XText words => words.Value,
                XElement { Name.LocalName: "see" or "seealso" } see => (string?)see.Attribute("langword")
                    ?? Name((string)see.Attribute("cref")!),
                XElement { Name.LocalName: "paramref" } parameter => (string)parameter.Attribute("name")!,
                XElement other => Flat(other),
                _ => string.Empty,
            });
        }

        return string.Join(' ', text.ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    private static string Name(string cref)
    {
        string name = cref[2..].Split('(')[0].Split('.')[^1];
        return cref[0] == 'P' ? char.ToLowerInvariant(name[0]) + name[1..] : name;
    }
}
