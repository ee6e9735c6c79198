using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>
/// An uncertain factor on quantities of an estimate: an area that was taped in a hurry, a transfer efficiency that differs from the one
/// assumed.
/// </summary>
/// <example><code>
/// QuantityFactor area = new() { Name = "taped area", Distribution = new TriangularDistribution(0.95, 1, 1.1), ScalesAreaLabour = true };
/// QuantityFactor gun = QuantityFactor.Transfer(Ratio.FromPercent(60), new PertDistribution(0.45, 0.6, 0.7), ["acrylic-urethane-topcoat"]);
/// </code></example>
public sealed record QuantityFactor
{
    /// <summary>What it is called.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>How the factor, or the transfer efficiency behind it, is spread; a factor of 1 changes nothing.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required Distribution Distribution { get; init => field = Guard.NotNull(value); }

    /// <summary>Ids of the materials it multiplies; <see langword="null"/>, every material of the job, when left out.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<string>? Items { get; init => field = value is null ? null : Guard.List(value); }

    /// <summary>Whether it also multiplies the hours that go by area.</summary>
    public bool ScalesAreaLabour { get; init; }

    /// <summary>The factor that a real transfer efficiency puts on material sprayed: assumed / real.</summary>
    /// <param name="assumed">The efficiency that the quantities were calculated with, more than 0 and at most 100 %.</param>
    /// <param name="real">How the real one is spread, as a fraction between 0 and 1.</param>
    /// <param name="items">Ids of the materials that are sprayed.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="ArgumentException">An item is missing.</exception>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="assumed"/> is outside its range, or one trial in a million of
    /// <paramref name="real"/> would lie outside 1 to 100 %.</exception>
    public static QuantityFactor Transfer(Ratio assumed, Distribution real, IReadOnlyList<string> items)
    {
        double nominal = Guard.Within(assumed, Bounds.Positive(Measure.Percent, 1));
        Guard.NotNull(real);
        Guard.Within(real.At(1e-6), Bounds.Between(0.01, 1, Measure.Percent), nameof(real));
        Guard.Within(real.At(1 - 1e-6), Bounds.Between(0.01, 1, Measure.Percent), nameof(real));
        return new() { Name = "transfer efficiency", Distribution = real, Items = Guard.List(items), Numerator = nominal };
    }

    /// <summary>Name and distribution.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ": " + Distribution;

    internal double Of(double drawn) => Numerator == 0 ? drawn : Numerator / drawn;

    private double Numerator { get; init; }

    internal bool Multiplies(string item) => Items is null || Items.Contains(item, StringComparer.Ordinal);
}
