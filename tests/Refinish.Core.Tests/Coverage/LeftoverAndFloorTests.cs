using System;
using System.Linq;
using FsCheck.Xunit;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Coverage;

public class LeftoverAndFloorTests
{
    private static readonly CoatingProduct Primer = GenericCatalogue.EpoxyPrimer;
    private static readonly DateTimeOffset Day = new(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1));

    [Fact]
    [Evidence(Basis.Independent, "by hand at 2 : 1: 300 mL of base make 450 mL, 200 mL of hardener would make 600; 700 less 450 is 250 to buy; what is 100 days old is past the hardener's 90")]
    public void Leftovers_within_their_life_are_counted()
    {
        OpenedKit fresh = Kit(300, 200, 40);
        OpenedKit old = Kit(1000, 1000, 100);
        StockDraw draw = new(Primer, Volume.FromMilliliters(700), Day, [old, fresh]);
        Numbers.Near(450, draw.Covered.Milliliters, 1e-9);
        Numbers.Near(250, draw.ToBuy.Milliliters, 1e-9);
        Assert.Equal(fresh, Assert.Single(draw.Uses).Kit);
        Assert.Equal(["epoxy-primer-base", "epoxy-primer-hardener"], draw.Uses[0].Parts.Select(part => part.Component));
        Assert.Equal([300, 150], draw.Uses[0].Parts.Select(part => Math.Round(part.Volume.Milliliters, 9)));
        LimitComparison age = Assert.Single(draw.NotCounted);
        Assert.Equal(ComparisonOutcome.Beyond, age.Outcome);
        Numbers.CanBeWritten(draw.Workings());
        Assert.Empty(draw.Cautions);
        Assert.Equal(Hazard.Isocyanate, Assert.Single(new StockDraw(GenericCatalogue.AcrylicUrethaneTopcoat, Volume.FromLiters(1), Day, []).Cautions).Hazard);
        Assert.Equal("450 mL from leftovers, 250 mL to buy", draw.ToString());
    }

    [Fact]
    [Evidence(Basis.Contract, "first to expire is used first; an unknown shelf life is not counted; another product is refused")]
    public void First_to_expire_first()
    {
        StockDraw draw = new(Primer, Volume.FromMilliliters(300), Day, [Kit(200, 100, 10), Kit(100, 50, 80), Kit(100, 50, 50)]);
        Assert.Equal([80, 50], draw.Uses.Select(use => (int)Math.Round((Day - use.Kit.Opened).TotalDays)));
        Numbers.Near(0, draw.ToBuy.Milliliters, 1e-9);
        CoatingProduct unknown = Primer with { Parts = [Primer.Parts[0], new(Primer.Parts[1].Component with { ShelfLifeOpened = null }, 1)] };
        StockDraw none = new(unknown, Volume.FromMilliliters(300), Day, [Kit(unknown, 1000, 1000, 1)]);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, Assert.Single(none.NotCounted).Outcome);
        Numbers.Near(300, none.ToBuy.Milliliters, 1e-9);
        Assert.Throws<ArgumentException>(() => new StockDraw(GenericCatalogue.AcrylicUrethaneTopcoat, Volume.FromMilliliters(300), Day, [Kit(1, 1, 1)]));
        Numbers.Refuses("when", () => _ = new StockDraw(Primer, Volume.FromMilliliters(300), Day, [Kit(1, 1, -1)]));
    }

    [Property]
    [Evidence(Basis.Identity, "covered and to buy make the need; no can gives more than it holds")]
    public void Need_is_covered_or_bought(ushort need, ushort a, ushort b)
    {
        StockDraw draw = new(Primer, Volume.FromMilliliters(need), Day, [Kit(a, b, 20), Kit(b, a, 30)]);
        Numbers.Near(need, draw.Covered.Milliliters + draw.ToBuy.Milliliters, 1e-6);
        Assert.All(draw.Uses, use => Assert.All(use.Parts, (part, i) => Assert.True(part.Volume.Milliliters <= use.Kit.Left[i].Volume.Milliliters + 1e-9)));
        Numbers.CanBeWritten(draw.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 20 g/m² of 100 µm grains of 1.2 g/mL cover 0.25 of the floor, 3183 a square centimetre; 1.2 mil around them is 0.305 of their height; no published source")]
    public void Grains_by_hand()
    {
        SlipResistantFloor floor = Floor(20, Length.FromMils(1.2));
        Numbers.Close(0.25, floor.AreaFraction.DecimalFractions);
        Numbers.Near(3183, floor.GrainsPerSquareMeter / 1e4, 0.5);
        Numbers.Near(0.305, floor.Embedment.DecimalFractions, 0.0005);
        Numbers.Near(12.5, floor.ToWeighOut.Grams, 1e-9);
        Assert.Equal([ComparisonOutcome.Beyond, ComparisonOutcome.Within, ComparisonOutcome.Within, ComparisonOutcome.Within], floor.Bands.Select(band => band.Outcome));
        Assert.Equal([ComparisonOutcome.Within, ComparisonOutcome.Within], Floor(20, Length.FromMils(2.4)).Bands.Take(2).Select(band => band.Outcome));
        Numbers.CanBeWritten(floor.Workings());
        Assert.Equal(Hazard.Slip, Assert.Single(floor.Cautions).Hazard);
    }

    [Property]
    [Evidence(Basis.Independent, "the surface of a sphere above a plane, summed over thin rings, less the disc that the plane cuts out")]
    public void Added_surface_by_summing_rings(byte rate, byte film)
    {
        double depth = 5 + (film % 90);
        SlipResistantFloor floor = Floor(1 + (rate % 60), Length.FromMicrometers(depth));
        const double Radius = 50e-6;
        const int Rings = 20000;
        double bottom = (depth * 1e-6) - Radius;
        double area = 0;
        double from = Math.Acos(Math.Clamp(bottom / Radius, -1, 1));
        for (int i = 0; i < Rings; i++)
        {
            double angle = from * (i + 0.5) / Rings;
            area += 2 * Math.PI * Radius * Math.Sin(angle) * Radius * from / Rings;
        }

        double disc = Math.PI * ((Radius * Radius) - (bottom * bottom));
        Numbers.Close(floor.GrainsPerSquareMeter * (area - disc), floor.AddedArea.DecimalFractions, 1e-6);
        Numbers.Close(floor.Rate.KilogramsPerSquareMeter, floor.GrainsPerSquareMeter * 1200 * 4 / 3 * Math.PI * Radius * Radius * Radius, 1e-12);
        Numbers.CanBeWritten(floor.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "grains that do not fit side by side, and films and losses that cannot be, are refused; a dose times the wet film is a rate")]
    public void Refuses_floors_that_cannot_be()
    {
        Numbers.Refuses("rate", () => Floor(80, Length.FromMicrometers(60)));
        Numbers.Refuses("filmAround", () => Floor(20, Length.Zero));
        Numbers.Refuses("loss", () => _ = new SlipResistantFloor(Area.FromSquareMeters(1), GenericCatalogue.PolymerBeads, AreaDensity.FromGramsPerSquareMeter(20), Length.FromMicrometers(60), Ratio.FromPercent(81)));
        Numbers.Near(7.5, SlipResistantFloor.RateFromDose(MassConcentration.FromGramsPerLiter(100), Length.FromMicrometers(75)).GramsPerSquareMeter, 1e-9);
        Assert.Equal(0, Floor(20, Length.FromMicrometers(120)).StandsOut.Meters);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 400 + 100 mL with the first line read 5 mL low is 105/395 = 6.33 % too much hardener, read high 95/405 = 6.17 % short")]
    public void One_graduation_misread()
    {
        CupReading reading = new(new PouredMix(GenericCatalogue.AcrylicUrethaneTopcoat, Volume.FromMilliliters(550), Ratio.FromPercent(10)), Volume.FromMilliliters(5));
        Numbers.Near(((105.0 / 395 * 4) - 1) * 100, reading.DeviationHigh.Percent, 1e-9);
        Numbers.Near(((95.0 / 405 * 4) - 1) * 100, reading.DeviationLow.Percent, 1e-9);
        Assert.Equal(ComparisonOutcome.Beyond, reading.Comparison.Outcome);
        Numbers.Close(1.0476 * 1.0633, reading.IndexHigh!.Value, 1e-4);
        Numbers.CanBeWritten(reading.Workings());
    }

    [Property]
    [Evidence(Basis.Identity, "in the smallest cup for the tolerance the misread graduation uses up exactly the tolerance")]
    public void The_smallest_cup_just_does(byte graduation, byte tolerance, byte reduce)
    {
        CoatingProduct product = GenericCatalogue.AcrylicUrethaneTopcoat with { RatioTolerance = Ratio.FromPercent(1 + (tolerance % 20)) };
        Volume g = Volume.FromMilliliters(0.5 + (graduation / 50.0));
        Ratio reducer = Ratio.FromPercent(reduce % 16);
        CupReading any = new(new PouredMix(product, Volume.FromLiters(5), reducer), g);
        CupReading smallest = new(new PouredMix(product, any.SmallestTotal!.Value, reducer), g);
        Numbers.Close(product.RatioTolerance!.Value.DecimalFractions, smallest.DeviationHigh.DecimalFractions, 1e-10);
        Numbers.CanBeWritten(smallest.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "a graduation as large as a part, and a product in one part, are refused; without a tolerance nothing is judged")]
    public void Refuses_readings_that_cannot_be()
    {
        PouredMix cup = new(GenericCatalogue.AcrylicUrethaneTopcoat, Volume.FromMilliliters(50), Ratio.Zero);
        Numbers.Refuses("graduation", () => _ = new CupReading(cup, Volume.FromMilliliters(10)));
        CoatingProduct silent = GenericCatalogue.AcrylicUrethaneTopcoat with { RatioTolerance = null };
        CupReading unknown = new(new PouredMix(silent, Volume.FromMilliliters(500), Ratio.Zero), Volume.FromMilliliters(5));
        Assert.Equal(ComparisonOutcome.CannotBeJudged, unknown.Comparison.Outcome);
        Assert.Null(unknown.SmallestTotal);
        CoatingProduct single = Primer with { Parts = [Primer.Parts[0]] };
        Assert.Throws<ArgumentException>(() => new CupReading(new PouredMix(single, Volume.FromMilliliters(500), Ratio.Zero), Volume.FromMilliliters(5)));
    }

    private static OpenedKit Kit(double a, double b, double days) => Kit(Primer, a, b, days);

    private static OpenedKit Kit(CoatingProduct product, double a, double b, double days) => new(
        product,
        [
            new(product.Parts[0].Component.Id, Volume.FromMilliliters(a)), new(product.Parts[1].Component.Id, Volume.FromMilliliters(b)),
        ],
        Day.AddDays(-days));

    private static SlipResistantFloor Floor(double grams, Length film) =>
        new(Area.FromSquareMeters(0.5), GenericCatalogue.PolymerBeads, AreaDensity.FromGramsPerSquareMeter(grams), film, Ratio.FromPercent(20));
}
