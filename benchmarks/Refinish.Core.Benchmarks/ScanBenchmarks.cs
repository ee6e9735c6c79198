using System;
using System.Buffers.Binary;
using System.Globalization;
using System.IO;
using System.Text;
using BenchmarkDotNet.Attributes;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Benchmarks;

/// <summary>Scans from memory beside a plain read and sum of the same bytes in pieces of 64 KiB; GB/s = bytes over mean time.</summary>
[MemoryDiagnoser]
public class ScanBenchmarks
{
    private const int Large = 2_000_000;
    private const int Small = 100_000;
    private static readonly Length Millimetre = Length.FromMillimeters(1);
    private readonly byte[] buffer = new byte[1 << 16];
    private byte[] large = [];
    private byte[] stl = [];
    private byte[] ply = [];
    private byte[] obj = [];

    [GlobalSetup]
    public void Write()
    {
        large = Stl(Large);
        stl = Stl(Small);
        StringBuilder text = new();
        using MemoryStream binary = new();
        binary.Write(Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"ply\nformat binary_little_endian 1.0\nelement vertex {Small}\nproperty float x\nproperty float y\nproperty float z\nelement face {Small}\nproperty list uchar int vertex_indices\nend_header\n")));
        Random random = new(1);
        byte[] word = new byte[4];
        for (int i = 0; i < Small; i++)
        {
            (float x, float y, float z) = (random.NextSingle(), random.NextSingle(), random.NextSingle());
            text.Append(CultureInfo.InvariantCulture, $"v {x:F6} {y:F6} {z:F6}\n");
            foreach (float number in new[] { x, y, z })
            {
                BinaryPrimitives.WriteSingleLittleEndian(word, number);
                binary.Write(word);
            }
        }

        for (int i = 0; i < Small; i++)
        {
            binary.WriteByte(3);
            foreach (int corner in new[] { i, (i + 1) % Small, (i + 2) % Small })
            {
                BinaryPrimitives.WriteInt32LittleEndian(word, corner);
                binary.Write(word);
            }

            text.Append(CultureInfo.InvariantCulture, $"f {i + 1} {((i + 1) % Small) + 1} {((i + 2) % Small) + 1}\n");
        }

        ply = binary.ToArray();
        obj = Encoding.ASCII.GetBytes(text.ToString());
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"bytes: large STL {large.Length}, STL {stl.Length}, PLY {ply.Length}, OBJ {obj.Length}"));
    }

    [Benchmark(Baseline = true)]
    public long PlainSumOfLarge() => Sum(large);

    [Benchmark]
    public double MeasureLargeStl() => StlReader.Measure(new MemoryStream(large), Millimetre).Area.SquareMeters;

    [Benchmark]
    public int ReadStl() => StlReader.Read(new MemoryStream(stl), Millimetre).Triangles.Count;

    [Benchmark]
    public long PlainSumOfStl() => Sum(stl);

    [Benchmark]
    public int ReadBinaryPly() => PlyReader.Read(new MemoryStream(ply), Millimetre).Triangles.Count;

    [Benchmark]
    public long PlainSumOfPly() => Sum(ply);

    [Benchmark]
    public int ReadObj() => ObjReader.Read(new MemoryStream(obj), Millimetre).Triangles.Count;

    [Benchmark]
    public long PlainSumOfObj() => Sum(obj);

    private static byte[] Stl(int triangles)
    {
        byte[] file = new byte[84 + (50 * triangles)];
        BinaryPrimitives.WriteUInt32LittleEndian(file.AsSpan(80), (uint)triangles);
        Random random = new(2);
        for (int i = 0; i < triangles; i++)
        {
            for (int k = 0; k < 12; k++)
            {
                BinaryPrimitives.WriteSingleLittleEndian(file.AsSpan(84 + (50 * i) + (4 * k)), random.NextSingle());
            }
        }

        return file;
    }

    // Eight bytes at a time, as a check sum would.
    private long Sum(byte[] file)
    {
        using MemoryStream stream = new(file);
        long sum = 0;
        for (int read = stream.Read(buffer, 0, buffer.Length); read > 0; read = stream.Read(buffer, 0, buffer.Length))
        {
            for (int i = 0; i + 8 <= read; i += 8)
            {
                sum += BitConverter.ToInt64(buffer, i);
            }
        }

        return sum;
    }
}
