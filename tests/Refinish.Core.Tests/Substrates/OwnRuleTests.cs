using System;
using System.Linq;
using Refinish.Fixtures;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Substrates;

/// <summary>Rules of a caller's own, and ready ones struck or changed. All of them are invented.</summary>
public class OwnRuleTests
{
    private static readonly Source Owner = Source.Supplied("owner of the invented shop");

    private static Length Mm(double mm) => Length.FromMillimeters(mm);

    private static Survey Clean(params Defect[] defects) => new()
    {
        Material = FixtureMaterial.Acrylic, Defects = defects, LeadTest = LeadTest.Negative, YearBuilt = 1995,
    };

    private static SurveyRule Rule(SurveyCondition when, Suitability effect = Suitability.NotSuitable) =>
        new("own-1", "rule of the test", effect, "remedy", "test", Owner, when);

    private static VerdictReason[] Found(Survey survey, SurveyCondition when) =>
        [.. new Verdict(survey, new SurveyPolicy { OwnRules = [Rule(when)] }).Reasons.Where(reason => reason.RuleCode == "own-1")];

    [Fact]
    [Evidence(Basis.Contract, "each part of a condition holds and fails; all parts that are given have to hold")]
    public void Conditions_hold_and_fail()
    {
        Assert.Single(Found(Clean(), new SurveyCondition { Materials = [FixtureMaterial.Acrylic] }));
        Assert.Empty(Found(Clean(), new SurveyCondition { Materials = [FixtureMaterial.Gelcoat] }));
        Assert.Single(Found(Clean(), new SurveyCondition { Surfaces = [MaterialSurface.Polymer] }));
        Assert.Empty(Found(Clean(), new SurveyCondition { Surfaces = [MaterialSurface.Glaze] }));
        Assert.Single(Found(Clean() with { StainsBleed = true }, new SurveyCondition { Facts = [SurveyFact.StainsBleed] }));
        Assert.Empty(Found(Clean(), new SurveyCondition { Facts = [SurveyFact.StainsBleed] }));
        Assert.Single(Found(Clean() with { OwnFacts = ["salvaged"] }, new SurveyCondition { OwnFacts = ["salvaged"] }));
        Assert.Empty(Found(Clean() with { OwnFacts = ["salvaged"] }, new SurveyCondition { OwnFacts = ["salvaged", "odd"] }));
        Assert.Single(Found(Clean(), new SurveyCondition { BuiltBefore = 1996 }));
        Assert.Empty(Found(Clean(), new SurveyCondition { BuiltBefore = 1995 }));
        Assert.Empty(Found(Clean(), new SurveyCondition { BuiltBefore = 1996, Materials = [FixtureMaterial.Gelcoat] }));
        Assert.Empty(Found(Clean(), new SurveyCondition { Defect = DefectKind.Chip }));
        Assert.Equal(2, Found(Clean(new Chip(Mm(20), Mm(1)), new Chip(Mm(9), Mm(1))), new SurveyCondition { Defect = DefectKind.Chip }).Length);
    }

