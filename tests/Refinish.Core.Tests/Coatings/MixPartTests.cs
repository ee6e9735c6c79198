using System;
using System.Linq;
using FsCheck.Xunit;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Coatings;

public class MixPartTests
{
    private static readonly CoatingProduct Topcoat = GenericCatalogue.AcrylicUrethaneTopcoat;
    private static readonly Density Lighter = Density.FromPoundsPerUSGallon(7.36);

    [Fact]
    [Evidence(Basis.Independent, "by hand: 4 × 1.20 g to 1 × 1.05 g is 100 : 21.875; no published source")]
    public void Four_to_one_by_volume_is_not_100_to_25_by_weight()
    {
        Numbers.Close(21.875, Topcoat.Per100OfFirst[1]);
        Assert.Equal("4 : 1", Topcoat.MixRatio);
        Assert.Equal("one part", (GenericCatalogue.EpoxyPrimer with { Parts = [GenericCatalogue.EpoxyPrimer.Parts[0]] }).MixRatio);
    }

    [Property]
    [Evidence(Basis.Identity, "volume to weight to volume gives the ratio back for three parts; the shares add up to one, and the "
        + "density of the mix is mass over volume")]
    public void Ratios_round_trip(byte a, byte b, byte c)
    {
        MixPart[] parts = [Can("a", 1.35, a + 1), Can("b", 1.05, b + 1), Can("c", 0.9, c + 1)];
        CoatingProduct product = Topcoat with { Parts = parts };
        CoatingProduct back = Topcoat with
        {
            Parts = MixPart.ByMass(parts.Select((part, i) => new MixPart(part.Component, product.Per100OfFirst[i]))),
        };
        Numbers.Close(1, product.VolumeShares.Sum(share => share.DecimalFractions), 1e-12);
        for (int i = 0; i < 3; i++)
        {
            Numbers.Close(product.VolumeShares[i].DecimalFractions, back.VolumeShares[i].DecimalFractions, 1e-12);
        }

        double mass = (1.35 * (a + 1)) + (1.05 * (b + 1)) + (0.9 * (c + 1));
        Numbers.Close(mass / (a + b + c + 3), product.MixedDensity.GramsPerMilliliter, 1e-12);
    }

    [Fact]
    [Evidence(Basis.Cited, "state of Michigan, emission reporting worksheet on coatings in several parts, January 2005, example: "
        + "10.5, 7.5 and 6.75 lb/gal at 60, 30 and 10 % of the mix; "
        + "density is the sum of density times share. Its printed result was not seen: 9.225 lb/gal by hand")]
    public void Density_of_three_parts()
    {
        CoatingProduct product = Topcoat with
        {
            Parts = [Pounds("paint", 10.5, 60), Pounds("reducer", 7.5, 30), Pounds("catalyst", 6.75, 10)],
        };
        Numbers.Near(9.225, product.MixedDensity.PoundsPerUSGallon, 5e-10);
    }

    [Fact]
    [Evidence(Basis.Cited, "Metal Finishing guidebook 2013, appendix B, p. 817, example 2: 3 parts at 3.1 lb/gal, 1 part at 1.8 "
        + "lb/gal and 7 parts of water are 11.1/4 less water; "
        + "it prints 2.75 where it is 2.775. Densities of the cans are made up: the content does not depend on them")]
    public void Three_parts_of_which_one_is_water()
    {
        CoatingProduct product = Water(Topcoat) with
        {
            Parts =
            [
                Organic("a", 1.2, 3.1, 3), Organic("b", 1.1, 1.8, 1),
                new(new CoatingComponent
                {
                    Id = "water", Name = "water", Density = Density.FromKilogramsPerCubicMeter(998.15),
                    MassSolids = Ratio.Zero, Water = Ratio.FromPercent(100),
                }, 7),
            ],
            VolumeSolids = Ratio.FromPercent(22.7),
        };
        MixedCoating mixed = new(product, Ratio.Zero);
        Numbers.Near(2.775, mixed.Voc!.Regulatory.PoundsPerUSGallon, 5e-9);
        Numbers.Near(11.1 / 11, mixed.Voc.Material.PoundsPerUSGallon, 5e-9);
        Numbers.Near(11.1 / 11, mixed.SolventContent.PoundsPerUSGallon, 5e-9);
        Numbers.Near(7 * 998.15 / 11, mixed.WaterContent.KilogramsPerCubicMeter, 1e-9);
        Numbers.CanBeWritten(mixed.Workings());
    }

