using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Curing;
using Refinish.Jobs;
using Refinish.Scheduling;
using UnitsNet;
using Xunit;

namespace Refinish.Pictures.Tests;

public class TimelinePictureTests
{
    private static readonly DateTimeOffset Start = new(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1));
    private static readonly WorkingHours Day = new(TimeSpan.FromHours(8), TimeSpan.FromHours(17));

    private static SiteWork Work(params SiteStep[] steps) => new() { Start = Start, Calendar = WorkCalendar.EveryDay(Day,
        LocalClock.Fixed(TimeSpan.FromHours(1))), Steps = steps, Lags = [] };

    private static SiteStep Step(string id, double hours) => new() { Id = id, Duration = TimeSpan.FromHours(hours), Room = "bathroom" };

    private static SvgFile Drawn(SiteWork work, int width = 720) => new(new TimelinePicture(work.Solve())
        .ToSvg(new PictureStyle { Theme = PictureTheme.Light, Width = width }));

    [Theory]
    [InlineData(720)]
    [InlineData(360)]
    public void Bars_lie_where_the_hours_over_them_say(int width)
    {
        // By hand: 2.5 h from eight, half an hour of drying, then 1.25 h. The person's row shows the same two.
        SvgFile file = Drawn(
            Work(Step("mask", 2.5), Step("spray", 1.25)) with { Lags = [new("mask", "spray", TimeSpan.FromHours(0.5),
                TimeSpan.FromHours(4), "window")] }, width);
        Func<double, double> hour = Hours(file);
        (double X, double Y, double Width, double Height)[] bars = Bars(file);
        Assert.Equal(4, bars.Length);
        foreach (int first in (int[])[0, 2])
        {
            Assert.Equal(8, hour(bars[first].X), 0.02);
            Assert.Equal(10.5, hour(bars[first].X + bars[first].Width), 0.02);
            Assert.Equal(11, hour(bars[first + 1].X), 0.02);
            Assert.Equal(12.25, hour(bars[first + 1].X + bars[first + 1].Width), 0.02);
        }

        // The window is open from 11 to 14.5.
        (double X, double Y, double Width, double Height) window = file.Rectangles(Paint.GreenTint).First(bar => bar.Width != 24);
        Assert.Equal(11, hour(window.X), 0.02);
        Assert.Equal(14.5, hour(window.X + window.Width), 0.02);
        Assert.Contains("08:00–10:30 mask", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("11:00–12:15 spray", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("window: 30 min to 4 h, from 11:00 to 14:30", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("person 1: 08:00–12:15, of it 30 min waiting", file.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void Steps_whose_words_repeat_are_joined_by_their_identifiers()
    {
        // Two steps called alike; the wait belongs to the second, an hour after the first.
        SvgFile file = Drawn(
            Work(Step("coat-1", 1) with { Name = "coat" }, Step("coat-2", 2) with { Name = "coat" })
                with { Lags = [new("coat-1", "coat-2", TimeSpan.FromHours(1), null, "dry")] });
        Func<double, double> hour = Hours(file);
        Assert.Contains("08:00–09:00 coat", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("10:00–12:00 coat", file.AllWords, StringComparison.Ordinal);
        Assert.Equal(10, hour(file.Rectangles(Paint.GreenTint).First(bar => bar.Width != 24).X), 0.02);
    }

    [Fact]
    public void Of_several_least_times_the_last_one_is_told_and_a_plain_order_is_not()
    {
        SvgFile file = Drawn(Work(Step("a", 1), Step("b", 1), Step("c", 1)) with
        {
            Lags =
            [
                new("a", "b", TimeSpan.Zero, null, "order of the work"),
                new("a", "c", TimeSpan.FromHours(1.5), null, "first dry"),
                new("b", "c", TimeSpan.FromHours(2), null, "second dry"),
            ],
        });
        Assert.DoesNotContain("order of the work", file.AllWords, StringComparison.Ordinal);
        Assert.DoesNotContain("first dry", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("second dry: at least 2 h, from 12:00", file.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wait_on_a_clock_ends_when_its_hours_are_gained()
    {
        // 15 °C against 25 °C by the doubling rule: two hours for one, so that an hour after nine is gained at eleven.
        EquivalentAge clock = new(
            new TemperatureHistory(Start, [new TemperatureSegment(TimeSpan.FromDays(1), Temperature.FromDegreesCelsius(15))], true),
            TemperatureShift.Doubling(2),
            Temperature.FromDegreesCelsius(25));
        SvgFile file = Drawn(
            Work(Step("coat", 1), Step("next", 1)) with { Lags = [new StepLag("coat", "next", TimeSpan.FromHours(1), null,
                "dry", clock)] });
        Assert.Equal(11, Hours(file)(file.Rectangles(Paint.GreenTint).First(bar => bar.Width != 24).X), 0.03);
        Assert.Contains("dry: at least 1 h counted at 25 °C, from 11:00", file.AllWords, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(720)]
    [InlineData(360)]
    public void Every_operation_of_one_room_has_a_bar_at_its_own_hours(int width) => EveryBar(Plans.One, width);

    [Theory]
    [InlineData(720)]
    [InlineData(360)]
    public void And_so_it_has_with_several_rooms_and_people(int width) => EveryBar(Plans.Rooms, width);

    [Fact]
    public void A_schedule_of_a_crew_is_drawn_without_a_plan_and_promises_no_water()
    {
        SvgFile file = new(new TimelinePicture(Plans.Rooms.Schedule!).ToSvg());
        Assert.Contains(Plans.Rooms.Job.Premises.Name, file.Title, StringComparison.Ordinal);
        Assert.DoesNotContain("No water", file.AllWords, StringComparison.Ordinal);
        Assert.DoesNotContain("water from", file.AllWords, StringComparison.Ordinal);
        Assert.DoesNotContain("first water", file.AllWords, StringComparison.Ordinal);
        Assert.All(Plans.Rooms.Schedule!.Work.Shop.Crew, worker => Assert.Contains(worker.Name + ": ", file.AllWords,
            StringComparison.Ordinal));
    }

    [Fact]
    public void Rooms_carry_letters_where_there_are_several_and_none_where_there_is_one()
    {
        SvgFile rooms = new(new TimelinePicture(Plans.Rooms).ToSvg());
        Assert.Contains(rooms.Texts, text => text.Words == "A · bathroom 1");
        Assert.Contains(rooms.Texts, text => text.Words == "D · outside the rooms");
        SvgFile one = new(new TimelinePicture(Plans.One).ToSvg());
        Assert.DoesNotContain(one.Texts, text => text.Words is "A" or "B");
        Assert.DoesNotContain("outside the rooms", one.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void Standing_by_is_shown_in_the_person_s_row_and_told()
    {
        SvgFile file = new(new TimelinePicture(Plans.One).ToSvg(new PictureStyle { Theme = PictureTheme.Light }));
        ScheduledOperation coat = Plans.One.Runs[0].Operation;
        string name = Plans.One.Job.Shop.Crew.Single(worker => worker.Id != coat.People.Single()).Name;
        Assert.Contains(coat.Operation.Name + " " + coat.Start.ToString("ddd d MMM, HH:mm", CultureInfo.InvariantCulture),
            file.Description, StringComparison.Ordinal);
        Assert.Contains(", " + name + " stands by", file.Description, StringComparison.Ordinal);
        Assert.Contains("stands by, outside the room", file.AllWords, StringComparison.Ordinal);

        // One bar on paper for each coat, and for whatever else is watched, besides the legend's.
        int watched = Plans.One.Schedule!.Operations.Count(operation => operation.Operation.Beside is not null);
        Assert.True(watched > Plans.One.Runs.Count);
        Assert.Equal(watched, file.Rectangles(Paint.Paper).Count(bar => Math.Abs(bar.Height - 14) < 0.01 && bar.Width != 24));
    }

    [Fact]
    public void Windows_are_told_by_the_clock_before_the_coat_that_is_planned_in_them()
    {
        SvgFile file = new(new TimelinePicture(Plans.One).ToSvg(new PictureStyle { Theme = PictureTheme.Light }));
        CrewSchedule schedule = Plans.One.Schedule!;
        Assert.Equal(schedule.Runs.Count, schedule.Windows.Sum(window => window.Next.Count));
        foreach (ScheduledWindow window in schedule.Windows)
        {
            foreach (string next in window.Next)
            {
                Assert.Contains(window.Name + ": " + window.SentenceOn(schedule.TryFind(next)!.Start.Date), file.AllWords,
                    StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void The_strip_folds_the_nights_and_has_the_first_water_at_its_place_in_its_day()
    {
        DateTimeOffset water = Plans.One.Handover!.WaterFrom!.Value;
        SvgFile file = new(new TimelinePicture(Plans.One).ToSvg(new PictureStyle { Theme = PictureTheme.Light }));
        Assert.Contains("No water before " + water.ToString("ddd d MMM, HH:mm", CultureInfo.InvariantCulture) + ".", file.AllWords,
            StringComparison.Ordinal);

        // The columns of two days that follow each other are one width and a crease of 7 apart; each shows the hours of the days below,
        // here 7 to 18. The last two are Friday, on site, and Saturday with the water.
        SvgText before = file.Text(water.AddDays(-1).ToString("ddd d MMM", CultureInfo.InvariantCulture));
        SvgText last = file.Text(water.ToString("ddd d MMM", CultureInfo.InvariantCulture));
        double column = last.X - before.X - 7;
        double x = file.Paths(Paint.Green).First(points => Math.Abs(points[0].X - points[1].X) < 0.01
            && Math.Abs(points[0].Y - points[1].Y) > 25)[0].X;
        Assert.Equal(water.TimeOfDay.TotalHours, 7 + ((x - (last.X - 2)) / column * 11), 0.1);
    }

    [Fact]
    public void Each_room_has_its_first_water_in_its_own_lane()
    {
        SvgFile file = new(new TimelinePicture(Plans.Rooms).ToSvg(new PictureStyle { Theme = PictureTheme.Light }));
        foreach (IGrouping<string, FixtureHandover> room in Plans.Rooms.Handover!.Fixtures.GroupBy(fixture =>
            fixture.Procedure.Fixture.Room))
        {
            string name = Plans.Rooms.Job.Premises.Rooms.Single(one => one.Id == room.Key).Name;
            string when = room.Max(fixture => fixture.WaterFrom)!.Value.ToString("ddd d MMM, HH:mm", CultureInfo.InvariantCulture);
            Assert.Contains(name + " " + when, file.AllWords, StringComparison.Ordinal);
        }

        // A mark in each lane and the legend's, and one on each later day on site.
        int days = Plans.Rooms.Handover!.Fixtures.GroupBy(fixture => fixture.Procedure.Fixture.Room).Sum(room => Plans.Rooms.Schedule!.Visits
            .Select(visit => visit.Arrives.Date).Distinct().Count(day => day >= room.Max(fixture => fixture.WaterFrom)!.Value.Date));
        Assert.Equal(
            Plans.Rooms.Job.Premises.Rooms.Count + 1 + days,
            file.Elements("path").Count(path => (string?)path.Attribute("stroke") == Paint.Green
                && (string?)path.Attribute("stroke-width") == "3"));
    }

    [Theory]
    [InlineData(720)]
    [InlineData(360)]
    public void A_room_is_closed_to_others_from_the_spray_until_it_is_clear(int width)
    {
        // By hand: two hours of preparing from eight, a spray of an hour, two hours to clear, one hour of work.
        SiteStep coat = Step("coat", 1) with { Sprays = true, Clearing = TimeSpan.FromHours(2) };
        SiteStep[] steps = [Step("prepare", 2), coat, Step("demask", 1)];
        SvgFile file = Drawn(
            Work(steps) with
            {
                Lags = [new("prepare", "coat", TimeSpan.Zero, null, "order"), new("coat", "demask", TimeSpan.Zero, null, "order")],
            },
            width);
        Assert.Contains("Room: closed to others 10:00–13:00", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("Closed to others: Mon 1 Mar, 10:00 to 13:00.", file.Description, StringComparison.Ordinal);
        Assert.Contains("13:00–14:00 demask", file.AllWords, StringComparison.Ordinal);

        // Of the same tint are coats, told by their outline, and the legend, which is 24 wide; the strip's lane is higher than a bar.
        Func<double, double> hour = Hours(file);
        Assert.Contains(file.Rectangles(Paint.VermillionTint), bar => Math.Abs(bar.Height - 14) < 0.01
            && Math.Abs(hour(bar.X) - 10) < 0.02 && Math.Abs(hour(bar.X + bar.Width) - 13) < 0.02);
    }

    [Fact]
    public void Whatever_is_watched_closes_its_room_on_the_picture()
    {
        SvgFile file = new(new TimelinePicture(Plans.Rooms).ToSvg());
        ScheduledOperation[] watched = [.. Plans.Rooms.Schedule!.Operations.Where(operation => operation.Operation.Beside is not null)];
        Assert.Contains(watched, operation => operation.Operation.Beside!.Contains("promot", StringComparison.OrdinalIgnoreCase));
        foreach (ScheduledOperation beside in watched)
        {
            // It begins a closed time, or lies in one that began before.
            string room = Plans.Rooms.Job.Premises.Rooms.Single(one => one.Id == Plans.Rooms.Schedule!.TryFind(beside.Operation.Beside!)!
                .Operation.Room).Name;
            string part = file.Description[(file.Description.IndexOf(room + ": ", StringComparison.Ordinal) + 1)..];
            part = part[part.IndexOf("Closed to others: ", StringComparison.Ordinal)..];
            string[] closed = part["Closed to others: ".Length..part.IndexOf('.', StringComparison.Ordinal)].Split("; ");
            string day = beside.Start.ToString("ddd d MMM, ", CultureInfo.InvariantCulture);
            string start = beside.Start.ToString("HH:mm", CultureInfo.InvariantCulture);
            string end = beside.End.ToString("HH:mm", CultureInfo.InvariantCulture);
            Assert.True(
                closed.Any(one => one.StartsWith(day, StringComparison.Ordinal)
                    && string.CompareOrdinal(one[^14..^9], start) <= 0 && string.CompareOrdinal(one[^5..], end) >= 0),
                beside.Operation.Beside + ", " + start + " to " + end + " in " + room + ": " + string.Join("; ", closed));
        }
    }

    [Fact]
    public void Water_is_told_on_its_day_also_when_nobody_is_on_site_then()
    {
        SvgFile file = new(new TimelinePicture(Plans.Rooms).ToSvg());
        foreach (IGrouping<string, FixtureHandover> room in Plans.Rooms.Handover!.Fixtures.GroupBy(fixture =>
            fixture.Procedure.Fixture.Room))
        {
            DateTimeOffset water = room.Max(fixture => fixture.WaterFrom)!.Value;
            bool onSite = Plans.Rooms.Schedule!.Visits.Any(visit => visit.Arrives.Date == water.Date);
            Assert.Contains(
                onSite ? "water from " + water.ToString("HH:mm", CultureInfo.InvariantCulture)
                    : water.ToString("ddd d MMM, HH:mm", CultureInfo.InvariantCulture) + ": nobody on site; water from then on in",
                file.AllWords, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Nights_cut_a_step_into_pieces_that_are_told_as_such()
    {
        SvgFile file = Drawn(Work(Step("mask", 12) with { IsInterruptible = true }));
        Assert.Contains("08:00–17:00 mask", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("08:00–11:00 mask, continued", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("Tue 2 Mar 2027", file.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void Days_without_work_are_told()
    {
        SvgFile day = Drawn(Work(Step("a", 1), Step("b", 1)) with { Lags = [new("a", "b", TimeSpan.FromHours(40), null, "cure")] });
        Assert.Contains("Tue 2 Mar: nobody on site.", day.AllWords, StringComparison.Ordinal);
        SvgFile week = Drawn(Work(Step("a", 1), Step("b", 1)) with { Lags = [new("a", "b", TimeSpan.FromDays(5), null, "cure")] });
        Assert.Contains("Tue 2 Mar to Fri 5 Mar: nobody on site.", week.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wait_that_runs_by_itself_and_a_job_of_weeks_are_drawn()
    {
        SvgFile file = Drawn(
            Work(Step("a", 1), Step("dry", 30) with { People = 0 }, Step("b", 1)) with
            {
                Lags = [new("a", "dry", TimeSpan.Zero, null, "order"), new("dry", "b", TimeSpan.FromDays(40), null, "long cure")],
            },
            320);
        Assert.Contains("dry", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("long cure: at least 40 d", file.AllWords, StringComparison.Ordinal);
        Assert.All(file.Texts, text => Assert.True(text.Box.Right <= 321, text.ToString()));
    }

    [Fact]
    public void What_cannot_be_kept_is_said_instead_of_drawn()
    {
        SiteSchedule impossible = Work(Step("coat", 11)).Solve();
        SvgFile file = new(new TimelinePicture(impossible).ToSvg());
        Assert.StartsWith("The job by the clock There is no timeline.", file.AllWords, StringComparison.Ordinal);
        Assert.Contains(impossible.Conflict!.ToString(), file.Description, StringComparison.Ordinal);
        Assert.Empty(Bars(file));
    }

    [Fact]
    public void A_plan_without_a_timeline_says_what_stands_in_the_way()
    {
        foreach (JobPlan plan in (JobPlan[])[Plans.Refused, Plans.Hurried])
        {
            Assert.False(plan.IsPossible);
            SvgFile file = new(new TimelinePicture(plan).ToSvg());
            Assert.Contains("There is no timeline.", file.AllWords, StringComparison.Ordinal);
            Assert.All(plan.Objections, objection => Assert.Contains(objection.Sentence(DisplayUnits.Si), file.AllWords,
                StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_timeline_that_does_not_hold_yet_is_marked_provisional_and_promises_no_water()
    {
        foreach (JobPlan plan in (JobPlan[])[Plans.Stuffy, Plans.Provisional])
        {
            Assert.NotEmpty(plan.Objections);
            SvgFile file = new(new TimelinePicture(plan).ToSvg());
            Assert.Contains("Provisional: it holds only once what follows is removed.", file.AllWords, StringComparison.Ordinal);
            Assert.DoesNotContain("No water before", file.AllWords, StringComparison.Ordinal);
            Assert.Contains("Provisional", file.Description, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_missing_argument_is_refused_by_name()
    {
        Assert.Equal("schedule", Assert.Throws<ArgumentNullException>(() => new TimelinePicture((SiteSchedule)null!)).ParamName);
        Assert.Equal("schedule", Assert.Throws<ArgumentNullException>(() => new TimelinePicture((CrewSchedule)null!)).ParamName);
        Assert.Equal("plan", Assert.Throws<ArgumentNullException>(() => new TimelinePicture((JobPlan)null!)).ParamName);
        Assert.Equal("style", Assert.Throws<ArgumentNullException>(() => new TimelinePicture(Plans.One).ToSvg(null!)).ParamName);
    }

    // Bars stand in the order of the page: on each day first those of the people, then those of the rooms. Each has to lie at the hours of
    // its piece of work.
    private static void EveryBar(JobPlan plan, int width)
    {
        SvgFile file = new(new TimelinePicture(plan).ToSvg(new PictureStyle { Theme = PictureTheme.Light, Width = width }));
        Func<double, double> hour = Hours(file);
        (double X, double Y, double Width, double Height)[] bars = Bars(file);
        CrewSchedule schedule = plan.Schedule!;
        List<TimeInterval> pieces = [];
        foreach (DateTime day in schedule.Operations.SelectMany(operation => operation.Pieces).Select(piece => piece.Start.Date)
            .Distinct().Order())
        {
            foreach (Worker worker in schedule.Work.Shop.Crew)
            {
                pieces.AddRange(schedule.Operations.Where(operation => operation.People.Contains(worker.Id))
                    .SelectMany(operation => operation.Pieces).Where(piece => piece.Start.Date == day));
            }

            bool one = plan.Job.Premises.Rooms.Count == 1;
            foreach (string? room in plan.Job.Premises.Rooms.Select(room => room.Id).Concat(one ? [] : new string?[] { null }))
            {
                pieces.AddRange(schedule.Operations
                    .Where(operation => operation.People.Count > 0 && operation.Operation.Beside is null
                        && (one || operation.Operation.Room == room))
                    .SelectMany(operation => operation.Pieces).Where(piece => piece.Start.Date == day).OrderBy(piece => piece.Start));
            }
        }

        Assert.Equal(pieces.Count, bars.Length);
        for (int i = 0; i < pieces.Count; i++)
        {
            Assert.Equal(pieces[i].Start.TimeOfDay.TotalHours, hour(bars[i].X), 0.04);
            Assert.True(Math.Abs(pieces[i].End.TimeOfDay.TotalHours - hour(bars[i].X + bars[i].Width)) < 0.04
                || Math.Abs(bars[i].Width - 2) < 0.01, pieces[i].ToString());
        }
    }

    // Outlines without a fill, the legend's left out.
    private static (double X, double Y, double Width, double Height)[] Bars(SvgFile file) =>
    [
        .. file.Elements("rect").Where(element => (string?)element.Attribute("stroke") is Paint.Blue or Paint.Vermillion
            && (string?)element.Attribute("fill") == "none")
            .Select(element => (SvgText.Number(element, "x"), SvgText.Number(element, "y"), SvgText.Number(element, "width"),
                SvgText.Number(element, "height")))
            .Where(bar => bar.Item3 != 24),
    ];

    // From two hours over the first day; they are numbers without anything else.
    private static Func<double, double> Hours(SvgFile file)
    {
        List<SvgText> hours = [.. file.Texts.Where(text => text.Anchor == "middle" && int.TryParse(text.Words, NumberStyles.None,
            CultureInfo.InvariantCulture, out _))];
        SvgText first = hours[0];
        SvgText last = hours.Last(text => text.Y == first.Y);
        return SvgFile.Scale(first.X, int.Parse(first.Words, CultureInfo.InvariantCulture), last.X,
            int.Parse(last.Words, CultureInfo.InvariantCulture));
    }
}
