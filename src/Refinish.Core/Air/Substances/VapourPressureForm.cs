namespace Refinish.Air;

/// <summary>By which formula a vapour pressure follows from temperature.</summary>
public enum VapourPressureForm
{
    /// <summary>log₁₀ p = A − B/(T + C), p in Pa and T in K.</summary>
    Antoine,

    /// <summary>ln p = C1 + C2/T + C3 ln T + C4 T^C5, p in Pa and T in K: equation 101 of the DIPPR data.</summary>
    Dippr101,

    /// <summary>Two tabulated points, ln p straight in 1/T between them.</summary>
    TwoPoints,
}
