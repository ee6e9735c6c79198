using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Films;
using Refinish.Fixtures;
using UnitsNet;
using Xunit;

namespace Refinish.Pictures.Tests;

public class FilmPictureTests
{
    internal static readonly FilmMap Map = Sprayed();

    private static FilmMap Sprayed()
    {
        SprayGun gun = new() { FluidRate = VolumeFlow.FromMillilitersPerMinute(180), TransferEfficiency = Ratio.FromPercent(65) };
        FanPattern fan = FanPattern.Beta(Length.FromMillimeters(220), Length.FromMillimeters(60), Length.FromMillimeters(180), 2);
        List<SprayStroke> strokes = [];
        for (double y = -0.385; y <= 0.39; y += 0.11)
        {
            strokes.Add(new() { Start = new(-0.8, y, 0.52), End = new(0.8, y, 0.52), Aim = new(0, 0, -1),
                Speed = Speed.FromCentimetersPerSecond(12) });
        }

        return new StrokePlan(gun, fan, strokes).SprayOnto(Plans.One.Job.Fixtures[0].Fixture.Tessellate(Length.FromMillimeters(10)),
            Length.FromMillimeters(30), new SprayFilmLimits(Length.FromMicrometers(60), Length.FromMicrometers(140)));
    }

    [Fact]
    public void Hatched_bars_are_the_parts_of_the_area_outside_the_limits()
    {
        SvgFile file = new(new FilmPicture(Map, "tub").ToSvg(new PictureStyle { Theme = PictureTheme.Light }));
        double least = LineAt(file, "least 60 µm");
        double limit = LineAt(file, "wet limit 140 µm");
        (double X, double Y, double Width, double Height)[] bars = [.. file.Rectangles(Paint.BlueTint)
            .Concat(file.Rectangles(Paint.VermillionTint)).Where(bar => bar.Width > 5)];

        // Bars of one zone stand on one line; zones follow each other downwards in the map's order.
        double[][] bottoms = [.. bars.Select(bar => Math.Round(bar.Y + bar.Height, 1)).Distinct().Order()
            .Select(bottom => (double[])[bottom])];
        Assert.Equal(Map.Zones.Count, bottoms.Length);
        for (int i = 0; i < bottoms.Length; i++)
        {
            (double X, double Y, double Width, double Height)[] zone =
                [.. bars.Where(bar => Math.Abs(bar.Y + bar.Height - bottoms[i][0]) < 0.2)];
            double all = zone.Sum(bar => bar.Height * bar.Width);
            Assert.Equal(Map.Zones[i].UnderMinimum.DecimalFractions, zone.Where(bar => bar.X + bar.Width <= least + 0.5)
                .Sum(bar => bar.Height * bar.Width) / all, 0.02);
            Assert.Equal(Map.Zones[i].OverLimit.DecimalFractions, zone.Where(bar => bar.X >= limit - 0.5)
                .Sum(bar => bar.Height * bar.Width) / all, 0.02);
        }
    }

    [Theory]
    [InlineData(DisplayUnits.Si, "least 60 µm", "wet limit 140 µm")]
    [InlineData(DisplayUnits.UsCustomary, "least 2.36 mil", "wet limit 5.51 mil")]
    public void Limits_stand_at_their_film_in_the_reader_s_units(DisplayUnits units, string least, string limit)
    {
        SvgFile file = new(new FilmPicture(Map, "tub").ToSvg(new PictureStyle { Theme = PictureTheme.Light, Units = units }));
        SvgText[] ticks = [.. file.Texts.Where(text => text.Anchor == "middle" && double.TryParse(text.Words, NumberStyles.Float,
            CultureInfo.InvariantCulture, out _))];
        Func<double, double> film = SvgFile.Scale(ticks[0].X, double.Parse(ticks[0].Words, CultureInfo.InvariantCulture), ticks[^1].X,
            double.Parse(ticks[^1].Words, CultureInfo.InvariantCulture));
        double perMicrometre = units == DisplayUnits.Si ? 1 : 1 / 25.4;
        Assert.Equal(60 * perMicrometre, film(LineAt(file, least)), 0.6 * perMicrometre);
        Assert.Equal(140 * perMicrometre, film(LineAt(file, limit)), 0.6 * perMicrometre);
    }

    [Fact]
    public void It_carries_the_caution_about_what_does_not_land() =>
        Assert.Contains(Map.Cautions[0].Sentence, new SvgFile(new FilmPicture(Map, "tub").ToSvg()).AllWords, StringComparison.Ordinal);

    // The line nearest to the left of its label that stands upright.
    private static double LineAt(SvgFile file, string label)
    {
        SvgText text = file.Text(label);
        return file.Paths(Paint.Line).Where(points => points.Length == 2 && Math.Abs(points[0].X - points[1].X) < 0.01
            && points.Max(point => point.Y) - points.Min(point => point.Y) > 30)
            .Select(points => points[0].X).OrderBy(x => Math.Abs(x - text.X)).First();
    }
}
