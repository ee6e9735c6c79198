using System;

namespace Refinish.Scheduling;

/// <summary>Why a step starts when it does: the step that drives it, what lies between them, and how long it then still waited for working hours.</summary>
public sealed record ChainLink
{
    internal ChainLink(string step, ChainLinkKind kind, string? driver, StepLag? lag, TimeSpan between, TimeSpan wait)
    {
        Step = step;
        Kind = kind;
        Driver = driver;
        Lag = lag;
        Between = between;
        Wait = wait;
    }

    /// <summary>The step that is driven.</summary>
    public string Step { get; }

    /// <summary>What drives it.</summary>
    public ChainLinkKind Kind { get; }

    /// <summary>The step that drives it; <see langword="null"/> for the start of the work.</summary>
    public string? Driver { get; }

    /// <summary>The lag that binds, for <see cref="ChainLinkKind.Lag"/> and <see cref="ChainLinkKind.Window"/>.</summary>
    public StepLag? Lag { get; }

    /// <summary>
    /// Time between them: from the end of the driver to the start of this step; for <see cref="ChainLinkKind.Window"/>, from the end of this step to the start of the driver.
    /// </summary>
    public TimeSpan Between { get; }

    /// <summary>How long the step then waited until it fitted into working hours, or into a day on which the crew comes anyway.</summary>
    public TimeSpan Wait { get; }

    /// <summary>The link in one line.</summary>
    /// <returns>Text such as <c>topcoat: 2 h after prime (recoat window of the primer), then 13 h for working hours</c>.</returns>
    public override string ToString() => Step + ": " + Kind switch
    {
        ChainLinkKind.Start => "from the start",
        ChainLinkKind.Lag => TimeConstraint.Hours(Between) + " after " + Driver + " (" + Lag!.Reason + ")",
        ChainLinkKind.Window => "at most " + TimeConstraint.Hours(Between) + " before " + Driver + " (" + Lag!.Reason + ")",
        ChainLinkKind.Crew => "the crew is busy with " + Driver,
        ChainLinkKind.Tool => "a tool is in use for " + Driver,
        ChainLinkKind.Room => "the room is not clear of " + Driver + (Between > TimeSpan.Zero ? " for " + TimeConstraint.Hours(Between) : string.Empty),
        _ => "no dust beside the film of " + Driver + (Between > TimeSpan.Zero ? " for " + TimeConstraint.Hours(Between) : string.Empty),
    }
    + (Wait > TimeSpan.Zero ? ", then " + TimeConstraint.Hours(Wait) + " for working hours" : string.Empty);
}
