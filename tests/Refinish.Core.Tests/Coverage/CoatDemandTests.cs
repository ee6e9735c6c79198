using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck.Xunit;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Films;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Coverage;

public class CoatDemandTests
{
    private static readonly CoatingLayer Layer = new(GenericCatalogue.AcrylicUrethaneTopcoat, Length.FromMicrometers(30), 3, Ratio.FromPercent(10));

    [Fact]
    [Evidence(Basis.Cited, "blasting trade note (blastone): 50 µm of profile over 10 000 ft² at 79 % solids and 75 % transfer takes about 80 L to fill, which counts the full depth: 78.4 L; 75 µm takes half as much again")]
    public void Roughness_is_filled_first()
    {
        CoatingProduct zinc = GenericCatalogue.EpoxyPrimer with { VolumeSolids = Ratio.FromPercent(79) };
        CoatingLayer layer = new(zinc, Length.FromMicrometers(50), 1);
        SprayGun gun = Gun(75);
        ApplicationLosses losses = new() { ProfileDepth = Length.FromMicrometers(50) };
        CoatedSurface steel = new("steel", Area.FromSquareFeet(10000));
        double with = new CoatDemand([steel], layer, gun, losses).Total.Liters;
        double without = new CoatDemand([steel], layer, gun, losses with { ProfileDepth = Length.Zero }).Total.Liters;
        Numbers.Near(80, with - without, 2);
        Numbers.Near(78.4, with - without, 0.05);
        double deeper = new CoatDemand([steel], layer, gun, losses with { ProfileDepth = Length.FromMicrometers(75) }).Total.Liters;
        Numbers.Close(1.5, (deeper - without) / (with - without), 1e-9);
    }

    [Theory]
    [InlineData(65, 125, 5.2, 0.05)]
    [Evidence(Basis.Cited, "spreading-rate note: 65 % at 125 µm is 5.2 m²/L in theory; 208.52 ft²/gal at 5 mil; dictionary of corrosion terms: 100 ft²/gal at 30 % loss is 70")]
    public void Theoretical_and_practical(double solids, double film, double rate, double tolerance)
    {
        CoatingProduct product = GenericCatalogue.EpoxyPrimer with { VolumeSolids = Ratio.FromPercent(solids), MaximumDryFilm = Length.FromMicrometers(200) };
        CoatDemand coat = Demand(new CoatingLayer(product, Length.FromMicrometers(film), 1), 70, new ApplicationLosses());
        Numbers.Near(rate, coat.TheoreticalSpreadingRate.SquareMetersPerLiter, tolerance);
        Numbers.Close(0.7, coat.PracticalSpreadingRate.SquareMetersPerLiter / coat.TheoreticalSpreadingRate.SquareMetersPerLiter);
        CoatDemand mils = Demand(new CoatingLayer(product, Length.FromMils(5), 1), 100, new ApplicationLosses());
        Numbers.Near(208.52, mils.TheoreticalSpreadingRate.SquareFeetPerUsGallon, 0.03);
    }

    [Property]
    [Evidence(Basis.Identity, "film and losses add up to what is mixed, to the last drop; solids on the surface are area times film; twice the film takes twice the coating less the hose")]
    public void Nothing_is_lost_from_the_account(byte te, byte edge, byte cling, byte unused, byte hose, byte rough)
    {
        double lands = 20 + (te / 3.2);
        ApplicationLosses losses = Losses(edge, cling, unused, hose, rough);
        CoatedSurface[] surfaces = [new("tub", Area.FromSquareMeters(2.6)), new("leg", Area.FromSquareMeters(0.2), Ratio.FromPercent(25))];
        CoatDemand coat = new(surfaces, Layer, Gun(lands), losses);
        double sum = coat.Film.CubicMeters + coat.DeadVolume.CubicMeters + coat.Overspray.CubicMeters + coat.EdgeLoss.CubicMeters + coat.HoldUp.CubicMeters + coat.ResidueLoss.CubicMeters + coat.UnusedLoss.CubicMeters;
        Numbers.Close(coat.Total.CubicMeters, sum, 1e-12);
        Assert.All(
            new[] { coat.Overspray, coat.EdgeLoss, coat.ResidueLoss, coat.UnusedLoss },
            loss => Assert.True(loss.CubicMeters >= -1e-18));
        Numbers.Close(2.8 * 30e-6, coat.Film.CubicMeters / 1.1 * 0.48, 1e-12);
        Numbers.CanBeWritten(coat.Workings());
        CoatingProduct product = GenericCatalogue.AcrylicUrethaneTopcoat with { MaximumDryFilm = Length.FromMicrometers(100) };
        ApplicationLosses dry = losses with { HoldUp = Volume.Zero, ProfileDepth = Length.Zero };
        double once = Demand(new CoatingLayer(product, Length.FromMicrometers(30), 1), lands, dry).Total.CubicMeters;
        double twice = Demand(new CoatingLayer(product, Length.FromMicrometers(60), 1), lands, dry).Total.CubicMeters;
        Numbers.Close(2 * once, twice, 1e-12);
    }

