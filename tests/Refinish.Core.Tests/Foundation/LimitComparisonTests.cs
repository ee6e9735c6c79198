using Refinish.Tests.Support;
using UnitsNet;
using UnitsNet.Units;
using Xunit;

namespace Refinish.Tests.Foundation;

public class LimitComparisonTests
{
    private static readonly Source Rule = Source.Invented("a limit for the test");

    [Fact]
    [Evidence(Basis.Contract, "margin, outcome and sentence; a limit that is just met is within")]
    public void Says_how_far_off()
    {
        LimitComparison below = new("humidity", 0.9, 0.85, LimitSense.AtMost, Measure.Percent, Rule);
        Assert.Equal(ComparisonOutcome.Beyond, below.Outcome);
        Numbers.Close(-0.05, below.Margin!.Value.Si, 1e-12);
        Assert.Equal("humidity: 90 %; limit at most 85 %; 5 % beyond", below.ToString());
        Assert.Equal(ComparisonOutcome.Within, new LimitComparison("spread", 3, 3, LimitSense.AtLeast, Measure.TemperatureDifference, Rule).Outcome);
        Assert.Equal(
            "surface: 50 °F; limit at least 59 °F; 9 Δ°F beyond",
            new LimitComparison("surface", 283.15, 288.15, LimitSense.AtLeast, Measure.Temperature, Rule).Sentence(DisplayUnits.UsCustomary));
    }

    [Theory]
    [InlineData(null, 1.0)]
    [InlineData(1.0, null)]
    [InlineData(null, null)]
    [Evidence(Basis.Contract, "what is missing is never a pass")]
    public void Missing_numbers_cannot_be_judged(double? value, double? limit)
    {
        LimitComparison comparison = new("vapour", value, limit, LimitSense.AtMost, Measure.PartsPerMillion, Rule);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, comparison.Outcome);
        Assert.Null(comparison.Margin);
        Assert.EndsWith("cannot be judged", comparison.ToString(), System.StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "quantities go in and come out; a temperature's margin is a difference: 10 °C is 5 K or 9 °F below 15 °C")]
    public void Hands_out_quantities()
    {
        LimitComparison surface = LimitComparison.AtLeast(
            "surface", Temperature.FromDegreesCelsius(10), Temperature.FromDegreesFahrenheit(59), Measure.Temperature, Rule);
        Numbers.Close(50, surface.Value!.Value.In(TemperatureUnit.DegreeFahrenheit), 1e-12);
        Numbers.Close(15, surface.Limit!.Value.In(TemperatureUnit.DegreeCelsius), 1e-12);
        Numbers.Close(-9, surface.Margin!.Value.In(TemperatureDeltaUnit.DegreeFahrenheit), 1e-12);
        Assert.Equal("-5 K", surface.Margin.ToString());
        LimitComparison vapour = LimitComparison.AtMost(
            "vapour", Ratio.FromPartsPerMillion(5), Ratio.FromPercent(0.002), Measure.PartsPerMillion, Rule) with { Remedy = "more air" };
        Numbers.Close(0.25, vapour.OfLimit!.Value, 1e-12);
        Numbers.Close(15, Assert.IsType<Ratio>(vapour.Margin!.Value.ToQuantity()).PartsPerMillion, 1e-12);
        Assert.Equal(default(MeasuredAmount).Measure, Measure.Number);
    }

    [Fact]
    [Evidence(Basis.Contract, "a quantity of another kind is refused by its name, a unit of another kind too, and money is no quantity of the units library")]
    public void Refuses_other_kinds()
    {
        Assert.Equal("limit", Assert.Throws<System.ArgumentException>(
            () => LimitComparison.AtMost("x", Ratio.Zero, Length.Zero, Measure.Percent, Rule)).ParamName);
        MeasuredAmount price = new(12.5, Measure.Money(Currency.Of("USD")));
        Assert.Null(price.ToQuantity());
        Assert.Equal("12.50 USD", price.ToString());
        Assert.Equal("unit", Assert.Throws<System.ArgumentException>(() => price.In(RatioUnit.Percent)).ParamName);
        Assert.Equal("unit", Assert.Throws<System.ArgumentException>(() => new MeasuredAmount(1, Measure.Film).In(AreaUnit.SquareFoot)).ParamName);
    }

    [Fact]
    [Evidence(Basis.Contract, "NaN is refused")]
    public void Refuses_what_is_no_number() =>
        Numbers.Refuses("value", () => _ = new LimitComparison("x", double.NaN, 1, LimitSense.AtMost, Measure.Number, Rule));
}
