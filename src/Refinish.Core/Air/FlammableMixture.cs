using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// Several vapours in the same air: between which limits their mixture burns, and how near it is to the lower one. Le Chatelier's rule:
/// limit of the mixture = Σc / Σ(c/L), with c the part of each vapour and L its own limit.
/// </summary>
/// <remarks>
/// The rule supposes that the vapours burn independently and that all flames at their limit are equally hot. Mashuga and Crowl
/// (Process Safety Progress 19(2), 2000) found both reasonable at the lower limit and less so at the upper, and some handbooks leave the
/// upper one out: take <see cref="UpperLimit"/>
/// as a rough figure, and never as a line to stay above. Leave out what does not burn (water, nitrogen); halogenated vapours, which can
/// slow a flame or feed it, are outside the rule. Where only the proportions of the vapour are known, parts that add up to 100 % give the
/// two limits. What evaporates from a liquid is not in the proportions of the liquid.
/// </remarks>
/// <example><code>
/// FlammableMixture air = new(
/// [
///     new("hexane", Ratio.FromPercent(0.8), Flammability.Between(Ratio.FromPercent(1.2), Ratio.FromPercent(7.5))),
///     new("methane", Ratio.FromPercent(2), Flammability.Between(Ratio.FromPercent(5.3), Ratio.FromPercent(15))),
///     new("ethylene", Ratio.FromPercent(0.5), Flammability.Between(Ratio.FromPercent(3.1), Ratio.FromPercent(32))),
/// ]);
/// double? lower = air.LowerLimit?.Percent;        // 2.74 of the three together
/// double? part = air.OfLowerLimit?.Percent;       // 120.5 : it burns
/// </code></example>
public sealed record FlammableMixture
{
    private static readonly Source LeChatelier = Source.Published(
        "C. V. Mashuga, D. A. Crowl, Derivation of Le Chatelier's mixing rule for flammable limits, Process Safety Progress 19(2), 2000",
        "abstract: the rule, its assumptions, reasonably valid at the lower limit and less so at the upper");

    private static readonly Source Parts = Source.Derived("parts by volume add up");

    private readonly ValueList<FlammableVapour> vapours;
    private readonly bool isWhole = true;
    private readonly bool hasUpper = true;

    /// <summary>Puts vapours together that may reach a quarter of their lower flammable limit, and a tenth by design.</summary>
    /// <param name="vapours">At least one; together at most 100 % of the air.</param>
    /// <exception cref="ArgumentException">There is none.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Together they are more than 100 %.</exception>
    public FlammableMixture(IReadOnlyList<FlammableVapour> vapours) : this(vapours, FlammableShare.Quarter, FlammableShare.Tenth)
    {
    }

    /// <summary>Puts vapours together.</summary>
    /// <param name="vapours">At least one; together at most 100 % of the air.</param>
    /// <param name="allowed">What they may reach of their lower flammable limit.</param>
    /// <param name="design">The share to design for.</param>
    /// <exception cref="ArgumentException">There is none, or a share is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Together they are more than 100 %.</exception>
    public FlammableMixture(IReadOnlyList<FlammableVapour> vapours, FlammableShare allowed, FlammableShare design)
    {
        this.vapours = Guard.List(vapours, 1);
        Allowed = Guard.NotNull(allowed);
        Design = Guard.NotNull(design);
        Guard.Rule(Sum().Value <= 1 + 1e-9, nameof(vapours), Sum().Value, Measure.Percent, "parts that add up to at most 100 %");
        foreach (FlammableVapour vapour in this.vapours)
        {
            isWhole &= vapour.Lower is not null;
            hasUpper &= vapour.Upper is not null;
        }
    }

    /// <summary>What burns in the air, in the order given.</summary>
    public IReadOnlyList<FlammableVapour> Vapours => vapours;

    /// <summary>All vapour together, by volume of the air.</summary>
    public Ratio Total => Ratio.FromDecimalFractions(Sum().Value);

