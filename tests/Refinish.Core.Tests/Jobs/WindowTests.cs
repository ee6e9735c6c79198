using System;
using System.Linq;
using Refinish.Curing;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

public class WindowTests
{
    // Invented for the test: a steel panel in a bathroom whose air is at 22 °C and its surface at 20 °C.
    private static Job Job => InventedJobs.OccupiedHouse() with
    {
        Fixtures = [new FixtureJob { Id = "panel", Room = "bath", Fixture = RandomJobs.Panel(1.5, 0.6),
            Survey = new Survey { Material = FixtureMaterial.EnamelledSteel, Defects = [], YearBuilt = 1995 } }],
    };

    [Fact]
    [Evidence(Basis.Independent, "by hand, doubling for ten kelvins: the primer opens 1 h × √2 = 84.85 min after its last stroke on the "
        + "surface of 20 °C, so 85 min, and closes 24 h × 2^0.3 = 29.5478 h after its first stroke in air of 22 °C, cut to the minute; the topcoat "
        + "20 min × √2 = 28.28 min and 16 h × 2^0.3")]
    public void A_recoat_window_opens_and_closes_by_the_clock()
    {
        CrewSchedule schedule = Job.Plan().Schedule!;
        ScheduledRun[] runs = [.. schedule.Runs];
        ScheduledWindow[] windows = [.. schedule.Windows.Where(window => window.Kind == ScheduledWindowKind.Recoat)];
        Assert.Equal(runs.Select(run => run.Run.Id), windows.Select(window => window.Operation.Operation.Id));
        for (int i = 0; i < runs.Length; i++)
        {
            (double opens, double closes) = i == 0 ? (85, 24) : (29, 16);
            Assert.Equal(runs[i].End, windows[i].LastStroke);
            Assert.Equal(runs[i].SprayingFrom, windows[i].FirstStroke);
            Assert.Equal(runs[i].End.AddMinutes(opens), windows[i].Opens);
            double minutes = (runs[i].SprayingFrom.TimeOfDay.TotalHours + (closes * Math.Pow(2, 0.3))) * 60;
            Assert.Equal(Math.Floor(minutes), (windows[i].Closes!.Value.DateTime - runs[i].End.Date).TotalMinutes, 1e-6);
            Assert.False(windows[i].IsOpenEnded);
            Assert.Equal(i + 1 < runs.Length ? [runs[i + 1].Run.Id] : [], windows[i].Next);
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: a silane dries 15 min and stays open 2 h, both from the end of wiping; from the beginning of wiping that is "
        + "longer by the time that wiping takes; the first coat lies between")]
    public void An_open_time_counts_from_the_end_of_wiping()
    {
        CrewSchedule schedule = Job.Plan().Schedule!;
        ScheduledOperation wipe = schedule.Operations.Single(operation => operation.Operation.Kind == WorkKind.Promote);
        ScheduledWindow window = schedule.Windows.Single(one => one.Kind == ScheduledWindowKind.OpenTime);
        Assert.Equal(wipe.End.AddMinutes(15), window.Opens);
        Assert.Equal(wipe.End.AddHours(2), window.Closes);
        Assert.Equal(wipe.Start, window.FirstStroke);
        Assert.True(wipe.Start < wipe.End);
        ScheduledRun first = schedule.Runs[0];
        Assert.Equal([first.Run.Id], window.Next);
        Assert.True(first.Start >= window.Opens && first.End <= window.Closes);
        Numbers.CanBeWritten(window.Workings());
        Assert.Equal(
            ["promoter dry, after the end of wiping", "open time ends, after the end of wiping", "open time ends, after the beginning of wiping"],
            window.Workings().Steps.Select(step => step.Name));
        Numbers.Near(2 + (wipe.End - wipe.Start).TotalHours, window.Workings().Steps[2].Value / 3600, 1e-9);
        Assert.Contains(", 2 h from the end of wiping, 2.", window.ToString(), StringComparison.Ordinal);
        Assert.EndsWith(" h from its beginning", window.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: the room is at 25 °C, the temperature of the data sheet, until Monday evening at eight and at 20 °C from then on, where "
        + "each hour of the sheet takes √2 hours; what a window gets before that counts in full")]
    public void A_window_follows_the_temperature_at_each_hour()
    {
        DateTimeOffset evening = InventedJobs.Monday.AddHours(12);
        TemperatureHistory log = new(
            InventedJobs.Monday.AddHours(-8),
            [
                new TemperatureSegment(TimeSpan.FromHours(20), Temperature.FromDegreesCelsius(25)),
                new TemperatureSegment(TimeSpan.FromHours(1), Temperature.FromDegreesCelsius(20)),
            ],
            true);
        SiteRoom room = Job.Premises.Rooms[0] with
        {
            Climate = RoomClimate.Logged(log, Temperature.FromDegreesCelsius(8), Temperature.FromDegreesCelsius(25)),
        };
        CrewSchedule schedule = (Job with { Premises = Job.Premises with { Rooms = [room] } }).Plan().Schedule!;
        foreach ((ScheduledRun run, int i) in schedule.Runs.Select((run, i) => (run, i)))
        {
            ScheduledWindow window = schedule.Windows.Single(one => one.Operation.Operation.Id == run.Run.Id);
            (double opens, double closes) = i == 0 ? (1.0, 24) : (1 / 3.0, 16);
            Near(Reached(run.End, opens), window.Opens!.Value, up: true);
            Near(Reached(run.SprayingFrom, closes), window.Closes!.Value, up: false);
        }

        Assert.All(schedule.Windows, window => Numbers.CanBeWritten(window.Workings()));
        Assert.Contains(schedule.Windows, window => window.LastStroke < evening && window.Closes > evening);

        DateTimeOffset Reached(DateTimeOffset from, double hours)
        {
            double warm = Math.Max(0, (evening - from).TotalHours);
            return hours <= warm ? from.AddHours(hours) : (from > evening ? from : evening).AddHours((hours - warm) * Math.Sqrt(2));
        }

        static void Near(DateTimeOffset exact, DateTimeOffset window, bool up)
        {
            Assert.Equal(0, window.Second);
            double late = (window - exact).TotalSeconds;
            Assert.InRange(up ? late : -late, -0.01, 60);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "a window reads as the crew says it: other days are named, dates from a week on")]
    public void A_window_reads_by_the_clock()
    {
        ScheduledWindow window = Job.Plan().Schedule!.Windows.First(one => one.Kind == ScheduledWindowKind.Recoat);
        string opens = window.Opens!.Value.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture);
        string closes = window.Closes!.Value.ToString("ddd HH:mm", System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal("recoat from " + opens + " to " + closes, window.SentenceOn(window.LastStroke.Date));
        Assert.Contains(": " + window.Name + ": recoat from " + opens, window.ToString(), StringComparison.Ordinal);
            Assert.StartsWith(window.Operation.Operation.Id + ", ", window.ToString(), StringComparison.Ordinal);
        string day = window.LastStroke.ToString("ddd d MMM ", System.Globalization.CultureInfo.InvariantCulture);
        Assert.StartsWith("recoat from " + day + opens, window.SentenceOn(window.LastStroke.Date.AddDays(-7)), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Identity, "every planned coat lies within the windows of what is under it, in rooms of any climate: random jobs")]
    public void Planned_coats_lie_within_their_windows()
    {
        JobProperties.Holds(60, RandomJobs.Tame, JobRules.MissesAWindow);
        JobProperties.Holds(60, RandomJobs.Wild, JobRules.MissesAWindow);
    }

