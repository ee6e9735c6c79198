using Refinish.Climate;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class WetBulb : Problem
{
    public override string Floor => "Climate";

    public override string Title => "Two thermometers say how damp the air is";

    public override string Question =>
        "A dry thermometer reads 40 °C, one with a wet wick 20 °C. How much water is in the air, and at what temperature does it condense?";

    public override Backing Backing => Backing.Published;

    public override string Origin =>
        "ASHRAE Handbook Fundamentals (2017), chapter 1, Example 1, read off a chart: hence the tolerance.";

    protected override Solution Work(Given given)
    {
        // shown
        Temperature dryBulb = Temperature.FromDegreesCelsius(40);
        Temperature wetBulb = Temperature.FromDegreesCelsius(20);
        // given
        given.Take(ref dryBulb, "dry bulb");
        given.Take(ref wetBulb, "wet bulb");
        // shown
        MoistAir air = MoistAir.FromWetBulb(dryBulb, wetBulb);
        Temperature dewPoint = air.DewPoint;
        Ratio water = air.HumidityRatio;
        // end
        return new(MoistAir.WorkingsFromReadings(AirReading.DryBulb(dryBulb), AirReading.WetBulb(wetBulb)),
        [
            new("water in the air", Measure.HumidityRatio, water.DecimalFractions, "6.5", Within: 0.1),
            new("dew point", Measure.Temperature, dewPoint.Kelvins, "7"),
            new("relative humidity", Measure.Percent, air.RelativeHumidity.DecimalFractions, "14"),
            new("enthalpy", Measure.SpecificEnergy, air.Enthalpy.JoulesPerKilogram, "56.7", Within: 0.2),
            new("volume of a kilogram of dry air", Measure.SpecificVolume, air.SpecificVolume.CubicMetersPerKilogram, "0.896", Within: 0.001),
        ]);
    }
}
