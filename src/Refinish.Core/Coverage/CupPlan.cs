using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Curing;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>
/// The batches that deliver a need with the least mixed in excess, and among those the fewest, out of cups of several sizes; with as
/// many of each cup they are as even as the marks allow, since a small rest is measured worst. Each is through the gun within its share
/// of the pot life.
/// </summary>
/// <remarks>
/// <para>Time to use a batch: t_use = s·t_pot − t_ind − t_mix, counted from mixing. Each batch is a whole number of its cup's graduations,
/// at least what is measured
/// well enough in it and at most min(cup, Q·t_use). With <see cref="CupRules.EqualBatches"/> all batches are alike and of one cup.</para>
/// <para>The choice is exact for one cup, and for several as long as their graduations have at most two common measures and the need is at
/// most 100 000 of each.
/// Else it is the best of each cup alone and of any two together, full batches of one and the rest in the other; <see cref="IsLeast"/>
/// tells which.
/// When nothing fits, or more than 1000 batches were needed, the plan says why, and what alone would make it possible, nearest
/// first.</para>
/// </remarks>
/// <example><code>
/// CupRules rules = new()
/// {
///     Cups =
///     [
///         new(Volume.FromMilliliters(600), Volume.FromMilliliters(10), Volume.FromMilliliters(100)),
///         new(Volume.FromMilliliters(200), Volume.FromMilliliters(2), Volume.FromMilliliters(40)),
///     ],
/// };
/// CureForecast inCup = new(GenericCatalogue.AcrylicUrethaneTopcoat.Cure, Temperature.FromDegreesCelsius(22));
/// CupPlan plan = new(Volume.FromMilliliters(1234), VolumeFlow.FromMillilitersPerMinute(60), inCup, rules);
/// double excess = plan.Excess.Milliliters;   // 0: 1234 mL exactly
/// </code></example>
public sealed record CupPlan
{
    private static readonly Bounds Needs = Bounds.Positive(Measure.Liquid, 10).Because("for one coat; divide the work");
    private static readonly Bounds Rates = Bounds.Positive(Measure.FluidRate, 2e-3 / 60);
    private static readonly Bounds Inductions = Bounds.NotNegative(Measure.Minutes, 24 * 3600);
    private static readonly Bounds PotLives = Bounds.Positive(Measure.Minutes, 60 * 24 * 3600);
    private static readonly Source Rule = Source.Derived("a batch has to be through the gun before its share of the pot life is over");
    private static readonly Source Balance = Source.Derived("sum of the batches");

    private readonly double need;
    private readonly double use;
    private readonly double mixed;

    /// <summary>Plans with the product's times at the temperature of the mix.</summary>
    /// <param name="need">Reduced coating needed, more than 0 and at most 10 000 L.</param>
    /// <param name="use">Rate at which it is used up, by the clock; more than 0 and at most 2 L/min.</param>
    /// <param name="inCup">The product's times at the temperature of the mix.</param>
    /// <param name="rules">Cups and shares.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public CupPlan(Volume need, VolumeFlow use, CureForecast inCup, CupRules rules)
        : this(need, use, Guard.NotNull(inCup).PotLife, inCup.Induction ?? TimeSpan.Zero, rules, inCup)
    {
    }

    /// <summary>Plans with given times.</summary>
    /// <param name="need">Reduced coating needed, more than 0 and at most 10 000 L.</param>
    /// <param name="use">Rate at which it is used up, by the clock; more than 0 and at most 2 L/min.</param>
    /// <param name="potLife">Pot life at the temperature of the site; <see langword="null"/> for a one-part product.</param>
    /// <param name="induction">Stand-in time at that temperature, 0 to 24 h.</param>
    /// <param name="rules">Cups and shares.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public CupPlan(Volume need, VolumeFlow use, TimeSpan? potLife, TimeSpan induction, CupRules rules)
        : this(need, use, Guard.Time(potLife, PotLives), Guard.Time(induction, Inductions), rules, null)
    {
    }

