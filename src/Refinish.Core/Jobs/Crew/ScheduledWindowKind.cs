namespace Refinish.Jobs;

/// <summary>What a window that opens and closes after an operation is for.</summary>
public enum ScheduledWindowKind
{
    /// <summary>The next coat on a coat.</summary>
    Recoat,

    /// <summary>The first coat on a promoter that is dry and still open.</summary>
    OpenTime,
}
