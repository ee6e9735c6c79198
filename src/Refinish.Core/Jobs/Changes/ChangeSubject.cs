namespace Refinish.Jobs;

/// <summary>What a change is about.</summary>
public enum ChangeSubject
{
    /// <summary>Today's library refuses the stored input; the reasons stand in the remark.</summary>
    Refusal,

    /// <summary>There is a price on one side only.</summary>
    Price,

    /// <summary>The currency differs, so that no amount can be compared.</summary>
    Currency,

    /// <summary>Something stands in the way, or no longer does.</summary>
    Objection,

    /// <summary>The price book lacks something, or no longer does.</summary>
    PriceGap,

    /// <summary>A fixture came or went, with the lines that belong to it alone; for a customer also its price in the quote.</summary>
    Fixture,

    /// <summary>An option was ordered, declined or priced otherwise.</summary>
    Option,

    /// <summary>Hours of one kind of work.</summary>
    Labour,

    /// <summary>The rate of an hour moved and the hours did not.</summary>
    LabourRate,

    /// <summary>Kits of one material.</summary>
    Material,

    /// <summary>Days on which the shop comes, and its trips.</summary>
    Visits,

    /// <summary>Another line of the estimate, such as consumables, waste, hired equipment or another trade's work.</summary>
    OtherLine,

    /// <summary>Overhead, warranty reserve and margin, as far as lines that did not change carry them otherwise.</summary>
    SharedCosts,

    /// <summary>A discount.</summary>
    Discount,

    /// <summary>A tax.</summary>
    Tax,

    /// <summary>What is left between the total and its lines; it happens only with figures that do not add up by themselves.</summary>
    Remainder,

    /// <summary>When the work starts.</summary>
    Start,

    /// <summary>When the last visit ends.</summary>
    End,

    /// <summary>From when a fixture may get water.</summary>
    WaterFrom,

    /// <summary>Something that has to be done or found out before the plan holds.</summary>
    Condition,

    /// <summary>A caution that people are told.</summary>
    Caution,

    /// <summary>The whole price before discount and tax, for a customer, where there are no two quotes with items.</summary>
    Work,

    /// <summary>What the customer pays in all, with tax; its difference stands in the changes before it.</summary>
    Total,

    /// <summary>A stage of payment, a part of the total.</summary>
    Payment,

    /// <summary>How long the quote holds.</summary>
    Validity,
}
