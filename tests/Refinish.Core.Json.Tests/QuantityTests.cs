using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Json.Shapes;
using UnitsNet;
using Xunit;

namespace Refinish.Json.Tests;

public class QuantityTests
{
    /// <summary>
    /// Any finite double as an SI number, tiny, huge and negative ones among them, in every kind of quantity and both systems.
    /// </summary>
    [Property(MaxTest = 3000)]
    public void Any_quantity_reads_back_to_the_last_bit(NormalFloat any)
    {
        double si = any.Get;
        Holds(Quantities.Tape, Length.FromMeters(si), length => length.Meters);
        Holds(Quantities.Film, Length.FromMeters(si), length => length.Meters);
        Holds(Quantities.Area, Area.FromSquareMeters(si), area => area.SquareMeters);
        Holds(Quantities.Liquid, Volume.FromCubicMeters(si), volume => volume.CubicMeters);
        Holds(Quantities.Mass, Mass.FromKilograms(si), mass => mass.Kilograms);
        Holds(Quantities.Density, Density.FromKilogramsPerCubicMeter(si), density => density.KilogramsPerCubicMeter);
        Holds(Quantities.Percent, Ratio.FromDecimalFractions(si), ratio => ratio.DecimalFractions);
        Holds(Quantities.Temperature, Temperature.FromKelvins(si), temperature => temperature.Kelvins);
        Holds(Quantities.TemperatureDifference, TemperatureDelta.FromKelvins(si), difference => difference.Kelvins);
        Holds(Quantities.Pressure, Pressure.FromPascals(si), pressure => pressure.Pascals);
        Holds(Quantities.FluidRate, VolumeFlow.FromCubicMetersPerSecond(si), flow => flow.CubicMetersPerSecond);
        Holds(Quantities.Airflow, VolumeFlow.FromCubicMetersPerSecond(si), flow => flow.CubicMetersPerSecond);
        Holds(Quantities.Angle, Angle.FromRadians(si), angle => angle.Radians);
        Holds(Quantities.MolarMass, MolarMass.FromKilogramsPerMole(si), mass => mass.KilogramsPerMole);
        Holds(Quantities.Concentration, MassConcentration.FromKilogramsPerCubicMeter(si),
            concentration => concentration.KilogramsPerCubicMeter);
        Holds(Quantities.Viscosity, DynamicViscosity.FromPascalSeconds(si), viscosity => viscosity.PascalSeconds);
        Holds(Quantities.Speed, Speed.FromMetersPerSecond(si), speed => speed.MetersPerSecond);
        Holds(Quantities.CoatingContent, MassConcentration.FromKilogramsPerCubicMeter(si),
            concentration => concentration.KilogramsPerCubicMeter);
        Holds(Quantities.AreaDensity, AreaDensity.FromKilogramsPerSquareMeter(si), mass => mass.KilogramsPerSquareMeter);
        Holds(Quantities.SurfaceTension, ForcePerLength.FromNewtonsPerMeter(si), tension => tension.NewtonsPerMeter);
        Holds(Quantities.Scattering, ReciprocalLength.FromInverseMeters(si), scattering => scattering.InverseMeters);
        Holds(Quantities.SpreadingRate, SpreadingRate.FromSquareMetersPerCubicMeter(Math.Abs(si)), rate => rate.SquareMetersPerCubicMeter);
    }

    /// <summary>Spans of up to 100 years; a tick is 100 ns.</summary>
    [Property(MaxTest = 3000)]
    public void Any_span_of_time_reads_back_to_the_tick(long any)
    {
        TimeSpan span = TimeSpan.FromTicks(any % (36525 * TimeSpan.TicksPerDay));
        Assert.Equal(span, Back(Quantities.Duration, span, DisplayUnits.Si));
    }

    /// <summary>A length that someone taped in millimetres or inches, to the tenth, is written as they said it.</summary>
    [Property(MaxTest = 2000)]
    public void A_number_said_in_the_unit_of_the_trade_is_written_as_it_was_said(ushort tenths)
    {
        double said = tenths / 10.0;
        string number = JsonSerializer.Serialize(said);
        Assert.Equal("{\"value\":" + number + ",\"unit\":\"mm\"}", Text(Quantities.Tape, Length.FromMillimeters(said), DisplayUnits.Si));
        Assert.Equal("{\"value\":" + number + ",\"unit\":\"in\"}",
            Text(Quantities.Tape, Length.FromInches(said), DisplayUnits.UsCustomary));
        Assert.Equal("{\"value\":" + number + ",\"unit\":\"mL\"}", Text(Quantities.Liquid, Volume.FromMilliliters(said), DisplayUnits.Si));
        Assert.Equal("{\"value\":" + number + ",\"unit\":\"%\"}", Text(Quantities.Percent, Ratio.FromPercent(said), DisplayUnits.Si));
    }