    [Fact]
    [Evidence(Basis.Contract, "each fact of the survey is read by its own name")]
    public void Every_fact_is_read()
    {
        (SurveyFact Fact, Func<Survey, Survey> Say)[] facts =
        [
            (SurveyFact.PreviouslyRefinished, one => one with { PreviouslyRefinished = true }),
            (SurveyFact.LeadSuspected, one => one with { LeadSuspected = true }),
            (SurveyFact.CertifiedForLead, one => one with { CertifiedForLead = true }),
            (SurveyFact.AsbestosSuspected, one => one with { AsbestosSuspected = true }),
            (SurveyFact.CertifiedForAsbestos, one => one with { CertifiedForAsbestos = true }),
            (SurveyFact.NoPermittedStrippingRoute, one => one with { NoPermittedStrippingRoute = true }),
            (SurveyFact.LeakCannotBeStopped, one => one with { LeakCannotBeStopped = true }),
            (SurveyFact.SubstrateWet, one => one with { SubstrateWet = true }),
            (SurveyFact.SwollenOrDelaminated, one => one with { SwollenOrDelaminated = true }),
            (SurveyFact.StainsBleed, one => one with { StainsBleed = true }),
            (SurveyFact.CuttingOrFoodContactExpected, one => one with { CuttingOrFoodContactExpected = true }),
            (SurveyFact.NoExhaustPath, one => one with { NoExhaustPath = true }),
            (SurveyFact.FlameCannotBeShutOff, one => one with { FlameCannotBeShutOff = true }),
            (SurveyFact.SensitiveOccupantsCannotLeave, one => one with { SensitiveOccupantsCannotLeave = true }),
            (SurveyFact.CureTimeRefused, one => one with { CureTimeRefused = true }),
        ];
        Assert.Equal(Enum.GetValues<SurveyFact>().Length, facts.Length);
        foreach ((SurveyFact fact, Func<Survey, Survey> say) in facts)
        {
            Assert.All(facts, other => Assert.Equal(other.Fact == fact ? 1 : 0, Found(say(Clean()), new SurveyCondition { Facts = [other.Fact] }).Length));
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "a measured limit says how far off it is; what is at the limit is within it; counts add up tiles and own defects")]
    public void Limits_say_how_far_off()
    {
        SurveyCondition deep = new() { Defect = DefectKind.Chip, DeeperThan = Mm(1.5) };
        VerdictReason reason = Assert.Single(Found(Clean(new Chip(Mm(20), Mm(2)), new Chip(Mm(20), Mm(1.5))), deep));
        Assert.Equal("chip 20 mm across, 2 mm deep; its depth: 2 mm; limit at most 1.5 mm; 0.5 mm beyond", reason.Sentence);
        Numbers.Close(-0.5e-3, reason.Comparison!.Margin!.Value.Si, 1e-12);
        Assert.Single(Found(Clean(new Chip(Mm(30), Mm(12), Mm(2))), new SurveyCondition { Defect = DefectKind.Chip, LargerThan = Mm(25) }));
        Assert.Empty(Found(Clean(new Chip(Mm(30), Mm(12), Mm(2))), new SurveyCondition { Defect = DefectKind.Chip, LargerThan = Mm(30) }));
        Assert.Single(Found(Clean(new RustSpot(Mm(30))), new SurveyCondition { Defect = DefectKind.RustSpot, WiderThan = Area.FromSquareMillimeters(706) }));
        Assert.Empty(Found(Clean(new RustSpot(Mm(30))), new SurveyCondition { Defect = DefectKind.RustSpot, WiderThan = Area.FromSquareMillimeters(707) }));
        SurveyCondition many = new() { Defect = DefectKind.LooseTiles, MoreThan = 5 };
        Assert.Empty(Found(Clean(new LooseTiles(2), new LooseTiles(3)), many));
        Assert.Equal("number of LooseTiles: 6; limit at most 5; 1 beyond", Assert.Single(Found(Clean(new LooseTiles(3), new LooseTiles(3)), many)).Sentence);
    }

