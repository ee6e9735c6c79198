using System;
using System.Linq;
using FsCheck.Xunit;
using Refinish.Fixtures;
using Refinish.Numerics;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Fixtures;

public class RecessedBathtubTests
{
    private const double Inch = 0.0254;

    private static RecessedBathtubMeasurements Five => Tapes.FiveFootTub();

    [Fact]
    [Evidence(Basis.Independent, "worked five-foot tub of the design notes, derived there with triangulation beside it (walls 1784.248 in² by mesh); no published source")]
    public void The_worked_tub_comes_out()
    {
        RecessedBathtub tub = new(Five);
        Numbers.Near(1005.007, tub.SideWallArea.SquareInches, 5e-4);
        Numbers.Near(157.347, tub.HeadWallArea.SquareInches, 5e-4);
        Numbers.Near(140.701, tub.FootWallArea.SquareInches, 5e-4);
        Numbers.Near(481.194, tub.CornerWallArea.SquareInches, 5e-4);
        Numbers.Near(1784.249, tub.WallArea.SquareInches, 5e-4);
        Numbers.Near(836.540, tub.FloorArea.SquareInches, 5e-4);
        Numbers.Near(-78.689, tub.CoveCorrection.SquareInches, 5e-4);
        Numbers.Near(2542.100, tub.InteriorArea.SquareInches, 5e-4);
        Numbers.Near(585.403, tub.DeckArea.SquareInches, 5e-4);
        Numbers.Near(870, tub.ApronArea.SquareInches, 1e-9);
        Numbers.Near(3.142 + 7.069, tub.OpeningArea.SquareInches, 1e-3);
        Numbers.Near(3987.29, tub.CoatedArea.SquareInches, 5e-3);
        Numbers.Near(27.690, tub.CoatedArea.SquareFeet, 5e-4);
        Numbers.Near(13412.8, tub.WaterCapacity!.Value.CubicInches, 0.05);
        Numbers.Near(42.89, tub.CapacityBelowRim(Length.FromInches(3)).UsGallons, 5e-3);
        Numbers.Near(15.05, tub.LeastInteriorArea.SquareFeet, 5e-3);
        Numbers.Near(22.73, tub.GreatestInteriorArea.SquareFeet, 5e-3);
    }

    [Fact]
    [Evidence(Basis.Independent, "sensitivities of the worked tub in the design notes (derived, three decimals of ft²; they are of the inside alone)")]
    public void Small_changes_of_the_tape_do_what_the_notes_say()
    {
        Length half = Length.FromInches(0.5);
        Length more = Length.FromInches(1);
        Numbers.Near(0.432, Change(Five with { Depth = Five.Depth + half }), 6e-4);
        Numbers.Near(0.248, Change(Five with { RimWidth = Five.RimWidth + half, FloorWidth = Five.FloorWidth + half }), 6e-4);
        Numbers.Near(0.084, Change(Five with { RimLength = Five.RimLength + half, HeadRun = Five.HeadRun + half }), 6e-4);
        Numbers.Near(-0.214, Change(Five with { RimCornerRadius = Five.RimCornerRadius + more, FloorCornerRadius = Five.FloorCornerRadius + more }), 6e-4);
        RecessedBathtubMeasurements sharp = Five with { RimCornerRadius = Length.Zero, FloorCornerRadius = Length.Zero, CoveRadius = Length.Zero };
        Numbers.Near(1910.10, new RecessedBathtub(sharp).WallArea.SquareInches, 5e-3);

        static double Change(RecessedBathtubMeasurements tape) =>
            new RecessedBathtub(tape).InteriorArea.SquareFeet - new RecessedBathtub(Five).InteriorArea.SquareFeet;
    }

