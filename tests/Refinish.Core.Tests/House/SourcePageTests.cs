using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Inspection;
using Refinish.Jobs;
using Refinish.Samples.BathroomJob;
using Refinish.Substrates;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.House;

/// <summary>docs/sources.md and docs/safety.md are made by reading the code; here the compiled library is asked instead, and what it says has to stand there.</summary>
public class SourcePageTests
{
    private static readonly string Docs = Path.Combine(ReadmeTests.Root(), "docs");

    [Fact]
    [Evidence(Basis.Contract, "every source that a whole guesthouse's workings and the library's tables report, read at run time, is on the page that lists the sources by reading the code")]
    public void What_the_library_reports_is_on_the_page_of_sources()
    {
        string page = File.ReadAllText(Path.Combine(Docs, "sources.md"));
        JobPlan plan = Scenario.Guesthouse().Plan();
        Source[] reported =
        [
            .. plan.Workings().AllSteps().Select(step => step.Source),
            .. plan.Cautions.Select(planned => planned.Caution.Source),
            .. PublishedLimits.All.Select(limit => limit.Source),
            .. VapourPressures.All.Select(fit => fit.Source),
            .. LegalFacts.All.Select(fact => fact.Source),
            .. FlowCups.All.Select(cup => cup.Source),
            .. FilmAcceptanceRules.All.Select(rule => rule.Source),
            .. MaterialSigns.Generic.Select(sign => sign.Source),
            .. GenericCatalogue.Standings().Select(standing => standing.Source),
        ];
        Source[] distinct = [.. reported.Where(source => source.Kind != SourceKind.Supplied).Distinct()];
        Assert.True(distinct.Length > 80, distinct.Length.ToString(CultureInfo.InvariantCulture) + " sources were reported");
        Assert.Empty(distinct.Where(source => !page.Contains(Row(source), StringComparison.Ordinal)).Select(source => source.ToString()));
    }

    [Fact]
    [Evidence(Basis.Contract, "every caution of a whole guesthouse, read at run time, is on the page that lists the cautions by reading the code")]
    public void What_the_library_warns_of_is_on_the_page_of_cautions()
    {
        string page = File.ReadAllText(Path.Combine(Docs, "safety.md"));
        Caution[] cautions = [.. Scenario.Guesthouse().Plan().Cautions.Select(planned => planned.Caution)];
        Assert.True(cautions.Length > 10);
        Assert.Empty(cautions.Where(caution => !page.Contains("| " + Cell(caution.Sentence) + " | " + Cell(caution.DecidedBy) + " |", StringComparison.Ordinal)).Select(caution => caution.Sentence));
    }

    private static string Row(Source source) => source.Section is string section ? "| " + Cell(source.Document) + " | " + Cell(section) + " |" : "| " + Cell(source.Document) + " |";

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace("*", "\\*", StringComparison.Ordinal).Replace("_", "\\_", StringComparison.Ordinal).Trim();
}
