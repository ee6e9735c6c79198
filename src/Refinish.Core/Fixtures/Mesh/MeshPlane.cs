using System;

namespace Refinish.Fixtures;

/// <summary>A plane that cuts a scan: the side towards its normal is kept.</summary>
/// <example><code>
/// MeshPlane aboveFloor = new(new(0, 0, 0.05), new(0, 0, 1));   // keeps what lies higher than 50 mm
/// </code></example>
public sealed record MeshPlane
{
    /// <summary>Makes a plane.</summary>
    /// <param name="point">Any point of the plane.</param>
    /// <param name="normal">The direction to the side that is kept; any length but zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A coordinate is not finite or farther than 10⁹ m off, or the normal has no length.
    /// </exception>
    public MeshPlane(MeshPoint point, MeshPoint normal)
    {
        Point = MeshBox.InReach(point, nameof(point));
        double length = MeshBox.InReach(normal, nameof(normal)).Norm;
        Guard.Within(length, Bounds.Positive(Measure.Number, double.MaxValue), nameof(normal));
        Normal = MeshPoint.Scaled(normal, 1 / length);
    }

    /// <summary>A point of the plane.</summary>
    public MeshPoint Point { get; }

    /// <summary>The direction to the side that is kept, of length 1.</summary>
    public MeshPoint Normal { get; }

    /// <summary>The point and the normal in one line.</summary>
    /// <returns>Text such as <c>through (0 mm, 0 mm, 50 mm), kept towards 0, 0, 1</c>.</returns>
    public override string ToString() =>
        $"through {Point}, kept towards {Figures.Significant(Normal.X)}, {Figures.Significant(Normal.Y)}, {Figures.Significant(Normal.Z)}";

    internal double Height(MeshPoint point) => MeshPoint.Dot(MeshPoint.Difference(point, Point), Normal);
}
