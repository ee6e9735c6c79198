using System;
using System.Linq;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Fixtures;

public class PedestalSinkTests
{
    private static PedestalSinkMeasurements Tape => Tapes.Sink();

    [Fact]
    [Evidence(Basis.Independent, "each zone by hand from its closed form; the bowl's 313.666 in² from the design notes; no published source")]
    public void Zones_follow_by_hand()
    {
        PedestalSink sink = new(Tape);
        Numbers.Near(313.666, sink.BowlArea.SquareInches, 5e-4);
        double outline = (24 * 19) - ((4 - Math.PI) * 16);
        double around = (2 * (24 + 19)) - ((8 - (2 * Math.PI)) * 4);
        Numbers.Close(outline - (Math.PI * 8.5 * 6.75) - (3 * Math.PI * 0.625 * 0.625), sink.RimArea.SquareInches);
        Numbers.Close((around - 16) * 5 * 1.1, sink.OutsideArea.SquareInches);
        Numbers.Close(Math.PI * 7 * Math.Sqrt((26 * 26) + 1) * 0.75, sink.ColumnArea.SquareInches);
        Numbers.Near(313.666 - (Math.PI * ((0.875 * 0.875) + 0.25)), sink.Zones.Single(zone => zone.Kind == FixtureZoneKind.Bowl).Area.SquareInches, 5e-4);
        Numbers.Close(16 + (Math.PI * ((8 * 0.75) + 1.75 + 1 + (3 * 1.25))), sink.MaskedEdge.Inches);
        Numbers.Near(721.0, sink.WaterCapacity!.Value.CubicInches, 0.05);
        Numbers.Close(90 - (Math.Atan2(1, 26) * 180 / Math.PI), sink.Zones.Single(zone => zone.Kind == FixtureZoneKind.Column).SlopeFromHorizontal.Degrees);
    }

    [Fact]
    [Evidence(Basis.Independent, "column of radii 4 and 3 in, height 26 in: 3.97 ft² in the design notes (derived)")]
    public void The_worked_column_comes_out()
    {
        PedestalSink sink = new(Tape with { ColumnTopDiameter = In(6), ColumnBaseDiameter = In(8), ColumnShare = Ratio.FromPercent(100) });
        Numbers.Near(3.97, sink.ColumnArea.SquareFeet, 5e-3);

        // Turned over it has the same area and leans the other way.
        PedestalSink turned = new(Tape with { ColumnTopDiameter = In(8), ColumnBaseDiameter = In(6), ColumnShare = Ratio.FromPercent(100) });
        Numbers.Close(sink.ColumnArea.SquareMeters, turned.ColumnArea.SquareMeters);
        Numbers.Close(180, sink.Zones[3].SlopeFromHorizontal.Degrees + turned.Zones[3].SlopeFromHorizontal.Degrees);
    }

    [Fact]
    [Evidence(Basis.Independent, "perimeter of the ellipse with half axes 2 and 1: 9.688448220547675 (complete elliptic integral 8 E(√3/2); the check tables of the design notes, recomputed there)")]
    public void Ellipses_have_an_exact_perimeter()
    {
        PlanOutline ellipse = PlanOutline.Ellipse(Length.FromMeters(2), Length.FromMeters(1));
        Numbers.Close(9.688448220547675 / 2, ellipse.Perimeter.Meters, 1e-14);
        Numbers.Close(Math.PI / 2, ellipse.Area.SquareMeters);
        PlanOutline circle = PlanOutline.RoundedRectangle(Length.FromMeters(1), Length.FromMeters(1), Length.FromMeters(0.5));
        Numbers.Close(PlanOutline.Ellipse(Length.FromMeters(1), Length.FromMeters(1)).Perimeter.Meters, circle.Perimeter.Meters);
        Numbers.Close(Math.PI / 4, circle.Area.SquareMeters);
        Numbers.CanBeWritten(ellipse.Workings());
        Numbers.CanBeWritten(circle.Workings());
    }

