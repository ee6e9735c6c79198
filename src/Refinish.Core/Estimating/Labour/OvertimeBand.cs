using System;
using System.Globalization;

namespace Refinish.Estimating;

/// <summary>Hours that one step of an overtime rule pays.</summary>
public sealed record OvertimeBand
{
    internal OvertimeBand(OvertimeStep step, bool isWeekly, long ticks)
    {
        Step = step;
        IsWeekly = isWeekly;
        Hours = TimeSpan.FromTicks(ticks);
    }

    /// <summary>The step.</summary>
    public OvertimeStep Step { get; }

    /// <summary>Whether it is a step of the week rather than of the day.</summary>
    public bool IsWeekly { get; }

    /// <summary>Hours between this step and the next, over all days or weeks.</summary>
    public TimeSpan Hours { get; }

    /// <summary>What is paid on top of the wage, in hours of the wage: hours × (factor − 1).</summary>
    internal decimal Premium => (decimal)Hours.Ticks / TimeSpan.TicksPerHour * (Step.Factor - 1);

    /// <summary>Hours and factor.</summary>
    /// <returns>Text such as <c>6 h of the week at 1.5</c>.</returns>
    public override string ToString() => Measure.Hours.Format(Hours.TotalSeconds) + (IsWeekly ? " of the week at " : " of the day at ")
        + Step.Factor.ToString("G29", CultureInfo.InvariantCulture);
}
