using System;

namespace Refinish.Scheduling;

/// <summary>Why a step starts when it does: the step that drives it, what lies between them, and how long it then still waited.</summary>
public sealed record ChainLink
{
    internal ChainLink(SiteStep step, ChainLinkKind kind, SiteStep? driver, StepLag? lag, TimeSpan between)
    {
        Step = step.Id;
        StepName = step.Name;
        Kind = kind;
        Driver = driver?.Id;
        DriverName = driver?.Name;
        Lag = lag;
        Between = between;
    }

    /// <summary>Id of the step that is driven.</summary>
    public string Step { get; }

    /// <summary>Its name.</summary>
    public string StepName { get; }

    /// <summary>What drives it.</summary>
    public ChainLinkKind Kind { get; }

    /// <summary>Id of the step that drives it; <see langword="null"/> for the start of the work.</summary>
    public string? Driver { get; }

    /// <summary>Its name; <see langword="null"/> for the start of the work.</summary>
    public string? DriverName { get; }

    /// <summary>The lag that binds, for <see cref="ChainLinkKind.Lag"/> and <see cref="ChainLinkKind.Window"/>.</summary>
    public StepLag? Lag { get; }

    /// <summary>
    /// Elapsed time between them: from the end of the driver to the start of this step; for <see cref="ChainLinkKind.Window"/>, from the
    /// end of this step to
    /// the start of the driver.
    /// </summary>
    public TimeSpan Between { get; }

    /// <summary>
    /// How long the step then waited in all: <see cref="Wait"/> less <see cref="Held"/> until it fitted into working hours, or into a day
    /// on which the crew comes anyway.
    /// </summary>
    public TimeSpan Wait { get; internal init; }

    /// <summary>
    /// The part of <see cref="Wait"/> by which it was put off within its day, because coming earlier would only mean waiting on site.
    /// </summary>
    public TimeSpan Held { get; internal init; }

    /// <summary>The link in one line.</summary>
    /// <returns>Text such as <c>topcoat: 2 h after prime (recoat window of the primer), then 13 h for working hours</c>.</returns>
    public override string ToString() => StepName + ": " + Kind switch
    {
        ChainLinkKind.Start => "from the start",
        ChainLinkKind.Lag => TimeConstraint.Hours(Between) + " after " + DriverName + " (" + Lag!.Reason + ")",
        ChainLinkKind.Window => "at most " + TimeConstraint.Hours(Between) + " before " + DriverName + " (" + Lag!.Reason + ")",
        ChainLinkKind.Crew => "the crew is busy with " + DriverName,
        ChainLinkKind.Tool => "a tool is in use for " + DriverName,
        ChainLinkKind.Room =>
            "the room is not clear of " + DriverName + (Between > TimeSpan.Zero ? " for " + TimeConstraint.Hours(Between) : string.Empty),
        _ => "no dust beside the film of " + DriverName
            + (Between > TimeSpan.Zero ? " for " + TimeConstraint.Hours(Between) : string.Empty),
    }
    + (Wait > Held ? ", then " + TimeConstraint.Hours(Wait - Held) + " for working hours" : string.Empty)
    + (Held > TimeSpan.Zero ? ", then " + TimeConstraint.Hours(Held) + " so as not to come early and wait" : string.Empty);
}
