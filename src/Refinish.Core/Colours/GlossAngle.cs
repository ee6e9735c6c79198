namespace Refinish.Colours;

/// <summary>The angle from the normal at which gloss is read.</summary>
public enum GlossAngle
{
    /// <summary>60°: for all, and first.</summary>
    Sixty,

    /// <summary>20°: for high gloss.</summary>
    Twenty,

    /// <summary>85°: for low gloss, "sheen".</summary>
    EightyFive,
}
