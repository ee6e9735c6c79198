using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// Time points with least and most times between them: whether all can hold together, the earliest and the latest time of every point,
/// and otherwise the shortest set of bounds that contradict each other with the least relief of each that cures it.
/// </summary>
/// <remarks>
/// A simple temporal network. Each bound is an edge of the distance graph, t(v) ≤ t(u) + w; the network holds if and only if that graph
/// has no negative cycle; with d the shortest distance, latest = d(origin, j) and earliest = −d(j, origin). Source: Dechter, Meiri and
/// Pearl, Temporal constraint networks, Artificial Intelligence 49 (1991), section 3. Times are kept in ticks of 100 ns, so that no sum
/// is rounded.
/// </remarks>
/// <example><code>
/// TemporalNetwork network = new(
///     ["prime ends", "topcoat starts"],
///     [new TimeConstraint("prime ends", "topcoat starts", TimeSpan.FromHours(2), TimeSpan.FromHours(24), "recoat window of the primer")]);
/// TimeSpan? latest = network.Find("topcoat starts").Latest;   // 24 h
/// </code></example>
public sealed record TemporalNetwork
{
    private static readonly Source Method = Source.Published("Dechter, Meiri and Pearl, Temporal constraint networks, Artificial Intelligence 49 (1991)", "section 3, distance graph of a simple temporal problem");


    /// <summary>Works out the network.</summary>
    /// <param name="points">Names of the points, each once; the first is the origin from which times are counted.</param>
    /// <param name="constraints">Bounds between listed points.</param>
    /// <exception cref="ArgumentException">No point is given, a name stands twice, or a constraint names an unknown point.</exception>
    public TemporalNetwork(IEnumerable<string> points, IEnumerable<TimeConstraint> constraints)
    {
        Points = Guard.List(points, 1);
        Constraints = Guard.List(constraints);
        Graph graph = new(Points, Constraints);
        if (graph.Kernel.Holds())
        {
            int[] unused = new int[Points.Count];
            long[] least = graph.Kernel.Distances(0, backwards: true, unused);
            long[] most = graph.Kernel.Distances(0, backwards: false, unused);
            Times = new ValueList<PointTime>(Points.Select((name, i) => new PointTime(name, Time(least[i], -1), Time(most[i], 1))));
        }
        else
        {
            Times = ValueList<PointTime>.Empty;
            Conflict = graph.Explain();
        }
    }

    /// <summary>The points in listed order; the first is the origin.</summary>
    public IReadOnlyList<string> Points { get; }

    /// <summary>The bounds.</summary>
    public IReadOnlyList<TimeConstraint> Constraints { get; }

    /// <summary>Whether all bounds can hold together.</summary>
    public bool IsPossible => Conflict is null;

    /// <summary>The bounds that contradict each other; <see langword="null"/> when all can hold together.</summary>
    public TemporalConflict? Conflict { get; }

    /// <summary>The times of the points in listed order; empty when the bounds contradict each other.</summary>
    public IReadOnlyList<PointTime> Times { get; }

    /// <summary>The times of one point.</summary>
    /// <param name="point">Name of a listed point.</param>
    /// <returns>Its earliest and latest time.</returns>
    /// <exception cref="ArgumentException">The point is not listed.</exception>
    /// <exception cref="InvalidOperationException">The bounds contradict each other.</exception>
    public PointTime Find(string point) => Known()[Index(point, nameof(point))];

    /// <summary>The least time from one point to another that all bounds together imply.</summary>
    /// <param name="from">Name of a listed point.</param>
    /// <param name="to">Name of a listed point.</param>
    /// <returns>The time, negative when <paramref name="to"/> may come first; <see langword="null"/> when nothing bounds it.</returns>
    /// <exception cref="ArgumentException">A point is not listed.</exception>
    /// <exception cref="InvalidOperationException">The bounds contradict each other.</exception>
    public TimeSpan? Least(string from, string to) => -Most(to, from);

