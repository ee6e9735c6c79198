namespace Refinish.Jobs;

/// <summary>What kind of thing stands in the way of a plan.</summary>
public enum ObjectionKind
{
    /// <summary>Two inputs do not fit each other, such as a fixture in a room that the premises do not have.</summary>
    Input,

    /// <summary>A fixture may not be refinished, or the chosen system does not suit it; the other fixtures are planned.</summary>
    FixtureLeftOut,

    /// <summary>A change of the caller breaks an order rule of the trade, or names an operation that is not there.</summary>
    Order,

    /// <summary>Air or surface is outside the product's limits.</summary>
    SprayWindow,

    /// <summary>The product gives no times at this temperature, or a temperature record ends too soon.</summary>
    CureTemperature,

    /// <summary>No batch fits cup and pot life.</summary>
    Batch,

    /// <summary>The coats planned do not hide the old colour.</summary>
    Hiding,

    /// <summary>
    /// The product as applied is beyond a limit of volatile organic compounds of the shop's set, or that cannot be judged.
    /// </summary>
    Voc,

    /// <summary>The crew has nobody to stand by while a coat is sprayed or solvent is at work.</summary>
    StandBy,

    /// <summary>No times hold together.</summary>
    Schedule,

    /// <summary>A labour standard is missing, so hours and price cannot be given.</summary>
    Labour,

    /// <summary>
    /// The vapour is beyond the share of its lower flammable limit that the shop's set allows, the exhaust moves less than the careful
    /// bound asks for, or that cannot be judged; or the room takes longer than a working day to clear.
    /// </summary>
    Flammability,

    /// <summary>The price book lacks a rate, a kit or an option.</summary>
    Price,

    /// <summary>
    /// A stage of payment fits neither the total nor the currency, or more is asked for before the work than the shop's limit allows.
    /// </summary>
    Payment,

    /// <summary>A part of the job is outside what the library computes.</summary>
    OutOfRange,
}
