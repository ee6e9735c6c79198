using System;
using System.IO;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>Reads scans in the STL format, binary or ASCII, told apart by their first bytes.</summary>
/// <remarks>
/// Binary: 80 bytes of header, the number of triangles as a little-endian 32-bit count, then 50 bytes each (normal, three corners, two
/// bytes of attributes). The stored normals are not used; the order of the corners says which way a triangle faces. STL has no unit:
/// the caller states it. A file counts as ASCII when it begins with <c>solid</c> and goes on with <c>facet</c> or <c>endsolid</c> on
/// its second line. Nothing is set aside for the count that the header promises; a file that holds fewer or more triangles is refused.
/// Source: the format's description, from memory, unverified; tests write and read both kinds.
/// </remarks>
/// <example><code>
/// byte[] triangle = System.Text.Encoding.ASCII.GetBytes("solid\nfacet normal 0 0 1\nouter loop\nvertex 0 0 0\nvertex 30 0 0\nvertex 0 40 0\nendloop\nendfacet\nendsolid\n");
/// using Stream file = new MemoryStream(triangle);            // or File.OpenRead
/// TriangleMesh scan = StlReader.Read(file, Length.FromMillimeters(1)).Welded(Length.FromMillimeters(0.05));
/// double squareCentimetres = scan.Area.SquareCentimeters;    // 6
/// </code></example>
public static class StlReader
{
    private const int Header = 84;
    private const int Record = 50;

    /// <summary>
    /// Reads a whole scan; every triangle keeps three corners of its own until <see cref="TriangleMesh.Welded"/> joins them.
    /// </summary>
    /// <param name="stream">The file from its first byte on; it stays open.</param>
    /// <param name="fileUnit">How long one unit of the file is, such as a millimetre; 1 nm to 1 km.</param>
    /// <returns>The triangles in the order of the file, without zones.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stream"/> is missing.</exception>
    /// <exception cref="ArgumentException"><paramref name="stream"/> cannot be read from.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="fileUnit"/> is outside its range.</exception>
    /// <exception cref="FormatException">
    /// The file is not STL, is cut short, holds more than it says or a coordinate that is not finite or farther than 10⁹ m off; the
    /// message names the byte or the line.
    /// </exception>
    public static TriangleMesh Read(Stream stream, Length fileUnit)
    {
        ScanFeed feed = new(stream);
        MeshBuilder mesh = new(fileUnit);
        if (IsText(feed))
        {
            ReadText(feed, mesh);
        }
        else
        {
            ReadBinary(feed, mesh);
        }

        return mesh.Mesh();
    }

    /// <summary>
    /// Measures a scan in one pass, without keeping it: no memory beyond a buffer of 64 KiB, whatever the size of a binary file.
    /// </summary>
    /// <param name="stream">The file from its first byte on; it stays open.</param>
    /// <param name="fileUnit">How long one unit of the file is; 1 nm to 1 km.</param>
    /// <returns>Count, area, volume and box.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stream"/> is missing.</exception>
    /// <exception cref="ArgumentException"><paramref name="stream"/> cannot be read from.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="fileUnit"/> is outside its range.</exception>
    /// <exception cref="FormatException">As for <see cref="Read"/>.</exception>
    public static MeshMeasure Measure(Stream stream, Length fileUnit)
    {
        ScanFeed feed = new(stream);
        MeshBuilder mesh = new(fileUnit);
        double unit = mesh.Unit;
        if (IsText(feed))
        {
            ReadText(feed, mesh);
            TriangleMesh whole = mesh.Mesh();
            return new MeshMeasure(whole.Triangles.Count, whole.Area.SquareMeters, whole.SignedVolume.CubicMeters, whole.Box);
        }

        long promised = Promised(feed);
        StlSums sums = new();
        long offset = Header;
        while (sums.Triangles < promised)
        {
            int records = (int)Math.Min(feed.Fill() / Record, promised - sums.Triangles);
            if (records == 0)
            {
                throw CutShort(feed, promised, sums.Triangles);
            }

            sums.Add(feed.Buffer, feed.Start, records);
            if (!sums.IsInReach(unit))
            {
                throw ScanFeed.WrongAt(offset, MeshBuilder.OutOfReach + ", in one of the next " + records.ToString(System.Globalization.CultureInfo.InvariantCulture) + " triangles");
            }

            feed.Skip(records * Record);
            offset += records * (long)Record;
        }

        NothingMore(feed);
        return new MeshMeasure(sums.Triangles, sums.Area * unit * unit, sums.Volume * unit * unit * unit, sums.Box(unit));
    }

