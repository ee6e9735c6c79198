namespace Refinish.Estimating;

/// <summary>What a line of an estimate is for.</summary>
public enum LineCategory
{
    /// <summary>Hours, worked or otherwise paid, with what overtime adds.</summary>
    Labour,

    /// <summary>Materials as bought.</summary>
    Material,

    /// <summary>Masking, abrasives, filters, cartridges and cups.</summary>
    Consumables,

    /// <summary>Hired equipment.</summary>
    Equipment,

    /// <summary>Work of another trade.</summary>
    Subcontract,

    /// <summary>The van's trips; hours at the wheel are labour.</summary>
    Travel,

    /// <summary>Waste disposal.</summary>
    Waste,

    /// <summary>Extras that the customer chose.</summary>
    Option,

    /// <summary>A sum for what cannot be seen yet, settled by what it really takes.</summary>
    Allowance,

    /// <summary>Overhead by hours or by direct cost; its price is carried by the lines of the work.</summary>
    Overhead,

    /// <summary>What is set aside for warranty claims; its price is carried by the lines of the work.</summary>
    Warranty,

    /// <summary>Price that no line of the work can carry, because none costs anything.</summary>
    Margin,

    /// <summary>Discount; its price is negative.</summary>
    Discount,

    /// <summary>Tax.</summary>
    Tax,

    /// <summary>Cents that rounding leaves.</summary>
    Rounding,
}
