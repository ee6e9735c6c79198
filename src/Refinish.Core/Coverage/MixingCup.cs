using System;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>One size of mixing cup: what it holds in use, its graduation, and the least that is measured well enough in it.</summary>
public sealed record MixingCup
{
    /// <summary>Makes a cup.</summary>
    /// <param name="capacity">What it holds in use, more than 0 and at most 20 L.</param>
    /// <param name="graduation">Its graduation, at least a hundred-millionth of the capacity and at most the capacity.</param>
    /// <param name="smallest">
    /// Least that is measured well enough in it, 0 to the capacity; see <see cref="CupReading.SmallestTotal"/>.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public MixingCup(Volume capacity, Volume graduation, Volume smallest)
    {
        Capacity = Guard.Checked(capacity, Bounds.Positive(Measure.Liquid, 0.02));
        Graduation = Guard.Checked(graduation, Bounds.Between(Capacity.CubicMeters * 1e-8, Capacity.CubicMeters, Measure.Liquid));
        Smallest = Guard.Checked(smallest, Bounds.NotNegative(Measure.Liquid, Capacity.CubicMeters));
    }

    /// <summary>What it holds in use.</summary>
    public Volume Capacity { get; }

    /// <summary>Its graduation.</summary>
    public Volume Graduation { get; }

    /// <summary>Least that is measured well enough in it.</summary>
    public Volume Smallest { get; }

    /// <summary>Size and graduation.</summary>
    /// <returns>Text such as <c>600 mL cup, to 5 mL</c>.</returns>
    public override string ToString() =>
        Measure.Liquid.Format(Capacity.CubicMeters) + " cup, to " + Measure.Liquid.Format(Graduation.CubicMeters);

    /// <summary>Least batch in whole graduations, at least one.</summary>
    internal int LeastGraduations => (int)Math.Max(1, Math.Ceiling((Smallest.CubicMeters / Graduation.CubicMeters) - CupSearch.Slack));

    internal double Step => Graduation.CubicMeters;

    /// <summary>
    /// Most graduations that fit the cup and a limit set by time; at most a hundred million, by the range of the graduation.
    /// </summary>
    internal int MostGraduations(double limit) =>
        (int)Math.Max(0, Math.Floor((Math.Min(Capacity.CubicMeters, limit) / Graduation.CubicMeters) + CupSearch.Slack));
}
