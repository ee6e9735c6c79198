using System;

namespace Refinish.Air;

/// <summary>
/// One kind of respirator held against one exposure: the hazard ratio C/L, the largest concentration the kind may be used in APF · L, and
/// what is taken to be inside C/APF.
/// </summary>
/// <remarks>
/// Two rules go before the factor. Where the air is immediately dangerous to life or health, the factor is not applied, and only the two
/// kinds listed for it are left (29 CFR 1910.134(d)(2) and (d)(3)(i)(B)). Where isocyanates are in the air, only kinds that supply air are
/// left: NIOSH lists no other for hexamethylene diisocyanate. OSHA allows filters below immediate danger with a schedule for changing them
/// (letter of 18 July 2000); this library takes the stricter of the two. A factor that reaches is no permission: fit test, medical
/// clearance and training belong to it, and the employer's programme decides. Source of the formulas: 29 CFR 1910.134(d)(3)(i)(B), read
/// as OSHA's training slide 35.
/// </remarks>
/// <example><code>
/// Source sheet = Source.Supplied("data sheet");
/// LimitComparison toluene = LimitComparison.AtMost(
///     "toluene, 8-hour average", Ratio.FromPartsPerMillion(800), Ratio.FromPartsPerMillion(20), Measure.PartsPerMillion, sheet);
/// RespiratorCheck hood = new(RespiratorClass.Common[2], toluene, asksForAir: false, isImmediatelyDangerous: false);
/// double? ratio = hood.HazardRatio;          // 40
/// double? inside = hood.InsideOverLimit;     // 1.6
/// </code></example>
public sealed record RespiratorCheck
{
    private static readonly Source LargestUse = Source.Published(
        "29 CFR 1910.134",
        "(d)(3)(i)(B): at most factor times limit, and never by that rule in immediately dangerous air; read as OSHA training slide 35");

    /// <summary>Holds a kind against an exposure.</summary>
    /// <param name="respirator">The kind.</param>
    /// <param name="exposure">What is breathed without protection, against its limit; a limit from above.</param>
    /// <param name="asksForAir">Whether only kinds that supply air are left, as where isocyanates are sprayed.</param>
    /// <param name="isImmediatelyDangerous">Whether the air is immediately dangerous to life or health.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException">The limit of <paramref name="exposure"/> holds from below.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The value of <paramref name="exposure"/> is negative, or its limit not more than
    /// 0.</exception>
    public RespiratorCheck(RespiratorClass respirator, LimitComparison exposure, bool asksForAir, bool isImmediatelyDangerous)
    {
        Respirator = Guard.NotNull(respirator);
        Exposure = Guard.NotNull(exposure);
        if (exposure.Sense != LimitSense.AtMost)
        {
            throw new ArgumentException("exposure has a limit from below; allowed: one that may at most be so much.", nameof(exposure));
        }

        if (exposure.Value is { Si: double value })
        {
            Guard.Within(value, Bounds.NotNegative(exposure.Measure), nameof(exposure));
        }

        if (exposure.Limit is { Si: double limit })
        {
            Guard.Within(limit, Bounds.Positive(exposure.Measure), nameof(exposure));
        }

        Exclusion = isImmediatelyDangerous && respirator.ForImmediateDanger is null ? RespiratorExclusion.NotForImmediateDanger
            : asksForAir && !respirator.SuppliesAir ? RespiratorExclusion.OnlyFilters
            : RespiratorExclusion.None;
    }

    /// <summary>The kind.</summary>
    public RespiratorClass Respirator { get; }

    /// <summary>What is breathed without protection, against its limit.</summary>
    public LimitComparison Exposure { get; }

    /// <summary>Why the kind is out of the question whatever its factor.</summary>
    public RespiratorExclusion Exclusion { get; }

    /// <summary>Exposure over limit, the least protection factor; <see langword="null"/> when one of them is not known.</summary>
    public double? HazardRatio => Exposure.OfLimit;

    /// <summary>
    /// What is taken to be inside, over the limit: hazard ratio over factor. Above 1 the factor is that many times too little;
    /// <see langword="null"/> when it cannot be judged.
    /// </summary>
    public double? InsideOverLimit => HazardRatio is null ? null : Inside().Value;

    /// <summary>The exposure against the largest concentration that the kind may be used in, its factor times the limit.</summary>
    public LimitComparison Comparison => new(
        Exposure.Subject + ", in a respirator: " + Respirator.Name, Exposure.Value?.Si, Exposure.Limit is null ? null : Use().Value,
        LimitSense.AtMost, Exposure.Measure, LargestUse,
        InsideOverLimit > 1 ? "less at a time, more air, another product, or a kind with a greater factor" : null);

    /// <summary>
    /// Whether nothing excludes the kind and its factor reaches the hazard ratio. The employer's programme and the data sheet still decide.
    /// </summary>
    public bool Reaches => Exclusion == RespiratorExclusion.None && Comparison.Outcome == ComparisonOutcome.Within;

    /// <summary>How ratio, largest use and the inside follow; without steps where value or limit is not known.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Respirator: " + Respirator.Name, HazardRatio is null ? [] : [Ratio, Use, Inside]);

    /// <summary>The kind, its factor and by how much that falls short, in plain words.</summary>
    /// <returns>Text such as <c>supplied air, continuous flow, half mask: 50, 1.5 times too little</c>.</returns>
    public override string ToString() => Respirator + ", " + Exclusion switch
    {
        RespiratorExclusion.NotForImmediateDanger => "not listed for immediate danger",
        RespiratorExclusion.OnlyFilters => "only filters",
        _ => InsideOverLimit switch
        {
            null => "cannot be judged",
            > 1 and double times => Figures.Significant(times, 2) + " times too little"
                + (Respirator.FactorWithMakerEvidence is int more
                    ? " (" + Figures.Fixed(more, 0) + " only with the maker's test evidence)"
                    : string.Empty),
            _ => "reaches" + (Respirator.ForImmediateDanger is string needs
                ? " (" + needs + " where the air is immediately dangerous)"
                : string.Empty),
        },
    };

    private Num Ratio(Trace? t = null) => t.Step("hazard ratio, the least protection factor", "HR", Measure.Number, LargestUse,
        t.Given("C", Exposure.Value!.Value.Si, Exposure.Measure) / Limit(t));

    private Num Use(Trace? t = null) =>
        t.Step("largest concentration it may be used in", "MUC", Exposure.Measure, LargestUse, Factor(t) * Limit(t));

    private Num Inside(Trace? t = null) => t.Step(
        "what is taken to be inside, over the limit", "HR_in", Measure.Number, Respirator.Source, Ratio(t) / Factor(t));

    private Num Limit(Trace? t) => t.Given("L", Exposure.Limit!.Value.Si, Exposure.Measure);

    private Num Factor(Trace? t) => t.Given("APF", Respirator.AssignedProtectionFactor, Measure.Number);
}
