using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Coverage;

/// <summary>
/// The least total of batches that delivers a need, then the fewest batches, exactly: for every total that whole graduations can make, the fewest batches that
/// make it. Cups whose graduations share a common measure are searched together; two sorts that share none, as millilitres and fluid ounces, are then combined.
/// </summary>
internal sealed class CupSearch
{
    /// <summary>A whole number of graduations must not be missed by the last bits of a double.</summary>
    public const double Slack = 1e-9;

    private const int JoinedStates = 100_000;
    private const int MostStates = 300_000;

    private readonly double need;
    private readonly double residue;
    private readonly List<Sort> sorts = [];

    public CupSearch(double need, double residue, IReadOnlyList<(MixingCup Cup, int Least, int Most)> cups)
    {
        this.need = need;
        this.residue = residue;
        double largest = cups.Max(cup => cup.Most * cup.Cup.Graduation.CubicMeters);
        double total = need + largest + (residue * Math.Ceiling(need / (largest - residue)));
        foreach ((MixingCup cup, int least, int most) in cups)
        {
            double g = cup.Graduation.CubicMeters;
            Sort? home = sorts.FirstOrDefault(sort => total / Common(sort.Unit, g) <= JoinedStates);
            if (home is null)
            {
                home = new Sort { Unit = g };
                sorts.Add(home);
            }

            home.Unit = Common(home.Unit, g);
            home.Cups.Add((cup, least, most));
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

    /// <summary>Whether an exact search is possible at all.</summary>
    public bool IsWithinReach { get; }

    /// <summary>The best set of batches, each as cup and graduations.</summary>
    public List<(MixingCup Cup, int Graduations)> Best()
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

        List<(MixingCup, int)> batches = [];
        for (int i = 0; i < sorts.Count; i++)
        {
            sorts[i].Collect(at[i], batches);
        }

        return batches;
    }

    /// <summary>Greatest common measure of two volumes, by Euclid, down to a picolitre.</summary>
    private static double Common(double a, double b)
    {
        while (b > 1e-15 && b > 1e-7 * a)
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

        public List<(MixingCup Cup, int Least, int Most)> Cups { get; } = [];

        public int[] Counts { get; private set; } = [];

        private int[] LastCup { get; set; } = [];

        private int[] LastTotal { get; set; } = [];

        public void Fill(int states)
        {
            int n = states + 1;
            Counts = new int[n];
            LastCup = new int[n];
            LastTotal = new int[n];
            Window[] windows = [.. Cups.Select(cup => new Window((int)Math.Round(cup.Cup.Graduation.CubicMeters / Unit), cup.Least, cup.Most, n))];
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

        public void Collect(int total, List<(MixingCup, int)> batches)
        {
            while (total > 0)
            {
                MixingCup cup = Cups[LastCup[total]].Cup;
                int from = LastTotal[total];
                batches.Add((cup, (int)Math.Round((total - from) * Unit / cup.Graduation.CubicMeters)));
                total = from;
            }
        }

        private double Delivered(int total, double residue) => (total * Unit) - (residue * Counts[total]);
    }

    /// <summary>The fewest batches among the totals that one more batch of this cup leads on from: a sliding minimum for each remainder.</summary>
    private sealed class Window(int stride, int least, int most, int states)
    {
        private readonly int length = (states / stride) + 2;
        private readonly int[] queue = new int[((states / stride) + 2) * Math.Min(stride, states)];
        private readonly int[] heads = new int[Math.Min(stride, states)];
        private readonly int[] tails = new int[Math.Min(stride, states)];

        /// <summary>Index of the best earlier total, or −1. Totals have to be asked for in rising order.</summary>
        public int Best(int total, int[] counts)
        {
            int entering = total - (least * stride);
            if (least > most || entering < 0)
            {
                return -1;
            }

            int line = total % stride;
            int start = line * length;
            if (counts[entering] != Sort.None)
            {
                while (tails[line] > heads[line] && counts[queue[start + tails[line] - 1]] >= counts[entering])
                {
                    tails[line]--;
                }

                queue[start + tails[line]++] = entering;
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
