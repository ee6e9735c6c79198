using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;
using Xunit.Abstractions;

namespace Refinish.Tests.Fixtures;

public class TapeDoubtTests(ITestOutputHelper output)
{
    // What a number read in one unit becomes when it is taken in another; by the definitions of inch and foot.
    private static readonly (string Slip, double Factor)[] Slips =
    [
        ("inch typed as cm", 1 / 2.54), ("cm typed as inch", 2.54), ("mm typed as cm", 10), ("cm typed as mm", 0.1),
            ("ft typed as m", 1 / 0.3048), ("m typed as ft", 0.3048),
        ("inch typed as mm", 1 / 25.4),
    ];

    [Fact]
    [Evidence(Basis.Independent, "the sizes of Tables/nominal_sizes.csv, each row with its standing: no fixture as it is sold or built is in doubt")]
    public void Nominal_sizes_are_in_no_doubt()
    {
        Table.Row[] rows = [.. Table.Read("nominal_sizes.csv").Rows];
        Assert.True(rows.Length >= 60);
        Assert.Equal(13, rows.Select(row => row["kind"]).Distinct().Count());
        Assert.All(rows, row =>
        {
            Assert.Contains(row["standing"], new[] { "published", "second-hand", "derived", "practice" });
            TapeDoubts look = new(row["kind"], NominalFixtures.Of(row["kind"], row.Number("along"), row.Number("across"),
                row.Number("height")));
            Assert.True(look.Doubts.Count == 0, row["source"] + ": " + look);
        });
        Assert.All(Tapes.Every(), fixture => Assert.Equal("x: no doubts", new TapeDoubts("x", fixture).ToString()));
    }

    [Fact]
    [Evidence(Basis.Independent, "each slip is put into each reading by the definitions of the units: whatever leaves its band is told and named; what the tape refuses is told too")]
    public void A_slip_in_one_reading_is_caught_where_the_value_leaves_the_band()
    {
        // Floors, hundredths: how much of what was put in is refused or told; found once, and held.
        Dictionary<string, double> floors = new()
        {
            ["RecessedBathtub"] = 0.75, ["FreestandingTub"] = 0.7, ["OvalTub"] = 0.85, ["CornerTub"] = 0.85, ["PedestalSink"] = 0.75,
                ["CounterSink"] = 0.85,
            ["ShowerPan"] = 0.7, ["FlatPanel"] = 0.8, ["Countertop"] = 0.75, ["TiledSurround"] = 0.68,
        };
        int explained = 0;
        int told = 0;
        foreach (IGrouping<string, OrdinaryReading> kind in OrdinaryReading.All.GroupBy(reading => reading.Kind))
        {
            int all = 0;
            int caught = 0;
            List<string> unseen = [];
            foreach (OrdinaryReading reading in kind)
            {
                foreach ((string slip, double factor) in Slips)
                {
                    all++;
                    Length typed = reading.Value * factor;
                    if (Made(reading, typed) is not IFixture fixture)
                    {
                        caught++;
                        continue;
                    }

                    IReadOnlyList<Doubt> doubts = new TapeDoubts("x", fixture).Doubts;
                    Doubt? own = doubts.FirstOrDefault(doubt => doubt.Kind == DoubtKind.Reading && doubt.Reading == reading.Path);
                    bool within = FixtureKind.ReadingsOf(fixture).Where(usual => usual.Name == Name(reading.Path)).Any(usual =>
                        typed >= usual.Least && typed <= usual.Greatest);
                    Assert.True(within || doubts.Count > 0, kind.Key + "." + reading.Path + " " + slip + " is not told");
                    if (doubts.Count > 0)
                    {
                        caught++;
                        told += own is null ? 0 : 1;
                        explained += own?.Slips.Any(meant => Math.Abs((meant.Meant.Meters / reading.Value.Meters) - 1) < 1e-3) == true ? 1
                            : 0;
                    }
                    else
                    {
                        unseen.Add(reading.Path + " " + slip);
                    }
                }
            }

            double share = (double)caught / all;
            output.WriteLine(string.Format(CultureInfo.InvariantCulture, "{0}: {1:P0} of {2}; cannot be seen: {3}", kind.Key, share, all,
                string.Join(", ", unseen)));
            Assert.True(share >= (floors.TryGetValue(kind.Key, out double floor) ? floor : 0.7), kind.Key + " " + share.ToString("P0", CultureInfo.InvariantCulture) + ": "
                + string.Join(", ", unseen));
        }

        output.WriteLine(string.Format(CultureInfo.InvariantCulture, "the true value is among the explanations of {0} of {1}", explained,
            told));
        Assert.True(explained >= 0.8 * told, explained + " of " + told);
    }

