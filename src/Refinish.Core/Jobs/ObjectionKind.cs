namespace Refinish.Jobs;

/// <summary>What kind of thing stands in the way of a plan.</summary>
public enum ObjectionKind
{
    /// <summary>A fixture may not be refinished, or the chosen system does not suit it; the other fixtures are planned.</summary>
    FixtureLeftOut,

    /// <summary>Air or surface is outside the product's limits now.</summary>
    SprayWindow,

    /// <summary>The product gives no times at this temperature.</summary>
    CureTemperature,

    /// <summary>No batch fits cup and pot life.</summary>
    Batch,

    /// <summary>No times hold together.</summary>
    Schedule,

    /// <summary>A labour standard is missing, so hours and price cannot be given.</summary>
    Labour,

    /// <summary>The vapour is beyond a quarter of its lower flammable limit, the exhaust moves less than the careful bound asks for, or that cannot be judged.</summary>
    Flammability,

    /// <summary>The price book lacks a rate or a kit.</summary>
    Price,
}