    /// <summary>The most time from one point to another that all bounds together imply.</summary>
    /// <param name="from">Name of a listed point.</param>
    /// <param name="to">Name of a listed point.</param>
    /// <returns>The time, negative when <paramref name="to"/> has to come first; <see langword="null"/> when nothing bounds it.</returns>
    /// <exception cref="ArgumentException">A point is not listed.</exception>
    /// <exception cref="InvalidOperationException">The bounds contradict each other.</exception>
    public TimeSpan? Most(string from, string to)
    {
        Known();
        int target = Index(to, nameof(to));
        return Time(new Graph(Points, Constraints).Kernel.Distances(Index(from, nameof(from)), backwards: false)[target], 1);
    }

    /// <summary>
    /// The same network with one point held at its earliest: the latest times and slacks are then those of the critical-path method.
    /// </summary>
    /// <param name="last">Name of the point at which everything is done.</param>
    /// <returns>A network with one more bound.</returns>
    /// <exception cref="ArgumentException">The point is not listed, is the origin, or has no earliest time.</exception>
    /// <exception cref="InvalidOperationException">The bounds contradict each other.</exception>
    public TemporalNetwork EndingEarly(string last) =>
        Find(last).Earliest is TimeSpan earliest
            ? new TemporalNetwork(Points, [.. Constraints, new TimeConstraint(Points[0], last, null, earliest,
                "everything done as early as can be")])
            : throw new ArgumentException("'" + last + "' has no earliest time; allowed: a point that is held back from '" + Points[0] + "'.", nameof(last));

    /// <summary>How each earliest and latest time follows from the point that drives it.</summary>
    /// <returns>The derivation; without times it shows the length of the contradiction.</returns>
    public Workings Workings()
    {
        Trace t = new();
        Graph graph = new(Points, Constraints);
        if (Conflict is not null)
        {
            Note(Conflict, t);
            return t.Workings("Contradiction between times");
        }

        int[] towards = new int[Points.Count];
        int[] away = new int[Points.Count];
        graph.Kernel.Distances(0, backwards: true, towards);
        graph.Kernel.Distances(0, backwards: false, away);
        for (int i = 0; i < Points.Count; i++)
        {
            Num? earliest = Times[i].Earliest is null ? null : t.Step("earliest: " + Points[i], Symbol("E_", i), Measure.Hours, Method,
                towards[i] < 0 ? t.Number(0) : Follow(t, graph, towards[i], isLatest: false));
            Num? latest = Times[i].Latest is null ? null : t.Step("latest: " + Points[i], Symbol("L_", i), Measure.Hours, Method,
                away[i] < 0 ? t.Number(0) : Follow(t, graph, away[i], isLatest: true));
            if (earliest is Num early && latest is Num late)
            {
                t.Step("slack: " + Points[i], Symbol("S_", i), Measure.Hours, Method, late - early);
            }
        }

        return t.Workings("Earliest and latest times");
    }

    /// <summary>The number of points, or the contradiction.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Conflict?.ToString() ?? string.Join("; ", Times);

    private static void Note(TemporalConflict conflict, Trace t)
    {
        // Least times less most times around the cycle: what a point would have to come after itself.
        Num[] held = [.. conflict.Bounds.Select((bound, i) => bound.IsMaximum
            ? Hours(t, Symbol("max_", i + 1), bound.Constraint.Maximum)
            : Hours(t, Symbol("min_", i + 1), bound.Constraint.Minimum))];
        t.Step("contradiction: " + string.Join(", ", conflict.Bounds.Select(bound => bound.Bound())), "X", Measure.Hours, Method,
            Num.Sum(conflict.Bounds.Select((bound, i) => bound.IsMaximum ? -held[i] : held[i])));
        for (int i = 0; i < held.Length; i++)
        {
            BoundRelief bound = conflict.Bounds[i];
            if (bound.Needed is not null)
            {
                Num by = Hours(t, Symbol("R_", i + 1), bound.By);
                t.Step("would do alone: " + bound.Constraint.Reason, Symbol("B_", i + 1), Measure.Hours, Method,
                    bound.IsMaximum ? held[i] + by : held[i] - by);
            }
        }
    }

