using System;
using System.Linq;
using Refinish.Coatings;
using Refinish.Curing;
using Refinish.Jobs;
using UnitsNet;
using Xunit;

namespace Refinish.Pictures.Tests;

public class CurePictureTests
{
    private static readonly DateTimeOffset Applied = new(2027, 3, 4, 9, 0, 0, TimeSpan.Zero);

    private static readonly CureTimes Sheet = new()
    {
        ReferenceTemperature = Temperature.FromDegreesCelsius(25), MinimumTemperature = Temperature.FromDegreesCelsius(10),
            MaximumTemperature = Temperature.FromDegreesCelsius(35),
        PotLife = TimeSpan.FromHours(2), TouchDry = TimeSpan.FromHours(1), RecoatOpens = TimeSpan.FromHours(4),
            RecoatCloses = TimeSpan.FromHours(24),
        WaterService = TimeSpan.FromHours(36), FullCure = TimeSpan.FromDays(7), Source = Source.Supplied("an invented data sheet"),
    };

    [Theory]
    [InlineData(720)]
    [InlineData(360)]
    public void Bands_begin_and_end_at_the_data_sheet_s_times_at_its_own_temperature(int width)
    {
        SvgFile file = new(new CurePicture(new CureForecast(Sheet, Temperature.FromDegreesCelsius(25)), "topcoat")
            .ToSvg(new PictureStyle { Theme = PictureTheme.Light, Width = width }));
        Func<double, double> hours = SvgFile.LogScale(file.Text("1 h").X, 1, file.Text("7 d").X, 168);
        (double X, double Y, double Width, double Height) window = file.Rectangles(Paint.GreenTint).First();
        Assert.Equal(4, hours(window.X), 0.05);
        Assert.Equal(24, hours(window.X + window.Width), 0.3);
        (double X, double Y, double Width, double Height)[] onwards = [.. file.Rectangles(Paint.BlueTint, Paint.Blue)];
        Assert.Equal(1, hours(onwards[0].X), 0.02);
        Assert.Equal(36, hours(onwards[1].X), 0.5);
        Assert.Equal(168, hours(onwards[2].X), 2.5);
        (double X, double Y, double Width, double Height) pot = file.Rectangles(Paint.VermillionTint).First();
        Assert.Equal(2, hours(pot.X + pot.Width), 0.03);
        Assert.Contains("4 h to 24 h", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("from 7 d on", file.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void Ten_kelvins_colder_take_twice_as_long()
    {
        string words = new CurePicture(new CureForecast(Sheet, Temperature.FromDegreesCelsius(15)), "topcoat").Describe(DisplayUnits.Si)
            .Replace('\u00A0', ' ');
        Assert.Contains("recoat window 8 h to 48 h", words, StringComparison.Ordinal);
        Assert.Contains("water from 3 d on", words, StringComparison.Ordinal);
        Assert.Contains("full cure from 14 d on", words, StringComparison.Ordinal);
        Assert.Contains("at 15 °C", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wait_is_never_told_shorter_and_a_window_never_longer_than_it_is()
    {
        // 20 °C against 25 °C: √2 longer. 1 h becomes 84.85 min, 24 h becomes 33 h 56.5 min, 7 d becomes 9.8995 d.
        string words = new CurePicture(new CureForecast(Sheet, Temperature.FromDegreesCelsius(20)), "topcoat").Describe(DisplayUnits.Si)
            .Replace('\u00A0', ' ');
        Assert.Contains("touch dry from 1 h 25 on", words, StringComparison.Ordinal);
        Assert.Contains("to 33 h 56;", words, StringComparison.Ordinal);
        Assert.Contains("pot life, mixed until 2 h 49", words, StringComparison.Ordinal);
        Assert.Contains("full cure from 9.9 d on", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_time_at_another_temperature_than_the_heading_s_names_it()
    {
        // The surface is colder than the air in which the cup stands.
        string words = new CurePicture(Plans.One).Describe(DisplayUnits.Si).Replace('\u00A0', ' ');
        foreach (CoatRun run in Plans.One.Runs.Select(run => run.Run))
        {
            Assert.True(run.InCup.Site > run.OnSurface.Site);
            int minutes = (int)Math.Floor(run.InCup.PotLife!.Value.TotalMinutes);
            string at = " at " + Measure.Temperature.Format(run.InCup.Site.Kelvins, DisplayUnits.Si, 3);
            Assert.Contains("pot life, mixed until " + (minutes / 60) + " h " + (minutes % 60).ToString("00", null) + at + ";", words,
                StringComparison.Ordinal);
            Assert.Contains(run.Layer.Product.Name + " at " + Measure.Temperature.Format(run.OnSurface.Site.Kelvins, DisplayUnits.Si, 3), words,
                StringComparison.Ordinal);
        }

        string one = new CurePicture(new CureForecast(Sheet, Temperature.FromDegreesCelsius(25)), "topcoat").Describe(DisplayUnits.Si)
            .Replace('\u00A0', ' ');
        Assert.Contains("pot life, mixed until 2 h;", one, StringComparison.Ordinal);
    }

    [Fact]
    public void Outside_the_data_sheet_there_are_no_times_and_the_picture_says_by_how_much()
    {
        SvgFile file = new(new CurePicture(new CureForecast(Sheet, Temperature.FromDegreesCelsius(4)), "topcoat")
            .ToSvg(new PictureStyle { Theme = PictureTheme.Light }));
        Assert.Contains("There are no times:", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("6 K beyond", file.AllWords, StringComparison.Ordinal);
        Assert.Empty(file.Rectangles(Paint.GreenTint));
        Assert.Contains("no times", file.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void A_coat_without_a_window_s_end_may_be_recoated_from_then_on()
    {
        string words = new CurePicture(new CureForecast(Sheet with { RecoatCloses = null }, Temperature.FromDegreesCelsius(25)),
            "topcoat").Describe(DisplayUnits.Si).Replace('\u00A0', ' ');
        Assert.Contains("recoat from 4 h on", words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_curve_is_the_law_s_own()
    {
        // A reaction of first order with k = 0.05/h at every temperature that matters here: α = 1 − exp(−k t). E = 0 is refused, so k is
        // given at 20 °C through a small E.
        const double energy = 1000;
        double rate = 0.05 / 3600 * Math.Exp(energy / (8.314462618 * 293.15));
        CureReaction law = new()
        {
            Factor = Frequency.FromHertz(rate), ActivationEnergy = MolarEnergy.FromJoulesPerMole(energy),
            AutocatalyticFactor = Frequency.FromHertz(0), AutocatalyticActivationEnergy = MolarEnergy.FromJoulesPerMole(energy),
                AutocatalyticOrder = 1, Order = 1,
            Source = Source.Invented("first order, for this test"),
        };
        Temperature site = Temperature.FromDegreesCelsius(20);
        ConversionCurve curve = new(law, TemperatureHistory.Constant(Applied, site), Applied);
        SvgFile file = new(new CurePicture(new CureForecast(Sheet, site), "topcoat", curve)
            .ToSvg(new PictureStyle { Theme = PictureTheme.Light }));
        Func<double, double> hours = SvgFile.LogScale(file.Text("1 h").X, 1, file.Text("7 d").X, 168);
        Func<double, double> alpha = SvgFile.Scale(file.Text("0 %").Middle, 0, file.Text("100 %").Middle, 1);
        (double X, double Y)[] points = file.Paths(Paint.Blue).OrderByDescending(path => path.Length).First();
        Assert.True(points.Length > 100);
        Assert.All(points, point => Assert.Equal(1 - Math.Exp(-0.05 * hours(point.X)), alpha(point.Y), 0.012));
        Assert.Contains("69.9 %", file.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_shows_each_of_its_coatings_once_and_one_without_coats_says_why()
    {
        SvgFile file = new(new CurePicture(Plans.One).ToSvg());
        Assert.Single(file.Texts, text => text.Words == "white epoxy primer at 20 °C");
        Assert.Single(file.Texts, text => text.Words == "white urethane topcoat at 20 °C");
        SvgFile refused = new(new CurePicture(Plans.Refused).ToSvg());
        Assert.Contains("There is no coat to forecast.", refused.AllWords, StringComparison.Ordinal);
        Assert.Contains(Plans.Refused.Objections[0].Sentence(DisplayUnits.Si), refused.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void A_coating_that_meets_other_temperatures_in_another_room_is_shown_for_each()
    {
        SvgFile file = new(new CurePicture(Plans.Rooms).ToSvg());
        CoatRun[] primers = [.. Plans.Rooms.Work!.Runs.Where(run => run.Layer.Product.Name == "white epoxy primer")];
        Assert.Equal(2, primers.Select(run => run.OnSurface.Site).Distinct().Count());
        Assert.Single(file.Texts, text => text.Words.StartsWith("white epoxy primer, bathroom 1, at ", StringComparison.Ordinal));
        Assert.Single(file.Texts, text => text.Words.StartsWith("white epoxy primer, bathroom 2, unheated, at ", StringComparison.Ordinal));
        Assert.Contains("the coldest of working hours", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("the schedule follows the hours themselves", file.AllWords, StringComparison.Ordinal);
    }
}
