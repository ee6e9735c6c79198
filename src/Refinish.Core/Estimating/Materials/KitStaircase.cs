using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>
/// The least cost of a material as a function of the need. Of kits alone it is flat from each need up to what its purchase holds, so that a
/// few purchases answer every need between two ends. Where the material is sold loose too, it is the least over these purchases of their
/// cost and what the rest costs at the loose rate. Needs beyond the ends are bought one by one.
/// </summary>
internal sealed class KitStaircase
{
    private const int MostSteps = 2000;

    private readonly ValueList<MaterialPrice> prices;
    private readonly KitOffer offer;
    private readonly List<double> ends = [];
    private readonly List<double> costs = [];

    // Of the purchases up to here, the least cost beyond what they hold at the loose rate.
    private readonly List<double> beyond = [];
    private readonly double rate;
    private readonly double start;

    public KitStaircase(KitPurchase purchase, double from, double to)
    {
        prices = new ValueList<MaterialPrice>(purchase.Prices);
        offer = purchase.Offer;
        rate = offer.Loose.Count > 0 ? offer.Rate(offer.Loose[0]) : double.PositiveInfinity;
        start = from;
        if (offer.Kits.Count > 0)
        {
            Climb(from, to);
        }
    }

    public double CostOf(double need)
    {
        if (offer.Kits.Count == 0)
        {
            return need * rate;
        }

        int last = ends.Count - 1;
        if (last < 0 || need < start || need > ends[last])
        {
            return (double)new KitPurchase(need, prices, offer, null).Cost;
        }

        int low = ends.BinarySearch(need);
        low = low < 0 ? ~low : low;
        double kits = costs[low];
        return offer.Loose.Count == 0 ? kits : Math.Min(kits, (low > 0 ? Math.Min(beyond[low - 1], 0) : 0) + (need * rate));
    }

    // With loose material fewer than the largest kit is left open, or one more of it would be cheaper: purchases from there on are enough.
    private void Climb(double from, double to)
    {
        KitOffer kits = offer.Loose.Count == 0 ? offer : offer.KitsAlone();
        // Two slacks of the search: the next need that the last purchase no longer holds.
        double step = 2e-15 * MaterialUnits.Most(offer.Dimension);
        double need = offer.Loose.Count == 0 ? from : Math.Max(step, from - offer.Sizes.Max());
        while (need <= to && ends.Count < MostSteps)
        {
            KitPurchase purchase = new(need, prices, kits, null);
            ends.Add(Math.Max(need, purchase.Bought.Si));
            costs.Add((double)purchase.Cost);
            double after = costs[ends.Count - 1] - (ends[ends.Count - 1] * rate);
            beyond.Add(beyond.Count > 0 ? Math.Min(beyond[beyond.Count - 1], after) : after);
            need = ends[ends.Count - 1] + step;
        }
    }
}
