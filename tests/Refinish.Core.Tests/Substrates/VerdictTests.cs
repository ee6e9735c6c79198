using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Fixtures;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Substrates;

public class VerdictTests
{
    private static readonly Defect[] Every = DefectExamples.Every;

    [Fact]
    [Evidence(Basis.Contract, "what must be there for a kind of defect: its own type, an example, hours of its work unless it is another trade's; what is missing is named")]
    public void Nothing_is_missing_for_a_kind_of_defect()
    {
        IEnumerable<string> types = typeof(Defect).Assembly.GetExportedTypes()
            .Where(type => type.BaseType == typeof(Defect) && type != typeof(Refinish.Jobs.OwnDefect)).Select(type => type.Name);
        Assert.Equal(types.Order(StringComparer.Ordinal), DefectKind.All.Select(kind => kind.Code).Order(StringComparer.Ordinal));
        foreach (DefectKind kind in DefectKind.All)
        {
            Assert.True(Every.Any(defect => defect.Kind == kind), kind.Code + " lacks an example in DefectExamples.Every");
            Assert.True(kind.IsAnotherTrades || Refinish.Estimating.LabourStandards.Generic.Any(standard => standard.Repairs == kind),
                kind.Code + " lacks a labour standard");
        }
    }

    private static Length Mm(double mm) => Length.FromMillimeters(mm);

    private static Survey Clean(params Defect[] defects) => new()
    {
        Material = FixtureMaterial.EnamelledCastIron,
        Defects = defects,
        LeadTest = LeadTest.Negative,
        YearBuilt = 1995,
    };

    [Fact]
    [Evidence(Basis.Contract, "no rule objects to a clean, tested fixture with an ordinary chip")]
    public void A_chipped_tub_is_suitable()
    {
        Verdict verdict = new(Clean(new Chip(Mm(20), Mm(1))));
        Assert.Equal(Suitability.Suitable, verdict.Suitability);
        Assert.True(verdict.MayBePlanned);
        Assert.Empty(verdict.Reasons);
        Assert.Equal("suitable", verdict.ToString());
    }

