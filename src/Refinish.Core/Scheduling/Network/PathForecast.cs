using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Numerics;
using UnitsNet;

namespace Refinish.Scheduling;

/// <summary>
/// How long uncertain steps take as a whole, and the chance to be done by a time: mean and variance of the critical path, added up step by
/// step (PERT).
/// </summary>
/// <remarks>
/// <para>Of each step µ = (a + 4m + b)/6 and σ = (b − a)/6; T = Σ µ with the lags between them and σ² = Σ σ² along the longest path by the
/// means, of several that long the one with the greatest variance; the chance to be done by t is Φ((t − T)/σ). Source: three-point
/// estimates of network planning, from memory; the whole held to published examples by tests.</para>
/// <para>The chance is too hopeful. Any other path may turn out the longest, and where paths meet the latest counts (merge bias): two equal
/// paths with an even chance each are both done with a chance of a quarter. <see cref="MayTakeOver"/> names the steps from which this
/// comes; while it is not empty, take the chance as an upper limit. It also takes steps to be late independently, which one crew, one
/// house and one weather are not, and people, rooms and working hours to be no limit.</para>
/// </remarks>
/// <example><code>
/// PathForecast work = new(
///     [
///         new("strip", TimeSpan.FromHours(2), TimeSpan.FromHours(4), TimeSpan.FromHours(9)),
///         new("repair", TimeSpan.FromHours(1), TimeSpan.FromHours(2), TimeSpan.FromHours(3)),
///     ],
///     [new StepLag("strip", "repair", TimeSpan.Zero, null, "old coat off first")]);
/// TimeSpan? mean = work.Mean;                                  // 6.5 h
/// double chance = work.ChanceBy(TimeSpan.FromHours(8))!.Value.Percent;   // 89.2
/// </code></example>
public sealed record PathForecast
{
    private static readonly Source Added =
        Source.Derived("means and variances of independent times add up along a path; other paths are left out");

    private static readonly Source Normal = Source.Derived("normal distribution of a sum of many times; other paths are left out");
    private static readonly Bounds Times = Bounds.NotNegative(Measure.Hours, 3650.0 * 24 * 3600);
    private static readonly Bounds Chances = Bounds.Between(0.001 - 1e-12, 0.999 + 1e-12, Measure.Percent);

    private readonly double mean;
    private readonly double deviation;
    private readonly GoverningPath? governing;

    /// <summary>Works out the path.</summary>
    /// <param name="steps">The steps, with unique ids; at least one.</param>
    /// <param name="lags">Least times to keep between steps, in any order; they are taken as certain.</param>
    /// <exception cref="ArgumentException">
    /// No step is given, an id stands twice, a lag refers to an unknown step or to one step twice, or it has a maximum or a clock, of which
    /// this forecast knows nothing.
    /// </exception>
    public PathForecast(IEnumerable<UncertainStep> steps, IEnumerable<StepLag> lags)
    {
        Steps = Guard.List(steps, 1);
        ValueList<StepLag> listed = Guard.List(lags);
        if (listed.FirstOrDefault(lag => lag.Maximum is not null) is StepLag closing)
        {
            throw new ArgumentException(
                "The lag '" + closing.Reason + "' has a maximum, which a chance along one path cannot keep; allowed: minima.",
                nameof(lags));
        }

        Path = new CriticalPath(Steps.Select(step => new SiteStep { Id = step.Id, Duration = step.Mean }), listed);
        if (Path.IsPossible)
        {
            governing = new GoverningPath(Steps, Path);
            Governing = new ValueList<UncertainStep>(governing.Chain.Select(i => Steps[i]));
            mean = Whole().Value;
            deviation = Spread().Value;
            MayTakeOver = new ValueList<ActivityTime>(
                Path.Steps.Where((time, i) => !governing.Chain.Contains(i) && time.Slack.TotalSeconds <= 2 * deviation));
        }
    }

    /// <summary>The steps with their three times, in the order given.</summary>
    public IReadOnlyList<UncertainStep> Steps { get; }

    /// <summary>Early and late dates at the mean times; it says what contradicts what when the steps cannot hold together.</summary>
    public CriticalPath Path { get; }

    /// <summary>The steps whose times were added up, in order of time; empty when impossible.</summary>
    public IReadOnlyList<UncertainStep> Governing { get; } = ValueList<UncertainStep>.Empty;

    /// <summary>Mean time of the whole, by this path alone; <see langword="null"/> when impossible.</summary>
    public TimeSpan? Mean => governing is null ? null : Durations.FromSeconds(mean);

    /// <summary>Standard deviation of the whole, by this path alone; <see langword="null"/> when impossible.</summary>
    public TimeSpan? Deviation => governing is null ? null : Durations.FromSeconds(deviation);

    /// <summary>
    /// Steps off the path that need no more than two standard deviations of the whole to take it over: while there are any, the whole takes
    /// longer on the mean and the chances are smaller than told here. Two is invented.
    /// </summary>
    public IReadOnlyList<ActivityTime> MayTakeOver { get; } = ValueList<ActivityTime>.Empty;

