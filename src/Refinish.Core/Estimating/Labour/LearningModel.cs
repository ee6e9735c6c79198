namespace Refinish.Estimating;

/// <summary>
/// What falls by the slope each time the number of repeats doubles. The two are often confused and differ by a third and more.
/// </summary>
public enum LearningModel
{
    /// <summary>Wright: the average of all units made so far.</summary>
    CumulativeAverage,

    /// <summary>Crawford: the time of the last unit.</summary>
    Unit,
}
