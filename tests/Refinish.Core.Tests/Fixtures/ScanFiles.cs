using System;
using System.Buffers.Binary;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Text;
using Refinish.Fixtures;

namespace Refinish.Tests.Fixtures;

/// <summary>Writes meshes as scan files in millimetres, apart from the readers.</summary>
internal static class ScanFiles
{
    public const string Cube = "v 0 0 0\nv 2 0 0\nv 2 2 0\nv 0 2 0\nv 0 0 2\nv 2 0 2\nv 2 2 2\nv 0 2 2\nf 1 4 3 2\nf 5 6 7 8\nf 1 2 6 5\nf 2 3 7 6\nf 3 4 8 7\nf 4 1 5 8\n";

    public static byte[] BinaryStl(TriangleMesh mesh)
    {
        byte[] file = new byte[84 + (50 * mesh.Triangles.Count)];
        BinaryPrimitives.WriteUInt32LittleEndian(file.AsSpan(80), (uint)mesh.Triangles.Count);
        int at = 84;
        foreach (MeshTriangle triangle in mesh.Triangles)
        {
            at += 12;
            foreach (double number in Corners(mesh, triangle))
            {
                BinaryPrimitives.WriteSingleLittleEndian(file.AsSpan(at), (float)number);
                at += 4;
            }

            at += 2;
        }

        return file;
    }

    public static byte[] TextStl(TriangleMesh mesh)
    {
        StringBuilder text = new("solid vessel\n");
        foreach (MeshTriangle triangle in mesh.Triangles)
        {
            text.Append("  facet normal 0 0 0\n    outer loop\n");
            double[] numbers = Corners(mesh, triangle);
            for (int i = 0; i < 9; i += 3)
            {
                text.Append(CultureInfo.InvariantCulture, $"      vertex {numbers[i]:E12} {numbers[i + 1]:R} {numbers[i + 2]:R}\n");
            }

            text.Append("    endloop\n  endfacet\n");
        }

        return Encoding.ASCII.GetBytes(text.Append("endsolid vessel\n").ToString());
    }

    public static byte[] Obj(TriangleMesh mesh)
    {
        StringBuilder text = new("# vessel\n");
        foreach (MeshPoint point in mesh.Vertices)
        {
            text.Append(CultureInfo.InvariantCulture, $"v {point.X * 1000:R} {point.Y * 1000:R} {point.Z * 1000:R}\n");
        }

        foreach (MeshTriangle triangle in mesh.Triangles)
        {
            text.Append(CultureInfo.InvariantCulture, $"f {triangle.A + 1} {triangle.B + 1} {triangle.C + 1}\n");
        }

        return Encoding.ASCII.GetBytes(text.ToString());
    }

    public static byte[] TextPly(TriangleMesh mesh)
    {
        StringBuilder text = new(Header(mesh, "ascii", "double"));
        foreach (MeshPoint point in mesh.Vertices)
        {
            text.Append(CultureInfo.InvariantCulture, $"{point.X * 1000:R} {point.Y * 1000:R} {point.Z * 1000:R}\n");
        }

        foreach (MeshTriangle triangle in mesh.Triangles)
        {
            text.Append(CultureInfo.InvariantCulture, $"3 {triangle.A} {triangle.B} {triangle.C}\n");
        }

        return Encoding.ASCII.GetBytes(text.ToString());
    }

    public static byte[] BinaryPly(TriangleMesh mesh, bool bigEndian)
    {
        using MemoryStream file = new();
        file.Write(Encoding.ASCII.GetBytes(Header(mesh, bigEndian ? "binary_big_endian" : "binary_little_endian", "float")));
        byte[] word = new byte[4];
        foreach (MeshPoint point in mesh.Vertices)
        {
            foreach (double number in new[] { point.X, point.Y, point.Z })
            {
                if (bigEndian)
                {
                    BinaryPrimitives.WriteSingleBigEndian(word, (float)(number * 1000));
                }
                else
                {
                    BinaryPrimitives.WriteSingleLittleEndian(word, (float)(number * 1000));
                }

                file.Write(word);
            }
        }

        foreach (MeshTriangle triangle in mesh.Triangles)
        {
            file.WriteByte(3);
            foreach (int corner in new[] { triangle.A, triangle.B, triangle.C })
            {
                if (bigEndian)
                {
                    BinaryPrimitives.WriteInt32BigEndian(word, corner);
                }
                else
                {
                    BinaryPrimitives.WriteInt32LittleEndian(word, corner);
                }

                file.Write(word);
            }
        }

        return file.ToArray();
    }

    private static string Header(TriangleMesh mesh, string format, string type) => string.Create(
        CultureInfo.InvariantCulture,
        $"ply\nformat {format} 1.0\nelement vertex {mesh.Vertices.Count}\nproperty {type} x\nproperty {type} y\nproperty {type} z\nelement face {mesh.Triangles.Count}\nproperty list uchar int vertex_indices\nend_header\n");

    private static double[] Corners(TriangleMesh mesh, MeshTriangle triangle)
    {
        List<double> numbers = [];
        foreach (int corner in new[] { triangle.A, triangle.B, triangle.C })
        {
            MeshPoint point = mesh.Vertices[corner];
            numbers.AddRange([point.X * 1000, point.Y * 1000, point.Z * 1000]);
        }

        return [.. numbers];
    }
}
