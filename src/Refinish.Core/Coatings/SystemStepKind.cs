namespace Refinish.Coatings;

/// <summary>What a step of a coating system is, in the order in which the steps come.</summary>
public enum SystemStepKind
{
    /// <summary>Soap, grease and silicone off.</summary>
    Clean,

    /// <summary>Etching a glassy surface.</summary>
    Etch,

    /// <summary>Abrading.</summary>
    Abrade,

    /// <summary>Etchant or dust rinsed off, and the surface dried.</summary>
    RinseAndDry,

    /// <summary>Filler in chips and wear, sanded; before the promoter, which sanding would take off again.</summary>
    Filler,

    /// <summary>A wipe that bonds the coating.</summary>
    AdhesionPromoter,

    /// <summary>Primer.</summary>
    Primer,

    /// <summary>Finish coats.</summary>
    Topcoat,

    /// <summary>Grains sprinkled on a wet finish coat; another coat has to lock them in.</summary>
    SlipResistantBroadcast,

    /// <summary>A finish coat with grains stirred in.</summary>
    SlipResistantAdditive,

    /// <summary>Clear coat.</summary>
    ClearCoat,
}
