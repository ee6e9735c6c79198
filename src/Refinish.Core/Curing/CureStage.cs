namespace Refinish.Curing;

/// <summary>A stage of which a data sheet tells the time.</summary>
public enum CureStage
{
    /// <summary>How long the mix has to stand before use.</summary>
    Induction,

    /// <summary>How long the mix can be applied.</summary>
    PotLife,

    /// <summary>Dry enough to touch lightly.</summary>
    TouchDry,

    /// <summary>The next coat may go on from here.</summary>
    RecoatOpens,

    /// <summary>The next coat has to be on by here, else abrade.</summary>
    RecoatCloses,

    /// <summary>Water may run on it from here.</summary>
    WaterService,

    /// <summary>Fully cured.</summary>
    FullCure,
}
