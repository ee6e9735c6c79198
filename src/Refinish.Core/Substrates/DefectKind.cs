namespace Refinish.Substrates;

/// <summary>The kinds of defect that a survey records; labour standards and rules refer to them.</summary>
public enum DefectKind
{
    /// <summary>See <see cref="Substrates.Chip"/>.</summary>
    Chip,

    /// <summary>See <see cref="Substrates.WornPatch"/>.</summary>
    WornPatch,

    /// <summary>See <see cref="Substrates.RustSpot"/>.</summary>
    RustSpot,

    /// <summary>See <see cref="Substrates.Crack"/>.</summary>
    Crack,

    /// <summary>See <see cref="Substrates.Perforation"/>.</summary>
    Perforation,

    /// <summary>See <see cref="Substrates.FlexingFloor"/>.</summary>
    FlexingFloor,

    /// <summary>See <see cref="Substrates.Crazing"/>.</summary>
    Crazing,

    /// <summary>See <see cref="Substrates.PeelingCoat"/>.</summary>
    PeelingCoat,

    /// <summary>See <see cref="Substrates.SiliconeResidue"/>.</summary>
    SiliconeResidue,

    /// <summary>See <see cref="Substrates.GroutFailure"/>.</summary>
    GroutFailure,

    /// <summary>See <see cref="Substrates.LooseTiles"/>.</summary>
    LooseTiles,

    /// <summary>See <see cref="Substrates.Burn"/>.</summary>
    Burn,

    /// <summary>See <see cref="Substrates.Pitting"/>.</summary>
    Pitting,
}
