using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>How the triangles of a mesh hang together: whether it is closed, where it is open, what is wrong with it.</summary>
/// <remarks>
/// Corners are the same when they have the same place in the list of vertices; weld a scan first, or every edge counts as open.
/// Degenerate triangles (two corners alike, or no area) and all but the first of duplicate ones are counted and then left out of the edges.
/// </remarks>
/// <example><code>
/// CounterSink vessel = new(tape);                            // the cap of CounterSinkMeasurements
/// MeshTopology topology = vessel.Tessellate(Length.FromMillimeters(1)).Topology;
/// bool closed = topology.IsClosed;                           // true
/// </code></example>
public sealed record MeshTopology
{
    private readonly double boundaryLength;

    internal MeshTopology(int boundaryLoops, int boundaryEdges, double boundaryLength, int nonManifoldEdges, int misorientedEdges, int degenerateTriangles, int duplicateTriangles, int euler)
    {
        BoundaryLoops = boundaryLoops;
        BoundaryEdges = boundaryEdges;
        this.boundaryLength = boundaryLength;
        NonManifoldEdges = nonManifoldEdges;
        MisorientedEdges = misorientedEdges;
        DegenerateTriangles = degenerateTriangles;
        DuplicateTriangles = duplicateTriangles;
        EulerCharacteristic = euler;
    }

    /// <summary>Chains of open edges that hang together: 0 for a closed mesh, 1 for a basin.</summary>
    public int BoundaryLoops { get; }

    /// <summary>Edges with one triangle only.</summary>
    public int BoundaryEdges { get; }

    /// <summary>The open edges together: on a basin, the edge to be taped.</summary>
    public Length BoundaryLength => Length.FromMeters(boundaryLength);

    /// <summary>Edges with more than two triangles.</summary>
    public int NonManifoldEdges { get; }

    /// <summary>Edges whose two triangles run along them in the same direction: one of the two faces the wrong way.</summary>
    public int MisorientedEdges { get; }

    /// <summary>Triangles with two corners alike or without area.</summary>
    public int DegenerateTriangles { get; }

    /// <summary>Triangles that stand on the same three corners as an earlier one, whichever way they face.</summary>
    public int DuplicateTriangles { get; }

    /// <summary>Vertices in use less edges plus triangles: 2 for a closed ball, 1 for a basin, 0 for a ring.</summary>
    public int EulerCharacteristic { get; }

    /// <summary>Whether every edge has exactly two triangles.</summary>
    public bool IsClosed => BoundaryEdges == 0 && NonManifoldEdges == 0;

    /// <summary>Whether it is closed and all triangles face the same way, so that it encloses a volume.</summary>
    public bool EnclosesVolume => IsClosed && MisorientedEdges == 0;

    /// <summary>The counts in one line.</summary>
    /// <returns>
    /// Text such as <c>1 open loop, 0 non-manifold edges, 0 degenerate and 0 duplicate triangles, Euler characteristic 1</c>.
    /// </returns>
    public override string ToString() =>
        $"{BoundaryLoops} open {(BoundaryLoops == 1 ? "loop" : "loops")}, {NonManifoldEdges} non-manifold edges,"
        + $" {DegenerateTriangles} degenerate and {DuplicateTriangles} duplicate triangles, Euler characteristic "
        + Figures.Fixed(EulerCharacteristic, 0);
}
