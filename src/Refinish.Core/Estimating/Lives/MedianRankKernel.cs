using System.Collections.Generic;
using System.Linq;
using Refinish.Numerics;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>Ranks of failures among censored records. Symbols: n records, j order of a failure, r records not before it.</summary>
internal static class MedianRankKernel
{
    /// <summary>j = j' + (n + 1 − j')/(1 + r), j' the order of the failure before, 0 for the first.</summary>
    public static Num Next(Num before, Num remaining, Num all) => before + ((all + 1 - before) / (1 + remaining));

    /// <summary>(j − 0.3)/(n + 0.4).</summary>
    public static Num Bernard(Num order, Num all) => (order - 0.3) / (all + 0.4);

    /// <summary>The p at which I_p(j, n + 1 − j) = 1/2.</summary>
    public static double Exact(double order, int all) => Roots.Rising(
        (order, all), static (place, p) => Beta(place.order, place.all, p) - 0.5, 0, 1);

    public static double Beta(double order, int all, double p) => Special.Beta(order, all + 1 - order, p);

    /// <summary>The failures by age, each with its order; jobs that were still good at an age stand after those that failed at
    /// it.</summary>
    public static List<RankedFailure> Order(IReadOnlyList<LifeRecord> records, MedianRanks ranks)
    {
        int all = records.Sum(record => record.Count);
        int passed = 0;
        double order = 0;
        List<RankedFailure> points = [];
        foreach (LifeRecord record in records.OrderBy(record => record.AgeYears).ThenBy(record => record.Failed ? 0 : 1))
        {
            for (int i = 0; i < record.Count && record.Failed; i++)
            {
                int remaining = all - passed - i;
                order = Next(order, remaining, all).Value;
                double rank = ranks == MedianRanks.Bernard ? Bernard(order, all).Value : Exact(order, all);
                points.Add(new RankedFailure(record.AgeYears, order, remaining, Ratio.FromDecimalFractions(rank)));
            }

            passed += record.Count;
        }

        return points;
    }
}
