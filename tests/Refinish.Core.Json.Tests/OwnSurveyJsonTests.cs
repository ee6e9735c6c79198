using System;
using System.Linq;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using UnitsNet;
using Xunit;

namespace Refinish.Json.Tests;

/// <summary>What a caller adds to the survey comes back equal, and what cannot be stored is refused by name. All of it is invented.</summary>
public class OwnSurveyJsonTests
{
    private static readonly FixtureMaterial Panel = new()
    {
        Id = "pressed-panel", Name = "pressed resin panel", Surface = MaterialSurface.FilledPolymer, BondsLike = FixtureMaterial.SolidSurface,
        Metal = MetalBelow.NotMagnetic, HasJoints = true, CrazesInSolvent = true, IsFlexibleSheet = true, MayBeEtched = true,
        Keying = new MaterialKeying("scuff", 320, 400), Source = Source.Invented("for this test"),
        Body = new MaterialBody
        {
            Heat = FixtureThermalData.Acrylic with { Name = "panel", Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(0.3) },
            UsualThickness = Length.FromMillimeters(3), Density = Density.FromKilogramsPerCubicMeter(1450),
            Source = Source.Invented("for this test"),
        },
    };

    private static Job Bathroom(Func<Survey, Survey> change)
    {
        Job job = Examples.Bathroom();
        FixtureJob first = job.Fixtures[0];
        return job with { Fixtures = [first with { Survey = change(first.Survey) }, .. job.Fixtures.Skip(1)] };
    }

    [Fact]
    public void An_own_material_comes_back_equal()
    {
        Job job = Bathroom(survey => survey with { Material = Panel, Defects = [] });
        string text = JobJson.Write(job);
        Assert.Equal(job, JobJson.Read(text));
        Assert.Contains("\"material\": \"pressed-panel\"", text, StringComparison.Ordinal);
        Job odd = Bathroom(survey => survey with { Material = FixtureMaterial.Acrylic with { Body = null }, Defects = [] });
        Assert.Equal(odd, JobJson.Read(JobJson.Write(odd)));
    }

    [Fact]
    public void An_unknown_material_is_told()
    {
        string text = JobJson.Write(Examples.Bathroom()).Replace("\"enamelledSteel\"", "\"enameledSteel\"", StringComparison.Ordinal)
            .Replace("\"enamelledCastIron\"", "\"enameledCastIron\"", StringComparison.Ordinal);
        JsonFault fault = Assert.Throws<RefinishJsonException>(() => JobJson.Read(text)).Faults[0];
        Assert.Equal(JsonFaultKind.UnknownKind, fault.Kind);
        Assert.Contains("enamelled", fault.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Own_rules_and_changes_come_back_equal_and_a_function_is_refused_by_name()
    {
        Source own = Source.Invented("for this test");
        SurveyRule stored = new("own-1", "old acrylic", Suitability.NotSuitable, "look", "look", own, new SurveyCondition { OlderThanYears = 25 });
        SurveyRule coded = new("own-2", "odd", Suitability.NotSuitable, "look", "look", own, _ => []);
        Job job = Examples.Bathroom();
        Job with = job with
        {
            Shop = job.Shop with { Survey = new SurveyPolicy { OwnRules = [stored], RuleChanges = [RuleChange.Strike("S-24", own)] } },
        };
        Assert.Equal(with, JobJson.Read(JobJson.Write(with)));
        Job odd = job with { Shop = job.Shop with { Survey = new SurveyPolicy { OwnRules = [coded] } } };
        Assert.Contains("own-2 odd", Assert.Throws<NotSupportedException>(() => JobJson.Write(odd)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_of_an_own_defect_agrees_with_what_is_stored()
    {
        Source own = Source.Invented("for this test");
        OwnDefect inlay = new()
        {
            Code = "loose-inlay",
            Name = "loose inlay",
            Effect = Suitability.SuitableWithConditions,
            Remedy = "bed it again",
            RepeatTest = "tap test",
            Source = own,
            Count = 2, Hollow = new Hollow(Volume.FromMilliliters(4), Length.FromMillimeters(3)),
            Work = new DefectWork { Kind = WorkKind.Fill, Instruction = "bed it", Hours = ThreePoint.Exactly(0.2), Source = own },
        };
        Job job = Bathroom(survey => survey with { Defects = [.. survey.Defects, inlay, new LowSpot(
            Length.FromMillimeters(200), Length.FromMillimeters(100), Length.FromMillimeters(0.5), Length.FromMillimeters(30))] });
        Assert.Equal(job, JobJson.Read(JobJson.Write(job)));
        Assert.True(PlanJson.Read(PlanJson.Write(job.Plan())).Agrees);
    }

    [Fact]
    public void A_misspelt_kind_is_no_kind_of_ones_own()
    {
        string text = FaultTests.Put(JobJson.Write(Examples.Everything()), "$.shop.defectMaterials[0].repairs", "\"rustSpott\"");
        JsonFault fault = Assert.Single(Assert.Throws<RefinishJsonException>(() => JobJson.Read(text)).Faults);
        Assert.Equal(JsonFaultKind.UnknownKind, fault.Kind);
        Assert.Contains("rustSpot", fault.Sentence, StringComparison.Ordinal);
    }
}
