using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using System.Text;
using System.Text.RegularExpressions;
using Refinish.Air;
using Refinish.Jobs;
using Refinish.Samples.BathroomJob;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.House;

/// <summary>docs/sources.md and docs/safety.md are made from the sources and cautions that the library holds.</summary>
public class SourcePageTests
{
    private static readonly (SourceKind Kind, string Title, string Said)[] Kinds =
    [
        (SourceKind.Published, "Published documents", "Most of these name a document that can be looked up. Some do not: \"a chemical data page\", \"a handbook of duct design\", \"finishing trade magazine\", \"guide to epoxy calculations\" and \"public flow-cup conversion program\" say what was read and not where it can be found again, so rest nothing on them before you have found the figure yourself. The third column says how the place was looked up: *read* in a copy of the document, *second-hand* on a page that quotes it, *from memory* in whole or in part; a dash where the entry makes no remark."),
        (SourceKind.FromMemory, "From memory, unverified", "Recalled from general knowledge of standards and physics. Look these up before anything rests on them."),
        (SourceKind.CommonPractice, "Common practice, without a source", "What the trade commonly does; no document was found that says so."),
        (SourceKind.Invented, "Invented", "Made up for the demonstration, or as a default to be replaced by your own figure."),
        (SourceKind.Derived, "Derived", "Algebra and definitions: how the number follows from those above it."),
        (SourceKind.Supplied, "Supplied by the caller", "What you measured, read off a data sheet or put into a price book. It is as good as what you gave."),
    ];

    // What says in its text what a caller gave, or which of several figures was taken.
    private static readonly (string Member, string Reason)[] Composed =
    [
        ("Refinish.Air.CarefulSolvent.get_Figures", "names the solvents of which the careful figures were taken"),
        ("Refinish.Air.SaturatedVapour.Compare", "says which vapour pressures are known and that none covers the temperature"),
        ("Refinish.Air.SaturatedVapour.Unknown", "says which vapour pressures are known and that none covers the temperature"),
        ("Refinish.Fixtures.ZonedFixture.FromMesh", "says over how many triangles of the mesh was summed"),
    ];

    [PageFact]
    [Evidence(Basis.Contract, "the page of sources lists every source that the library holds, with the types that show it")]
    public void The_page_of_sources_is_current() => GeneratedPage.Holds("sources", Sources());

    [PageFact]
    [Evidence(Basis.Contract, "the page of cautions lists every caution that the library holds, with the types that show it")]
    public void The_page_of_cautions_is_current() => GeneratedPage.Holds("safety", Cautions());

    [Fact]
    [Evidence(Basis.Contract, "every source that a whole guesthouse's workings report is held, unless it says what the caller gave or is composed from it")]
    public void What_a_job_reports_is_held()
    {
        JobPlan plan = Scenario.Guesthouse().Plan();
        HashSet<Source> held = [.. HeldSources.OfLibrary.Sources.Select(each => each.Source)];
        Source[] reported = [.. plan.Workings().AllSteps().Select(step => step.Source).Where(source => source.Kind != SourceKind.Supplied).Distinct()];
        Assert.True(reported.Length > 80);
        Assert.Empty(reported.Where(source => !held.Contains(source)).Select(source => source.ToString()));
        Assert.Empty(plan.Cautions.Select(planned => planned.Caution).Except(HeldSources.OfLibrary.Cautions.Select(each => each.Caution)));
    }

    [Fact]
    [Evidence(Basis.Contract, "a source or a caution is made while a static field is filled, so that it can be listed; what is composed from a caller's values is named here")]
    public void Sources_are_made_where_they_are_held()
    {
        MemberUses uses = HeldSources.OfLibrary.Uses;
        string[] loose = [.. uses.Makings.Where(making => !uses.OnlyFillsStatics(making.By)).Select(making => Name(making.By)).Distinct()];
        Assert.Equal(string.Empty, string.Join("\n", loose.Except(Composed.Select(each => each.Member))));
        Assert.Equal(string.Empty, string.Join("\n", Composed.Select(each => each.Member).Except(loose)));
    }