    /// <summary>
    /// The chance that the path is done by a time; too hopeful for the whole, see <see cref="MayTakeOver"/>. A normal distribution has no
    /// ends: with few steps it gives a small chance even below the sum of their least times.
    /// </summary>
    /// <param name="time">Time from the start of the work, 0 to 3650 days, counted as the steps are.</param>
    /// <returns>The chance; <see langword="null"/> when impossible. When nothing is uncertain, 0 or 100 %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio? ChanceBy(TimeSpan time)
    {
        double seconds = Guard.Within(time, Times);
        return governing is null ? null : Ratio.FromDecimalFractions(Chance(seconds));
    }

    /// <summary>
    /// The time by which the path is done with a chance, T + z σ; too early for the whole, see <see cref="MayTakeOver"/>.
    /// </summary>
    /// <param name="chance">The chance, 0.1 to 99.9 %: further out the normal distribution says nothing about work.</param>
    /// <returns>The time, not below zero; <see langword="null"/> when impossible.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan? TimeFor(Ratio chance)
    {
        double score = NormalScore.Of(Guard.Within(chance, Chances));
        return governing is null ? null : Durations.FromSeconds(Math.Max(0, mean + (score * deviation)));
    }

    /// <summary>How mean and deviation follow.</summary>
    /// <returns>The derivation; that of the contradiction when impossible.</returns>
    public Workings Workings() => governing is null ? Path.Workings() : Trace.Of("Length of the critical path", Moments, Whole, Spread);

    /// <summary>How the chance to be done by a time follows.</summary>
    /// <param name="time">As for <see cref="ChanceBy"/>.</param>
    /// <returns>The derivation; that of the contradiction when impossible.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Workings WorkingsOfChance(TimeSpan time)
    {
        double seconds = Guard.Within(time, Times);
        if (governing is null || deviation == 0)
        {
            return Workings();
        }

        return Trace.Of("Chance of the critical path", Moments, Whole, Spread, t => Chance(seconds, t));
    }

    /// <summary>Mean, deviation and what may take over, or the contradiction.</summary>
    /// <returns>Text such as <c>120 h ± 8 h along prime → coat</c>.</returns>
    public override string ToString()
    {
        if (governing is null)
        {
            return Path.ToString();
        }

        string line = Measure.Hours.Format(mean, DisplayUnits.Si, 5) + " ± " + Measure.Hours.Format(deviation, DisplayUnits.Si, 5)
            + " along " + string.Join(" → ", Governing.Select(step => step.Id));
        return MayTakeOver.Count == 0
            ? line
            : line + "; longer when another path takes over by " + string.Join(", ", MayTakeOver.Select(time => time.Step.Id));
    }

    /// <summary>Whether steps and lags are the same; everything else follows from them.</summary>
    /// <param name="other">The forecast to compare with.</param>
    /// <returns><see langword="true"/> when they are alike.</returns>
    public bool Equals(PathForecast? other) => other is not null && Steps.Equals(other.Steps) && Path.Lags.Equals(other.Path.Lags);

    /// <inheritdoc/>
    public override int GetHashCode() => Steps.GetHashCode();

    private double Chance(double seconds) => deviation > 0 ? Chance(seconds, null).Value : seconds + 1e-6 >= mean ? 1 : 0;

    private Num Chance(double seconds, Trace? t)
    {
        Num score = t.Step("standard deviations from the mean", "z", Measure.Number, Normal,
            (t.Given("t", seconds, Measure.Hours) - Whole(t)) / Spread(t));
        return t.Step("chance to be done by then, other paths left out", "P", Measure.Percent, Normal,
            Num.Function("Φ", "\\Phi", NormalScore.ChanceOf, score));
    }

    private Num Whole(Trace? t = null) => t.Step("mean time of the path", "T", Measure.Hours, Added,
        Num.Sum((2 * Governing.Count) - 1, (Forecast: this, t), static (of, i) => of.Forecast.Part(i, of.t)));

    private Num Spread(Trace? t = null) => t.Step("standard deviation of the path", "σ", Measure.Hours, Added, Num.Sqrt(
        Num.Sum(Governing.Count, (Governing, t), static (of, i) => Num.Square(of.Governing[i].DeviationOf(i, of.t)))));

    // Mean and deviation of each step, one beside the other.
    private Num Moments(Trace t) => Num.Sum(2 * Governing.Count, (Governing, t), static (of, i) =>
        i % 2 == 0 ? of.Governing[i / 2].MeanOf(i / 2, of.t) : of.Governing[i / 2].DeviationOf(i / 2, of.t));

    // The steps and then the waits between them.
    private Num Part(int i, Trace? t) => i < Governing.Count
        ? Governing[i].MeanOf(i, t)
        : t.Given("Δ", governing!.LagAfter(i - Governing.Count).TotalSeconds, Measure.Hours);
}
