using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>
/// The prices of one item as they serve a need of one dimension, their sizes turned into it by the density where that is known.
/// </summary>
internal sealed class KitOffer
{
    // Counts of kits are whole numbers up to here.
    private const double MostKits = 1e9;

    public KitOffer(IReadOnlyList<MaterialPrice> prices, MaterialDimension dimension, double? density)
    {
        Dimension = dimension;
        Density = density;
        List<MaterialPrice> kits = new(prices.Count);
        List<double> sizes = new(prices.Count);
        List<MaterialPrice> loose = [];
        List<MaterialPrice> unused = [];
        double least = double.PositiveInfinity;
        for (int i = 0; i < prices.Count; i++)
        {
            MaterialPrice price = prices[i];
            if (price.Size.As(dimension, density) is not Num size)
            {
                unused.Add(price);
            }
            else if (price.IsCounted)
            {
                kits.Add(price);
                sizes.Add(size.Value);
                least = Math.Min(least, size.Value);
            }
            else
            {
                loose.Add(price);
            }
        }

        // The cheapest first; the further keys make the order independent of the list.
        loose.Sort((a, b) =>
        {
            int byRate = Rate(a).CompareTo(Rate(b));
            return byRate != 0 ? byRate : string.CompareOrdinal(a.Key, b.Key);
        });
        Kits = kits;
        Sizes = [.. sizes];
        Loose = loose;
        Unused = new ValueList<MaterialPrice>(unused);
        Most = Math.Min(MaterialUnits.Most(dimension), MostKits * least);
    }

    public MaterialDimension Dimension { get; }

    public double? Density { get; }

    /// <summary>What is bought in whole numbers: kits, and loose pieces.</summary>
    public IReadOnlyList<MaterialPrice> Kits { get; }

    /// <summary>What each of them holds, in SI of the dimension.</summary>
    public double[] Sizes { get; }

    /// <summary>What any amount is sold of, the cheapest first.</summary>
    public IReadOnlyList<MaterialPrice> Loose { get; }

    /// <summary>Prices that do not serve: of another dimension, with nothing that turns one into the other.</summary>
    public ValueList<MaterialPrice> Unused { get; }

    /// <summary>The largest need that is answered, in SI of the dimension.</summary>
    public double Most { get; }

    public bool Serves => Kits.Count + Loose.Count > 0;

    /// <summary>The same without what is sold loose by measure.</summary>
    public KitOffer KitsAlone() => new(Kits, Dimension, Density);

    /// <summary>What a price holds in SI of the dimension.</summary>
    public Num SizeOf(MaterialPrice price, Trace? t = null) => price.Size.As(Dimension, Density, t)!.Value;

    /// <summary>Price per SI unit of the dimension.</summary>
    public double Rate(MaterialPrice price) => (double)price.Price / SizeOf(price).Value;

    /// <summary>The best price per amount; the first listed among equals.</summary>
    public MaterialPrice Best()
    {
        MaterialPrice? best = Loose.Count > 0 ? Loose[0] : null;
        for (int i = 0; i < Kits.Count; i++)
        {
            best = best is null || Rate(Kits[i]) < Rate(best) ? Kits[i] : best;
        }

        return best!;
    }

    /// <summary>Why nothing serves, or why the need is too large; <see langword="null"/> where it can be bought.</summary>
    public string? Refusal(double need)
    {
        if (!Serves)
        {
            bool wantsDensity = Dimension <= MaterialDimension.Mass && Unused.Any(price => price.Size.Dimension <= MaterialDimension.Mass);
            IEnumerable<string> sold = Unused.Select(price => "by " + MaterialUnits.Word(price.Size.Dimension)).Distinct();
            return "it is needed by " + MaterialUnits.Word(Dimension) + " and sold " + string.Join(" and ", sold) + ", and "
                + (wantsDensity ? "its density is not known" : "nothing turns one into the other");
        }

        return need <= Most
            ? null
            : new MaterialAmount(Dimension, need).Text(12) + " is needed, and at most " + new MaterialAmount(Dimension, Most).Text(6)
                + " is bought at once";
    }
}