    // Latest: t ≤ driver + most or driver − least; earliest: t ≥ driver − most or driver + least.
    private Num Follow(Trace t, Graph graph, int edge, bool isLatest)
    {
        int driver = isLatest ? graph.From[edge] : graph.To[edge];
        (TimeConstraint constraint, bool isMaximum) = graph.Bound(edge);
        Num from = Hours(t, Symbol(isLatest ? "L_" : "E_", driver), isLatest ? Times[driver].Latest : Times[driver].Earliest);
        Num by = isMaximum ? Hours(t, "max", constraint.Maximum) : Hours(t, "min", constraint.Minimum);
        return isMaximum == isLatest ? from + by : from - by;
    }

    private static string Symbol(string letter, int i) => letter + Figures.Fixed(i, 0);

    private static Num Hours(Trace t, string symbol, TimeSpan? time) => t.Given(symbol, time!.Value.TotalSeconds, Measure.Hours);

    private static TimeSpan? Time(long ticks, int sign) => ticks == TemporalKernel.Open ? null : TimeSpan.FromTicks(sign * ticks);

    private IReadOnlyList<PointTime> Known() =>
        Conflict is null ? Times : throw new InvalidOperationException("The bounds contradict each other, so there are no times. " + Conflict);

    private int Index(string point, string parameter)
    {
        int index = Points.ToList().IndexOf(Guard.Named(point, parameter));
        return index >= 0 ? index : throw new ArgumentException("'" + point + "' is not a point of this network.", parameter);
    }

    /// <summary>The distance graph, with the bound that each edge stands for.</summary>
    internal sealed class Graph
    {
        private readonly List<(TimeConstraint Constraint, bool IsMaximum)> bounds = [];

        public Graph(IReadOnlyList<string> points, IReadOnlyList<TimeConstraint> constraints)
        {
            Dictionary<string, int> index = new(StringComparer.Ordinal);
            foreach (string point in points)
            {
                Guard.Named(point, nameof(points));
                if (index.ContainsKey(point))
                {
                    throw new ArgumentException("The point '" + point + "' is listed twice.", nameof(points));
                }

                index.Add(point, index.Count);
            }

            List<int> from = [];
            List<int> to = [];
            List<long> weight = [];
            foreach (TimeConstraint constraint in constraints)
            {
                if (!index.TryGetValue(constraint.From, out int first) || !index.TryGetValue(constraint.To, out int second))
                {
                    throw new ArgumentException("'" + constraint.Reason + "' runs from '" + constraint.From + "' to '" + constraint.To + "'; allowed: two listed points.", nameof(constraints));
                }

                if (constraint.Maximum is TimeSpan most)
                {
                    from.Add(first);
                    to.Add(second);
                    weight.Add(most.Ticks);
                    bounds.Add((constraint, true));
                }

                if (constraint.Minimum is TimeSpan least)
                {
                    from.Add(second);
                    to.Add(first);
                    weight.Add(-least.Ticks);
                    bounds.Add((constraint, false));
                }
            }

            From = from;
            To = to;
            Kernel = new TemporalKernel(index.Count, [.. from], [.. to], [.. weight]);
        }

        public TemporalKernel Kernel { get; }

        public IReadOnlyList<int> From { get; }

        public IReadOnlyList<int> To { get; }

        public (TimeConstraint Constraint, bool IsMaximum) Bound(int edge) => bounds[edge];

        public TemporalConflict Explain()
        {
            int[] cycle = Kernel.ShortestNegativeCycle();
            List<BoundRelief> reliefs = [];
            long excess = 0;
            foreach (int edge in cycle)
            {
                (TimeConstraint constraint, bool isMaximum) = bounds[edge];
                excess -= isMaximum ? constraint.Maximum!.Value.Ticks : -constraint.Minimum!.Value.Ticks;
                reliefs.Add(new BoundRelief(constraint, isMaximum, Kernel.Holds(edge) ? TimeSpan.FromTicks(Kernel.Relief(edge)) : null));
            }

            return new TemporalConflict(reliefs, TimeSpan.FromTicks(excess));
        }
    }
}
