namespace Refinish.Fixtures;

/// <summary>The shape of a sink's bowl.</summary>
public enum BowlShape
{
    /// <summary>The lower half of an ellipsoid: upright at the mouth.</summary>
    HalfEllipsoid,

    /// <summary>A cap of a sphere: it meets the mouth at an angle.</summary>
    SphericalCap,
}
