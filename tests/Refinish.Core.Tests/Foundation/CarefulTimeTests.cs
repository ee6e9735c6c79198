using System;
using System.Globalization;
using FsCheck.Xunit;
using Refinish.Coatings;
using Refinish.Curing;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Foundation;

public class CarefulTimeTests
{
    [Theory]
    [Evidence(Basis.Independent, "by hand: 3.04 h to wait for are 3.1 h and 7.96 h to be done within are 7.9 h, both of which the nearest "
        + "tenth would put on the other side; whole minutes below an hour, seconds below a minute")]
    [InlineData(3.04 * 3600, "3.1 h", "3 h")]
    [InlineData(7.96 * 3600, "8 h", "7.9 h")]
    [InlineData(3 * 3600, "3 h", "3 h")]
    [InlineData(2.7 * 3600, "2.7 h", "2.7 h")]
    [InlineData(24.2 * 60, "25 min", "24 min")]
    [InlineData(24.8 * 60, "25 min", "24 min")]
    [InlineData(59.5 * 60, "1 h", "59 min")]
    [InlineData(60, "1 min", "1 min")]
    [InlineData(45.9, "1 min", "45 s")]
    [InlineData(0, "0 min", "0 s")]
    public void Waits_go_up_and_deadlines_down(double seconds, string least, string most)
    {
        TimeSpan time = TimeSpan.FromTicks((long)Math.Round(seconds * TimeSpan.TicksPerSecond));
        Assert.Equal(least, CarefulTime.AtLeast(time));
        Assert.Equal(most, CarefulTime.AtMost(time));
    }

    [Property]
    [Evidence(Basis.Identity, "read back, a wait is never shorter and a deadline never longer than it is, nor farther off than the last "
        + "unit that is printed; the clock's whole minutes likewise; but for a millisecond, within which doubles miss a whole unit")]
    public void Printed_times_are_on_the_careful_side(uint ticks)
    {
        // Up to about five days.
        TimeSpan time = TimeSpan.FromTicks(1000L * ticks);
        TimeSpan hair = TimeSpan.FromMilliseconds(1);
        TimeSpan least = Read(CarefulTime.AtLeast(time));
        TimeSpan most = Read(CarefulTime.AtMost(time));
        Assert.True(least >= time - hair && least < time + TimeSpan.FromMinutes(6));
        Assert.True(most <= time + hair && most > time - TimeSpan.FromMinutes(6));
        DateTimeOffset instant = new DateTimeOffset(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(-5)) + time;
        Assert.InRange(CarefulTime.Up(instant), instant - hair, instant.AddMinutes(1));
        Assert.InRange(CarefulTime.Down(instant), instant.AddMinutes(-1), instant + hair);
        Assert.Equal(0, CarefulTime.Up(instant).Second + CarefulTime.Down(instant).Second);
        Assert.Equal(instant.Offset, CarefulTime.Down(instant).Offset);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 20 min at 25 °C are 28.28 min at 20 °C, 24 h are 33.94 h; the nearest minute and tenth would be "
        + "28 min and 33.9 h. A clock at 20 °C from 17:00: opens 17:28:17, closes 24 h 00 × √2 later at 02:56:28, water 33.94 h later")]
    public void Forecast_and_clock_print_openings_up_and_closings_down()
    {
        CureTimes times = new()
        {
            ReferenceTemperature = Temperature.FromDegreesCelsius(25),
            MinimumTemperature = Temperature.FromDegreesCelsius(10),
            MaximumTemperature = Temperature.FromDegreesCelsius(35),
            PotLife = TimeSpan.FromHours(2),
            TouchDry = TimeSpan.FromHours(1),
            RecoatOpens = TimeSpan.FromMinutes(20),
            RecoatCloses = TimeSpan.FromHours(24),
            WaterService = TimeSpan.FromHours(24),
            FullCure = TimeSpan.FromDays(7),
            Source = Source.Invented("for this test"),
        };
        Assert.Equal("at 20 °C: recoat from 29 min, water from 34 h", new CureForecast(times, Temperature.FromDegreesCelsius(20)).ToString());
        Assert.Equal("at 25 °C: recoat from 20 min, water from 24 h", times.ToString());
        DateTimeOffset applied = new(2026, 3, 3, 17, 0, 0, TimeSpan.Zero);
        CureClock clock = new(times, TemperatureHistory.Constant(applied, Temperature.FromDegreesCelsius(20)), applied);
        Assert.Equal("recoat from 2026-03-03 17:29Z, to 2026-03-05 02:56Z, water from 2026-03-05 02:57Z", clock.ToString());
    }

    [Theory]
    [Evidence(Basis.Independent, "by hand: 12.8571 to three figures is 12.9 upwards and 12.8 downwards; whole numbers stay")]
    [InlineData(12.857142857142858, 3, "12.9", "12.8")]
    [InlineData(12.84, 3, "12.9", "12.8")]
    [InlineData(0.1, 3, "0.1", "0.1")]
    [InlineData(9.999, 3, "10", "9.99")]
    [InlineData(-2.551, 2, "-2.5", "-2.6")]
    [InlineData(1234, 2, "1300", "1200")]
    [InlineData(0, 2, "0", "0")]
    public void Figures_round_to_the_side_that_is_asked_for(double value, int figures, string up, string down)
    {
        Assert.Equal(up, Figures.Significant(value, figures, up: true));
        Assert.Equal(down, Figures.Significant(value, figures, up: false));
    }

    private static TimeSpan Read(string text)
    {
        string[] parts = text.Split(' ');
        double number = double.Parse(parts[0], CultureInfo.InvariantCulture);
        return TimeSpan.FromTicks((long)Math.Round(number * (parts[1] == "h" ? TimeSpan.TicksPerHour
            : parts[1] == "min" ? TimeSpan.TicksPerMinute : TimeSpan.TicksPerSecond)));
    }
}
