using System;

namespace Refinish.Scheduling;

/// <summary>One piece of work, or one wait, in the order in which the steps are listed.</summary>
public sealed record ScheduleStep
{
    private readonly TimeSpan duration;

    /// <summary>Makes a step.</summary>
    /// <param name="name">What is done, unique within its schedule.</param>
    /// <param name="duration">How long it takes, 0 to 60 days.</param>
    /// <param name="attended">Whether someone has to be there the whole time, within working hours. Attended steps follow each other; waits run beside them.</param>
    /// <param name="interruptible">Whether an attended step may stop at the end of a working day and go on the next morning, as masking may and a coat may not.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="duration"/> is outside its range.</exception>
    public ScheduleStep(string name, TimeSpan duration, bool attended = true, bool interruptible = false)
    {
        Name = Guard.Named(name, nameof(name));
        Guard.Within(duration, Bounds.NotNegative(Measure.Hours, 60 * 24 * 3600), nameof(duration));
        this.duration = duration;
        IsAttended = attended;
        IsInterruptible = attended && interruptible;
    }

    /// <summary>What is done.</summary>
    public string Name { get; }

    /// <summary>How long it takes.</summary>
    public TimeSpan Duration => duration;

    /// <summary>Whether someone has to be there the whole time.</summary>
    public bool IsAttended { get; }

    /// <summary>Whether it may stop at the end of a working day and go on the next morning; never so for a wait, which runs through.</summary>
    public bool IsInterruptible { get; }

    /// <summary>The name and the time.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ", " + Measure.Hours.Format(duration.TotalSeconds, DisplayUnits.Si, 3);
}
