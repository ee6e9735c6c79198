using System;
using System.Globalization;
using System.Linq;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using UnitsNet.Units;
using Xunit;

namespace Refinish.Tests.Fixtures;

public class FixtureContractTests
{
    [Fact]
    [Evidence(Basis.Identity, "one matrix over all fixtures: areas grow with s², edges with s, capacity with s³; zones are unique, not empty and add up; workings hold and hold every result")]
    public void Every_fixture_obeys_the_laws()
    {
        const double Scale = 0.9;
        foreach ((IFixture fixture, IFixture small) in Tapes.Every().Zip(Tapes.Every(Scale)))
        {
            Numbers.Close(fixture.CoatedArea.SquareMeters * Scale * Scale, small.CoatedArea.SquareMeters);
            Numbers.Close(fixture.MaskedEdge.Meters * Scale, small.MaskedEdge.Meters);
            Numbers.Close(fixture.CoatedArea.SquareMeters, fixture.Zones.Sum(zone => zone.Area.SquareMeters));
            Assert.Equal(fixture.Zones.Count, fixture.Zones.Select(zone => zone.Kind).Distinct().Count());
            Assert.All(fixture.Zones, zone => Assert.True(zone.Area.SquareMeters > 0));
            if (fixture.WaterCapacity is Volume water)
            {
                Numbers.Close(water.CubicMeters * Scale * Scale * Scale, small.WaterCapacity!.Value.CubicMeters);
            }

            Numbers.CanBeWritten(fixture.Workings());
            double[] areas = [.. fixture.Workings().AllSteps().Where(step => step.Measure.Equals(Measure.Area)).Select(step => step.Value)];
            double[] angles = [.. fixture.Workings().AllSteps().Where(step => step.Measure.Equals(Measure.Angle)).Select(step => step.Value)];
            Assert.Contains(fixture.CoatedArea.SquareMeters, areas);
            Assert.All(fixture.Zones, zone => Assert.Contains(zone.Area.SquareMeters, areas));
            Assert.All(fixture.Zones, zone => Assert.Contains(angles, angle => Math.Abs(angle - zone.SlopeFromHorizontal.Radians) < 1e-14));
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "equal lengths make equal fixtures, whatever unit they were given in")]
    public void Units_do_not_matter()
    {
        foreach ((IFixture inches, IFixture millimetres) in Tapes.Every().Zip(Tapes.Every(1, LengthUnit.Millimeter)))
        {
            Numbers.Close(inches.CoatedArea.SquareMeters, millimetres.CoatedArea.SquareMeters, 1e-13);
            Numbers.Close(inches.MaskedEdge.Meters, millimetres.MaskedEdge.Meters, 1e-13);
            Assert.Equal(inches.ToString(), millimetres.ToString());
        }

        Assert.Equal(new RecessedBathtub(Tapes.FiveFootTub()), new RecessedBathtub(Tapes.FiveFootTub()));
        Assert.Equal(new TiledSurround(Tapes.Alcove()), new TiledSurround(Tapes.Alcove()));
        Assert.NotEqual(new RecessedBathtub(Tapes.FiveFootTub()), new RecessedBathtub(Tapes.FiveFootTub(1.01)));
    }

    [Fact]
    [Evidence(Basis.Identity, "decision 2: integrals that run on plain numbers, against the formulas that derivations write, evaluated")]
    public void What_runs_on_plain_numbers_is_what_is_written()
    {
        foreach (SuperellipseBasin oval in new[] { Tapes.Oval().Basin, Tapes.Corner().Basin, new(0.7, 0.3, 2, 0.5, 0.25, 5, 0.4) })
        {
            Tied(oval.Walls);
            Tied(oval.WallTilt);
        }

        foreach (HalfEllipsoid bowl in new HalfEllipsoid[] { Tapes.Sink().Bowl, new(0.3, 0.1, 0.25) })
        {
            Tied(bowl.Area);
            Tied(bowl.Tilt);
        }

        RuledBasin five = Tapes.FiveFootTub().Basin;
        foreach (RuledBasin basin in new[] { five, five with { Shift = 0.02 }, Tapes.Freestanding().Basin })
        {
            Tied(basin.CornerWalls);
            Tied(basin.CornerSlopedSlant);
            Tied(basin.LineSlope);
            Tied(basin.LineTangent);
            Tied(basin.LineSlopeSquared);
            Tied(basin.LineSlopeTangent);
            Tied(basin.CoveOverestimate);
        }

        static void Tied(Func<Trace?, Num> result) => Numbers.Close(result(new Trace()).Value, result(null).Value, 1e-13);
    }