    [Fact]
    [Evidence(Basis.Identity, "a bowl that fills an elliptic outline leaves no rim; without skirt and column only the bowl is left and the whole outline is taped")]
    public void A_bare_bowl_has_one_zone()
    {
        PedestalSink bare = new(Tape with
        {
            Outline = PlanOutline.Ellipse(In(17), In(13.5)), SkirtHeight = Length.Zero, ColumnHeight = Length.Zero, FaucetHoles = 0,
            WallContact = Length.Zero, DrainDiameter = Length.Zero, OverflowDiameter = Length.Zero,
        });
        FixtureZone zone = Assert.Single(bare.Zones);
        Assert.Equal(FixtureZoneKind.Bowl, zone.Kind);
        Numbers.Close(bare.BowlArea.SquareMeters, bare.CoatedArea.SquareMeters);
        Numbers.Close(PlanOutline.Ellipse(In(17), In(13.5)).Perimeter.Meters, bare.MaskedEdge.Meters);
        Numbers.CanBeWritten(bare.Workings());
        Assert.StartsWith("sink 431.8 mm × 342.9 mm: ", bare.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Identity, "capacity falls from ⅔πabc to nothing with the level; half the depth holds 5/16 of it")]
    public void Less_water_below_the_rim()
    {
        PedestalSink sink = new(Tape);
        double whole = sink.WaterCapacity!.Value.CubicMeters;
        Numbers.Close(whole, sink.CapacityBelowRim(Length.Zero).CubicMeters);
        Numbers.Close(whole * 5 / 16, sink.CapacityBelowRim(In(3)).CubicMeters);
        Numbers.Near(0, sink.CapacityBelowRim(In(6)).CubicMeters, 1e-18);
        Numbers.CanBeWritten(sink.CapacityWorkings(In(3)));
        Numbers.CanBeWritten(sink.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings and rules between two lengths")]
    public void Refuses_what_cannot_be()
    {
        Refuses("BowlLength", Tape with { BowlLength = In(24.5) });
        Refuses("BowlWidth", Tape with { BowlWidth = In(19.5) });
        Refuses("WallContact", Tape with { WallContact = In(90) });
        Refuses("DrainDiameter", Tape with { BowlWidth = In(8), DrainDiameter = In(5) });
        Refuses("OverflowDiameter", Tape with { BowlDepth = In(2), OverflowDiameter = In(3) });
        Refuses("FaucetHoleDiameter", Tape with { Outline = PlanOutline.Ellipse(In(17), In(13.5)) });
        Numbers.Refuses("BowlDepth", () => _ = Tape with { BowlDepth = In(20) });
        Numbers.Refuses("SkirtHeight", () => _ = Tape with { SkirtHeight = In(-1) });
        Numbers.Refuses("SkirtProfileFactor", () => _ = Tape with { SkirtProfileFactor = 0.5 });
        Numbers.Refuses("ColumnTopDiameter", () => _ = Tape with { ColumnTopDiameter = Length.Zero });
        Numbers.Refuses("ColumnBaseDiameter", () => _ = Tape with { ColumnBaseDiameter = Length.Zero });
        Numbers.Refuses("ColumnHeight", () => _ = Tape with { ColumnHeight = In(50) });
        Numbers.Refuses("ColumnShare", () => _ = Tape with { ColumnShare = Ratio.FromPercent(101) });
        Numbers.Refuses("FaucetHoles", () => _ = Tape with { FaucetHoles = 9 });
        Numbers.Refuses("cornerRadius", () => _ = PlanOutline.RoundedRectangle(In(24), In(19), In(10)));
        Numbers.Refuses("length", () => _ = PlanOutline.Ellipse(In(1), In(19)));
        Numbers.Refuses("freeboard", () => _ = new PedestalSink(Tape).CapacityBelowRim(In(7)));
        Assert.Throws<ArgumentNullException>(() => _ = Tape with { Outline = null! });
        Assert.Throws<ArgumentNullException>(() => new PedestalSink(null!));

        static void Refuses(string name, PedestalSinkMeasurements tape) => Numbers.Refuses(name, () => _ = new PedestalSink(tape));
    }

    private static Length In(double inches) => Length.FromInches(inches);
}
