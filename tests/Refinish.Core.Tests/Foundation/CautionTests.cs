using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using System.Text.RegularExpressions;
using Refinish.Tests.House;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Foundation;

public class CautionTests
{
    private const BindingFlags Static = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.DeclaredOnly;

    [Fact]
    [Evidence(Basis.Contract, "a caution has a code, a sentence, a decider and a source")]
    public void A_caution_says_who_decides()
    {
        Caution caution = new("lead-first", Hazard.Lead, "Test the old enamel for lead before sanding.", "local code", Source.CommonPractice("lead test first"), Audience.Crew);
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
            Assert.Throws<ArgumentException>(() => new Caution(code, Hazard.Lead, "Sentence.", "local code", caution.Source, Audience.Crew));
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "every caution that the compiled library makes has a code of its own in kebab-case; their number is that of the constructor calls in its instructions")]
    public void Codes_are_kebab_case_and_each_is_one_cautions()
    {
        Type[] types = [.. typeof(Caution).Assembly.GetTypes().Where(type => !type.ContainsGenericParameters)];
        Caution[] all = [.. types.SelectMany(Held).Distinct()];
        Assert.Equal(types.Where(type => type != typeof(Caution)).Sum(type => IlReferences.Constructions(type, typeof(Caution))), all.Length);
        Assert.All(all, caution => Assert.Matches(new Regex("^[a-z0-9]+(-[a-z0-9]+)*$", RegexOptions.CultureInvariant), caution.Code));
        Assert.Equal(all.Length, all.Select(caution => caution.Code).Distinct().Count());
        Assert.Equal(all.Length, all.Select(caution => (caution.Sentence, caution.DecidedBy)).Distinct().Count());
        Assert.Equal(all.Select(caution => caution.Code).OrderBy(code => code, StringComparer.Ordinal), Cautions.All.Select(caution => caution.Code).OrderBy(code => code, StringComparer.Ordinal));
        Assert.All(all, caution => Assert.NotEqual(Audience.None, caution.Concerns));
    }

    // Static fields, the backing fields of static properties among them, that hold a caution or a list of cautions.
    private static IEnumerable<Caution> Held(Type type)
    {
        foreach (FieldInfo field in type.GetFields(Static).Where(field => !field.IsLiteral))
        {
            object? value = typeof(Caution) == field.FieldType || typeof(IEnumerable<Caution>).IsAssignableFrom(field.FieldType) ? field.GetValue(null) : null;
            foreach (Caution caution in value is Caution one ? [one] : value as IEnumerable<Caution> ?? [])
            {
                yield return caution;
            }
        }
    }
}
