using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class VocThinned : Problem
{
    public override string Floor => "Coatings";

    public override string Title => "What does thinner do to the VOC?";

    public override string Question =>
        "A gallon at 2.5 lb/gal is thinned with a quarter gallon at 6.8 lb/gal. What is the VOC now, and how much thinner would a limit of 3.5 lb/gal leave room for?";

    public override Backing Backing => Backing.Published;

    public override string Origin =>
        "Metal Finishing guidebook 2013, appendix B, p. 813: 4.2 lb in 1.25 gal, 3.36 lb/gal. The room for thinner is by hand: (3.5 − 2.5)/(6.8 − 3.5) = 0.303 gal.";

    public override DisplayUnits Units => DisplayUnits.UsCustomary;

    protected override Solution Work(Given given)
    {
        // shown
        MassConcentration coating = MassConcentration.FromPoundsPerUSGallon(2.5);
        MassConcentration thinner = MassConcentration.FromPoundsPerUSGallon(6.8);
        Volume added = Volume.FromUsGallons(0.25);
        MassConcentration limit = MassConcentration.FromPoundsPerUSGallon(3.5);
        // given
        given.Take(ref coating, "VOC of the coating");
        given.Take(ref thinner, "VOC of the thinner");
        given.Take(ref added, "thinner to a gallon");
        given.Take(ref limit, "limit");
        // shown
        VocPart gallon = new("coating", Volume.FromUsGallons(1), coating);
        VocBlend thinned = new([gallon, new("thinner", added, thinner)]);
        Volume? room = new VocBlend([gallon]).ThinnerUpTo(thinner, limit);
        // end
        return new(thinned.Workings(),
        [
            new("VOC of the mix", Measure.CoatingContent, thinned.Content.KilogramsPerCubicMeter, "3.36", DisplayUnits.UsCustomary),
            .. room is { } most ? [new Answer("thinner up to the limit", Measure.Capacity, most.CubicMeters, "0.303", DisplayUnits.UsCustomary)] : (Answer[])[],
        ]);
    }
}
