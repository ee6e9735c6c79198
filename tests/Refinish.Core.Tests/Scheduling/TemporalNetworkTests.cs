using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck.Xunit;
using Refinish.Scheduling;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Scheduling;

public class TemporalNetworkTests
{
    [Fact]
    [Evidence(Basis.Independent, "the story of Dechter, Meiri and Pearl (1991), example 1.1; its data from memory, unverified; the ranges worked out by hand below")]
    public void The_story_of_John_and_Fred()
    {
        // Lower and upper times as in the paper: x1 John leaves 10–20, x2 John arrives 30–40 after, x4 Fred arrives 60–70, 40–50 after leaving x3,
        // and x2 10–20 after x3. By hand: x1 10–20, x2 40–60 cut by x3; x3 = x4 − (40…50) in 10–30 and x2 − (10…20) in 20–50, so 20–30;
        // x2 in 40–50; x4 in 60–70; x1 in 10–20.
        TemporalNetwork network = new(
            ["7:00", "John leaves", "John arrives", "Fred leaves", "Fred arrives"],
            [
                Minutes("7:00", "John leaves", 10, 20),
                Minutes("John leaves", "John arrives", 30, 40),
                Minutes("Fred leaves", "John arrives", 10, 20),
                Minutes("Fred leaves", "Fred arrives", 40, 50),
                Minutes("7:00", "Fred arrives", 60, 70),
            ]);
        Assert.Equal([(0, 0), (10, 20), (40, 50), (20, 30), (60, 70)], network.Times.Select(time => ((int)time.Earliest!.Value.TotalMinutes, (int)time.Latest!.Value.TotalMinutes)));
        Numbers.CanBeWritten(network.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: drying 4 h + sanding 1 h + 2 h before the coat are 7 h, one more than the 6 h that the window leaves; each bound alone gives way by that hour")]
    public void A_contradiction_is_the_shortest_one_with_its_cures()
    {
        TemporalNetwork network = new(
            ["start", "prime ends", "sanding starts", "sanding ends", "topcoat starts", "done"],
            [
                Hours("start", "prime ends", 1, null, "priming"),
                Hours("prime ends", "sanding starts", 4, null, "primer dry to sand"),
                Hours("sanding starts", "sanding ends", 1, 1, "sanding"),
                Hours("sanding ends", "topcoat starts", 2, null, "dust settled"),
                Hours("prime ends", "topcoat starts", null, 6, "recoat window"),
                Hours("topcoat starts", "done", 1, null, "topcoat"),
            ]);
        Assert.False(network.IsPossible);
        Assert.Empty(network.Times);
        TemporalConflict conflict = network.Conflict!;
        Assert.Equal(TimeSpan.FromHours(1), conflict.Excess);
        Assert.Equal(["dust settled", "primer dry to sand", "recoat window", "sanding"], conflict.Bounds.Select(bound => bound.Constraint.Reason).Order(StringComparer.Ordinal));
        Assert.All(conflict.Bounds, bound => Assert.Equal(TimeSpan.FromHours(1), bound.By));
        Assert.Equal(TimeSpan.FromHours(7), conflict.Bounds.Single(bound => bound.IsMaximum).Needed);
        Assert.Contains("recoat window at most 7 h instead of 6 h", network.ToString(), StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => network.Find("done"));
        Numbers.CanBeWritten(network.Workings());
    }

    [Property(MaxTest = 300)]
    [Evidence(Basis.Independent, "random networks: Floyd–Warshall over all pairs, written in the test, gives feasibility, earliest, latest and every implied bound")]
    public void Agrees_with_all_pairs(uint[] seeds)
    {
        (string[] points, List<TimeConstraint> constraints) = Random(seeds, 5, 40);
        TemporalNetwork network = new(points, constraints);
        double[,] d = AllPairs(points, constraints);
        bool holds = Enumerable.Range(0, points.Length).All(i => d[i, i] >= 0);
        Assert.Equal(holds, network.IsPossible);
        if (!holds)
        {
            return;
        }

        IReadOnlyList<WorkingStep> derived = network.Workings().Steps;
        for (int i = 0; i < points.Length; i++)
        {
            Assert.Equal(Known(d[0, i]), network.Times[i].Latest?.TotalHours);
            Assert.Equal(Known(-d[i, 0]), network.Times[i].Earliest?.TotalHours);
            Numbers.Near(network.Times[i].Latest?.TotalSeconds ?? 0, derived.SingleOrDefault(step => step.Symbol == $"L_{i}")?.Value ?? 0, 1e-3);
            Numbers.Near(network.Times[i].Earliest?.TotalSeconds ?? 0, derived.SingleOrDefault(step => step.Symbol == $"E_{i}")?.Value ?? 0, 1e-3);
            for (int j = 0; j < points.Length; j++)
            {
                Assert.Equal(Known(d[i, j]), network.Most(points[i], points[j])?.TotalHours);
            }
        }

        Numbers.CanBeWritten(network.Workings());
    }

    [Property(MaxTest = 300)]
    [Evidence(Basis.Identity, "an explanation contradicts itself, ceases to when any one bound is left out, and no set of fewer bounds of the network contradicts itself (all subsets tried)")]
    public void An_explanation_is_minimal_and_shortest(uint[] seeds)
    {
        (string[] points, List<TimeConstraint> constraints) = Random(seeds, 5, 10);
        TemporalNetwork network = new(points, constraints);
        if (network.Conflict is not TemporalConflict conflict)
        {
            return;
        }

        List<TimeConstraint> set = [.. conflict.Bounds.Select(One)];
        Assert.False(new TemporalNetwork(points, set).IsPossible);
        for (int i = 0; i < set.Count; i++)
        {
            Assert.True(new TemporalNetwork(points, set.Where((_, k) => k != i)).IsPossible);
        }

        List<TimeConstraint> bounds = [.. constraints.SelectMany(Halves)];
        for (int mask = 0; mask < 1 << Math.Min(bounds.Count, 12); mask++)
        {
            List<TimeConstraint> chosen = [.. bounds.Where((_, i) => i < 12 && (mask >> i & 1) == 1)];
            if (chosen.Count < set.Count)
            {
                double[,] d = AllPairs(points, chosen);
                Assert.True(Enumerable.Range(0, points.Length).All(i => d[i, i] >= 0));
            }
        }
    }

    [Property(MaxTest = 300)]
    [Evidence(Basis.Identity, "the least relief: with it the whole network holds, with an hour less it does not; and where none is given, leaving the bound out altogether does not help")]
    public void A_relief_is_enough_and_no_more_than_enough(uint[] seeds)
    {
        (string[] points, List<TimeConstraint> constraints) = Random(seeds, 4, 14);
        foreach (BoundRelief bound in new TemporalNetwork(points, constraints).Conflict?.Bounds ?? [])
        {
            IEnumerable<TimeConstraint> With(TimeSpan? by) => constraints.SelectMany(Halves).Where(half => by is not null || half != One(bound))
                .Select(half => half != One(bound) ? half : bound.IsMaximum
                    ? new TimeConstraint(half.From, half.To, null, half.Maximum + by, half.Reason)
                    : new TimeConstraint(half.From, half.To, half.Minimum - by, null, half.Reason));
            if (bound.By is TimeSpan by)
            {
                Assert.True(by > TimeSpan.Zero);
                Assert.True(new TemporalNetwork(points, With(by)).IsPossible);
                Assert.False(new TemporalNetwork(points, With(by - TimeSpan.FromHours(1))).IsPossible);
            }
            else
            {
                Assert.False(new TemporalNetwork(points, With(null)).IsPossible);
            }
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "points and constraints that cannot be are refused; equal inputs make equal networks")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("maximum", () => _ = Hours("a", "b", 2, 1, "window"));
        Numbers.Refuses("minimum", () => _ = Hours("a", "b", 1e6, null, "window"));
        Assert.Throws<ArgumentException>(() => Hours("a", "b", null, null, "nothing"));
        Assert.Throws<ArgumentException>(() => Hours("a", "a", 1, null, "itself"));
        Assert.Throws<ArgumentException>(() => new TemporalNetwork([], []));
        Assert.Throws<ArgumentException>(() => new TemporalNetwork(["a", "a"], []));
        Assert.Throws<ArgumentException>(() => new TemporalNetwork(["a"], [Hours("a", "b", 1, null, "unknown")]));
        TemporalNetwork open = new(["a", "b"], [Hours("a", "b", 1, null, "wait")]);
        Assert.Null(open.Find("b").Latest);
        Assert.Null(open.Find("b").Slack);
        Assert.Throws<ArgumentException>(() => open.Find("c"));
        Assert.Equal(TimeSpan.FromHours(1), open.EndingEarly("b").Find("b").Latest);
        Assert.Equal(open, new TemporalNetwork(["a", "b"], [Hours("a", "b", 1, null, "wait")]));
        Assert.Equal("wait: a → b, at least 1 h", open.Constraints[0].ToString());
        Assert.Equal("b: 1 h to open", open.Times[1].ToString());
    }

    private static TimeConstraint Minutes(string from, string to, double low, double high) =>
        new(from, to, TimeSpan.FromMinutes(low), TimeSpan.FromMinutes(high), from + " to " + to);

    private static TimeConstraint Hours(string from, string to, double? low, double? high, string reason) =>
        new(from, to, low is double a ? TimeSpan.FromHours(a) : null, high is double b ? TimeSpan.FromHours(b) : null, reason);

    private static (string[] Points, List<TimeConstraint> Constraints) Random(uint[]? seeds, int most, int count)
    {
        string[] points = [.. Enumerable.Range(0, most).Select(i => "p" + i)];
        List<TimeConstraint> constraints = [];
        foreach (uint seed in (seeds ?? []).Take(count))
        {
            int from = (int)(seed % most);
            int to = (int)((from + 1 + (seed / 7 % (most - 1))) % most);
            double low = (seed / 64 % 19) - 6.0;
            double high = low + (seed / 2048 % 5);
            constraints.Add(Hours(points[from], points[to], seed % 3 == 1 ? null : low, seed % 3 == 2 ? null : high, "c" + constraints.Count));
        }

        return (points, constraints);
    }

    private static IEnumerable<TimeConstraint> Halves(TimeConstraint whole)
    {
        if (whole.Minimum is TimeSpan low)
        {
            yield return new TimeConstraint(whole.From, whole.To, low, null, whole.Reason);
        }

        if (whole.Maximum is TimeSpan high)
        {
            yield return new TimeConstraint(whole.From, whole.To, null, high, whole.Reason);
        }
    }

    private static TimeConstraint One(BoundRelief bound) => Halves(bound.Constraint).Single(half => half.Maximum is not null == bound.IsMaximum);

    private static double? Known(double hours) => double.IsInfinity(hours) ? null : hours;

    private static double[,] AllPairs(string[] points, IEnumerable<TimeConstraint> constraints)
    {
        int n = points.Length;
        double[,] d = new double[n, n];
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                d[i, j] = i == j ? 0 : double.PositiveInfinity;
            }
        }

        foreach (TimeConstraint c in constraints)
        {
            int a = Array.IndexOf(points, c.From);
            int b = Array.IndexOf(points, c.To);
            d[a, b] = Math.Min(d[a, b], c.Maximum?.TotalHours ?? double.PositiveInfinity);
            d[b, a] = Math.Min(d[b, a], -c.Minimum?.TotalHours ?? double.PositiveInfinity);
        }

        for (int k = 0; k < n; k++)
        {
            for (int i = 0; i < n; i++)
            {
                for (int j = 0; j < n; j++)
                {
                    d[i, j] = Math.Min(d[i, j], d[i, k] + d[k, j]);
                }
            }
        }

        return d;
    }
}
