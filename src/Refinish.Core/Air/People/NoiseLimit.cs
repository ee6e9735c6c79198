using System;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// A limit or action value on a person's daily noise: the level of an eight-hour day, by how much the time halves, which noise counts,
/// whose it is and what it asks for.
/// </summary>
/// <remarks>
/// Reference duration T = 8 h / 2^((L − Lc)/q), with criterion level Lc and exchange rate q; 29 CFR 1910.95, Appendix A, has Lc = 90 dB and
/// q = 5 dB, NIOSH 98-126 85 dB and 3 dB; q = 10·log10(2) dB is equal energy, as in ISO 1999 and Directive 2003/10/EC. Peaks of single
/// bangs have limits of their own (140 dB in 29 CFR 1910.95(b)(2) and NIOSH 98-126); no tool of this trade is known to bang, and none is
/// compared.
/// </remarks>
/// <example><code>
/// NoiseLimit ours = NoiseLimits.NioshRecommended with { Authority = "our shop (invented)", CriterionLevel = Level.FromDecibels(82) };
/// double hours = ours.ReferenceDuration(Level.FromDecibels(85)).TotalHours;   // 4
/// </code></example>
public sealed record NoiseLimit
{
    private static readonly Bounds Levels = Bounds.Between(60, 120, Measure.SoundLevel);

    private readonly double criterion;
    private readonly double exchange;
    private readonly double? threshold;

    /// <summary>Whose it is and which of theirs, such as "OSHA PEL".</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Authority { get; init => field = Guard.Named(value); }

    /// <summary>Country or state in which the limit holds.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Jurisdiction { get; init => field = Guard.Named(value); }

    /// <summary>A-weighted level that makes a dose of 100 % in eight hours, 60 to 120 dB.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Level CriterionLevel { get => Level.FromDecibels(criterion); init => criterion = Guard.Within(value, Levels); }

    /// <summary>By how much louder noise has to be for half the time, 3 to 5 dB.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Level ExchangeRate
    {
        get => Level.FromDecibels(exchange);
        init => exchange = Guard.Within(value, Bounds.Between(3, 5, Measure.SoundLevel));
    }

    /// <summary>Level below which noise does not count, 60 to 120 dB; <see langword="null"/> where all of it does.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Level? Threshold
    {
        get => threshold is double least ? Level.FromDecibels(least) : null;
        init => threshold = value is Level least ? Guard.Within(least, Levels, nameof(Threshold)) : null;
    }

    /// <summary>What it asks for where a day passes it, in a sentence without a full stop.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string AsksFor { get; init => field = Guard.Named(value); }

    /// <summary>Date or edition of the figure, as text.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string AsOf { get; init => field = Guard.Named(value); }

    /// <summary>Where the figures come from and how well they were looked up.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>How long a level makes a dose of 100 %.</summary>
    /// <param name="level">A-weighted level, 60 to 140 dB.</param>
    /// <returns>The reference duration, whether the level is counted or not.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="level"/> is outside its range.</exception>
    public TimeSpan ReferenceDuration(Level level) =>
        Durations.FromSeconds((AirStudy.EightHours / Louder(Guard.Within(level, NoiseSpan.Levels))).Value);

    /// <summary>The level and whose it is.</summary>
    /// <returns>Text such as <c>OSHA PEL: 90 dB over 8 h, 5 dB for half the time</c>.</returns>
    public override string ToString() => Authority + ": " + Measure.SoundLevel.Format(criterion, DisplayUnits.Si, 3) + " over 8 h, "
        + Measure.SoundLevel.Format(exchange, DisplayUnits.Si, 3) + " for half the time";

    internal string Whose => Whom.Of(Authority, Jurisdiction, AsOf);

    internal Num Criterion(Trace? t) => t.Given("L_c", criterion, Measure.SoundLevel);

    internal Num Exchange(Trace? t) => t.Given("q", exchange, Measure.SoundLevel);

    /// <summary>By how much less time a level makes the dose that the criterion level makes.</summary>
    internal Num Louder(Num level, Trace? t = null) => Num.Power(2, (level - Criterion(t)) / Exchange(t));

    /// <summary>
    /// Refuses two levels that were swapped: noise below the threshold counts for nothing, so that a day louder than the criterion level
    /// would pass.
    /// </summary>
    internal static NoiseLimit Checked(NoiseLimit limit)
    {
        Guard.Rule(
            !(Guard.NotNull(limit).threshold > limit.criterion), nameof(Threshold), limit.threshold ?? 0, Measure.SoundLevel,
            "with the limit " + limit.Whose + " at most its criterion level, ", limit.criterion);
        return limit;
    }

    internal bool Counts(double level) => !(level < threshold);
}
