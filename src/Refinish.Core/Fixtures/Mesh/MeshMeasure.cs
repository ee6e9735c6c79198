using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// What one pass over a scan gives without keeping it: how many triangles, their area, the volume they enclose if they are closed, and
/// the box round them.
/// </summary>
/// <example><code>
/// byte[] triangle = System.Text.Encoding.ASCII.GetBytes("solid\nfacet normal 0 0 1\nouter loop\nvertex 0 0 0\nvertex 30 0 0\nvertex 0 40 0\nendloop\nendfacet\nendsolid\n");
/// using Stream file = new MemoryStream(triangle);            // or File.OpenRead
/// MeshMeasure measure = StlReader.Measure(file, Length.FromMillimeters(1));
/// double squareCentimetres = measure.Area.SquareCentimeters;   // 6
/// </code></example>
public sealed record MeshMeasure
{
    private readonly double area;
    private readonly double volume;

    internal MeshMeasure(long triangles, double area, double volume, MeshBox? box)
    {
        Triangles = triangles;
        this.area = area;
        this.volume = volume;
        Box = box;
    }

    /// <summary>How many triangles there are.</summary>
    public long Triangles { get; }

    /// <summary>The area of all triangles.</summary>
    public Area Area => Area.FromSquareMeters(area);

    /// <summary>
    /// The volume by the divergence theorem: that inside where the triangles are closed and face outwards, negative where they face
    /// inwards, without meaning where they are open.
    /// </summary>
    public Volume SignedVolume => Volume.FromCubicMeters(volume);

    /// <summary>The box round all corners; <see langword="null"/> when there is no triangle.</summary>
    public MeshBox? Box { get; }

    /// <summary>The count and the area in one line, in metric units.</summary>
    /// <returns>Text such as <c>2000000 triangles, 2.5724 m²</c>.</returns>
    public override string ToString() => $"{Triangles} triangles, {Measure.Area.Format(area)}";
}
