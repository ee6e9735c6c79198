using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// How long a room's air takes to lose a share of what is in it once the release has ended: t = K ln(1/(1 − E)) / n, with E the share
/// removed, n the air changes per hour and K the mixing factor. Give two of share, air changes and time; the third follows.
/// </summary>
/// <remarks>
/// CDC, Guidelines for environmental infection control in health-care facilities (2003), Table B.1, and MMWR 43(RR-13), 28 October 1994,
/// Table S3-1, whose notes give the mixing factor: 1 is perfect, 10 poor, and the time is multiplied by it. Nothing may be released any
/// more: a wet film releases for hours, and then <see cref="AirStudy.TimeToClear"/> is the question to ask.
/// </remarks>
/// <example><code>
/// AirClearing clearing = AirClearing.At(Ratio.FromPercent(99), 6);
/// double minutes = clearing.Time.TotalMinutes;        // 46.05
/// double poorlyMixed = (clearing with { MixingFactor = 3 }).Time.TotalMinutes;      // 138.2
/// </code></example>
public sealed record AirClearing
{
    private static readonly Source Decay = Source.Published(
        "MMWR 43(RR-13), 28 October 1994; CDC, Guidelines for environmental infection control in health-care facilities, 2003",
        "Table S3-1; Table B.1: purging of a mixed room, time multiplied by the mixing factor");

    private readonly double? removed;
    private readonly double? changes;
    private readonly double? seconds;
    private readonly double mixing = 1;

    private AirClearing(double? removed, double? changes, double? seconds)
    {
        this.removed = removed;
        this.changes = changes;
        this.seconds = seconds;
    }

    /// <summary>The mixing factor, 1 (perfect) to 10 (poor); 1 unless given, which no real room reaches.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double MixingFactor { get => mixing; init => mixing = Guard.Within(value, Bounds.Between(1, 10, Measure.Number)); }

    /// <summary>The room, for the flow of air; <see langword="null"/> unless given.</summary>
    public Room? Room { get; init; }

    /// <summary>The share removed.</summary>
    public Ratio Removed => Ratio.FromDecimalFractions(Share().Value);

    /// <summary>Air changes per hour: the fresh air of an hour, over the volume of the room.</summary>
    public double AirChangesPerHour => Rate().Value * 3600;

    /// <summary>The time that it takes.</summary>
    public TimeSpan Time => Durations.FromSeconds(Seconds().Value);

    /// <summary>How many times the volume of the room has gone through it by then.</summary>
    public double AirChanges => Count().Value;

    /// <summary>
    /// The flow that the fan has to move for it, beside what infiltrates into the <see cref="Room"/>; <see langword="null"/> without a
    /// room.
    /// </summary>
    public VolumeFlow? FanFlow => Room is null ? null : VolumeFlow.FromCubicMetersPerSecond(Flow().Value);

    /// <summary>What to warn of.</summary>
    public IReadOnlyList<Caution> Cautions { get; } = new ValueList<Caution>([Refinish.Cautions.ClearingCountsNoSource]);

    /// <summary>How long it takes at given air changes.</summary>
    /// <param name="removed">The share to remove, 0.01 to 99.9999 %.</param>
    /// <param name="airChangesPerHour">Air changes per hour, 0.001 to 10 000.</param>
    /// <returns>The clearing.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static AirClearing At(Ratio removed, double airChangesPerHour) => new(Part(removed), PerSecond(airChangesPerHour), null);

    /// <summary>Which air changes clear the room in a given time.</summary>
    /// <param name="removed">The share to remove, 0.01 to 99.9999 %.</param>
    /// <param name="time">The time, 1 s to 60 days.</param>
    /// <returns>The clearing.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static AirClearing Within(Ratio removed, TimeSpan time) => new(Part(removed), null, Duration(time));

    /// <summary>Which share has gone after a given time.</summary>
    /// <param name="time">The time, 1 s to 60 days.</param>
    /// <param name="airChangesPerHour">Air changes per hour, 0.001 to 10 000.</param>
    /// <returns>The clearing.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static AirClearing After(TimeSpan time, double airChangesPerHour) => new(null, PerSecond(airChangesPerHour), Duration(time));

    /// <summary>How the missing one of the three follows, the air changes in all, and the flow where a room is given.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Func<Trace, Num> found = removed is null ? Share : changes is null ? Rate : Seconds;
        return Trace.Of("Clearing of a room's air", [found, Count, .. Trace.When(Room is not null, Flow)]);
    }

    /// <summary>Share, time and air changes.</summary>
    /// <returns>Text such as <c>99 % removed in 46.052 min at 6 1/h, mixing factor 1</c>.</returns>
    public override string ToString() =>
        Measure.Percent.Format(Share().Value, DisplayUnits.Si, 6) + " removed in " + Measure.Minutes.Format(Seconds().Value) + " at "
        + Measure.AirChanges.Format(Rate().Value) + ", mixing factor " + Figures.Significant(mixing, 4);

    private static double Part(Ratio removed) => Guard.Within(removed, Bounds.Between(1e-4, 0.999999, Measure.Percent));

    private static double PerSecond(double airChangesPerHour) =>
        Guard.Within(airChangesPerHour / 3600, Bounds.Between(0.001 / 3600, 10000.0 / 3600, Measure.AirChanges), nameof(airChangesPerHour));

    private static double Duration(TimeSpan time) => Guard.Within(time, Bounds.Between(1, 60 * 86400, Measure.Minutes));

    private Num Share(Trace? t = null) => removed is double part
        ? t.Given("E", part, Measure.Percent)
        : t.Step("share removed", "E", Measure.Percent, Decay, 1 - Num.Exp(-(Rate(t) * Seconds(t) / Mixing(t))));

    private Num Rate(Trace? t = null) => changes is double perSecond
        ? t.Given("n", perSecond, Measure.AirChanges)
        : t.Step("air changes", "n", Measure.AirChanges, Decay, Purges(t) / Seconds(t));

    private Num Seconds(Trace? t = null) => seconds is double time
        ? t.Given("t", time, Measure.Minutes)
        : t.Step("time to clear", "t", Measure.Minutes, Decay, Purges(t) / Rate(t));

    private Num Purges(Trace? t) => Mixing(t) * -Num.Ln(1 - Share(t));

    private Num Count(Trace? t = null) => t.Step("air changes in all", "N", Measure.Number, Decay, Rate(t) * Seconds(t));

    // The air changes count before the mixing factor here, after it in the study.
    private Num Flow(Trace? t = null) => t.Step("flow of the fan", "Q", Measure.Airflow, Decay, AirKernel.FanFlow(
        Rate(t) * t.Given("V", Room!.Volume.CubicMeters, Measure.RoomVolume),
        t.Given("Q_inf", Room.Infiltration.CubicMetersPerSecond, Measure.Airflow)));

    private Num Mixing(Trace? t) => t.Given("K", mixing, Measure.Number);
}
