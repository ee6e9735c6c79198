namespace Refinish.Scheduling;

/// <summary>What lets a step start no sooner.</summary>
public enum ChainLinkKind
{
    /// <summary>The start of the work.</summary>
    Start,

    /// <summary>A least time after another step: drying, curing, order.</summary>
    Lag,

    /// <summary>A most time: its follower cannot come sooner, so it has to wait for it.</summary>
    Window,

    /// <summary>The crew is busy with another step.</summary>
    Crew,

    /// <summary>A tool is in use.</summary>
    Tool,

    /// <summary>The room is occupied, or not clear yet.</summary>
    Room,

    /// <summary>Dust and wet film are kept apart.</summary>
    Dust,
}