    [Fact]
    [Evidence(Basis.Independent, "triangulation of the sampled loft in this suite, extrapolated from two meshes; second order in the mesh width")]
    public void Walls_and_water_match_a_mesh_that_converges()
    {
        for (int seed = 0; seed < 12; seed++)
        {
            RecessedBathtubMeasurements tape = Tapes.AnyTub(seed) with { CoveRadius = Length.Zero };
            RecessedBathtub tub = new(tape);

            // The mouth's centre lies at the origin; the floor's is moved by half the difference of the runs.
            LoftMesh.Outline floor = new(tape.FloorLength.Meters, tape.FloorWidth.Meters, tape.FloorCornerRadius.Meters, (tape.HeadRun.Meters - tape.FootRun.Meters) / 2);
            LoftMesh.Outline rim = new(tape.RimLength.Meters, tape.RimWidth.Meters, tape.RimCornerRadius.Meters, 0);
            (double Area, double Volume)[] meshes = [.. new[] { 40, 80, 160 }.Select(n => LoftMesh.Walls(floor, rim, tape.Depth.Meters, n, n))];
            Numbers.Close(meshes[2].Area + ((meshes[2].Area - meshes[1].Area) / 3), tub.WallArea.SquareMeters, 1e-8);
            Numbers.Close(meshes[2].Volume + ((meshes[2].Volume - meshes[1].Volume) / 3), tub.WaterCapacity!.Value.CubicMeters, 1e-8);
            double order = Math.Log((meshes[0].Area - meshes[1].Area) / (meshes[1].Area - meshes[2].Area), 2);
            Numbers.Near(2, order, 0.05);
        }
    }

    [Theory]
    [InlineData(20, 14, 10)]
    [InlineData(16, 16, 12)]
    [InlineData(18, 10, 9)]
    [Evidence(Basis.Independent, "closed forms of the conical frustum: π(R + r)√((R − r)² + h²) and πh(R² + Rr + r²)/3; the coved one by Pappus, profile of revolution in this test")]
    public void A_round_basin_is_a_cone(double rimRadius, double floorRadius, double depth)
    {
        RecessedBathtubMeasurements tape = Five with
        {
            RimLength = In(2 * rimRadius), RimWidth = In(2 * rimRadius), RimCornerRadius = In(rimRadius),
            FloorLength = In(2 * floorRadius), FloorWidth = In(2 * floorRadius), FloorCornerRadius = In(floorRadius),
            Depth = In(depth), HeadRun = In(rimRadius - floorRadius), FootRun = In(rimRadius - floorRadius), CoveRadius = Length.Zero,
            OverallLength = In(80), OverallWidth = In(60),
        };
        double slant = Math.Sqrt(Math.Pow(rimRadius - floorRadius, 2) + (depth * depth));
        RecessedBathtub cone = new(tape);
        Numbers.Close(Math.PI * (rimRadius + floorRadius) * slant, cone.WallArea.SquareInches);
        Numbers.Close(Math.PI * depth * ((rimRadius * rimRadius) + (rimRadius * floorRadius) + (floorRadius * floorRadius)) / 3, cone.WaterCapacity!.Value.CubicInches);

        const double Cove = 3;
        RecessedBathtub coved = new(tape with { CoveRadius = In(Cove) });
        double angle = Math.Atan2(depth, rimRadius - floorRadius);
        double tangent = Cove * Math.Tan(angle / 2);
        double flat = floorRadius - tangent;
        double arc = 2 * Math.PI * Cove * ((angle * flat) + (Cove * (1 - Math.Cos(angle))));
        double start = floorRadius + (tangent * Math.Cos(angle));
        double wall = Math.PI * (rimRadius + start) * (slant - tangent);
        Numbers.Close((Math.PI * flat * flat) + arc + wall, coved.InteriorArea.SquareInches - coved.CoveOverestimate.SquareInches);

        // The mean slope of the wall zone, by the same profile: the upper half of the arc and the cone.
        double half = angle / 2;
        double upper = 2 * Math.PI * Cove * ((half * flat) + (Cove * (Math.Cos(half) - Math.Cos(angle))));
        double mean = ((upper * 3 * angle / 4) + (wall * angle)) / (upper + wall);
        Numbers.Close(mean, coved.Zones[1].SlopeFromHorizontal.Radians, 0.01);
    }