    public static TheoryData<string, Suitability, Survey> Rules() => new()
    {
        { "S-01", Suitability.NotSuitable, Clean() with { Material = FixtureMaterial.Unknown } },
        { "S-02", Suitability.NotSuitable, Clean() with { Material = FixtureMaterial.Polyolefin } },
        { "S-03", Suitability.NotSuitable, Clean(new Perforation(Mm(5))) },
        { "S-04", Suitability.NotSuitable, Clean(new FlexingFloor(Mm(2.1))) },
        { "S-05", Suitability.SuitableWithConditions, Clean(new FlexingFloor(Mm(2))) },
        { "S-06", Suitability.NotSuitable, Clean(new Crack(Mm(100), Mm(1), Mm(1), true)) },
        { "S-07", Suitability.SuitableWithConditions, Clean(new Crack(Mm(100), Mm(1), Mm(1), false)) },
        { "S-08", Suitability.NotSuitable, Clean(new LooseTiles(1)) with { Material = FixtureMaterial.CeramicTile } },
        { "S-09", Suitability.NotSuitable, Clean() with { SubstrateWet = true } },
        { "S-10", Suitability.NotSuitable, Clean() with { SwollenOrDelaminated = true } },
        { "S-11", Suitability.NotSuitable, Clean() with { LeakCannotBeStopped = true } },
        { "S-12", Suitability.NotSuitable, Clean() with { FailedCleaningCycles = 3 } },
        { "S-13", Suitability.SuitableWithConditions, Clean(new SiliconeResidue(Mm(3000))) },
        { "S-14", Suitability.NotSuitable, Clean(new PeelingCoat(Area.FromSquareMeters(1), AdhesionGrade.Grade3B)) with { NoPermittedStrippingRoute = true } },
        { "S-15", Suitability.SuitableWithConditions, Clean(new PeelingCoat(Area.FromSquareMeters(1), AdhesionGrade.Grade3B)) },
        { "S-15", Suitability.SuitableWithConditions, Clean() with { PreviouslyRefinished = true, OldCoatAdhesion = AdhesionGrade.Grade0B } },
        { "S-16", Suitability.SuitableWithConditions, Clean() with { PreviouslyRefinished = true } },
        { "S-16", Suitability.SuitableWithConditions, Clean(new PeelingCoat(Area.FromSquareMeters(1), null)) },
        { "S-17", Suitability.NotSuitable, Clean() with { LeadTest = LeadTest.Positive } },
        { "S-18", Suitability.SuitableWithConditions, Clean() with { LeadTest = LeadTest.Positive, CertifiedForLead = true } },
        { "S-19", Suitability.SuitableWithConditions, Clean() with { LeadTest = LeadTest.NotTested, YearBuilt = 1955 } },
        { "S-19", Suitability.SuitableWithConditions, Clean() with { LeadTest = LeadTest.NotTested, YearBuilt = null } },
        { "S-20", Suitability.NotSuitable, Clean() with { CuttingOrFoodContactExpected = true } },
        { "S-21", Suitability.SuitableWithConditions, Clean(new Crazing(Ratio.FromPercent(21))) },
        { "S-22", Suitability.SuitableWithConditions, Clean(new Crazing(Ratio.FromPercent(20))) },
        { "S-23", Suitability.SuitableWithConditions, Clean() with { StainsBleed = true } },
        { "S-24", Suitability.SuitableWithConditions, Clean() with { CureTimeRefused = true } },
        { "S-25", Suitability.SuitableWithConditions, Clean(new Chip(Mm(20), Mm(1.6))) },
        { "S-26", Suitability.SuitableWithConditions, Clean(new Chip(Mm(20), Mm(3.1))) with { Material = FixtureMaterial.EnamelledSteel } },
        { "S-27", Suitability.SuitableWithConditions, Clean(new RustSpot(Mm(10))) },
        { "S-28", Suitability.SuitableWithConditions, Clean(new GroutFailure(Mm(500))) with { Material = FixtureMaterial.CeramicTile } },
        { "S-29", Suitability.SuitableWithConditions, Clean(new Burn(Mm(10))) with { Material = FixtureMaterial.Gelcoat } },
        { "S-30", Suitability.SuitableWithConditions, Clean(new WornPatch(Mm(900), Mm(500), Mm(1))) },
        { "S-31", Suitability.SuitableWithConditions, Clean(new RustSpot(Mm(10))) with { Material = FixtureMaterial.Acrylic } },
        { "S-32", Suitability.NotSuitable, Clean() with { NoExhaustPath = true } },
        { "S-33", Suitability.NotSuitable, Clean() with { FlameCannotBeShutOff = true } },
        { "S-34", Suitability.NotSuitable, Clean() with { SensitiveOccupantsCannotLeave = true } },
        { "S-35", Suitability.SuitableWithConditions, Clean(new Pitting(Area.FromSquareMeters(0.1), Mm(0.3), Ratio.FromPercent(20))) },
        { "S-36", Suitability.NotSuitable, Tiles(AsbestosTest.Positive, new GroutFailure(Mm(500))) },
        { "S-37", Suitability.SuitableWithConditions, Tiles(AsbestosTest.Positive, new GroutFailure(Mm(500))) with { CertifiedForAsbestos = true } },
        { "S-38", Suitability.SuitableWithConditions, Clean() with { AsbestosTest = AsbestosTest.Positive } },
        { "S-39", Suitability.SuitableWithConditions, Tiles(AsbestosTest.NotTested, new GroutFailure(Mm(500))) with { YearBuilt = 1980 } },
        { "S-40", Suitability.SuitableWithConditions, Clean() with { YearBuilt = 1980 } },
        { "S-40", Suitability.SuitableWithConditions, Clean() with { YearBuilt = null } },
        { "S-40", Suitability.SuitableWithConditions, Clean() with { AsbestosSuspected = true } },
        { "S-41", Suitability.SuitableWithConditions, Clean(new PeelingCoat(Area.FromSquareMeters(1), AdhesionGrade.Grade4B)) },
        { "S-42", Suitability.NotSuitable, Lined(LinerState.WaterBehind, comesOff: true) with { Material = FixtureMaterial.EnamelledSteel } },
        { "S-43", Suitability.NotSuitable, Lined(LinerState.Loose, comesOff: false) },
        { "S-44", Suitability.SuitableWithConditions, Lined(LinerState.NotTested, comesOff: false) },
        { "S-45", Suitability.SuitableWithConditions, Lined(LinerState.BondedAndDry, comesOff: false) },
        { "S-46", Suitability.SuitableWithConditions, Lined(LinerState.Loose, comesOff: true) with { Material = FixtureMaterial.EnamelledSteel } },
        { "S-47", Suitability.SuitableWithConditions, Clean() with { OwnFacts = ["salvaged"] } },
        { "S-47", Suitability.SuitableWithConditions, Clean() with { FixtureAge = 40 } },
    };

