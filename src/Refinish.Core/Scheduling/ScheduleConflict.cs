using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>Why there is no schedule: what cannot hold together, and what alone would cure it.</summary>
public sealed record ScheduleConflict
{
    internal ScheduleConflict(TemporalConflict? times, IEnumerable<SiteStep> tooLong, IEnumerable<StepLag> lags, IEnumerable<LagRelief> reliefs, bool isProved, TimeSpan longestShift)
    {
        Times = times;
        TooLong = new ValueList<SiteStep>(tooLong);
        Lags = new ValueList<StepLag>(lags);
        Reliefs = new ValueList<LagRelief>(reliefs);
        IsProved = isProved;
        LongestShift = longestShift;
    }

    /// <summary>Times between steps that contradict each other whatever the hours, the crew and the rooms; <see langword="null"/> when they do not.</summary>
    public TemporalConflict? Times { get; }

    /// <summary>Steps that may not be interrupted and are longer than any shift.</summary>
    public IReadOnlyList<SiteStep> TooLong { get; }

    /// <summary>
    /// Lags that cannot all be kept with the working hours, the crew and the rooms as they are. Leaving out any one of them lets the others be kept.
    /// Empty when the contradiction is of another kind.
    /// </summary>
    public IReadOnlyList<StepLag> Lags { get; }

    /// <summary>Changes of which each alone would let the whole be scheduled.</summary>
    public IReadOnlyList<LagRelief> Reliefs { get; }

    /// <summary>Whether it was proved that there is no schedule; otherwise none was found as far as was searched.</summary>
    public bool IsProved { get; }

    private TimeSpan LongestShift { get; }

    /// <summary>The contradiction and its cures in words.</summary>
    /// <returns>A few sentences.</returns>
    public override string ToString()
    {
        if (Times is not null)
        {
            return Times.ToString();
        }

        if (TooLong.Count > 0)
        {
            return string.Join(" ", TooLong.Select(step => step.Name + " takes " + TimeConstraint.Hours(step.Duration) + " and the longest shift has " + TimeConstraint.Hours(LongestShift) + "."))
                + " Split the step or lengthen the day.";
        }

        if (!IsProved)
        {
            return "No schedule was found as far as was searched; it was not proved that there is none.";
        }

        string text = Lags.Count == 0
            ? "The steps cannot be done with these working hours, this crew and these rooms."
            : "With these working hours, this crew and these rooms these cannot be kept together: " + string.Join("; ", Lags) + ".";
        string other = " Otherwise start at another time of day, lengthen the day, or abrade and wipe again where a window has closed.";
        return text + (Reliefs.Count == 0 ? string.Empty : " Any one of these would do: " + string.Join("; ", Reliefs) + ".") + other;
    }
}
