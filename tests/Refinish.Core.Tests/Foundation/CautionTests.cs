using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.RegularExpressions;
using Refinish.Tests.House;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Foundation;

public class CautionTests
{
    [Fact]
    [Evidence(Basis.Contract, "a caution has a code, a sentence, a decider and a source")]
    public void A_caution_says_who_decides()
    {
        Caution caution = new(
            "lead-first", Hazard.Lead, "Test the old enamel for lead before sanding.", "local code", Source.CommonPractice("lead test first"),
            Audience.Crew);
        Assert.Equal("lead-first", caution.Code);
        Assert.Equal("Test the old enamel for lead before sanding. Decided by: local code.", caution.ToString());
        Assert.Equal(caution, new Caution("lead-first", Hazard.Lead, caution.Sentence, "local code", caution.Source, Audience.Crew));
        Assert.NotEqual(caution, new Caution("lead-second", Hazard.Lead, caution.Sentence, "local code", caution.Source, Audience.Crew));
        Assert.Throws<ArgumentException>(() => new Caution("x", Hazard.Lead, string.Empty, "local code", caution.Source, Audience.Crew));
        Numbers.Refuses("hazard", () => _ = new Caution("x", (Hazard)77, "Sentence.", "local code", caution.Source, Audience.Crew));
        Numbers.Refuses("concerns", () => _ = new Caution("x", Hazard.Lead, "Sentence.", "local code", caution.Source, Audience.None));
        Numbers.Refuses("concerns", () => _ = new Caution("x", Hazard.Lead, "Sentence.", "local code", caution.Source, (Audience)9));
        foreach (string code in (string[])["", " ", "Lead", "lead first", "-lead", "lead-", "lead--first", "lead_first", "lead\u00e9"])
        {
            Assert.Throws<ArgumentException>(() =>
                new Caution(code, Hazard.Lead, "Sentence.", "local code", caution.Source, Audience.Crew));
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "every caution that the compiled library makes has a code of its own in kebab-case; their number is "
        + "that of the constructor calls in its instructions")]
    public void Codes_are_kebab_case_and_each_is_one_cautions()
    {
        Caution[] all = [.. HeldSources.OfLibrary.Cautions.Select(held => held.Caution)];
        Assert.Equal(HeldSources.OfLibrary.Uses.Makings.Count(making => making.Factory.DeclaringType == typeof(Caution)), all.Length);
        Assert.All(all, caution => Assert.Matches(new Regex("^[a-z0-9]+(-[a-z0-9]+)*$", RegexOptions.CultureInvariant), caution.Code));
        Assert.Equal(all.Length, all.Select(caution => caution.Code).Distinct().Count());
        Assert.Equal(all.Length, all.Select(caution => (caution.Sentence, caution.DecidedBy)).Distinct().Count());
        Assert.Equal(
            all.Select(caution => caution.Code).OrderBy(code => code, StringComparer.Ordinal),
            Cautions.All.Select(caution => caution.Code).OrderBy(code => code, StringComparer.Ordinal));
        Assert.All(all, caution => Assert.NotEqual(Audience.None, caution.Concerns));
    }

    [Fact]
    [Evidence(Basis.Contract, "the catalogue stands in the order of hazards, each caution says whom it concerns, who decides and "
        + "on what it rests, and none calls anything safe")]
    public void The_catalogue_is_ordered_and_complete()
    {
        int[] hazards = [.. Cautions.All.Select(caution => (int)caution.Hazard)];
        Assert.Equal(hazards.OrderBy(hazard => hazard), hazards);
        foreach (Hazard hazard in Enum.GetValues<Hazard>())
        {
            Assert.Contains(Cautions.All, caution => caution.Hazard == hazard);
        }

        foreach (Caution caution in Cautions.All)
        {
            Assert.NotEqual(Audience.None, caution.Concerns);
            Assert.False(string.IsNullOrWhiteSpace(caution.DecidedBy));
            Assert.False(string.IsNullOrWhiteSpace(caution.Source.Document));
            Assert.EndsWith(".", caution.Sentence, StringComparison.Ordinal);
            Assert.DoesNotMatch(new Regex(@"\b(is|are) safe\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant), caution.Sentence);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "no two cautions of one hazard share half of the shorter one's words; pairs that were merged once did")]
    public void No_two_cautions_say_the_same()
    {
        Assert.True(CautionWords.Overlap(
            "Old enamel, glaze and coatings may hold lead: test before anything is sanded, etched or stripped.",
            "Old enamel, glaze and coatings may hold lead: test before anything is scraped.") > CautionWords.Threshold);
        Assert.True(CautionWords.Overlap(
            "Etchants for enamel and glaze may hold hydrofluoric acid, which burns deep and late and can kill: keep calcium gluconate gel at "
                + "hand or abrade instead.",
            Cautions.Etchants.Sentence) > CautionWords.Threshold);
        for (int i = 0; i < Cautions.All.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                (Caution one, Caution other) = (Cautions.All[i], Cautions.All[j]);
                Assert.False(CautionWords.SayTheSame(one, other), one.Code + " and " + other.Code);
            }
        }
    }

    /// <summary>What the texts that were merged said to save lives is in the one that took their place.</summary>
    [Theory]
    [Evidence(Basis.Contract, "the merged texts keep what the texts they replace said to save lives, phrase by phrase")]
    [InlineData("etchant-burns", "without pain|calcium gluconate|rinse at once|ambulance|not for eyes|face shield|acid-proof gloves|never on plastics|"
        + "can kill|abrade instead|through the skin")]
    [InlineData("stripper-vapour", "methylene chloride|has killed|prohibited|own exhaust|gloves")]
    [InlineData("lead-untested", "scraped|sanded|ground|etched|stripped|1978|renovation rule")]
    [InlineData("preparation-dust", "wet|HEPA|dry-sweep|silica|lead|respirator|grout|filler|old coats")]
    [InlineData("epoxy-hardener", "skin and eyes|allergic for life|gloves|goggles|mixing|sanding|mist")]
    [InlineData("wet-electricity", "GFCI|residual-current|dry cords|spark|before solvent is opened")]
    [InlineData("new-coat-slip", "slicker|soapy|textured|slip-resistant floor|non-slip")]
    public void A_merged_text_keeps_what_saves_lives(string code, string phrases)
    {
        string sentence = Cautions.All.Single(caution => caution.Code == code).Sentence;
        Assert.All(phrases.Split('|'), phrase => Assert.Contains(phrase, sentence, StringComparison.OrdinalIgnoreCase));
    }
}
