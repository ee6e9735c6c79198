using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Inspection;

/// <summary>
/// A rule of acceptance for dry films, as data: what is counted, and how mean, single values and shares may lie to the specified least
/// and most.
/// </summary>
/// <example><code>
/// FilmAcceptanceRule own = FilmAcceptanceRules.SpotsWithinAFifth with { Name = "our house rule", EachAtLeast = Ratio.FromPercent(90), Source = Source.Supplied("house rule") };
/// </code></example>
public sealed record FilmAcceptanceRule
{
    private static readonly Bounds Factors = Bounds.Between(0.01, 10, Measure.Percent);

    /// <summary>Name of the rule.</summary>
    /// <exception cref="ArgumentException">The text is empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>What is counted.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public required FilmSample Sample { get; init => field = Guard.Defined(value); }

    /// <summary>Least mean, as a part of the specified least; <see langword="null"/> for no rule.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 1 to 1000 %.</exception>
    public Ratio? MeanAtLeast { get; init => field = Part(value, Factors, nameof(MeanAtLeast)); }

    /// <summary>Most mean, as a part of the specified most; <see langword="null"/> for no rule.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 1 to 1000 %.</exception>
    public Ratio? MeanAtMost { get; init => field = Part(value, Factors, nameof(MeanAtMost)); }

    /// <summary>Least single value, as a part of the specified least; <see langword="null"/> for no rule.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 1 to 1000 %.</exception>
    public Ratio? EachAtLeast { get; init => field = Part(value, Factors, nameof(EachAtLeast)); }

    /// <summary>Most single value, as a part of the specified most; <see langword="null"/> for no rule.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 1 to 1000 %.</exception>
    public Ratio? EachAtMost { get; init => field = Part(value, Factors, nameof(EachAtMost)); }

    /// <summary>Least part of all values that has to be at or above the specified least; <see langword="null"/> for no rule.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 1 to 100 %.</exception>
    public Ratio? ShareAtLeast { get; init => field = Part(value, Bounds.Between(0.01, 1, Measure.Percent), nameof(ShareAtLeast)); }

    /// <summary>
    /// How many of what it counts a surface takes; <see langword="null"/> when the rule comes without a plan, and then whether enough was
    /// measured cannot be judged.
    /// </summary>
    public FilmSamplingPlan? Plan { get; init; }

    /// <summary>Where the rule comes from.</summary>
    /// <exception cref="ArgumentNullException">No source is given.</exception>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>What the rule counts of some spots: their means, or all of their readings.</summary>
    /// <param name="spots">The spots.</param>
    /// <returns>The films.</returns>
    public IReadOnlyList<Length> FilmsOf(IEnumerable<FilmSpot> spots) => Sample == FilmSample.Spot
        ? [.. Guard.List(spots).Select(spot => spot.Mean)]
        : [.. Guard.List(spots).SelectMany(spot => spot.Readings)];

    /// <summary>The name.</summary>
    /// <returns>Text such as <c>spots within a fifth</c>.</returns>
    public override string ToString() => Name;

    // Held as a fraction, so that 90 % is the same rule as 0.9.
    private static Ratio? Part(Ratio? value, Bounds bounds, string name) => value is Ratio part ? Guard.Checked(part, bounds, name) : null;
}
