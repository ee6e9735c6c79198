using System;
using System.Collections.Generic;
using System.Globalization;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>
/// The fewest equal batches that cover a need, each small enough for the cup and for its pot life, rounded up to the cup's graduation
/// so that what is mixed in excess stays below one graduation.
/// </summary>
/// <remarks>
/// Time to use a batch: t_use = s·t_pot − t_ind − t_mix, with pot life and induction counted from mixing. Largest batch: min(cup, Q·t_use),
/// rounded down to a graduation. When nothing fits, the plan says why instead of giving a number.
/// </remarks>
/// <example><code>
/// BatchPlan plan = new(Volume.FromMilliliters(1300), VolumeFlow.FromMillilitersPerMinute(60), TimeSpan.FromHours(2.5), TimeSpan.Zero,
///     new BatchRules { CupVolume = Volume.FromMilliliters(600) });
/// int cups = plan.Batches.Count;    // 3: 435, 435 and 430 mL
/// </code></example>
public sealed record BatchPlan
{
    // A need that is a whole number of graduations must not be rounded up by the last bit of a double.
    private const double Slack = 1e-9;

    private static readonly Source Rule = Source.Derived("a batch has to be through the gun before its share of the pot life is over");

    private readonly double need;
    private readonly double use;
    private readonly double largest;

    /// <summary>Plans the batches.</summary>
    /// <param name="need">Reduced coating needed, more than 0 and at most 100 L.</param>
    /// <param name="use">Rate at which it is used up, by the clock; more than 0 and at most 2 L/min.</param>
    /// <param name="potLife">Pot life at the temperature of the site; <see langword="null"/> for a one-part product.</param>
    /// <param name="induction">Stand-in time at that temperature, within the pot life.</param>
    /// <param name="rules">Cup, graduation and shares.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public BatchPlan(Volume need, VolumeFlow use, TimeSpan? potLife, TimeSpan induction, BatchRules rules)
    {
        this.need = Guard.Within(need, Bounds.Positive(Measure.Liquid, 0.1), nameof(need));
        this.use = Guard.Within(use, Bounds.Positive(Measure.FluidRate, 2e-3 / 60), nameof(use));
        Rules = Guard.NotNull(rules, nameof(rules));
        Guard.Within(induction, Bounds.NotNegative(Measure.Minutes, 24 * 3600), nameof(induction));
        Induction = induction;
        PotLife = potLife;
        if (potLife is TimeSpan life)
        {
            Guard.Within(life, Bounds.Positive(Measure.Minutes, 7 * 24 * 3600), nameof(potLife));
        }

        double step = rules.Graduation.CubicMeters;
        double timeLimit = TimeToUse is TimeSpan time ? this.use * Math.Max(0, time.TotalSeconds) : double.PositiveInfinity;
        largest = step * Math.Floor((Math.Min(rules.CupVolume.CubicMeters, timeLimit) / step) + Slack);
        Objections = new ValueList<string>(FindObjections());
        Batches = Objections.Count > 0 ? ValueList<Volume>.Empty : new ValueList<Volume>(Divide(step));
    }

    /// <summary>Reduced coating needed.</summary>
    public Volume Need => Volume.FromCubicMeters(need);

    /// <summary>Rate at which it is used up.</summary>
    public VolumeFlow Use => VolumeFlow.FromCubicMetersPerSecond(use);

    /// <summary>Pot life at the site; <see langword="null"/> for a one-part product.</summary>
    public TimeSpan? PotLife { get; }

    /// <summary>Stand-in time at the site.</summary>
    public TimeSpan Induction { get; }

    /// <summary>Cup, graduation and shares.</summary>
    public BatchRules Rules { get; }

    /// <summary>Time left for spraying one batch; <see langword="null"/> when the product has no pot life, negative when there is none left.</summary>
    public TimeSpan? TimeToUse =>
        PotLife is TimeSpan life ? TimeSpan.FromSeconds((Rules.PotLifeShare.DecimalFractions * life.TotalSeconds) - Induction.TotalSeconds - Rules.MixingTime.TotalSeconds) : null;

    /// <summary>Largest batch that fits cup and pot life, rounded down to a graduation; zero when none fits.</summary>
    public Volume LargestBatch => Volume.FromCubicMeters(largest);

    /// <summary>Whether batches could be planned.</summary>
    public bool IsPossible => Objections.Count == 0;

    /// <summary>Why not, each with what would help; empty when possible.</summary>
    public IReadOnlyList<string> Objections { get; }

    /// <summary>The batches in order, larger ones first; empty when impossible.</summary>
    public IReadOnlyList<Volume> Batches { get; }

    /// <summary>All batches together.</summary>
    public Volume Mixed
    {
        get
        {
            double sum = 0;
            foreach (Volume batch in Batches)
            {
                sum += batch.CubicMeters;
            }

            return Volume.FromCubicMeters(sum);
        }
    }

