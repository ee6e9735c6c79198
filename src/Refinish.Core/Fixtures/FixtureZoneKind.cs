namespace Refinish.Fixtures;

/// <summary>Which part of a fixture a surface is: film build, slip resistance and sag differ from one to the next.</summary>
public enum FixtureZoneKind
{
    /// <summary>The bottom that a person stands on.</summary>
    Floor,

    /// <summary>The inside walls, corners and the wall side of the cove.</summary>
    Wall,

    /// <summary>The rim or deck round the mouth of a basin.</summary>
    Rim,

    /// <summary>The front panel of a recessed tub.</summary>
    Apron,

    /// <summary>The outside of a sink or of a freestanding tub.</summary>
    Outside,

    /// <summary>The column below a pedestal sink.</summary>
    Column,

    /// <summary>Tile with its joints.</summary>
    Tile,

    /// <summary>The level top of a counter or a plain panel.</summary>
    Top,

    /// <summary>The showing edge of a counter or a plain panel.</summary>
    Edge,

    /// <summary>The upstand behind a counter, face and top.</summary>
    Backsplash,

    /// <summary>The inside of a sink.</summary>
    Bowl,

    /// <summary>The threshold of a shower, all faces that show.</summary>
    Curb,

    /// <summary>The upright tiling flange of a tub, where it shows.</summary>
    Flange,

    /// <summary>A ceiling or another underside over a room, worked on overhead.</summary>
    Ceiling,

    /// <summary>The surface that a person sits on in a shower.</summary>
    Seat,

    /// <summary>The front that shows: of an apron sink, of a seat, of doors and drawers.</summary>
    Front,

    /// <summary>A foot of a tub, with the pad it stands on.</summary>
    Foot,
}
