using System;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>One size of mixing cup: what it holds in use, its graduation, and the least that is measured well enough in it.</summary>
public sealed record MixingCup
{
    private readonly double capacity;
    private readonly double graduation;
    private readonly double smallest;

    /// <summary>Makes a cup.</summary>
    /// <param name="capacity">What it holds in use, more than 0 and at most 20 L.</param>
    /// <param name="graduation">Its graduation, at least a hundred-millionth of the capacity and at most the capacity.</param>
    /// <param name="smallest">Least that is measured well enough in it, 0 to the capacity; see <see cref="CupReading.SmallestTotal"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public MixingCup(Volume capacity, Volume graduation, Volume smallest)
    {
        this.capacity = Guard.Within(capacity, Bounds.Positive(Measure.Liquid, 0.02));
        this.graduation = Guard.Within(graduation, Bounds.Between(this.capacity * 1e-8, this.capacity, Measure.Liquid));
        this.smallest = Guard.Within(smallest, Bounds.NotNegative(Measure.Liquid, this.capacity));
    }

    /// <summary>What it holds in use.</summary>
    public Volume Capacity => Volume.FromCubicMeters(capacity);

    /// <summary>Its graduation.</summary>
    public Volume Graduation => Volume.FromCubicMeters(graduation);

    /// <summary>Least that is measured well enough in it.</summary>
    public Volume Smallest => Volume.FromCubicMeters(smallest);

    /// <summary>Size and graduation.</summary>
    /// <returns>Text such as <c>600 mL cup, to 5 mL</c>.</returns>
    public override string ToString() => Measure.Liquid.Format(capacity) + " cup, to " + Measure.Liquid.Format(graduation);

    /// <summary>Least batch in whole graduations, at least one.</summary>
    internal int LeastGraduations => (int)Math.Max(1, Math.Ceiling((smallest / graduation) - CupSearch.Slack));

    internal double Step => graduation;

    /// <summary>
    /// Most graduations that fit the cup and a limit set by time; at most a hundred million, by the range of the graduation.
    /// </summary>
    internal int MostGraduations(double limit) => (int)Math.Max(0, Math.Floor((Math.Min(capacity, limit) / graduation) + CupSearch.Slack));
}
