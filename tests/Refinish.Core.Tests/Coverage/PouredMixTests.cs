using System;
using System.Linq;
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
        Assert.Equal([400, 100, 50], cup.Parts.Select(part => Math.Round(part.Volume.Milliliters, 9)));
        Assert.Equal([400, 500, 550], cup.Parts.Select(part => Math.Round(part.FillLine.Milliliters, 9)));
        Assert.Equal([480, 105, 44], cup.Parts.Select(part => Math.Round(part.Mass.Grams, 9)));
        Assert.Equal([480, 585, 629], cup.Parts.Select(part => Math.Round(part.Scale.Grams, 9)));
        Assert.Equal("400 mL topcoat base + 100 mL isocyanate hardener + 50 mL urethane reducer", cup.ToString());
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
        Numbers.Close(whole.Total.CubicMeters, whole.Parts.Sum(one => one.Volume.CubicMeters));
        double scale = whole.Parts[whole.Parts.Count - 1].Scale.Kilograms;
        Numbers.Close(scale, whole.Parts.Sum(one => one.Mass.Kilograms));
        Numbers.Close(scale, n * part.Parts[part.Parts.Count - 1].Scale.Kilograms);
        Numbers.CanBeWritten(whole.Workings());
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
        Numbers.CanBeWritten(wipe.Workings());
        Numbers.Refuses("area", () => _ = new PromoterQuantity(Area.Zero, GenericCatalogue.SilanePromoter));
    }
}
