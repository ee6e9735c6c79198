using FsCheck.Xunit;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Foundation;

public class SpreadingRateTests
{
    [Fact]
    [Evidence(Basis.Cited, "231 in³ a US gallon (NIST Handbook 44, Appendix C) over 0.001 in and 144 in²/ft²: 1604.17 ft²; trade handbooks print 1604")]
    public void One_gallon_one_mil_thick_covers_1604_square_feet()
    {
        Area area = Volume.FromUsGallons(1) * SpreadingRate.FromSquareMetersPerCubicMeter(1 / Length.FromMils(1).Meters);
        Numbers.Near(1604.1667, area.SquareFeet, 5e-5);
        Numbers.Close(1604.1666666666667, SpreadingRate.FromSquareMetersPerCubicMeter(1 / 25.4e-6).SquareFeetPerUsGallon);
    }

    [Fact]
    [Evidence(Basis.Independent, "definition: 1 L = 10⁻³ m³ spread 10⁻⁶ m thick is 1000 m²")]
    public void One_litre_one_micrometre_thick_covers_1000_square_metres() =>
        Numbers.Close(1000, SpreadingRate.FromSquareMetersPerCubicMeter(1 / 1e-6).SquareMetersPerLiter);

    [Fact]
    [Evidence(Basis.Cited, "trade spreading-rate note: 65 % solids at 5 mil covers 208.52 ft²/US gal (1604 × 0.65 / 5) and at 125 µm 5.2 m²/L")]
    public void The_published_example_comes_out()
    {
        Numbers.Near(208.52, 0.65 * SpreadingRate.FromSquareMetersPerCubicMeter(1 / Length.FromMils(5).Meters).SquareFeetPerUsGallon, 0.03);
        Numbers.Near(5.2, 0.65 * SpreadingRate.FromSquareMetersPerCubicMeter(1 / 125e-6).SquareMetersPerLiter, 1e-12);
    }

    [Property]
    [Evidence(Basis.Identity, "there and back between the units, and area = volume × rate")]
    public void Units_round_trip(ushort thousandths)
    {
        double value = 0.001 * (thousandths + 1);
        SpreadingRate rate = SpreadingRate.FromSquareFeetPerUsGallon(value);
        Numbers.Close(value, rate.SquareFeetPerUsGallon);
        Numbers.Close(value, SpreadingRate.FromSquareMetersPerLiter(rate.SquareMetersPerLiter).SquareFeetPerUsGallon);
        Area area = Area.FromSquareMeters(3);
        Numbers.Close(3, (area / rate * rate).SquareMeters);
    }

    [Fact]
    [Evidence(Basis.Contract, "equality, order, text and refusals")]
    public void Behaves_as_a_value()
    {
        SpreadingRate low = SpreadingRate.FromSquareMetersPerLiter(8);
        SpreadingRate high = SpreadingRate.FromSquareMetersPerLiter(12.5);
        Assert.True(low < high && high > low && low <= high && high >= low && low.CompareTo(high) < 0);
        Assert.Equal(low, SpreadingRate.FromSquareMetersPerCubicMeter(8000));
        Assert.Equal("12.5 m²/L", high.ToString());
        Assert.Equal("509.32 ft²/US gal", high.ToString(DisplayUnits.UsCustomary));
        Numbers.Refuses("value", () => SpreadingRate.FromSquareMetersPerLiter(-1));
        Numbers.Refuses("value", () => SpreadingRate.FromSquareFeetPerUsGallon(double.NaN));
        Numbers.Refuses("rate", () => _ = Area.FromSquareMeters(1) / default(SpreadingRate));
    }
}
