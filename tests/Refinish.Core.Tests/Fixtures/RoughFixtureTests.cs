using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Fixtures;

public class RoughFixtureTests
{
    private static readonly Source Told = Source.Invented("told for the test");

    private static readonly Dictionary<string, Length[]> Special = new()
    {
        ["recessedBathtub"] = [In(60), In(30)],
        ["freestandingTub"] = [In(55), In(25)],
        ["freestandingTubAllRound"] = [In(55), In(25)],
        ["ovalTub"] = [In(66), In(36)],
        ["cornerTub"] = [In(60), In(60)],
        ["pedestalSink"] = [In(24), In(19)],
        ["dropInSink"] = [In(20), In(17)],
        ["undermountSink"] = [In(17), In(13.5)],
        ["vesselSink"] = [In(16), In(16)],
        ["showerPan"] = [In(36), In(39)],
        ["countertop"] = [In(96)],
        ["cornerCountertop"] = [In(96), In(72)],
        ["flatPanel"] = [In(72), In(24)],
        ["vanityTop"] = [In(49), In(22)],
        ["tiledSurround"] = [In(60), In(60)],
    };

    // What is said of a kind: the lengths above, or those of its ordinary example by the same names.
    private static Length[] Said(RoughKind kind)
    {
        if (!Special.TryGetValue(kind.Id, out Length[]? lengths))
        {
            object tape = kind.FixtureType.GetProperty("Measurements")!.GetValue(
                Tapes.Of(FixtureKind.All.First(one => one.RoughKinds.Contains(kind))))!;
            lengths = [.. kind.Needed.Select(name => tape.GetType().GetProperty(name)!.GetValue(tape)!).Cast<Length>()];
        }

        return lengths;
    }

    public static TheoryData<string> Kinds => [.. RoughKind.Kinds.Select(kind => kind.Id)];

