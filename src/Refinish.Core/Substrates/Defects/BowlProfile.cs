namespace Refinish.Substrates;

/// <summary>How a shallow hollow falls from its edge to its deepest point; the volume is κ × area of the mouth × depth.</summary>
/// <remarks>κ is solid geometry: cone 1/3, paraboloid 1/2, half of an ellipsoid 2/3, flat pan 1.</remarks>
public enum BowlProfile
{
    /// <summary>Straight sides to a point: κ = 1/3.</summary>
    Cone,

    /// <summary>A shallow lens, as feet wear it: κ = 1/2.</summary>
    Paraboloid,

    /// <summary>Steep at the edge, round at the bottom: κ = 2/3.</summary>
    HalfEllipsoid,

    /// <summary>The same depth all over: κ = 1.</summary>
    FlatPan,
}