    private static Survey Lined(LinerState state, bool comesOff) =>
        Clean(new Liner(Area.FromSquareMeters(2.4), state, comesOff)) with { Material = FixtureMaterial.Acrylic };

    private static Survey Tiles(AsbestosTest test, params Defect[] defects) =>
        Clean(defects) with { Material = FixtureMaterial.CeramicTile, AsbestosTest = test };

    [Theory]
    [MemberData(nameof(Rules))]
    [Evidence(Basis.Contract, "each rule at its threshold, one case or more a code; thresholds are the policy's invented defaults")]
    public void Each_rule_applies(string code, Suitability effect, Survey survey)
    {
        Verdict verdict = new(survey);
        VerdictReason reason = Assert.Single(verdict.Reasons, entry => entry.RuleCode == code);
        Assert.Equal(effect, reason.Effect);
        Assert.Equal(effect, verdict.Suitability);
        Assert.Equal(verdict.Reasons.Max(entry => entry.Effect), verdict.Suitability);
        Assert.NotEmpty(reason.Remedy);
        Assert.NotEmpty(reason.RepeatTest);
        Assert.Contains(reason.Sentence, verdict.ToText(DisplayUnits.Si), StringComparison.Ordinal);
        Assert.Contains(reason.SentenceIn(DisplayUnits.UsCustomary), verdict.ToText(DisplayUnits.UsCustomary), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "the cases above leave no rule out, and codes are unique")]
    public void No_rule_is_untested()
    {
        HashSet<string> tested = [.. Rules().Select(row => (string)((object[])row)[0])];
        Assert.Equal(SurveyRule.All.Select(rule => rule.Code), tested.OrderBy(code => code, StringComparer.Ordinal));
        Assert.Equal(SurveyRule.All.Count, SurveyRule.All.Select(rule => rule.Code).Distinct().Count());
    }

    [Property]
    [Evidence(Basis.Identity, "the order in which defects were written down does not matter; one defect more never makes it better")]
    public void Order_does_not_matter_and_more_is_never_better(int seed, byte material, byte lead)
    {
        Random random = new(seed);
        Defect[] some = [.. Every.Where(_ => random.Next(2) == 0)];
        Defect[] shuffled = [.. some.OrderBy(_ => random.Next())];
        Survey survey = Clean(some) with { Material = FixtureMaterial.All[material % 11], LeadTest = (LeadTest)(lead % 3),
            YearBuilt = lead % 2 == 0 ? 1955 : 1995, AsbestosTest = (AsbestosTest)random.Next(3), CertifiedForAsbestos = lead % 5 == 0 };
        Verdict verdict = new(survey);
        Verdict other = new(survey with { Defects = shuffled });
        Assert.Equal(verdict.Reasons, other.Reasons);
        Assert.Equal(verdict.Cautions, other.Cautions);
        Assert.Equal(verdict.ToText(DisplayUnits.Si), other.ToText(DisplayUnits.Si));
        Verdict worse = new(survey with { Defects = [.. some, Every[random.Next(Every.Length)]] });
        Assert.True(worse.Suitability >= verdict.Suitability);
        Assert.True(worse.Reasons.Count >= verdict.Reasons.Count);
    }