    [Fact]
    [Evidence(Basis.Independent, "a surround of 30, 60, 30 in by 60 in whose numbers are taken as centimetres: 60 cm, and 152.4 cm was meant (60 × 2.54)")]
    public void All_lengths_off_by_one_factor_are_one_doubt()
    {
        Doubt doubt = Assert.Single(new TapeDoubts("surround", new TiledSurround(Tapes.Alcove(1 / 2.54))).Doubts);
        Assert.Equal("surround/unit", doubt.Id);
        Assert.Equal(DoubtKind.Unit, doubt.Kind);
        Assert.True(doubt.IsUnitMixUp);
        LikelySlip slip = doubt.Slips[0];
        Assert.Equal(ReadingSlip.InchesAsCentimetres, slip.Slip);
        Numbers.Close(2.54 * doubt.Value!.Value, slip.Meant.Meters);
        Assert.StartsWith("the lengths look like inches typed as centimetres: ", doubt.Sentence(DisplayUnits.Si), StringComparison.Ordinal);

        // Walls in the wrong unit, tile and joints in the right one.
        TiledWallMeasurements mixed = Tapes.Alcove(1 / 2.54) with
        {
            TileLength = Length.FromMillimeters(108), TileWidth = Length.FromMillimeters(108), JointWidth = Length.FromMillimeters(3),
                JointDepth = Length.FromMillimeters(1.5),
        };
        Doubt walls = Assert.Single(new TapeDoubts("surround", new TiledSurround(mixed)).Doubts);
        Assert.Equal("surround/unit", walls.Id);
        Assert.Equal("height of wall 1 is 600 mm; usual is 914.4 mm to 2845 mm, and 1524 mm would be meant",
            After(walls.Sentence(DisplayUnits.Si)));
        Assert.Equal("height of wall 1 is 23.62 in; usual is 36 in to 112 in, and 60 in would be meant",
            After(walls.Sentence(DisplayUnits.UsCustomary)));

        int told = 0;
        foreach ((double scale, ReadingSlip expected) in new[] { (1 / 2.54, ReadingSlip.InchesAsCentimetres),
            (2.54, ReadingSlip.CentimetresAsInches), (1 / 0.3048, ReadingSlip.FeetAsMetres) })
        {
            foreach (IFixture fixture in Every(scale))
            {
                IReadOnlyList<Doubt> doubts = new TapeDoubts("x", fixture).Doubts;
                Assert.True(doubts.Count(one => one.Kind == DoubtKind.Unit) <= 1);
                Doubt first = Assert.Single(doubts, one => one.Kind is DoubtKind.Unit or DoubtKind.Reading
                    && one.Slips[0].Slip == expected);
                told += first.Kind == DoubtKind.Unit ? 1 : 0;
            }
        }

        output.WriteLine(told.ToString(CultureInfo.InvariantCulture) + " fixtures told as a whole");
        Assert.True(told >= 15, told.ToString(CultureInfo.InvariantCulture));

        static string After(string sentence) => sentence.Substring(sentence.IndexOf(": ", StringComparison.Ordinal) + 2);
    }

