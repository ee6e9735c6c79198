using System;
using FsCheck.Xunit;
using MathNet.Numerics;
using Refinish.Fixtures;
using Refinish.Numerics;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Fixtures;

public class OvalTubTests
{
    private static OvalTubMeasurements Tape => Tapes.Oval();

    [Fact]
    [Evidence(Basis.Independent, "worked basins of the design notes (derived there): 27.5 × 12.5 n 2.6 over 20 × 8.5 n 2.4: walls 14.30 ft², floor 3.945 ft², 62.8 gal; mouth 1174.523 in²; corner basin 24 × 19 n 2.2 over 17 × 13: 14.82, 4.99 ft², 79.3 gal, deck 11.58 ft², front 14.23 ft²")]
    public void The_worked_basins_come_out()
    {
        OvalTub oval = new(Tape);
        Numbers.Near(14.30, oval.WallArea.SquareFeet, 5e-3);
        Numbers.Near(3.945, oval.FloorArea.SquareFeet, 5e-4);
        Numbers.Near(62.8, oval.WaterCapacity!.Value.UsGallons, 0.05);
        Numbers.Near(1174.523, oval.MouthArea.SquareInches, 5e-4);
        CornerTub corner = new(Tapes.Corner());
        Numbers.Near(14.82, corner.WallArea.SquareFeet, 5e-3);
        Numbers.Near(4.99, corner.FloorArea.SquareFeet, 5e-3);
        Numbers.Near(79.3, corner.WaterCapacity!.Value.UsGallons, 0.05);
        Numbers.Near(11.58, corner.DeckArea.SquareFeet, 6e-3);
        Numbers.Near(14.23, corner.FrontArea.SquareFeet, 5e-3);
        Numbers.Close(120 + 60 + (30 * Math.Sqrt(2)) + 40 + (5 * Math.PI), corner.MaskedEdge.Inches, 1e-10);
        Numbers.Close((2 * (66 + 36 + 20)) + (5 * Math.PI), oval.MaskedEdge.Inches, 1e-10);
    }

    [Theory]
    [InlineData(2.0)]
    [InlineData(2.5)]
    [InlineData(3.3)]
    [InlineData(4.0)]
    [InlineData(5.0)]
    [InlineData(6.0)]
    [Evidence(Basis.Independent, "area of a superellipse 4ab Γ(1 + 1/n)² / Γ(1 + 2/n) with MathNet's Gamma")]
    public void Sections_have_the_area_of_a_superellipse(double n)
    {
        SuperellipseBasin basin = new(0.7, 0.3, n, 0.5, 0.25, n, 0.4);
        Numbers.Close(4 * 0.7 * 0.3 * Math.Pow(SpecialFunctions.Gamma(1 + (1 / n)), 2) / SpecialFunctions.Gamma(1 + (2 / n)), basin.MouthArea().Value, 1e-9);
        Numbers.Close(4 * 0.5 * 0.25 * Math.Pow(SpecialFunctions.Gamma(1 + (1 / n)), 2) / SpecialFunctions.Gamma(1 + (2 / n)), basin.FloorArea().Value, 1e-9);
    }

    [Fact]
    [Evidence(Basis.Independent, "round basin: cone's frustum π(R + r)√((R − r)² + h²), πh(R² + Rr + r²)/3, slope arctan(h/(R − r)); elliptic cylinder: perimeter 9.688448220547675 of the ellipse 2 × 1 (design notes, recomputed there) times its depth")]
    public void Round_and_upright_basins_have_closed_forms()
    {
        SuperellipseBasin cone = new(0.6, 0.6, 2, 0.4, 0.4, 2, 0.5);
        Numbers.Close(Math.PI * 1.0 * Math.Sqrt(0.04 + 0.25), cone.Walls().Value, 1e-9);
        Numbers.Close(Math.PI * 0.5 * (0.36 + 0.24 + 0.16) / 3, cone.Water(0.5).Value, 1e-9);
        Numbers.Close(Math.Atan2(0.5, 0.2), (cone.WallTilt() / cone.Walls()).Value, 1e-9);
        SuperellipseBasin cylinder = new(2, 1, 2, 2, 1, 2, 0.7);
        Numbers.Close(9.688448220547675 * 0.7, cylinder.Walls().Value, 1e-9);
    }

