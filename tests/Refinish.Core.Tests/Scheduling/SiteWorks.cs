using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Curing;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Tests.Scheduling;

/// <summary>Works made from one number, for properties; every figure is invented.</summary>
internal static class SiteWorks
{
    public static readonly LocalClock Clock = LocalClock.Fixed(TimeSpan.FromHours(1));
    public static readonly DateTimeOffset Monday = new(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1));
    public static readonly WorkCalendar Week = WorkCalendar.Weekdays(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)),
        Clock);

    public static SiteStep Step(string id, double hours, string? room) =>
        new() { Id = id, Duration = TimeSpan.FromHours(hours), Room = room };

    public static TimeInterval Hours(int from, int length) => new(Monday.AddHours(from), Monday.AddHours(from + length));

    /// <summary>One room and one person: a chain of steps with waits, windows and side steps, as in a bathroom.</summary>
    public static SiteWork Bathroom(int seed, int most)
    {
        uint[] s = Draw(seed);
        List<SiteStep> steps = [];
        List<StepLag> lags = [];
        int count = 3 + (int)(s[19] % (uint)(most - 2));
        for (int i = 0; i < count; i++)
        {
            uint own = s[i];
            bool sprays = own / 5 % 3 == 0;
            steps.Add(Step("s" + i, 0.25 + (own % 9 * 0.25), "bath") with
            {
                Sprays = sprays, Clearing = TimeSpan.FromHours(sprays ? own / 15 % 2 : 0),
                    DustFree = TimeSpan.FromHours(sprays ? own / 30 % 4 : 0),
                RaisesDust = !sprays && own / 120 % 5 == 0, IsInterruptible = !sprays && own / 600 % 3 == 0,
            });
            if (i > 0 && own / 2000 % 5 != 0)
            {
                SiteStep before = steps[own / 10000 % 4 == 0 && i > 1 ? i - 2 : i - 1];
                double least = (own / 40000 % 6) switch { 0 => 14, 1 => 5, 2 => 0.5, _ => 0 };
                double? window = own / 240000 % 4 == 0 && !before.IsInterruptible ? least + 1 + (own / 960000 % 20) : null;
                lags.Add(new StepLag(before.Id, "s" + i, TimeSpan.FromHours(least), window is double hours ? TimeSpan.FromHours(hours)
                    : null, "lag " + i));
            }
        }

        WorkingHours day = new(TimeSpan.FromHours(8), TimeSpan.FromHours(17));
        return new SiteWork
        {
            Start = Monday.AddMinutes(s[18] % (3 * 24 * 60)),
            Calendar = s[17] % 2 == 0 ? WorkCalendar.EveryDay(day, Clock) : Week,
            Steps = steps,
            Lags = lags,
        };
    }

    /// <summary>
    /// Some lags of a work counted on clocks that follow a temperature that changes every few hours, one of them with a least temperature.
    /// </summary>
    public static SiteWork OnClocks(SiteWork work, int seed)
    {
        uint[] s = Draw(unchecked(seed + 77));
        TemperatureHistory history = new(
            work.Start.AddHours(-2),
            Enumerable.Range(0, 40)
                .Select(i => new TemperatureSegment(TimeSpan.FromHours(1 + (s[i % 20] % 9)),
                Temperature.FromDegreesCelsius(8 + (s[(i + 7) % 20] / 13 % 22)))),
            lastHoldsOn: s[3] % 4 != 0);
        EquivalentAge age = new(history, TemperatureShift.Doubling(2), Temperature.FromDegreesCelsius(23), s[4] % 3 == 0
            ? Temperature.FromDegreesCelsius(12) : null);
        return work with { Lags = [.. work.Lags.Select((lag, i) => s[i % 20] / 5 % 2 == 0 ? lag.With(age) : lag)] };
    }

    // Twenty numbers from one, the same on every platform.
    public static uint[] Draw(int seed)
    {
        ulong state = unchecked((ulong)seed * 0x9E3779B97F4A7C15UL);
        uint[] drawn = new uint[20];
        for (int i = 0; i < drawn.Length; i++)
        {
            state = unchecked((state * 6364136223846793005UL) + 1442695040888963407UL);
            drawn[i] = (uint)(state >> 33);
        }

        return drawn;
    }

    public static SiteWork RandomSmall(int seed)
    {
        uint[] s = Draw(seed);
        int count = 2 + (int)(s[0] % 3);
        List<SiteStep> steps = [.. Enumerable.Range(0, count).Select(i => s[10 + i])
            .Select((own, i) => Step("s" + i, 1 + (own / 3 % 3), own / 9 % 3 == 0 ? null : "room") with
        {
            People = own / 27 % 5 == 0 ? 0 : 1,
            IsInterruptible = own / 135 % 3 == 0,
            Sprays = own / 405 % 3 == 0,
            Clearing = TimeSpan.FromHours(own / 1215 % 3),
            RaisesDust = own / 3645 % 3 == 0,
            DustFree = TimeSpan.FromHours(own / 10935 % 4),
            Unavailable = own / 40000 % 4 == 0 ? [Hours((int)(own / 160000 % 80), (int)(own / 7 % 5)), Hours((int)(own / 900000 % 80), 1)]
                : [],
        })];
        List<StepLag> lags = [];
        for (int i = 0; i < Math.Min(3, s.Length - 1); i++)
        {
            int before = (int)(s[i] / 5 % count);
            int after = (int)((before + 1 + (s[i] / 77 % (count - 1))) % count);
            (before, after) = s[i] / 500 % 6 == 0 ? (before, after) : (Math.Min(before, after), Math.Max(before, after));
            double least = s[i] / 1000 % 5;
            bool most = s[i] % 2 == 0 && !(steps[before].IsInterruptible && steps[before].IsAttended);
            lags.Add(new StepLag("s" + before, "s" + after, TimeSpan.FromHours(least), most
                ? TimeSpan.FromHours(least + (s[i] / 10000 % 20)) : null, "lag " + i));
        }

        WorkingHours hours = new(TimeSpan.FromHours(8), TimeSpan.FromHours(12));
        DateTime[] off = s[0] / 7 % 2 == 0 ? [new DateTime(2027, 3, 2)] : [];
        return new SiteWork { Start = Monday, Calendar = WorkCalendar.Weekdays(hours, Clock, off), Steps = steps, Lags = lags };
    }

    public static SiteWork RandomLarge(int seed)
    {
        uint[] s = Draw(seed);
        List<SiteStep> steps = [];
        List<StepLag> lags = [];
        int rooms = 1 + (int)(s[0] % 4);
        int crew = 1 + (int)(s[0] / 4 % 2);
        for (int r = 0; r < rooms; r++)
        {
            for (int i = 0; i < 2 + (int)(s[r % s.Length] % 4); i++)
            {
                uint own = s[((5 * r) + i) % s.Length];
                steps.Add(Step("r" + r + "s" + i, 0.5 + (own % 8 * 0.5), "room " + r) with
                {
                    People = (int)(own / 8 % 7) switch { 0 => 0, 1 => crew, _ => 1 },
                    IsInterruptible = own / 56 % 3 == 0,
                    Sprays = own / 168 % 3 == 0,
                    Clearing = TimeSpan.FromHours(own / 504 % 3),
                    RaisesDust = own / 1512 % 4 == 0,
                    DustFree = TimeSpan.FromHours(own / 6048 % 5),
                    Tools = own / 168 % 3 == 0 ? ["gun"] : [],
                    Unavailable = own / 30000 % 5 == 0 ? [Hours((int)(own / 150000 % 60), (int)(own / 11 % 8))] : [],
                });
                if (i > 0)
                {
                    bool most = own % 3 == 0 && !(steps[^2].IsInterruptible && steps[^2].IsAttended);
                    double least = own / 100 % 4 * 0.5;
                    lags.Add(new StepLag(steps[^2].Id, steps[^1].Id, TimeSpan.FromHours(least), most
                        ? TimeSpan.FromHours(least + 2 + (own / 1000 % 24)) : null, "lag " + lags.Count));
                }
            }
        }

        return new SiteWork { Start = Monday, Calendar = Week, Steps = steps, Lags = lags, Crew = crew };
    }
}