    [Fact]
    [Evidence(Basis.Contract, "a fixture's area allocates the fixture and nothing else: one object, and reading it again none at all")]
    public void The_area_alone_allocates_nothing_more()
    {
        RecessedBathtubMeasurements tub = Tapes.FiveFootTub();
        PedestalSinkMeasurements sink = Tapes.Sink();
        TiledWallMeasurements alcove = Tapes.Alcove() with { Openings = [new(Length.FromInches(20), Length.FromInches(30))] };
        FlatPanelMeasurements counter = Tapes.Counter();
        ShowerPanMeasurements pan = Tapes.Pan();
        Func<IFixture>[] makers = [() => new RecessedBathtub(tub), () => new PedestalSink(sink), () => new TiledSurround(alcove), () => new FlatPanel(counter), () => new ShowerPan(pan)];
        foreach (Func<IFixture> maker in makers)
        {
            IFixture fixture = maker();
            double area = fixture.CoatedArea.SquareMeters;
            long before = GC.GetAllocatedBytesForCurrentThread();
            area += fixture.CoatedArea.SquareMeters;
            long read = GC.GetAllocatedBytesForCurrentThread();
            area += maker().CoatedArea.SquareMeters;
            long made = GC.GetAllocatedBytesForCurrentThread();
            Assert.Equal(0, read - before);

            // The tub, the largest, has 13 numbers and 3 references behind its header.
            Assert.InRange(made - read, 1, 144);
            Assert.True(area > 0);
        }
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    [Evidence(Basis.Contract, "text does not depend on the culture of the thread")]
    public void Text_is_invariant(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = new CultureInfo(culture);
        try
        {
            IFixture[] all = Tapes.All();
            Assert.Equal("recessed bathtub 1524 mm × 762 mm: 2.5724 m² coated, 219.8 L to the rim", all[0].ToString());
            Assert.Equal("shower pan, floor 838.2 mm × 838.2 mm: 1.3105 m² coated", all[4].ToString());
            Assert.Equal("pedestal sink 609.6 mm × 482.6 mm: 0.86786 m² coated, 11.815 L to the rim", all[1].ToString());
            Assert.Equal("tiled surround of 3 walls: 4.903 m² coated", all[2].ToString());
            Assert.Equal("countertop 2438.4 mm × 647.7 mm: 1.4864 m² coated", all[3].ToString());
            Assert.Equal("1346.2 mm × 596.9 mm × 336.55 mm inside 1524 mm × 762 mm", Tapes.FiveFootTub().ToString());
            Assert.Equal("rounded rectangle 609.6 mm × 482.6 mm, r 101.6 mm", Tapes.Sink().Outline.ToString());
            Assert.Equal("3 walls, tile 107.95 mm × 107.95 mm, joint 3.175 mm", Tapes.Alcove().ToString());
            Assert.Equal("762 mm × 1524 mm", Tapes.Alcove().Walls[0].ToString());
            Assert.Equal("812.8 mm × 533.4 mm", Tapes.Counter().CutOuts[0].ToString());
            Assert.Equal("floor 838.2 mm × 838.2 mm", Tapes.Pan().ToString());
            Assert.Equal("Wall 1.1 m² at 75°", new FixtureZone(FixtureZoneKind.Wall, Area.FromSquareMeters(1.1), Angle.FromDegrees(75)).ToString());
            Assert.All(all, fixture => Assert.DoesNotContain(",0", fixture.Workings().ToPlainText(DisplayUnits.Si), StringComparison.Ordinal));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstring")]
    public void A_zone_refuses_what_cannot_be()
    {
        Numbers.Refuses("area", () => _ = new FixtureZone(FixtureZoneKind.Floor, Area.FromSquareMeters(-1), Angle.Zero));
        Numbers.Refuses("slopeFromHorizontal", () => _ = new FixtureZone(FixtureZoneKind.Floor, Area.FromSquareMeters(1), Angle.FromDegrees(181)));
        Numbers.Refuses("kind", () => _ = new FixtureZone((FixtureZoneKind)99, Area.FromSquareMeters(1), Angle.Zero));
    }
}
