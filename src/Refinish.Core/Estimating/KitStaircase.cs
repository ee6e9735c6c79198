using System;
using System.Collections.Generic;

namespace Refinish.Estimating;

/// <summary>
/// The least cost of kits as a function of the need: flat from each need up to what its purchase holds, so that a few purchases answer
/// every need between two ends. Needs beyond the ends are bought one by one.
/// </summary>
internal sealed class KitStaircase
{
    // Two slacks of the kit search: the next need that the last purchase no longer holds.
    private const double Step = 2e-12;

    private const int MostSteps = 2000;

    private readonly ValueList<MaterialPrice> prices;
    private readonly List<double> ends = [];
    private readonly List<double> costs = [];
    private readonly double start;

    public KitStaircase(IReadOnlyList<MaterialPrice> prices, double from, double to)
    {
        this.prices = new ValueList<MaterialPrice>(prices);
        start = from;
        double need = from;
        while (need <= to && ends.Count < MostSteps)
        {
            KitPurchase purchase = new(need, this.prices, null);
            ends.Add(Math.Max(need, purchase.BoughtCubicMeters));
            costs.Add((double)purchase.Cost);
            need = ends[ends.Count - 1] + Step;
        }
    }

    public double CostOf(double need)
    {
        int last = ends.Count - 1;
        if (last < 0 || need < start || need > ends[last])
        {
            return (double)new KitPurchase(need, prices, null).Cost;
        }

        int low = 0;
        int high = last;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (ends[middle] >= need)
            {
                high = middle;
            }
            else
            {
                low = middle + 1;
            }
        }

        return costs[low];
    }
}
