using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Coatings;
using Refinish.Colours;
using Refinish.Fixtures;
using Refinish.Inspection;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Inspection;

public class InspectionTests
{
    private static readonly DateTimeOffset When = new(2026, 3, 5, 9, 30, 0, TimeSpan.FromHours(-5));

    [Theory]
    [InlineData(0, AdhesionGrade.Grade5B, 0)]
    [InlineData(3, AdhesionGrade.Grade4B, 1)]
    [InlineData(5, AdhesionGrade.Grade3B, 1)]
    [InlineData(10, AdhesionGrade.Grade3B, 2)]
    [InlineData(15, AdhesionGrade.Grade2B, 2)]
    [InlineData(20, AdhesionGrade.Grade2B, 3)]
    [InlineData(35, AdhesionGrade.Grade1B, 3)]
    [InlineData(50, AdhesionGrade.Grade1B, 4)]
    [InlineData(65, AdhesionGrade.Grade1B, 4)]
    [InlineData(66, AdhesionGrade.Grade0B, 5)]
    [Evidence(Basis.Cited, "ASTM D3359 B as printed by a university (5B none, 4B less than 5 %, 3B 5 to 15, 2B 15 to 35, 1B 35 to 65, 0B more than 65 %) and ISO 2409 as printed by instrument makers (1 not greater than 5 %, 2 up to 15, 3 up to 35, 4 up to 65)")]
    public void Cross_cuts_are_graded_by_both_standards(double removed, AdhesionGrade grade, int isoClass)
    {
        CrossCut test = new(Ratio.FromPercent(removed));
        Assert.Equal(grade, test.Grade);
        Assert.Equal(isoClass, test.IsoClass);
    }

    [Property]
    [Evidence(Basis.Identity, "more removed is never a better grade; inside the bands ISO class and ASTM digit add up to five")]
    public void Grades_fall_with_the_area(byte a, byte b)
    {
        CrossCut less = new(Ratio.FromDecimalFractions(Math.Min(a, b) / 255.0));
        CrossCut more = new(Ratio.FromDecimalFractions(Math.Max(a, b) / 255.0));
        Assert.True(more.Grade <= less.Grade);
        Assert.True(more.IsoClass >= less.IsoClass);
        double percent = less.Removed.Percent;
        if (percent is not (5 or 15 or 35))
        {
            Assert.Equal(5, (int)less.Grade + less.IsoClass);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "spacings by film, from memory; comparison on the digits; text")]
    public void Cross_cuts_are_compared()
    {
        CrossCut test = new(Ratio.FromPercent(3), Length.FromMicrometers(80));
        Assert.Equal("3 % removed: 4B (ASTM D3359 B), class 1 (ISO 2409)", test.ToString());
        Assert.Equal(2, test.AstmSpacing!.Value.Millimeters, 12);
        Assert.Equal(2, test.IsoSpacing(false)!.Value.Millimeters, 12);
        Assert.Equal(1, new CrossCut(Ratio.Zero, Length.FromMicrometers(50)).AstmSpacing!.Value.Millimeters, 12);
        Assert.Equal(2, new CrossCut(Ratio.Zero, Length.FromMicrometers(50)).IsoSpacing(true)!.Value.Millimeters, 12);
        Assert.Null(new CrossCut(Ratio.Zero, Length.FromMicrometers(126)).AstmSpacing);
        Assert.Null(new CrossCut(Ratio.Zero).AstmSpacing);
        Assert.Equal(ComparisonOutcome.Within, test.Against(AdhesionGrade.Grade4B).Outcome);
        Assert.Equal(ComparisonOutcome.Beyond, test.Against(AdhesionGrade.Grade5B).Outcome);
        Numbers.Refuses("removed", () => _ = new CrossCut(Ratio.FromPercent(101)));
    }

