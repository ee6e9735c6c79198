using FsCheck.Xunit;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Coverage;

public class PouredMixTests
{
    [Fact]
    [Evidence(Basis.Independent, "by hand: 550 mL at 4 : 1 with 10 % reducer is 400 + 100 + 50 mL; 480 + 105 + 44 g")]
    public void A_cup_of_topcoat_comes_out_as_by_hand()
    {
        PouredMix cup = new(GenericCatalogue.AcrylicUrethaneTopcoat, Volume.FromMilliliters(550), Ratio.FromPercent(10));
        Numbers.Close(400, cup.BaseVolume.Milliliters);
        Numbers.Close(100, cup.HardenerVolume.Milliliters);
        Numbers.Close(50, cup.ReducerVolume.Milliliters);
        Numbers.Close(500, cup.LineAfterHardener.Milliliters);
        Numbers.Close(480, cup.BaseMass.Grams);
        Numbers.Close(585, cup.ScaleAfterHardener.Grams);
        Numbers.Close(629, cup.ScaleAfterReducer.Grams);
        Numbers.Close(21.875, cup.HardenerPer100Base);
        Assert.Equal("400 mL A + 100 mL B + 50 mL reducer", cup.ToString());
    }

    [Property]
    [Evidence(Basis.Identity, "volume and mass are conserved to the last drop through any split; workings hold")]
    public void Volume_and_mass_are_conserved(ushort volume, byte reduce, byte parts)
    {
        Ratio reducer = Ratio.FromPercent(reduce % 21);
        Volume total = Volume.FromMilliliters(volume + 1);
        int n = (parts % 7) + 1;
        PouredMix whole = new(GenericCatalogue.EpoxyPrimer, total, reducer);
        PouredMix part = new(GenericCatalogue.EpoxyPrimer, total / n, reducer);
        Numbers.Close(whole.Total.CubicMeters, whole.BaseVolume.CubicMeters + whole.HardenerVolume.CubicMeters + whole.ReducerVolume.CubicMeters);
        Numbers.Close(whole.ScaleAfterReducer.Kilograms, whole.BaseMass.Kilograms + whole.HardenerMass.Kilograms + whole.ReducerMass.Kilograms);
        Numbers.Close(whole.ScaleAfterReducer.Kilograms, n * part.ScaleAfterReducer.Kilograms);
        Numbers.HoldsToKernel(whole.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "more reducer than the data sheet allows is refused")]
    public void Refuses_too_much_reducer()
    {
        Numbers.Refuses("reducer", () => _ = new PouredMix(GenericCatalogue.EpoxyPrimer, Volume.FromMilliliters(100), Ratio.FromPercent(25)));
        Numbers.Refuses("total", () => _ = new PouredMix(GenericCatalogue.EpoxyPrimer, Volume.Zero, Ratio.Zero));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 4 m² at 100 m²/L is 40 mL")]
    public void The_promoter_goes_as_far_as_its_rate()
    {
        PromoterQuantity wipe = new(Area.FromSquareMeters(4), GenericCatalogue.SilanePromoter);
        Numbers.Close(40, wipe.Volume.Milliliters);
        Numbers.HoldsToKernel(wipe.Workings());
        Numbers.Refuses("area", () => _ = new PromoterQuantity(Area.Zero, GenericCatalogue.SilanePromoter));
    }
}
