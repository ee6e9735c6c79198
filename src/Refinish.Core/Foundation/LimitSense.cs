namespace Refinish;

/// <summary>Which way a limit holds.</summary>
public enum LimitSense
{
    /// <summary>The value has to be at or above the limit.</summary>
    AtLeast,

    /// <summary>The value has to be at or below the limit.</summary>
    AtMost,
}
