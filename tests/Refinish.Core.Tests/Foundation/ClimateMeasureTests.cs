using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Foundation;

public class ClimateMeasureTests
{
    [Theory]
    [InlineData(-20, -4, 253.15)]
    [InlineData(15, 59, 288.15)]
    [InlineData(-60, -76, 213.15)]
    [InlineData(35, 95, 308.15)]
    [Evidence(Basis.Contract, "one temperature whatever the scale it was read on, at the very end of a range too")]
    public void Scales_of_temperature_do_not_matter(double celsius, double fahrenheit, double kelvins)
    {
        Bounds only = Bounds.Between(kelvins, kelvins, Measure.Temperature);
        Assert.Equal(kelvins, Guard.Within(Temperature.FromDegreesCelsius(celsius), only, "t"));
        Assert.Equal(kelvins, Guard.Within(Temperature.FromDegreesFahrenheit(fahrenheit), only, "t"));
        Assert.Equal(kelvins, Guard.Within(Temperature.FromKelvins(kelvins), only, "t"));
    }

    [Fact]
    [Evidence(Basis.Independent, "conversion factors of UnitsNet 5.75, to the digits that they have")]
    public void Units_of_humid_air_and_heat_match_the_units_library()
    {
        const DisplayUnits us = DisplayUnits.UsCustomary;
        Numbers.Close(Mass.FromKilograms(3).Pounds, Measure.Weight.Shown(3, us));
        Numbers.Close(Density.FromKilogramsPerCubicMeter(3).PoundsPerCubicFoot, Measure.AirDensity.Shown(3, us), 1e-7);
        Numbers.Close(SpecificVolume.FromCubicMetersPerKilogram(3).CubicFeetPerPound, Measure.SpecificVolume.Shown(3, us), 1e-7);
        Numbers.Close(SpecificEnergy.FromJoulesPerKilogram(3).BtuPerPound, Measure.SpecificEnergy.Shown(3, us), 1e-7);
        Numbers.Close(SpecificEntropy.FromJoulesPerKilogramKelvin(3).BtusPerPoundFahrenheit, Measure.SpecificHeat.Shown(3, us), 1e-7);
        Numbers.Close(ThermalConductivity.FromWattsPerMeterKelvin(3).BtusPerHourFootFahrenheit, Measure.Conductivity.Shown(3, us), 1e-6);
        Numbers.Close(HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(3).BtusPerHourSquareFootDegreeFahrenheit, Measure.HeatTransfer.Shown(3, us), 1e-6);
        Numbers.Close(Energy.FromJoules(3).KilowattHours, Measure.Heat.Shown(3, DisplayUnits.Si));
        Numbers.Close(Energy.FromJoules(3).BritishThermalUnits, Measure.Heat.Shown(3, us), 1e-7);
        Numbers.Close(Mass.FromKilograms(3).Grains / Volume.FromCubicMeters(1).CubicFeet, Measure.VapourDensity.Shown(3, us), 1e-7);
        Numbers.Close(Mass.FromKilograms(3).Grains / Mass.FromKilograms(1).Pounds, Measure.HumidityRatio.Shown(3, us), 1e-7);
        Numbers.Close(MolarEnergy.FromJoulesPerMole(3).KilojoulesPerMole, Measure.MolarEnergy.Shown(3, us));
        Assert.Equal("8.3145 J/(mol·K)", Measure.MolarEntropy.Format(8.31446261815324, us));
    }
}
