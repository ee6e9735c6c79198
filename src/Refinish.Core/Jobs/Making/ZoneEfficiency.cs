using System;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>Transfer efficiency on one zone of a fixture, such as a narrow rim on which less of the fan lands.</summary>
public sealed record ZoneEfficiency
{
    private readonly double efficiency;

    /// <summary>States it.</summary>
    /// <param name="zone">The zone.</param>
    /// <param name="efficiency">Part of the sprayed solids that lands there, 5 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public ZoneEfficiency(FixtureZoneKind zone, Ratio efficiency)
    {
        Zone = Guard.Defined(zone);
        this.efficiency = Guard.Within(efficiency, Bounds.Between(0.05, 1, Measure.Percent));
    }

    /// <summary>The zone.</summary>
    public FixtureZoneKind Zone { get; }

    /// <summary>Part of the sprayed solids that lands there.</summary>
    public Ratio Efficiency => Ratio.FromDecimalFractions(efficiency);

    /// <summary>Zone and efficiency.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Zone.ToString("G") + ": " + Measure.Percent.Format(efficiency);
}
