using System;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>A limit on volatile organic compounds as data: where, which rule, which category, from when.</summary>
/// <remarks>
/// Rules of this kind hold for the coating thinned to its maker's maximum, less water, exempt compounds and tinting colorant, and where a
/// coating fits several categories the strictest counts, with exceptions (COMAR 26.11.39.04). Most leave out containers of one litre or
/// less (40 CFR 59.400(c)(5)).
/// </remarks>
/// <example><code>
/// VocLimit local = new()
/// {
///     Jurisdiction = "our county", Rule = "rule as printed", Category = "tub and tile refinish", EffectiveFrom = "2025-01-01",
///     Limit = MassConcentration.FromGramsPerLiter(420), Source = Source.Supplied("county code, read on site"),
/// };
/// </code></example>
public sealed record VocLimit
{
    private readonly double limit;

    /// <summary>Where it holds.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Jurisdiction { get; init => field = Guard.Named(value); }

    /// <summary>Which rule.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Rule { get; init => field = Guard.Named(value); }

    /// <summary>Which category of coating.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Category { get; init => field = Guard.Named(value); }

    /// <summary>From when, as the rule prints it; <see langword="null"/> when not known.</summary>
    public required string? EffectiveFrom { get; init; }

    /// <summary>
    /// What the limit counts: <see cref="VocBasis.LessWaterAndExempt"/>, as the rules of the United States do, unless given.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public VocBasis Basis { get; init => field = Guard.Defined(value); }

    /// <summary>The limit on its <see cref="Basis"/>, more than 0 and at most 2 kg/L.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required MassConcentration Limit
    {
        get => MassConcentration.FromKilogramsPerCubicMeter(limit);
        init => limit = Guard.Within(value, Bounds.Positive(Measure.CoatingContent, 2000));
    }

    /// <summary>Where the figure comes from and how well it was looked up.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>Holds a content against this limit.</summary>
    /// <param name="content">
    /// Content as applied, of which <see cref="Basis"/> says what counts; <see langword="null"/> when not known.
    /// </param>
    /// <returns>The comparison; it cannot be judged without a content.</returns>
    public LimitComparison Compare(VocContent? content) =>
        Compare(content is null ? null : Basis == VocBasis.ReadyToUse ? content.Material : content.Regulatory);

    private LimitComparison Compare(MassConcentration? content) => new(
        (Basis == VocBasis.ReadyToUse ? "VOC ready to use, " : "VOC less water and exempt compounds, ") + Jurisdiction + ", " + Category,
        content?.KilogramsPerCubicMeter,
        limit,
        LimitSense.AtMost,
        Measure.CoatingContent,
        Source,
        content is MassConcentration c && c.KilogramsPerCubicMeter > limit
            ? "Use less reducer, an exempt reducer, or a product with more solids; ask the authority that enforces the rule." : null)
    {
        Whose = Whom.Of(Rule, Jurisdiction, EffectiveFrom ?? "date not known"),
    };

    /// <summary>Where, what and how much in one line.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Jurisdiction + ", " + Rule + ", " + Category + ": " + Measure.CoatingContent.Format(limit);
}
