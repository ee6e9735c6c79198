namespace Refinish.Fixtures;

/// <summary>What a doubt is about. The word is stable: hosts may act upon it.</summary>
public enum DoubtKind
{
    /// <summary>One reading lies outside what is usual for it.</summary>
    Reading,

    /// <summary>The lengths of a fixture or of a room look as if they were typed in another unit than they were read in.</summary>
    Unit,

    /// <summary>Two readings of one fixture do not go together as they usually do.</summary>
    Proportion,

    /// <summary>The capacity by the tape and the one on the label do not go together.</summary>
    Capacity,

    /// <summary>A defect is larger than what it is on, or cannot be there.</summary>
    Defect,

    /// <summary>Walls miss the tub or the pan that they stand on.</summary>
    Walls,

    /// <summary>A sink does not fit the counter or the cut-out of its room.</summary>
    CutOut,

    /// <summary>Entries for parts of one fixture are more than the fixture, or leave a part of it out.</summary>
    Parts,

    /// <summary>A room is too small for what stands in it.</summary>
    Room,

    /// <summary>The material is unusual for such a fixture.</summary>
    Material,
}