    [Fact]
    [Evidence(Basis.Independent, "digits worked by hand: 52.5 in is 25.5 swapped, or 52.5 cm; 660 in is 60 in with a digit twice; a counter 99 in deep is by no digits")]
    public void Digits_that_slipped_are_named_only_where_they_fit()
    {
        // 52.5 cm would be an ordinary depth too, but the cut-out of 21 in would not fit into 20.67 in.
        Doubt swapped = Assert.Single(Counter(52.5).Doubts);
        Assert.Equal("counter/reading/Width", swapped.Id);
        Assert.Equal(
            "width is 52.5 in; usual is 12 in to 31 in; perhaps 25.5 in (two digits swapped) was meant",
                swapped.Sentence(DisplayUnits.UsCustomary));
        Assert.False(swapped.IsUnitMixUp);
        FlatPanelMeasurements plain = Tapes.Counter() with { Width = Length.FromInches(52.5), CutOuts = [] };
        Doubt either = Assert.Single(new TapeDoubts("counter", new FlatPanel(plain)).Doubts);
        Assert.Equal(
            "width is 52.5 in; usual is 12 in to 31 in; perhaps 20.67 in (centimetres typed as inches) or 25.5 in (two digits swapped) was meant",
            either.Sentence(DisplayUnits.UsCustomary));
        Assert.StartsWith("counter: width is ", either.ToString(), StringComparison.Ordinal);
        Assert.EndsWith(" was meant. Measure it again before a price is told.", either.ToString(), StringComparison.Ordinal);
        Assert.True(either.IsUnitMixUp);

        // 44 in with a digit twice would be 4 in, which is no column. A wall of 660 in was 60 in with a digit twice, 66 in, or 55 in.
        Doubt tall = Assert.Single(new TapeDoubts("sink", new PedestalSink(Tapes.Sink() with { ColumnHeight = Length.FromInches(44) })).Doubts);
        Assert.DoesNotContain(tall.Slips, slip => slip.Slip == ReadingSlip.DigitDoubled);
        TiledWallMeasurements twice = Tapes.Alcove() with { Walls = [Wall(30, 60), Wall(660, 60), Wall(30, 60)] };
        Doubt wall = Assert.Single(new TapeDoubts("walls", new TiledSurround(twice)).Doubts);
        Assert.Equal("walls/reading/Walls[1].Length", wall.Id);
        Assert.Equal(
            "66 in (millimetres typed as centimetres, or a digit too many); 55 in (inches typed as feet); 60 in (a digit typed twice)",
            string.Join("; ", wall.Slips.Select(slip => slip.Describe(DisplayUnits.UsCustomary))));
        TiledWallMeasurements high = Tapes.Alcove() with { Walls = [Wall(90, 155)] };
        Assert.Contains(
            Assert.Single(new TapeDoubts("walls", new TiledSurround(high)).Doubts).Slips,
            slip => slip.Slip == ReadingSlip.CentimetresAsInches && Math.Abs(slip.Meant.Meters - 1.55) < 1e-9);
        Assert.DoesNotContain(
            Assert.Single(Counter(99).Doubts, doubt => doubt.Kind == DoubtKind.Reading).Slips, slip => slip.Slip == ReadingSlip.DigitsSwapped);

        static WallRun Wall(double length, double height) => new(Length.FromInches(length), Length.FromInches(height));

        static TapeDoubts Counter(double width) => new("counter", new FlatPanel(Tapes.Counter() with { Width = Length.FromInches(width) }));
    }

