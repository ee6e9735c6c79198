namespace Refinish.Estimating;

/// <summary>What a line of an estimate is for.</summary>
public enum LineCategory
{
    /// <summary>Hours, worked or otherwise paid.</summary>
    Labour,

    /// <summary>Kits of a material.</summary>
    Material,

    /// <summary>Masking, abrasives, filters, cartridges and cups.</summary>
    Consumables,

    /// <summary>The van's trips; hours at the wheel are labour.</summary>
    Travel,

    /// <summary>Waste disposal.</summary>
    Waste,

    /// <summary>Extras that the customer chose.</summary>
    Option,

    /// <summary>Overhead by hours or by direct cost.</summary>
    Overhead,

    /// <summary>What is set aside for warranty claims.</summary>
    Warranty,

    /// <summary>Discount; negative.</summary>
    Discount,

    /// <summary>Cents that rounding leaves, and rounding to the cash step; either sign.</summary>
    Rounding,

    /// <summary>Sales tax.</summary>
    Tax,

    /// <summary>Overhead and profit that no other line carries, and what the minimum charge adds.</summary>
    Margin,
}
