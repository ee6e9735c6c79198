using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;

namespace Refinish.Estimating;

/// <summary>
/// Branch and bound for the cheapest covering set of kits and one loose price, in whole steps of a resolution, so that equal sums compare
/// equal: picolitres, nanograms, millionths of a square millimetre, picometres, 10⁻¹² of a piece.
/// </summary>
internal sealed class KitSearch
{
    // A thousand steps short, of a volume a nanolitre, is enough: three kits of a third of the need have to do.
    private const long Slack = 1000;

    // Kits that all cost the same per amount leave the bound nothing to cut; the search then stops here with the best found.
    private const int MostSteps = 30_000;

    // Small searches end before a table of what was seen pays for itself.
    private const int TableFrom = 200;

    // Sizes that stand together in one purchase; every further one would be a call deeper. Any number may be on offer.
    private const int MostSizes = 64;

    // Bounds are reckoned in doubles and sums in decimals.
    private const double Tolerance = 1e-12;

    // Loose amounts are bought, and shown, in ten-thousandths of their unit, rounded up.
    private const decimal LooseStep = 0.0001m;

    private readonly KitOffer offer;
    private readonly double resolution;
    private readonly long need;
    private readonly int[] order;
    private readonly long[] sizes;
    private readonly decimal[] prices;

    // Price per step of each kit, rising.
    private readonly double[] rates;

    // The least price per step of this kit, all later ones and the loose material; the last entry is that of the loose alone.
    private readonly double[] floors;
    private readonly int[] counts;
    private readonly int[] best;
    private readonly double looseSize;
    private readonly decimal loosePrice;
    private readonly bool hasLoose;
    private Dictionary<(int Kit, long Open), decimal>? seen;
    private double bound = double.MaxValue;
    private long bestRest = long.MinValue;
    private long bestLoose;
    private int steps;
    private bool isCut;

    public KitSearch(double need, KitOffer offer, MaterialPrice? loose)
    {
        this.offer = offer;
        resolution = MaterialUnits.Most(offer.Dimension) * 1e-18;
        hasLoose = loose is not null;
        if (loose is not null)
        {
            looseSize = offer.SizeOf(loose).Value * (double)LooseStep / resolution;
            loosePrice = loose.Price * LooseStep;
        }

        // Cheapest by amount first, the larger first among equals; the last key makes the order independent of the list.
        order = Useful();
        Array.Sort(order, (a, b) =>
        {
            int byRate = Rate(a).CompareTo(Rate(b));
            int bySize = byRate != 0 ? byRate : offer.Sizes[b].CompareTo(offer.Sizes[a]);
            return bySize != 0 ? bySize : offer.Kits[a].Price.CompareTo(offer.Kits[b].Price);
        });
        sizes = new long[order.Length];
        prices = new decimal[order.Length];
        rates = new double[order.Length];
        floors = new double[order.Length + 1];
        counts = new int[order.Length];
        best = new int[order.Length];
        long step = 0;
        for (int i = 0; i < order.Length; i++)
        {
            sizes[i] = Steps(offer.Sizes[order[i]]);
            prices[i] = offer.Kits[order[i]].Price;
            rates[i] = (double)prices[i] / sizes[i];
            step = (long)BigInteger.GreatestCommonDivisor(sizes[i], step);
        }

        floors[order.Length] = hasLoose ? (double)loosePrice / looseSize : double.PositiveInfinity;
        for (int i = order.Length - 1; i >= 0; i--)
        {
            floors[i] = Math.Min(rates[i], floors[i + 1]);
        }

        // Of kits alone, what is bought is a multiple of what divides every size.
        long least = Math.Max(0, Steps(need) - Slack);
        this.need = hasLoose ? least : (least + step - 1) / step * step;
        Search();
    }

    public decimal Cost { get; private set; } = decimal.MaxValue;

    /// <summary>Whether nothing that could be cheaper was left out.</summary>
    public bool IsComplete => !isCut || need == 0 || (double)Cost <= need * floors[0] * (1 + Tolerance);

    /// <summary>How much of the loose material, in its unit.</summary>
    public decimal Loose => bestLoose * LooseStep;

    /// <summary>How many to buy of each kit, in the order of the offer.</summary>
    public int[] Counts()
    {
        int[] result = new int[offer.Kits.Count];
        for (int i = 0; i < order.Length; i++)
        {
            result[order[i]] = best[i];
        }

        return result;
    }

