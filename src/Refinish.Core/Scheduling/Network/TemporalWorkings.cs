using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>The derivation of a temporal network: each time from the point and the bound that drive it.</summary>
internal static class TemporalWorkings
{
    public static Workings Of(TemporalNetwork network, TemporalNetwork.Graph graph, Source method)
    {
        List<WorkingStep> steps = [];
        if (network.Conflict is TemporalConflict conflict)
        {
            AddConflict(steps, conflict, method);
            return new Workings("Contradiction between times", steps);
        }

        int count = network.Points.Count;
        int[] towards = new int[count];
        int[] away = new int[count];
        graph.Kernel.Distances(0, backwards: true, towards);
        graph.Kernel.Distances(0, backwards: false, away);
        for (int i = 0; i < count; i++)
        {
            PointTime time = network.Times[i];
            Expression? earliest = null;
            Expression? latest = null;
            if (time.Earliest is TimeSpan early)
            {
                Expression formula = towards[i] < 0 ? 0 : Follow("E_", graph.To[towards[i]], graph.Bound(towards[i]), -1, network.Times, point => point.Earliest);
                earliest = Add(steps, "earliest: " + time.Name, "E_" + Number(i), formula, early, method);
            }

            if (time.Latest is TimeSpan late)
            {
                Expression formula = away[i] < 0 ? 0 : Follow("L_", graph.From[away[i]], graph.Bound(away[i]), 1, network.Times, point => point.Latest);
                latest = Add(steps, "latest: " + time.Name, "L_" + Number(i), formula, late, method);
            }

            if (earliest is not null && latest is not null)
            {
                Add(steps, "slack: " + time.Name, "S_" + Number(i), latest - earliest, time.Slack!.Value, method);
            }
        }

        return new Workings("Earliest and latest times", steps);
    }

    private static void AddConflict(List<WorkingStep> steps, TemporalConflict conflict, Source method)
    {
        // Least times less most times around the cycle: what a point would have to come after itself.
        Expression[] terms = [.. conflict.Bounds.Select((bound, i) => bound.IsMaximum
            ? -Hours("max_" + Number(i + 1), bound.Constraint.Maximum!.Value)
            : Hours("min_" + Number(i + 1), bound.Constraint.Minimum!.Value))];
        Add(steps, "contradiction: " + string.Join(", ", conflict.Bounds.Select(bound => bound.Bound())), "X", Expression.Sum(terms), conflict.Excess, method);
        for (int i = 0; i < conflict.Bounds.Count; i++)
        {
            BoundRelief bound = conflict.Bounds[i];
            if (bound.Needed is TimeSpan needed)
            {
                Expression by = Hours("R_" + Number(i + 1), bound.By!.Value);
                Expression old = Hours((bound.IsMaximum ? "max_" : "min_") + Number(i + 1), (bound.IsMaximum ? bound.Constraint.Maximum : bound.Constraint.Minimum)!.Value);
                Add(steps, "would do alone: " + bound.Constraint.Reason, "B_" + Number(i + 1), bound.IsMaximum ? old + by : old - by, needed, method);
            }
        }
    }

    // sign 1: latest, t ≤ driver + most or driver − least; sign −1: earliest, t ≥ driver − most or driver + least.
    private static Expression Follow(string symbol, int driver, (TimeConstraint Constraint, bool IsMaximum) bound, int sign, IReadOnlyList<PointTime> times, Func<PointTime, TimeSpan?> of)
    {
        Expression from = Hours(symbol + Number(driver), of(times[driver])!.Value);
        Expression by = bound.IsMaximum ? Hours("max", bound.Constraint.Maximum!.Value) : Hours("min", bound.Constraint.Minimum!.Value);
        return bound.IsMaximum == sign > 0 ? from + by : from - by;
    }

    private static Expression Add(List<WorkingStep> steps, string name, string symbol, Expression formula, TimeSpan value, Source source)
    {
        WorkingStep step = new(name, symbol, formula, value.TotalSeconds, Measure.Hours, source);
        steps.Add(step);
        return step.Result();
    }

    private static Expression Hours(string symbol, TimeSpan time) => Expression.Quantity(symbol, time.TotalSeconds, Measure.Hours);

    private static string Number(int value) => Figures.Fixed(value, 0);
}
