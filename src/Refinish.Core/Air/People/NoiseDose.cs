using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// One person's noise of one day against one limit, without any protection: dose D = 100 % · Σ C/T over the stretches that count, and the
/// level that would make the same dose in eight hours.
/// </summary>
/// <remarks>
/// D, T: 29 CFR 1910.95, Appendix A, I(1); level of an eight-hour day Lc + q·log2(D), there 16.61·log10(D/100) + 90. What lies between the
/// stretches counts as quiet. 29 CFR 1926.52, for construction, has the same table (from memory). Levels of a list are those of other
/// people's tools in other rooms: a hard small room is louder, and measuring at the ear decides.
/// </remarks>
/// <example><code>
/// NoiseDose day = new(
///     "sander",
///     [
///         new NoiseSpan("sanding", Level.FromDecibels(95), TimeSpan.FromHours(2)),
///         new NoiseSpan("spraying", Level.FromDecibels(90), TimeSpan.FromHours(2)),
///     ],
///     NoiseLimits.OshaPermissible);
/// double percent = day.Dose!.Value.Percent;            // 75
/// double level = day.DailyLevel!.Value.Decibels;       // 87.925
/// </code></example>
public sealed record NoiseDose
{
    private static readonly Source Derating = Source.Published(
        "29 CFR 1910.95", "Appendix B, the rating less 7 dB for A-weighted levels, second-hand; half of that by OSHA's practice, second-hand");

    private readonly ValueList<NoiseSpan> spans;
    private readonly double known;
    private readonly bool isWhole;

    private const double Most = 115;
    private const double MostRating = 33;

    private static readonly Source Continuous = Source.FromMemory(
        "29 CFR 1910.95 Table G-16 ends at 115 dB(A); to 140 dB in Table G-16a of Appendix A a dose is computed and not allowed");

    /// <summary>Adds up a day.</summary>
    /// <param name="person">Who it is.</param>
    /// <param name="spans">The stretches with noise, 24 h at most together; without any the dose is none.</param>
    /// <param name="limit">What it is held against.</param>
    /// <exception cref="ArgumentException"><paramref name="person"/> is empty, or an entry is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The stretches are longer than a day, or the threshold of <paramref name="limit"/> is above its criterion level.
    /// </exception>
    public NoiseDose(string person, IReadOnlyList<NoiseSpan> spans, NoiseLimit limit)
    {
        Person = Guard.Named(person);
        this.spans = Guard.List(spans);
        Limit = NoiseLimit.Checked(limit);
        double together = spans.Sum(span => span.Time.TotalSeconds);
        Guard.Rule(together <= 24 * 3600, nameof(spans), together, Measure.Hours, "stretches of one day, at most 24 h together");
        known = Together().Value;
        isWhole = this.spans.All(span => span.Decibels is not null);
    }

    /// <summary>Whose day it is.</summary>
    public string Person { get; }

    /// <summary>The stretches with noise.</summary>
    public IReadOnlyList<NoiseSpan> Spans => spans;

    /// <summary>What it is held against.</summary>
    public NoiseLimit Limit { get; }

    /// <summary>The dose; <see langword="null"/> when a level is not known, unless the others alone pass 100 %.</summary>
    public Ratio? Dose => isWhole || known > 1 ? Ratio.FromDecimalFractions(known) : null;

    /// <summary>
    /// A-weighted level that makes the same dose in eight hours; <see langword="null"/> when the dose is not known or none.
    /// </summary>
    public Level? DailyLevel => Dose is not null && known > 0 ? Level.FromDecibels(EightHour().Value) : null;

    /// <summary>The dose against 100 %, with the hearing protection that would reach the limit's level.</summary>
    public LimitComparison Comparison => Against(Person + ": noise of the day, dose by ");

    /// <summary>
    /// The loudest stretch against 115 dB(A), beyond which no time is allowed whatever the dose; it cannot be judged when no level is
    /// known.
    /// </summary>
    public LimitComparison Loudest => new(
        "loudest noise of the day",
        spans.Max(span => span.Decibels),
        Most,
        LimitSense.AtMost,
        Measure.SoundLevel,
        Continuous,
        spans.Any(span => span.Decibels > Most) ? "a quieter tool; nobody stays in it, with or without protection" : null);

