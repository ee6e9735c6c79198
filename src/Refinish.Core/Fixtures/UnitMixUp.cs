namespace Refinish.Fixtures;

/// <summary>Whether lengths look as if they had been typed in another unit than they were read in.</summary>
public enum UnitMixUp
{
    /// <summary>Nothing points to it.</summary>
    NotSuspected,

    /// <summary>Far too small: inches entered as centimetres.</summary>
    InchesEnteredAsCentimetres,

    /// <summary>Far too large: centimetres entered as inches.</summary>
    CentimetresEnteredAsInches,
}
