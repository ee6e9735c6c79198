using System;
using System.Linq;
using Refinish.Coatings;
using Refinish.Fixtures;
using Refinish.Substrates;
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
    [InlineData("67-63-0", "C3H8O", 3, 8, 1)]
    [InlineData("100-41-4", "C8H10", 8, 10, 0)]
    [InlineData("110-43-0", "C7H14O", 7, 14, 1)]
    [InlineData("95-63-6", "C9H12", 9, 12, 0)]
    [InlineData("25550-14-5", "C9H12", 9, 12, 0)]
    [Evidence(Basis.Independent, "sum of IUPAC abridged atomic weights C 12.011, H 1.008, O 15.999")]
    public void Molar_masses_are_sums_of_atomic_weights(string cas, string formula, int carbon, int hydrogen, int oxygen)
    {
        Solvent solvent = Solvents.All.Single(one => one.CasNumber == cas);
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
            "upside-down",
            "upside down",
            [
                SystemStep.Coat(new CoatingLayer(Topcoat, Length.FromMicrometers(30), 1)),
                SystemStep.Coat(new CoatingLayer(Primer, Length.FromMicrometers(30), 1)),
            ],
            null,
            Source.Invented("for this test"));
        Assert.Contains(
            "two-part epoxy primer comes after two-part acrylic urethane topcoat, which goes on later.",
            upsideDown.ObjectionsFor(FixtureMaterial.CeramicTile));
    }

    [Fact]
    [Evidence(Basis.Contract, "each entry of the catalogue has an identity of its own, and cans that are shared have one")]
    public void Identities_are_unique()
    {
        CoatingProduct[] products = [Primer, Topcoat, GenericCatalogue.AcrylicUrethaneClear];
        string[] ids =
        [
            .. products.Select(product => product.Id),
            GenericCatalogue.SilanePromoter.Id, GenericCatalogue.PlasticPromoter.Id, GenericCatalogue.PolymerBeads.Id,
            GenericCatalogue.EpoxyUrethaneSystem.Id, GenericCatalogue.SlipResistantTub.Id, GenericCatalogue.ClearedPlastic.Id,
            FillerProduct.GenericEpoxy.Id, FillerProduct.GenericPolyester.Id,
        ];
        Assert.Equal(ids.Length, ids.Distinct().Count());
        CoatingComponent[] cans = [.. products.SelectMany(product => product.Parts.Select(part => part.Component).Concat([product.Reducer!]))];
        Assert.Equal(cans.Distinct().Count(), cans.Select(can => can.Id).Distinct().Count());
        Assert.All([.. ids, .. cans.Select(can => can.Id)], id => Assert.Matches("^[a-z]+(-[a-z]+)*$", id));
    }

    [Fact]
    [Evidence(Basis.Contract, "figures for judging are unknown unless somebody gives them, and then have the ranges of the calculations that use them")]
    public void Figures_for_judging_are_not_known()
    {
        Assert.All(
            new[] { Primer, Topcoat, GenericCatalogue.AcrylicUrethaneClear },
            product => Assert.True(product.Scattering is null && product.Colour is null && product.Flow is null));
        CoatingProduct white = Topcoat with { Scattering = ReciprocalLength.FromInverseMillimeters(140) };
        Numbers.Close(140, white.Scattering!.Value.InverseMillimeters);
        Numbers.Refuses("Scattering", () => _ = Topcoat with { Scattering = ReciprocalLength.FromInverseMeters(0.5) });
        FlowFigures flow = new()
        {
            Fluidity = 200, SurfaceTension = ForcePerLength.FromMillinewtonsPerMeter(28), Source = Source.Supplied("test panel"),
        };
        Assert.Equal(flow, (Topcoat with { Flow = flow }).Flow);
        Assert.Equal("fluidity 200 1/Pa, 28 mN/m", flow.ToString());
        Numbers.Refuses("Fluidity", () => _ = flow with { Fluidity = 1e-4 });
        Numbers.Refuses("SurfaceTension", () => _ = flow with { SurfaceTension = ForcePerLength.FromMillinewtonsPerMeter(4) });
        Numbers.Refuses("SagAllowed", () => _ = flow with { SagAllowed = Length.FromMillimeters(0.05) });
        Numbers.Refuses("Wavelength", () => _ = flow with { Wavelength = Length.FromMillimeters(0.04) });
        Numbers.Refuses("RippleLeft", () => _ = flow with { RippleLeft = 1 });
        Numbers.Refuses("YieldStress", () => _ = flow with { YieldStress = Pressure.FromPascals(-1) });
        Assert.Throws<ArgumentNullException>(() => flow with { Source = null! });
    }

    [Fact]
    [Evidence(Basis.Contract, "a layer outside its data sheet is refused, and so is a data sheet that contradicts itself")]
    public void Refuses_what_the_data_sheet_excludes()
    {
        Numbers.Refuses("dryFilmPerCoat", () => _ = new CoatingLayer(Primer, Length.FromMicrometers(60), 1));
        Numbers.Refuses("coats", () => _ = new CoatingLayer(Primer, Length.FromMicrometers(30), 0));
        Numbers.Refuses("reducer", () => _ = new CoatingLayer(Primer, Length.FromMicrometers(30), 1, Ratio.FromPercent(21)));
        Numbers.Refuses("VolumeSolids", () => _ = Primer with { VolumeSolids = Ratio.FromPercent(101) });
        Numbers.Refuses("Solvents", () => _ = Primer with { Solvents = [new SolventShare(Solvents.Xylene, Ratio.FromPercent(60))] });
        Numbers.Refuses("MinimumDryFilm", () => _ = new CoatingLayer(Primer with { MinimumDryFilm = Length.FromMicrometers(80) }, Length.FromMicrometers(30), 1));
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
