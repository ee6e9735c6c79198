using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Curing;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>The batches that deliver a need with the least mixed in excess, and among those the fewest, out of cups of several sizes; each is through the gun within its share of the pot life.</summary>
/// <remarks>
/// Time to use a batch: t_use = s·t_pot − t_ind − t_mix, counted from mixing. Each batch is a whole number of its cup's graduations, at least what is measured well
/// enough in it and at most min(cup, Q·t_use). The choice is exact. When nothing fits, the plan says why, and what alone would make it possible, nearest first.
/// </remarks>
/// <example><code>
/// CupRules rules = new() { Cups = [new(Volume.FromMilliliters(600), Volume.FromMilliliters(10), Volume.FromMilliliters(100)), new(Volume.FromMilliliters(200), Volume.FromMilliliters(2), Volume.FromMilliliters(40))] };
/// CureForecast inCup = new(GenericCatalogue.AcrylicUrethaneTopcoat.Cure, Temperature.FromDegreesCelsius(22));
/// CupPlan plan = new(Volume.FromMilliliters(1234), VolumeFlow.FromMillilitersPerMinute(60), inCup, rules);
/// double excess = plan.Excess.Milliliters;   // 0: 1234 mL exactly
/// </code></example>
public sealed record CupPlan
{
    private static readonly Source Rule = Source.Derived("a batch has to be through the gun before its share of the pot life is over");
    private static readonly Source Balance = Source.Derived("sum of the batches");

    private readonly double need;
    private readonly double use;

    /// <summary>Plans with the product's times at the temperature of the mix.</summary>
    /// <param name="need">Reduced coating needed, more than 0 and at most 100 L.</param>
    /// <param name="use">Rate at which it is used up, by the clock; more than 0 and at most 2 L/min.</param>
    /// <param name="inCup">The product's times at the temperature of the mix.</param>
    /// <param name="rules">Cups and shares.</param>
    /// <exception cref="ArgumentException">The graduations share no common measure and are of more than two sorts, or are too fine for the need.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public CupPlan(Volume need, VolumeFlow use, CureForecast inCup, CupRules rules)
        : this(need, use, Guard.NotNull(inCup, nameof(inCup)).PotLife, inCup.Induction ?? TimeSpan.Zero, rules, inCup)
    {
    }

    /// <summary>Plans with given times.</summary>
    /// <param name="need">Reduced coating needed, more than 0 and at most 100 L.</param>
    /// <param name="use">Rate at which it is used up, by the clock; more than 0 and at most 2 L/min.</param>
    /// <param name="potLife">Pot life at the temperature of the site; <see langword="null"/> for a one-part product.</param>
    /// <param name="induction">Stand-in time at that temperature, 0 to 24 h.</param>
    /// <param name="rules">Cups and shares.</param>
    /// <exception cref="ArgumentException">The graduations share no common measure and are of more than two sorts, or are too fine for the need.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public CupPlan(Volume need, VolumeFlow use, TimeSpan? potLife, TimeSpan induction, CupRules rules)
        : this(need, use, potLife, induction, rules, null)
    {
    }

