using System;
using System.Linq;
using Refinish.Coatings;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Coatings;

public class CatalogueTests
{
    private static readonly CoatingProduct Primer = GenericCatalogue.EpoxyPrimer;
    private static readonly CoatingProduct Topcoat = GenericCatalogue.AcrylicUrethaneTopcoat;

    [Fact]
    [Evidence(Basis.Contract, "everything in the catalogue says that it is invented")]
    public void The_catalogue_says_it_is_invented()
    {
        Source[] sources =
        [
            Primer.Source, Primer.Cure.Source, Primer.SprayLimits.Source, Topcoat.Source, Topcoat.Cure.Source,
            GenericCatalogue.SilanePromoter.Source, GenericCatalogue.PlasticPromoter.Source, GenericCatalogue.EpoxyUrethaneSystem.Source,
        ];
        Assert.All(sources, source => Assert.Equal(SourceKind.Invented, source.Kind));
    }

    [Fact]
    [Evidence(Basis.Identity, "shares of a solvent blend add up to the whole")]
    public void Solvent_shares_add_up()
    {
        Assert.All(
            new[] { Primer, Topcoat },
            product => Numbers.Close(1, product.Solvents.Sum(share => share.MassFraction.DecimalFractions), 1e-12));
        Numbers.Close(1.17, Topcoat.MixedDensity.GramsPerMilliliter, 1e-12);
    }

    [Theory]
    [InlineData("67-64-1", "C3H6O", 3, 6, 1)]
    [InlineData("78-93-3", "C4H8O", 4, 8, 1)]
    [InlineData("141-78-6", "C4H8O2", 4, 8, 2)]
    [InlineData("123-86-4", "C6H12O2", 6, 12, 2)]
    [InlineData("1330-20-7", "C8H10", 8, 10, 0)]
    [InlineData("108-88-3", "C7H8", 7, 8, 0)]
    [InlineData("108-65-6", "C6H12O3", 6, 12, 3)]
    [Evidence(Basis.Independent, "sum of IUPAC abridged atomic weights C 12.011, H 1.008, O 15.999")]
    public void Molar_masses_are_sums_of_atomic_weights(string cas, string formula, int carbon, int hydrogen, int oxygen)
    {
        Solvent solvent = GenericSolvents.All.Single(one => one.CasNumber == cas);
        Numbers.Near((12.011 * carbon) + (1.008 * hydrogen) + (15.999 * oxygen), solvent.MolarMass.GramsPerMole, 0.01);
        Assert.NotEmpty(formula);
    }

    [Fact]
    [Evidence(Basis.Contract, "the glassy materials take silane, the plastics their own wipe, polyolefin and the unknown none")]
    public void The_promoter_follows_the_material()
    {
        CoatingSystem system = GenericCatalogue.EpoxyUrethaneSystem;
        Assert.Equal(GenericCatalogue.SilanePromoter, system.PromoterFor(FixtureMaterial.EnamelledCastIron));
        Assert.Equal(GenericCatalogue.PlasticPromoter, system.PromoterFor(FixtureMaterial.Acrylic));
        Assert.Null(system.PromoterFor(FixtureMaterial.Polyolefin));
        Assert.Empty(system.ObjectionsFor(FixtureMaterial.VitreousChina));
        Assert.Equal(2, system.ObjectionsFor(FixtureMaterial.Polyolefin).Count);
        Numbers.Close(120, system.TotalDryFilm.Micrometers, 1e-12);
    }

    [Fact]
    [Evidence(Basis.Contract, "a topcoat under a primer is objected to")]
    public void The_order_of_layers_is_checked()
    {
        CoatingSystem upsideDown = new(
            "upside down",
            [],
            [new CoatingLayer(Topcoat, Length.FromMicrometers(30), 1), new CoatingLayer(Primer, Length.FromMicrometers(30), 1)],
            Source.Invented("for this test"));
        Assert.Contains("two-part epoxy primer stands over two-part acrylic urethane topcoat, which goes on later.", upsideDown.ObjectionsFor(FixtureMaterial.CeramicTile));
    }

    [Fact]
    [Evidence(Basis.Contract, "a layer outside its data sheet is refused, and so is a data sheet that contradicts itself")]
    public void Refuses_what_the_data_sheet_excludes()
    {
        Numbers.Refuses("dryFilmPerCoat", () => _ = new CoatingLayer(Primer, Length.FromMicrometers(60), 1));
        Numbers.Refuses("coats", () => _ = new CoatingLayer(Primer, Length.FromMicrometers(30), 0));
        Numbers.Refuses("reducer", () => _ = new CoatingLayer(Primer, Length.FromMicrometers(30), 1, Ratio.FromPercent(21)));
        Numbers.Refuses("VolumeSolids", () => _ = Primer with { VolumeSolids = Ratio.FromPercent(101) });
        Numbers.Refuses("Solvents", () => _ = Primer with { Solvents = [new SolventShare(GenericSolvents.Xylene, Ratio.FromPercent(60))] });
        Numbers.Refuses("MinimumDryFilm", () => _ = new CoatingLayer(Primer with { MinimumDryFilm = Length.FromMicrometers(80) }, Length.FromMicrometers(30), 1));
        Numbers.Refuses("MixRatio", () => _ = new CoatingLayer(Primer with { Hardener = null }, Length.FromMicrometers(30), 1));
        Numbers.Refuses("MaximumReducer", () => _ = new CoatingLayer(Primer with { Reducer = null }, Length.FromMicrometers(30), 1));
        Numbers.Refuses("RecoatOpens", () => _ = Primer with { Cure = Primer.Cure with { RecoatCloses = TimeSpan.FromMinutes(30) } });
        Numbers.Refuses("WaterService", () => _ = Primer with { Cure = Primer.Cure with { WaterService = TimeSpan.FromDays(8) } });
        Numbers.Refuses("Induction", () => _ = Primer with { Cure = Primer.Cure with { Induction = TimeSpan.FromHours(4) } });
        Numbers.Refuses("ReferenceTemperature", () => _ = Primer with { Cure = Primer.Cure with { MinimumTemperature = Temperature.FromDegreesCelsius(26) } });
    }

    [Fact]
    [Evidence(Basis.Contract, "products are values: equal when their figures are, whatever unit they were given in")]
    public void Products_are_values()
    {
        CoatingProduct same = Primer with { MinimumDryFilm = Length.FromMillimeters(0.02), KitSizes = [Volume.FromLiters(0.75), Volume.FromLiters(3)] };
        Assert.Equal(Primer.KitSizes.Select(size => size.Milliliters), same.KitSizes.Select(size => Math.Round(size.Milliliters, 6)));
        Assert.Equal(Primer.MinimumDryFilm.Micrometers, same.MinimumDryFilm.Micrometers, 9);
        Assert.Equal(Primer, Primer with { Name = Primer.Name });
        Assert.NotEqual(Primer, Primer with { Name = "another primer" });
    }
}