    [Property]
    [Evidence(Basis.Contract, "no verdict hides a lead or structural warning, whatever else was found")]
    public void Lead_and_structure_are_never_hidden(int seed, byte material)
    {
        Random random = new(seed);
        Defect[] some = [.. Every.Where(_ => random.Next(3) == 0)];
        Survey survey = Clean(some) with
        {
            Material = FixtureMaterial.All[material % 11],
            LeadTest = (LeadTest)random.Next(3),
            YearBuilt = random.Next(5) switch { 0 => null, 1 => 1977, 2 => 1978, 3 => 1980, _ => 1981 },
            AsbestosTest = (AsbestosTest)random.Next(3),
            AsbestosSuspected = random.Next(4) == 0,
            CertifiedForLead = random.Next(2) == 0,
            LeakCannotBeStopped = random.Next(2) == 0,
        };
        survey = survey with { LeadSuspected = random.Next(3) == 0 };
        bool lead = survey.LeadTest == LeadTest.Positive || (survey.LeadTest == LeadTest.NotTested && (survey.LeadSuspected || survey.YearBuilt is null or < 1978));
        bool asbestos = survey.AsbestosTest == AsbestosTest.Positive
            || (survey.AsbestosTest == AsbestosTest.NotTested && (survey.AsbestosSuspected || survey.YearBuilt is null or <= 1980));
        bool structure = survey.LeakCannotBeStopped || some.Any(defect => defect is FlexingFloor or Perforation or LooseTiles or Crack { MovesUnderLoad: true });
        foreach (IReadOnlyList<Caution> cautions in new[] { new Verdict(survey).Cautions })
        {
            Assert.Equal(lead, cautions.Any(caution => caution.Hazard == Hazard.Lead));
            Assert.Equal(asbestos, cautions.Any(caution => caution.Code.StartsWith("asbestos-", StringComparison.Ordinal)));
            Assert.Equal(structure, cautions.Any(caution => caution.Hazard == Hazard.Structure));
            Assert.Contains(cautions, caution => caution.Hazard == Hazard.Dust);
        }

        // Nor does the text leave out a single one.
        string text = new Verdict(survey).ToText(DisplayUnits.UsCustomary);
        Assert.All(new Verdict(survey).Cautions, caution => Assert.Contains(caution.Sentence, text, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(1977, true, true)]
    [InlineData(1978, false, true)]
    [InlineData(1980, false, true)]
    [InlineData(1981, false, false)]
    [Evidence(Basis.Cited, "lead: target housing is built before 1978 (71 FR 1588); asbestos: presumed in buildings of no later than 1980 (29 CFR 1926.1101(b))")]
    public void Years_decide_what_is_asked(int year, bool lead, bool asbestos)
    {
        Verdict verdict = new(Clean() with { YearBuilt = year, LeadTest = LeadTest.NotTested });
        Assert.Equal(lead, verdict.Reasons.Any(reason => reason.RuleCode == "S-19"));
        Assert.Equal(asbestos, verdict.Reasons.Any(reason => reason.RuleCode == "S-40"));
        Assert.Equal(lead, verdict.Cautions.Any(caution => caution.Code == "lead-untested"));
        Assert.Equal(asbestos, verdict.Cautions.Any(caution => caution.Code == "asbestos-untested"));
        Assert.True(verdict.MayBePlanned);
        Assert.DoesNotContain(new Verdict(verdict.Survey with { AsbestosTest = AsbestosTest.Negative }).Reasons, reason => reason.RuleCode == "S-40");
    }

    public static TheoryData<Survey> Disturbing() =>
    [
        Clean(new LooseTiles(1)), Clean(new GroutFailure(Mm(500))), Clean() with { SubstrateWet = true }, Clean() with { SwollenOrDelaminated = true },
        Clean(new FlexingFloor(Mm(3))), Clean(new Crack(Mm(100), Mm(1), Mm(1), true)), Clean(new Perforation(Mm(5))), Clean() with { LeakCannotBeStopped = true },
    ];

    [Theory]
    [MemberData(nameof(Disturbing))]
    [Evidence(Basis.Contract, "what reaches adhesive, board, pads or pipes is told apart from work on the surface, tested or not, licensed or not")]
    public void Work_that_disturbs_is_told_apart(Survey survey)
    {
        string[] Codes(Survey one) => [.. new Verdict(one).Reasons.Select(reason => reason.RuleCode).Where(code => code is "S-36" or "S-37" or "S-38" or "S-39" or "S-40")];
        Assert.Empty(Codes(survey));
        Assert.Equal(["S-39"], Codes(survey with { YearBuilt = 1970 }));
        Assert.Equal(["S-36"], Codes(survey with { AsbestosTest = AsbestosTest.Positive }));
        Assert.Equal(["S-37"], Codes(survey with { AsbestosTest = AsbestosTest.Positive, CertifiedForAsbestos = true }));
        Assert.Empty(Codes(survey with { YearBuilt = 1970, AsbestosTest = AsbestosTest.Negative }));
    }

    [Fact]
    [Evidence(Basis.Contract, "work that stays on the surface brings the question as a condition, never a refusal")]
    public void Work_on_the_surface_leaves_asbestos_alone()
    {
        Defect[] surface = [.. Every.Where(defect => defect is not (LooseTiles or GroutFailure or Perforation or Liner or Crack { MovesUnderLoad: true }
            or FlexingFloor { Deflection.Millimeters: > 2 }))];
        Survey survey = Clean(surface) with { AsbestosTest = AsbestosTest.Positive };
        Assert.Equal("S-38", Assert.Single(new Verdict(survey).Reasons, reason => reason.Title.Contains("asbestos", StringComparison.Ordinal)).RuleCode);
        Assert.True(new Verdict(survey).MayBePlanned);
        Assert.Equal("S-40", Assert.Single(new Verdict(survey with { AsbestosTest = AsbestosTest.NotTested, YearBuilt = null }).Reasons,
            reason => reason.Title.Contains("asbestos", StringComparison.Ordinal)).RuleCode);
    }

    [Fact]
    [Evidence(Basis.Contract, "a coat that peels has at least a condition, for every patch, every grade beside it, every mark and every policy")]
    public void A_coat_that_peels_is_never_suitable_without_conditions()
    {
        AdhesionGrade[] grades = Enum.GetValues<AdhesionGrade>();
        AdhesionGrade?[] all = [null, .. grades.Select(grade => (AdhesionGrade?)grade)];
        int cases = 0;
        foreach (AdhesionGrade? patch in all)
        {
            foreach (AdhesionGrade? beside in all)
            {
                foreach (AdhesionGrade least in grades)
                {
                    foreach (bool marked in new[] { false, true })
                    {
                        Survey survey = Clean(new PeelingCoat(Area.FromSquareMeters(0.2), patch)) with { OldCoatAdhesion = beside, PreviouslyRefinished = marked };
                        Verdict verdict = new(survey, new SurveyPolicy { MinimumAdhesion = least });
                        Assert.Equal(Suitability.SuitableWithConditions, verdict.Suitability);
                        Assert.Equal(patch < least || beside < least, verdict.Reasons.Any(reason => reason.RuleCode == "S-15"));
                        Assert.Equal(patch >= least, verdict.Reasons.Any(reason => reason.RuleCode == "S-41"));
                        cases++;
                    }
                }
            }
        }

        Assert.Equal(7 * 7 * 6 * 2, cases);
    }

    [Fact]
    [Evidence(Basis.Contract, "numbers stay in the sentence, in the reader's units; a policy moves the threshold")]
    public void Numbers_and_policy()
    {
        Survey survey = Clean(new FlexingFloor(Mm(4))) with { Material = FixtureMaterial.Acrylic };
        Assert.Equal("give of the floor: 4 mm; limit at most 2 mm; 2 mm beyond", new Verdict(survey).Reasons[0].Sentence);
        Assert.Equal("give of the floor: 0.1575 in; limit at most 0.07874 in; 0.0787 in beyond", new Verdict(survey).Reasons[0].SentenceIn(DisplayUnits.UsCustomary));
        Assert.Equal(Suitability.SuitableWithConditions, new Verdict(survey, new SurveyPolicy { MaximumFloorDeflection = Mm(5) }).Suitability);
        Assert.Equal("not suitable as it stands: S-04", new Verdict(survey).ToString());
        Assert.Equal(Suitability.Suitable, new Verdict(Clean() with { OldCoatAdhesion = AdhesionGrade.Grade3B, PreviouslyRefinished = true }, new SurveyPolicy { MinimumAdhesion = AdhesionGrade.Grade3B }).Suitability);
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings; equality")]
    public void Refuses_and_equals()
    {
        Assert.Throws<ArgumentNullException>(() => Clean() with { Material = null! });
        Numbers.Refuses("Material", () => _ = Clean() with { Material = FixtureMaterial.OldCoating });
        Numbers.Refuses("FailedCleaningCycles", () => _ = Clean() with { FailedCleaningCycles = -1 });
        Numbers.Refuses("LeadTest", () => _ = Clean() with { LeadTest = (LeadTest)4 });
        Numbers.Refuses("AsbestosTest", () => _ = Clean() with { AsbestosTest = (AsbestosTest)3 });
        Numbers.Refuses("YearBuilt", () => _ = Clean() with { YearBuilt = 78 });
        Numbers.Refuses("YearBuilt", () => _ = Clean() with { YearBuilt = 2201 });
        Numbers.Refuses("MaximumFloorDeflection", () => _ = new SurveyPolicy { MaximumFloorDeflection = Length.Zero });
        Numbers.Refuses("MaximumCrazing", () => _ = new SurveyPolicy { MaximumCrazing = Ratio.FromPercent(120) });
        Numbers.Refuses("CleaningCycles", () => _ = new SurveyPolicy { CleaningCycles = 0 });
        Assert.Throws<ArgumentNullException>(() => new Verdict(null!));
        Assert.Equal(new Verdict(Clean(Every)), new Verdict(Clean(Every)));
        Assert.Equal("enamelled cast iron, 1 defect", Clean(Every[0]).ToString());
    }
}
