namespace Refinish.Estimating;

/// <summary>
/// What kind of work an operation is, from the notice to the residents until the last inspection. The order is the usual one of the trade.
/// </summary>
public enum WorkKind
{
    /// <summary>Telling residents and neighbours what will be done and when.</summary>
    Notice,

    /// <summary>Driving there and back, with loading the van.</summary>
    Travel,

    /// <summary>Setting up a room: exhaust, ducts, covering the floor and what stands in it.</summary>
    SetUp,

    /// <summary>Clearing a fixture: taking off hardware and cutting out caulk.</summary>
    Clear,

    /// <summary>Removing silicone that cutting out leaves behind.</summary>
    RemoveSilicone,

    /// <summary>Laying on a stripper, which then works by itself.</summary>
    LayOnStripper,

    /// <summary>Taking off a coat that does not hold, with neutralising and rinsing.</summary>
    Strip,

    /// <summary>Dissolving lime and other mineral deposits.</summary>
    Descale,

    /// <summary>Washing off grease, soap and body oils.</summary>
    Degrease,

    /// <summary>Raking out and replacing grout, and fixing loose tiles.</summary>
    Regrout,

    /// <summary>Grinding rust back to clean metal.</summary>
    GrindRust,

    /// <summary>Etching or abrading, so that the next layer holds.</summary>
    Key,

    /// <summary>Rinsing off what keyed the surface and drying it.</summary>
    RinseAndDry,

    /// <summary>Priming bare metal and other spots before filling.</summary>
    SpotPrime,

    /// <summary>
    /// Opening a crack in gelcoat or acrylic and laminating fabric over it, so that it does not come back through the filler.
    /// </summary>
    ReinforceCrack,

    /// <summary>Filling chips, cracks, pits and burns.</summary>
    Fill,

    /// <summary>Abrading crazing and sealing it with a further primer coat.</summary>
    SealCrazing,

    /// <summary>Sanding cured filler flush.</summary>
    SandFiller,

    /// <summary>The last sanding, vacuuming and wiping with a tack cloth before a coat.</summary>
    Tack,

    /// <summary>Warming a fixture that is too cold to be coated.</summary>
    Warm,

    /// <summary>Masking what must not be coated.</summary>
    Mask,

    /// <summary>Wiping with solvent and testing with water once more, after a night between abrading and promoter.</summary>
    WipeAgain,

    /// <summary>Applying an adhesion promoter.</summary>
    Promote,

    /// <summary>Spraying a coat of primer.</summary>
    SprayPrimer,

    /// <summary>Spraying a coat of topcoat or clear coat.</summary>
    SprayTopcoat,

    /// <summary>Scattering slip-resistant grains into a wet coat.</summary>
    Broadcast,

    /// <summary>Cleaning the gun between products or at the end of spraying.</summary>
    CleanGun,

    /// <summary>Watching over the sprayer from outside the room.</summary>
    StandBy,

    /// <summary>Taking off the masking and cleaning up.</summary>
    Demask,

    /// <summary>Fitting new drain, overflow or other trim.</summary>
    FitTrim,

    /// <summary>Caulking the joints and putting the hardware back.</summary>
    Caulk,

    /// <summary>Inspecting the finished work.</summary>
    Inspect,

    /// <summary>Anything else.</summary>
    Other,
}
