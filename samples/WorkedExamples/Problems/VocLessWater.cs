using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class VocLessWater : Problem
{
    public override string Floor => "Coatings";

    public override string Title => "What is the VOC of a water-borne coating?";

    public override string Question =>
        "A gallon weighs 8.52 lb; 53.0 % of that is water and 20.8 % solids. What does a gallon give off, and what is that for a gallon less its water, as rules count it?";

    public override Backing Backing => Backing.Published;

    public override string Origin =>
        "Paint and coatings resource centre, March 2004: 2.23 and 4.87 lb/gal. It rounds on the way; its own figures 223.2/45.79 give 4.8745, hence the tolerance of the second.";

    public override DisplayUnits Units => DisplayUnits.UsCustomary;

    protected override Solution Work(Given given)
    {
        // shown
        Density density = Density.FromPoundsPerUSGallon(8.52);
        Ratio waterContent = Ratio.FromPercent(53.0);
        Ratio solids = Ratio.FromPercent(20.8);
        // given
        given.Take(ref density, "density of the coating");
        given.Take(ref waterContent, "water by weight");
        given.Take(ref solids, "solids by weight");
        // shown
        Mass gallon = density * Volume.FromUsGallons(1);
        VocContent voc = new()
        {
            Volume = Volume.FromUsGallons(1),
            Volatiles = gallon * (1 - solids.DecimalFractions),
            Water = gallon * waterContent.DecimalFractions,
            WaterVolume = gallon * waterContent.DecimalFractions / Density.FromPoundsPerUSGallon(8.33),
        };
        MassConcentration asItIs = voc.Material;
        MassConcentration lessWater = voc.Regulatory;
        // end
        return new(voc.Workings(),
        [
            new("VOC of the material", Measure.CoatingContent, asItIs.KilogramsPerCubicMeter, "2.23", DisplayUnits.UsCustomary),
            new("VOC less water", Measure.CoatingContent, lessWater.KilogramsPerCubicMeter, "4.87", DisplayUnits.UsCustomary, 0.008),
        ]);
    }
}
