using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Air;
using Refinish.Colours;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Tests.Jobs;

/// <summary>Makes a job that breaks a rule as small as it will go while it still breaks it, and writes it down.</summary>
internal static class Shrinking
{
    private const int Tries = 80;

    public static Job Smallest(Job job, Func<Job, bool> breaks)
    {
        int tried = 0;
        bool smaller = true;
        while (smaller)
        {
            smaller = false;
            foreach (Func<Job> next in Simpler(job))
            {
                Job candidate;
                try
                {
                    candidate = next();
                }
                catch (ArgumentException)
                {
                    continue;
                }

                if (candidate.Equals(job))
                {
                    continue;
                }

                if (++tried > Tries)
                {
                    return job;
                }

                if (breaks(candidate))
                {
                    job = candidate;
                    smaller = true;
                    break;
                }
            }
        }

        return job;
    }

    public static string Describe(Job job)
    {
        List<string> text =
        [
            string.Create(CultureInfo.InvariantCulture, $"start {job.Start:ddd yyyy-MM-dd HH:mm}, difficulty {job.Premises.Difficulty}, ")
                + job.Shop.Crew.Count + " people"
                + (job.Shop.Crew.Any(worker => worker.Wage is not null) ? " with wages of their own" : string.Empty) + (job.Shop.StandsBy
                    ? ", one stands by" : string.Empty)
                + ", " + job.Shop.Guns + " guns, " + job.Shop.Paid + ", " + job.Shop.Prefers + ", " + job.Shop.System.Id + ", minimum "
                    + job.Shop.Prices.MinimumCharge.ToString(CultureInfo.InvariantCulture),
            "calendar " + job.Shop.Calendar + ", " + job.Premises.QuietHours.Count + " quiet hours, closed " + string.Join(", ",
                job.Premises.Closed) + ", " + string.Join(", ", job.Days),
        ];
        foreach (SiteRoom room in job.Premises.Rooms.Where(room => job.Fixtures.Any(fixture => fixture.Room == room.Id)))
        {
            text.Add("room " + room.Id + ": " + room.Room + "; " + room.Exhaust + "; " + room.Climate);
        }

        foreach (FixtureJob fixture in job.Fixtures)
        {
            text.Add(
                "fixture " + fixture.Id + " in " + fixture.Room + ": " + fixture.Survey.Material + ", "
                    + fixture.Fixture.CoatedArea.SquareMeters.ToString("0.####", CultureInfo.InvariantCulture) + " m² × " + fixture.Share
                + ", defects " + string.Join("; ", fixture.Survey.Defects.Select(defect => defect.Describe(DisplayUnits.Si)))
                + (fixture.Survey.PreviouslyRefinished ? ", refinished before, " + fixture.Survey.OldCoatAdhesion : string.Empty)
                + ", options " + string.Join(", ", fixture.Options.Select(option => option.Code))
                + (fixture.Surface is Temperature at ? ", at " + at.DegreesCelsius.ToString("0.###", CultureInfo.InvariantCulture) + " °C"
                    : string.Empty)
                + (fixture.System is null ? string.Empty : ", " + fixture.System.Id));
        }

        return string.Join("\n", text);
    }