    private CupPlan(Volume need, VolumeFlow use, TimeSpan? potLife, TimeSpan induction, CupRules rules, CureForecast? inCup)
    {
        this.need = Guard.Within(need, Needs);
        this.use = Guard.Within(use, Rates);
        Rules = Guard.NotNull(rules);
        Induction = induction;
        PotLife = potLife;
        InCup = inCup;
        Objections = ValueList<string>.Empty;
        Relaxations = ValueList<BatchRelaxation>.Empty;
        Batches = ValueList<CupBatch>.Empty;
        if (inCup is { IsAvailable: false })
        {
            Objections = new ValueList<string>(inCup.Checks
                .Where(check => check.Outcome != ComparisonOutcome.Within)
                .Select(check => "The product gives no times: " + check + ". " + check.Remedy));
            return;
        }

        double limit = SecondsToUse is double seconds ? this.use * Math.Max(0, seconds) : double.PositiveInfinity;
        UsableCup[] usable = Usable(limit);
        if (usable.Length == 0)
        {
            Relaxations = new BatchRelaxations(this).Find();
            string nearest = Relaxations.Count > 0 ? " Nearest change that would do alone: " + Relaxations[0] + "." : string.Empty;
            Objections = new ValueList<string>([Why(limit) + nearest]);
            return;
        }

        CupChoice choice = new(this.need, Rules.Residue.CubicMeters, usable);
        if (choice.FewestBatches > CupChoice.MostBatches)
        {
            string most = Figures.Fixed(CupChoice.MostBatches, 0);
            string largest = Measure.Liquid.Format(choice.LargestDelivery, DisplayUnits.Si, 3);
            Objections = new ValueList<string>(
                ["The need takes more than " + most + " batches, since none delivers more than " + largest
                    + ". Take a larger cup or spray faster."]);
            return;
        }

        Batches = DealOut(rules.EqualBatches ? choice.Equal() : CupEvening.Of(choice.Free(), usable), usable);
        IsLeast = choice.IsLeast;
        foreach (CupBatch batch in Batches)
        {
            mixed += batch.CubicMeters;
        }
    }

    /// <summary>Reduced coating needed.</summary>
    public Volume Need => Volume.FromCubicMeters(need);

    /// <summary>Rate at which it is used up.</summary>
    public VolumeFlow Use => VolumeFlow.FromCubicMetersPerSecond(use);

    /// <summary>Pot life at the site; <see langword="null"/> for a one-part product.</summary>
    public TimeSpan? PotLife { get; }

    /// <summary>Stand-in time at the site.</summary>
    public TimeSpan Induction { get; }

    /// <summary>The product's times at the temperature of the mix; <see langword="null"/> when times were given.</summary>
    public CureForecast? InCup { get; }

    /// <summary>Cups and shares.</summary>
    public CupRules Rules { get; }

    /// <summary>
    /// Time left for spraying one batch; <see langword="null"/> when the product has no pot life, zero when there is none left.
    /// </summary>
    public TimeSpan? TimeToUse => SecondsToUse is double seconds ? Durations.FromSeconds(Math.Max(0, seconds)) : null;

    /// <summary>Whether batches could be planned.</summary>
    public bool IsPossible => Objections.Count == 0;

    /// <summary>Why not; empty when possible.</summary>
    public IReadOnlyList<string> Objections { get; }

    /// <summary>What alone would make it possible, nearest first; empty when possible, or when no single change would do.</summary>
    public IReadOnlyList<BatchRelaxation> Relaxations { get; }

    /// <summary>The batches, larger ones first; empty when impossible.</summary>
    public IReadOnlyList<CupBatch> Batches { get; }

    /// <summary>
    /// Whether it is proved that no other plan within the rules mixes less, or as little in fewer batches; <see langword="false"/> when it
    /// is not, and when
    /// there is no plan.
    /// </summary>
    public bool IsLeast { get; }

    /// <summary>All batches together.</summary>
    public Volume Mixed => Volume.FromCubicMeters(mixed);

    /// <summary>What can be sprayed of it: less the residue of each cup.</summary>
    public Volume Delivered => Volume.FromCubicMeters(DeliveredOf().Value);

    /// <summary>Delivered beyond the need.</summary>
    public Volume Excess => Volume.FromCubicMeters(IsPossible ? Beyond().Value : 0);

    /// <summary>Mixed and not needed: excess and residues.</summary>
    public Volume Waste => Volume.FromCubicMeters(IsPossible ? Unneeded().Value : 0);

    /// <summary>What goes with a two-part mix; empty for a one-part product.</summary>
    public IReadOnlyList<Caution> Cautions => PotLife is null ? ValueList<Caution>.Empty : Refinish.Cautions.ForBatch;

    internal double? SecondsToUse => PotLife is TimeSpan life ? TimeFor(life).Value : null;

    /// <summary>How the limits and the sums follow; the choice among the cups is a search.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Trace t = new();
        if (InCup is not null)
        {
            t.Part(InCup.Workings());
        }

        if (PotLife is TimeSpan life)
        {
            TimeFor(life, t);
            t.Step("most that is sprayed in that time", "V_t", Measure.Liquid, Rule,
                t.Given("Q", use, Measure.FluidRate) * Num.Max(0, TimeFor(life, t)));
        }

