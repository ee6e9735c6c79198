using System;

namespace Refinish.Scheduling;

/// <summary>
/// The least by which one end of one lag would have to give way, alone, for a schedule to exist; to the next whole minute.
/// </summary>
/// <param name="Lag">The lag.</param>
/// <param name="OfMaximum">Whether its most time gives way; otherwise its least.</param>
/// <param name="Needed">The time that would do, on the lag's own clock.</param>
public sealed record LagRelief(StepLag Lag, bool OfMaximum, TimeSpan Needed)
{
    /// <summary>By how much it gives way.</summary>
    public TimeSpan By => OfMaximum ? Needed - Lag.Maximum!.Value : Lag.Minimum - Needed;

    /// <summary>What would do, in one line.</summary>
    /// <returns>Text such as <c>recoat window of the primer at most 14 h instead of 12 h</c>.</returns>
    public override string ToString() =>
        Lag.Reason + (OfMaximum ? " at most " : " at least ") + TimeConstraint.Hours(Needed) + " instead of "
            + TimeConstraint.Hours(OfMaximum ? Lag.Maximum!.Value : Lag.Minimum)
        + (Lag.Clock is null ? string.Empty : " counted at " + Measure.Temperature.Format(Lag.Clock.Reference.Kelvins));
}
