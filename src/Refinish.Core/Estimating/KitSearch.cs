using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>Branch and bound for the cheapest covering set of kits, in whole microlitres.</summary>
internal sealed class KitSearch
{
    private const double Microlitre = 1e-9;

    private readonly long need;
    private readonly int[] order;
    private readonly long[] sizes;
    private readonly decimal[] prices;
    private readonly int[] counts;
    private readonly Dictionary<(int Kit, long Open), decimal> seen = [];
    private int[] best;
    private decimal bestCost = decimal.MaxValue;
    private long bestRest;

    public KitSearch(double need, IReadOnlyList<MaterialPrice> kits)
    {
        // A billionth of a microlitre of rounding noise must not cost another kit.
        this.need = (long)Math.Ceiling((need / Microlitre) - 1e-3);

        // Cheapest by volume first, the larger first among equals; the last keys make the order independent of the list.
        order = [.. Enumerable.Range(0, kits.Count)
            .OrderBy(i => kits[i].Price / (decimal)kits[i].Size.CubicMeters)
            .ThenByDescending(i => kits[i].Size.CubicMeters)
            .ThenBy(i => kits[i].Price)];
        sizes = [.. order.Select(i => Math.Max(1, (long)Math.Round(kits[i].Size.CubicMeters / Microlitre)))];
        prices = [.. order.Select(i => kits[i].Price)];
        counts = new int[order.Length];
        best = new int[order.Length];
    }

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

        if (kit == order.Length || seen.TryGetValue((kit, rest), out decimal before) && before <= cost)
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
