using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// Reads from a finished schedule what lets each step start no sooner. Every rule offers the time until which it holds a step; a rule drives the
/// step when the first working time from then on is the step's start. Drivers are chosen so that every chain leads back to the start of the work:
/// two steps that hold each other, by a least and a most time, do not explain each other.
/// </summary>
internal sealed class ChainFinder(SiteWork work, StepModel model, Openings openings, long[] starts, long[] ends)
{
    private readonly long start = work.Start.UtcTicks;

    public ChainLink[] Links()
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
            chosen[i] = offers[i].FirstOrDefault(offer => (offer.IsTight || chosen[i] is null) && !LeadsTo(offer.Driver, i, chosen)) ?? offers[i][offers[i].Count - 1];
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

    private ChainLink Link(int i, Offer offer) => new(
        work.Steps[i].Name,
        offer.Kind,
        offer.Driver < 0 ? null : work.Steps[offer.Driver].Name,
        offer.Lag,
        TimeSpan.FromTicks(offer.Between),
        TimeSpan.FromTicks(starts[i] - offer.Until));

    /// <summary>All rules that hold a step, the one that holds longest first; of equals, in the order lag, room and crew, window, start.</summary>
    private List<Offer> Offers(int i)
    {
        List<Offer> offers = [];
        void Add(long until, ChainLinkKind kind, int driver, StepLag? lag, long between)
        {
            if (until >= start && until <= starts[i])
            {
                offers.Add(new Offer(until, kind, driver, lag, between, Place(i, until) == starts[i]));
            }
        }

        foreach ((int other, long minimum, int index) in model.Before[i])
        {
            Add(ends[other] + minimum, ChainLinkKind.Lag, other, work.Lags[index], minimum);
        }

        for (int j = 0; j < model.Count; j++)
        {
            if (j != i && model.Gap[j][i] != StepModel.None && starts[j] <= starts[i])
            {
                Add(ends[j] + model.Gap[j][i], Kind(j, i), j, null, model.Gap[j][i]);
            }
        }

        foreach ((string name, int capacity, int[] need) in model.Means)
        {
            if (capacity > 1 && LastOfCrowd(i, capacity, need) is int last)
            {
                Add(ends[last], name == "the crew" ? ChainLinkKind.Crew : ChainLinkKind.Tool, last, null, 0);
            }
        }

        foreach (StepLag lag in work.Lags.Where(lag => lag.Maximum is not null && lag.Before == work.Steps[i].Name))
        {
            int follower = IndexOf(lag.After);
            Add(starts[follower] - lag.Maximum!.Value.Ticks - model.Duration[i], ChainLinkKind.Window, follower, lag, lag.Maximum.Value.Ticks);
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
        int used = Enumerable.Range(0, model.Count).Where(j => j != i && need[j] > 0 && starts[j] <= before && ends[j] > before).Sum(j => need[j]);
        return used + need[i] > capacity ? last : null;
    }

    private long Place(int i, long time) =>
        !model.Attended[i] ? time : model.Interruptible[i] && model.Duration[i] > 0 ? openings.FirstOpen(time) : openings.FirstFit(time, model.Duration[i]);

    private int IndexOf(string name)
    {
        int i = 0;
        while (work.Steps[i].Name != name)
        {
            i++;
        }

        return i;
    }

    private ChainLinkKind Kind(int before, int after)
    {
        SiteStep a = work.Steps[before];
        SiteStep b = work.Steps[after];
        bool sameRoom = a.Room is not null && a.Room == b.Room;
        if (sameRoom && b.RaisesDust && a.DustFree > a.Clearing)
        {
            return ChainLinkKind.Dust;
        }

        return sameRoom && ((a.Sprays && a.Clearing > TimeSpan.Zero) || a.People + b.People <= work.Crew) ? ChainLinkKind.Room
            : a.People + b.People > work.Crew ? ChainLinkKind.Crew : ChainLinkKind.Tool;
    }

    private sealed record Offer(long Until, ChainLinkKind Kind, int Driver, StepLag? Lag, long Between, bool IsTight);
}
