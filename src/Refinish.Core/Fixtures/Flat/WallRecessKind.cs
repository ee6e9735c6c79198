namespace Refinish.Fixtures;

/// <summary>What a recess in a tiled wall is.</summary>
public enum WallRecessKind
{
    /// <summary>A tiled niche: back and four flanks.</summary>
    Niche,

    /// <summary>A tiled window reveal: four flanks, the window itself taped off.</summary>
    Window,

    /// <summary>A recessed soap dish: back and four flanks, smooth.</summary>
    SoapDish,
}
