namespace Refinish.Air;

/// <summary>How well a figure of the tables has been looked up.</summary>
public enum Standing
{
    /// <summary>The number was read in a copy of the document named.</summary>
    Seen,

    /// <summary>The number was read on another page that quotes the document.</summary>
    SecondHand,

    /// <summary>Recalled and not verified; look it up before anything rests on it.</summary>
    FromMemory,

    /// <summary>Given by the caller.</summary>
    Supplied,
}