    private static IEnumerable<Func<Job>> Simpler(Job job)
    {
        Shop shop = job.Shop;
        foreach (FixtureJob fixture in job.Fixtures)
        {
            yield return () => job with { Fixtures = [fixture] };
        }

        yield return () => Plain(job);
        foreach (FixtureJob fixture in job.Fixtures)
        {
            yield return () => job with { Fixtures = [.. job.Fixtures.Where(one => one.Id != fixture.Id)] };
        }

        foreach (SiteRoom room in job.Premises.Rooms)
        {
            yield return () => job with { Premises = job.Premises with { Rooms = [.. job.Premises.Rooms.Where(one =>
                one.Id != room.Id)] } };
        }

        yield return () => job with { Days = [] };
        yield return () => job with { Replacement = null };
        yield return () => job with { Premises = job.Premises with { QuietHours = [] } };
        yield return () => job with { Premises = job.Premises with { Closed = [] } };
        yield return () => job with { Premises = job.Premises with { Difficulty = 1 } };
        yield return () => job with { Start = InventedJobs.Monday };
        yield return () => job with { Shop = shop with { Crew = [.. shop.Crew.Take(shop.Crew.Count - 1)] } };
        yield return () => job with { Shop = shop with { Crew = [.. shop.Crew.Select(worker => new Worker { Id = worker.Id })] } };
        yield return () => job with { Shop = shop with { StandsBy = false } };
        yield return () => job with { Shop = shop with { Guns = 1 } };
        yield return () => job with { Shop = shop with { Paid = PaidTimeRule.OnSite } };
        yield return () => job with { Shop = shop with { Prefers = Refinish.Scheduling.SchedulePreference.FewestVisits } };
        yield return () => job with { Shop = shop with { Calendar = InventedJobs.Weekdays } };
        yield return () => job with { Shop = shop with { Limits = LimitSets.Default } };
        yield return () => job with { Shop = shop with { System = InventedJobs.Shop.System } };
        yield return () => job with { Shop = shop with { Prices = shop.Prices with { MinimumCharge = 0, CashStep = 0 } } };
        foreach (SiteRoom room in job.Premises.Rooms)
        {
            SiteRoom plain = InventedJobs.Bath(room.Id, 22, 20);
            yield return () => With(job, room with { Climate = plain.Climate });
            yield return () => With(job, room with { Room = plain.Room, Exhaust = plain.Exhaust });
        }

        foreach (FixtureJob fixture in job.Fixtures)
        {
            foreach (FixtureOption option in fixture.Options)
            {
                yield return () => With(job, fixture with { Options = [.. fixture.Options.Where(one => one.Code != option.Code)] });
            }

            foreach (Defect defect in fixture.Survey.Defects)
            {
                yield return () => With(job, fixture with { Survey = fixture.Survey with { Defects = [.. fixture.Survey.Defects.Where(one =>
                    !ReferenceEquals(one, defect))] } });
            }

            yield return () => With(job, fixture with { Fixture = RandomJobs.Panel(1, 1) });
            yield return () => With(job, fixture with { Survey = new Survey { Material = fixture.Survey.Material,
                Defects = fixture.Survey.Defects, YearBuilt = 1995 } });
            yield return () => With(job, fixture with { Survey = fixture.Survey with { Material = FixtureMaterial.EnamelledSteel } });
            yield return () => With(job, fixture with { Surface = null });
            yield return () => With(job, fixture with { System = null });
            yield return () => With(job, fixture with { Share = Ratio.FromPercent(100) });
            yield return () => With(job, fixture with { OldColour = null, NewColour = (CieLab?)null });
            yield return () => With(job, fixture with { Room = job.Premises.Rooms[0].Id });
        }
    }

    // Everything but crew and fixtures at its usual value, in one step.
    private static Job Plain(Job job) => job with
    {
        Start = InventedJobs.Monday,
        Days = [],
        Replacement = null,
        Premises = job.Premises with { QuietHours = [], Closed = [], Difficulty = 1, Rooms = [.. job.Premises.Rooms.Select(room =>
            InventedJobs.Bath(room.Id, 22, 20))] },
        Shop = InventedJobs.Shop with { Crew = job.Shop.Crew, StandsBy = job.Shop.StandsBy },
    };

    private static Job With(Job job, FixtureJob fixture) => job with { Fixtures = [.. job.Fixtures.Select(one => one.Id == fixture.Id
        ? fixture : one)] };

    private static Job With(Job job, SiteRoom room) => job with { Premises = job.Premises with { Rooms = [.. job.Premises.Rooms.Select(one =>
        one.Id == room.Id ? room : one)] } };
}
