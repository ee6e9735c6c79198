namespace Refinish.Jobs;

/// <summary>What moved the money of a change, where its lines tell.</summary>
public enum ChangeCause
{
    /// <summary>The lines do not tell, or no money moved.</summary>
    Unknown,

    /// <summary>More or less of it, at the same rate.</summary>
    Quantity,

    /// <summary>The same quantity at another rate.</summary>
    Rate,

    /// <summary>Another quantity at another rate.</summary>
    QuantityAndRate,

    /// <summary>Other sizes or numbers of kits of one material.</summary>
    Kits,

    /// <summary>The margin, overhead or warranty that lines carry, though their own cost stayed.</summary>
    SharedCosts,

    /// <summary>The minimum charge decides the price before, after or both, so that what lines carry on top of their cost moved.</summary>
    MinimumCharge,
}
