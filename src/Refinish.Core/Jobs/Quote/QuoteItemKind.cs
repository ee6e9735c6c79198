namespace Refinish.Jobs;

/// <summary>What an item of a customer's quote is.</summary>
public enum QuoteItemKind
{
    /// <summary>
    /// A fixture refinished: all labour, materials, travel and disposal that it takes, with its part of what fixtures share.
    /// </summary>
    Fixture,

    /// <summary>An option that the customer chose.</summary>
    Option,

    /// <summary>Something beside the work: hired equipment, another trade, an allowance.</summary>
    Extra,
}
