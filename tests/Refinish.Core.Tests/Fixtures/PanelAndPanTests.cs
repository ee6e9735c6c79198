using System;
using System.Linq;
using FsCheck.Xunit;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Fixtures;

public class PanelAndPanTests
{
    private static FlatPanelMeasurements Counter => Tapes.Counter();

    private static ShowerPanMeasurements Pan => Tapes.Pan();

    [Fact]
    [Evidence(Basis.Independent, "by hand, the width from the wall: 96 × 24.75 − 32 × 21, 96 × 1.5, 96 × 4.75 in²; no published source")]
    public void A_counter_follows_by_hand()
    {
        FlatPanel counter = new(Counter);
        Numbers.Close((96 * 24.75) - (32 * 21), counter.TopArea.SquareInches);
        Numbers.Close(144, counter.EdgeArea.SquareInches);
        Numbers.Close(456, counter.BacksplashArea.SquareInches);
        Numbers.Close(16, counter.CoatedArea.SquareFeet);
        FlatPanel thin = new(Counter with { BacksplashThickness = Length.Zero });
        Numbers.Close(thin.CoatedArea.SquareInches, counter.CoatedArea.SquareInches, 1e-12);
        Numbers.Close((2 * 121.5) + 8 + 106, counter.MaskedEdge.Inches);
        Numbers.Close(90 * 4 / 4.75, counter.Zones[2].SlopeFromHorizontal.Degrees);
        Assert.Null(counter.WaterCapacity);
        Numbers.CanBeWritten(counter.Workings());

        FlatPanel plain = new(Counter with { ExposedEdge = Length.Zero, BacksplashLength = Length.Zero, CutOuts = [] });
        Assert.Equal(FixtureZoneKind.Top, Assert.Single(plain.Zones).Kind);
        Numbers.Close(17, plain.CoatedArea.SquareFeet);
        Numbers.CanBeWritten(plain.Workings());
        Assert.Equal("panel 2438.4 mm × 647.7 mm: 1.5794 m² coated", plain.ToString());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand; floor 7.563 and walls 2.063 ft² also stand in the design notes, whose curb counts the inside face over the ledges and whose ledge takes the curb's own strip off a 36 × 36 in outline")]
    public void A_pan_follows_by_hand()
    {
        ShowerPan pan = new(Pan with { TextureFactor = 1, DrainDiameter = Length.Zero });
        Numbers.Near(7.563, pan.FloorArea.SquareFeet, 5.1e-4);
        Numbers.Near(2.063, pan.WallArea.SquareFeet, 5.1e-4);
        Numbers.Close((33 * 3) + (36 * 9.5), pan.CurbArea.SquareInches);
        Numbers.Close((36 * 1.5) + (2 * 1.5 * 33), pan.LedgeArea.SquareInches);
        Numbers.Close(33 * 33 * 3, pan.WaterCapacity!.Value.CubicInches);
        Numbers.Close((2 * 36) + (2 * (33 + 1.5 + 4.5 + 5)), pan.MaskedEdge.Inches);

        // From above, floor, ledge and curb top are the whole outline.
        Numbers.Close(36 * (33 + 1.5 + 4.5), pan.FloorArea.SquareInches + pan.LedgeArea.SquareInches + (36 * 4.5));
        ShowerPan textured = new(Pan);
        Numbers.Close((33 * 33 * 1.05) - Math.PI, textured.FloorArea.SquareInches);
        Numbers.CanBeWritten(textured.Workings());
        ShowerPan open = new(Pan with { CurbInsideHeight = Length.Zero, CurbTopWidth = Length.Zero, CurbOutsideHeight = Length.Zero });
        Assert.Null(open.WaterCapacity);
        Assert.DoesNotContain(open.Zones, zone => zone.Kind == FixtureZoneKind.Curb);
        Numbers.CanBeWritten(open.Workings());
    }

    [Property]
    [Evidence(Basis.Identity, "cut-outs that fit never make the top negative; more of them never add")]
    public void Cut_outs_only_take_off(int seed)
    {
        Random random = new(seed);
        RectangularOpening first = new(In(48 * (1 - random.NextDouble())), In(24.75 * (1 - random.NextDouble())));
        FlatPanel one = new(Counter with { CutOuts = [first] });
        FlatPanel two = new(Counter with { CutOuts = [first, first] });
        Assert.InRange(two.TopArea.SquareMeters, -1e-15, one.TopArea.SquareMeters);
        Numbers.CanBeWritten(two.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings and rules between two lengths")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("ExposedEdge", () => _ = new FlatPanel(Counter with { ExposedEdge = In(244) }));
        Numbers.Refuses("BacksplashLength", () => _ = new FlatPanel(Counter with { BacksplashLength = In(244) }));
        Numbers.Refuses("CutOuts", () => _ = new FlatPanel(Counter with { CutOuts = [new(In(32), In(26))] }));
        Numbers.Refuses("CutOuts", () => _ = new FlatPanel(Counter with { CutOuts = [.. Enumerable.Repeat(new RectangularOpening(In(48), In(25)), 3)] }));
        Numbers.Refuses("Length", () => _ = Counter with { Length = In(960) });
        Numbers.Refuses("Width", () => _ = Counter with { Width = Length.Zero });
        Numbers.Refuses("EdgeHeight", () => _ = Counter with { EdgeHeight = In(-1) });
        Numbers.Refuses("BacksplashHeight", () => _ = Counter with { BacksplashHeight = In(-1) });
        Numbers.Refuses("BacksplashThickness", () => _ = Counter with { BacksplashThickness = In(-1) });
        Numbers.Refuses("BacksplashThickness", () => _ = new FlatPanel(Counter with { Width = In(5), CutOuts = [], BacksplashThickness = In(3) }));
        Numbers.Refuses("CutOuts", () => _ = new FlatPanel(Counter with { CutOuts = [new(In(32), In(25))] }));
        Numbers.Refuses("FloorLength", () => _ = Pan with { FloorLength = Length.Zero });
        Numbers.Refuses("FloorWidth", () => _ = Pan with { FloorWidth = Length.Zero });
        Numbers.Refuses("WallHeight", () => _ = Pan with { WallHeight = In(-1) });
        Numbers.Refuses("LedgeWidth", () => _ = Pan with { LedgeWidth = In(-1) });
        Numbers.Refuses("CurbInsideHeight", () => _ = Pan with { CurbInsideHeight = In(-1) });
        Numbers.Refuses("CurbTopWidth", () => _ = Pan with { CurbTopWidth = In(-1) });
        Numbers.Refuses("CurbOutsideHeight", () => _ = Pan with { CurbOutsideHeight = In(-1) });
        Numbers.Refuses("TextureFactor", () => _ = Pan with { TextureFactor = 2 });
        Numbers.Refuses("DrainDiameter", () => _ = Pan with { DrainDiameter = In(9) });
        Assert.Throws<ArgumentNullException>(() => new FlatPanel(null!));
        Assert.Throws<ArgumentNullException>(() => new ShowerPan(null!));
        Assert.Throws<ArgumentNullException>(() => _ = Counter with { CutOuts = null! });
    }

    private static Length In(double inches) => Length.FromInches(inches);
}