    [Theory]
    [InlineData("{\"value\":1346,\"unit\":\"mm\"}", 1.346)]
    [InlineData("{\"unit\":\"cm\",\"value\":134.6}", 1.346)]
    [InlineData("{\"value\":1.346e0,\"unit\":\"m\"}", 1.346)]
    [InlineData("{\"value\":10,\"unit\":\"in\"}", 0.254)]
    [InlineData("{\"value\":10,\"unit\":\"ft\"}", 3.048)]
    [InlineData("{\"value\":2,\"unit\":\"mil\"}", 50.8e-6)]
    [InlineData("{\"value\":50,\"unit\":\"um\"}", 50e-6)]
    [InlineData("{\"value\":50,\"unit\":\"µm\"}", 50e-6)]
    [InlineData("{\"value\":50,\"unit\":\"\\u03bcm\"}", 50e-6)]
    public void A_length_is_read_in_any_of_its_units(string json, double meters) =>
        Assert.Equal(meters, Read(Quantities.Tape, json).Meters, 1e-15);

    /// <summary>
    /// US gallon 231 in³ and fluid ounce a 128th of it (NIST Handbook 44, Appendix C); imperial gallon 4.546 09 L and fluid ounce a 160th
    /// (Weights and Measures Act 1985, Schedule 1).
    /// </summary>
    [Theory]
    [InlineData("US gal", 3.785411784e-3)]
    [InlineData("US fl oz", 3.785411784e-3 / 128)]
    [InlineData("imp gal", 4.54609e-3)]
    [InlineData("imp fl oz", 4.54609e-3 / 160)]
    public void Gallons_and_ounces_are_those_of_the_country_that_is_named(string unit, double cubicMeters) =>
        Assert.Equal(1, Read(Quantities.Liquid, "{\"value\":1,\"unit\":\"" + unit + "\"}").CubicMeters / cubicMeters, 1e-7);

    /// <summary>Twenty below in Celsius is four below in Fahrenheit, by definition of the scales.</summary>
    [Fact]
    public void A_temperature_is_one_temperature_on_every_scale()
    {
        double kelvins = Read(Quantities.Temperature, "{\"value\":-20,\"unit\":\"°C\"}").Kelvins;
        Assert.Equal(253.15, kelvins);
        Assert.Equal(kelvins, Read(Quantities.Temperature, "{\"value\":-4,\"unit\":\"°F\"}").Kelvins);
        Assert.Equal(kelvins, Read(Quantities.Temperature, "{\"value\":-4,\"unit\":\"degF\"}").Kelvins);
        Assert.Equal("{\"value\":-4,\"unit\":\"°F\"}",
            Text(Quantities.Temperature, Temperature.FromKelvins(253.15), DisplayUnits.UsCustomary));
    }

    [Theory]
    [InlineData(7 * 24 * 60, "{\"value\":7,\"unit\":\"d\"}")]
    [InlineData(24 * 60, "{\"value\":24,\"unit\":\"h\"}")]
    [InlineData(90, "{\"value\":1.5,\"unit\":\"h\"}")]
    [InlineData(40, "{\"value\":40,\"unit\":\"min\"}")]
    [InlineData(0.5, "{\"value\":30,\"unit\":\"s\"}")]
    [InlineData(0, "{\"value\":0,\"unit\":\"min\"}")]
    public void A_span_of_time_is_written_as_people_say_it(double minutes, string json) =>
        Assert.Equal(json, Text(Quantities.Duration, TimeSpan.FromMinutes(minutes), DisplayUnits.Si));

    [Fact]
    public void Every_spelling_of_every_unit_is_read_and_no_two_units_share_one()
    {
        Check(Units.Length);
        Check(Units.Area);
        Check(Units.Volume);
        Check(Units.Mass);
        Check(Units.Density);
        Check(Units.Ratio);
        Check(Units.Temperature);
        Check(Units.TemperatureDelta);
        Check(Units.Pressure);
        Check(Units.VolumeFlow);
        Check(Units.Angle);
        Check(Units.MolarMass);
        Check(Units.MassConcentration);
        Check(Units.DynamicViscosity);
        Check(Units.Speed);
        Check(Units.SpreadingRate);
        Check(Units.AreaDensity);
        Check(Units.SurfaceTension);
        Check(Units.Scattering);
        Check(Units.Duration);

        static void Check<T>(UnitTable<T> table)
        {
            string[] spellings = [.. table.Spellings];
            Assert.Equal(spellings.Length, spellings.Distinct(StringComparer.Ordinal).Count());
            Assert.All(spellings, spelling =>
            {
                using JsonDocument json = JsonDocument.Parse(JsonSerializer.Serialize(spelling));
                Assert.NotNull(table.Find(json.RootElement));
            });
            Assert.All(table.Symbols, symbol => Assert.Equal(3, table[symbol].In(table[symbol].Of(3)), 1e-9));
        }
    }

    private static void Holds<T>(Shape<T> shape, T quantity, Func<T, double> si)
    {
        foreach (DisplayUnits units in Enum.GetValues<DisplayUnits>())
        {
            Assert.Equal(BitConverter.DoubleToInt64Bits(si(quantity) + 0.0),
                BitConverter.DoubleToInt64Bits(si(Back(shape, quantity, units)) + 0.0));
        }
    }

    private static T Back<T>(Shape<T> shape, T value, DisplayUnits units) => Read(shape, Text(shape, value, units));

    private static string Text<T>(Shape<T> shape, T value, DisplayUnits units) =>
        Document.Write(shape, value, new JsonLayout { Units = units, IsIndented = false });

    private static T Read<T>(Shape<T> shape, string json) => Document.Read(shape, () => JsonDocument.Parse(json));
}