    private CupPlan(Volume need, VolumeFlow use, TimeSpan? potLife, TimeSpan induction, CupRules rules, CureForecast? inCup)
    {
        this.need = Guard.Within(need, Bounds.Positive(Measure.Liquid, 0.1), nameof(need));
        this.use = Guard.Within(use, Bounds.Positive(Measure.FluidRate, 2e-3 / 60), nameof(use));
        Rules = Guard.NotNull(rules, nameof(rules));
        Guard.Within(induction, Bounds.NotNegative(Measure.Minutes, 24 * 3600), nameof(induction));
        Induction = induction;
        PotLife = potLife;
        InCup = inCup;
        if (potLife is TimeSpan life)
        {
            Guard.Within(life, Bounds.Positive(Measure.Minutes, 60 * 24 * 3600), nameof(potLife));
        }

        List<string> objections = [];
        List<CupBatch> batches = [];
        IReadOnlyList<BatchRelaxation> relaxations = ValueList<BatchRelaxation>.Empty;
        if (inCup is { IsAvailable: false })
        {
            objections.AddRange(inCup.Checks.Where(check => check.Outcome != ComparisonOutcome.Within).Select(check => "The product gives no times: " + check + ". " + check.Remedy));
        }
        else
        {
            double limit = SecondsToUse is double seconds ? this.use * Math.Max(0, seconds) : double.PositiveInfinity;
            (MixingCup Cup, int Least, int Most)[] usable =
            [
                .. Rules.Cups.Select(cup => (Cup: cup, Least: cup.LeastGraduations, Most: cup.MostGraduations(limit)))
                    .Where(cup => cup.Most >= cup.Least && cup.Most * cup.Cup.Graduation.CubicMeters > Rules.Residue.CubicMeters),
            ];
            if (usable.Length == 0)
            {
                relaxations = new BatchRelaxations(this).Find();
                objections.Add(Why(limit) + (relaxations.Count > 0 ? " Nearest change that would do alone: " + relaxations[0] + "." : string.Empty));
            }
            else
            {
                CupSearch search = new(this.need, Rules.Residue.CubicMeters, usable);
                if (!search.IsWithinReach)
                {
                    throw new ArgumentException("rules.Cups have graduations of more than two sorts without a common measure, or too fine ones for the need; take cups marked in one unit.", nameof(rules));
                }

                batches.AddRange(DealOut(search.Best()));
            }
        }

        Objections = new ValueList<string>(objections);
        Relaxations = relaxations;
        Batches = new ValueList<CupBatch>(batches);
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

    /// <summary>Time left for spraying one batch; <see langword="null"/> when the product has no pot life, negative when there is none left.</summary>
    public TimeSpan? TimeToUse => SecondsToUse is double seconds ? Durations.FromSeconds(seconds) : null;

    /// <summary>Whether batches could be planned.</summary>
    public bool IsPossible => Objections.Count == 0;

    /// <summary>Why not; empty when possible.</summary>
    public IReadOnlyList<string> Objections { get; }

    /// <summary>What alone would make it possible, nearest first; empty when possible, or when no single change would do.</summary>
    public IReadOnlyList<BatchRelaxation> Relaxations { get; }

    /// <summary>The batches, larger ones first; empty when impossible.</summary>
    public IReadOnlyList<CupBatch> Batches { get; }

    /// <summary>All batches together.</summary>
    public Volume Mixed => Volume.FromCubicMeters(Sum);

    /// <summary>What can be sprayed of it: less the residue of each cup.</summary>
    public Volume Delivered => Volume.FromCubicMeters(Sum - (Rules.Residue.CubicMeters * Batches.Count));

    /// <summary>Delivered beyond the need.</summary>
    public Volume Excess => Volume.FromCubicMeters(IsPossible ? Math.Max(0, Delivered.CubicMeters - need) : 0);

    /// <summary>Mixed and not needed: excess and residues.</summary>
    public Volume Waste => Volume.FromCubicMeters(IsPossible ? Math.Max(0, Sum - need) : 0);

    /// <summary>What goes with a two-part mix; empty for a one-part product.</summary>
    public IReadOnlyList<Caution> Cautions => PotLife is null ? ValueList<Caution>.Empty : CuringCautions.Batch;

    internal double? SecondsToUse =>
        PotLife is TimeSpan life ? (Rules.PotLifeShare.DecimalFractions * life.TotalSeconds) - Induction.TotalSeconds - Rules.MixingTime.TotalSeconds : null;

    private double Sum => Batches.Sum(batch => batch.Volume.CubicMeters);

    /// <summary>How the limits and the sums follow; the choice among the cups is a search.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        List<WorkingStep> steps = [];
        if (PotLife is TimeSpan life)
        {
            Expression share = Expression.Quantity("s", Rules.PotLifeShare.DecimalFractions, Measure.Percent);
            WorkingStep time = new(
                "time to use a batch",
                "t_use",
                (share * Expression.Quantity("t_pot", life.TotalSeconds, Measure.Minutes)) - Expression.Quantity("t_ind", Induction.TotalSeconds, Measure.Minutes) - Expression.Quantity("t_mix", Rules.MixingTime.TotalSeconds, Measure.Minutes),
                SecondsToUse!.Value,
                Measure.Minutes,
                Rule);
            steps.Add(time);
            steps.Add(new("most that is sprayed in that time", "V_t", Expression.Quantity("Q", use, Measure.FluidRate) * Expression.Max(0, time.Result()), use * Math.Max(0, SecondsToUse.Value), Measure.Liquid, Rule));
        }

        if (IsPossible)
        {
            WorkingStep all = new(
                "mixed in all", "V_all", Expression.Sum(Batches.Select(batch => Expression.Quantity("n", batch.Graduations, Measure.Number) * Expression.Quantity("g", batch.Cup.Graduation.CubicMeters, Measure.Liquid))), Sum, Measure.Liquid, Balance);
            Expression wanted = Expression.Quantity("V_need", need, Measure.Liquid);
            WorkingStep delivered = new(
                "delivered", "V_del", all.Result() - (Expression.Quantity("r", Rules.Residue.CubicMeters, Measure.Liquid) * Expression.Quantity("N", Batches.Count, Measure.Number)), Delivered.CubicMeters, Measure.Liquid, Balance);
            steps.Add(all);
            steps.Add(delivered);
            steps.Add(new("delivered beyond the need", "V_x", Expression.Max(0, delivered.Result() - wanted), Excess.CubicMeters, Measure.Liquid, Balance));
            steps.Add(new("mixed and not needed", "V_w", Expression.Max(0, all.Result() - wanted), Waste.CubicMeters, Measure.Liquid, Balance));
        }

        return new Workings("Batches in cups", steps, InCup is null ? [] : [InCup.Workings()]);
    }

