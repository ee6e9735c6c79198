using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using Refinish.Films;
using Refinish.Fixtures;

namespace Refinish.Pictures.Drawing;

/// <summary>Stanford PLY, binary, little end first: what mesh viewers colour by a property of a vertex or a face.</summary>
internal static class FilmMapPly
{
    public static void Write(FilmMap map, Stream stream)
    {
        TriangleMesh mesh = map.Mesh;
        double[] atVertices = AtVertices(map, Enumerable.Range(0, map.Mesh.Triangles.Count));
        string header = string.Format(
            CultureInfo.InvariantCulture,
            "ply\nformat binary_little_endian 1.0\ncomment wet film in micrometres, coordinates in metres, z up\n"
            + "element vertex {0}\nproperty float x\nproperty float y\nproperty float z\nproperty float wet_film_um\n"
            + "property uchar red\nproperty uchar green\nproperty uchar blue\n"
            + "element face {1}\nproperty list uchar int vertex_indices\nproperty float wet_film_um\nend_header\n",
            mesh.Vertices.Count,
            mesh.Triangles.Count);
        byte[] text = Encoding.ASCII.GetBytes(header);
        stream.Write(text, 0, text.Length);
        byte[] row = new byte[19];
        for (int i = 0; i < atVertices.Length; i++)
        {
            MeshPoint p = mesh.Vertices[i];
            Put(row, 0, (float)p.X);
            Put(row, 4, (float)p.Y);
            Put(row, 8, (float)p.Z);
            Put(row, 12, (float)(atVertices[i] * 1e6));
            int colour = FilmMapScale.Colour(FilmMapScale.Step(atVertices[i], map.Limits), false);
            row[16] = (byte)(colour >> 16);
            row[17] = (byte)(colour >> 8);
            row[18] = (byte)colour;
            stream.Write(row, 0, 19);
        }

        for (int i = 0; i < map.Mesh.Triangles.Count; i++)
        {
            MeshTriangle t = mesh.Triangles[i];
            row[0] = 3;
            Put(row, 1, t.A);
            Put(row, 5, t.B);
            Put(row, 9, t.C);
            Put(row, 13, (float)(map.WetFilm(i).Meters * 1e6));
            stream.Write(row, 0, 17);
        }
    }

    /// <summary>The mean of those of the given triangles that meet in a vertex, each by its area.</summary>
    public static double[] AtVertices(FilmMap map, IEnumerable<int> triangles)
    {
        double[] volume = new double[map.Mesh.Vertices.Count];
        double[] area = new double[volume.Length];
        foreach (int i in triangles)
        {
            MeshTriangle t = map.Mesh.Triangles[i];
            double a = Space.DoubleNormal(map.Mesh.Vertices[t.A], map.Mesh.Vertices[t.B], map.Mesh.Vertices[t.C]).Norm();
            Add(t.A);
            Add(t.B);
            Add(t.C);

            void Add(int vertex)
            {
                volume[vertex] += a * map.WetFilm(i).Meters;
                area[vertex] += a;
            }
        }

        for (int i = 0; i < volume.Length; i++)
        {
            volume[i] = area[i] > 0 ? volume[i] / area[i] : 0;
        }

        return volume;
    }

    private static void Put(byte[] row, int at, float value) => Put(row, at, BitConverter.ToInt32(BitConverter.GetBytes(value), 0));

    private static void Put(byte[] row, int at, int value)
    {
        row[at] = (byte)value;
        row[at + 1] = (byte)(value >> 8);
        row[at + 2] = (byte)(value >> 16);
        row[at + 3] = (byte)(value >> 24);
    }
}
