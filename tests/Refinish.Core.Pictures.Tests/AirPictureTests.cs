using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Jobs;
using UnitsNet;
using Xunit;

namespace Refinish.Pictures.Tests;

public class AirPictureTests
{
    private static readonly Room Bathroom = new() { Length = Length.FromMeters(2.5), Width = Length.FromMeters(2), Height = Length.FromMeters(2.5) };

    private static AirStudy Study(double fan = 400, LimitSet? limits = null, Solvent? solvent = null)
    {
        SolventEmission coat = new()
        {
            Name = "topcoat", Start = TimeSpan.Zero, SprayTime = TimeSpan.FromMinutes(30), VolatileMass = Mass.FromGrams(200),
            Solvents = [new(solvent ?? Refinish.Coatings.Solvents.ButylAcetate, Ratio.FromPercent(100))],
                FlashFraction = Ratio.FromPercent(100), FilmTimeConstant = TimeSpan.FromMinutes(15),
        };
        Exhaust exhaust = new() { LabelFlow = VolumeFlow.FromCubicMetersPerHour(fan) };
        return limits is null ? new AirStudy(Bathroom, exhaust, [coat], TimeSpan.FromHours(8)) : new AirStudy(Bathroom, exhaust, [coat],
            TimeSpan.FromHours(8), limits);
    }

    private static SvgFile Drawn(AirStudy study, int width = 720) =>
        new(new AirPicture(study).ToSvg(new PictureStyle { Theme = PictureTheme.Light, Width = width }));

    // The curves are the long blue paths: first all vapour, then one substance.
    private static (double X, double Y)[] Curve(SvgFile file, int which) => file.Paths(Paint.Blue).Where(points => points.Length > 50)
        .ElementAt(which);

    [Theory]
    [InlineData(720)]
    [InlineData(360)]
    public void The_curve_is_the_well_mixed_box_that_is_sprayed_into_steadily(int width)
    {
        AirStudy study = Study();
        SvgFile file = Drawn(study, width);

        // All of it flashes: c = (g / q)(1 − exp(−q t / V)) while spraying, falling by exp(−q t / V) after, with q the air that counts as
        // fresh.
        double q = study.FreshAirFlow.CubicMetersPerSecond;
        double volume = 12.5;
        double g = 0.2 / 1800;
        double InAir(double seconds) => seconds <= 1800
            ? g / q * (1 - Math.Exp(-q * seconds / volume))
            : g / q * (1 - Math.Exp(-q * 1800 / volume)) * Math.Exp(-q * (seconds - 1800) / volume);

        // By volume at 25 °C and 760 mmHg: 24.45 L a mole (29 CFR 1910.1000, table Z-1, note a).
        double Ppm(double seconds) => InAir(seconds) / Refinish.Coatings.Solvents.ButylAcetate.MolarMass.KilogramsPerMole * 24.45e-3 * 1e6;
        SvgText[] hourTicks = [.. file.Texts.Where(text => text.Words is "0 h" or "1")];
        SvgText zero = hourTicks.Last(text => text.Words == "0 h");
        SvgText one = hourTicks.Where(text => text.Words == "1" && Math.Abs(text.Y - zero.Y) < 0.01).Last();
        Func<double, double> hours = SvgFile.Scale(zero.X, 0, one.X, 1);
        Func<double, double> ppm = SvgFile.LogScale(file.Text("30").Middle, 30, file.Text("300").Middle, 300);
        (double X, double Y)[] shown = [.. Curve(file, 1).Where(point => point.Y < zero.Y - 30 && hours(point.X) > 0.03)];
        Assert.True(shown.Length > 30);
        Assert.All(shown, point => Assert.Equal(1, ppm(point.Y) / Ppm(hours(point.X) * 3600), 0.04));
    }