    /// <summary>The same with a subject of the caller's, which the authority follows.</summary>
    internal LimitComparison Against(string subject) => new(
        subject + Limit.Authority + (isWhole ? string.Empty : ", of the work whose level is known"), Dose?.DecimalFractions, 1,
        LimitSense.AtMost, Measure.Percent, Limit.Source,
        known > 1 ? Remedy() : isWhole ? null : "have the level at the ear measured, or take it from the tool's maker: " + Unknown())
    {
        Digits = 2,
        Whose = Limit.Whose,
    };

    /// <summary>
    /// Least noise reduction rating that brings the day to the limit's level by (NRR − 7)/2, the rating derated by half for A-weighted
    /// levels; <see langword="null"/> when the dose is not known or no label reaches it, 33 dB being the most (from memory); zero when the
    /// day is within without.
    /// </summary>
    public Level? LeastNoiseReductionRating =>
        Dose is null || Rating().Value > MostRating ? null : Level.FromDecibels(known > 1 ? Rating().Value : 0);

    /// <summary>What can hurt.</summary>
    public IReadOnlyList<Caution> Cautions { get; } = new ValueList<Caution>([Refinish.Cautions.Noise]);

    /// <summary>The level of the day under hearing protection, derated: L − (NRR − 7)/2.</summary>
    /// <param name="noiseReductionRating">Rating of the protector's label, 7 to 40 dB.</param>
    /// <returns>The level; <see langword="null"/> when <see cref="DailyLevel"/> is.</returns>
    /// <remarks>
    /// The 7 dB for A-weighted levels: 29 CFR 1910.95, Appendix B, second-hand; the half: OSHA's practice where protection is held against
    /// other means, second-hand. A rating counts only for a protector that fits and is worn all the time.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="noiseReductionRating"/> is outside its range.</exception>
    public Level? Under(Level noiseReductionRating)
    {
        double rating = Guard.Within(noiseReductionRating, Bounds.Between(7, 40, Measure.SoundLevel));
        return DailyLevel is null ? null : Level.FromDecibels(EightHour().Value - ((rating - 7) / 2));
    }

    /// <summary>How the dose follows.</summary>
    /// <returns>The derivation, of the stretches whose level is known and counts.</returns>
    public Workings Workings() => Trace.Of(
        "Noise of " + Person + ", " + Limit.Authority,
        [
            Together, .. Trace.When(known > 0, EightHour),
            .. Trace.When(known > 1 && Rating().Value <= MostRating, Rating),
        ]);

    /// <summary>The dose against its limit.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Comparison.ToString();

    private Num Together(Trace? t = null)
    {
        Num sum = 0;
        int counted = 0;
        foreach (NoiseSpan span in spans)
        {
            if (span.Decibels is double level && Limit.Counts(level))
            {
                sum += t.Given("C_", counted + 1, span.Time.TotalSeconds, Measure.Hours) / t.Given("T_8", AirStudy.EightHours, Measure.Hours)
                    * Limit.Louder(t.Given("L_", counted + 1, level, Measure.SoundLevel), t);
                counted++;
            }
        }

        return t.Step("dose of the day", "D", Measure.Percent, Limit.Source, sum);
    }

    private Num EightHour(Trace? t = null) => t.Step("level of an eight-hour day with that dose", "L_8", Measure.SoundLevel, Limit.Source,
        Limit.Criterion(t) + (Limit.Exchange(t) * Num.Ln(Together(t)) / Num.Ln(t.Number(2))));

    private Num Rating(Trace? t = null) => t.Step(
        "least noise reduction rating", "NRR", Measure.SoundLevel, Derating, 7 + (2 * (EightHour(t) - Limit.Criterion(t))));

    private string Unknown() => string.Join(", ", spans.Where(span => span.Decibels is null).Select(span => span.Work).Distinct());

    private string Remedy() => Limit.AsksFor + "; "
        + (LeastNoiseReductionRating is Level least
            ? "a noise reduction rating of at least " + Measure.SoundLevel.FormatAtLeast(least.Decibels, DisplayUnits.Si, 2)
                + " would reach it by (NRR − 7)/2, if it fits and is worn all the time"
            : "no common hearing protector reaches it by (NRR − 7)/2: less time or quieter tools");
}
