using System;
using System.IO;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>Reads scans in the Wavefront OBJ format: vertices and faces; everything else in the file is passed over.</summary>
/// <remarks>
/// Faces of more than three corners are split into a fan about their first corner. Corners count from 1, or backwards from −1, and must
/// have been given before the face. OBJ has no unit: the caller states it. Source: the format's description, from memory, unverified;
/// tests write and read it.
/// </remarks>
/// <example><code>
/// byte[] triangle = System.Text.Encoding.ASCII.GetBytes("v 0 0 0\nv 3 0 0\nv 0 4 0\nf 1 2 3\n");
/// using Stream file = new MemoryStream(triangle);            // or File.OpenRead
/// TriangleMesh scan = ObjReader.Read(file, Length.FromCentimeters(1));
/// double squareCentimetres = scan.Area.SquareCentimeters;    // 6
/// </code></example>
public static class ObjReader
{
    /// <summary>Reads a whole scan.</summary>
    /// <param name="stream">The file from its first byte on; it stays open.</param>
    /// <param name="fileUnit">How long one unit of the file is, such as a millimetre; 1 nm to 1 km.</param>
    /// <returns>The vertices and triangles in the order of the file, without zones.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stream"/> is missing.</exception>
    /// <exception cref="ArgumentException"><paramref name="stream"/> cannot be read from.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="fileUnit"/> is outside its range.</exception>
    /// <exception cref="FormatException">A vertex or a face cannot be read; the message names the line.</exception>
    public static TriangleMesh Read(Stream stream, Length fileUnit)
    {
        ScanFeed feed = new(stream);
        MeshBuilder mesh = new(fileUnit);
        while (feed.Ensure(1))
        {
            if (!feed.WordOnLine())
            {
                continue;
            }

            if (feed.Is("v"))
            {
                feed.Require(mesh.TryAdd(Number(feed), Number(feed), Number(feed)), MeshBuilder.OutOfReach);

                feed.RestOfLine();
            }
            else if (feed.Is("f"))
            {
                ReadFace(feed, mesh);
            }
            else
            {
                feed.RestOfLine();
            }
        }

        return mesh.Mesh();
    }

    private static void ReadFace(ScanFeed feed, MeshBuilder mesh)
    {
        int first = -1;
        int last = -1;
        int corners = 0;
        long line = feed.Line;
        while (true)
        {
            if (!feed.WordOnLine())
            {
                break;
            }

            if (feed.Length == 1 && feed.At(0) == '\\')
            {
                feed.RestOfLine();
                continue;
            }

            int corner = Corner(feed, mesh.Points);
            if (corners == 0)
            {
                first = corner;
            }
            else if (corners >= 2)
            {
                mesh.Add(first, last, corner);
            }

            last = corner;
            corners++;
        }

        if (corners < 3)
        {
            throw new FormatException($"Line {line}: a face has {corners} corners; at least 3 are needed.");
        }
    }

    // "7", "7/1", "7//3", "7/1/3" or "-1": only the place of the vertex counts.
    private static int Corner(ScanFeed feed, int points)
    {
        int at = feed.At(0) == '-' ? 1 : 0;
        long place = 0;
        int digits = 0;
        for (; at < feed.Length && feed.At(at) is >= '0' and <= '9' && digits < 11; at++, digits++)
        {
            place = (place * 10) + (feed.At(at) - '0');
        }

        bool whole = digits > 0 && (at == feed.Length || feed.At(at) == '/');
        long index = feed.At(0) == '-' ? points - place : place - 1;
        return whole && place > 0 && index >= 0 && index < points
            ? (int)index
            : throw feed.Wrong(feed.Quoted() + " names none of the " + points.ToString(System.Globalization.CultureInfo.InvariantCulture) + " vertices given so far");
    }

    private static double Number(ScanFeed feed) => feed.WordOnLine() ? feed.Number() : throw feed.Wrong("a vertex has fewer than three coordinates");
}
