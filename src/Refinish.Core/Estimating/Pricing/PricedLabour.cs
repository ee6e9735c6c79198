using System;
using System.Collections.Generic;

namespace Refinish.Estimating;

/// <summary>Paid hours of one item at one place and one wage, to be one line of an estimate.</summary>
/// <remarks>
/// Who does it joins the key only where one item at one place is paid at several wages: otherwise every shift of the schedule from one
/// person to another would move keys.
/// </remarks>
internal sealed class PricedLabour(
    string item, string? fixture, string? room, string? worker, string code, string description, decimal? wage, bool isPremium)
{
    private readonly string item = item;
    private readonly string? fixture = fixture;
    private readonly string? room = room;
    private readonly string? worker = worker;
    private bool hasSeveralWorkers;
    private double hours;

    public LineKey Key { get; private set; }

    /// <summary>Whoever does all of it; <see langword="null"/> for several or nobody in particular.</summary>
    public string? Worker => hasSeveralWorkers ? null : worker;

    public string Code { get; } = code;

    public string Description { get; } = description;

    /// <summary>The wage; that of the price book when missing.</summary>
    public decimal? Wage { get; } = wage;

    /// <summary>Whether it is paid on top of hours that are counted already.</summary>
    public bool IsPremium { get; } = isPremium;

    /// <summary>
    /// Hours are shown, and paid, in thousandths, rounded once: finer than anybody books, so that many short lines still add up.
    /// </summary>
    public decimal Hours => Math.Round((decimal)hours, 3, MidpointRounding.AwayFromZero);

    /// <summary>The lines of labour and of other paid time, in the order in which each first appears.</summary>
    public static List<PricedLabour> Of(EstimateRequest request)
    {
        List<PricedLabour> all = new(request.Labour.Lines.Count + request.PaidTime.Count);
        Dictionary<string, List<PricedLabour>> byPlace = new(StringComparer.Ordinal);
        for (int i = 0; i < request.Labour.Lines.Count; i++)
        {
            LabourTask task = request.Labour.Lines[i].Task;
            PricedLabour line = new("labour/" + task.Standard.Code, task.Fixture, task.Room, task.Worker, task.Standard.Code,
                task.Standard.Description, task.Wage, isPremium: false);
            Add(all, byPlace, line, request.Labour.Lines[i].HourRange.Mean);
        }

        for (int i = 0; i < request.PaidTime.Count; i++)
        {
            PaidTime paid = request.PaidTime[i];
            string item = paid.IsPremium ? "overtime" : paid.Operation is null ? "paid-time/" + paid.Id : "operation/" + paid.Operation;
            PricedLabour line = new(item, paid.Fixture, paid.Room, paid.Worker, paid.IsPremium ? "overtime" : paid.Operation ?? paid.Id,
                paid.Description, paid.Wage, paid.IsPremium);
            Add(all, byPlace, line, paid.Hours);
        }

        foreach (List<PricedLabour> same in byPlace.Values)
        {
            foreach (PricedLabour one in same)
            {
                one.Key = same.Count == 1 && !one.IsPremium
                    ? new(one.item, one.fixture, one.room)
                    : new(one.item, one.fixture, one.room, one.Worker, same.FindAll(other => other.Worker == one.Worker).Count > 1
                        ? one.Wage : null);
            }
        }

        return all;
    }

    private static void Add(List<PricedLabour> all, Dictionary<string, List<PricedLabour>> byPlace, PricedLabour one, double hours)
    {
        string place = new LineKey(one.item, one.fixture, one.room, one.IsPremium ? one.worker : null).Id;
        if (!byPlace.TryGetValue(place, out List<PricedLabour>? same))
        {
            byPlace.Add(place, same = []);
        }

        int at = same.FindIndex(other => other.Wage == one.Wage);
        if (at < 0)
        {
            same.Add(one);
            all.Add(one);
            at = same.Count - 1;
        }

        same[at].hours += hours;
        same[at].hasSeveralWorkers |= same[at].worker != one.worker;
    }
}
