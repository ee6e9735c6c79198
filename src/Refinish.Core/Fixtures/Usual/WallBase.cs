namespace Refinish.Fixtures;

/// <summary>What three tiled walls may stand round.</summary>
internal enum WallBase
{
    /// <summary>Nothing: no walls stand on such a fixture.</summary>
    None,

    /// <summary>A tub.</summary>
    Tub,

    /// <summary>A pan; walls that fit it nowhere may stand round a tub that is no part of the job.</summary>
    Pan,
}
