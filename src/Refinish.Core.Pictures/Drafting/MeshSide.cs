using System;
using System.Collections.Generic;
using Refinish.Fixtures;

namespace Refinish.Pictures.Drafting;

/// <summary>A side from which a mesh is looked at: what of a point lies to the right, downwards and towards the viewer.</summary>
internal sealed record MeshSide(
    string Name, string Across, string Down, Func<MeshPoint, double> Right, Func<MeshPoint, double> Below, Func<MeshPoint, double> Near)
{
    public static MeshSide Above { get; } = new("From above", "length", "width", p => p.X, p => -p.Y, p => p.Z);

    public static MeshSide Underneath { get; } = new("From below", "length", "width", p => p.X, p => p.Y, p => -p.Z);

    /// <summary>The four sides; which of them is the front of the fixture, its mesh does not tell.</summary>
    public static IReadOnlyList<MeshSide> Round { get; } =
    [
        new("Side, seen along y", "length", "height", p => p.X, p => -p.Z, p => -p.Y),
        new("Side, seen against y", "length", "height", p => -p.X, p => -p.Z, p => p.Y),
        new("Side, seen along x", "width", "height", p => -p.Y, p => -p.Z, p => -p.X),
        new("Side, seen against x", "width", "height", p => p.Y, p => -p.Z, p => p.X),
    ];
}