        if (IsPossible)
        {
            DeliveredOf(t);
            Beyond(t);
            Unneeded(t);
        }

        return t.Workings("Batches in cups");
    }

    /// <summary>The plan in one line, in metric units.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => IsPossible ? string.Join(" + ", Batches.Select(batch => Measure.Liquid.Format(batch.Volume.CubicMeters))) : "no batch possible: " + string.Join(" ", Objections);

    // How many batches of which cup and how much of each is settled; dealt out evenly they are easier to mix alike.
    private static ValueList<CupBatch> DealOut(List<CupShare> shares, UsableCup[] cups)
    {
        List<CupBatch> batches = [];
        foreach (CupShare share in shares)
        {
            MixingCup cup = cups[share.Cup].Cup;
            int each = (int)(share.Graduations / share.Batches);
            long larger = share.Graduations % share.Batches;
            for (int i = 0; i < share.Batches; i++)
            {
                batches.Add(new CupBatch(cup, each + (i < larger ? 1 : 0)));
            }
        }

        return new ValueList<CupBatch>(shares.Count > 1 ? batches.OrderByDescending(batch => batch.CubicMeters) : batches);
    }

    // Cups whose largest batch, by size and time, is measured well enough and delivers more than what sticks in the cup; each sort once.
    private UsableCup[] Usable(double limit)
    {
        double residue = Rules.Residue.CubicMeters;
        List<UsableCup> usable = new(Rules.Cups.Count);
        for (int c = 0; c < Rules.Cups.Count; c++)
        {
            MixingCup cup = Rules.Cups[c];
            UsableCup one = new(cup, cup.LeastGraduations, cup.MostGraduations(limit));
            if (one.Most >= one.Least && one.Most * one.Step > residue && !usable.Exists(other => other.Cup == cup))
            {
                usable.Add(one);
            }
        }

        return [.. usable];
    }

    private string Why(double limit)
    {
        if (SecondsToUse is double seconds && seconds <= 0)
        {
            return "No time is left to spray: induction and mixing take " + CarefulTime.AtLeast(Induction + Rules.MixingTime)
                + " of the " + CarefulTime.AtMost(Durations.FromSeconds(Rules.PotLifeShare.DecimalFractions * PotLife!.Value.TotalSeconds)) + " within which a batch has to be used.";
        }

        MixingCup best = Rules.Cups.OrderBy(cup => cup.LeastGraduations * cup.Graduation.CubicMeters).First();
        return "The smallest batch that is measured well enough is " + Measure.Liquid.Format(best.LeastGraduations * best.Graduation.CubicMeters, DisplayUnits.Si, 3) + " in the " + best
            + ", and " + (double.IsInfinity(limit) ? "no more than the cup" : Measure.Liquid.Format(limit, DisplayUnits.Si, 3)) + " can be sprayed in time; residue in a cup " + Measure.Liquid.Format(Rules.Residue.CubicMeters, DisplayUnits.Si, 3) + ".";
    }

    private Num TimeFor(TimeSpan life, Trace? t = null) => t.Step("time to use a batch", "t_use", Measure.Minutes, Rule,
        (t.Given("s", Rules.PotLifeShare.DecimalFractions, Measure.Percent) * t.Given("t_pot", life.TotalSeconds, Measure.Minutes))
        - t.Given("t_ind", Induction.TotalSeconds, Measure.Minutes) - t.Given("t_mix", Rules.MixingTime.TotalSeconds, Measure.Minutes));

    private Num All(Trace? t) =>
        t is null ? mixed : t.Step("mixed in all", "V_all", Measure.Liquid, Balance, Num.Sum(Batches.Count, (Batches, t), static (of, i) =>
        of.t.Given("n", of.Batches[i].Graduations, Measure.Number) * of.t.Given("g", of.Batches[i].Cup.Step, Measure.Liquid)));

    private Num DeliveredOf(Trace? t = null) => t.Step("delivered", "V_del", Measure.Liquid, Balance,
        All(t) - (t.Given("r", Rules.Residue.CubicMeters, Measure.Liquid) * t.Given("N", Batches.Count, Measure.Number)));

    private Num Beyond(Trace? t = null) =>
        t.Step("delivered beyond the need", "V_x", Measure.Liquid, Balance,
            Num.Max(0, DeliveredOf(t) - t.Given("V_need", need, Measure.Liquid)));

    private Num Unneeded(Trace? t = null) =>
        t.Step("mixed and not needed", "V_w", Measure.Liquid, Balance, Num.Max(0, All(t) - t.Given("V_need", need, Measure.Liquid)));
}
