using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>
/// What becomes of a batch in its cup: how long it can be applied, how hot it gets and when, and whether it runs away. Made by
/// <see cref="BatchExotherm.Run()"/>.
/// </summary>
public sealed record BatchCourse
{
    internal BatchCourse(double? potLife, double peak, double peakAfter, double conversion, LimitComparison selfHeating)
    {
        PotLife = potLife is double seconds ? Durations.FromSeconds(seconds) : null;
        Peak = Temperature.FromKelvins(peak);
        PeakAfter = Durations.FromSeconds(peakAfter);
        ConversionAtPeak = Ratio.FromDecimalFractions(conversion);
        SelfHeating = selfHeating;
    }

    /// <summary>
    /// Time from mixing until the conversion to which it can be applied; <see langword="null"/> when that takes more than thirty days.
    /// </summary>
    public TimeSpan? PotLife { get; }

    /// <summary>The hottest it gets.</summary>
    public Temperature Peak { get; }

    /// <summary>When, from mixing; zero when it only cools.</summary>
    public TimeSpan PeakAfter { get; }

    /// <summary>Conversion by then.</summary>
    public Ratio ConversionAtPeak { get; }

    /// <summary>How far it heats itself above the air, against the critical rise beyond which it runs away.</summary>
    public LimitComparison SelfHeating { get; }

    /// <summary>Whether it runs away; <see langword="null"/> when it cannot be judged.</summary>
    public bool? RunsAway => SelfHeating.Outcome switch
    {
        ComparisonOutcome.Beyond => true,
        ComparisonOutcome.Within => false,
        _ => null,
    };

    /// <summary>What goes with a batch in its pot.</summary>
    public IReadOnlyList<Caution> Cautions { get; } = Refinish.Cautions.ForBatch;

    /// <summary>Pot life and peak in one line.</summary>
    /// <returns>Text such as <c>pot life 38 min, peak 142 °C after 61.5 min, runs away</c>.</returns>
    public override string ToString() =>
        "pot life " + (PotLife is TimeSpan life ? CarefulTime.AtMost(life) : "not reached")
        + ", peak " + Measure.Temperature.Format(Peak.Kelvins, DisplayUnits.Si, 3) + " after "
            + Measure.Minutes.Format(PeakAfter.TotalSeconds, DisplayUnits.Si, 3)
        + (RunsAway switch { true => ", runs away", false => string.Empty, null => ", runaway cannot be judged" });
}
