using System;
using System.Collections.Generic;
using System.Globalization;

namespace Refinish.Estimating;

/// <summary>Paid hours of one standard at one wage, to be one line of an estimate.</summary>
internal sealed class PricedLabour
{
    private readonly bool hasWorker;
    private double hours;

    private PricedLabour(LabourTask task, string key)
    {
        Code = task.Standard.Code;
        Description = task.Standard.Description;
        Wage = task.Wage;
        Id = key;
        hasWorker = task.Worker is not null;
    }

    public string Id { get; private set; }

    public string Code { get; }

    public string Description { get; }

    /// <summary>The wage of whoever works; that of the price book when missing.</summary>
    public decimal? Wage { get; }

    /// <summary>Hours are shown, and paid, in hundredths, rounded once.</summary>
    public decimal Hours => Money.Round(hours);

    /// <summary>The lines of some labour, in the order in which standard and worker first appear.</summary>
    public static List<PricedLabour> Of(IReadOnlyList<LabourLine> lines)
    {
        List<PricedLabour> all = new(lines.Count);
        Dictionary<string, int> first = new(lines.Count, StringComparer.Ordinal);
        for (int i = 0; i < lines.Count; i++)
        {
            LabourTask task = lines[i].Task;
            string key = task.Wage is null || task.Worker is null
                ? "labour/" + task.Standard.Code
                : "labour/" + task.Standard.Code + "/" + task.Worker;
            if (!first.TryGetValue(key, out int at))
            {
                first.Add(key, at = all.Count);
                all.Add(new PricedLabour(task, key));
            }
            else if (all[at].Wage != task.Wage)
            {
                at = WithAnotherWage(all, at, task, key);
            }

            all[at].hours += lines[i].HourRange.Mean;
        }

        return all;
    }

    // One standard and worker at several wages, which is rare: the wage then joins the id.
    private static int WithAnotherWage(List<PricedLabour> all, int first, LabourTask task, string key)
    {
        string id = key + Suffix(task.Wage, task.Worker is not null);
        for (int i = first + 1; i < all.Count; i++)
        {
            if (all[i].Id == id)
            {
                return i;
            }
        }

        if (all[first].Id == key)
        {
            all[first].Id = key + Suffix(all[first].Wage, all[first].hasWorker);
        }

        all.Add(new PricedLabour(task, id));
        return all.Count - 1;
    }

    private static string Suffix(decimal? wage, bool hasWorker) =>
        wage is decimal known ? (hasWorker ? "/" : "//") + known.ToString("G29", CultureInfo.InvariantCulture) : string.Empty;
}
