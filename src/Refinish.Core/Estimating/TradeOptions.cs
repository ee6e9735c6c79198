using System;

namespace Refinish.Estimating;

/// <summary>The options that customers usually ask for, with codes and units of this library; cost and price are the shop's own.</summary>
/// <remarks>Which options there are is common practice of the trade without a source.</remarks>
/// <example><code>
/// PriceBook book = new() { Currency = "USD", Options = [TradeOptions.SlipResistantFloor(6m, 75m), TradeOptions.DrainTrim(18m)] };
/// </code></example>
public static class TradeOptions
{
    private static readonly Caution Slip = new(
        "textured-floor",
        Hazard.Slip,
        "A textured floor slips less when clean and is still slippery with soap: no coating makes a bathtub floor non-slip.",
        "the maker's test report, with its method and criterion",
        Source.CommonPractice("ANSI A326.3 (seen second-hand) is for level floors and no criterion for bathtubs; ASTM F462 for bathtubs was withdrawn"));

    private static readonly Caution Strippers = new(
        "option-stripping",
        Hazard.Stripper,
        "Strippers with methylene chloride have killed refinishers in bathrooms and are to be taken as prohibited for this work; any other stripper needs its own exhaust and gloves.",
        "40 CFR 751 subpart B, local rules and the stripper's safety data sheet",
        Source.Published("MMWR 61(7):119-122 (24 February 2012)", "13 deaths of bathtub refinishers, 2000 to 2011"));

    private static readonly Caution OldCoat = new(
        "option-old-coat-lead",
        Hazard.Lead,
        "An old coat may hold lead: test before it is stripped or sanded.",
        "a lead test and the law on lead work",
        Source.Published("71 FR 1588", "target housing: built before 1978, TSCA section 401"));

    /// <summary>Texture in the last coat of a tub or shower floor, each.</summary>
    /// <param name="cost">Cost of one, at least 0.</param>
    /// <param name="price">Fixed price of one; <see langword="null"/> for the margin of the job.</param>
    /// <returns>Option X-10, with its caution.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An amount is negative or too large.</exception>
    public static OptionPrice SlipResistantFloor(decimal cost, decimal? price = null) =>
        new("X-10", "slip-resistant floor", "each", cost, price) { Cautions = [Slip] };

    /// <summary>Another colour than white or than before, for each fixture: tinting, and the coats it takes more to hide.</summary>
    /// <param name="cost">Cost of one, at least 0.</param>
    /// <param name="price">Fixed price of one; <see langword="null"/> for the margin of the job.</param>
    /// <returns>Option X-20.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An amount is negative or too large.</exception>
    public static OptionPrice ColourChange(decimal cost, decimal? price = null) => new("X-20", "colour change", "fixture", cost, price);

    /// <summary>New drain and overflow trim, a set.</summary>
    /// <param name="cost">Cost of one, at least 0.</param>
    /// <param name="price">Fixed price of one; <see langword="null"/> for the margin of the job.</param>
    /// <returns>Option X-30.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An amount is negative or too large.</exception>
    public static OptionPrice DrainTrim(decimal cost, decimal? price = null) => new("X-30", "new drain and overflow trim", "set", cost, price);

    /// <summary>Stripping an old coat, for each fixture.</summary>
    /// <param name="cost">Cost of one, at least 0.</param>
    /// <param name="price">Fixed price of one; <see langword="null"/> for the margin of the job.</param>
    /// <returns>Option X-40, with its cautions.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An amount is negative or too large.</exception>
    public static OptionPrice StripOldCoat(decimal cost, decimal? price = null) =>
        new("X-40", "strip an old coat", "fixture", cost, price) { Cautions = [Strippers, OldCoat] };

    /// <summary>Taking off, renewing and fitting hardware such as grab rails and soap dishes, for each piece.</summary>
    /// <param name="cost">Cost of one, at least 0.</param>
    /// <param name="price">Fixed price of one; <see langword="null"/> for the margin of the job.</param>
    /// <returns>Option X-50.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An amount is negative or too large.</exception>
    public static OptionPrice Hardware(decimal cost, decimal? price = null) => new("X-50", "renew hardware", "each", cost, price);
}
