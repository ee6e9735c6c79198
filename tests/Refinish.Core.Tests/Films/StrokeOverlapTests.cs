using System;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Refinish.Films;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Films;

public class StrokeOverlapTests
{
    private static readonly SprayGun Gun = new() { FluidRate = VolumeFlow.FromCubicCentimetersPerMinute(180), TransferEfficiency = Ratio.FromPercent(65) };

    [Fact]
    [Evidence(Basis.Independent, "table worked out beforehand outside the library: Poisson summation and sums on a fine grid (see the table's header)")]
    public void Evenness_matches_the_table()
    {
        foreach (Table.Row row in Table.Read("stroke_overlap.csv").Rows)
        {
            StrokeOverlap overlap = Of(Pattern(row["pattern"], row.Number("b")), row.Number("overlap_pct"));
            double half = 0.5 * Math.Pow(10, -row.Number("digits")) * 1.02;
            Numbers.Near(row.Number("max"), overlap.MaximumOverMean.DecimalFractions, half);
            Numbers.Near(row.Number("min"), overlap.MinimumOverMean.DecimalFractions, half);
            if (row["cv"].Length > 0)
            {
                Numbers.Near(row.Number("cv"), overlap.Variation.DecimalFractions, half);
            }
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 3 cm³/s × 0.65 / (45.72 cm/s × 12.7 cm) = 33.58 µm; at 0.60, 31.0 µm")]
    public void The_mean_does_not_ask_for_the_shape()
    {
        foreach (FanPattern pattern in SprayScene.Patterns)
        {
            StrokeOverlap overlap = Of(pattern, 50, 0.4572, 0.2 * 25.4 / 24);
            Numbers.Close(3e-6 * 0.65 / (0.4572 * 0.127), overlap.MeanWetFilm.Meters, 1e-12);
            Numbers.Near(33.6, overlap.MeanWetFilm.Micrometers, 0.05);
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 33.58 µm a pass at 45.72 cm/s; 100 µm are 2.978 passes; in two passes 45.72 × 2 × 33.58 / 100 = 30.71 cm/s, in three 46.06 cm/s")]
    public void Passes_and_speed_for_a_film()
    {
        StrokeOverlap wall = Of(SprayScene.Patterns[0], 50, 0.4572, 0.2 * 25.4 / 24);
        Length film = Length.FromMicrometers(100);
        Numbers.Near(2.978, wall.PassesFor(film), 0.0005);
        Numbers.Near(30.71, wall.SpeedFor(film, 2).CentimetersPerSecond, 0.005);
        Numbers.Near(46.06, wall.SpeedFor(film, 3).CentimetersPerSecond, 0.01);
        Numbers.Close(1, wall.PassesFor(wall.MeanWetFilm));
        Numbers.Close(0.4572, wall.SpeedFor(wall.MeanWetFilm, 1).MetersPerSecond);
        Numbers.Refuses("wetFilm", () => wall.PassesFor(Length.Zero));
        Numbers.Refuses("wetFilm", () => wall.SpeedFor(Length.FromMillimeters(5.1), 1));
        Numbers.Refuses("passes", () => wall.SpeedFor(film, 0));
        Numbers.Refuses("wetFilm", () => wall.SpeedFor(Length.FromMicrometers(5), 1));
        Numbers.Refuses("wetFilm", () => wall.SpeedFor(Length.FromMillimeters(2), 1));
    }

    [Property]
    [Evidence(Basis.Identity, "at the speed for a film in n passes, n passes lay that film")]
    public void Speed_and_passes_are_inverse(byte passes, byte micrometers)
    {
        int n = 1 + (passes % 4);
        Length film = Length.FromMicrometers(30 + micrometers);
        StrokeOverlap wall = Of(SprayScene.Patterns[0], 50);
        StrokeOverlap set = new(wall.Gun, wall.Pattern, wall.Settings with { Speed = wall.SpeedFor(film, n) });
        Numbers.Close(film.Meters, n * set.MeanWetFilm.Meters, 1e-11);
        Numbers.Close(n, set.PassesFor(film), 1e-11);
    }

    [Fact]
    [Evidence(Basis.Independent, "sums of profiles on a grid of 4 000 points by another route: RelativeBuild, normalised by its own sum")]
    public void Evenness_is_what_a_grid_of_profiles_gives()
    {
        foreach (FanPattern pattern in SprayScene.Patterns)
        {
            foreach (double percent in new[] { 0, 10, 35, 50, 61, 80 })
            {
                StrokeOverlap overlap = Of(pattern, percent);
                double spacing = overlap.Spacing.Meters;
                const int Points = 4_000;
                double sum = 0, squares = 0, most = 0, least = double.MaxValue;
                double edge = 0.12 - (spacing * Math.Floor(0.12 / spacing));
                for (int i = -1; i < Points; i++)
                {
                    // The edge of a fan is looked at by itself: an elliptical one ends steeply there.
                    double at = i < 0 ? edge : (i + 0.5) / Points * spacing;
                    double film = 0;
                    for (int k = -12; k <= 12; k++)
                    {
                        double x = at + (k * spacing);
                        film += Math.Abs(x) < 2 ? pattern.RelativeBuild(Length.FromMeters(x), Length.FromMeters(0.2)).DecimalFractions : 0;
                    }

                    sum += i < 0 ? 0 : film;
                    squares += i < 0 ? 0 : film * film;
                    bool stepped = i < 0 && pattern.Shape == FanPatternShape.Uniform;
                    most = stepped ? most : Math.Max(most, film);
                    least = stepped ? least : Math.Min(least, film);
                }

                double mean = sum / Points;
                Numbers.Near(most / mean, overlap.MaximumOverMean.DecimalFractions, 5e-4);
                Numbers.Near(least / mean, overlap.MinimumOverMean.DecimalFractions, 5e-4);
                Numbers.Near(Math.Sqrt(Math.Max(0, (squares / Points) - (mean * mean))) / mean, overlap.Variation.DecimalFractions, 5e-4);
            }
        }
    }

    [Fact]
    [Evidence(Basis.Identity, "a parabolic fan is evener at 33 % than at 50 % overlap; a flat one is exactly even at 50 %")]
    public void More_overlap_is_not_always_more_even()
    {
        FanPattern parabola = Pattern("beta", 2);
        Assert.True(Of(parabola, 100 / 3.0).Variation < Of(parabola, 50).Variation);
        Assert.Equal(0, Of(Pattern("uniform", 0), 50).Variation.DecimalFractions);
        Assert.True(Of(Pattern("uniform", 0), 55).Variation.DecimalFractions > 0);
    }

    [Property]
    [Evidence(Basis.Identity, "workings hold to the kernel; thinnest ≤ mean ≤ thickest; crossed coats are √2 evener")]
    public Property Workings_hold() => Prop.ForAll(
        ArbMap.Default.ArbFor<NormalFloat>(),
        ArbMap.Default.ArbFor<PositiveInt>(),
        (x, kind) =>
        {
            double percent = Math.Abs(x.Get) % 75;
            StrokeOverlap overlap = Of(SprayScene.Patterns[kind.Get % SprayScene.Patterns.Count], percent);
            Numbers.CanBeWritten(overlap.Workings());
            Assert.True(overlap.MinimumOverMean.DecimalFractions <= 1 + 1e-12 && overlap.MaximumOverMean.DecimalFractions >= 1 - 1e-12);
            Numbers.Close(overlap.Variation.DecimalFractions, overlap.CrossedVariation.DecimalFractions * Math.Sqrt(2));
        });

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings, text, equality across units")]
    public void Refuses_and_prints()
    {
        Length w = Length.FromMillimeters(250);
        Length h = Length.FromMillimeters(60);
        Length d = Length.FromMillimeters(200);
        Numbers.Refuses("width", () => FanPattern.Uniform(Length.Zero, h, d));
        Numbers.Refuses("height", () => FanPattern.Gaussian(w, Length.FromMeters(2), d));
        Numbers.Refuses("referenceDistance", () => FanPattern.Elliptical(w, h, Length.FromMillimeters(10)));
        Numbers.Refuses("exponent", () => FanPattern.Beta(w, h, d, 1.4));
        Numbers.Refuses("distance", () => FanPattern.Beta(w, h, d, 2).WidthAt(Length.FromMeters(3)));
        Numbers.Refuses("Overlap", () => _ = SprayScene.Hand with { Overlap = Ratio.FromPercent(95) });
        Numbers.Refuses("Speed", () => _ = SprayScene.Hand with { Speed = Speed.Zero });
        Numbers.Refuses("Distance", () => _ = SprayScene.Hand with { Distance = Length.FromMeters(2) });
        Numbers.Refuses("TriggerLead", () => _ = SprayScene.Hand with { TriggerLead = Length.FromMeters(-1) });
        Assert.Equal("beta 2, 250 mm × 60 mm at 200 mm", FanPattern.Beta(w, h, d, 2).ToString());
        Assert.Equal(FanPattern.Beta(w, h, d, 2), FanPattern.Beta(Length.FromCentimeters(25), Length.FromCentimeters(6), Length.FromCentimeters(20), 2));
        Numbers.Close(30, FanPattern.Beta(w, h, d, 2).WidthAt(Length.FromCentimeters(24)).Centimeters);
        Numbers.Close(75, FanPattern.Beta(w, h, d, 2).RelativeBuild(Length.FromCentimeters(6.25), d).Percent);
        Assert.Equal("33.6 µm wet on the mean, 75 % to 112.5 % of it, CV 11.18 %", Of(Pattern("beta", 2), 50, 0.4572, 0.2 * 25.4 / 24).ToString());
    }

    private static FanPattern Pattern(string name, double exponent)
    {
        Length width = Length.FromMillimeters(240);
        Length height = Length.FromMillimeters(60);
        Length at = Length.FromMillimeters(200);
        return name switch
        {
            "uniform" => FanPattern.Uniform(width, height, at),
            "gaussian" => FanPattern.Gaussian(width, height, at),
            _ => FanPattern.Beta(width, height, at, exponent),
        };
    }

    private static StrokeOverlap Of(FanPattern pattern, double overlap, double speed = 0.45, double distance = 0.2) => new(
        Gun,
        pattern,
        new() { Distance = Length.FromMeters(distance), Speed = Speed.FromMetersPerSecond(speed), Overlap = Ratio.FromPercent(overlap), TriggerLead = Length.Zero });
}
