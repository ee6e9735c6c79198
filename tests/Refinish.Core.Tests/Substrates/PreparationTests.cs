using System;
using System.Linq;
using Refinish.Fixtures;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Substrates;

public class PreparationTests
{
    private static Survey Of(FixtureMaterial material, params Defect[] defects) => new() { Material = material, Defects = defects, BuiltBefore1978 = false };

    [Theory]
    [InlineData(FixtureMaterial.EnamelledCastIron, PromoterKind.Silane, 120, 220)]
    [InlineData(FixtureMaterial.EnamelledSteel, PromoterKind.Silane, 120, 220)]
    [InlineData(FixtureMaterial.VitreousChina, PromoterKind.Silane, 120, 220)]
    [InlineData(FixtureMaterial.CeramicTile, PromoterKind.Silane, 120, 220)]
    [InlineData(FixtureMaterial.Gelcoat, PromoterKind.Plastic, 220, 320)]
    [InlineData(FixtureMaterial.CulturedMarble, PromoterKind.Plastic, 220, 320)]
    [InlineData(FixtureMaterial.Acrylic, PromoterKind.Plastic, 320, 320)]
    [InlineData(FixtureMaterial.SolidSurface, PromoterKind.Plastic, 220, 220)]
    [InlineData(FixtureMaterial.Laminate, PromoterKind.Plastic, 180, 220)]
    [Evidence(Basis.Contract, "common practice, no source: promoter and grits by material")]
    public void Each_material_has_its_route(FixtureMaterial material, PromoterKind promoter, int coarse, int fine)
    {
        Preparation preparation = new(Of(material));
        Assert.Equal(promoter, preparation.Promoter);
        Assert.Null(preparation.WhyNone);
        PreparationStep key = Assert.Single(preparation.Steps, step => step.Kind == PreparationKind.Key);
        Assert.Equal(coarse, key.CoarsestGrit);
        Assert.Equal(fine, key.FinestGrit);
        Assert.Equal(PreparationKind.Clear, preparation.Steps[0].Kind);
        Assert.Equal(PreparationKind.Promote, preparation.Steps[^1].Kind);
        Assert.Equal(preparation.Steps.Select(step => step.Code), preparation.Steps.Select(step => step.Code).OrderBy(code => code, StringComparer.Ordinal));
        Assert.All(preparation.Steps, step => Assert.Equal(SourceKind.CommonPractice, step.Source.Kind));

        // Acid is offered, and warned of, only where the glaze or enamel bears it.
        bool etches = key.Instruction.Contains("etch", StringComparison.Ordinal);
        Assert.Equal(promoter == PromoterKind.Silane, etches);
        Assert.Equal(etches, preparation.Cautions.Any(caution => caution.Hazard == Hazard.Acid));
    }

    [Fact]
    [Evidence(Basis.Contract, "defects add their steps at their place in the order")]
    public void Defects_add_steps()
    {
        Preparation plain = new(Of(FixtureMaterial.EnamelledSteel));
        Preparation full = new(Of(
            FixtureMaterial.EnamelledSteel,
            new RustSpot(Length.FromMillimeters(10)),
            new SiliconeResidue(Length.FromMeters(3)),
            new PeelingCoat(Area.FromSquareMeters(1), AdhesionGrade.Grade1B)));
        Assert.Equal(["P-31", "P-40", "P-51", "P-80"], full.Steps.Select(step => step.Code).Except(plain.Steps.Select(step => step.Code)));
        Assert.Contains(full.Cautions, caution => caution.Hazard == Hazard.Stripper);
        Assert.Contains(full.Cautions, caution => caution.Hazard == Hazard.SkinAndEyes);
        Assert.DoesNotContain(plain.Cautions, caution => caution.Hazard == Hazard.Stripper);
        Assert.Contains(new Preparation(Of(FixtureMaterial.EnamelledSteel) with { PreviouslyRefinished = true }).Steps, step => step.Code == "P-41");
        Assert.Contains(new Preparation(Of(FixtureMaterial.EnamelledSteel) with { PreviouslyRefinished = true, OldCoatAdhesion = AdhesionGrade.Grade5B }).Steps, step => step.Code == "P-42");
        Assert.Contains(new Preparation(Of(FixtureMaterial.CeramicTile, new GroutFailure(Length.FromMeters(1)))).Steps, step => step.Code == "P-50");
    }

    [Theory]
    [InlineData(FixtureMaterial.Unknown)]
    [InlineData(FixtureMaterial.Polyolefin)]
    [Evidence(Basis.Contract, "where no route can be named, none is invented and the reason is given")]
    public void Says_why_there_is_no_route(FixtureMaterial material)
    {
        Preparation preparation = new(Of(material));
        Assert.Empty(preparation.Steps);
        Assert.Equal(PromoterKind.None, preparation.Promoter);
        Assert.NotNull(preparation.WhyNone);
        Assert.Equal(preparation.WhyNone, preparation.ToString());
    }
}
