using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Coverage;

/// <summary>
/// The least total of batches that delivers a need, then the fewest batches, exactly: for every total that whole graduations can make,
/// the fewest batches that make it. Cups whose graduations share a common measure are searched together; two sorts that share none, as
/// millilitres and fluid ounces, are then combined.
/// </summary>
internal sealed class CupSearch
{
    /// <summary>A whole number of graduations must not be missed by the last bits of a double.</summary>
    public const double Slack = 1e-9;

    private const int MostStates = 100_000;

    private readonly double need;
    private readonly double residue;
    private readonly List<Sort> sorts = [];

    public CupSearch(double need, double residue, UsableCup[] cups)
    {
        this.need = need;
        this.residue = residue;
        double largest = cups.Max(cup => cup.Most * cup.Step);
        double total = need + largest + (residue * Math.Ceiling(need / (largest - residue)));
        for (int c = 0; c < cups.Length; c++)
        {
            double g = cups[c].Step;
            Sort? home = sorts.FirstOrDefault(sort => total / Common(sort.Unit, g) <= MostStates);
            if (home is null)
            {
                home = new Sort { Unit = g };
                sorts.Add(home);
            }

            home.Unit = Common(home.Unit, g);
            home.Cups.Add((c, cups[c]));
        }

        IsWithinReach = sorts.Count <= 2 && sorts.All(sort => total / sort.Unit <= MostStates);
        if (IsWithinReach)
        {
            foreach (Sort sort in sorts)
            {
                sort.Fill((int)Math.Ceiling((total / sort.Unit) + Slack));
            }
        }
    }

    /// <summary>Whether every total can be searched: at most two sorts of graduation, and at most 100 000 totals of each.</summary>
    public bool IsWithinReach { get; }

    /// <summary>The best set of batches, by cup.</summary>
    public List<CupShare> Best()
    {
        double least = double.PositiveInfinity;
        int fewest = int.MaxValue;
        int[] at = new int[sorts.Count];
        double enough = need * (1 - 1e-12);
        Sort first = sorts[0];
        Sort? second = sorts.Count > 1 ? sorts[1] : null;
        int[] reach = second?.Reach(residue) ?? [];
        double step = 1e-9 * need;
        for (int s = 0; s < first.Counts.Length; s++)
        {
            if (first.Counts[s] == Sort.None)
            {
                continue;
            }

            double rest = enough - ((s * first.Unit) - (residue * first.Counts[s])) - step;
            int t = rest <= 0 ? 0 : second?.FirstThatDelivers(reach, rest, residue) ?? -1;
            if (t < 0)
            {
                continue;
            }

            double total = (s * first.Unit) + (t * (second?.Unit ?? 0));
            int count = first.Counts[s] + (t > 0 ? second!.Counts[t] : 0);
            if (total < least - step || (total <= least + step && count < fewest))
            {
                least = total;
                fewest = count;
                at[0] = s;
                if (at.Length > 1)
                {
                    at[1] = t;
                }
            }
        }

        List<CupShare> shares = [];
        for (int i = 0; i < sorts.Count; i++)
        {
            sorts[i].Collect(at[i], shares);
        }

        return shares;
    }

    /// <summary>
    /// Greatest common measure of two volumes, by Euclid; what is left below a ten-millionth of the smaller one counts as the last bits of
    /// a double.
    /// </summary>
    public static double Common(double a, double b)
    {
        double least = 1e-7 * Math.Min(a, b);
        while (b > least)
        {
            double rest = a - (b * Math.Floor((a / b) + 1e-7));
            a = b;
            b = Math.Max(0, rest);
        }

        return a;
    }

    /// <summary>Cups that share a measure, and for each total in that measure the fewest batches and the last of them.</summary>
    private sealed class Sort
    {
        public const int None = int.MaxValue;

        public double Unit { get; set; }

        public List<(int Index, UsableCup Cup)> Cups { get; } = [];

        public int[] Counts { get; private set; } = [];

