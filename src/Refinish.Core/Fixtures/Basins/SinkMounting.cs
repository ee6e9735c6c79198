namespace Refinish.Fixtures;

/// <summary>How a sink sits at its counter.</summary>
public enum SinkMounting
{
    /// <summary>On the counter: bowl, rim and outside are coated.</summary>
    Vessel,

    /// <summary>Let into the counter with a rim on it: bowl and rim are coated.</summary>
    DropIn,

    /// <summary>Under the counter: only the bowl is coated, up to the cut edge.</summary>
    Undermount,
}