    [Property]
    [Evidence(Basis.Identity, "all coats of a layer take what a take-off of a system with that layer alone takes; one coat's figures do not depend on how many there are")]
    public void All_coats_of_a_layer_are_its_takeoff(byte te, byte hose, byte rough)
    {
        ApplicationLosses losses = Losses(20, 20, 20, hose, rough);
        CoatedSurface[] surfaces = [new("tub", Area.FromSquareMeters(2.6)), new("leg", Area.FromSquareMeters(0.2), Ratio.FromPercent(25))];
        CoatDemand coat = new(surfaces, Layer, Gun(20 + (te / 3.2)), losses);
        double each = 0;
        for (int i = 0; i < 3; i++)
        {
            each += new CoatDemand(surfaces, Layer, coat.Gun, i == 0 ? losses : losses with { ProfileDepth = Length.Zero }).Total.CubicMeters;
        }

        Numbers.Close(each, coat.TotalOfAllCoats.CubicMeters, 1e-12);
        Numbers.CanBeWritten(coat.Workings());
        CoatDemand alone = new(surfaces, new CoatingLayer(Layer.Product, Layer.DryFilmPerCoat, 1, Layer.Reducer), coat.Gun, losses);
        Numbers.Close(alone.Total.CubicMeters, coat.Total.CubicMeters);
        Numbers.Close(alone.Total.CubicMeters, alone.TotalOfAllCoats.CubicMeters);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 2.57 m² × 30 µm × 1.1 / 0.48 / 0.6 = 294.5 mL a coat, 883.4 mL for three; 30 µm each are 90 µm")]
    public void Texts_say_what_is_of_one_coat_and_what_of_all()
    {
        CoatDemand coat = new(Area.FromSquareMeters(2.57), Layer, Gun(60), new ApplicationLosses());
        Assert.Equal("294 mL of two-part acrylic urethane topcoat for one coat on 2.57 m², 60 % of it film; 883 mL for 3 coats", coat.ToString());
        Assert.Equal("3 × two-part acrylic urethane topcoat, 30 µm dry each, 90 µm in all", Layer.ToString());
        CoatingLayer one = new(Layer.Product, Layer.DryFilmPerCoat, 1, Layer.Reducer);
        Assert.Equal("294 mL of two-part acrylic urethane topcoat for one coat on 2.57 m², 60 % of it film", new CoatDemand(Area.FromSquareMeters(2.57), one, Gun(60), new ApplicationLosses()).ToString());
        Assert.Equal("1 × two-part acrylic urethane topcoat, 30 µm dry", one.ToString());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand in gallons: 27.69 ft² × 1.2 mil / (1604.17 × 0.40 × 0.60) = 0.0863 gal = 326.7 mL, through the gun in 326.7/150/0.4 min; no published source")]
    public void A_tub_of_primer_comes_out_as_by_hand()
    {
        CoatingProduct product = GenericCatalogue.EpoxyPrimer with { VolumeSolids = Ratio.FromPercent(40) };
        CoatingLayer layer = new(product, Length.FromMils(1.2), 1);
        CoatDemand coat = new(Area.FromSquareFeet(27.69), layer, Gun(60), new ApplicationLosses());
        Numbers.Near(326.7, coat.Sprayed.Milliliters, 0.05);
        Numbers.Close(coat.Sprayed.Milliliters, coat.Total.Milliliters);
        Numbers.Near(326.7 / 150 / 0.4, coat.SprayTime.TotalMinutes, 0.001);
        Numbers.Close(1.2 / 0.4, coat.WetFilm.Thickness.Mils);
    }

    [Property]
    [Evidence(Basis.Identity, "solids landed equal area times dry film; twice the area takes twice the volume and time; area is volume times practical spreading rate; workings hold")]
    public void Solids_are_conserved_from_cup_to_surface(byte a, byte film, byte reduce, byte waste)
    {
        double dry = 20 + (film % 31);
        CoatingLayer layer = new(GenericCatalogue.EpoxyPrimer, Length.FromMicrometers(dry), 1, Ratio.FromPercent(reduce % 21));
        ApplicationLosses losses = new() { Residue = Ratio.FromPercent(waste % 31) };
        Area area = Area.FromSquareMeters(0.1 + (a / 10.0));
        CoatDemand coat = new(area, layer, Gun(60), losses);
        double solids = coat.Mixed.CubicMeters * (1 - losses.Residue.DecimalFractions) * 0.6 * layer.Product.VolumeSolids.DecimalFractions;
        Numbers.Close(area.SquareMeters * dry * 1e-6, solids);
        CoatDemand twice = new(area * 2, layer, Gun(60), losses);
        Numbers.Close(2 * coat.Total.Liters, twice.Total.Liters);
        Numbers.Close(2 * coat.SprayTime.TotalSeconds, twice.SprayTime.TotalSeconds, 1e-6);
        Numbers.Close(area.SquareMeters, (coat.Total * coat.PracticalSpreadingRate).SquareMeters);
        Numbers.CanBeWritten(coat.Workings());
    }

    [Fact]
    [Evidence(Basis.Identity, "a take-off is the sum of its coats; base and hardener are the mix; weight is that of the cans; roughness counts in the first coat only")]
    public void A_take_off_is_the_sum_of_its_coats()
    {
        CoatedSurface[] surfaces = [new("tub", Area.FromSquareMeters(2.6)), new("surround", Area.FromSquareMeters(4.5))];
        ApplicationLosses losses = new()
        {
            Residue = Ratio.FromPercent(8), ProfileDepth = Length.FromMicrometers(20), ProfileFill = Ratio.FromPercent(50),
        };
        Takeoff takeoff = new(surfaces, GenericCatalogue.EpoxyUrethaneSystem, Gun(60), losses);
        Assert.Equal(4, takeoff.Coats.Count);
        Assert.Equal([1, 3], takeoff.Lines.Select(line => line.Coats.Count));
        Assert.True(takeoff.Coats[0].DeadVolume > Volume.Zero);
        Assert.All(takeoff.Coats.Skip(1), coat => Assert.Equal(0, coat.DeadVolume.CubicMeters));
        TakeoffLine topcoat = takeoff.Lines[1];
        Numbers.Close(takeoff.Coats.Skip(1).Sum(coat => coat.Mixed.CubicMeters), topcoat.Mixed.CubicMeters);
        Numbers.Close(topcoat.Mixed.CubicMeters, topcoat.Parts.Sum(part => part.Volume.CubicMeters));
        double grams = (topcoat.Parts[0].Volume.Milliliters * 1.20) + (topcoat.Parts[1].Volume.Milliliters * 1.05) + (topcoat.Reducer.Milliliters * 0.88);
        Numbers.Close(grams, topcoat.Weight.Grams);
        LimitComparison bought = topcoat.Compare(Volume.FromMilliliters(5000));
        Numbers.Close(0.005 - topcoat.Mixed.CubicMeters, bought.Margin!.Value.Si);
        Assert.Equal(ComparisonOutcome.Beyond, topcoat.Compare(Volume.FromMilliliters(100)).Outcome);
        Numbers.CanBeWritten(takeoff.Workings());
    }

    [Fact]
    [Evidence(Basis.Cited, "40 CFR 60.313 table 1 (read as NR 440.48): 25 % for air-atomised and airless, 60 % for manual electrostatic; trade magazine primer: HVLP 50 to 60, airless 40 to 50, air-assisted 60 to 80, cup gun 30 %")]
    public void Transfer_efficiencies_are_the_printed_ones()
    {
        Assert.Equal(
            [(25, 25), (25, 25), (60, 60), (30, 30), (50, 60), (40, 50), (60, 80), (65, 65)],
            TransferEfficiencies.All.Select(one => ((int)Math.Round(one.Low.Percent), (int)Math.Round(one.High.Percent))));
        Assert.All(TransferEfficiencies.All, one => Assert.Equal(SourceKind.Published, one.Source.Kind));
        Numbers.Near(55, TransferEfficiencies.HighVolumeLowPressure.Middle.Percent, 1e-9);
        Assert.Equal("air-assisted airless gun, 60 % to 80 %", TransferEfficiencies.AirAssistedAirless.ToString());
    }

    [Fact]
    [Evidence(Basis.Contract, "losses and surfaces that cannot be are refused")]
    public void Refuses_what_cannot_be()
    {
        ApplicationLosses losses = new();
        Numbers.Refuses("EdgeOverspray", () => _ = losses with { EdgeOverspray = Ratio.FromPercent(51) });
        Numbers.Refuses("HoldUp", () => _ = losses with { HoldUp = Volume.FromLiters(6) });
        Numbers.Refuses("ProfileDepth", () => _ = losses with { ProfileDepth = Length.FromMillimeters(1) });
        Numbers.Refuses("area", () => _ = new CoatedSurface("none", Area.Zero));
        Numbers.Refuses("high", () => _ = new TransferEfficiency("gun", Ratio.FromPercent(60), Ratio.FromPercent(50), Source.Invented("x")));
        Numbers.Refuses("area", () => _ = new CoatDemand(Area.Zero, Layer, Gun(60), losses));
        Numbers.Refuses("Residue", () => _ = losses with { Residue = Ratio.FromPercent(51) });
        Numbers.Refuses("TransferEfficiency", () => Gun(101));
        Numbers.Refuses("transferEfficiency", () => _ = new CoatedSurface("leg", Area.FromSquareMeters(1), Ratio.FromPercent(4)));
        Numbers.Refuses("FluidRate", () => _ = Gun(60) with { FluidRate = VolumeFlow.Zero });
        Numbers.Refuses("TriggerFraction", () => _ = Gun(60) with { TriggerFraction = Ratio.Zero });
        Numbers.Refuses("volume", () => Gun(60).TimeToSpray(Volume.FromLiters(-1)));
        SprayGun clogged = Gun(60) with { FluidRate = VolumeFlow.FromMillilitersPerMinute(0.1) };
        Numbers.Refuses("gun", () => _ = new CoatDemand(Area.FromSquareMeters(1000), Layer, clogged, losses));
        Assert.Throws<ArgumentException>(() => new CoatDemand(new List<CoatedSurface>(), Layer, Gun(60), losses));
        Assert.Equal(Demand(Layer, 60, losses), Demand(Layer, 60, losses));
        Numbers.Close(0.08, ApplicationLosses.Generic.Residue.DecimalFractions);
        Numbers.Close(15, ApplicationLosses.Generic.HoldUp.Milliliters);
    }

    private static SprayGun Gun(double lands) => new()
    {
        FluidRate = VolumeFlow.FromMillilitersPerMinute(150),
        TransferEfficiency = Ratio.FromPercent(lands),
        TriggerFraction = Ratio.FromPercent(40),
    };

    private static CoatDemand Demand(CoatingLayer layer, double lands, ApplicationLosses losses) =>
        new([new("wall", Area.FromSquareMeters(2))], layer, Gun(lands), losses);

    private static ApplicationLosses Losses(byte edge, byte cling, byte unused, byte hose, byte rough) => new()
    {
        EdgeOverspray = Ratio.FromPercent(edge % 31),
        Residue = Ratio.FromPercent(cling % 31),
        UnusedPot = Ratio.FromPercent(unused % 31),
        HoldUp = Volume.FromMilliliters(hose),
        ProfileDepth = Length.FromMicrometers(rough),
        ProfileFill = Ratio.FromPercent(50),
    };
}