    /// <summary>
    /// Lower flammable limit of this mixture, all vapour together by volume; <see langword="null"/> when one is not known.
    /// </summary>
    public Ratio? LowerLimit => isWhole ? Ratio.FromDecimalFractions(Lower().Value) : null;

    /// <summary>
    /// Upper flammable limit of this mixture; <see langword="null"/> when one is not known. Less certain than the lower one.
    /// </summary>
    public Ratio? UpperLimit => hasUpper ? Ratio.FromDecimalFractions(Upper().Value) : null;

    /// <summary>
    /// How much of its lower flammable limit the mixture is; from 100 % on it can burn. <see langword="null"/> when one is not known.
    /// </summary>
    public Ratio? OfLowerLimit => isWhole ? Ratio.FromDecimalFractions(OfLower().Value) : null;

    /// <summary>What vapour may reach of its lower flammable limit.</summary>
    public FlammableShare Allowed { get; }

    /// <summary>The share to design for.</summary>
    public FlammableShare Design { get; }

    /// <summary>
    /// That part against <see cref="Allowed"/>. It cannot be judged when a limit is not known, unless the others alone pass it.
    /// </summary>
    public LimitComparison Comparison => Against(Allowed, "vapour of its lower flammable limit");

    /// <summary>That part against <see cref="Design"/>.</summary>
    public LimitComparison DesignLine => Against(Design, "vapour of its lower flammable limit, design line");

    /// <summary>What to warn of.</summary>
    public IReadOnlyList<Caution> Cautions
    {
        get
        {
            List<Caution> cautions = OfLower().Value > Allowed.Fraction ? [Refinish.Cautions.Flammable]
                : OfLower().Value > Design.Fraction ? [Refinish.Cautions.NearFlammable] : [];
            if (!isWhole)
            {
                cautions.Add(Refinish.Cautions.LimitUnknown);
            }

            return new ValueList<Caution>([.. cautions, Refinish.Cautions.TooRichThinsOut, Refinish.Cautions.IgnitionSources,
                Refinish.Cautions.GasMeter]);
        }
    }

    private Num Sum(Trace? t = null) => t.Step("all vapour", "c", Measure.Percent, Parts, Num.Sum(vapours, t, Part));

    // What has no limit is left out.
    private Num OfLower(Trace? t = null) => t.Step("part of the lower limit", "Φ", Measure.Percent, LeChatelier, Num.Sum(vapours, t,
        static (vapour, i, t) => vapour.Lower is double lower ? Part(vapour, i, t) / t.Given("LFL_", i + 1, lower, Measure.Percent) : 0));

    private Num OfUpper(Trace? t = null) => t.Step("part of the upper limit", "Ψ", Measure.Percent, LeChatelier, Num.Sum(vapours, t,
        static (vapour, i, t) => vapour.Upper is double upper ? Part(vapour, i, t) / t.Given("UFL_", i + 1, upper, Measure.Percent) : 0));

    private static Num Part(FlammableVapour vapour, int i, Trace? t) => t.Given("c_", i + 1, vapour.Part, Measure.Percent);

    private Num Lower(Trace? t = null) => t.Step("lower limit of the mixture", "LFL", Measure.Percent, LeChatelier, Sum(t) / OfLower(t));

    private Num Upper(Trace? t = null) => t.Step("upper limit of the mixture", "UFL", Measure.Percent, LeChatelier, Sum(t) / OfUpper(t));

    /// <summary>How the limits follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of(
        "Flammable limits of a mixture",
        [Sum, .. Trace.When(isWhole, OfLower, Lower), .. Trace.When(hasUpper, OfUpper, Upper)]);

    /// <summary>The part of the lower limit against what is allowed.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Comparison.ToString();

    private LimitComparison Against(FlammableShare line, string subject) => AirStudy.FlammableAgainst(
        line, isWhole ? subject : subject + AirStudy.KnownOnly, OfLower().Value, isWhole, "more fresh air, or less vapour");
}
