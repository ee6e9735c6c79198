namespace Refinish.Pictures.Drafting;

/// <summary>The kinds of line of a technical drawing.</summary>
internal enum Stroke
{
    Body,
    Hollow,
    Edge,
    ClosedEdge,
    Hidden,
    Fine,
    Wall,
}
