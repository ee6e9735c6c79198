using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Refinish.Climate;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Climate;

public class SprayWindowTests
{
    private static readonly SprayLimits Limits = new()
    {
        MinimumTemperature = Temperature.FromDegreesCelsius(15),
        MaximumTemperature = Temperature.FromDegreesCelsius(32),
        MaximumRelativeHumidity = Ratio.FromPercent(85),
        Source = Source.Invented("limits for these tests"),
    };

    private static SprayWindow Window(double air, double percent, double surface, SprayLimits? limits = null) => new(
        new MoistAir(Temperature.FromDegreesCelsius(air), Ratio.FromPercent(percent)), Temperature.FromDegreesCelsius(surface), limits ?? Limits);

    private static double Part(NormalFloat x) => Math.Abs(x.Get) % 1;

    [Theory]
    [InlineData(21, 67.7, 19, true)]
    [InlineData(16, 71, 13, false)]
    [Evidence(Basis.Cited, "worked examples of a paint-application note: 21 °C with a wet bulb of 17 °C (dew point 15 °C), surface 19 °C: acceptable; 16 °C, 71 %, surface 13 °C: not. The 67.7 % stand for that wet bulb (derived)")]
    public void Spread_decides_as_in_the_examples(double air, double percent, double surface, bool enough)
    {
        LimitComparison spread = Window(air, percent, surface).Checks[0];
        Assert.Equal("surface above dew point", spread.Subject);
        Assert.Equal(enough ? ComparisonOutcome.Within : ComparisonOutcome.Beyond, spread.Outcome);
    }

    [Fact]
    [Evidence(Basis.Independent, "Magnus formula by hand: 20 °C and 75 % has a dew point of 15.4 °C; at exactly 3 K above it the humidity at the surface is about 82 %")]
    public void Cold_iron_is_refused_with_numbers()
    {
        SprayWindow window = Window(20, 75, 16);
        Assert.False(window.IsOpen);
        Numbers.Near(0.56, window.SpreadAboveDewPoint.Kelvins, 0.03);
        Numbers.Near(18.44, window.LeastSurfaceTemperature!.Value.DegreesCelsius, 0.03);
        Numbers.Near(82, window.Air.RelativeHumidityAt(window.LeastSurfaceTemperature.Value).Percent, 1);
        string remedy = window.Checks[0].Remedy!;
        Assert.Equal("Heat the surface to 18.4 °C (65.2 °F), or dry the air to 64 % relative humidity at its present temperature, or wait until the surface has warmed.", remedy);
        Assert.Equal(3, window.Cautions.Count);
        Numbers.CanBeWritten(window.Workings());
        Assert.StartsWith("closed: surface above dew point: 0.", window.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "an open window has six checks within, no remedies and no cautions")]
    public void Fair_conditions_are_within_every_limit()
    {
        SprayWindow window = Window(22, 45, 21);
        Assert.True(window.IsOpen);
        Assert.Equal(6, window.Checks.Count);
        Assert.All(window.Checks, check => Assert.Null(check.Remedy));
        Assert.Empty(window.Cautions);
        Assert.Equal("open: every reading within its limit", window.ToString());
        Assert.Equal(window, Window(22, 45, 21));
        Numbers.CanBeWritten(window.Workings());
    }

    [Theory]
    [InlineData(25, 90, 24, "relative humidity of the air", "Dry the air to 85 % relative humidity at its present temperature, or heat it to 26 °C (78.7 °F) without adding water (the dew point stays).")]
    [InlineData(10, 50, 20, "lowest air temperature", "Heat the air to 15 °C (59 °F); its relative humidity falls to 36 % if no water is added.")]
    [InlineData(35, 40, 30, "highest air temperature", "Cool the air to 32 °C (89.6 °F) or wait; its relative humidity rises to 47.3 % if no water is taken out.")]
    [InlineData(38, 80, 32, "highest air temperature", "Cool the air to 32 °C (89.6 °F) and dry it: it holds more water than air of that temperature can.")]
    [InlineData(20, 40, 12, "lowest surface temperature", "Heat the surface to 15 °C (59 °F), or wait until the room has warmed it.")]
    [InlineData(25, 40, 40, "highest surface temperature", "Let the surface cool to 32 °C (89.6 °F).")]
    [InlineData(32, 95, 31, "surface above dew point", "Dry the air to 79.5 % relative humidity at its present temperature; the surface cannot be heated far enough within the product's limits.")]
    [InlineData(32, 95, 31, "relative humidity of the air", "Dry the air to 85 % relative humidity at its present temperature; heating alone would have to go beyond the product's limits.")]
    [InlineData(32, 95, 14, "lowest surface temperature", "Heat the surface to 15 °C (59 °F), and dry the air: at its present dew point no surface within the product's limits has the spread.")]
    [Evidence(Basis.Contract, "each limit names its remedy in both systems of units; the numbers are held by the property below")]
    public void Remedies_are_in_words_with_numbers(double air, double percent, double surface, string subject, string remedy)
    {
        LimitComparison check = Window(air, percent, surface).Checks.Single(c => c.Subject == subject);
        Assert.Equal(ComparisonOutcome.Beyond, check.Outcome);
        Assert.Equal(remedy, check.Remedy);
    }

