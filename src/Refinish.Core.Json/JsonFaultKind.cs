namespace Refinish.Json;

/// <summary>What is wrong with a place in a document.</summary>
public enum JsonFaultKind
{
    /// <summary>The text is no JSON, or ends too early.</summary>
    Malformed,

    /// <summary>A field that has to be there is not.</summary>
    Missing,

    /// <summary>
    /// A field that the format does not know; it is refused, because a misspelt field would otherwise be left out in silence.
    /// </summary>
    UnknownField,

    /// <summary>A field stands twice in one object.</summary>
    DuplicateField,

    /// <summary>A unit that the quantity does not know, or that could be two units.</summary>
    UnknownUnit,

    /// <summary>A word that is not among the named values, or a kind of thing that the format does not know.</summary>
    UnknownKind,

    /// <summary>A string where a number has to stand, an array where an object has to stand, a date that is none.</summary>
    WrongType,

    /// <summary>A value outside the range that the library allows.</summary>
    OutOfRange,

    /// <summary>Values that are each allowed but do not go together.</summary>
    Contradiction,

    /// <summary>The document is of a format or version that this library does not read.</summary>
    UnknownVersion,

    /// <summary>An identifier under which the document has defined nothing.</summary>
    UnknownId,
}
