namespace Refinish;

/// <summary>How a comparison came out. There is no "safe" among the answers.</summary>
public enum ComparisonOutcome
{
    /// <summary>The value is on the allowed side of the limit, or at it.</summary>
    Within,

    /// <summary>The value is beyond the limit.</summary>
    Beyond,

    /// <summary>The value or the limit is missing, so nothing can be said.</summary>
    CannotBeJudged,
}
