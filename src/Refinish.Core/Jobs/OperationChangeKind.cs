namespace Refinish.Jobs;

/// <summary>What a caller does to the list of operations.</summary>
public enum OperationChangeKind
{
    /// <summary>Puts an operation of the caller's own into the list.</summary>
    Add,

    /// <summary>Puts one in the place of another.</summary>
    Replace,

    /// <summary>Moves one.</summary>
    Move,

    /// <summary>Takes one out.</summary>
    Strike,
}