    private long Steps(double si) => (long)Math.Round(si / resolution);

    private double Rate(int kit) => (double)offer.Kits[kit].Price / offer.Sizes[kit];

    private void Search()
    {
        if (need == 0)
        {
            Cost = 0;
            return;
        }

        // One size alone is always an answer, and a good one to begin with.
        for (int kit = 0; kit < order.Length; kit++)
        {
            long count = (need + sizes[kit] - 1) / sizes[kit];
            counts[kit] = (int)count;
            Keep(count * prices[kit], need - (count * sizes[kit]), 0);
            counts[kit] = 0;
        }

        KeepWithLoose(0, need);
        Visit(0, need, 0, 1);
    }

    // Leaves out what is dearer than a larger kit or than as much of the loose material, and all but the cheapest of one size.
    private int[] Useful()
    {
        IReadOnlyList<MaterialPrice> kits = offer.Kits;
        int[] bySize = [.. Enumerable.Range(0, kits.Count)];
        Array.Sort(bySize, (a, b) =>
        {
            int larger = offer.Sizes[b].CompareTo(offer.Sizes[a]);
            int cheaper = larger != 0 ? larger : kits[a].Price.CompareTo(kits[b].Price);
            return cheaper != 0 ? cheaper : a.CompareTo(b);
        });
        int useful = 0;
        foreach (int kit in bySize)
        {
            if ((useful > 0 && kits[kit].Price > kits[bySize[useful - 1]].Price)
                || (hasLoose && kits[kit].Price >= LooseSteps(Steps(offer.Sizes[kit]) - Slack) * loosePrice))
            {
                continue;
            }

            // The last that was kept is the smallest and the cheapest so far.
            if (useful > 0 && IsSameSize(kit, bySize[useful - 1]))
            {
                useful--;
            }

            bySize[useful++] = kit;
        }

        Array.Resize(ref bySize, useful);
        return bySize;
    }

    private bool IsSameSize(int one, int other) =>
        Math.Abs(offer.Sizes[one] - offer.Sizes[other]) <= 1e-11 * offer.Sizes[other] && offer.Kits[one].Key == offer.Kits[other].Key;

    // Ten-thousandths of the loose unit that hold an open amount; the slack taken off the need is more than the rounding of this quotient.
    private long LooseSteps(long open) => (long)Math.Ceiling(open / looseSize);

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
                    Keep(spent, open, 0);
                    continue;
                }

                KeepWithLoose(spent, open);
                if (IsHopeless(spent, open, kit + 1))
                {
                    // What follows costs more per amount: with fewer of this one it only gets dearer.
                    if (rates[kit] <= floors[kit + 1])
                    {
                        break;
                    }
                }
                else if (depth == MostSizes)
                {
                    isCut |= kit + 1 < order.Length;
                }
                else if (IsNew(kit + 1, open, spent))
                {
                    Visit(kit + 1, open, spent, depth + 1);
                }
            }

            counts[kit] = 0;
        }
    }

    // What is open cannot be had for less than at the least rate of what follows. Equals are looked at only while something is left over.
    private bool IsHopeless(decimal cost, long open, int kit) =>
        (double)cost + (open * floors[kit]) > (bestRest == 0 ? bound * (1 - Tolerance) : bound * (1 + Tolerance))
        || (bestRest == 0 && Cost <= cost);

    private bool IsNew(int kit, long open, decimal spent)
    {
        if (steps < TableFrom || kit == order.Length)
        {
            return kit < order.Length;
        }

        seen ??= [];
        if (seen.TryGetValue((kit, open), out decimal before) && before <= spent)
        {
            return false;
        }

        seen[(kit, open)] = spent;
        return true;
    }

    private void KeepWithLoose(decimal spent, long open)
    {
        if (hasLoose)
        {
            long loose = LooseSteps(open);
            Keep(spent + (loose * loosePrice), 0, loose);
        }
    }

    private void Keep(decimal cost, long rest, long loose)
    {
        if (cost < Cost || (cost == Cost && rest > bestRest))
        {
            Cost = cost;
            bound = (double)cost;
            bestRest = rest;
            bestLoose = loose;
            Array.Copy(counts, best, counts.Length);
        }
    }
}
