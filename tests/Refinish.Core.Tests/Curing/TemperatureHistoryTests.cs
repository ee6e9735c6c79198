using System;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using MathNet.Numerics;
using Refinish.Curing;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Curing;

public class TemperatureHistoryTests
{
    private const string Log = "# logger 7\ntime,celsius\n2026-03-03T18:00:00-05:00,20\n\n2026-03-03T19:00:00-05:00,16\n2026-03-04T01:30:00+00:00, 12.5 \n2026-03-04T02:00Z,-1.5\n";

    private static readonly DateTimeOffset Six = new(2026, 3, 3, 18, 0, 0, TimeSpan.FromHours(-5));

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static void Malformed(string line, string log) =>
        Assert.StartsWith("Line " + line + ": ", Assert.Throws<FormatException>(() => TemperatureLog.Parse(log)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData(2, 4)]
    [InlineData(2, 10)]
    [InlineData(1.6, 8)]
    [Evidence(Basis.Independent, "closed form: over whole days the mean rate of a fixed factor Q under a sine of amplitude A is Q^((mean − ref)/10) I_0(A ln Q / 10), I_0 by MathNet.Numerics 5.0.0; to 1e-12")]
    public void A_sine_of_whole_days_has_its_closed_form(double factor, double amplitude)
    {
        TemperatureHistory swing = TemperatureHistory.Diurnal(Six, TimeSpan.FromDays(3), C(16), TemperatureDelta.FromKelvins(amplitude), Six.AddHours(-3));
        EquivalentAge age = new(swing, TemperatureShift.Doubling(factor), C(25));
        double mean = Math.Pow(factor, -0.9) * SpecialFunctions.BesselI0(amplitude * Math.Log(factor) / 10);
        Numbers.Close(72 * mean, age.Between(Six, Six.AddDays(3)).TotalHours, 1e-12);
    }

    [Fact]
    [Evidence(Basis.Independent, "Arrhenius under the same sine, a part of a day: adaptive quadrature by MathNet.Numerics 5.0.0 of the smooth curve; steps of one minute are within 1e-6")]
    public void A_sine_of_part_of_a_day_matches_quadrature()
    {
        TemperatureHistory swing = TemperatureHistory.Diurnal(
            Six, TimeSpan.FromHours(10), C(16), TemperatureDelta.FromKelvins(6), Six.AddHours(-3), TimeSpan.FromMinutes(1));
        EquivalentAge age = new(swing, TemperatureShift.Arrhenius(MolarEnergy.FromKilojoulesPerMole(55)), C(25));
        double hours = MathNet.Numerics.Integration.GaussLegendreRule.Integrate(
            h => Math.Exp(55000 / 8.31446261815324 * ((1 / 298.15) - (1 / (289.15 + (6 * Math.Cos(2 * Math.PI * (h + 3) / 24)))))), 0, 10, 64);
        Numbers.Close(hours, age.Between(Six, Six.AddHours(10)).TotalHours, 1e-6);
    }

    [Fact]
    [Evidence(Basis.Identity, "warmest and coldest at their hours, the same from any day's warmest instant; refusals")]
    public void A_sine_is_warmest_when_told()
    {
        TemperatureHistory swing = TemperatureHistory.Diurnal(Six, TimeSpan.FromDays(1), C(16), TemperatureDelta.FromKelvins(4), Six.AddHours(6), TimeSpan.FromMinutes(2));
        Numbers.Near(20, swing.At(Six.AddHours(6)).DegreesCelsius, 1e-4);
        Numbers.Near(12, swing.At(Six.AddHours(18)).DegreesCelsius, 1e-4);
        TemperatureHistory other = TemperatureHistory.Diurnal(Six, TimeSpan.FromDays(1), C(16), TemperatureDelta.FromKelvins(4), Six.AddDays(-40).AddHours(6), TimeSpan.FromMinutes(2));
        Numbers.Near(swing.At(Six.AddHours(3)).Kelvins, other.At(Six.AddHours(3)).Kelvins, 1e-9);
        Assert.Equal(Six.AddDays(1), swing.End);
        Numbers.Refuses("amplitude", () => _ = TemperatureHistory.Diurnal(Six, TimeSpan.FromDays(1), C(55), TemperatureDelta.FromKelvins(6), Six));
        Numbers.Refuses("duration", () => _ = TemperatureHistory.Diurnal(Six, TimeSpan.FromMinutes(20), C(20), TemperatureDelta.FromKelvins(6), Six));
        Numbers.Refuses("step", () => _ = TemperatureHistory.Diurnal(Six, TimeSpan.FromDays(1), C(20), TemperatureDelta.FromKelvins(6), Six, TimeSpan.FromSeconds(1)));
        Numbers.Refuses("mean", () => _ = TemperatureHistory.Diurnal(Six, TimeSpan.FromDays(1), C(61), TemperatureDelta.Zero, Six));
    }

    [Fact]
    [Evidence(Basis.Contract, "a log becomes stretches at the mean of neighbouring readings; comments, empty lines, offsets and both units are understood, in any culture")]
    public void Logs_are_read()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            foreach (string culture in (string[])["en-US", "de-DE", "ar-SA", "tr-TR"])
            {
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
                TemperatureHistory history = TemperatureLog.Parse(Log);
                Assert.Equal(Six, history.Start);
                Assert.Equal(Six.AddHours(3), history.End);
                Assert.Equal([60, 90, 30], history.Segments.Select(segment => segment.Duration.TotalMinutes));
                Numbers.Near(18, history.Segments[0].Temperature.DegreesCelsius, 1e-9);
                Numbers.Near(14.25, history.Segments[1].Temperature.DegreesCelsius, 1e-9);
                Numbers.Near(5.5, history.Segments[2].Temperature.DegreesCelsius, 1e-9);
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        using StringReader reader = new("Time, Fahrenheit\r\n2026-03-03T18:00:00-05:00,68\r\n2026-03-03T19:00:00-05:00,50\r\n");
        Numbers.Near(15, TemperatureLog.Read(reader).Segments[0].Temperature.DegreesCelsius, 1e-9);
    }

    [Fact]
    [Evidence(Basis.Contract, "a malformed log is refused with the number of its line: header, instant without offset, decimal comma, order, gap, range, too short")]
    public void Malformed_logs_name_their_line()
    {
        Malformed("1", "18:00,20\n");
        Malformed("1", "time,kelvin\n");
        Malformed("1", string.Empty);
        Malformed("3", "time,celsius\n2026-03-03T18:00:00-05:00,20\n");
        Malformed("2", "time,celsius\n2026-03-03T18:00:00,20\n");
        Malformed("2", "time,celsius\n03/03/2026 18:00,20\n");
        Malformed("2", "time,celsius\n2026-03-03T18:00:00Z,20,5\n");
        Malformed("2", "time,celsius\n2026-03-03T18:00:00Z,NaN\n");
        Malformed("2", "time,celsius\n2026-03-03T18:00:00Z,1e1\n");
        Malformed("2", "time,celsius\n2026-03-03T18:00:00Z\n");
        Malformed("2", "time,celsius\n2026-03-03T18:00:00Z,61\n");
        Malformed("3", "time,celsius\n2026-03-03T18:00:00Z,20\n2026-03-03T18:00:00Z,20\n");
        Malformed("4", "time,celsius\n2026-03-03T18:00:00Z,20\n# battery low\n2026-03-03T20:01:00Z,20\n");
        Assert.NotNull(TemperatureLog.Parse("time,celsius\n2026-03-03T18:00:00Z,20\n2026-03-03T20:01:00Z,20\n", TimeSpan.FromHours(3)));
        Numbers.Refuses("longestGap", () => _ = TemperatureLog.Parse(Log, TimeSpan.FromHours(25)));
        Assert.Throws<ArgumentNullException>(() => TemperatureLog.Parse(null!));
    }

    [Fact]
    [Evidence(Basis.Independent, "a week of minutes over the night the clocks go forward, read from text: trapezoid of the readings' mean temperatures, summed here; ten thousand minutes are ten thousand minutes")]
    public void A_week_of_minutes_over_a_clock_change_is_a_week()
    {
        StringBuilder text = new("time,celsius\n");
        DateTimeOffset start = new(2026, 3, 5, 12, 0, 0, TimeSpan.FromHours(-5));
        double expected = 0;
        double last = 0;
        for (int i = 0; i <= 10080; i++)
        {
            DateTimeOffset instant = start.AddMinutes(i);
            instant = instant.ToOffset(TimeSpan.FromHours(instant.UtcDateTime >= new DateTime(2026, 3, 8, 7, 0, 0, DateTimeKind.Utc) ? -4 : -5));
            double celsius = Math.Round(16 + (4 * Math.Sin(i / 229.0)), 1);
            text.Append(instant.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture)).Append(',').Append(celsius.ToString("F1", CultureInfo.InvariantCulture)).Append('\n');
            expected += i == 0 ? 0 : Math.Pow(2, (((celsius + last) / 2) - 25) / 10) / 60;
            last = celsius;
        }

        TemperatureHistory history = TemperatureLog.Parse(text.ToString());
        Assert.Equal(TimeSpan.FromDays(7), history.End!.Value - history.Start);
        EquivalentAge age = new(history, TemperatureShift.Doubling(2), C(25));
        Numbers.Close(expected, age.Between(history.Start, history.End.Value).TotalHours, 1e-10);
        Assert.Equal(age, new EquivalentAge(TemperatureLog.Parse(text.ToString()), TemperatureShift.Doubling(2), C(25)));
        Assert.NotEqual(age, new EquivalentAge(history, TemperatureShift.Doubling(2), C(24)));
    }

    [Fact]
    [Evidence(Basis.Identity, "the rates of a long log are those of its temperatures one by one, to 4e-15, whether it creeps, jumps or stands still")]
    public void Rates_of_a_log_are_those_of_its_temperatures()
    {
        double[] celsius = [.. Enumerable.Range(0, 5000).Select(i => i % 700 < 40 ? -20 + (i * 7919 % 80) : i % 700 < 80 ? 21.5 : 16 + (9 * Math.Sin(i / 229.0)))];
        TemperatureHistory history = new(Six, celsius.Select(t => new TemperatureSegment(TimeSpan.FromMinutes(1), C(t))));
        foreach (TemperatureShift law in (TemperatureShift[])[TemperatureShift.Doubling(2), TemperatureShift.Doubling(1), TemperatureShift.Arrhenius(MolarEnergy.FromKilojoulesPerMole(90))])
        {
            double[] rates = new double[celsius.Length];
            law.Factors(history.Kelvins, 298.15, rates);
            for (int i = 0; i < rates.Length; i++)
            {
                Numbers.Close(law.Factor(history.Kelvins[i], 298.15), rates[i], 4e-15);
            }
        }
    }
}
