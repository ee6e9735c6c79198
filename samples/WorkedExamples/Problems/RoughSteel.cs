using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Films;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class RoughSteel : Problem
{
    public override string Floor => "Coverage";

    public override string Title => "How much coating disappears in a rough surface?";

    public override string Question =>
        "10 000 ft² of steel were blasted to a profile of 50 µm. How much of a coating of 79 % solids goes into the profile before any film counts, when 75 % of the spray lands?";

    public override Backing Backing => Backing.Published;

    public override string Origin =>
        "Blasting trade note (blastone): about 80 L, hence the tolerance; it counts the full depth, which by hand is 929.03 m² · 50 µm / 0.79 / 0.75 = 78.4 L.";

    protected override Solution Work(Given given)
    {
        // shown
        Area area = Area.FromSquareFeet(10_000);
        Length profileDepth = Length.FromMicrometers(50);
        Ratio volumeSolids = Ratio.FromPercent(79);
        Ratio transferEfficiency = Ratio.FromPercent(75);
        // given
        given.Take(ref area, "blasted area");
        given.Take(ref profileDepth, "depth of the profile");
        given.Take(ref volumeSolids, "volume solids of the coating");
        given.Take(ref transferEfficiency, "part of the spray that lands on the surface");
        // shown
        CoatingLayer layer = new(GenericCatalogue.EpoxyPrimer with { VolumeSolids = volumeSolids }, Length.FromMicrometers(50), coats: 1);
        SprayGun gun = new() { FluidRate = VolumeFlow.FromLitersPerMinute(1), TransferEfficiency = transferEfficiency };
        CoatDemand onSmooth = new(area, layer, gun, new ApplicationLosses());
        CoatDemand onRough = new(area, layer, gun, new ApplicationLosses { ProfileDepth = profileDepth });
        Volume intoProfile = onRough.Total - onSmooth.Total;
        // end
        return new(onRough.Workings(),
        [
            new("coating for the profile", Measure.Capacity, intoProfile.CubicMeters, "80", Within: 2),
            new("the same by hand", Measure.Capacity, intoProfile.CubicMeters, "78.4"),
            new("coating in all", Measure.Capacity, onRough.Total.CubicMeters),
        ]);
    }
}
