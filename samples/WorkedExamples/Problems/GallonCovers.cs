using Refinish.Films;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class GallonCovers : Problem
{
    public override string Floor => "Films";

    public override string Title => "How far does a gallon go?";

    public override string Question =>
        "A coating of 65 % volume solids is to dry to 5 mil. How much does a gallon cover when nothing is lost, and how thick does it go on wet?";

    public override Backing Backing => Backing.Published;

    public override string Origin =>
        "Trade spreading-rate note: 1604 · 0.65 / 5 = 208.52 ft²/US gal. It takes 1604 for 1604.17, hence the tolerance. The wet film is by hand: 5/0.65.";

    public override DisplayUnits Units => DisplayUnits.UsCustomary;

    protected override Solution Work(Given given)
    {
        // shown
        Length dryFilm = Length.FromMils(5);
        Ratio volumeSolids = Ratio.FromPercent(65);
        Ratio reducer = Ratio.FromPercent(0);
        // given
        given.Take(ref dryFilm, "dry film that is asked for");
        given.Take(ref volumeSolids, "volume solids of the coating");
        given.Take(ref reducer, "reducer added, by volume");
        // shown
        WetFilm film = new(dryFilm, volumeSolids, reducer);
        SpreadingRate covers = film.SpreadingRate;
        Length onTheComb = film.Thickness;
        // end
        return new(film.Workings(),
        [
            new("spreading rate", Measure.SpreadingRate, covers.SquareMetersPerCubicMeter, "208.52", DisplayUnits.UsCustomary, 0.03),
            new("wet film", Measure.Film, onTheComb.Meters, "7.69", DisplayUnits.UsCustomary),
        ]);
    }
}