    private static string Sources()
    {
        HeldSources all = HeldSources.OfLibrary;
        StringBuilder page = new("\n## How many\n\n| kind | sources | places in the code |\n|---|---:|---:|\n");
        foreach ((SourceKind kind, string title, string _) in Kinds)
        {
            page.Append("| ").Append(title).Append(" | ").Append(all.Sources.Count(held => held.Source.Kind == kind)).Append(" | ")
                .Append(all.Uses.Makings.Count(making => making.Factory.Name == kind.ToString("G"))).Append(" |\n");
        }

        foreach ((SourceKind kind, string title, string said) in Kinds)
        {
            bool published = kind == SourceKind.Published;
            page.Append("\n## ").Append(title).Append("\n\n").Append(said)
                .Append(published ? "\n\n| document | place | looked up | used by |\n|---|---|---|---|\n" : "\n\n| what | used by |\n|---|---|\n");
            foreach (HeldSources.HeldSource held in all.Sources.Where(held => held.Source.Kind == kind)
                .OrderBy(held => held.Source.Document, StringComparer.OrdinalIgnoreCase)
                .ThenBy(held => held.Source.Section, StringComparer.OrdinalIgnoreCase).ThenBy(held => held.Source.Document, StringComparer.Ordinal))
            {
                page.Append("| ").Append(GeneratedPage.Cell(held.Source.Document)).Append(" | ");
                if (published)
                {
                    page.Append(GeneratedPage.Cell(held.Source.Section!)).Append(" | ").Append(LookedUp(held)).Append(" | ");
                }

                page.Append(Types(held.Fields)).Append(" |\n");
            }
        }

        page.Append("\n## Composed from what is given\n\nA few sources say in their text what they were made of; these are told by where they are made.\n\n")
            .Append("| kind | made by | what it says |\n|---|---|---|\n");
        foreach ((string member, string reason) in Composed)
        {
            (MemberInfo by, MethodBase factory) = all.Uses.Makings.First(making => Name(making.By) == member);
            page.Append("| ").Append(factory.Name.ToLowerInvariant()).Append(" | ").Append(Types([by])).Append(" | ").Append(reason).Append(" |\n");
        }

        return page.ToString();
    }

    private static string Name(MemberInfo member) => member.DeclaringType!.FullName + "." + member.Name;

    private static string Cautions()
    {
        StringBuilder page = new();
        foreach (Hazard hazard in Enum.GetValues<Hazard>())
        {
            page.Append("\n### ").Append(Regex.Replace(hazard.ToString("G"), "(?<=[a-z])([A-Z])", match => " " + match.Value.ToLowerInvariant()))
                .Append("\n\n| code | caution | decided by | concerns | rests on | shown by |\n|---|---|---|---|---|---|\n");
            foreach (HeldSources.HeldCaution held in HeldSources.OfLibrary.Cautions.Where(held => held.Caution.Hazard == hazard)
                .OrderBy(held => held.Caution.Sentence, StringComparer.Ordinal))
            {
                string[] cells =
                [
                    "`" + held.Caution.Code + "`", GeneratedPage.Cell(held.Caution.Sentence), GeneratedPage.Cell(held.Caution.DecidedBy),
                    held.Caution.Concerns.ToString("G").ToLowerInvariant(), GeneratedPage.Cell(held.Caution.Source.ToString()), Types(held.Fields),
                ];
                page.Append("| ").Append(string.Join(" | ", cells)).Append(" |\n");
            }
        }

        return page.ToString();
    }

    // What stands beside a figure says more of that figure than its source says of all of them.
    private static string LookedUp(HeldSources.HeldSource held) => (held.Beside.Count == 1 ? held.Beside[0] : held.Source.Standing) switch
    {
        Standing.Seen => "read",
        Standing.SecondHand => "second-hand",
        Standing.FromMemory => held.Beside.Count == 1 ? "from memory" : "partly from memory",
        _ => "–",
    };

    private static string Types(IReadOnlyList<MemberInfo> holders)
    {
        string[] named = [.. HeldSources.OfLibrary.Uses.ShownBy(holders)];
        string text = string.Join(", ", named.Take(6).Select(name => "`" + name + "`"));
        return named.Length == 0 ? "not shown by a public type" : named.Length > 6 ? text + " and " + (named.Length - 6).ToString("D", null) + " more" : text;
    }
}
