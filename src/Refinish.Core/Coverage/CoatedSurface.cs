using System;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>One surface of a job: its area, and its own transfer efficiency where a leg or a small sink catches less than a wall.</summary>
public sealed record CoatedSurface
{
    /// <summary>Makes a surface that catches what the gun's transfer efficiency says.</summary>
    /// <param name="id">
    /// Identity, such as that of the fixture; 1 to 100 characters, no '/', no control characters, no white space at either end.
    /// </param>
    /// <param name="area">Its area, more than 0 and at most 1000 m².</param>
    /// <exception cref="ArgumentException"><paramref name="id"/> is not an identity.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="area"/> is outside its range.</exception>
    public CoatedSurface(string id, Area area) : this(id, area, null)
    {
    }

    /// <summary>Makes a surface with its own transfer efficiency.</summary>
    /// <param name="id">
    /// Identity, such as that of the fixture; 1 to 100 characters, no '/', no control characters, no white space at either end.
    /// </param>
    /// <param name="area">Its area, more than 0 and at most 1000 m².</param>
    /// <param name="transferEfficiency">Part that lands on this one, 5 to 100 %; <see langword="null"/> for the gun's.</param>
    /// <exception cref="ArgumentException"><paramref name="id"/> is not an identity.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public CoatedSurface(string id, Area area, Ratio? transferEfficiency)
    {
        Id = Guard.Id(id);
        Area = Guard.Checked(area, Bounds.Positive(Measure.Area, 1000));
        TransferEfficiency = transferEfficiency is Ratio part
            ? Guard.Checked(part, Bounds.Between(0.05, 1, Measure.Percent), nameof(transferEfficiency)) : null;
    }

    /// <summary>Identity of the surface.</summary>
    public string Id { get; }

    /// <summary>Its area.</summary>
    public Area Area { get; }

    /// <summary>Part that lands on this one; <see langword="null"/> for the gun's.</summary>
    public Ratio? TransferEfficiency { get; }

    /// <summary>Identity and area.</summary>
    /// <returns>Text such as <c>tub, 2.57 m²</c>.</returns>
    public override string ToString() => Id + ", " + Measure.Area.Format(Area.SquareMeters, DisplayUnits.Si, 4);
}
