using System;
using System.Collections.Generic;
using Refinish.Curing;

namespace Refinish.Scheduling;

/// <summary>How soon and how late one step has to start after another has ended: a drying time, a recoat window, an open time.</summary>
public sealed record StepLag
{
    /// <summary>The longest time between two steps, and of a step.</summary>
    internal static readonly TimeSpan Longest = TimeSpan.FromDays(60);

    private static readonly Bounds Times = Bounds.NotNegative(Measure.Hours, Longest.TotalSeconds);

    /// <summary>Makes a lag.</summary>
    /// <param name="before"><see cref="SiteStep.Id"/> of the step that ends first.</param>
    /// <param name="after"><see cref="SiteStep.Id"/> of the step that starts later.</param>
    /// <param name="minimum">Least time from the end of one to the start of the other, 0 to 60 days.</param>
    /// <param name="maximum">Most time, not below <paramref name="minimum"/>; <see langword="null"/> for no limit.</param>
    /// <param name="reason">Why, in trade words, such as "recoat window of the primer".</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A time is outside its range, or the maximum is below the minimum.</exception>
    public StepLag(string before, string after, TimeSpan minimum, TimeSpan? maximum, string reason)
    {
        Before = Guard.Named(before);
        After = Guard.Named(after);
        Guard.Within(minimum, Times);
        Minimum = minimum;
        if (maximum is TimeSpan most)
        {
            Guard.Within(most, Times, nameof(maximum));
            Guard.Rule(most >= minimum, nameof(maximum), most.TotalSeconds, Measure.Hours, "at least the minimum, ", minimum.TotalSeconds);
        }

        Maximum = maximum;
        Reason = Guard.Named(reason);
    }

    /// <summary>Makes a lag that is counted on a clock of its own.</summary>
    /// <param name="before"><see cref="SiteStep.Id"/> of the step that ends first.</param>
    /// <param name="after"><see cref="SiteStep.Id"/> of the step that starts later.</param>
    /// <param name="minimum">Least time on the clock from the end of one to the start of the other, 0 to 60 days.</param>
    /// <param name="maximum">Most time on the clock, not below <paramref name="minimum"/>; <see langword="null"/> for no limit.</param>
    /// <param name="reason">Why, in trade words, such as "recoat window of the primer".</param>
    /// <param name="clock">See <see cref="Clock"/>; <see langword="null"/> to count elapsed time.</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A time is outside its range, or the maximum is below the minimum.</exception>
    public StepLag(string before, string after, TimeSpan minimum, TimeSpan? maximum, string reason, EquivalentAge? clock)
        : this(before, after, minimum, maximum, reason) => Clock = clock;

    /// <summary>Id of the step that ends first.</summary>
    public string Before { get; }

    /// <summary>Id of the step that starts later.</summary>
    public string After { get; }

    /// <summary>Least time between them.</summary>
    public TimeSpan Minimum { get; }

    /// <summary>Most time between them; <see langword="null"/> for no limit.</summary>
    public TimeSpan? Maximum { get; }

    /// <summary>Why, in trade words.</summary>
    public string Reason { get; }

    /// <summary>
    /// The clock on which <see cref="Minimum"/> and <see cref="Maximum"/> are counted: hours at its reference temperature, gained between
    /// the end of the
    /// one and the start of the other. <see langword="null"/> to count elapsed time. Its record of temperatures has to begin no later than
    /// the work. A step is not placed where the record
    /// ends before the minimum is gained or before a maximum can be judged: the conflict then says that the record is too short.
    /// </summary>
    public EquivalentAge? Clock { get; }

    /// <summary>The lag in one line; the least time rounded up, the most rounded down.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Sentence(Before, After);

    internal string Sentence(string before, string after) =>
        Reason + ": " + before + " → " + after + ", " + CarefulTime.AtLeast(Minimum)
        + (Maximum is TimeSpan most ? " to " + CarefulTime.AtMost(most) : " or more")
        + (Clock is null ? string.Empty : " counted at " + Measure.Temperature.Format(Clock.Reference.Kelvins));

    internal StepLag With(TimeSpan minimum, TimeSpan? maximum) => new(Before, After, minimum, maximum, Reason, Clock);

    internal StepLag With(EquivalentAge clock) => new(Before, After, Minimum, Maximum, Reason, clock);

    internal void CheckEnds(Dictionary<string, int> steps, string name)
    {
        if (!steps.ContainsKey(Before) || !steps.ContainsKey(After) || Before == After)
        {
            throw new ArgumentException(
                "The lag '" + Reason + "' runs from '" + Before + "' to '" + After + "'; allowed: ids of two listed steps.", name);
        }
    }
}
