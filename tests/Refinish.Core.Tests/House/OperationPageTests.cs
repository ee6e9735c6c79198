using System;
using System.Linq;
using System.Text;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.House;

/// <summary>The table in docs/operations.md is made from the library: place, reason, standing, people and cautions of every kind of work.</summary>
public class OperationPageTests
{
    [Fact]
    [Evidence(Basis.Contract, "the page of operations says of every kind of work what the library says")]
    public void The_page_of_operations_is_current() =>
        GeneratedPage.Holds("operations", Table());

    [Fact]
    [Evidence(Basis.Contract, "every kind of work has one rule, places run from 1 without a gap, and keys are unique but for the two kinds of coat")]
    public void Every_kind_has_its_rule()
    {
        WorkKind[] kinds = [.. Enum.GetValues<WorkKind>()];
        Assert.Equal(kinds.Length, WorkRule.All.Count);
        Assert.All(kinds, kind => Assert.Equal(kind, WorkRule.Of(kind).Kind));
        int[] places = [.. WorkRule.All.Where(rule => rule.Place is not null).Select(rule => rule.Place!.Value)];
        Assert.Equal(Enumerable.Range(1, places.Length), places);
        Assert.Equal(kinds.Length - 1, WorkRule.All.Select(rule => rule.Key).Distinct().Count());
        Assert.All(WorkRule.All, rule => Assert.True(rule.Reason.Length > 3 && rule.Label.Length > 3, rule.Key));

        // Clearing, descaling, filling and promoting bring what surface, survey or product adds; the others nothing.
        WorkKind[] bare =
        [
            WorkKind.Clear, WorkKind.Descale, WorkKind.Fill, WorkKind.Mask, WorkKind.Promote, WorkKind.FitTrim, WorkKind.Caulk, WorkKind.Travel,
            WorkKind.Other,
        ];
        Assert.All(kinds, kind => Assert.True(WorkRule.Of(kind).Cautions.Count > 0 != bare.Contains(kind),
            kind.ToString("G") + ": cautions are missing in WorkCautions, or are there though none was expected"));
        Numbers.Refuses("kind", () => WorkRule.Of((WorkKind)99));
    }

    private static string Table()
    {
        StringBuilder text = new("\n| place | kind | on a job sheet | why there | standing | people | cautions |\n|---|---|---|---|---|---|---|\n");
        foreach (WorkRule rule in WorkRule.All)
        {
            text.Append("| ").Append(rule.Place?.ToString("D", null) ?? "any").Append(" | `").Append(rule.Kind.ToString("G")).Append("` | ").Append(rule.Label)
                .Append(" | ").Append(rule.Reason).Append(" | ").Append(rule.Source)
                .Append(" | ").Append(rule.People == 0 ? "none: a wait" : rule.IsWatched ? "1, and 1 standing by" : "1")
                .Append(" | ").Append(rule.Cautions.Count == 0 ? "–" : string.Join(", ", rule.Cautions.Select(caution => "`" + caution.Code + "`"))).Append(" |\n");
        }

        return text.ToString();
    }
}
