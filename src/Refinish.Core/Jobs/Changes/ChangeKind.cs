namespace Refinish.Jobs;

/// <summary>Whether something came, went, or is there before and after with other figures.</summary>
public enum ChangeKind
{
    /// <summary>It is there only now.</summary>
    Added,

    /// <summary>It was there only before.</summary>
    Removed,

    /// <summary>It is there before and after, and differs.</summary>
    Changed,
}
