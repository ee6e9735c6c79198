using System.Linq;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Films;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class PrimerForTub : Problem
{
    public override string Floor => "Coverage";

    public override string Title => "How much primer to mix, and what to pour?";

    public override string Question =>
        "2.57 m² get one coat of 30 µm dry. The primer has 45 % volume solids, is mixed 2 : 1 and thinned by 10 %. 60 % of what leaves the gun lands on the tub and 8 % of the mix stays in cup and hose. What goes into the cup?";

    public override Backing Backing => Backing.WorkedApart;

    public override string Origin =>
        "By hand: 2.57 · 30 / 0.45 · 1.1 / 0.60 / 0.92 = 341.4 mL; of it 341.4/1.1 · 2/3 = 206.9 mL base. Product and gun invented.";

    protected override Solution Work(Given given)
    {
        // shown
        Area area = Area.FromSquareMeters(2.57);
        Length dryFilm = Length.FromMicrometers(30);
        Ratio reducer = Ratio.FromPercent(10);
        Ratio transferEfficiency = Ratio.FromPercent(60);
        Ratio residue = Ratio.FromPercent(8);
        // given
        given.Take(ref area, "coated area");
        given.Take(ref dryFilm, "dry film of the coat");
        given.Take(ref reducer, "reducer added, by volume");
        given.Take(ref transferEfficiency, "part of the spray that lands on the surface");
        given.Take(ref residue, "part of the mix that stays in cup and hose");
        // shown
        SprayGun gun = new() { FluidRate = VolumeFlow.FromMillilitersPerMinute(160), TransferEfficiency = transferEfficiency };
        CoatingLayer layer = new(GenericCatalogue.EpoxyPrimer, dryFilm, coats: 1, reducer);
        ApplicationLosses losses = new() { Residue = residue };
        CoatDemand coat = new(area, layer, gun, losses);
        PouredMix cup = new(layer.Product, coat.Total, layer.Reducer);
        // end
        return new(new Workings("One coat and its cup", [coat.Workings(), cup.Workings()]),
        [
            new("to mix", Measure.Liquid, coat.Total.CubicMeters, "341.4"),
            new("base", Measure.Liquid, cup.Parts[0].Volume.CubicMeters, "206.9"),
            new("hardener", Measure.Liquid, cup.Parts[1].Volume.CubicMeters, "103.5"),
            new("reducer", Measure.Liquid, cup.Parts[2].Volume.CubicMeters, "31.0"),
        ])
        {
            // No air is worked out here, so that the caution about its numbers has nothing to speak of.
            Cautions = [.. Cautions.ForSpraying.Where(caution => caution != Cautions.BreathingZone)],
        };
    }
}
