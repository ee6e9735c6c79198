using System;
using System.Collections.Generic;

namespace Refinish.Coverage;

/// <summary>
/// Chooses how many batches of which cup: the least total that delivers the need, then the fewest batches. One cup alone has a closed form.
/// Several are tried alone and
/// in pairs first; a find that no set of batches can beat is taken, and only else every total is searched with <see cref="CupSearch"/>.
/// </summary>
internal sealed class CupChoice
{
    /// <summary>More batches than this are no plan that anybody would mix.</summary>
    public const int MostBatches = 1000;

    private readonly double need;
    private readonly double residue;
    private readonly UsableCup[] cups;
    private readonly double tolerance;

    private double total = double.PositiveInfinity;
    private int count = int.MaxValue;
    private CupShare first;
    private CupShare second;

    /// <summary>The need and the residue in m³, and cups of which each delivers more than the residue.</summary>
    public CupChoice(double need, double residue, UsableCup[] cups)
    {
        this.need = need;
        this.residue = residue;
        this.cups = cups;
        tolerance = CupSearch.Slack * need;
        double largest = 0;
        foreach (UsableCup cup in cups)
        {
            largest = Math.Max(largest, (cup.Most * cup.Step) - residue);
        }

        LargestDelivery = largest;
        FewestBatches = Math.Max(1, Math.Ceiling((need / largest) - CupSearch.Slack));
    }

    /// <summary>The most that one batch delivers.</summary>
    public double LargestDelivery { get; }

    /// <summary>No plan has fewer batches; a whole number that may be too large for a count.</summary>
    public double FewestBatches { get; }

    /// <summary>Whether the choice is proved to be the best.</summary>
    public bool IsLeast { get; private set; }

    /// <summary>Any sizes of batch. Call it only while <see cref="FewestBatches"/> is at most <see cref="MostBatches"/>.</summary>
    public List<CupShare> Free()
    {
        for (int a = 0; a < cups.Length; a++)
        {
            CupShare alone = Alone(a, need);
            Offer(alone, default);
            for (int b = 0; b < cups.Length; b++)
            {
                if (b != a)
                {
                    Pair(a, b);
                }
            }
        }

        IsLeast = cups.Length == 1 || (count == FewestBatches && total <= LeastTotal() + tolerance);
        if (IsLeast)
        {
            return Found();
        }

        CupSearch search = new(need, residue, cups);
        IsLeast = search.IsWithinReach;
        return IsLeast ? search.Best() : Found();
    }

    /// <summary>
    /// All batches of one size and one cup: the least total, then the fewest batches, of up to <see cref="MostBatches"/>; empty when no
    /// number of them gives the need.
    /// </summary>
    public List<CupShare> Equal()
    {
        IsLeast = true;
        for (int c = 0; c < cups.Length; c++)
        {
            UsableCup cup = cups[c];
            double fewest = Math.Max(1, Math.Ceiling((need / ((cup.Most * cup.Step) - residue)) - CupSearch.Slack));
            for (double n = fewest; n <= MostBatches && CanImprove(n); n++)
            {
                long each = Marks(((need / n) + residue) / cup.Step, cup.Least, cup.Most);
                Offer(new CupShare(c, (int)n, (long)n * each), default);
                if (each == cup.Least)
                {
                    break;
                }
            }
        }

        return Found();
    }

    // Whether so many batches can still have less in all than the best find, or as much in fewer batches.
    private bool CanImprove(double batches)
    {
        double least = need + (batches * residue);
        return total > least + tolerance || (total >= least - tolerance && batches < count);
    }

    // The fewest whole graduations that hold an amount, between two bounds; what is missing at the upper bound is the last bits of a
    // double.
    private static long Marks(double graduations, long least, long most) =>
        Math.Min(most, Math.Max(least, (long)Math.Ceiling(graduations - CupSearch.Slack)));

    // With n batches every total from n·least to n·most can be had, so the fewest batches that deliver also have the least total.
    private CupShare Alone(int c, double amount)
    {
        UsableCup cup = cups[c];
        double fewest = Math.Max(1, Math.Ceiling((amount / ((cup.Most * cup.Step) - residue)) - CupSearch.Slack));
        if (fewest > MostBatches)
        {
            return default;
        }

        long n = (long)fewest;
        return new CupShare(c, (int)n, Marks((amount + (n * residue)) / cup.Step, n * cup.Least, n * cup.Most));
    }

    // Most of the need out of one cup and the rest out of another: nearly all full batches of the first, one up to three batches fewer, its
    // total on either side of what is left.
    private void Pair(int a, int b)
    {
        UsableCup main = cups[a];
        double full = (main.Most * main.Step) - residue;
        int most = (int)Math.Min(MostBatches, Math.Floor((need / full) + CupSearch.Slack));
        for (int n = most; n >= Math.Max(1, most - 2); n--)
        {
            double open = need - (n * full);
            CupShare rest = open > tolerance ? Alone(b, open) : new CupShare(b, 1, cups[b].Least);
            if (rest.Batches == 0)
            {
                continue;
            }

            double left = need - Delivered(rest) + (n * residue);
            long above = Marks(left / main.Step, (long)n * main.Least, (long)n * main.Most);
            for (long marks = above; marks >= Math.Max((long)n * main.Least, above - 1); marks--)
            {
                CupShare large = new(a, n, marks);
                double wanted = (need - Delivered(large) + (rest.Batches * residue)) / cups[b].Step;
                long small = Marks(wanted, (long)rest.Batches * cups[b].Least, (long)rest.Batches * cups[b].Most);
                Offer(large, new CupShare(b, rest.Batches, small));
            }
        }
    }

    private double Delivered(CupShare share) => (share.Graduations * cups[share.Cup].Step) - (share.Batches * residue);

    private void Offer(CupShare a, CupShare b)
    {
        if (a.Batches == 0)
        {
            return;
        }

        double sum = a.Graduations * cups[a.Cup].Step;
        double delivered = Delivered(a);
        int batches = a.Batches + b.Batches;
        if (b.Batches > 0)
        {
            sum += b.Graduations * cups[b.Cup].Step;
            delivered += Delivered(b);
        }

        bool better = sum < total - tolerance || (sum <= total + tolerance && batches < count);
        if (better && delivered >= need - tolerance)
        {
            total = sum;
            count = batches;
            first = a;
            second = b;
        }
    }

    // What no plan can be below: the need and the residue of the fewest batches, up to the next whole number of what all graduations have
    // in common.
    private double LeastTotal()
    {
        double least = need + (FewestBatches * residue);
        double unit = cups[0].Step;
        for (int c = 1; c < cups.Length; c++)
        {
            unit = CupSearch.Common(unit, cups[c].Step);
        }

        // Beyond that many units their common measure is not known well enough to round by; near a whole number of them the lower one is
        // taken.
        return unit > 0 && least / unit <= 1e5 ? unit * Math.Ceiling((least / unit) - 0.05) : least;
    }

    private List<CupShare> Found()
    {
        List<CupShare> shares = new(2);
        if (first.Batches > 0)
        {
            shares.Add(first);
        }

        if (second.Batches > 0)
        {
            shares.Add(second);
        }

        return shares;
    }
}
