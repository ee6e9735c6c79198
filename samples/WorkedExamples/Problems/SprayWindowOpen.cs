using System.Linq;
using Refinish.Climate;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class SprayWindowOpen : Problem
{
    public override string Floor => "Climate";

    public override string Title => "May this surface be sprayed?";

    public override string Question =>
        "The dry bulb reads 21 °C, the wet bulb 17 °C, the tub 19 °C. The data sheet wants the surface at least 3 K above the dew point. Is it?";

    public override Backing Backing => Backing.Published;

    public override string Origin =>
        "Worked example of a paint-application note: dew point 15 °C in whole degrees, acceptable. The other limits are invented.";

    protected override Solution Work(Given given)
    {
        // shown
        Temperature dryBulb = Temperature.FromDegreesCelsius(21);
        Temperature wetBulb = Temperature.FromDegreesCelsius(17);
        Temperature surface = Temperature.FromDegreesCelsius(19);
        // given
        given.Take(ref dryBulb, "dry bulb");
        given.Take(ref wetBulb, "wet bulb");
        given.Take(ref surface, "surface, at its coldest spot");
        // shown
        SprayLimits limits = new()
        {
            MinimumTemperature = Temperature.FromDegreesCelsius(10),
            MaximumTemperature = Temperature.FromDegreesCelsius(35),
            MaximumRelativeHumidity = Ratio.FromPercent(85),
            Source = Source.Invented("a data sheet"),
        };
        SprayWindow window = new(MoistAir.FromWetBulb(dryBulb, wetBulb), surface, limits);
        int objections = window.Checks.Count(check => check.Outcome != ComparisonOutcome.Within);
        // end
        return new(window.Workings(),
        [
            new("dew point", Measure.Temperature, window.Air.DewPoint.Kelvins, "15"),
            new("surface above dew point", Measure.TemperatureDifference, window.SpreadAboveDewPoint.Kelvins),
            new("checks beyond their limit", Measure.Number, objections, "0"),
        ])
        {
            Cautions = window.Cautions,
        };
    }
}