    [Fact]
    [Evidence(Basis.Identity, "equal sections make a prism: perimeter × depth, area × depth; the notes print 1473.982 in² for this one")]
    public void Equal_sections_make_a_prism()
    {
        RecessedBathtubMeasurements tape = Five with
        {
            FloorLength = Five.RimLength, FloorWidth = Five.RimWidth, FloorCornerRadius = Five.RimCornerRadius, HeadRun = Length.Zero, FootRun = Length.Zero, CoveRadius = Length.Zero,
        };
        RecessedBathtub prism = new(tape);
        double perimeter = (2 * (53 + 23.5)) - ((8 - (2 * Math.PI)) * 6);
        double section = (53 * 23.5) - ((4 - Math.PI) * 36);
        Numbers.Close(perimeter * 13.25, prism.WallArea.SquareInches);
        Numbers.Close(section * 13.25, prism.WaterCapacity!.Value.CubicInches);
        Numbers.Close(90, prism.Zones[1].SlopeFromHorizontal.Degrees);

        // Upright walls: 0.4292 ρ and 0.2146 ρ² per length, (2 − π/2) and (1 − π/4).
        RecessedBathtub coved = new(tape with { CoveRadius = In(2) });
        Numbers.Close(-(2 - (Math.PI / 2)) * 2 * perimeter, coved.CoveCorrection.SquareInches);
        Numbers.Close(-(1 - (Math.PI / 4)) * 4 * perimeter, coved.WaterCapacity!.Value.CubicInches - prism.WaterCapacity!.Value.CubicInches, 1e-10);
    }

    [Fact]
    [Evidence(Basis.Independent, "composite 32-point rule on 16 parts of the corner, in this test: the stated error of the single rule")]
    public void One_quadrature_is_enough_for_a_corner()
    {
        foreach ((double run, double depth) in new[] { (0.0, 0.5), (7, 13.25), (40, 8), (10, 40) })
        {
            RuledBasin basin = new(100, 60, 12, 100 - (2 * run), 50, 8, depth, run, run, 0);
            double fine = 0;
            for (int part = 0; part < 16; part++)
            {
                double step = Math.PI / 32;
                fine += Quadrature.GaussLegendre(
                    angle => Math.Sqrt((depth * depth) + Math.Pow(4 + ((run - 4) * Math.Cos(angle)) + (1 * Math.Sin(angle)), 2)), part * step, (part + 1) * step);
            }

            Numbers.Close(20 * 2 * fine, basin.CornerWalls().Value, 1e-10);
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "common practice, no source: a five-foot recessed tub with deck and apron coats 25 to 35 ft² and holds 40 to 60 US gal to the rim")]
    public void A_five_foot_tub_lies_in_the_band_of_practice()
    {
        RecessedBathtub tub = new(Five);
        Assert.InRange(tub.CoatedArea.SquareFeet, 25, 35);
        Assert.InRange(tub.WaterCapacity!.Value.UsGallons, 40, 60);
    }

    [Fact]
    [Evidence(Basis.Cited, "Alliance for Water Efficiency, residential bath use (seen): a standard tub filled to the overflow holds 40 to 50 US gal")]
    public void To_the_overflow_it_holds_what_is_published() =>
        Assert.InRange(new RecessedBathtub(Five).CapacityBelowRim(In(3)).UsGallons, 40, 50);

