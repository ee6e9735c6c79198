namespace Refinish.Substrates;

/// <summary>What a step of the preparation does.</summary>
public enum PreparationKind
{
    /// <summary>Take off fittings and cut out old caulk.</summary>
    Clear,

    /// <summary>Remove lime, rust stains and soap film.</summary>
    Descale,

    /// <summary>Remove grease and silicone.</summary>
    Degrease,

    /// <summary>Take off an old coat.</summary>
    Strip,

    /// <summary>Mend what carries the coating: grout, tiles, rust.</summary>
    Mend,

    /// <summary>Give the surface a key, by abrading or etching.</summary>
    Key,

    /// <summary>Rinse and let dry.</summary>
    RinseAndDry,

    /// <summary>Fill hollows and sand them flush.</summary>
    Fill,

    /// <summary>Wipe off the last dust.</summary>
    Tack,

    /// <summary>Put on what makes the primer hold.</summary>
    Promote,
}
