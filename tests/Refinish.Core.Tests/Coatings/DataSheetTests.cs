using System;
using System.Linq;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Coatings;

public class DataSheetTests
{
    [Fact]
    [Evidence(Basis.Independent, "by hand: 2 : 1 by volume at 1.40 and 0.98 g/mL is 100 : 35 by weight; a sheet that prints 100 : 50 has copied its volume ratio")]
    public void A_volume_ratio_printed_as_a_weight_ratio_is_found()
    {
        DataSheetCheck check = new(Stating(50));
        DataSheetFinding wrong = Assert.Single(check.Contradictions);
        Numbers.Close(50, wrong.Stated);
        Numbers.Close(35, wrong.Calculated, 1e-12);
        Assert.Equal("primer hardener by weight to 100 of primer base, against volume ratio and densities: stated 50, follows as 35 (42.9 %)", wrong.ToString());
        Assert.Empty(new DataSheetCheck(Stating(35.2)).Contradictions);
        Assert.Equal("weight-ratio/epoxy-primer-hardener", wrong.Code);
        Numbers.CanBeWritten(check.Workings());
    }

    [Fact]
    [Evidence(Basis.Identity, "the generic products agree with themselves: solids by volume, by mass and of the mix to 2 %, stoichiometry to 25 %")]
    public void The_generic_products_agree_with_themselves()
    {
        foreach (CoatingProduct product in new[] { GenericCatalogue.EpoxyPrimer, GenericCatalogue.AcrylicUrethaneTopcoat, GenericCatalogue.AcrylicUrethaneClear })
        {
            DataSheetCheck check = new(product);
            Assert.Equal(product.IsocyanateFraction > Ratio.Zero ? 5 : 4, check.Findings.Count);
            Assert.Empty(check.Contradictions);
            Numbers.CanBeWritten(check.Workings());
            double polyisocyanate = product.Parts[1].Component.IsocyanateContent is null
                ? 0
                : product.VolumeShares[1].DecimalFractions * product.Parts[1].Component.Density.KilogramsPerCubicMeter * product.Parts[1].Component.MassSolids!.Value.DecimalFractions
                    / product.MixedDensity.KilogramsPerCubicMeter;
            Numbers.Near(polyisocyanate, product.IsocyanateFraction.DecimalFractions, 0.001);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "what is not stated is not compared, and an empty list is not a pass")]
    public void What_is_not_stated_is_not_compared()
    {
        CoatingProduct bare = GenericCatalogue.EpoxyPrimer with
        {
            Parts =
            [
                new(new CoatingComponent { Id = "base", Name = "base", Density = Density.FromGramsPerMilliliter(1.40) }, 2),
                new(new CoatingComponent { Id = "hardener", Name = "hardener", Density = Density.FromGramsPerMilliliter(0.98) }, 1),
            ],
        };
        DataSheetCheck check = new(bare);
        Assert.Empty(check.Findings);
        Assert.Equal("nothing to compare", check.ToString());
        DataSheetCheck strict = new(GenericCatalogue.EpoxyPrimer, Ratio.FromPercent(2), Ratio.FromPercent(5));
        Assert.Single(strict.Contradictions);
        Numbers.Refuses("agreement", () => _ = new DataSheetCheck(bare, Ratio.Zero, Ratio.FromPercent(25)));
    }

    [Fact]
    [Evidence(Basis.Contract, "every figure of a can has its range, and a reducer below the least is refused where it is used")]
    public void Refuses_figures_that_cannot_be()
    {
        CoatingComponent can = new() { Id = "can", Name = "can", Density = Density.FromGramsPerMilliliter(1) };
        Numbers.Refuses("MassSolids", () => _ = can with { MassSolids = Ratio.FromPercent(101) });
        Numbers.Refuses("VolumeSolids", () => _ = can with { VolumeSolids = Ratio.FromPercent(-1) });
        Numbers.Refuses("Water", () => _ = can with { Water = Ratio.FromPercent(101) });
        Numbers.Refuses("ExemptDensity", () => _ = can with { ExemptDensity = Density.Zero });
        Numbers.Refuses("EpoxideEquivalent", () => _ = can with { EpoxideEquivalent = MolarMass.FromGramsPerMole(1) });
        Numbers.Refuses("HydroxylNumber", () => _ = can with { HydroxylNumber = 3000 });
        Numbers.Refuses("IsocyanateContent", () => _ = can with { IsocyanateContent = Ratio.FromPercent(70) });
        Numbers.Refuses("Viscosity", () => _ = can with { Viscosity = DynamicViscosity.Zero });
        Numbers.Refuses("FlashPoint", () => _ = can with { FlashPoint = Temperature.FromDegreesCelsius(400) });
        Numbers.Refuses("ShelfLifeOpened", () => _ = can with { ShelfLifeOpened = TimeSpan.Zero });
        Numbers.Refuses("ShippingSizes", () => _ = can with { ShippingSizes = [Volume.Zero] });
        Numbers.Refuses("Solvents", () => _ = can with { Solvents = [new SolventShare(Solvents.Xylene, Ratio.FromPercent(60))] });
        Numbers.Refuses("RatioTolerance", () => _ = GenericCatalogue.EpoxyPrimer with { RatioTolerance = Ratio.Zero });
        Numbers.Refuses("MinimumReducer", () => _ = new CoatingLayer(GenericCatalogue.EpoxyPrimer with { MinimumReducer = Ratio.FromPercent(30) }, Length.FromMicrometers(30), 1, Ratio.FromPercent(20)));
        Numbers.Refuses("reducer", () => _ = new CoatingLayer(GenericCatalogue.EpoxyPrimer with { MinimumReducer = Ratio.FromPercent(5) }, Length.FromMicrometers(30), 1));
        Numbers.Refuses("vapourPressure", () => Volatility.At20Celsius(Pressure.Zero));
        Assert.Equal(can with { MassSolids = Ratio.FromPercent(50) }, can with { MassSolids = Ratio.FromDecimalFractions(0.5) });
        Assert.NotEqual(can, can with { MassSolids = Ratio.FromPercent(50) });
    }

    [Fact]
    [Evidence(Basis.Contract, "every figure of the generic catalogue has a standing of its own, none of them published for a product")]
    public void Every_figure_has_a_standing()
    {
        var standings = GenericCatalogue.Standings();
        Assert.True(standings.Count > 100, "only " + standings.Count);
        Assert.Equal(standings.Count, standings.Select(one => one.ToString()).Distinct().Count());
        Assert.All(standings, one => Assert.Contains(one.Source.Kind, new[] { SourceKind.Invented, SourceKind.FromMemory, SourceKind.CommonPractice }));
        foreach (CoatingProduct product in new[] { GenericCatalogue.EpoxyPrimer, GenericCatalogue.AcrylicUrethaneTopcoat, GenericCatalogue.AcrylicUrethaneClear })
        {
            Assert.Contains(standings, one => one.Subject == product.Name && one.Figure == "pot life");
            Assert.Contains(standings, one => one.Subject == product.Name && one.Figure == product.Parts[0].Component.Name + ", density");
        }
    }

    private static CoatingProduct Stating(double hardener) => GenericCatalogue.EpoxyPrimer with
    {
        Parts = [GenericCatalogue.EpoxyPrimer.Parts[0], new(GenericCatalogue.EpoxyPrimer.Parts[1].Component, 1, hardener)],
    };
}
