namespace Refinish.Pictures.Drafting;

/// <summary>Where a dimension line stands to its view.</summary>
internal enum Side
{
    Top,
    Bottom,
    Left,
    Right,
}
