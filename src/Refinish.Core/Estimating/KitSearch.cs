using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>Branch and bound for the cheapest covering set of kits, in whole picolitres, so that equal sums compare equal.</summary>
internal sealed class KitSearch
{
    private const double Picolitre = 1e-15;

    // A nanolitre short is enough: three kits of a third of the need have to do.
    private const long Slack = 1000;

    // Kits that all cost the same per volume leave the bound nothing to cut; the search then stops here and says so.
    private const int MostVisits = 300_000;

    private readonly long need;
    private readonly int[] order;
    private readonly long[] sizes;
    private readonly decimal[] prices;
    private readonly int[] counts;
    private readonly Dictionary<(int Kit, long Open), decimal> seen = [];
    private int[] best;
    private decimal bestCost = decimal.MaxValue;
    private long bestRest;
    private int visits;

    public KitSearch(double need, IReadOnlyList<MaterialPrice> kits)
    {
        this.need = (long)Math.Round(need / Picolitre) - Slack;

        // Cheapest by volume first, the larger first among equals; the last keys make the order independent of the list.
        order = [.. Enumerable.Range(0, kits.Count)
            .OrderBy(i => kits[i].Price / (decimal)kits[i].Size.CubicMeters)
            .ThenByDescending(i => kits[i].Size.CubicMeters)
            .ThenBy(i => kits[i].Price)];
        sizes = [.. order.Select(i => Math.Max(1, (long)Math.Round(kits[i].Size.CubicMeters / Picolitre)))];
        prices = [.. order.Select(i => kits[i].Price)];
        counts = new int[order.Length];
        best = new int[order.Length];
    }

    /// <summary>Whether the search ended by itself.</summary>
    public bool IsComplete => visits <= MostVisits;

    public int[] Best()
    {
        Visit(0, need, 0);
        int[] result = new int[order.Length];
        for (int i = 0; i < order.Length; i++)
        {
            result[order[i]] = best[i];
        }

        return result;
    }

    private void Visit(int kit, long rest, decimal cost)
    {
        if (rest <= 0)
        {
            if (cost < bestCost || (cost == bestCost && rest > bestRest))
            {
                bestCost = cost;
                bestRest = rest;
                best = (int[])counts.Clone();
            }

            return;
        }

        if (kit == order.Length || (seen.TryGetValue((kit, rest), out decimal before) && before <= cost))
        {
            return;
        }

        // The first descent always runs to its end, so that there is an answer.
        if (++visits > MostVisits)
        {
            return;
        }

        seen[(kit, rest)] = cost;
        long most = (rest + sizes[kit] - 1) / sizes[kit];
        bool last = kit == order.Length - 1;
        for (long n = most; n >= (last ? most : 0); n--)
        {
            decimal spent = cost + (n * prices[kit]);
            long open = rest - (n * sizes[kit]);

            // Kits are in order of price per volume, so what is open cannot be had for less than at the next one's rate,
            // and fewer of this one only makes it dearer. The last digits of the division must not cut off an equal.
            if (open > 0 && spent + (prices[kit + 1] * open / sizes[kit + 1]) - 1e-9m > bestCost)
            {
                break;
            }

            counts[kit] = (int)n;
            Visit(kit + 1, open, spent);
        }

        counts[kit] = 0;
    }
}
