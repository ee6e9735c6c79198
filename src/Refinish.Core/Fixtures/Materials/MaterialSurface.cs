namespace Refinish.Fixtures;

/// <summary>What a cleaner, an abrasive and a coat meet on a material.</summary>
public enum MaterialSurface
{
    /// <summary>Not known; nothing is planned on it before it is.</summary>
    Unknown,

    /// <summary>Vitreous (porcelain) enamel: glass fused to metal.</summary>
    Enamel,

    /// <summary>Fired glaze on clay, as of china and tile.</summary>
    Glaze,

    /// <summary>A plastic without mineral filler: sheet or gelcoat.</summary>
    Polymer,

    /// <summary>A plastic filled with mineral, as cast tops and solid surfacing.</summary>
    FilledPolymer,

    /// <summary>High-pressure laminate: resin-soaked paper.</summary>
    Laminate,

    /// <summary>Wood, or board made of it.</summary>
    Wood,

    /// <summary>Stone, concrete, plaster: mineral, and as a rule with pores.</summary>
    Mineral,

    /// <summary>Bare metal.</summary>
    Metal,

    /// <summary>An organic coat: paint, or an earlier refinishing coat.</summary>
    Coating,
}
