namespace Refinish.Climate;

/// <summary>How the warming of a wall is reckoned.</summary>
public enum WarmUpMethod
{
    /// <summary>As one lump of heat at one temperature: the Biot number is below 0.1.</summary>
    Lumped,

    /// <summary>As a plane wall that warms at its face first: the Biot number is 0.1 or more.</summary>
    Slab,
}
