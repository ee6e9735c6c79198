using System;
using System.Linq;
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
}
