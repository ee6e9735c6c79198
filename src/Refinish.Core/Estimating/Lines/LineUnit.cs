using System;

namespace Refinish.Estimating;

/// <summary>
/// What the quantity of a line counts. The list is closed, so that a host can map each unit once; see <see cref="LineUnits"/>.
/// </summary>
public enum LineUnit
{
    /// <summary>Pieces.</summary>
    Each,

    /// <summary>Sets.</summary>
    Set,

    /// <summary>Kits of a material, each of the size that its line names.</summary>
    Kit,

    /// <summary>Hours of one person or of a machine.</summary>
    Hour,

    /// <summary>Days.</summary>
    Day,

    /// <summary>The job as a whole.</summary>
    Job,

    /// <summary>Trips to the customer.</summary>
    Trip,

    /// <summary>Fixtures.</summary>
    Fixture,

    /// <summary>Millilitres.</summary>
    Millilitre,

    /// <summary>Litres.</summary>
    Litre,

    /// <summary>US fluid ounces.</summary>
    UsFluidOunce,

    /// <summary>US liquid quarts.</summary>
    UsQuart,

    /// <summary>US gallons.</summary>
    UsGallon,

    /// <summary>Grams.</summary>
    Gram,

    /// <summary>Kilograms.</summary>
    Kilogram,

    /// <summary>Pounds, avoirdupois.</summary>
    Pound,

    /// <summary>Metres.</summary>
    Metre,

    /// <summary>Feet.</summary>
    Foot,

    /// <summary>Square metres.</summary>
    SquareMetre,

    /// <summary>Square feet.</summary>
    SquareFoot,

    /// <summary>The currency of the estimate: the quantity is an amount of money that a share is taken of.</summary>
    Money,
}
