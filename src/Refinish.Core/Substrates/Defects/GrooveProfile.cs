namespace Refinish.Substrates;

/// <summary>The cross-section of a crack after it was opened; the volume is κ × width × depth × length.</summary>
/// <remarks>κ is plane geometry: triangle 1/2, half ellipse π/4, rectangle 1.</remarks>
public enum GrooveProfile
{
    /// <summary>Opened with a blade: κ = 1/2.</summary>
    Vee,

    /// <summary>Opened with a round burr: κ = π/4; a half circle when the depth is half the width.</summary>
    Round,

    /// <summary>Cut with a disc: κ = 1.</summary>
    Square,
}
