using System;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>A box with sides along the axes: what a mesh fits into, or what is cut out of a scan.</summary>
/// <example><code>
/// MeshBox alcove = new(new(0, 0, 0), new(1.6, 0.9, 0.5));
/// double metres = alcove.SizeX.Meters;   // 1.6
/// </code></example>
public sealed record MeshBox
{
    /// <summary>Makes a box.</summary>
    /// <param name="lowest">The corner with the least coordinates.</param>
    /// <param name="highest">The corner with the greatest coordinates.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A coordinate is not finite or farther than 10⁹ m off, or <paramref name="highest"/> lies below <paramref name="lowest"/>.
    /// </exception>
    public MeshBox(MeshPoint lowest, MeshPoint highest)
    {
        Lowest = InReach(lowest, nameof(lowest));
        Highest = InReach(highest, nameof(highest));
        NotBelow(highest.X, lowest.X);
        NotBelow(highest.Y, lowest.Y);
        NotBelow(highest.Z, lowest.Z);

        static void NotBelow(double high, double low) =>
            Guard.Rule(high >= low, nameof(highest), high, Measure.Length, "at least " + Measure.Length.Format(low) + ", the lowest corner's");
    }

    /// <summary>The corner with the least coordinates.</summary>
    public MeshPoint Lowest { get; }

    /// <summary>The corner with the greatest coordinates.</summary>
    public MeshPoint Highest { get; }

    /// <summary>Size along x.</summary>
    public Length SizeX => Length.FromMeters(Highest.X - Lowest.X);

    /// <summary>Size along y.</summary>
    public Length SizeY => Length.FromMeters(Highest.Y - Lowest.Y);

    /// <summary>Size along z.</summary>
    public Length SizeZ => Length.FromMeters(Highest.Z - Lowest.Z);

    /// <summary>The three sizes in one line, in metric units.</summary>
    /// <returns>Text such as <c>1524 mm × 762 mm × 400 mm</c>.</returns>
    public override string ToString() =>
        $"{Measure.Length.Format(Highest.X - Lowest.X)} × {Measure.Length.Format(Highest.Y - Lowest.Y)} ×"
        + $" {Measure.Length.Format(Highest.Z - Lowest.Z)}";

    internal static MeshPoint InReach(MeshPoint point, string name)
    {
        Guard.Within(point.X, MeshPoint.Reach, name);
        Guard.Within(point.Y, MeshPoint.Reach, name);
        Guard.Within(point.Z, MeshPoint.Reach, name);
        return point;
    }
}