    private static bool IsText(ScanFeed feed)
    {
        int ready = Math.Min(512, feed.Ensure(512) ? 512 : feed.Available);
        string start = System.Text.Encoding.ASCII.GetString(feed.Buffer, feed.Start, ready);
        if (!start.TrimStart().StartsWith("solid", StringComparison.OrdinalIgnoreCase))
        {
            return false;
        }

        int line = start.IndexOf('\n');
        string second = line < 0 ? string.Empty : start.Substring(line + 1).TrimStart();
        return second.StartsWith("facet", StringComparison.OrdinalIgnoreCase) || second.StartsWith("endsolid", StringComparison.OrdinalIgnoreCase);
    }

    private static long Promised(ScanFeed feed)
    {
        if (!feed.Ensure(Header))
        {
            throw ScanFeed.WrongAt(feed.Available, "the file ends inside the header of 84 bytes");
        }

        long promised = LittleEndian.UInt32(feed.Buffer, feed.Start + 80);
        feed.Skip(Header);
        return promised;
    }

    private static void ReadBinary(ScanFeed feed, MeshBuilder mesh)
    {
        long promised = Promised(feed);
        for (long i = 0; i < promised; i++)
        {
            if (!feed.Ensure(Record))
            {
                throw CutShort(feed, promised, i);
            }

            bool isInReach = true;
            for (int corner = 1; corner <= 3; corner++)
            {
                int at = feed.Start + (corner * 12);
                isInReach &= mesh.TryAdd(LittleEndian.Single(feed.Buffer, at), LittleEndian.Single(feed.Buffer, at + 4), LittleEndian.Single(feed.Buffer, at + 8));
            }

            if (!isInReach)
            {
                throw ScanFeed.WrongAt(feed.Offset, MeshBuilder.OutOfReach);
            }

            mesh.AddLastThree();
            feed.Skip(Record);
        }

        NothingMore(feed);
    }

    private static FormatException CutShort(ScanFeed feed, long promised, long read) => ScanFeed.WrongAt(
        feed.Offset + feed.Available,
        $"the file ends after {read} of the {promised} triangles that its header promises");

    private static void NothingMore(ScanFeed feed)
    {
        if (feed.Ensure(1))
        {
            throw ScanFeed.WrongAt(feed.Offset, "the file goes on after the triangles that its header promises");
        }
    }

    private static void ReadText(ScanFeed feed, MeshBuilder mesh)
    {
        Expect(feed, "solid");
        feed.RestOfLine();
        while (true)
        {
            feed.Require(feed.Word(), "the file ends without endsolid");

            if (feed.Is("endsolid"))
            {
                feed.RestOfLine();
                if (!feed.Word())
                {
                    return;
                }

                // A second solid in the same file.
                if (!feed.Is("solid"))
                {
                    throw feed.Wrong("'solid' expected, " + feed.Quoted() + " found");
                }

                feed.RestOfLine();
                continue;
            }

            if (!feed.Is("facet"))
            {
                throw feed.Wrong("'facet' expected, " + feed.Quoted() + " found");
            }

            feed.RestOfLine();
            Expect(feed, "outer");
            Expect(feed, "loop");
            for (int corner = 0; corner < 3; corner++)
            {
                Expect(feed, "vertex");
                feed.Require(mesh.TryAdd(Number(feed), Number(feed), Number(feed)), MeshBuilder.OutOfReach);
            }

            mesh.AddLastThree();
            Expect(feed, "endloop");
            Expect(feed, "endfacet");
        }
    }

    private static double Number(ScanFeed feed) => feed.Word() ? feed.Number() : throw feed.Wrong("the file ends where a number is expected");

    private static void Expect(ScanFeed feed, string word)
    {
        if (!feed.Word())
        {
            throw feed.Wrong("the file ends where '" + word + "' is expected");
        }

        if (!feed.Is(word))
        {
            throw feed.Wrong("'" + word + "' expected, " + feed.Quoted() + " found");
        }
    }
}
