using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// Reads from a finished schedule what lets each step start no sooner, when somebody asks. Every rule offers the time until which it holds
/// a step; a
/// rule drives the step when the first working time from then on is the step's start. Drivers are chosen so that every chain leads back to
/// the start
/// of the work: two steps that hold each other, by a least and a most time, do not explain each other. What was put off within its day is
/// driven by
/// what drove it before; how long it then waited is read from the times of the schedule.
/// </summary>
internal sealed class ChainFinder(SiteTimes times)
{
    private readonly SiteWork work = times.Work;
    private readonly StepModel model = times.Model;
    private readonly long start = times.Work.Start.UtcTicks;
    private readonly long[] starts = times.Early;
    private readonly long[] ends = times.Model.Ends(times.Early, times.Days);
    private ChainLink[]? links;

    /// <summary>The link of one step.</summary>
    public ChainLink Of(int step) => (links ??= Links())[step];

    private ChainLink[] Links()
    {
        List<Offer>[] offers = [.. Enumerable.Range(0, model.Count).Select(Offers)];
        Offer?[] chosen = new Offer?[model.Count];
        int[] inTime = [.. Enumerable.Range(0, model.Count).OrderBy(i => starts[i]).ThenBy(i => ends[i])];
        bool moved = true;
        while (moved)
        {
            moved = false;
            foreach (int i in inTime.Where(i => chosen[i] is null))
            {
                chosen[i] = offers[i].FirstOrDefault(offer => offer.IsTight && (offer.Driver < 0 || chosen[offer.Driver] is not null));
                moved |= chosen[i] is not null;
            }
        }

        foreach (int i in inTime)
        {
            chosen[i] = offers[i].FirstOrDefault(offer => (offer.IsTight || chosen[i] is null) && !LeadsTo(offer.Driver, i, chosen))
                ?? offers[i][offers[i].Count - 1];
        }

        return [.. chosen.Select((offer, i) => Link(i, offer!))];
    }

    private static bool LeadsTo(int from, int i, Offer?[] chosen)
    {
        int at = from;
        for (int steps = 0; at >= 0 && at != i && steps <= chosen.Length; steps++)
        {
            at = chosen[at]?.Driver ?? -1;
        }

        return at == i;
    }

    private ChainLink Link(int i, Offer offer)
    {
        (long between, long until) = Binding(i, offer);
        long wait = times.Starts[i] - until;
        return new ChainLink(work.Steps[i], offer.Kind, offer.Driver < 0 ? null : work.Steps[offer.Driver], offer.Edge?.Lag,
            TimeSpan.FromTicks(between))
        {
            Wait = TimeSpan.FromTicks(wait),
            Held = TimeSpan.FromTicks(times.Starts[i] == starts[i] ? 0
                : Math.Min(wait, Math.Max(0, times.Starts[i] - Math.Max(starts[i], model.Place(i, until, times.Days))))),
        };
    }

    // The rule at the times of the schedule: how much lies between, and until when it holds the step.
    private (long Between, long Until) Binding(int i, Offer offer)
    {
        if (offer.Driver < 0)
        {
            return (0, start);
        }

        if (offer.Kind == ChainLinkKind.Window)
        {
            long end = offer.Edge!.Value.End(times.Starts[offer.Driver]);
            return (times.Starts[offer.Driver] - end, end - model.Duration[i]);
        }

        long driven = times.Ends[offer.Driver];
        long until = offer.Edge is StepEdge edge ? edge.Start(driven) : driven + offer.Gap;
        return (until - driven, until);
    }

    /// <summary>
    /// All rules that hold a step, the one that holds longest first; of equals, in the order lag, room and crew, window, start.
    /// </summary>
    private List<Offer> Offers(int i)
    {
        List<Offer> offers = [];
        void Add(long until, ChainLinkKind kind, int driver, StepEdge? edge, long gap)
        {
            if (until >= start && until <= starts[i])
            {
                offers.Add(new Offer(until, kind, driver, edge, gap, model.Place(i, until, times.Days) == starts[i]));
            }
        }

        foreach (StepEdge edge in model.Edges)
        {
            if (edge.To == i)
            {
                Add(edge.Start(ends[edge.From]), ChainLinkKind.Lag, edge.From, edge, 0);
            }
        }

        for (int j = 0; j < model.Count; j++)
        {
            if (j != i && model.Gap(j, i) != StepModel.None && starts[j] <= starts[i])
            {
                Add(ends[j] + model.Gap(j, i), Kind(j, i), j, null, model.Gap(j, i));
            }
        }

        for (int m = 0; m < model.Means.Count; m++)
        {
            SharedMean mean = model.Means[m];
            if (mean.Capacity > 1 && LastOfCrowd(i, mean.Capacity, mean.Need) is int last)
            {
                Add(ends[last], m == 0 ? ChainLinkKind.Crew : ChainLinkKind.Tool, last, null, 0);
            }
        }

        foreach (StepEdge edge in model.Edges)
        {
            if (edge.From == i && edge.Lag.Maximum is not null)
            {
                Add(edge.End(starts[edge.To]) - model.Duration[i], ChainLinkKind.Window, edge.To, edge, 0);
            }
        }

        Add(start, ChainLinkKind.Start, -1, null, 0);
        return [.. offers.OrderByDescending(offer => offer.Until)];
    }

    // Where several share, the one that frees its place last drives, provided that there was no place before.
    private int? LastOfCrowd(int i, int capacity, int[] need)
    {
        int last = -1;
        for (int j = 0; j < model.Count && need[i] > 0; j++)
        {
            if (j != i && need[j] > 0 && starts[j] < starts[i] && ends[j] <= starts[i] && (last < 0 || ends[j] > ends[last]))
            {
                last = j;
            }
        }

        if (last < 0)
        {
            return null;
        }

        long before = ends[last] - 1;
        int used = Enumerable.Range(0, model.Count).Where(j => j != i && need[j] > 0 && starts[j] <= before && ends[j] > before)
            .Sum(j => need[j]);
        return used + need[i] > capacity ? last : null;
    }

    private ChainLinkKind Kind(int before, int after)
    {
        SiteStep a = work.Steps[before];
        SiteStep b = work.Steps[after];
        bool sameRoom = a.Room is not null && a.Room == b.Room;
        if (sameRoom && b.RaisesDust && a.DustFree > (b.Sprays ? TimeSpan.Zero : a.Clearing))
        {
            return ChainLinkKind.Dust;
        }

        return sameRoom && ((a.Sprays && !b.Sprays && a.Clearing > TimeSpan.Zero) || a.People + b.People <= work.Crew) ? ChainLinkKind.Room
            : a.People + b.People > work.Crew ? ChainLinkKind.Crew : ChainLinkKind.Tool;
    }

    private sealed record Offer(long Until, ChainLinkKind Kind, int Driver, StepEdge? Edge, long Gap, bool IsTight);
}
