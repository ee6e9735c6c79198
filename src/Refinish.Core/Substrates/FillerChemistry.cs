namespace Refinish.Substrates;

/// <summary>What a filler cures by; it decides which cautions go with it.</summary>
public enum FillerChemistry
{
    /// <summary>Not given: every caution stands.</summary>
    Unknown,

    /// <summary>Unsaturated polyester with a peroxide hardener.</summary>
    Polyester,

    /// <summary>Epoxy with an amine hardener.</summary>
    Epoxy,
}
