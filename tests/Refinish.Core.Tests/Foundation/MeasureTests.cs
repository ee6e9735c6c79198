using System;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Foundation;

public class MeasureTests
{
    [Theory]
    [InlineData(30e-6, DisplayUnits.Si, "30 µm")]
    [InlineData(25.4e-6, DisplayUnits.UsCustomary, "1 mil")]
    [InlineData(0, DisplayUnits.UsCustomary, "0 mil")]
    [InlineData(-1.23456789e-6, DisplayUnits.Si, "-1.2346 µm")]
    [InlineData(9.99999e-6, DisplayUnits.Si, "10 µm")]
    [InlineData(1e6, DisplayUnits.Si, "1×10¹² µm")]
    [InlineData(1e-12, DisplayUnits.Si, "1×10⁻⁶ µm")]
    [Evidence(Basis.Contract, "five significant figures, a point, powers of ten outside 1e-4 to 1e7; the mil is 25.4 µm by definition")]
    public void Films_are_written_with_their_unit(double metres, DisplayUnits system, string text) =>
        Assert.Equal(text, Measure.Film.Format(metres, system));

    [Theory]
    [InlineData(273.15, "0 °C", "32 °F")]
    [InlineData(295.15, "22 °C", "71.6 °F")]
    [InlineData(233.15, "-40 °C", "-40 °F")]
    [Evidence(Basis.Cited, "NIST SP 811 (2008), Appendix B.9: t/°F = 1.8 t/°C + 32")]
    public void Temperatures_have_their_zero(double kelvins, string celsius, string fahrenheit)
    {
        Assert.Equal(celsius, Measure.Temperature.Format(kelvins));
        Assert.Equal(fahrenheit, Measure.Temperature.Format(kelvins, DisplayUnits.UsCustomary));
    }

    [Fact]
    [Evidence(Basis.Cited, "NIST Handbook 44, Appendix C: 1 US gallon = 231 in³ = 128 fl oz = 3.785 411 784 L")]
    public void The_gallon_is_231_cubic_inches()
    {
        Numbers.Close(1, Measure.Capacity.Shown(3.785411784e-3, DisplayUnits.UsCustomary), 1e-14);
        Numbers.Close(128, Measure.Liquid.Shown(3.785411784e-3, DisplayUnits.UsCustomary), 1e-14);
        Numbers.Close(8.345404452, Measure.Density.Shown(1000, DisplayUnits.UsCustomary), 1e-9);
    }

    [Fact]
    [Evidence(Basis.Contract, "money has the decimals of its currency, whatever the amount")]
    public void Money_has_the_decimals_of_its_currency()
    {
        Assert.Equal("1480.00 EUR", Measure.Money(Currency.Of("EUR")).Format(1480));
        Assert.Equal("1480 JPY", Measure.Money(Currency.Of("JPY")).Format(1480));
        Assert.Equal("1480.000 KWD", Measure.Money(Currency.Of("KWD")).Format(1480));
        Assert.NotEqual(Measure.Money(Currency.Of("EUR")), Measure.Money(Currency.Of("USD")));
    }

    [Fact]
    [Evidence(Basis.Contract, "a count of figures outside 1 to 15 is refused")]
    public void Refuses_figures_that_cannot_be() => Numbers.Refuses("figures", () => Measure.Film.Format(1, DisplayUnits.Si, 0));
}