    [Property]
    [Evidence(Basis.Identity, "areas grow with s², capacity with s³; the inside lies between its bounds; zones add up; workings hold to the kernel")]
    public void Any_tub_obeys_the_laws(int seed)
    {
        RecessedBathtub tub = new(Tapes.AnyTub(seed));
        const double Scale = 0.8;
        RecessedBathtub small = new(Tapes.AnyTub(seed, Scale));
        Numbers.Close(tub.CoatedArea.SquareMeters * Scale * Scale, small.CoatedArea.SquareMeters);
        Numbers.Close(tub.WaterCapacity!.Value.CubicMeters * Scale * Scale * Scale, small.WaterCapacity!.Value.CubicMeters);
        Numbers.Close(tub.MaskedEdge.Meters * Scale, small.MaskedEdge.Meters);
        double inside = tub.InteriorArea.SquareMeters;
        Assert.InRange(inside, tub.LeastInteriorArea.SquareMeters, tub.GreatestInteriorArea.SquareMeters);
        Assert.True(tub.CoveCorrection.SquareMeters <= 0, "a cove cuts a corner short");
        Assert.InRange(tub.CoveOverestimate.SquareMeters, 0, 0.05 * inside);
        Assert.All(tub.Zones, zone => Assert.InRange(zone.SlopeFromHorizontal.Degrees, 0, 90 + 1e-9));
        Numbers.Close(tub.CoatedArea.SquareMeters, tub.Zones.Sum(zone => zone.Area.SquareMeters));
    }

    [Property(MaxTest = 20)]
    [Evidence(Basis.Identity, "every step's formula gives the kernel's number")]
    public void Workings_hold_to_the_kernel(int seed)
    {
        RecessedBathtub tub = new(Tapes.AnyTub(seed));
        Numbers.CanBeWritten(tub.Workings());
        Numbers.CanBeWritten(tub.CapacityWorkings(Length.FromMillimeters(20)));
    }

    [Property]
    [Evidence(Basis.Identity, "rounding a corner of mouth or floor never adds capacity; less water the lower the level; the rim's is the most")]
    public void Rounding_never_adds_water(int seed)
    {
        RecessedBathtubMeasurements tape = Tapes.AnyTub(seed);
        double water = new RecessedBathtub(tape).WaterCapacity!.Value.CubicMeters;
        RecessedBathtubMeasurements sharper = tape with { RimCornerRadius = tape.RimCornerRadius * 0.5 };
        Assert.True(new RecessedBathtub(sharper).WaterCapacity!.Value.CubicMeters >= water * (1 - 1e-12), "sharper mouth");
        RecessedBathtubMeasurements sharpest = tape with { RimCornerRadius = Length.Zero, FloorCornerRadius = Length.Zero, CoveRadius = Length.Zero };
        Assert.True(new RecessedBathtub(sharpest).WaterCapacity!.Value.CubicMeters >= water * (1 - 1e-12), "sharp everywhere");
        double below = new RecessedBathtub(tape).CapacityBelowRim((tape.Depth - tape.CoveRadius) / 2).CubicMeters;
        Assert.InRange(below, 0, water);
    }

    [Property]
    [Evidence(Basis.Identity, "slope is added continuously: a thousandth of an inch of run moves the area by less than the strip it lays bare")]
    public void Slope_moves_the_area_continuously(int seed)
    {
        RecessedBathtubMeasurements tape = Tapes.AnyTub(seed);
        Length little = Length.FromInches(1e-3);
        RecessedBathtubMeasurements moved = tape with { HeadRun = tape.HeadRun + little, FloorLength = tape.FloorLength - little, FloorCornerRadius = tape.FloorCornerRadius * 0.9999, CoveRadius = tape.CoveRadius * 0.999 };
        double change = new RecessedBathtub(moved).CoatedArea.SquareInches - new RecessedBathtub(tape).CoatedArea.SquareInches;
        Assert.InRange(Math.Abs(change), 0, 1);
    }

