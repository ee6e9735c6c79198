using System;
using System.Collections.Generic;

namespace Refinish.Estimating;

/// <summary>Branch and bound for the cheapest covering set of kits, in whole picolitres, so that equal sums compare equal.</summary>
internal sealed class KitSearch
{
    private const double Picolitre = 1e-15;

    // A nanolitre short is enough: three kits of a third of the need have to do.
    private const long Slack = 1000;

    // Kits that all cost the same per volume leave the bound nothing to cut; the search then stops here with the best found.
    private const int MostSteps = 30_000;

    // Small searches end before a table of what was seen pays for itself.
    private const int TableFrom = 200;

    // Sizes in one purchase; every further one would be a call deeper.
    private const int MostSizes = 64;

    // Bounds are reckoned in doubles and sums in decimals.
    private const double Tolerance = 1e-12;

    private readonly long need;
    private readonly int[] order;
    private readonly long[] sizes;
    private readonly decimal[] prices;

    // Price per picolitre, rising.
    private readonly double[] rates;
    private readonly int[] counts;
    private readonly int[] best;
    private Dictionary<(int Kit, long Open), decimal>? seen;
    private decimal bestCost = decimal.MaxValue;
    private double bound = double.MaxValue;
    private long bestRest = long.MinValue;
    private int steps;
    private bool isCut;

    public KitSearch(double need, IReadOnlyList<MaterialPrice> kits)
    {
        // Cheapest by volume first, the larger first among equals; the last key makes the order independent of the list.
        order = Useful(kits);
        Array.Sort(order, (a, b) =>
        {
            int byRate = Rate(kits[a]).CompareTo(Rate(kits[b]));
            int bySize = byRate != 0 ? byRate : kits[b].CubicMeters.CompareTo(kits[a].CubicMeters);
            return bySize != 0 ? bySize : kits[a].Price.CompareTo(kits[b].Price);
        });
        sizes = new long[order.Length];
        prices = new decimal[order.Length];
        rates = new double[order.Length];
        counts = new int[order.Length];
        best = new int[order.Length];
        long step = 0;
        for (int i = 0; i < order.Length; i++)
        {
            sizes[i] = (long)Math.Round(kits[order[i]].CubicMeters / Picolitre);
            prices[i] = kits[order[i]].Price;
            rates[i] = (double)prices[i] / sizes[i];
            step = Divisor(sizes[i], step);
        }

        // What is bought is a multiple of what divides every size.
        long least = Math.Max(0, (long)Math.Round(need / Picolitre) - Slack);
        this.need = (least + step - 1) / step * step;
    }

    /// <summary>Whether nothing that could be cheaper was left out.</summary>
    public bool IsComplete => !isCut || need == 0 || (double)bestCost <= need * rates[0] * (1 + Tolerance);

    /// <summary>How many to buy of each kit, in the order of the list.</summary>
    public int[] Best(int kits)
    {
        int[] result = new int[kits];
        if (need == 0)
        {
            return result;
        }

        // One size alone is always an answer, and a good one to begin with.
        for (int kit = 0; kit < order.Length; kit++)
        {
            long count = (need + sizes[kit] - 1) / sizes[kit];
            counts[kit] = (int)count;
            Keep(count * prices[kit], need - (count * sizes[kit]));
            counts[kit] = 0;
        }

        Visit(0, need, 0, 1);
        for (int i = 0; i < order.Length; i++)
        {
            result[order[i]] = best[i];
        }

        return result;
    }

    // Leaves out what is dearer than a larger kit, and all but the cheapest of one size.
    private static int[] Useful(IReadOnlyList<MaterialPrice> kits)
    {
        int[] bySize = new int[kits.Count];
        for (int i = 0; i < bySize.Length; i++)
        {
            bySize[i] = i;
        }

        Array.Sort(bySize, (a, b) =>
        {
            int larger = kits[b].CubicMeters.CompareTo(kits[a].CubicMeters);
            int cheaper = larger != 0 ? larger : kits[a].Price.CompareTo(kits[b].Price);
            return cheaper != 0 ? cheaper : a.CompareTo(b);
        });
        int useful = 0;
        foreach (int kit in bySize)
        {
            if (useful > 0 && kits[kit].Price > kits[bySize[useful - 1]].Price)
            {
                continue;
            }

            // The last that was kept is the smallest and the cheapest so far.
            if (useful > 0 && IsSameSize(kits[kit], kits[bySize[useful - 1]]))
            {
                useful--;
            }

            bySize[useful++] = kit;
        }

        Array.Resize(ref bySize, useful);
        return bySize;
    }

    private static bool IsSameSize(MaterialPrice one, MaterialPrice other) =>
        Math.Abs(one.CubicMeters - other.CubicMeters) <= 1e-11 * other.CubicMeters && one.SizeKey == other.SizeKey;

    private static double Rate(MaterialPrice kit) => (double)kit.Price / kit.CubicMeters;

    private static long Divisor(long a, long b)
    {
        while (b != 0)
        {
            (a, b) = (b, a % b);
        }

        return a;
    }

    private void Visit(int from, long rest, decimal cost, int depth)
    {
        for (int kit = from; kit < order.Length && !IsHopeless(cost, rest, kit); kit++)
        {
            for (long n = (rest + sizes[kit] - 1) / sizes[kit]; n > 0; n--)
            {
                if (++steps > MostSteps)
                {
                    isCut = true;
                    counts[kit] = 0;
                    return;
                }

                decimal spent = cost + (n * prices[kit]);
                long open = rest - (n * sizes[kit]);
                counts[kit] = (int)n;
                if (open <= 0)
                {
                    Keep(spent, open);
                }
                else if (kit + 1 == order.Length || IsHopeless(spent, open, kit + 1))
                {
                    // Later kits cost more per volume: with fewer of this one it only gets dearer.
                    break;
                }
                else if (depth == MostSizes)
                {
                    isCut = true;
                }
                else if (IsNew(kit + 1, open, spent))
                {
                    Visit(kit + 1, open, spent, depth + 1);
                }
            }

            counts[kit] = 0;
        }
    }

    // What is open cannot be had for less than at the rate of the next kit. Equals are looked at only while something is left over.
    private bool IsHopeless(decimal cost, long open, int kit) =>
        (double)cost + (open * rates[kit]) > (bestRest == 0 ? bound * (1 - Tolerance) : bound * (1 + Tolerance))
        || (bestRest == 0 && bestCost <= cost);

    private bool IsNew(int kit, long open, decimal spent)
    {
        if (steps < TableFrom)
        {
            return true;
        }

        seen ??= [];
        if (seen.TryGetValue((kit, open), out decimal before) && before <= spent)
        {
            return false;
        }

        seen[(kit, open)] = spent;
        return true;
    }

    private void Keep(decimal cost, long rest)
    {
        if (cost < bestCost || (cost == bestCost && rest > bestRest))
        {
            bestCost = cost;
            bound = (double)cost;
            bestRest = rest;
            Array.Copy(counts, best, counts.Length);
        }
    }
}