    [Property(MaxTest = 30)]
    [Evidence(Basis.Independent, "composite 32-point rules over 8 parts of q and 2 of v in this test: the stated error of 1e-8")]
    public void The_stated_error_holds(int seed)
    {
        Random random = new(seed);
        double n = 2 + (4 * random.NextDouble());
        double m = 2 + (4 * random.NextDouble());
        SuperellipseBasin basin = new(0.7, 0.3, n, 0.7 * Share(), 0.3 * Share(), m, 0.2 + (0.5 * random.NextDouble()));
        double fine = 0;
        foreach (bool swapped in new[] { false, true })
        {
            SuperellipseBasin.Half octant = swapped
                ? new(basin.MouthB, basin.MouthA, 2 / n, basin.FloorB, basin.FloorA, 2 / m, basin.Depth)
                : new(basin.MouthA, basin.MouthB, 2 / n, basin.FloorA, basin.FloorB, 2 / m, basin.Depth);
            for (int part = 0; part < 8; part++)
            {
                fine += 4 * Quadrature.GaussLegendre(q => Math.PI / 4 * 12 * Math.Pow(q, 11) * Strip(octant.At(q), basin.Depth), part / 8.0, (part + 1) / 8.0);
            }
        }

        Numbers.Close(fine, basin.Walls().Value, 1e-8);

        double Share() => 0.3 + (0.7 * random.NextDouble());

        static double Strip(SuperellipseBasin.Ruling at, double depth) => Element(at, depth, 0, 0.5) + Element(at, depth, 0.5, 1);

        static double Element(SuperellipseBasin.Ruling at, double depth, double low, double high) => Quadrature.GaussLegendre(
            v =>
            {
                Num dx = ((1 - v) * at.FloorDx) + (v * at.Dx), dy = ((1 - v) * at.FloorDy) + (v * at.Dy);
                return Math.Sqrt(((depth * depth * ((dx * dx) + (dy * dy))) + Num.Square((dy * (at.X - at.FloorX)) - (dx * (at.Y - at.FloorY)))).Value);
            },
            low,
            high);
    }

    [Fact]
    [Evidence(Basis.Identity, "a bow adds a circular segment: half a disc at its greatest; squarer outlines hold more; the laws hold for the workings")]
    public void Bows_and_exponents_behave()
    {
        CornerTubMeasurements tape = Tapes.Corner();
        double chord = 30 * Math.Sqrt(2);
        CornerTub round = new(tape with { FrontBow = In(chord / 2) });
        Numbers.Close(Math.PI * chord * chord / 8, (round.DeckArea - new CornerTub(tape).DeckArea).SquareInches, 1e-10);
        Numbers.Close((60 + (Math.PI * chord / 2)) * 20, round.FrontArea.SquareInches, 1e-10);
        double water = 0;
        for (double n = 2; n <= 6; n += 0.5)
        {
            double more = new OvalTub(Tape with { MouthExponent = n, FloorExponent = n }).WaterCapacity!.Value.CubicMeters;
            Assert.True(more > water, "fuller corners hold more");
            water = more;
        }

        Assert.InRange(water, 0, 55 * 25 * 17 * 1.6387064e-5);
        Numbers.CanBeWritten(new OvalTub(Tape).CapacityWorkings(In(3)));
        Numbers.CanBeWritten(round.CapacityWorkings(In(3)));
        Numbers.Close(new OvalTub(Tape).CapacityBelowRim(Length.Zero).CubicMeters, new OvalTub(Tape).WaterCapacity!.Value.CubicMeters);
        Assert.StartsWith("oval tub 1676.4 mm × 914.4 mm: ", new OvalTub(Tape).ToString(), StringComparison.Ordinal);
        Assert.StartsWith("corner tub 1524 mm × 1524 mm: ", round.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "impossible shapes name the measurement; ranges of the docstrings")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("FloorLength", () => _ = new OvalTub(Tape with { FloorLength = In(56) }));
        Numbers.Refuses("FloorWidth", () => _ = new OvalTub(Tape with { FloorWidth = In(26) }));
        Numbers.Refuses("MouthLength", () => _ = new OvalTub(Tape with { DeckLength = In(50) }));
        Numbers.Refuses("MouthWidth", () => _ = new OvalTub(Tape with { DeckWidth = In(20) }));
        Numbers.Refuses("MouthExponent", () => _ = Tape with { MouthExponent = 1.9 });
        Numbers.Refuses("freeboard", () => new OvalTub(Tape).CapacityBelowRim(In(18)));
        CornerTubMeasurements corner = Tapes.Corner();
        Numbers.Refuses("LeftReturn", () => _ = new CornerTub(corner with { LeftReturn = In(61) }));
        Numbers.Refuses("RightReturn", () => _ = new CornerTub(corner with { RightReturn = In(61) }));
        Numbers.Refuses("FrontBow", () => _ = new CornerTub(corner with { FrontBow = In(22) }));
        Numbers.Refuses("MouthLength", () => _ = new CornerTub(corner with { LeftWall = In(35), RightWall = In(35), LeftReturn = In(10), RightReturn = In(10) }));
        Numbers.Refuses("DrainDiameter", () => _ = new CornerTub(corner with { FloorWidth = In(4), DrainDiameter = In(5) }));
        Assert.Throws<ArgumentNullException>(() => new OvalTub(null!));
        Assert.Throws<ArgumentNullException>(() => new CornerTub(null!));
    }

    private static Length In(double inches) => Length.FromInches(inches);
}
