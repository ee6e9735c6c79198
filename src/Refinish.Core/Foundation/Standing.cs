namespace Refinish;

/// <summary>How well a figure or the place of a source has been looked up.</summary>
public enum Standing
{
    /// <summary>It was read in a copy of the document named.</summary>
    Seen,

    /// <summary>It was read on another page that quotes the document.</summary>
    SecondHand,

    /// <summary>Recalled, in whole or in part, and not verified; look it up before anything rests on it.</summary>
    FromMemory,

    /// <summary>Given by the caller.</summary>
    Supplied,
}
