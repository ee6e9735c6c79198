namespace Refinish.Json.Shapes;

/// <summary>How reading a value went.</summary>
internal enum Outcome
{
    /// <summary>There is no value; the fault has been noted.</summary>
    Nothing,

    /// <summary>A stand-in was put where a fault was found, only so that the rest can still be checked. It is never handed out.</summary>
    StandIn,

    /// <summary>The value that the document holds.</summary>
    Read,
}
