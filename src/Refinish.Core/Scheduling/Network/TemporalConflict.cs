using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// The shortest set of bounds of a <see cref="TemporalNetwork"/> that cannot hold together: a cycle that asks a point to come after itself.
/// Without any one of them the others hold together.
/// </summary>
public sealed record TemporalConflict
{
    internal TemporalConflict(IEnumerable<BoundRelief> bounds, TimeSpan excess)
    {
        Bounds = new ValueList<BoundRelief>(bounds);
        Excess = excess;
    }

    /// <summary>The bounds, in the order of the cycle, each with the least relief that cures the whole network.</summary>
    public IReadOnlyList<BoundRelief> Bounds { get; }

    /// <summary>By how much the bounds of the set contradict each other: the length of the negative cycle.</summary>
    public TimeSpan Excess { get; }

    /// <summary>The contradiction and its cures in words.</summary>
    /// <returns>Two or three sentences.</returns>
    public override string ToString()
    {
        string text = "These cannot hold together, by " + TimeConstraint.Hours(Excess) + ": " + string.Join("; ", Bounds.Select(bound => bound.Bound())) + ".";
        List<string> cures = [.. Bounds.Where(IsPossible).Select(bound =>
            bound.Constraint.Reason + (bound.IsMaximum ? " at most " : " at least ") + TimeConstraint.Hours(bound.Needed!.Value) + " instead of "
            + TimeConstraint.Hours((bound.IsMaximum ? bound.Constraint.Maximum : bound.Constraint.Minimum)!.Value))];
        return text + (cures.Count == 0
            ? " No single change of them cures it." : " Any one of these would do: " + string.Join("; ", cures) + ".");
    }

    // Nothing takes less than no time: such a relief cures in arithmetic only.
    private static bool IsPossible(BoundRelief bound) =>
        bound.Needed is TimeSpan needed && (bound.IsMaximum || needed >= TimeSpan.Zero || bound.Constraint.Minimum < TimeSpan.Zero);
}