    [Property]
    [Evidence(Basis.Identity, "doing what the numbers say brings each reading within its limit (to a nudge of 1e-6 for rounding); workings hold to the kernel")]
    public void Remedies_work(NormalFloat a, NormalFloat b, NormalFloat c)
    {
        const double nudge = 1e-6;
        SprayWindow window = Window(-5 + (45 * Part(a)), 20 + (80 * Part(b)), -5 + (45 * Part(c)));
        Numbers.CanBeWritten(window.Workings());
        if (window.LeastSurfaceTemperature is Temperature surface)
        {
            SprayWindow warmed = new(window.Air, Temperature.FromKelvins(surface.Kelvins + nudge), Limits);
            Assert.Equal(ComparisonOutcome.Within, warmed.Checks[0].Outcome);
            Assert.Equal(ComparisonOutcome.Within, warmed.Checks[4].Outcome);
        }

        Ratio dry = Ratio.FromDecimalFractions(window.GreatestRelativeHumidity.DecimalFractions * (1 - nudge));
        SprayWindow dried = new(new MoistAir(window.Air.DryBulb, dry), window.Surface, Limits);
        Assert.Equal(ComparisonOutcome.Within, dried.Checks[0].Outcome);
        Assert.Equal(ComparisonOutcome.Within, dried.Checks[1].Outcome);
        if (window.AirTemperatureForHumidity is Temperature air && air.Kelvins > window.Air.DryBulb.Kelvins)
        {
            SprayWindow heated = new(window.Air.HeatedTo(Temperature.FromKelvins(air.Kelvins + nudge)), window.Surface, Limits);
            Assert.Equal(ComparisonOutcome.Within, heated.Checks[1].Outcome);
            Numbers.Near(window.SpreadAboveDewPoint.Kelvins, heated.SpreadAboveDewPoint.Kelvins, 1e-8);
        }
    }

    [Property]
    [Evidence(Basis.Identity, "above 100 % at the surface exactly when the surface is below the dew point")]
    public void Condensation_is_a_negative_spread(NormalFloat a, NormalFloat b, NormalFloat c)
    {
        SprayWindow window = Window(-5 + (45 * Part(a)), 20 + (80 * Part(b)), -5 + (45 * Part(c)));
        if (Math.Abs(window.SpreadAboveDewPoint.Kelvins) > 1e-9)
        {
            Assert.Equal(window.SpreadAboveDewPoint.Kelvins < 0, window.SurfaceRelativeHumidity.DecimalFractions > 1);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstring, and limits that cross each other")]
    public void Refuses_what_cannot_be()
    {
        MoistAir air = new(Temperature.FromDegreesCelsius(20), Ratio.FromPercent(50));
        Assert.Throws<ArgumentNullException>(() => new SprayWindow(null!, Temperature.FromDegreesCelsius(20), Limits));
        Assert.Throws<ArgumentNullException>(() => new SprayWindow(air, Temperature.FromDegreesCelsius(20), null!));
        Numbers.Refuses("surface", () => _ = new SprayWindow(air, Temperature.FromDegreesCelsius(61), Limits));
        SprayLimits crossed = Limits with { MinimumTemperature = Temperature.FromDegreesCelsius(33) };
        Numbers.Refuses("MinimumTemperature", () => _ = new SprayWindow(air, Temperature.FromDegreesCelsius(20), crossed));
    }
}
