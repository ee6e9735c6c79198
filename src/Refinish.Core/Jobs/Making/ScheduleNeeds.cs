using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Scheduling;

namespace Refinish.Jobs;

/// <summary>
/// Operations that only a schedule shows to be needed: a gun cleaned because another product, or a night, comes between two coats, and a
/// surface wiped again because a night falls between abrading and promoter. They are put into the list, and the list is scheduled again.
/// </summary>
internal sealed class ScheduleNeeds
{
    /// <summary>Nothing yet.</summary>
    public static readonly ScheduleNeeds None = new();

    private readonly HashSet<(string Run, string Next)> cleanings = [];
    private readonly HashSet<string> wiped = new(StringComparer.Ordinal);
    private readonly HashSet<string> filled = new(StringComparer.Ordinal);

    private ScheduleNeeds()
    {
    }

    /// <summary>Runs after which the gun is cleaned, each with the run that must wait for it.</summary>
    public IEnumerable<(string Run, string Next)> Cleanings => cleanings;

    public bool CleansAfter(string run) => cleanings.Any(pair => pair.Run == run);

    /// <summary>Whether the surface is wiped again before a first coat.</summary>
    public bool WipesBefore(string run) => wiped.Contains(run);

    /// <summary>Whether a coat finds the hose empty, since the gun was cleaned for a coat elsewhere.</summary>
    public bool FillsHoseFor(string run) => filled.Contains(run);

    /// <summary>Whether these are more needs than others, of runs that are asked for.</summary>
    public bool AddTo(ScheduleNeeds others, Func<string, bool> isAskedFor) =>
        cleanings.Any(pair => !others.cleanings.Contains(pair) && isAskedFor(pair.Run))
        || wiped.Any(run => !others.wiped.Contains(run) && isAskedFor(run))
        || filled.Any(run => !others.filled.Contains(run) && isAskedFor(run));

    /// <summary>These needs and those that a schedule shows; <see langword="null"/> when it shows no further ones.</summary>
    public ScheduleNeeds? With(WorkList work, SiteSchedule found)
    {
        Dictionary<string, PlannedStep> times = found.Steps.ToDictionary(step => step.Step.Id, StringComparer.Ordinal);
        ScheduleNeeds more = new();
        more.cleanings.UnionWith(cleanings.Concat(Uncleaned(work, times).Select(pair => (pair.Run.Id, pair.Next.Id))));
        more.wiped.UnionWith(wiped.Concat(AfterNights(work, times).Select(run => run.Id)));
        bool mayHoldUp = work.Procedures.Any(procedure => procedure.Losses.HoldUp.CubicMeters > 0);
        more.filled.UnionWith(filled.Concat(InGun(work, times)
            .Where(pair => mayHoldUp && pair.IsCleaned && pair.Next.Demand.HoldUp.CubicMeters == 0).Select(pair => pair.Next.Id)));
        return more.cleanings.Count > cleanings.Count || more.wiped.Count > wiped.Count || more.filled.Count > filled.Count ? more : null;
    }

    /// <summary>
    /// Runs that follow each other through one gun which nobody cleans in between, although the product is another or would set in it.
    /// </summary>
    public static IEnumerable<(CoatRun Run, CoatRun Next)> Uncleaned(WorkList work, IReadOnlyDictionary<string, PlannedStep> times) =>
        InGun(work, times).Where(pair => !pair.IsCleaned && (pair.Run.Layer.Product.Id != pair.Next.Layer.Product.Id
            || times[pair.Next.Id].Start - times[pair.Run.Id].Start > pair.Run.InCup.PotLife)).Select(pair => (pair.Run, pair.Next));

    // Runs that follow each other through one gun, and whether it is cleaned in between. With one gun all coats go through it; with more,
    // each room is taken to keep its own.
    private static IEnumerable<(CoatRun Run, CoatRun Next, bool IsCleaned)> InGun(
        WorkList work, IReadOnlyDictionary<string, PlannedStep> times)
    {
        string GunOf(string id, string? room) => work.Shop.Guns == 1 ? string.Empty : room ?? id.Split('/')[0];
        ILookup<string, PlannedStep> cleanings = work.Operations
            .Where(operation => operation.Kind == WorkKind.CleanGun && times.ContainsKey(operation.Id))
            .ToLookup(operation => GunOf(operation.Id, operation.Room), operation => times[operation.Id], StringComparer.Ordinal);
        foreach (IGrouping<string, CoatRun> gun in work.Runs.Where(run => times.ContainsKey(run.Id))
            .GroupBy(run => GunOf(run.Id, times[run.Id].Step.Room), StringComparer.Ordinal))
        {
            CoatRun[] runs = [.. gun.OrderBy(run => times[run.Id].Start)];
            for (int i = 0; i + 1 < runs.Length; i++)
            {
                PlannedStep step = times[runs[i].Id];
                PlannedStep next = times[runs[i + 1].Id];
                yield return (runs[i], runs[i + 1], cleanings[gun.Key].Any(clean => clean.Start >= step.End && clean.End <= next.Start));
            }
        }
    }

    /// <summary>First coats on a surface that was abraded, or wiped, on an earlier day.</summary>
    public static IEnumerable<CoatRun> AfterNights(WorkList work, IReadOnlyDictionary<string, PlannedStep> times)
    {
        LocalClock clock = work.Shop.Calendar.Clock;
        Dictionary<string, DateTime> keyed = new(StringComparer.Ordinal);
        foreach (Operation operation in work.Operations)
        {
            if (operation.Kind is WorkKind.Key or WorkKind.RinseAndDry or WorkKind.WipeAgain && times.TryGetValue(operation.Id, out PlannedStep? step))
            {
                DateTime day = clock.OnSite(step.End).Date;
                foreach (string fixture in operation.Fixtures)
                {
                    keyed[fixture] = day;
                }
            }
            else if (operation.Sprays)
            {
                if (work.Runs.FirstOrDefault(run => run.Id == operation.Id) is CoatRun run && times.TryGetValue(run.Id, out PlannedStep? coat)
                    && operation.Fixtures.Any(fixture => keyed.TryGetValue(fixture, out DateTime on) && on < clock.OnSite(coat.Start).Date))
                {
                    yield return run;
                }

                foreach (string fixture in operation.Fixtures)
                {
                    keyed.Remove(fixture);
                }
            }
        }
    }
}