        private int[] LastCup { get; set; } = [];

        private int[] LastTotal { get; set; } = [];

        public void Fill(int states)
        {
            int n = states + 1;
            Counts = new int[n];
            LastCup = new int[n];
            LastTotal = new int[n];
            Window[] windows = [.. Cups.Select(cup => new Window((int)Math.Round(cup.Cup.Step / Unit), cup.Cup.Least, cup.Cup.Most, n))];
            for (int s = 0; s < n; s++)
            {
                int best = s == 0 ? 0 : None;
                int cup = -1;
                int from = -1;
                for (int c = 0; c < windows.Length; c++)
                {
                    int j = windows[c].Best(s, Counts);
                    if (j >= 0 && Counts[j] + 1 < best)
                    {
                        best = Counts[j] + 1;
                        cup = c;
                        from = j;
                    }
                }

                Counts[s] = best;
                LastCup[s] = cup;
                LastTotal[s] = from;
            }
        }

        /// <summary>For each total, the total up to it that delivers most once the residue is off.</summary>
        public int[] Reach(double residue)
        {
            int[] reach = new int[Counts.Length];
            int best = 0;
            for (int s = 0; s < reach.Length; s++)
            {
                if (Counts[s] != None && Delivered(s, residue) > Delivered(best, residue))
                {
                    best = s;
                }

                reach[s] = best;
            }

            return reach;
        }

        /// <summary>The least total that delivers so much; −1 when none does.</summary>
        public int FirstThatDelivers(int[] reach, double amount, double residue)
        {
            int low = 0;
            int high = reach.Length - 1;
            if (Delivered(reach[high], residue) < amount)
            {
                return -1;
            }

            while (low < high)
            {
                int middle = (low + high) / 2;
                if (Delivered(reach[middle], residue) >= amount)
                {
                    high = middle;
                }
                else
                {
                    low = middle + 1;
                }
            }

            return low;
        }

        public void Collect(int total, List<CupShare> shares)
        {
            int[] batches = new int[Cups.Count];
            long[] graduations = new long[Cups.Count];
            while (total > 0)
            {
                int cup = LastCup[total];
                int from = LastTotal[total];
                batches[cup]++;
                graduations[cup] += (long)Math.Round((total - from) * Unit / Cups[cup].Cup.Step);
                total = from;
            }

            for (int c = 0; c < batches.Length; c++)
            {
                if (batches[c] > 0)
                {
                    shares.Add(new CupShare(Cups[c].Index, batches[c], graduations[c]));
                }
            }
        }

        private double Delivered(int total, double residue) => (total * Unit) - (residue * Counts[total]);
    }

    /// <summary>
    /// The fewest batches among the totals that one more batch of this cup leads on from: a sliding minimum for each remainder.
    /// </summary>
    private sealed class Window(int stride, int least, int most, int states)
    {
        private readonly int length = (states / stride) + 2;
        private readonly int[] queue = new int[((states / stride) + 2) * Math.Min(stride, states)];
        private readonly int[] heads = new int[Math.Min(stride, states)];
        private readonly int[] tails = new int[Math.Min(stride, states)];

        /// <summary>Index of the best earlier total, or −1. Totals have to be asked for in rising order.</summary>
        public int Best(int total, int[] counts)
        {
            long entering = total - ((long)least * stride);
            if (least > most || entering < 0)
            {
                return -1;
            }

            int from = (int)entering;
            int line = total % stride;
            int start = line * length;
            if (counts[from] != Sort.None)
            {
                while (tails[line] > heads[line] && counts[queue[start + tails[line] - 1]] >= counts[from])
                {
                    tails[line]--;
                }

                queue[start + tails[line]++] = from;
            }

            long leaving = total - ((long)most * stride);
            while (tails[line] > heads[line] && queue[start + heads[line]] < leaving)
            {
                heads[line]++;
            }

            return tails[line] > heads[line] ? queue[start + heads[line]] : -1;
        }
    }
}