    [Fact]
    public void The_peak_of_all_vapour_stands_where_its_number_says()
    {
        AirStudy study = Study();
        SvgFile file = Drawn(study);
        SvgText[] ticks = [.. file.Texts.Where(text => text.Words is "0 %" or "20 %")];
        Func<double, double> share = SvgFile.Scale(ticks.First(text => text.Words == "0 %").Middle, 0,
            ticks.First(text => text.Words == "20 %").Middle, 0.2);
        Assert.Equal(study.PeakFlammableFraction!.Value.DecimalFractions, share(Curve(file, 0).Min(point => point.Y)), 0.003);

        // A quarter, and a tenth, of the lower flammable limit, each named with its source.
        (double X, double Y)[][] limits = [.. file.Paths(Paint.Vermillion).Where(points => points.Length == 2
            && points[1].X - points[0].X > 200)];
        Assert.Contains(limits, line => Math.Abs(share(line[0].Y) - 0.25) < 0.003);
        Assert.Contains(limits, line => Math.Abs(share(line[0].Y) - 0.10) < 0.003);
        Assert.Contains("25 %, International Mechanical Code", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("10 %, WAC 296-304-03009", file.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_limit_of_the_substance_is_drawn_at_its_height_with_authority_and_averaging()
    {
        SvgFile file = Drawn(Study());
        Func<double, double> ppm = SvgFile.LogScale(file.Text("30").Middle, 30, file.Text("300").Middle, 300);
        double[] heights = [.. file.Paths(Paint.Vermillion).Where(points => points.Length == 2 && points[1].X - points[0].X > 200)
            .Select(points => ppm(points[0].Y))];

        // n-butyl acetate: 150 ppm over 8 h, 200 ppm over 15 min, 1700 ppm at any time (NIOSH Pocket Guide).
        foreach ((double value, string label) in (ValueTuple<double, string>[])[(150, "OSHA PEL and NIOSH REL, 8 h: 150 ppm"),
            (200, "NIOSH REL, 15 min: 200 ppm"), (1700, "NIOSH IDLH, at any time: 1700 ppm")])
        {
            Assert.Contains(heights, height => Math.Abs((height / value) - 1) < 0.02);
            Assert.Contains(label, file.AllWords, StringComparison.Ordinal);
        }

        Assert.Contains("Decided by: air sampling by an industrial hygienist", file.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void On_a_narrow_page_the_lines_carry_letters_and_the_words_stand_below()
    {
        SvgFile file = Drawn(Study(), 360);
        Assert.Contains("NIOSH REL, 15 min: 200 ppm", file.AllWords, StringComparison.Ordinal);
        Assert.True(file.Texts.Count(text => text.Words == "a") >= 2);
    }

    [Fact]
    public void A_limit_that_is_not_known_cannot_be_judged_and_is_no_pass()
    {
        SvgFile file = Drawn(Study(limits: LimitSets.Default with { Exposure = [] }));
        Assert.Contains("cannot be judged", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("limit none known", file.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void A_substance_without_a_flammable_limit_cannot_be_judged_against_one()
    {
        SvgFile file = Drawn(Study(solvent: Refinish.Coatings.Solvents.ButylAcetate with { CasNumber = "thinner", Name = "unknown thinner",
            Flammability = Refinish.Coatings.Flammability.Unknown }));
        Assert.Contains("unknown thinner", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("cannot be judged", file.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Water_and_what_is_not_volatile_are_drawn_without_a_limit_of_breathing()
    {
        Source sheet = Source.Invented("made up for the test");
        foreach (Refinish.Coatings.Solvent solvent in new[]
        {
            Refinish.Coatings.Solvents.Water,
            Refinish.Coatings.Solvents.Xylene with { Volatility = Refinish.Coatings.Volatility.NotVolatile(Temperature.FromDegreesCelsius(300), sheet) },
        })
        {
            Assert.Contains("Nothing is given off that is held against", Drawn(Study(solvent: solvent)).AllWords, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_fan_that_moves_next_to_nothing_is_drawn_with_its_cautions()
    {
        AirStudy study = Study(fan: 1);
        SvgFile file = Drawn(study);
        Assert.Contains("beyond", file.AllWords, StringComparison.Ordinal);
        Assert.All(study.Cautions.Except(Cautions.ForSpraying), caution => Assert.Contains(caution.Sentence, file.AllWords,
            StringComparison.Ordinal));
    }

    [Fact]
    public void A_plan_tells_everything_that_its_protection_programme_has_to_cover()
    {
        foreach (JobPlan plan in (JobPlan[])[Plans.One, Plans.Rooms])
        {
            SvgFile file = new(new AirPicture(plan).ToSvg());
            Assert.Contains(plan.Protection, need => need.AsksForAir);
            Assert.All(plan.Protection, need => Assert.Contains(need.Comparison.Sentence(DisplayUnits.Si), file.AllWords,
                StringComparison.Ordinal));
            Assert.All(plan.Air, room => Assert.Contains(room.FlammableAirflow!.Sentence(DisplayUnits.Si), file.AllWords,
                StringComparison.Ordinal));
            Assert.All(plan.Air, room => Assert.Contains(room.FlammableAirflow!.Sentence(DisplayUnits.Si), file.Description,
                StringComparison.Ordinal));
            Assert.Contains(Cautions.SuppliedAir.Sentence, file.AllWords, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Every_room_of_a_plan_has_its_own_part_and_names_its_operations()
    {
        SvgFile file = new(new AirPicture(Plans.Rooms).ToSvg());
        Assert.Equal(3, Plans.Rooms.Air.Count);
        Assert.All(Plans.Rooms.Air, air => Assert.Single(file.Texts, text => text.Words == air.Room.Name && text.Size == 15));
        Assert.Equal(3, file.Texts.Count(text => text.Words.StartsWith("All vapour, share", StringComparison.Ordinal)));
        Assert.Contains("white epoxy primer", file.AllWords, StringComparison.Ordinal);
        Assert.DoesNotContain("bath-1/coat", file.AllWords, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(720)]
    [InlineData(360)]
    public void What_evaporates_on_several_days_is_shaded_at_its_hours_by_the_clock(int width)
    {
        foreach (RoomAirPlan air in Plans.Rooms.Air.Concat(Plans.One.Air)
            .Where(room => room.Study!.Emissions.Select(emission => (room.Zero + emission.Start).Date).Distinct().Count() > 1))
        {
            ShadedByTheClock(air, width);
        }
    }

    private static void ShadedByTheClock(RoomAirPlan air, int width)
    {
        SvgFile file = new(new AirPicture(air).ToSvg(new PictureStyle { Theme = PictureTheme.Light, Width = width }));
        Emission[] emissions = [.. air.Study!.Emissions.OrderBy(emission => emission.Start)];
        (double X, double Y, double Width, double Height)[] shades = [.. file.Rectangles(Paint.VermillionTint).Take(emissions.Length)];

        // The scale of the first day, by its first and last whole hour; the clock of the site tells the hours of the emissions.
        SvgText first = file.Texts.First(text => text.Words.EndsWith(":00", StringComparison.Ordinal) && text.Anchor == "middle");
        SvgText second = file.Texts.Where(text => text.Anchor == "middle" && text.Y == first.Y
            && text.Words.EndsWith(":00", StringComparison.Ordinal)).ElementAt(1);
        Func<double, double> hour = SvgFile.Scale(first.X, int.Parse(first.Words[..2], CultureInfo.InvariantCulture), second.X,
            int.Parse(second.Words[..2], CultureInfo.InvariantCulture));
        DateTime day = (air.Zero + emissions[0].Start).Date;
        for (int i = 0; i < emissions.Length; i++)
        {
            DateTimeOffset start = air.Zero + emissions[i].Start;
            if (start.Date == day)
            {
                Assert.Equal(start.TimeOfDay.TotalHours, hour(shades[i].X), 0.05);
            }
            else
            {
                // Beyond the fold the picture is nearer than the clock.
                Assert.InRange(hour(shades[i].X), hour(shades[i - 1].X), (start.DateTime - day).TotalHours - 3);
            }
        }

        // The curve is told apart there: none of its lines runs through the night. The day stands under the hours of each part.
        int early = emissions.Count(emission => (air.Zero + emission.Start).Date == day);
        double end = shades.Take(early).Max(shade => shade.X + shade.Width);
        double begin = shades.Skip(early).Min(shade => shade.X);
        (double X, double Y)[][] curves = [.. file.Paths(Paint.Blue)];
        Assert.Contains(curves, points => points.Any(point => point.X <= end));
        Assert.Contains(curves, points => points.Any(point => point.X >= begin));
        Assert.DoesNotContain(curves, points => points.Any(point => point.X <= end) && points.Any(point => point.X >= begin));
        Assert.Contains("At a dotted line, the hours between are left out.", file.AllWords, StringComparison.Ordinal);
        Assert.All(emissions.Select(emission => (air.Zero + emission.Start).ToString("ddd d MMM", CultureInfo.InvariantCulture)).Distinct(),
            name => Assert.Equal(2, file.Texts.Count(text => text.Words == name)));
    }

    [Fact]
    public void One_room_names_its_operations_and_people_by_their_names()
    {
        RoomAirPlan air = Plans.Rooms.Air[0];
        SvgFile file = new(new AirPicture(air).ToSvg(new PictureStyle { Theme = PictureTheme.Light }));
        Assert.DoesNotContain("/coat/", file.AllWords, StringComparison.Ordinal);
        Assert.Contains(Plans.Rooms.Runs.First(run => run.Operation.Operation.Room == air.Room.Id).Operation.Operation.Name, file.AllWords,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_without_a_study_is_no_all_clear()
    {
        SvgFile file = new(new AirPicture(Plans.Refused).ToSvg());
        Assert.Contains("The air was not studied. That is no all-clear.", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("no all-clear", file.Description, StringComparison.Ordinal);
    }
}
