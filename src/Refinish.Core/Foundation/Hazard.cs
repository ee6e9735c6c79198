namespace Refinish;

/// <summary>What can hurt people in this trade.</summary>
public enum Hazard
{
    /// <summary>Vapour of solvents: narcosis and worse in a small room.</summary>
    SolventVapour,

    /// <summary>Fire or explosion of vapour, and of rags that heat by themselves.</summary>
    FireAndExplosion,

    /// <summary>Isocyanates: sensitisation and asthma.</summary>
    Isocyanate,

    /// <summary>Chemical strippers.</summary>
    Stripper,

    /// <summary>Acids and etchants.</summary>
    Acid,

    /// <summary>Epoxy resins, amine hardeners and peroxides on skin and in eyes.</summary>
    SkinAndEyes,

    /// <summary>Dust of sanding, silica among it.</summary>
    Dust,

    /// <summary>Lead in old coatings and glazes.</summary>
    Lead,

    /// <summary>Slipping on a wet floor.</summary>
    Slip,

    /// <summary>Electricity in a wet room.</summary>
    Electricity,

    /// <summary>A fixture that may give way, or water behind it.</summary>
    Structure,

    /// <summary>Occupants, neighbours and animals in the building.</summary>
    Occupants,
}
