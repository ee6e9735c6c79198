namespace Refinish.Substrates;

/// <summary>What is known about asbestos in the material that holds, backs or carries a fixture.</summary>
public enum AsbestosTest
{
    /// <summary>Nobody has had it sampled.</summary>
    NotTested,

    /// <summary>Sampled by somebody accredited for it and analysed: no asbestos found.</summary>
    Negative,

    /// <summary>Sampled: asbestos is there.</summary>
    Positive,
}
