using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>Reads scans in the PLY format: ASCII, binary little-endian and binary big-endian.</summary>
/// <remarks>
/// Of the elements, <c>vertex</c> (properties x, y, z) and <c>face</c> (the list vertex_indices or vertex_index) are used; others are
/// passed over by their declared types. Faces of more than three corners are split into a fan. Nothing is set aside for the counts that
/// the header promises. PLY has no unit: the caller states it. Source: the format's description, from memory, unverified; tests write
/// and read all three kinds.
/// </remarks>
/// <example><code>
/// byte[] triangle = System.Text.Encoding.ASCII.GetBytes("ply\nformat ascii 1.0\nelement vertex 3\nproperty float x\nproperty float y\nproperty float z\nelement face 1\nproperty list uchar int vertex_indices\nend_header\n0 0 0\n3 0 0\n0 4 0\n3 0 1 2\n");
/// using Stream file = new MemoryStream(triangle);            // or File.OpenRead
/// TriangleMesh scan = PlyReader.Read(file, Length.FromCentimeters(1));
/// double squareCentimetres = scan.Area.SquareCentimeters;    // 6
/// </code></example>
public static class PlyReader
{
    /// <summary>Reads a whole scan.</summary>
    /// <param name="stream">The file from its first byte on; it stays open.</param>
    /// <param name="fileUnit">How long one unit of the file is, such as a millimetre; 1 nm to 1 km.</param>
    /// <returns>The vertices and triangles in the order of the file, without zones.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stream"/> is missing.</exception>
    /// <exception cref="ArgumentException"><paramref name="stream"/> cannot be read from.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="fileUnit"/> is outside its range.</exception>
    /// <exception cref="FormatException">
    /// The file is not PLY, is cut short, or holds what its header does not allow; the message names the line, or the byte of a binary
    /// file.
    /// </exception>
    public static TriangleMesh Read(Stream stream, Length fileUnit)
    {
        ScanFeed feed = new(stream);
        MeshBuilder mesh = new(fileUnit);
        List<PlyElement> elements = [];
        PlyScalars scalars = ReadHeader(feed, elements);
        foreach (PlyElement element in elements)
        {
            for (long i = 0; i < element.Count && element.Properties.Count > 0; i++)
            {
                ReadOne(scalars, mesh, element);
            }
        }

        scalars.NothingMore();
        return mesh.CornersExist() ? mesh.Mesh() : throw new FormatException("A face names a vertex that the file does not hold.");
    }

    private static PlyScalars ReadHeader(ScanFeed feed, List<PlyElement> elements)
    {
        Expect(feed, "ply");
        feed.RestOfLine();
        PlyScalars? scalars = null;
        while (true)
        {
            feed.Require(feed.Word(), "the file ends inside its header");

            if (feed.Is("end_header"))
            {
                feed.RestOfLine();
                return scalars ?? throw feed.Wrong("the header names no format");
            }

            if (feed.Is("format"))
            {
                string format = Word(feed);
                scalars = format switch
                {
                    "ascii" => new(feed, PlyOrder.Text),
                    "binary_little_endian" => new(feed, PlyOrder.LittleEndian),
                    "binary_big_endian" => new(feed, PlyOrder.BigEndian),
                    _ => throw feed.Wrong("the format '" + format + "' is none of ascii, binary_little_endian, binary_big_endian"), };
                feed.RestOfLine();
            }
            else if (feed.Is("element"))
            {
                string name = Word(feed);
                string count = Word(feed);
                elements.Add(long.TryParse(count, NumberStyles.None, CultureInfo.InvariantCulture, out long number)
                    ? new(name, number)
                    : throw feed.Wrong("'" + count + "' is no count of elements"));
                feed.RestOfLine();
            }
            else if (feed.Is("property"))
            {
                feed.Require(elements.Count > 0, "a property stands before the first element");

                string type = Word(feed);
                PlyType? counter = type == "list" ? Type(feed, Word(feed)) : null;
                PlyType item = Type(feed, type == "list" ? Word(feed) : type);
                feed.Require(counter is not (PlyType.Single or PlyType.Double), "a list is counted by a floating-point number");

                elements[elements.Count - 1].Properties.Add(new(Word(feed), item, counter));
                feed.RestOfLine();
            }
            else if (feed.Is("comment") || feed.Is("obj_info"))
            {
                feed.RestOfLine();
            }
            else
            {
                throw feed.Wrong(feed.Quoted() + " is no word of a PLY header");
            }
        }
    }

    private static void ReadOne(PlyScalars scalars, MeshBuilder mesh, PlyElement element)
    {
        double x = double.NaN;
        double y = double.NaN;
        double z = double.NaN;
        foreach (PlyProperty property in element.Properties)
        {
            if (property.Counter is PlyType counter)
            {
                ReadList(scalars, mesh, counter, property.Type, element.IsFace && property.IsCorners);
                continue;
            }

            double value = scalars.Read(property.Type);
            switch (property.Axis)
            {
                case 0: x = value;
                    break;
                case 1: y = value;
                    break;
                case 2: z = value;
                    break;
            }
        }

        if (element.IsVertex && !mesh.TryAdd(x, y, z))
        {
            throw scalars.Wrong("a vertex has no finite x, y and z within 1e9 m");
        }
    }

    private static void ReadList(PlyScalars scalars, MeshBuilder mesh, PlyType counter, PlyType type, bool corners)
    {
        double count = scalars.Read(counter);
        if (count < 0 || (corners && count < 3))
        {
            throw scalars.Wrong("a list has " + count.ToString(CultureInfo.InvariantCulture) + " entries" + (corners ? "; a face needs at least 3" : string.Empty));
        }

        int first = 0;
        int last = 0;
        for (long i = 0; i < (long)count; i++)
        {
            double value = scalars.Read(type);
            if (!corners)
            {
                continue;
            }

            if (value < 0 || value > int.MaxValue || value != Math.Floor(value))
            {
                throw scalars.Wrong("a face names the vertex " + value.ToString(CultureInfo.InvariantCulture));
            }

            int corner = (int)value;
            if (i == 0)
            {
                first = corner;
            }
            else if (i >= 2)
            {
                mesh.Add(first, last, corner);
            }

            last = corner;
        }
    }

    private static PlyType Type(ScanFeed feed, string name) => name switch
    {
        "char" or "int8" => PlyType.Int8,
        "uchar" or "uint8" => PlyType.UInt8,
        "short" or "int16" => PlyType.Int16,
        "ushort" or "uint16" => PlyType.UInt16,
        "int" or "int32" => PlyType.Int32,
        "uint" or "uint32" => PlyType.UInt32,
        "float" or "float32" => PlyType.Single,
        "double" or "float64" => PlyType.Double, _ => throw feed.Wrong("'" + name + "' is no type of a property"), };

    private static string Word(ScanFeed feed) => feed.WordOnLine() ? feed.Text() : throw feed.Wrong("the line of the header is not complete");

    private static void Expect(ScanFeed feed, string word)
    {
        if (!feed.Word() || !feed.Is(word))
        {
            throw feed.Wrong("'" + word + "' expected at the start of the file");
        }
    }
}
