using System;
using System.Collections.Generic;

namespace Refinish.Estimating;

/// <summary>
/// What is uncertain about an estimate. Hours always are, as their standards say; everything else only where it is given.
/// </summary>
/// <example><code>
/// EstimateUncertainty doubts = new()
/// {
///     Hours = ThreePointReading.LognormalBetaPert,
///     Quantities = [new QuantityFactor { Name = "taped area", Distribution = new TriangularDistribution(0.95, 1, 1.1),
///         ScalesAreaLabour = true }],
///     KitPrices = new UniformDistribution(0.98, 1.08),
/// };
/// </code></example>
public sealed record EstimateUncertainty
{
    /// <summary>Hours as their standards give them, all else exact.</summary>
    public static EstimateUncertainty HoursOnly { get; } = new();

    /// <summary>How the three points of the labour standards are read; as PERT unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public ThreePointReading Hours { get; init => field = Guard.Defined(value); } = ThreePointReading.Pert;

    /// <summary>Factors on material quantities, and where they say so on hours by area; none when left out.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<QuantityFactor> Quantities { get; init => field = Guard.List(value); } = ValueList<QuantityFactor>.Empty;

    /// <summary>Factor on the prices of all kits; exactly 1 when left out.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public Distribution KitPrices { get; init => field = Guard.NotNull(value); } = new ExactValue(1);

    /// <summary>Factor on the cost of an hour of labour; exactly 1 when left out.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public Distribution LabourRate { get; init => field = Guard.NotNull(value); } = new ExactValue(1);

    /// <summary>
    /// Costs beyond the estimate, in its currency, such as a second trip that may be needed; none when left out. Groups are kept.
    /// </summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<UncertainInput> Extras { get; init => field = Guard.List(value); } = ValueList<UncertainInput>.Empty;

    /// <summary>How hours are read and how many factors there are.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        "hours read as " + Hours.ToString("G") + ", " + Figures.Fixed(Quantities.Count, 0) + " factors on quantities, " + Figures.Fixed(Extras.Count, 0) + " extra costs";
}
