using System;

namespace Refinish.Scheduling;

/// <summary>
/// One bound that takes part in a <see cref="TemporalConflict"/>, and the least by which it alone would have to give way.
/// </summary>
/// <param name="Constraint">The constraint whose bound it is.</param>
/// <param name="IsMaximum">Whether its most time is meant; otherwise its least.</param>
/// <param name="By">The least change of this bound alone after which the whole network holds: that much more for a most time, that much
/// less for a least time. <see langword="null"/> when no change of it alone suffices, because another conflict does not pass through
/// it.</param>
public sealed record BoundRelief(TimeConstraint Constraint, bool IsMaximum, TimeSpan? By)
{
    /// <summary>The bound that would do; <see langword="null"/> when <see cref="By"/> is.</summary>
    public TimeSpan? Needed => IsMaximum ? Constraint.Maximum + By : Constraint.Minimum - By;

    /// <summary>The bound, and what would do, in one line.</summary>
    /// <returns>Text such as <c>recoat window (at most 3 h): 5 h would do</c>.</returns>
    public override string ToString() => Bound() + (Needed is TimeSpan needed ? ": " + TimeConstraint.Hours(needed) + " would do" : ": does not suffice alone");

    internal string Bound() =>
        Constraint.Reason + " (" + (IsMaximum ? "at most " + TimeConstraint.Hours(Constraint.Maximum!.Value) : "at least " + TimeConstraint.Hours(Constraint.Minimum!.Value))
        + " from '" + Constraint.From + "' to '" + Constraint.To + "')";
}
