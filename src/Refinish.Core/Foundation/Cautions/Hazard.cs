namespace Refinish;

/// <summary>What can hurt people in this trade, in the order in which lists of cautions stand: what kills fastest first.</summary>
/// <remarks>
/// The order is a judgement, common practice: what can kill within minutes, vapour on somebody alone before all, then what ruins a life
/// slowly, then what hurts.
/// </remarks>
public enum Hazard
{
    /// <summary>Vapour of solvents: narcosis and worse in a small room.</summary>
    SolventVapour,

    /// <summary>Chemical strippers.</summary>
    Stripper,

    /// <summary>Fire or explosion of vapour, and of rags that heat by themselves.</summary>
    FireAndExplosion,

    /// <summary>Isocyanates: sensitisation and asthma.</summary>
    Isocyanate,

    /// <summary>Acids and etchants.</summary>
    Acid,

    /// <summary>Electricity in a wet room.</summary>
    Electricity,

    /// <summary>Occupants, neighbours and animals in the building.</summary>
    Occupants,

    /// <summary>A fixture that may give way, or water behind it.</summary>
    Structure,

    /// <summary>Asbestos in old adhesive, flooring, boards and pads.</summary>
    Asbestos,

    /// <summary>Lead in old coatings and glazes.</summary>
    Lead,

    /// <summary>Dust of sanding, silica among it.</summary>
    Dust,

    /// <summary>Epoxy resins, amine hardeners and peroxides on skin and in eyes.</summary>
    SkinAndEyes,

    /// <summary>Waste that hurts people or water after the work.</summary>
    Waste,

    /// <summary>Slips on a wet floor, and falls.</summary>
    Slip,

    /// <summary>Noise of tools.</summary>
    Noise,
}