    [Fact]
    [Evidence(Basis.Contract, "each impossible shape names the measurement that cannot be")]
    public void Refuses_what_cannot_be()
    {
        Refuses("FloorLength", Five with { FloorLength = In(54) });
        Refuses("FloorWidth", Five with { FloorWidth = In(24) });
        Refuses("RimCornerRadius", Five with { RimCornerRadius = In(12) });
        Refuses("FloorCornerRadius", Five with { FloorCornerRadius = In(10) });
        Refuses("HeadRun", Five with { HeadRun = In(6) });
        Refuses("HeadRun", Five with { FootRun = In(3) });

        // Four readings rounded to a sixteenth can miss by an eighth and no more; the tub is then as large as before, to the reading.
        Numbers.Near(new RecessedBathtub(Five).CoatedArea.SquareMeters, new RecessedBathtub(Five with { HeadRun = Five.HeadRun + In(0.12) }).CoatedArea.SquareMeters, 2e-3);
        Refuses("HeadRun", Five with { HeadRun = Five.HeadRun + In(0.13) });
        Refuses("CoveRadius", Five with { Depth = In(4.5), CoveRadius = In(5) });
        Refuses("CoveRadius", Five with { CoveRadius = In(7) });
        Refuses("RimLength", Five with { OverallLength = In(50) });
        Refuses("RimWidth", Five with { OverallWidth = In(23) });
        Refuses("OverflowDiameter", Five with { Depth = In(5), OverflowDiameter = In(3) });

        // An upright tub whose mouth is rounder than its floor would have the floor's corner outside the rim.
        Refuses("RimCornerRadius", Five with { FloorLength = In(53), FloorWidth = In(23.5), HeadRun = Length.Zero, FootRun = Length.Zero, RimCornerRadius = In(6.1), FloorCornerRadius = In(6), CoveRadius = Length.Zero });
        Refuses("DrainDiameter", Five with { FloorWidth = In(5), FloorCornerRadius = In(2.5), RimCornerRadius = In(6), CoveRadius = In(1), DrainDiameter = In(4) });
        Assert.Throws<ArgumentNullException>(() => new RecessedBathtub(null!));
        Numbers.Refuses("freeboard", () => _ = new RecessedBathtub(Five).CapacityBelowRim(In(11)));
        Numbers.Refuses("freeboard", () => _ = new RecessedBathtub(Five).CapacityBelowRim(In(-1)));

        static void Refuses(string name, RecessedBathtubMeasurements tape) => Numbers.Refuses(name, () => _ = new RecessedBathtub(tape));
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings; inches typed for centimetres are refused")]
    public void Refuses_lengths_out_of_range()
    {
        Numbers.Refuses("RimLength", () => _ = Five with { RimLength = In(135) });
        Numbers.Refuses("RimWidth", () => _ = Five with { RimWidth = In(60) });
        Numbers.Refuses("RimCornerRadius", () => _ = Five with { RimCornerRadius = In(-1) });
        Numbers.Refuses("FloorLength", () => _ = Five with { FloorLength = Length.Zero });
        Numbers.Refuses("FloorWidth", () => _ = Five with { FloorWidth = Length.Zero });
        Numbers.Refuses("FloorCornerRadius", () => _ = Five with { FloorCornerRadius = In(-1) });
        Numbers.Refuses("Depth", () => _ = Five with { Depth = In(33) });
        Numbers.Refuses("HeadRun", () => _ = Five with { HeadRun = In(-1) });
        Numbers.Refuses("FootRun", () => _ = Five with { FootRun = In(-1) });
        Numbers.Refuses("CoveRadius", () => _ = Five with { CoveRadius = In(-1) });
        Numbers.Refuses("OverallLength", () => _ = Five with { OverallLength = In(152) });
        Numbers.Refuses("OverallWidth", () => _ = Five with { OverallWidth = In(-1) });
        Numbers.Refuses("ApronHeight", () => _ = Five with { ApronHeight = In(-1) });
        Numbers.Refuses("ApronProfileFactor", () => _ = Five with { ApronProfileFactor = 0.99 });
        Numbers.Refuses("ApronProfileFactor", () => _ = Five with { ApronProfileFactor = double.NaN });
        Numbers.Refuses("DrainDiameter", () => _ = Five with { DrainDiameter = In(-1) });
        Numbers.Refuses("OverflowDiameter", () => _ = Five with { OverflowDiameter = In(-1) });
    }

    private static Length In(double inches) => Length.FromMeters(inches * Inch);
}
