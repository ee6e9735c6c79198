using System;
using System.Linq;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Films;

public class FilmMapTests
{
    private static readonly StrokeSettings Long = SprayScene.Hand with { Overlap = Ratio.FromDecimalFractions(1.0 / 3), TriggerLead = Length.FromMeters(0.3) };

    [Fact]
    [Evidence(Basis.Independent, "closed form of parallel parabolic strokes: a panel one spacing wide has the mean, the extremes and the variation of StrokeOverlap")]
    public void Figures_of_a_panel_are_those_of_the_closed_form()
    {
        FanPattern pattern = SprayScene.Patterns[2];
        StrokeOverlap closed = new(SprayScene.Gun, pattern, Long);
        double spacing = closed.Spacing.Meters;
        StrokePlan plan = StrokePlan.OverPanel(SprayScene.Gun, pattern, Long, Length.FromMeters(0.3), Length.FromMeters(2));
        double from = plan.Strokes[plan.Strokes.Count / 2].Start.Y;
        FilmMap map = plan.SprayOnto(SprayScene.Panel(0, from, 0.3, from + spacing), Length.FromMillimeters(5), SprayScene.Limits);
        Numbers.Close(closed.MeanWetFilm.Meters, map.Whole.Mean.Meters, 1e-3);
        Numbers.Near(closed.MaximumOverMean.DecimalFractions, map.Whole.Maximum / map.Whole.Mean, 2e-3);
        Numbers.Near(closed.MinimumOverMean.DecimalFractions, map.Whole.Minimum / map.Whole.Mean, 5e-3);
        Numbers.Near(closed.Variation.DecimalFractions, map.Whole.Variation.DecimalFractions, 1e-3);
        FilmMapZone zone = Assert.Single(map.Zones);
        Assert.Equal(FixtureZoneKind.Top, zone.Zone);
        Numbers.Close(map.Balance.Landed.CubicMeters, zone.Mean.Meters * zone.Area.SquareMeters, 1e-9);
    }

    [Fact]
    [Evidence(Basis.Identity, "two coats crossed: CV / √2 of one coat of the same pattern and twice the mean")]
    public void Crossed_coats_are_evener()
    {
        FanPattern pattern = SprayScene.Patterns[2];
        StrokeOverlap closed = new(SprayScene.Gun, pattern, Long);
        StrokePlan plan = StrokePlan.CrossedOverPanel(SprayScene.Gun, pattern, Long, Length.FromMeters(1.6), Length.FromMeters(1.6));
        double half = closed.Spacing.Meters / 2;
        FilmMap map = plan.SprayOnto(SprayScene.Panel(0.8 - half, 0.8 - half, 0.8 + half, 0.8 + half), Length.FromMillimeters(5), SprayScene.Limits);
        Numbers.Close(2 * closed.MeanWetFilm.Meters, map.Whole.Mean.Meters, 1e-3);
        Numbers.Near(closed.CrossedVariation.DecimalFractions, map.Whole.Variation.DecimalFractions, 1e-3);
    }

    [Fact]
    [Evidence(Basis.Identity, "zones add up to the whole: area, volume, area under and over")]
    public void Zones_add_up()
    {
        FilmMap map = Tub();
        Numbers.Close(map.Whole.Area.SquareMeters, map.Zones.Sum(zone => zone.Area.SquareMeters));
        Numbers.Close(map.Balance.Landed.CubicMeters, map.Zones.Sum(zone => zone.Area.SquareMeters * zone.Mean.Meters), 1e-9);
        Numbers.Close(map.Whole.UnderMinimum.DecimalFractions * map.Whole.Area.SquareMeters, map.Zones.Sum(zone => zone.Area.SquareMeters * zone.UnderMinimum.DecimalFractions), 1e-9);
        Numbers.Close(map.Whole.OverLimit.DecimalFractions * map.Whole.Area.SquareMeters, map.Zones.Sum(zone => zone.Area.SquareMeters * zone.OverLimit.DecimalFractions), 1e-9);
        Assert.Equal(map.Whole.Minimum, map.Zones.Min(zone => zone.Minimum));
        Assert.All(map.Zones, zone => Assert.True(zone.Bare <= zone.UnderMinimum));
        Assert.Equal(map.Whole.Minimum.Meters, Enumerable.Range(0, map.Mesh.Triangles.Count).Min(i => map.WetFilm(i).Meters));
        Numbers.Refuses("triangle", () => map.WetFilm(map.Mesh.Triangles.Count));
        Assert.NotEmpty(map.Cautions);
        Assert.StartsWith("All: ", map.ToString(), StringComparison.Ordinal);
    }

    private static FilmMap Tub() =>
        SprayScene.Askew(SprayScene.Patterns[2], 12).SprayOnto(SprayScene.Tub.Tessellate(Length.FromMillimeters(10)), Length.FromMillimeters(40), SprayScene.Limits);
}