    [Fact]
    [Evidence(Basis.Contract, "order of the pencils, ASTM D3363 and ISO 15184 from memory: 14 grades from 6B to 6H among 20 from 9B to 9H")]
    public void Pencils_have_their_order()
    {
        string[] order = [.. Enum.GetValues<PencilGrade>().Order().Select(PencilTest.InWords)];
        Assert.Equal("9B 8B 7B 6B 5B 4B 3B 2B B HB F H 2H 3H 4H 5H 6H 7H 8H 9H", string.Join(" ", order));
        Assert.Equal(14, (int)PencilGrade.Grade6H - (int)PencilGrade.Grade6B + 1);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand from the definition: 3H gouges, 2H scratches, H leaves nothing: gouge hardness 2H, scratch hardness H")]
    public void The_hardest_pencil_that_leaves_the_film_whole()
    {
        PencilTest test = new([new(PencilGrade.GradeH, PencilMark.None), new(PencilGrade.Grade3H, PencilMark.Gouge), new(PencilGrade.Grade2H, PencilMark.Scratch)]);
        Assert.Equal(PencilGrade.Grade2H, test.GougeHardness);
        Assert.Equal(PencilGrade.GradeH, test.ScratchHardness);
        Assert.Equal("gouge 2H, scratch H", test.ToString());
        Assert.Equal(ComparisonOutcome.Within, test.Against(PencilGrade.Grade2H).Outcome);
        Assert.Equal(ComparisonOutcome.Beyond, test.Against(PencilGrade.Grade3H).Outcome);
        PencilTest open = new([new(PencilGrade.GradeF, PencilMark.None)]);
        Assert.True(open.IsOpenUpwards);
        Assert.Equal(ComparisonOutcome.Within, open.Against(PencilGrade.GradeHB).Outcome);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, open.Against(PencilGrade.GradeH).Outcome);
        PencilTest gap = new([new(PencilGrade.GradeB, PencilMark.None), new(PencilGrade.Grade2H, PencilMark.Gouge)]);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, gap.Against(PencilGrade.GradeF).Outcome);
        Assert.Equal(ComparisonOutcome.Beyond, gap.Against(PencilGrade.Grade2H).Outcome);
        PencilTest soft = new([new(PencilGrade.GradeB, PencilMark.Gouge)]);
        Assert.Null(soft.GougeHardness);
        Assert.Equal(ComparisonOutcome.Beyond, soft.Against(PencilGrade.GradeB).Outcome);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, soft.Against(PencilGrade.Grade2B).Outcome);
        PencilTest torn = new([new(PencilGrade.GradeB, PencilMark.Gouge), new(PencilGrade.GradeH, PencilMark.None)]);
        Assert.False(torn.IsConsistent);
        Assert.Null(torn.GougeHardness);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, torn.Against(PencilGrade.Grade2B).Outcome);
        Assert.Throws<ArgumentException>(() => new PencilTest([new(PencilGrade.GradeB, PencilMark.None), new(PencilGrade.GradeB, PencilMark.Gouge)]));
        Assert.Throws<ArgumentException>(() => new PencilTest([]));
    }

    [Fact]
    [Evidence(Basis.Contract, "gloss that was not read at the wanted angle is not judged; a colour beyond its tolerance says which way")]
    public void Gloss_and_colour_are_compared()
    {
        Source who = Source.Supplied("job specification");
        Assert.Equal(ComparisonOutcome.Within, new GlossAcceptance(new GlossReading { At60 = 92, At20 = 84 }, GlossAngle.Twenty, 80, null, who).Comparisons.Single().Outcome);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, new GlossAcceptance(new GlossReading { At60 = 92 }, GlossAngle.Twenty, 80, null, who).Comparisons.Single().Outcome);
        Assert.Equal(2, new GlossAcceptance(new GlossReading { At60 = 20 }, GlossAngle.Sixty, 10, 25, who).Comparisons.Count);
        Numbers.Refuses("most", () => _ = new GlossAcceptance(new GlossReading { At60 = 20 }, GlossAngle.Sixty, 10, 5, who));
        ColourDifference yellow = new(new CieLab(94, -0.6, 1.8), new CieLab(93.8, -0.6, 4.8));
        Assert.Equal(ComparisonOutcome.Beyond, ColourAcceptance.FixtureToFixture(yellow).Comparison.Outcome);
        Assert.EndsWith("the sample is yellower", ColourAcceptance.TouchUp(yellow).ToString(), StringComparison.Ordinal);
        ColourDifference same = new(yellow.Reference, yellow.Reference);
        Assert.Equal("ΔE00 0, 1 allowed: the sample is the same", ColourAcceptance.TouchUp(same).ToString());
    }

    [Fact]
    [Evidence(Basis.Cited, "ANSI A326.3-2021 product use classes (second-hand, three summaries agree): 0.42 dry, 0.42, 0.50, 0.55 and 0.55 wet")]
    public void Friction_is_compared_with_a_floor_class_and_cautioned()
    {
        Assert.Equal([0.42, 0.42, 0.50, 0.55, 0.55], SlipClasses.HardFloors.Select(one => one.Least));
        SlipComparison floor = new([0.47, 0.44, 0.49, 0.46], SlipClasses.HardFloors[1], true, "digital tribometer");
        Numbers.Close(0.465, floor.Mean);
        Assert.Equal(ComparisonOutcome.Within, floor.Comparison.Outcome);
        Assert.Equal(ComparisonOutcome.Beyond, new SlipComparison(floor.Readings, SlipClasses.HardFloors[2], true, "digital tribometer").Comparison.Outcome);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, new SlipComparison(floor.Readings, SlipClasses.HardFloors[0], true, "digital tribometer").Comparison.Outcome);
        Assert.Contains(floor.Cautions, caution => caution.Hazard == Hazard.Slip && caution.Sentence.Contains("not a test of a bathtub", StringComparison.Ordinal));
        Assert.Equal("0.465 wet by digital tribometer; 0.42 for ANSI A326.3 Interior, Wet floors; not a bathtub test", floor.ToString());
        Numbers.CanBeWritten(floor.Workings());
        Numbers.Refuses("readings", () => _ = new SlipComparison([2.1], SlipClasses.HardFloors[1], true, "x"));
    }

    [Fact]
    [Evidence(Basis.Cited, "DIN 51097, least angles 12°, 18° (showers) and 24°, as quoted from GUV-Information of 1999; HSE bands of pendulum values, 36 and more (second-hand, two testers)")]
    public void Other_scales_are_compared_in_their_own_unit()
    {
        Assert.Equal([12, 18, 24], SlipClasses.Barefoot.Select(one => one.Least));
        Assert.All(SlipClasses.Barefoot, one => Assert.True(one.IsBarefoot && one.IsWet));
        SlipComparison ramp = new([17.2, 17.9], SlipClasses.Barefoot[1], true, "ramp, soap solution, two people");
        Assert.Equal(ComparisonOutcome.Beyond, ramp.Comparison.Outcome);
        Assert.Contains("17.55°; limit at least 18°", ramp.Comparison.ToString(), StringComparison.Ordinal);
        Assert.Contains("DIN 51097 group B (Germany", ramp.Comparison.Whose!, StringComparison.Ordinal);
        SlipComparison swing = new([35, 38], SlipClasses.PendulumLow, true, "pendulum, soft slider, water");
        Assert.Equal(36, SlipClasses.PendulumLow.Least);
        Assert.Equal(ComparisonOutcome.Within, swing.Comparison.Outcome);
        Assert.All([ramp, swing], one => Numbers.CanBeWritten(one.Workings()));
        Numbers.Refuses("readings", () => _ = new SlipComparison([46], SlipClasses.Barefoot[0], true, "x"));
        Numbers.Refuses("least", () => _ = new SlipClass("x", SlipScale.RampAngle, 50, true, true, "x", "x", Source.Invented("test")));
        Numbers.Refuses("least", () => _ = new SlipClass("x", SlipScale.DynamicFriction, 0, true, true, "x", "x", Source.Invented("test")));
        Numbers.Refuses("scale", () => _ = new SlipClass("x", (SlipScale)7, 1, true, true, "x", "x", Source.Invented("test")));
    }

    [Fact]
    [Evidence(Basis.Contract, "the record in full, every line; one test beyond its limit decides")]
    public void A_record_prints_all_it_holds()
    {
        FilmSpecification range = new(Length.FromMils(4), Length.FromMils(6.5), Source.Supplied("job specification"));
        InspectionRecord record = new()
        {
            Subject = "bathtub, upper floor",
            At = When,
            Inspector = "A. Finisher",
            Gauge = new GaugeFit(GaugeKind.Magnetic, FixtureMaterial.EnamelledSteel),
            Film = new FilmJudgement(FilmAcceptanceRules.SpotsWithinAFifth, range, new double[] { 4.8, 5.3, 4.2, 5.0, 6.0 }.Select(mil => Length.FromMils(mil))),
            Adhesion = new CrossCut(Ratio.FromPercent(3)),
            LeastAdhesion = AdhesionGrade.Grade4B,
            Pencil = new PencilTest([new(PencilGrade.GradeH, PencilMark.None), new(PencilGrade.Grade2H, PencilMark.Gouge)]),
            Gloss = new GlossAcceptance(new GlossReading { At60 = 92, At20 = 78 }, GlossAngle.Twenty, 80, null, Source.Supplied("job specification")),
            Slip = new SlipComparison([0.47], SlipClasses.HardFloors[1], true, "digital tribometer"),
            Notes = ["one nib at the drain, polished out"],
        };
        Assert.Equal(ComparisonOutcome.Beyond, record.Outcome);
        Assert.Equal(
            "Inspection: bathtub, upper floor\n"
            + "At: 2026-03-05 09:30 -05:00, by A. Finisher\n"
            + "Outcome: beyond a limit\n"
            + "Gauge: magnetic gauge on enamelled steel: usable, with a base reading\n"
            + "Film, rule: spots within a fifth (80/120) (SSPC-PA 2 (2004 and later), spots; 80 % and 120 % second-hand, from training material)\n"
            + "Film, values: 5, mean 5.06 mil, standard deviation 0.662 mil\n"
            + "Adhesion: 3 % removed: 4B (ASTM D3359 B), class 1 (ISO 2409)\n"
            + "Pencil hardness: gouge H, scratch H\n"
            + "Gloss: 78 GU at 20°\n"
            + "Slip test: 0.47 wet by digital tribometer; 0.42 for ANSI A326.3 Interior, Wet floors; not a bathtub test\n"
            + "- mean film against the least: 5.06 mil; limit at least 4 mil; 1.06 mil within\n"
            + "- mean film against the most: 5.06 mil; limit at most 6.5 mil; 1.44 mil within\n"
            + "- thinnest spot: 4.2 mil; limit at least 3.2 mil; 1 mil within\n"
            + "- thickest spot: 6 mil; limit at most 7.8 mil; 1.8 mil within\n"
            + "- cross-cut adhesion grade, ASTM D3359 B: 4; limit at least 4; 0 within\n"
            + "- gloss at 20° against the least: 78 GU; limit at least 80 GU; 2 GU beyond; polish, or look for dry spray and moisture in the coat\n"
            + "- dynamic friction against ANSI A326.3 Interior, Wet (floors): 0.47; limit at least 0.42; 0.05 within\n"
            + "Note: one nib at the drain, polished out\n"
            + string.Concat(record.Cautions.Select(caution => "Caution: " + caution + "\n")),
            record.ToText(DisplayUnits.UsCustomary));
        Assert.Equal(2, record.Cautions.Count);
        Assert.Equal(record, record with { Inspector = "A. Finisher" });
        Assert.Equal("bathtub, upper floor: beyond a limit", record.ToString());
    }

    [Fact]
    [Evidence(Basis.Contract, "nothing compared, or a gauge that cannot measure there, is never a pass")]
    public void An_empty_record_is_no_pass()
    {
        InspectionRecord empty = new() { Subject = "sink", At = When, Inspector = "A. Finisher" };
        Assert.Equal(ComparisonOutcome.CannotBeJudged, empty.Outcome);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, (empty with { Adhesion = new CrossCut(Ratio.Zero) }).Outcome);
        InspectionRecord cut = empty with { Adhesion = new CrossCut(Ratio.Zero), LeastAdhesion = AdhesionGrade.Grade4B };
        Assert.Equal(ComparisonOutcome.Within, cut.Outcome);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, (cut with { Gauge = new GaugeFit(GaugeKind.Magnetic, FixtureMaterial.Acrylic) }).Outcome);
        Assert.Throws<ArgumentException>(() => empty with { Notes = [" "] });
    }
}