    /// <summary>How the number and the size of the batches follow.</summary>
    /// <returns>The derivation; without batches only the limits.</returns>
    public Workings Workings()
    {
        List<WorkingStep> steps = [];
        Expression cup = Expression.Quantity("V_cup", Rules.CupVolume.CubicMeters, Measure.Liquid);
        Expression graduation = Expression.Quantity("g", Rules.Graduation.CubicMeters, Measure.Liquid);
        Expression limit = cup;
        if (PotLife is TimeSpan life && TimeToUse is TimeSpan available)
        {
            Expression share = Expression.Quantity("s", Rules.PotLifeShare.DecimalFractions, Measure.Percent);
            Expression pot = Expression.Quantity("t_pot", life.TotalSeconds, Measure.Minutes);
            Expression induction = Expression.Quantity("t_ind", Induction.TotalSeconds, Measure.Minutes);
            Expression mixing = Expression.Quantity("t_mix", Rules.MixingTime.TotalSeconds, Measure.Minutes);
            double seconds = (Rules.PotLifeShare.DecimalFractions * life.TotalSeconds) - Induction.TotalSeconds - Rules.MixingTime.TotalSeconds;
            WorkingStep time = new("time to use a batch", "t_use", (share * pot) - induction - mixing, seconds, Measure.Minutes, Rule);
            steps.Add(time);
            limit = Expression.Min(cup, Expression.Quantity("Q", use, Measure.FluidRate) * Expression.Max(0, time.Result()));
        }

        WorkingStep most = new("largest batch", "V_max", graduation * Expression.Floor((limit / graduation) + Slack), largest, Measure.Liquid, Rule);
        steps.Add(most);
        if (IsPossible)
        {
            Expression v = Expression.Quantity("V_need", need, Measure.Liquid);
            Expression smallest = Expression.Quantity("V_min", Rules.SmallestBatch.CubicMeters, Measure.Liquid);
            WorkingStep count = new("number of batches", "n", Expression.Max(1, Expression.Ceiling((v / most.Result()) - Slack)), Batches.Count, Measure.Number, Rule);
            Expression needed = Expression.Ceiling((v / graduation) - Slack);
            Expression measurable = count.Result() * Expression.Ceiling((smallest / graduation) - Slack);
            WorkingStep mixed = new("mixed in all", "V_all", graduation * Expression.Max(needed, measurable), Mixed.CubicMeters, Measure.Liquid, Rule);
            steps.Add(count);
            steps.Add(mixed);
        }

        return new Workings("Batches", steps);
    }

    /// <summary>The plan in one line, in metric units.</summary>
    /// <returns>Text such as <c>3 batches, at most 435 mL</c>.</returns>
    public override string ToString() => IsPossible
        ? string.Format(CultureInfo.InvariantCulture, "{0} batches, at most {1}", Batches.Count, Measure.Liquid.Format(Batches[0].CubicMeters))
        : "no batch possible: " + string.Join(" ", Objections);

    private List<string> FindObjections()
    {
        List<string> objections = [];
        if (TimeToUse is TimeSpan time && time <= TimeSpan.Zero)
        {
            objections.Add(
                "No time is left to spray: induction and mixing take " + Measure.Minutes.Format(Induction.TotalSeconds + Rules.MixingTime.TotalSeconds)
                + " of the " + Measure.Minutes.Format(Rules.PotLifeShare.DecimalFractions * (PotLife ?? TimeSpan.Zero).TotalSeconds)
                + " within which a batch has to be used. Cool the components or the room, or use a slower hardener if the data sheet has one.");
        }
        else if (largest < Rules.SmallestBatch.CubicMeters - (Slack * Rules.Graduation.CubicMeters) || largest <= 0)
        {
            objections.Add(
                "The largest batch that cup and pot life allow is " + Measure.Liquid.Format(largest) + ", below the smallest that can be measured, "
                + Measure.Liquid.Format(Rules.SmallestBatch.CubicMeters) + ". Take a larger cup, a finer measure, or spray faster.");
        }

        return objections;
    }

    private List<Volume> Divide(double step)
    {
        // Whole graduations, dealt out as evenly as they go; since the largest batch is whole graduations too, none comes out above it.
        int count = (int)Math.Max(1, Math.Ceiling((need / largest) - Slack));
        int measurable = (int)Math.Ceiling((Rules.SmallestBatch.CubicMeters / step) - Slack);
        int graduations = Math.Max((int)Math.Ceiling((need / step) - Slack), count * measurable);
        int each = graduations / count;
        int larger = graduations % count;
        List<Volume> batches = [];
        for (int i = 0; i < count; i++)
        {
            batches.Add(Volume.FromCubicMeters(step * (each + (i < larger ? 1 : 0))));
        }

        return batches;
    }
}
