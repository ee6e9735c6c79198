using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Scheduling;
using Xunit;

namespace Refinish.Pictures.Tests;

public class TimelinePictureTests
{
    private static readonly DateTimeOffset Start = new(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1));
    private static readonly WorkingHours Day = new(TimeSpan.FromHours(8), TimeSpan.FromHours(17));

    [Theory]
    [InlineData(720)]
    [InlineData(360)]
    public void Bars_lie_where_the_hours_over_them_say(int width)
    {
        // By hand: 2.5 h from eight, half an hour of drying, then 1.25 h.
        JobSchedule schedule = new(
            Start,
            Day,
            [new("mask", TimeSpan.FromHours(2.5)), new("spray", TimeSpan.FromHours(1.25))],
            [new("mask", "spray", TimeSpan.FromHours(0.5), TimeSpan.FromHours(4), "window")]);
        SvgFile file = new(new TimelinePicture(schedule).ToSvg(new PictureStyle { Theme = PictureTheme.Light, Width = width }));
        Func<double, double> hour = Hours(file);
        (double X, double Y, double Width, double Height)[] bars = [.. file.Rectangles(stroke: Paint.Blue).Where(bar => bar.Width != 24)];
        Assert.Equal(2, bars.Length);
        Assert.Equal(8, hour(bars[0].X), 0.02);
        Assert.Equal(10.5, hour(bars[0].X + bars[0].Width), 0.02);
        Assert.Equal(11, hour(bars[1].X), 0.02);
        Assert.Equal(12.25, hour(bars[1].X + bars[1].Width), 0.02);

        // The window is open from 11 to 14.5.
        (double X, double Y, double Width, double Height) window = file.Rectangles(Paint.GreenTint).First(bar => bar.Width != 24);
        Assert.Equal(11, hour(window.X), 0.02);
        Assert.Equal(14.5, hour(window.X + window.Width), 0.02);
        Assert.Contains("08:00–10:30 mask", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("11:00–12:15 spray", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("window: 30 min to 4 h", file.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_step_of_the_plan_has_a_bar_at_its_own_hours()
    {
        SvgFile file = new(new TimelinePicture(Plans.Whole).ToSvg(new PictureStyle { Theme = PictureTheme.Light }));
        Func<double, double> hour = Hours(file);
        (double X, double Y, double Width, double Height)[] bars =
        [
            .. file.Elements("rect").Where(element => (string?)element.Attribute("stroke") is Paint.Blue or Paint.Vermillion && (string?)element.Attribute("fill") == "none")
                .Select(element => (SvgText.Number(element, "x"), SvgText.Number(element, "y"), SvgText.Number(element, "width"), SvgText.Number(element, "height")))
                .Where(bar => bar.Item3 != 24),
        ];
        WorkPiece[] pieces = [.. Plans.Whole.Schedule!.Steps.SelectMany(step => step.Pieces)];
        Assert.Equal(pieces.Length, bars.Length);
        for (int i = 0; i < pieces.Length; i++)
        {
            Assert.Equal(pieces[i].Start.TimeOfDay.TotalHours, hour(bars[i].X), 0.03);
            Assert.Equal(pieces[i].End.TimeOfDay.TotalHours, hour(bars[i].X + bars[i].Width), 0.03);
        }
    }

    [Fact]
    public void The_strip_has_the_first_water_at_its_place_among_the_days()
    {
        SvgFile file = new(new TimelinePicture(Plans.Whole).ToSvg(new PictureStyle { Theme = PictureTheme.Light }));

        // Read off the plan's text: water from Sunday 7 March, 10:01, six days and 10.02 hours after Monday's midnight.
        Assert.Contains("No water before Sun 7 Mar, 10:01.", file.AllWords, StringComparison.Ordinal);
        SvgText monday = file.Text("Mon 1 Mar");
        SvgText saturday = file.Text("Sat 6 Mar");
        Func<double, double> days = SvgFile.Scale(monday.X, 0, saturday.X, 5);
        double water = file.Paths(Paint.Green).First(points => Math.Abs(points[0].X - points[1].X) < 0.01 && Math.Abs(points[0].Y - points[1].Y) > 30)[0].X;
        Assert.Equal(6 + (10 + (1 / 60.0)) / 24, days(water + 3), 0.01);
    }

    [Fact]
    public void Nights_cut_a_step_into_pieces_that_are_told_as_such()
    {
        JobSchedule schedule = new(Start, Day, [new ScheduleStep("mask", TimeSpan.FromHours(12), attended: true, interruptible: true)], []);
        SvgFile file = new(new TimelinePicture(schedule).ToSvg());
        Assert.Contains("08:00–17:00 mask", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("08:00–11:00 mask, continued", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("Tue 2 Mar 2027", file.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void Days_without_work_are_told()
    {
        Assert.Contains("Tue 2 Mar: nobody on site.", new SvgFile(new TimelinePicture(Plans.Whole).ToSvg()).AllWords, StringComparison.Ordinal);
        JobSchedule weekend = new(Start, Day, [new("a", TimeSpan.FromHours(1)), new("b", TimeSpan.FromHours(1))], [new("a", "b", TimeSpan.FromDays(5), null, "cure")]);
        Assert.Contains("Tue 2 Mar to Fri 5 Mar: nobody on site.", new SvgFile(new TimelinePicture(weekend).ToSvg()).AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wait_that_runs_by_itself_and_a_job_of_weeks_are_drawn()
    {
        JobSchedule schedule = new(
            Start,
            Day,
            [new("a", TimeSpan.FromHours(1)), new("dry", TimeSpan.FromHours(30), attended: false), new("b", TimeSpan.FromHours(1))],
            [new("dry", "b", TimeSpan.FromDays(40), null, "long cure")]);
        SvgFile file = new(new TimelinePicture(schedule, Start.AddDays(50)).ToSvg(new PictureStyle { Width = 320 }));
        Assert.Contains("dry", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("long cure: at least 40 d", file.AllWords, StringComparison.Ordinal);
        Assert.All(file.Texts, text => Assert.True(text.Box.Right <= 321, text.ToString()));
    }

    [Fact]
    public void What_cannot_be_kept_is_said_instead_of_drawn()
    {
        JobSchedule impossible = new(Start, Day, [new("coat", TimeSpan.FromHours(11))], []);
        SvgFile file = new(new TimelinePicture(impossible).ToSvg());
        Assert.StartsWith("The job by the clock There is no timeline.", file.AllWords, StringComparison.Ordinal);
        Assert.Contains(impossible.Conflicts[0].Replace('\u00A0', ' '), file.Description.Replace('\u00A0', ' '), StringComparison.Ordinal);
        Assert.Empty(file.Rectangles(stroke: Paint.Blue));
    }

    [Fact]
    public void A_plan_without_a_timeline_says_what_stands_in_the_way()
    {
        foreach (Jobs.BathroomPlan plan in (Jobs.BathroomPlan[])[Plans.Refused, Plans.Hurried])
        {
            Assert.False(plan.IsPossible);
            SvgFile file = new(new TimelinePicture(plan).ToSvg());
            Assert.Contains("There is no timeline.", file.AllWords, StringComparison.Ordinal);
            Assert.All(plan.Objections, objection => Assert.Contains(objection.Sentence(DisplayUnits.Si), file.AllWords, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_timeline_that_does_not_hold_yet_is_marked_provisional_and_promises_no_water()
    {
        Assert.NotEmpty(Plans.Stuffy.Objections);
        SvgFile file = new(new TimelinePicture(Plans.Stuffy).ToSvg());
        Assert.Contains("Provisional: it holds only once what follows is removed.", file.AllWords, StringComparison.Ordinal);
        Assert.DoesNotContain("water from", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("Provisional", file.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_argument_is_refused_by_name()
    {
        Assert.Equal("schedule", Assert.Throws<ArgumentNullException>(() => new TimelinePicture((JobSchedule)null!)).ParamName);
        Assert.Equal("plan", Assert.Throws<ArgumentNullException>(() => new TimelinePicture((Jobs.BathroomPlan)null!)).ParamName);
    }

    // From two hours over the first day; they are numbers without anything else.
    private static Func<double, double> Hours(SvgFile file)
    {
        List<SvgText> hours = [.. file.Texts.Where(text => text.Anchor == "middle" && int.TryParse(text.Words, NumberStyles.None, CultureInfo.InvariantCulture, out _))];
        SvgText first = hours[0];
        SvgText last = hours.Last(text => text.Y == first.Y);
        return SvgFile.Scale(first.X, int.Parse(first.Words, CultureInfo.InvariantCulture), last.X, int.Parse(last.Words, CultureInfo.InvariantCulture));
    }
}
