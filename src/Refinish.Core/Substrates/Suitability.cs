namespace Refinish.Substrates;

/// <summary>Whether a fixture may be refinished as it was found, from best to worst.</summary>
public enum Suitability
{
    /// <summary>No rule objects.</summary>
    Suitable,

    /// <summary>Every condition in the reasons has to be met, and its test repeated, before the first coat.</summary>
    SuitableWithConditions,

    /// <summary>Not as it stands; the reasons say what would have to change first.</summary>
    NotSuitable,
}
