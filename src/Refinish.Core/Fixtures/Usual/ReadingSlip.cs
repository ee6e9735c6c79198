namespace Refinish.Fixtures;

/// <summary>How a length may have come to be wrong between the tape and the form.</summary>
public enum ReadingSlip
{
    /// <summary>The number is in inches and was taken as centimetres.</summary>
    InchesAsCentimetres,

    /// <summary>The number is in centimetres and was taken as inches.</summary>
    CentimetresAsInches,

    /// <summary>The number is in inches and was taken as millimetres.</summary>
    InchesAsMillimetres,

    /// <summary>The number is in millimetres and was taken as inches.</summary>
    MillimetresAsInches,

    /// <summary>The number is in feet and was taken as metres.</summary>
    FeetAsMetres,

    /// <summary>The number is in metres and was taken as feet.</summary>
    MetresAsFeet,

    /// <summary>The number is in feet and was taken as inches.</summary>
    FeetAsInches,

    /// <summary>The number is in inches and was taken as feet.</summary>
    InchesAsFeet,

    /// <summary>Ten times too small: centimetres taken as millimetres, or a digit was lost. The number alone cannot tell which.</summary>
    TenTimesTooSmall,

    /// <summary>
    /// Ten times too large: millimetres taken as centimetres, or there is a digit too many. The number alone cannot tell which.
    /// </summary>
    TenTimesTooLarge,

    /// <summary>Two digits side by side changed places.</summary>
    DigitsSwapped,

    /// <summary>A digit was typed twice.</summary>
    DigitDoubled,
}