    [Fact]
    [Evidence(Basis.Contract, "an age or year that nobody knows neither holds nor fails: a condition that cannot be judged")]
    public void What_is_not_known_is_a_condition()
    {
        SurveyCondition old = new() { OlderThanYears = 25 };
        Assert.Equal(Suitability.NotSuitable, Assert.Single(Found(Clean() with { FixtureAge = 26 }, old)).Effect);
        Assert.Empty(Found(Clean() with { FixtureAge = 25 }, old));
        VerdictReason open = Assert.Single(Found(Clean(), old));
        Assert.Equal(Suitability.SuitableWithConditions, open.Effect);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, open.Comparison!.Outcome);
        VerdictReason year = Assert.Single(Found(Clean() with { YearBuilt = null }, new SurveyCondition { BuiltBefore = 1960 }));
        Assert.Equal(Suitability.SuitableWithConditions, year.Effect);
        Assert.Contains("not known", year.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "a function objects with its own sentences, in the order of the verdict")]
    public void A_function_may_judge()
    {
        SurveyRule rule = new("own-2", "odd", Suitability.SuitableWithConditions, "look", "look", Owner,
            survey => survey.Defects.Count > 1 ? ["many defects together", "and another"] : []);
        SurveyPolicy policy = new() { OwnRules = [rule] };
        Assert.Empty(new Verdict(Clean(), policy).Reasons);
        Assert.Equal(["and another", "many defects together"],
            new Verdict(Clean(new Chip(Mm(9), Mm(1)), new Chip(Mm(8), Mm(1))), policy).Reasons.Select(reason => reason.Sentence));
    }

    [Fact]
    [Evidence(Basis.Contract, "a struck rule leaves a note with who struck it; a changed one its new effect; one that protects people a condition for everybody at least")]
    public void Struck_and_changed_rules_stay_in_the_verdict()
    {
        Survey refused = Clean() with { CureTimeRefused = true };
        Verdict struck = new(refused, new SurveyPolicy { RuleChanges = [RuleChange.Strike("S-24", Owner)] });
        Assert.Equal(Suitability.Suitable, struck.Suitability);
        VerdictReason note = Assert.Single(struck.Reasons);
        Assert.EndsWith("; rule S-24 was struck [supplied: owner of the invented shop]", note.Sentence, StringComparison.Ordinal);
        Assert.Contains(note.Sentence, struck.ToText(DisplayUnits.Si), StringComparison.Ordinal);
        Assert.Equal(Suitability.NotSuitable,
            new Verdict(refused, new SurveyPolicy { RuleChanges = [RuleChange.ToEffect("S-24", Suitability.NotSuitable, Owner)] }).Suitability);

        Survey flame = Clean() with { FlameCannotBeShutOff = true };
        foreach (RuleChange change in new[] { RuleChange.Strike("S-33", Owner), RuleChange.ToEffect("S-33", Suitability.Suitable, Owner) })
        {
            VerdictReason kept = Assert.Single(new Verdict(flame, new SurveyPolicy { RuleChanges = [change] }).Reasons);
            Assert.Equal(Suitability.SuitableWithConditions, kept.Effect);
            Assert.Equal(Audience.Crew | Audience.Customer | Audience.Occupant, kept.Concerns);
            Assert.Equal(change, kept.Change);
        }

        Assert.Equal(["S-17", "S-18", "S-19", "S-32", "S-33", "S-34", "S-36", "S-37", "S-38", "S-39", "S-40"],
            SurveyRule.All.Where(rule => rule.ProtectsPeople).Select(rule => rule.Code));
    }

    [Fact]
    [Evidence(Basis.Contract, "a fact that a rule reads is judged by it, and not told as unread")]
    public void What_is_read_is_not_told_as_unread()
    {
        SurveyPolicy policy = new() { OwnRules = [Rule(new SurveyCondition { OwnFacts = ["salvaged"], OlderThanYears = 50 })] };
        Verdict verdict = new(Clean() with { OwnFacts = ["salvaged", "odd"], FixtureAge = 10 }, policy);
        Assert.Equal("the fact odd is read by no rule", Assert.Single(verdict.Reasons).Sentence);
    }

    [Fact]
    [Evidence(Basis.Contract, "codes do not clash, conditions say something that could hold, changes name a ready rule and change it")]
    public void Refuses_what_cannot_be()
    {
        SurveyCondition chip = new() { Defect = DefectKind.Chip };
        Assert.Throws<ArgumentException>(() => new SurveyRule("s-04", "x", Suitability.Suitable, "x", "x", Owner, chip));
        Assert.Throws<ArgumentException>(() => new SurveyRule("a/b", "x", Suitability.Suitable, "x", "x", Owner, chip));
        Assert.Throws<ArgumentException>(() => new SurveyPolicy { OwnRules = [Rule(chip), Rule(chip)] });
        Assert.Throws<ArgumentException>(() => new SurveyPolicy { OwnRules = [SurveyRule.All[0]] });
        Assert.Throws<ArgumentException>(() => Rule(new SurveyCondition()));
        Assert.Throws<ArgumentException>(() => Rule(new SurveyCondition { MoreThan = 3 }));
        Assert.Throws<ArgumentException>(() => Rule(new SurveyCondition { Defect = DefectKind.Crazing, LargerThan = Mm(3) }));
        Assert.Throws<ArgumentException>(() => Rule(new SurveyCondition { Defect = DefectKind.RustSpot, DeeperThan = Mm(3) }));
        Assert.Throws<ArgumentException>(() => Rule(new SurveyCondition { Defect = DefectKind.Crack, WiderThan = Area.FromSquareMeters(1) }));
        Assert.Throws<ArgumentException>(() => RuleChange.Strike("S-99", Owner));
        Assert.Throws<ArgumentException>(() => RuleChange.ToEffect("S-33", Suitability.NotSuitable, Owner));
        Assert.Throws<ArgumentException>(() => new SurveyPolicy { RuleChanges = [RuleChange.Strike("S-24", Owner), RuleChange.Strike("S-24", Owner)] });
        Numbers.Refuses("effect", () => _ = RuleChange.ToEffect("S-33", (Suitability)9, Owner));
        Numbers.Refuses("FixtureAge", () => _ = Clean() with { FixtureAge = 301 });
        Numbers.Refuses("OlderThanYears", () => _ = new SurveyCondition { OlderThanYears = -1 });
        Numbers.Refuses("DeeperThan", () => _ = new SurveyCondition { DeeperThan = Mm(51) });
        Assert.Equal("acrylic sheet; older than 25 years", new SurveyCondition { Materials = [FixtureMaterial.Acrylic], OlderThanYears = 25 }.ToString());
        Assert.Equal(Rule(chip), Rule(new SurveyCondition { Defect = DefectKind.Chip }));
    }
}
