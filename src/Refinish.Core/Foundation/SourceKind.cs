namespace Refinish;

/// <summary>What stands behind a number.</summary>
public enum SourceKind
{
    /// <summary>A published document; where its place is named, anyone can look it up.</summary>
    Published,

    /// <summary>Follows by algebra or by definition from what is given.</summary>
    Derived,

    /// <summary>What the trade commonly does; no document was found that says so.</summary>
    CommonPractice,

    /// <summary>Recalled from general knowledge of standards or physics and not checked against the document.</summary>
    FromMemory,

    /// <summary>Made up for a demonstration or as a default that the caller is meant to replace.</summary>
    Invented,

    /// <summary>Given by the caller: a tape measurement, a gauge reading, a product's data sheet, a price list.</summary>
    Supplied,
}
