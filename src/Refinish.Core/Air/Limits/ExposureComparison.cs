using Refinish.Coatings;

namespace Refinish.Air;

/// <summary>
/// A substance's value held against one limit, with the limit itself, so that a list can be grouped by authority, kind or jurisdiction.
/// </summary>
public sealed record ExposureComparison
{
    internal ExposureComparison(Solvent solvent, ExposureLimit? limit, LimitComparison comparison)
    {
        Solvent = solvent;
        Limit = limit;
        Comparison = comparison;
    }

    /// <summary>The substance.</summary>
    public Solvent Solvent { get; }

    /// <summary>
    /// The limit with its authority, place, date, standing and source; <see langword="null"/> when none is known for the substance, and
    /// then nothing can be judged.
    /// </summary>
    public ExposureLimit? Limit { get; }

    /// <summary>The value against it.</summary>
    public LimitComparison Comparison { get; }

    /// <summary>The comparison as a sentence in metric units.</summary>
    /// <returns>See <see cref="LimitComparison.Sentence"/>.</returns>
    public override string ToString() => Comparison.ToString();
}
