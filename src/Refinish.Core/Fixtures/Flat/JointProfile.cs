namespace Refinish.Fixtures;

/// <summary>The shape of the recess between tiles.</summary>
public enum JointProfile
{
    /// <summary>A flat bottom with upright flanks, as of a raked joint.</summary>
    Sharp,

    /// <summary>An arc from tile edge to tile edge, as of a tooled joint.</summary>
    Concave,
}
