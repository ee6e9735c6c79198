namespace Refinish.Coatings;

/// <summary>What a limit on volatile organic compounds counts.</summary>
public enum VocBasis
{
    /// <summary>Per volume of coating less water and exempt compounds, thinned to the maker's most (40 CFR 59 and its like).</summary>
    LessWaterAndExempt,

    /// <summary>Per volume of the product as it is ready to use, water included (Directive 2004/42/EC).</summary>
    ReadyToUse,
}
