namespace Refinish.Inspection;

/// <summary>What a pencil of one grade did to the coating.</summary>
public enum PencilMark
{
    /// <summary>Nothing that does not wipe off.</summary>
    None,

    /// <summary>A scratch: the surface is marred, the film is not cut.</summary>
    Scratch,

    /// <summary>A gouge: the film is cut.</summary>
    Gouge,
}
