using System;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>One surface of a job: its area, and its own transfer efficiency where a leg or a small sink catches less than a wall.</summary>
public sealed record CoatedSurface
{
    private readonly double area;
    private readonly double? transferEfficiency;

    /// <summary>Makes a surface.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="area">Its area, more than 0 and at most 1000 m².</param>
    /// <param name="transferEfficiency">Part that lands on this one, 5 to 100 %; <see langword="null"/> for the job's.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public CoatedSurface(string name, Area area, Ratio? transferEfficiency = null)
    {
        Name = Guard.Named(name, nameof(name));
        this.area = Guard.Within(area, Bounds.Positive(Measure.Area, 1000), nameof(area));
        this.transferEfficiency = transferEfficiency is Ratio part ? Guard.Within(part, Bounds.Between(0.05, 1, Measure.Percent), nameof(transferEfficiency)) : null;
    }

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>Its area.</summary>
    public Area Area => Area.FromSquareMeters(area);

    /// <summary>Part that lands on this one; <see langword="null"/> for the job's.</summary>
    public Ratio? TransferEfficiency => transferEfficiency is double part ? Ratio.FromDecimalFractions(part) : null;

    /// <summary>Name and area.</summary>
    /// <returns>Text such as <c>tub, 2.57 m²</c>.</returns>
    public override string ToString() => Name + ", " + Measure.Area.Format(area, DisplayUnits.Si, 4);
}