    /// <summary>The plan in one line, in metric units.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => IsPossible ? string.Join(" + ", Batches.Select(batch => Measure.Liquid.Format(batch.Volume.CubicMeters))) : "no batch possible: " + string.Join(" ", Objections);

    // The search fixes how many batches of which cup and how much together; dealt out evenly they are easier to mix alike.
    private static IEnumerable<CupBatch> DealOut(List<(MixingCup Cup, int Graduations)> found)
    {
        List<CupBatch> batches = [];
        foreach (IGrouping<MixingCup, (MixingCup Cup, int Graduations)> group in found.GroupBy(batch => batch.Cup))
        {
            int count = group.Count();
            int all = group.Sum(batch => batch.Graduations);
            for (int i = 0; i < count; i++)
            {
                batches.Add(new CupBatch(group.Key, (all / count) + (i < all % count ? 1 : 0)));
            }
        }

        return batches.OrderByDescending(batch => batch.Volume.CubicMeters);
    }

    private string Why(double limit)
    {
        if (SecondsToUse is double seconds && seconds <= 0)
        {
            return "No time is left to spray: induction and mixing take " + Measure.Minutes.Format(Induction.TotalSeconds + Rules.MixingTime.TotalSeconds, DisplayUnits.Si, 3)
                + " of the " + Measure.Minutes.Format(Rules.PotLifeShare.DecimalFractions * PotLife!.Value.TotalSeconds, DisplayUnits.Si, 3) + " within which a batch has to be used.";
        }

        MixingCup best = Rules.Cups.OrderBy(cup => cup.LeastGraduations * cup.Graduation.CubicMeters).First();
        return "The smallest batch that is measured well enough is " + Measure.Liquid.Format(best.LeastGraduations * best.Graduation.CubicMeters, DisplayUnits.Si, 3) + " in the " + best
            + ", and " + (double.IsInfinity(limit) ? "no more than the cup" : Measure.Liquid.Format(limit, DisplayUnits.Si, 3)) + " can be sprayed in time; residue in a cup " + Measure.Liquid.Format(Rules.Residue.CubicMeters, DisplayUnits.Si, 3) + ".";
    }
}
