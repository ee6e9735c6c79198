using Refinish.Tests.Support;
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
        Numbers.Close(-0.05, below.Margin!.Value, 1e-12);
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
    [Evidence(Basis.Contract, "NaN is refused")]
    public void Refuses_what_is_no_number() =>
        Numbers.Refuses("value", () => _ = new LimitComparison("x", double.NaN, 1, LimitSense.AtMost, Measure.Number, Rule));
}