    [Fact]
    [Evidence(Basis.Contract, "every fixture of the library has a kind that can be quoted roughly, from at most three readings; every point names a source that claims no more than common practice")]
    public void Every_fixture_has_a_kind()
    {
        string[] fixtures = [.. typeof(IFixture).Assembly.GetExportedTypes().Where(type => typeof(IFixture).IsAssignableFrom(type)
            && !type.IsInterface && type != typeof(RoughFixture) && type != typeof(ComposedFixture) && type != typeof(ZonedFixture)).Select(type => type.Name)];
        string[] covered = [.. RoughKind.Kinds.Select(kind => kind.FixtureType.Name)];
        Assert.Empty(fixtures.Except(covered));
        Assert.Equal(RoughKind.Kinds.Count, RoughKind.Kinds.Select(kind => kind.Id).Distinct().Count());
        foreach (RoughKind kind in RoughKind.Kinds)
        {
            Assert.InRange(kind.Needed.Count, 1, 3);
            Assert.Equal(kind.Readings.Count, kind.Needed.Count + kind.Assumptions.Count);
            Assert.Equal(Said(kind).Length, kind.Needed.Count);
            Assert.All(kind.Assumptions, assumption => Assert.Contains(assumption.Source.Kind, new[] { SourceKind.Invented,
                SourceKind.CommonPractice, SourceKind.Published }));
            Assert.IsType(kind.FixtureType, Exactly(kind).Likely);
            Assert.Same(kind, RoughKind.Of(kind.Id));
        }

        Assert.Contains("recessedBathtub", Assert.Throws<ArgumentException>(() => RoughKind.Of("bath")).Message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    [Evidence(Basis.Independent, "a thousand fixtures of each kind, their readings drawn here from the printed bands, a third of them at the ends: none has less or more area than the range says")]
    public void The_range_holds_every_fixture_within_the_bands(string id)
    {
        RoughKind kind = RoughKind.Of(id);
        AreaRange range = Exactly(kind).AreaRange;
        Random random = new(15);
        int made = 0;
        double least = double.MaxValue;
        double greatest = 0;
        for (int i = 0; i < 1000; i++)
        {
            if (Drawn(kind, random) is { } readings)
            {
                made++;
                double area = RoughFixture.Of(kind, readings).CoatedArea.SquareMeters;
                least = Math.Min(least, area);
                greatest = Math.Max(greatest, area);
                Assert.InRange(area, range.Least.SquareMeters - 1e-9, range.Greatest.SquareMeters + 1e-9);
            }
        }

        Assert.True(made > 500, made + " of 1000 can be");
        Assert.InRange(range.Likely.SquareMeters, range.Least.SquareMeters, range.Greatest.SquareMeters);

        // Nor is the range idle: what was drawn fills a third of it.
        Assert.True(greatest - least > (range.Greatest - range.Least).SquareMeters / 3, "drawn " + least + " to " + greatest
            + " of " + range);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    [Evidence(Basis.Identity, "readings taken one by one in any order, each within its band and without error, never widen the range; when all are taken it is one area")]
    public void Taking_readings_narrows_the_range(string id)
    {
        RoughKind kind = RoughKind.Of(id);
        Random random = new(3);
        for (int run = 0; run < 2; run++)
        {
            TakenReading[]? readings = null;
            while (readings is null)
            {
                readings = Drawn(kind, random);
            }

            RoughFixture rough = Exactly(kind);
            AreaRange before = rough.AreaRange;
            foreach (TakenReading reading in readings.Where(one => !kind.Needed.Contains(one.Name)).OrderBy(_ => random.Next()))
            {
                rough = rough.With(reading);
                AreaRange after = rough.AreaRange;
                Assert.True(after.Least.SquareMeters >= before.Least.SquareMeters - 1e-6, reading.Name + ": " + before + " to " + after);
                Assert.True(after.Greatest.SquareMeters <= before.Greatest.SquareMeters + 1e-6, reading.Name + ": " + before
                    + " to " + after);
                before = after;
            }

            Assert.True(rough.IsMeasured);
            Assert.Empty(before.Readings);
            Assert.Null(before.Next);
            Assert.Equal(rough.CoatedArea.SquareMeters, before.Least.SquareMeters);
            Assert.Equal(rough.CoatedArea.SquareMeters, before.Greatest.SquareMeters);
        }
    }

    [Fact]
    [Evidence(Basis.Identity, "once every reading is taken the area is that of the ordinary fixture to the last bit, and so are edges and capacity")]
    public void A_measured_fixture_is_the_ordinary_one()
    {
        Same("recessedBathtub", new RecessedBathtub(Tapes.FiveFootTub() with { TilingFlangeHeight = In(1), FloorShift = In(-0.5),
            ApronProfileFactor = 1.05 }), Tapes.FiveFootTub() with { TilingFlangeHeight = In(1), FloorShift = In(-0.5),
            ApronProfileFactor = 1.05 });
        Same("freestandingTubAllRound", new FreestandingTub(Tapes.Freestanding()), Tapes.Freestanding());
        Same("freestandingTub", new FreestandingTub(Tapes.Freestanding() with { OutsideIsCoated = false, UndersideIsCoated = false }),
            Tapes.Freestanding());
        Same("ovalTub", new OvalTub(Tapes.Oval()), Tapes.Oval());
        Same("cornerTub", new CornerTub(Tapes.Corner() with { FrontBow = In(5) }), Tapes.Corner() with { FrontBow = In(5) });
        Same("pedestalSink", new PedestalSink(Tapes.Sink()), Tapes.Sink(), ("OutlineLength", 24), ("OutlineWidth", 19),
            ("OutlineCornerRadius", 4));
        Same("dropInSink", new CounterSink(Tapes.DropIn()), Tapes.DropIn(), ("OutlineLength", 20), ("OutlineWidth", 17),
            ("OutlineCornerRadius", 3));
        Same("undermountSink", new CounterSink(Tapes.Undermount()), Tapes.Undermount());
        Same("vesselSink", new CounterSink(Tapes.Vessel() with { Shape = BowlShape.HalfEllipsoid }), Tapes.Vessel());
        Same("showerPan", new ShowerPan(Tapes.Pan() with { ThresholdWidth = In(4) }), Tapes.Pan() with { ThresholdWidth = In(4) },
            ("OverallLength", 36), ("OverallWidth", 39));
        Same("countertop", new Countertop(Tapes.LCounter() with { Runs = [Tapes.LCounter().Runs[0]], LeftEndIsOpen = false }),
            Tapes.LCounter(), ("Run1Length", 96), ("Run1Depth", 25.5), ("CutOutLength", 32), ("CutOutDepth", 21));
        Same("cornerCountertop", new Countertop(Tapes.LCounter() with { LeftEndIsOpen = false }), Tapes.LCounter(), ("Run1Length", 96),
            ("Run2Length", 72), ("Run1Depth", 25.5), ("Run2Depth", 25.5), ("CutOutLength", 32), ("CutOutDepth", 21));
        Same("vanityTop", new FlatPanel(Tapes.Counter() with { Width = In(22) }), Tapes.Counter() with { Width = In(22) }, ("CutOutLength",
            32), ("CutOutDepth", 21));
        Same("flatPanel", new FlatPanel(Tapes.Counter() with { CutOuts = [] }), Tapes.Counter(), ("CutOutLength", 0), ("CutOutDepth", 21));
        Same("tiledSurround", new TiledSurround(Tapes.Alcove() with { Openings = [new(In(24), In(36))] }), Tapes.Alcove(),
            ("LeftWallLength", 30), ("BackWallLength", 60), ("RightWallLength", 30), ("TileHeight", 60), ("WindowLength", 24),
            ("WindowHeight", 36));

        static void Same<T>(string id, IFixture ordinary, T tape, params (string Name, double Inches)[] others)
        {
            RoughKind kind = RoughKind.Of(id);
            RoughFixture rough = RoughFixture.Of(kind, kind.Readings.Select(name => others.Any(other => other.Name == name)
                ? new TakenReading(name, In(others.First(other => other.Name == name).Inches), RoughFixture.TapePlusMinus)
                : typeof(T).GetProperty(name, BindingFlags.Public | BindingFlags.Instance)!.GetValue(tape) switch
                {
                    Length length => new TakenReading(name, length, RoughFixture.TapePlusMinus),
                    Angle angle => new TakenReading(name, angle),
                    Ratio ratio => new TakenReading(name, ratio.DecimalFractions),
                    int count => new TakenReading(name, count),
                    object number => new TakenReading(name, (double)number),
                    null => throw new InvalidOperationException(name + " is missing"),
                }));
            Assert.True(rough.IsMeasured);
            Assert.Equal(ordinary.CoatedArea.SquareMeters, rough.CoatedArea.SquareMeters);
            Assert.Equal(ordinary.MaskedEdge.Meters, rough.MaskedEdge.Meters);
            Assert.Equal(ordinary.WaterCapacity?.CubicMeters, rough.WaterCapacity?.CubicMeters);
            Assert.Equal(ordinary.Description, rough.Description);
            Assert.Equal(ordinary.Zones.Select(zone => zone.Area.SquareMeters), rough.Zones.Select(zone => zone.Area.SquareMeters));
            Assert.Empty(rough.Assumptions);

            // Only the ± of the tape is left, which is small beside what was assumed.
            AreaRange open = Exactly(kind).AreaRange;
            AreaRange left = rough.AreaRange;
            Assert.True((left.Greatest - left.Least).SquareMeters < 0.6 * (open.Greatest - open.Least).SquareMeters,
                left + " beside " + open);
            Assert.All(left.Readings, reading => Assert.True(reading.IsTaken));
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "a plain panel by hand: top 2 m × 0.6 m; edge between 0 and 4 m long, most likely 2, and 15 to 40 mm high, most likely 25")]
    public void A_panel_by_hand()
    {
        RoughFixture panel = Exactly(RoughKind.Of("flatPanel"), Length.FromMeters(2), Length.FromMeters(0.6));
        AreaRange range = panel.AreaRange;
        Numbers.Close(1.2, range.Least.SquareMeters);
        Numbers.Close(1.2 + (2 * 0.025), range.Likely.SquareMeters);
        Numbers.Close(1.2 + (4 * 0.04), range.Greatest.SquareMeters);
        OpenReading edge = range.Readings[0];
        Assert.Same(edge, range.Next);
        Assert.Equal("ExposedEdge", edge.Name);
        Numbers.Close(0.16 - (2 * 0.025), edge.Narrowing.SquareMeters);
        Numbers.Close(4, edge.Greatest);
        Numbers.Close(1.2, edge.AreaAtLeast.SquareMeters);
        Numbers.Close(1.2 + (4 * 0.025), edge.AreaAtGreatest.SquareMeters);
        OpenReading height = range.Readings[1];
        Assert.Equal("EdgeHeight", height.Name);
        Numbers.Close(0.16 - (4 * 0.025), height.Narrowing.SquareMeters);

        // The edge alone: the top is sure.
        Numbers.Close(0.16, panel.AreaRangeOf([FixtureZoneKind.Edge]).Greatest.SquareMeters);
        Assert.Null(panel.AreaRangeOf([FixtureZoneKind.Top]).Next);

        // Taken: 2.5 m of edge, 30 mm high.
        RoughFixture taken = panel.With(new TakenReading("ExposedEdge", Length.FromMeters(2.5),
            Length.Zero)).With(new TakenReading("EdgeHeight", Length.FromMillimeters(30), Length.FromMillimeters(2)));
        Numbers.Close(1.2 + (2.5 * 0.028), taken.AreaRange.Least.SquareMeters);
        Numbers.Close(1.2 + (2.5 * 0.032), taken.AreaRange.Greatest.SquareMeters);
    }

    [Fact]
    [Evidence(Basis.Independent, "inside sizes of a 60 × 30 in tub as a dimension guide for homeowners prints them: mouth 55 × 24 in, floor 45 × 22 in, fronts 14 to 17 in high; and 25 to 35 ft² by common practice")]
    public void Bands_hold_the_usual_five_foot_tub()
    {
        RoughFixture said = RoughFixture.RecessedBathtub(In(60), In(30));
        foreach (double front in new[] { 14.0, 17 })
        {
            RoughFixture told = said.With("RimLength", In(55)).With("RimWidth", In(24)).With("FloorLength", In(45)).With("FloorWidth",
                In(22)).With("ApronHeight", In(front));
            Assert.Empty(told.UnusualReadings);
        }

        Assert.InRange(said.CoatedArea.SquareFeet, 25, 35);
        Assert.InRange(new RecessedBathtub(Tapes.FiveFootTub()).CoatedArea.SquareFeet, said.AreaRange.Least.SquareFeet,
            said.AreaRange.Greatest.SquareFeet);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: what was taken tells of what it rests on: a floor of 45 in cuts the mouth to where 45 in is 70 to 92 % of it; three parts of a sum give the fourth")]
    public void What_was_taken_cuts_other_bands()
    {
        RoughFixture said = Exactly(RoughKind.Of("recessedBathtub"));
        OpenReading mouth = said.With(new TakenReading("FloorLength", In(49), Length.Zero)).AreaRange.Readings.Single(reading =>
            reading.Name == "RimLength");
        Numbers.Close(49 / 0.92, Length.FromMeters(mouth.Least).Inches);
        RoughFixture summed = said.With("FloorLength", In(44)).With("HeadRun", In(7)).With("FootRun", In(2));
        RecessedBathtub tub = Assert.IsType<RecessedBathtub>(summed.Likely);
        Numbers.Close(53, tub.Measurements.RimLength.Inches);
        Numbers.Close(7, ((RecessedBathtub)said.With("RimLength", In(53)).With("FloorLength", In(44)).With("FootRun",
            In(2)).Likely).Measurements.HeadRun.Inches);
        Assert.DoesNotContain(summed.AreaRange.Readings, reading => reading.Name == "RimLength");
    }

    [Fact]
    [Evidence(Basis.Contract, "units do not matter; equal readings make equal fixtures; workings hold and name what was assumed")]
    public void Values_are_equal_and_show_their_work()
    {
        foreach (RoughKind kind in RoughKind.Kinds)
        {
            RoughFixture inches = Exactly(kind);
            RoughFixture metres = Exactly(kind, [.. Said(kind).Select(length => length.ToUnit(UnitsNet.Units.LengthUnit.Meter))]);
            Numbers.Close(inches.CoatedArea.SquareMeters, metres.CoatedArea.SquareMeters, 1e-12);
            Numbers.Close(inches.AreaRange.Greatest.SquareMeters, metres.AreaRange.Greatest.SquareMeters, 1e-12);
            Assert.Equal(inches, Exactly(kind));
            Assert.Equal(inches.GetHashCode(), Exactly(kind).GetHashCode());
            Assert.NotEqual(inches, Exactly(kind).Assuming(kind.Assumptions[0]));
            Numbers.CanBeWritten(inches.Workings());
            Assert.Contains(kind.Assumptions[0].Reading + ", most likely", inches.Workings().ToPlainText(DisplayUnits.Si),
                StringComparison.Ordinal);
            Assert.Contains("from " + kind.Needed.Count + " of ", inches.ToString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "an assumption of one's own replaces the kind's; its likely value is the fixture's")]
    public void Assumptions_can_be_ones_own()
    {
        RoughFixture said = Exactly(RoughKind.Of("countertop"));
        RoughFixture deep = said.Assuming(ReadingAssumption.Usual("Run1Depth", In(29), In(30), In(31), Told));
        Assert.Equal(30, ((Countertop)deep.Likely).Measurements.Runs[0].Depth.Inches, 9);
        Assert.Equal("Run1Depth", Assert.Single(deep.OwnAssumptions).Reading);
        Assert.Contains(deep.AreaRange.Readings, reading => reading.Name == "Run1Depth" && reading.Source == Told);
    }

    [Fact]
    [Evidence(Basis.Contract, "a reading outside its band is a doubt and no error; what the proportions are not made for is refused by name")]
    public void What_is_unusual_is_said_and_what_cannot_be_is_refused()
    {
        RoughFixture said = RoughFixture.RecessedBathtub(In(60), In(30));
        LimitComparison doubt = Assert.Single(said.With("Depth", In(24)).UnusualReadings);
        Assert.Equal("Depth", doubt.Subject);
        Assert.Empty(said.UnusualReadings);
        Numbers.Refuses("OverallLength", () => RoughFixture.RecessedBathtub(Length.FromCentimeters(60), In(30)));
        Numbers.Refuses("OverallLength", () => RoughFixture.RecessedBathtub(Length.FromFeet(60), In(30)));
        Numbers.Refuses("OverallWidth", () => said.With("OverallWidth", Length.FromMeters(3)));
        Numbers.Refuses("FloorWidth", () => said.With("RimWidth", In(22)).With("FloorWidth", In(24)));
        Numbers.Refuses("Depth", () => said.With("Depth", Length.FromMeters(1)));
        Numbers.Refuses("FaucetHoles", () => RoughFixture.PedestalSink(In(24), In(19)).With("FaucetHoles", 2.5));
        Numbers.Refuses("plusMinus", () => _ = new TakenReading("Depth", In(13), Length.FromMeters(-1)));
        Numbers.Refuses("likely", () => ReadingAssumption.Usual("Depth", In(13), In(12), In(14), Told));
        Numbers.Refuses("mounting", () => RoughFixture.CounterSink((SinkMounting)9, In(20), In(17)));
        Assert.Contains("RimLength", Assert.Throws<ArgumentException>(() => said.With("Girth", In(20))).Message, StringComparison.Ordinal);
        Assert.Contains("length", Assert.Throws<ArgumentException>(() => said.With("Depth", 13.0)).Message, StringComparison.Ordinal);
        Assert.Contains("twice", Assert.Throws<ArgumentException>(() => RoughFixture.Of(said.Kind, said.Taken.Concat(said.Taken))).Message,
            StringComparison.Ordinal);
        Assert.Contains("OverallWidth", Assert.Throws<ArgumentException>(() => RoughFixture.Of(said.Kind, [said.Taken[0]])).Message,
            StringComparison.Ordinal);
        Assert.Contains("comes after", Assert.Throws<ArgumentException>(() => said.Assuming(ReadingAssumption.Share("RimLength", "Depth",
            1, 2, 3, Told))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => RoughFixture.Of(null!, []));
        Assert.Throws<ArgumentNullException>(() => said.With((TakenReading)null!));
    }

    [Fact]
    [Evidence(Basis.Contract, "no draw of open readings ends in an exception, however far the ± of contradicting readings goes, and the drawn areas lie within the range")]
    public void Drawing_never_fails()
    {
        RoughFixture tight = Exactly(RoughKind.Of("recessedBathtub")).With(new TakenReading("RimWidth", In(22),
            In(2))).With(new TakenReading("FloorWidth", In(21.5), In(2)))
            .With(new TakenReading("FootRun", In(0.5), In(1)));
        (string Reading, double Least, double Likely, double Greatest)[] spreads = [.. tight.Spreads()];
        Random random = new(1);
        for (int i = 0; i < 500; i++)
        {
            IFixture drawn = tight.Drawn([.. spreads.Select(spread =>
                spread.Least + ((spread.Greatest - spread.Least) * random.NextDouble()))], 0);
            Assert.InRange(drawn.CoatedArea.SquareMeters, tight.AreaRange.Least.SquareMeters - 1e-9, tight.AreaRange.Greatest.SquareMeters
                + 1e-9);
        }
    }

    private static Length In(double inches) => Length.FromInches(inches);

    // The needed readings without error, so that only the assumptions are open.
    private static RoughFixture Exactly(RoughKind kind, params Length[] lengths) =>
        RoughFixture.Of(kind, kind.Needed.Zip(lengths.Length == 0 ? Said(kind) : lengths, (name, length) => new TakenReading(name,
            length, Length.Zero)));

    // Readings drawn from the bands as they are printed; null when they make no fixture. A third lie at an end.
    private static TakenReading[]? Drawn(RoughKind kind, Random random)
    {
        Dictionary<string, double> values = [];
        for (int i = 0; i < kind.Needed.Count; i++)
        {
            values[kind.Needed[i]] = Said(kind)[i].Meters;
        }

        List<TakenReading> readings = [.. Exactly(kind).Taken];
        foreach (ReadingAssumption assumption in kind.Assumptions)
        {
            double share = random.Next(3) == 0 ? random.Next(2) : random.NextDouble();
            double point = assumption.Least + (share * (assumption.Greatest - assumption.Least));
            double of = assumption.Of is null ? 0 : values[assumption.Of];
            double less = assumption.Less is null ? 0 : values[assumption.Less];
            double value = assumption.Reading == "FootRun" ? values["RimLength"] - values["FloorLength"] - values["HeadRun"]
                : assumption.Form switch { AssumptionForm.Share => point * (of - less), AssumptionForm.Beyond => of + point, _ => point };
            values[assumption.Reading] = value;
            readings.Add(assumption.Form == AssumptionForm.Usual && assumption.Measure.Equals(Measure.Number)
                ? new TakenReading(assumption.Reading, value)
                : assumption.Measure.Equals(Measure.Angle) ? new TakenReading(assumption.Reading, Angle.FromRadians(value))
                : new TakenReading(assumption.Reading, Length.FromMeters(value), Length.Zero));
        }

        try
        {
            _ = RoughFixture.Of(kind, readings);
            return [.. readings];
        }
        catch (ArgumentOutOfRangeException)
        {
            return null;
        }
    }
}