    [Fact]
    [Evidence(Basis.Cited, "the same page, example 3: 42 % water and 52 % solids by volume leave 6 % solvent, 0.06/0.58 × 7.36 = 0.76 "
        + "lb/gal less water; "
        + "the page names the 52 and the 42 the other way round, which its own 0.52 and 0.58 gal contradict")]
    public void Volumes_alone_tell_the_solvent_where_no_can_states_its_solids()
    {
        Solvent carrier = Solvents.ButylAcetate with { Density = Lighter };
        CoatingComponent can = new()
        {
            Id = "can", Name = "can", Density = Density.FromGramsPerMilliliter(1.1),
            Water = Ratio.FromDecimalFractions(0.42 * 998.15 / 1100),
        };
        CoatingProduct product = Water(Topcoat) with
        {
            Parts = [new(can, 1)], VolumeSolids = Ratio.FromPercent(52), Solvents = [new(carrier, Ratio.FromPercent(100))],
        };
        MixedCoating mixed = new(product, Ratio.Zero);
        Assert.False(mixed.IsFromCans);
        Numbers.Near(0.76, mixed.Voc!.Regulatory.PoundsPerUSGallon, 0.005);
        Numbers.Close(0.06 * 7.36, mixed.SolventContent.PoundsPerUSGallon, 1e-9);
        Numbers.CanBeWritten(mixed.Workings());
    }

    [Fact]
    [Evidence(Basis.Cited, "paint and coatings resource centre, March 2004: 8.52 lb/gal, 53.0 % water and 20.8 % solids by weight, "
        + "water 8.33 lb/gal; 2.23 lb/gal as it is, 4.87 less water")]
    public void One_part_of_which_half_is_water()
    {
        CoatingComponent can = new()
        {
            Id = "can", Name = "can", Density = Density.FromPoundsPerUSGallon(8.52),
            MassSolids = Ratio.FromPercent(20.8), Water = Ratio.FromPercent(53),
        };
        MixedCoating mixed = new(Water(Topcoat) with { Parts = [new(can, 1)], VolumeSolids = Ratio.FromPercent(15) }, Ratio.Zero);
        Numbers.Near(2.23, mixed.Voc!.Material.PoundsPerUSGallon, 0.005);
        Numbers.Near(4.87, mixed.Voc.Regulatory.PoundsPerUSGallon, 0.005);
        Numbers.Near(2.23, mixed.SolventContent.PoundsPerUSGallon, 0.005);
    }

    [Fact]
    [Evidence(Basis.Contract, "parts that cannot be are refused, and so are two cans of one identity and a sheet that contradicts itself")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("parts", () => _ = Can("a", 1, 0));
        Numbers.Refuses("parts", () => _ = Can("a", 1, double.NaN));
        Numbers.Refuses("statedPer100OfFirst", () => _ = new MixPart(Can("a", 1, 1).Component, 1, 0));
        Assert.Throws<ArgumentException>(() => MixPart.ByMass([]));
        Assert.Throws<ArgumentException>(() => Topcoat with { Parts = [] });
        Assert.Throws<ArgumentException>(() => Topcoat with { Parts = [Can("a", 1, 1), Can("a", 1, 1)] });
        Numbers.Refuses("Parts", () => _ = Topcoat with
        {
            Parts = [.. Enumerable.Range(0, 11).Select(i => Can("can-" + (char)('a' + i), 1, 1))],
        });
        Refused("IsocyanateFraction", Topcoat with { IsocyanateFraction = Ratio.Zero });
        Refused("Reducer", Topcoat with { Reducer = Topcoat.Parts[0].Component });
        Refused("MassSolids", Topcoat with { Parts = [Wet(60, 50)] });
        Refused("VolumeSolids", Water(Topcoat) with { Parts = [Wet(30, 65)], VolumeSolids = Ratio.FromPercent(60) });
        Refused("VolumeSolids", Topcoat with { VolumeSolids = Ratio.FromPercent(100) });
        Refused("Solvents", Topcoat with { Solvents = [] });
        Refused("Solvents", Water(Topcoat) with { Parts = [Wet(40, 60)], VolumeSolids = Ratio.FromPercent(30) });
        Assert.Empty((Water(Topcoat) with { Parts = [Wet(40, 60)], VolumeSolids = Ratio.FromPercent(30), Solvents = [] }).Solvents);
    }

    private static void Refused(string name, CoatingProduct product) =>
        Numbers.Refuses(name, () => _ = new CoatingLayer(product, Length.FromMicrometers(30), 1));

    private static MixPart Can(string id, double density, double parts) =>
        new(new CoatingComponent { Id = id, Name = id, Density = Density.FromGramsPerMilliliter(density) }, parts);

    private static MixPart Pounds(string id, double density, double parts) =>
        new(new CoatingComponent { Id = id, Name = id, Density = Density.FromPoundsPerUSGallon(density) }, parts);

    private static MixPart Organic(string id, double density, double pounds, double parts) =>
        new(new CoatingComponent
        {
            Id = id, Name = id, Density = Density.FromGramsPerMilliliter(density),
            MassSolids = Ratio.FromDecimalFractions(1 - (MassConcentration.FromPoundsPerUSGallon(pounds).GramsPerLiter / 1000 / density)),
        }, parts);

    private static MixPart Wet(double solids, double water) =>
        new(new CoatingComponent
        {
            Id = "can", Name = "can", Density = Density.FromGramsPerMilliliter(1.1),
            MassSolids = Ratio.FromPercent(solids), Water = Ratio.FromPercent(water),
        }, 1);

    private static CoatingProduct Water(CoatingProduct product) =>
        product with { Reducer = null, MaximumReducer = Ratio.Zero, IsocyanateFraction = Ratio.Zero };
}
