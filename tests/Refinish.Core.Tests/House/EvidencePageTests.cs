using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Reflection;
using System.Text;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.House;

/// <summary>docs/evidence.md is made from what the tests of this suite say of themselves.</summary>
public class EvidencePageTests
{
    private static readonly string[] Rooms =
    [
        "Foundation", "Numerics", "Fixtures", "Climate", "Colours", "Coatings", "Substrates", "Films", "Curing", "Inspection", "Coverage", "Air",
        "Estimating", "Scheduling", "Jobs", "House",
    ];

    private static readonly Basis[] Bases = [.. Enum.GetValues<Basis>()];

    [PageFact]
    [Evidence(Basis.Contract, "the page of evidence counts every test by what it rests on and lists the published numbers and other routes")]
    public void The_page_of_evidence_is_current() => GeneratedPage.Holds("evidence", Page());

    private static string Page()
    {
        (string Room, EvidenceAttribute Evidence, string Test)[] all = [.. typeof(EvidencePageTests).Assembly.GetTypes()
            .OrderBy(type => type.FullName, StringComparer.Ordinal)
            .SelectMany(type => type.GetMethods().OrderBy(method => method.MetadataToken))
            .Where(method => method.IsDefined(typeof(EvidenceAttribute)))
            .Select(method => (method.ReflectedType!.Namespace!.Split('.').Last(), method.GetCustomAttribute<EvidenceAttribute>()!, method.Name.Replace('_', ' ')))];
        Assert.Empty(all.Select(test => test.Room).Except(Rooms));
        StringBuilder page = new("\n## How many tests rest on what\n\n| room |");
        page.Append(string.Concat(Bases.Select(basis => " " + basis.ToString("G").ToLowerInvariant() + " |"))).Append("\n|---|")
            .Append(string.Concat(Bases.Select(_ => "---:|"))).Append('\n');
        foreach (string room in Rooms)
        {
            page.Append("| ").Append(room).Append(" |").Append(string.Concat(Bases.Select(basis =>
                " " + all.Count(test => test.Room == room && test.Evidence.Basis == basis).ToString("D", null) + " |"))).Append('\n');
        }

        page.Append("| **all** |").Append(string.Concat(Bases.Select(basis =>
            " **" + all.Count(test => test.Evidence.Basis == basis).ToString("D", null) + "** |"))).Append('\n');
        Append(page, all, Basis.Cited, "Published numbers that tests hold", "published", "published number");
        Append(page, all, Basis.Independent, "Other routes that tests hold", "other routes", "other route");
        page.Append("\n## Tables that tests read\n\n| table | where it comes from |\n|---|---|\n");
        foreach (string table in Directory.GetFiles(Path.Combine(ReadmeTests.Root(), "tests", "Refinish.Core.Tests", "Tables"), "*.csv")
            .OrderBy(file => file, StringComparer.Ordinal))
        {
            string from = string.Join(" ", File.ReadLines(table).TakeWhile(line => line.Length > 0 && line[0] == '#').Select(line => line.TrimStart('#', ' ')));
            page.Append("| ").Append(GeneratedPage.Cell(Path.GetFileName(table))).Append(" | ").Append(GeneratedPage.Cell(from)).Append(" |\n");
        }

        return page.ToString();
    }

    private static void Append(
        StringBuilder page, (string Room, EvidenceAttribute Evidence, string Test)[] all, Basis basis, string title, string heading, string column)
    {
        page.Append("\n## ").Append(title).Append('\n');
        foreach (IGrouping<string, (string Room, EvidenceAttribute Evidence, string Test)> room in all
            .Where(test => test.Evidence.Basis == basis).GroupBy(test => test.Room).OrderBy(room => Array.IndexOf(Rooms, room.Key)))
        {
            page.Append("\n### ").Append(room.Key).Append(", ").Append(heading).Append("\n\n| ").Append(column).Append(" | test |\n|---|---|\n");
            foreach (IGrouping<string, (string Room, EvidenceAttribute Evidence, string Test)> same in room.GroupBy(test => test.Evidence.Source))
            {
                page.Append("| ").Append(GeneratedPage.Cell(same.Key)).Append(" | ")
                    .Append(string.Join(", ", same.Select(test => GeneratedPage.Cell(test.Test)).Distinct())).Append(" |\n");
            }
        }
    }
}
