namespace Refinish.Substrates;

/// <summary>How a liner sits on what is below it.</summary>
public enum LinerState
{
    /// <summary>Nobody pressed and tapped it all over.</summary>
    NotTested,

    /// <summary>Water is behind it: it squelches, smells, or its floor moves on a cushion.</summary>
    WaterBehind,

    /// <summary>It is loose or flexes, and no water was found behind it.</summary>
    Loose,

    /// <summary>It is bonded all over, and dry behind.</summary>
    BondedAndDry,
}