    [Fact]
    [Evidence(Basis.Contract, "a short label is true of every fixture that it stands for: crazing is not filled, rust is treated and its priming is an "
        + "operation of its own where the shop counts it so, plastic is not etched")]
    public void Short_labels_say_what_is_done()
    {
        Assert.Equal("fill repairs", Label(FixtureMaterial.EnamelledSteel, WorkKind.Fill, new Chip(Length.FromMillimeters(10), Length.FromMillimeters(1))));
        Assert.Equal("abrade and seal crazing", Label(FixtureMaterial.CulturedMarble, WorkKind.SealCrazing, new Crazing(Ratio.FromPercent(5))));
        Assert.Equal("treat rust", Label(FixtureMaterial.EnamelledSteel, WorkKind.GrindRust, new RustSpot(Length.FromMillimeters(15))));
        Assert.Equal("abrade, rinse and dry", Label(FixtureMaterial.CulturedMarble, WorkKind.Key));
        Assert.Equal("etch or abrade, rinse and dry", Label(FixtureMaterial.EnamelledSteel, WorkKind.Key));
    }

    private static string Label(FixtureMaterial material, WorkKind kind, params Defect[] defects) => new Procedure(
        Job.Fixtures[0] with { Survey = new Survey { Material = material, Defects = defects, YearBuilt = 1995 } }, Job.Shop)
        .Operations.Single(operation => operation.Kind == kind).Name;
}
