namespace Refinish.Jobs;

/// <summary>How the prices of the single items of a quote are shown. The total with tax and each tax are always told.</summary>
public enum PricesShown
{
    /// <summary>Before discount and tax.</summary>
    Net,

    /// <summary>With discount and tax in them, as consumers in many countries have to be told.</summary>
    WithTax,
}
