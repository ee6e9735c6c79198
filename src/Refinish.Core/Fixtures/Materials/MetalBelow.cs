namespace Refinish.Fixtures;

/// <summary>Which metal a material is or has behind its face. It decides whether it rusts and which gauge finds it.</summary>
public enum MetalBelow
{
    /// <summary>No metal: a gauge for film on metal reads nothing.</summary>
    None,

    /// <summary>Cast iron: a magnet sticks, it rusts, and it is thick.</summary>
    CastIron,

    /// <summary>Steel sheet: a magnet sticks, it rusts, and rust is soon through.</summary>
    SteelSheet,

    /// <summary>A metal to which no magnet sticks and which does not rust, such as aluminium, brass and most stainless steel.</summary>
    NotMagnetic,
}
