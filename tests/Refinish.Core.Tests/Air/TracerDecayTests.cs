using System;
using System.Linq;
using Refinish.Air;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

public class TracerDecayTests
{
    private static readonly Ratio Usual = Ratio.FromPercent(95);

    [Fact]
    [Evidence(Basis.Cited, "NIST Statistical Reference Datasets, Norris: slope 1.00211681802045, its standard deviation 0.429796848199937E-03; x as minutes, ln C as −y/100")]
    public void Slope_and_its_error_match_the_reference_data()
    {
        TracerReading[] readings = [.. Table.Read("line_norris.csv").Rows.Select(row => Reading(row.Number("x"), Math.Exp(-row.Number("y") / 100)))];
        TracerDecay decay = new(readings);
        Assert.Equal(36, decay.Readings.Count);
        Numbers.Close(1.00211681802045 * 0.6, decay.AirChangesPerHour!.Value, 1e-12);
        Numbers.Close(0.429796848199937e-3 * 0.6, decay.StandardError!.Value, 1e-9);
        Numbers.CanBeWritten(decay.Workings());
    }

    [Fact]
    [Evidence(Basis.Cited, "Moore and McCabe, Introduction to the practice of statistics, example 10.3, worked in R 1.8.1 as quoted in the tests of an open library: standard error 0.011448491, half width of the 95 % interval 0.0270713794287; x as minutes, ln C as −y")]
    public void The_interval_matches_the_worked_example()
    {
        (double X, double Y)[] points = [(15.6, 5.2), (26.8, 6.1), (37.8, 8.7), (36.4, 8.5), (35.5, 8.8), (18.6, 4.9), (15.3, 4.5), (7.9, 2.5), (0, 1.1)];
        TracerDecay decay = new([.. points.Select(point => Reading(point.X, Math.Exp(-point.Y)))]);
        Numbers.Near(0.011448491 * 60, decay.StandardError!.Value, 60e-9);
        Numbers.Near(0.0270713794287 * 60, decay.MostAirChangesPerHour!.Value - decay.AirChangesPerHour!.Value, 60e-9);
        Numbers.Near(0.0270713794287 * 60, decay.AirChangesPerHour!.Value - decay.LeastAirChangesPerHour!.Value, 60e-9);
        Numbers.CanBeWritten(decay.Workings());
    }

    [Theory]
    [InlineData(0.5, 0)]
    [InlineData(6, 420)]
    [InlineData(30, 420)]
    [Evidence(Basis.Identity, "an exact decay over a background gives back its air changes with no error, and flow is air changes times volume")]
    public void An_exact_decay_gives_its_rate_back(double changes, double backgroundPpm)
    {
        TracerDecay decay = new(
            [.. Enumerable.Range(0, 8).Select(i => Reading(2 * i, (backgroundPpm + (2000 * Math.Exp(-changes * 2 * i / 60))) * 1e-6))],
            Ratio.FromPartsPerMillion(backgroundPpm), Usual, Volume.FromCubicMeters(9));
        Numbers.Close(changes, decay.AirChangesPerHour!.Value, 1e-7);
        Numbers.Near(0, decay.StandardError!.Value, 1e-6);
        Numbers.Close(9 * changes, decay.Airflow!.Value.CubicMetersPerHour, 1e-7);
        Assert.True(decay.LeastAirflow <= decay.Airflow);
        Numbers.CanBeWritten(decay.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: two readings of 2000 and 1000 ppm ten minutes apart are ln 2 · 6 = 4.1589 air changes an hour, and say nothing of their error")]
    public void Two_readings_give_a_rate_and_no_error()
    {
        TracerDecay decay = new([Reading(0, 2000e-6), Reading(10, 1000e-6)], Ratio.Zero, Usual, Volume.FromCubicMeters(9));
        Numbers.Near(4.1589, decay.AirChangesPerHour!.Value, 5e-5);
        Assert.Null(decay.StandardError);
        Assert.Null(decay.LeastAirChangesPerHour);
        Assert.Null(decay.LeastAirflow);
        Assert.Equal("2 readings: 4.16 1/h, error not known", decay.ToString());
        Numbers.CanBeWritten(decay.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "a concentration that does not fall gives no rate; readings that scatter leave a least flow of zero, not a negative one")]
    public void Says_when_it_cannot()
    {
        TracerDecay rising = new([Reading(0, 1000e-6), Reading(5, 1100e-6), Reading(10, 1250e-6)], Ratio.Zero, Usual, Volume.FromCubicMeters(9));
        Assert.Null(rising.AirChangesPerHour);
        Assert.Null(rising.MostAirChangesPerHour);
        Assert.Null(rising.Airflow);
        Assert.Equal("3 readings: the concentration does not fall", rising.ToString());
        Numbers.CanBeWritten(rising.Workings());
        TracerDecay scattered = new([Reading(0, 1000e-6), Reading(5, 1300e-6), Reading(10, 900e-6)], Ratio.Zero, Usual, Volume.FromCubicMeters(9));
        Assert.True(scattered.LeastAirChangesPerHour < 0);
        Assert.Equal(VolumeFlow.Zero, scattered.LeastAirflow);
        Assert.Contains(Cautions.ClearingCountsNoSource, scattered.Cautions);
    }

    [Fact]
    [Evidence(Basis.Identity, "more confidence, a wider interval; the order of the readings does not count")]
    public void Confidence_widens_the_interval()
    {
        TracerReading[] readings = [Reading(0, 2400e-6), Reading(5, 1610e-6), Reading(10, 1160e-6), Reading(15, 880e-6)];
        TracerDecay usual = new(readings);
        TracerDecay sure = new(readings, Ratio.Zero, Ratio.FromPercent(99), null);
        Assert.Equal(usual, new TracerDecay(readings, Ratio.Zero, Usual, null));
        Assert.True(sure.LeastAirChangesPerHour < usual.LeastAirChangesPerHour);
        Numbers.Close(usual.AirChangesPerHour!.Value, new TracerDecay([.. Enumerable.Reverse(readings)]).AirChangesPerHour!.Value, 1e-12);
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings")]
    public void Refuses_what_cannot_be()
    {
        TracerReading[] readings = [Reading(0, 2400e-6), Reading(5, 1610e-6)];
        Numbers.Refuses("concentration", () => Reading(0, 0));
        Numbers.Refuses("time", () => Reading(-1, 1e-3));
        Numbers.Refuses("readings", () => _ = new TracerDecay([Reading(3, 1e-3), Reading(3, 2e-3)]));
        Numbers.Refuses("background", () => _ = new TracerDecay(readings, Ratio.FromPartsPerMillion(1610), Usual, null));
        Numbers.Refuses("confidence", () => _ = new TracerDecay(readings, Ratio.Zero, Ratio.FromPercent(100), null));
        Numbers.Refuses("roomVolume", () => _ = new TracerDecay(readings, Ratio.Zero, Usual, Volume.FromCubicMeters(1)));
        Assert.Throws<ArgumentException>(() => new TracerDecay([readings[0]]));
    }

    private static TracerReading Reading(double minutes, double fraction) =>
        new(TimeSpan.FromTicks((long)Math.Round(minutes * TimeSpan.TicksPerMinute)), Ratio.FromDecimalFractions(fraction));
}
