using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Scheduling;

namespace Refinish.Samples.CalendarExport;

/// <summary>A boarding house whose bathrooms are renewed one beside the other by one person. House, hours and times are invented.</summary>
internal static class Pension
{
    /// <summary>Central European time of 2027 as data: clocks go forward on 28 March and back on 31 October, both at 1:00 universal time (Directive 2000/84/EC).</summary>
    public static LocalClock Clock { get; } = LocalClock.WithChanges(
        TimeSpan.FromHours(1),
        [
            new ClockChange(new DateTimeOffset(2027, 3, 28, 1, 0, 0, TimeSpan.Zero), TimeSpan.FromHours(2)),
            new ClockChange(new DateTimeOffset(2027, 10, 31, 1, 0, 0, TimeSpan.Zero), TimeSpan.FromHours(1)),
        ]);

    /// <summary>Monday to Friday, 8 to 17, without Good Friday and Easter Monday of 2027.</summary>
    public static WorkCalendar Calendar { get; } =
        WorkCalendar.Weekdays(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)), Clock, [new DateTime(2027, 3, 26), new DateTime(2027, 3, 29)]);

    /// <summary>Bathrooms with one tub each.</summary>
    public static SiteWork Bathrooms(int count) => Work(Enumerable.Range(1, count).Select(i => "bathroom " + i).Select(room => (room, (string[])["tub"])));

    /// <summary>One bathroom with several fixtures, each with coats of its own.</summary>
    public static SiteWork OneBathroom(params string[] fixtures) => Work([("bathroom", fixtures)]);

    private static SiteWork Work(IEnumerable<(string Room, string[] Fixtures)> rooms)
    {
        List<SiteStep> steps = [];
        List<StepLag> lags = [];
        foreach ((string room, string[] fixtures) in rooms)
        {
            string mask = room + ": protect and mask";
            string refit = room + ": caulk, refit and inspect";
            steps.Add(new SiteStep { Name = mask, Duration = TimeSpan.FromMinutes(75), Room = room, IsInterruptible = true });
            foreach (string fixture in fixtures)
            {
                AddFixture(steps, lags, room, fixture, mask, refit);
            }

            steps.Add(new SiteStep { Name = refit, Duration = TimeSpan.FromMinutes(50), Room = room });
        }

        return new SiteWork { Start = new DateTimeOffset(2027, 3, 22, 8, 0, 0, TimeSpan.FromHours(1)), Calendar = Calendar, Steps = steps, Lags = lags };
    }

    private static void AddFixture(List<SiteStep> steps, List<StepLag> lags, string room, string fixture, string mask, string refit)
    {
        SiteStep Add(string name, int minutes)
        {
            SiteStep step = new() { Name = room + ", " + fixture + ": " + name, Duration = TimeSpan.FromMinutes(minutes), Room = room };
            steps.Add(step);
            return step;
        }

        void Then(string before, string after, double least, double? most, string reason) =>
            lags.Add(new StepLag(before, after, TimeSpan.FromHours(least), most is double hours ? TimeSpan.FromHours(hours) : null, reason));

        string clean = Add("clean twice and etch", 105).Name;
        steps[^1] = steps[^1] with { IsInterruptible = true };
        string repair = Add("repair", 40).Name;
        string sand = Add("sand and tack", 35).Name;
        steps[^1] = steps[^1] with { IsInterruptible = true, RaisesDust = true };
        string wipe = Add("wipe on promoter", 15).Name;
        Then(mask, clean, 0, null, "masked first");
        Then(clean, repair, 0, null, "clean before filler");
        Then(repair, sand, 2, null, "filler hard");
        Then(sand, wipe, 0, null, "dust off first");
        string under = wipe;
        foreach ((string coat, double least, double most, string reason) in new[]
        {
            ("prime", 0.25, 1, "open time of the promoter"), ("topcoat 1", 1.5, 20, "recoat window of the primer"),
            ("topcoat 2", 0.5, 4, "recoat window of topcoat 1"), ("topcoat 3", 0.5, 4, "recoat window of topcoat 2"),
        })
        {
            string name = Add(coat, 45).Name;
            steps[^1] = steps[^1] with { Sprays = true, Clearing = TimeSpan.FromMinutes(45), DustFree = TimeSpan.FromHours(3), Tools = ["spray gun"] };
            Then(under, name, least, most, reason);
            under = name;
        }

        string demask = Add("demask", 25).Name;
        Then(under, demask, 4, null, "touch-dry");
        Then(under, refit, 24, null, "hard enough to work on");
        Then(demask, refit, 0, null, "demasked first");
    }
}
