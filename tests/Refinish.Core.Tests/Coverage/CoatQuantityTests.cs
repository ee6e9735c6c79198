using System;
using FsCheck.Xunit;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Films;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Coverage;

public class CoatQuantityTests
{
    private static readonly SprayGun Gun = new()
    {
        FluidRate = VolumeFlow.FromMillilitersPerMinute(150),
        TransferEfficiency = Ratio.FromPercent(60),
        TriggerFraction = Ratio.FromPercent(40),
    };

    [Fact]
    [Evidence(Basis.Independent, "by hand in gallons: 27.69 ft² × 1.2 mil / (1604.17 × 0.40 × 0.60) = 0.0863 gal = 326.7 mL; no published source")]
    public void A_tub_of_primer_comes_out_as_by_hand()
    {
        CoatingProduct product = GenericCatalogue.EpoxyPrimer with { VolumeSolids = Ratio.FromPercent(40) };
        CoatQuantity coat = new(Area.FromSquareFeet(27.69), new CoatingLayer(product, Length.FromMils(1.2), 1), Gun, Ratio.Zero);
        Numbers.Near(326.7, coat.SprayedVolume.Milliliters, 0.05);
        Numbers.Close(coat.SprayedVolume.Milliliters, coat.PouredVolume.Milliliters);
        Numbers.Near(326.7 / 150 / 0.4, coat.SprayTime.TotalMinutes, 0.001);
    }

    [Property]
    [Evidence(Basis.Identity, "solids landed equal area times dry film; twice the area takes twice the volume; workings hold")]
    public void Solids_are_conserved_from_cup_to_surface(byte a, byte film, byte reduce, byte waste)
    {
        double dry = 20 + (film % 31);
        CoatingLayer layer = new(GenericCatalogue.EpoxyPrimer, Length.FromMicrometers(dry), 1, Ratio.FromPercent(reduce % 21));
        Ratio residue = Ratio.FromPercent(waste % 31);
        Area area = Area.FromSquareMeters(0.1 + (a / 10.0));
        CoatQuantity coat = new(area, layer, Gun, residue);
        double solids = coat.MixedVolume.CubicMeters * (1 - residue.DecimalFractions) * Gun.TransferEfficiency.DecimalFractions * layer.Product.VolumeSolids.DecimalFractions;
        Numbers.Close(area.SquareMeters * dry * 1e-6, solids);
        Numbers.Close(2 * coat.PouredVolume.Liters, new CoatQuantity(area * 2, layer, Gun, residue).PouredVolume.Liters);
        Numbers.Close(area.SquareMeters, (coat.PouredVolume * coat.PracticalSpreadingRate).SquareMeters);
        Numbers.HoldsToKernel(coat.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "areas, residues and gun settings that cannot be are refused")]
    public void Refuses_what_cannot_be()
    {
        CoatingLayer layer = GenericCatalogue.EpoxyUrethaneSystem.Layers[0];
        Numbers.Refuses("area", () => _ = new CoatQuantity(Area.Zero, layer, Gun, Ratio.Zero));
        Numbers.Refuses("residue", () => _ = new CoatQuantity(Area.FromSquareMeters(1), layer, Gun, Ratio.FromPercent(51)));
        Numbers.Refuses("TransferEfficiency", () => _ = Gun with { TransferEfficiency = Ratio.FromPercent(101) });
        Numbers.Refuses("FluidRate", () => _ = Gun with { FluidRate = VolumeFlow.Zero });
        Numbers.Refuses("TriggerFraction", () => _ = Gun with { TriggerFraction = Ratio.Zero });
        Numbers.Refuses("volume", () => Gun.TimeToSpray(Volume.FromLiters(-1)));
    }
}