    [Fact]
    [Evidence(Basis.Contract, "how readings go together: a cove of half the depth, cut-outs of more than 40 % of the top, a mouth as long as the tub, a floor below the room's")]
    public void Readings_that_do_not_go_together_are_told()
    {
        Assert.Equal("tub/proportion/CoveRadius/Depth", Of(Tapes.FiveFootTub() with { CoveRadius = Length.FromInches(4.9) }));
        Assert.Equal("tub/proportion/Depth/ApronHeight", Of(Tapes.FiveFootTub() with { Depth = Length.FromInches(17) }));
        Assert.Equal("tub/proportion/OverallLength/RimLength", Of(Tapes.FiveFootTub() with { OverallLength = Length.FromInches(53) }));
        Assert.Equal("tub/proportion/OverallWidth/RimWidth", Of(Tapes.FiveFootTub() with { OverallWidth = Length.FromInches(44) }));
        Doubt holes = Assert.Single(new TapeDoubts("top", new FlatPanel(Tapes.Counter() with { CutOuts = [new(Length.FromInches(50),
            Length.FromInches(20))] })).Doubts);
        Numbers.Close(0.4 * 96 * 25.5, Area.FromSquareMeters(holes.Greatest!.Value).SquareInches);

        static string Of(RecessedBathtubMeasurements tape) => Assert.Single(new TapeDoubts("tub", new RecessedBathtub(tape)).Doubts).Id;
    }

    [Fact]
    [Evidence(Basis.Contract, "a label is compared within 15 % either way, and refused where it cannot be a capacity; an empty name and no fixture are refused")]
    public void A_label_is_held_against_the_tape()
    {
        RecessedBathtub tub = new(Tapes.FiveFootTub());
        Volume overflow = tub.CapacityBelowRim(Length.FromInches(3));
        Assert.Empty(Labelled(42).Doubts);
        Doubt doubt = Assert.Single(Labelled(60).Doubts);
        Assert.Equal("tub/capacity", doubt.Id);
        Numbers.Close(0.85 * 60, Volume.FromCubicMeters(doubt.Least!.Value).UsGallons);
        Assert.Single(Labelled(36).Doubts);
        Doubt dry = Assert.Single(new TapeDoubts("walls", new TiledSurround(Tapes.Alcove()), Volume.FromLiters(10)).Doubts);
        Assert.Equal("a capacity on the label of what holds no water is unusual", dry.Sentence(DisplayUnits.Si));
        Numbers.Refuses("labelledCapacity", () => _ = new TapeDoubts("tub", tub, Volume.Zero));
        Numbers.Refuses("measuredCapacity", () => _ = new TapeDoubts("tub", tub, Volume.FromLiters(200), Volume.FromCubicMeters(11)));
        Assert.Throws<ArgumentNullException>(() => new TapeDoubts("tub", null!));
        Assert.Throws<ArgumentException>(() => new TapeDoubts(" ", tub));
        Assert.Throws<ArgumentNullException>(() => FixtureKind.ReadingsOf(null!));

        TapeDoubts Labelled(double gallons) => new("tub", tub, Volume.FromUsGallons(gallons), overflow);
    }

    private static IEnumerable<IFixture> Every(double scale)
    {
        Func<IFixture>[] makes =
        [
            () => new RecessedBathtub(Tapes.FiveFootTub(scale)), () => new FreestandingTub(Tapes.Freestanding(scale)), () =>
                new OvalTub(Tapes.Oval(scale)),
            () => new CornerTub(Tapes.Corner(scale)), () => new PedestalSink(Tapes.Sink(scale)), () =>
                new CounterSink(Tapes.DropIn(scale)), () => new CounterSink(Tapes.Vessel(scale)),
            () => new ShowerPan(Tapes.Pan(scale)), () => new FlatPanel(Tapes.Counter(scale)), () => new Countertop(Tapes.LCounter(scale)),
                () => new TiledSurround(Tapes.Alcove(scale)),
            () => new TiledSurround(Tapes.RecessedAlcove(scale)),
        ];
        foreach (Func<IFixture> make in makes)
        {
            IFixture? made = null;
            try
            {
                made = make();
            }
            catch (ArgumentOutOfRangeException)
            {
                // The tape itself refuses it.
            }

            if (made is not null)
            {
                yield return made;
            }
        }
    }

    private static IFixture? Made(OrdinaryReading reading, Length typed)
    {
        try
        {
            return reading.With(typed);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    private static string Name(string path)
    {
        int open = path.IndexOf('[');
        return open < 0 ? path : path.Remove(open, path.IndexOf(']') + 1 - open);
    }
}
