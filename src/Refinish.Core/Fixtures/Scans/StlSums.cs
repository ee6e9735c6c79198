using System;
#if !NETSTANDARD2_0
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
#endif

namespace Refinish.Fixtures;

/// <summary>
/// Running sums over binary STL records of 50 bytes: area and volume in double precision from single-precision corners, and the box.
/// Where the machine has vectors of four doubles, four triangles are taken at a time; the order of the sums differs, so the two ways
/// agree to rounding.
/// </summary>
internal sealed class StlSums
{
    private const int Record = 50;

    private double originX;
    private double originY;
    private double originZ;
    private double doubleArea;
    private double sixVolume;
    private float lowX = float.MaxValue;
    private float lowY = float.MaxValue;
    private float lowZ = float.MaxValue;
    private float highX = float.MinValue;
    private float highY = float.MinValue;
    private float highZ = float.MinValue;

    public long Triangles { get; private set; }

    public double Area => doubleArea / 2;

    public double Volume => sixVolume / 6;

    /// <summary>Whether all corners are where a point can lie; one that is not a number makes the area none.</summary>
    public bool IsInReach(double unit) => !double.IsNaN(doubleArea) && Lowest(unit).IsInReach && Highest(unit).IsInReach;

    public MeshBox? Box(double unit) => Triangles == 0 ? null : new MeshBox(Lowest(unit), Highest(unit));

    private MeshPoint Lowest(double unit) => new(lowX * unit, lowY * unit, lowZ * unit);

    private MeshPoint Highest(double unit) => new(highX * unit, highY * unit, highZ * unit);

    public void Add(byte[] bytes, int start, int records)
    {
        int done = 0;
        if (Triangles == 0 && records > 0)
        {
            // The first corner as origin keeps the volume's digits when the scan lies far from zero.
            originX = LittleEndian.Single(bytes, start + 12);
            originY = LittleEndian.Single(bytes, start + 16);
            originZ = LittleEndian.Single(bytes, start + 20);
        }

#if !NETSTANDARD2_0
        if (Vector256.IsHardwareAccelerated && BitConverter.IsLittleEndian)
        {
            done = AddByFours(bytes.AsSpan(start, records * Record), records);
        }
#endif
        AddSingly(bytes, start + (done * Record), records - done);
        Triangles += records;
    }

    /// <summary>One triangle after the other, for the last few and for machines without wide vectors.</summary>
    public void AddSingly(byte[] bytes, int start, int records)
    {
        for (int at = start; records > 0; records--, at += Record)
        {
            float ax = LittleEndian.Single(bytes, at + 12), ay = LittleEndian.Single(bytes, at + 16), az = LittleEndian.Single(bytes, at + 20);
            float bx = LittleEndian.Single(bytes, at + 24), by = LittleEndian.Single(bytes, at + 28), bz = LittleEndian.Single(bytes, at + 32);
            float cx = LittleEndian.Single(bytes, at + 36), cy = LittleEndian.Single(bytes, at + 40), cz = LittleEndian.Single(bytes, at + 44);
            double ux = (double)bx - ax, uy = (double)by - ay, uz = (double)bz - az;
            double vx = (double)cx - ax, vy = (double)cy - ay, vz = (double)cz - az;
            double nx = (uy * vz) - (uz * vy), ny = (uz * vx) - (ux * vz), nz = (ux * vy) - (uy * vx);
            doubleArea += Math.Sqrt((nx * nx) + (ny * ny) + (nz * nz));
            sixVolume += ((ax - originX) * nx) + ((ay - originY) * ny) + ((az - originZ) * nz);
            lowX = Math.Min(lowX, Math.Min(ax, Math.Min(bx, cx)));
            lowY = Math.Min(lowY, Math.Min(ay, Math.Min(by, cy)));
            lowZ = Math.Min(lowZ, Math.Min(az, Math.Min(bz, cz)));
            highX = Math.Max(highX, Math.Max(ax, Math.Max(bx, cx)));
            highY = Math.Max(highY, Math.Max(ay, Math.Max(by, cy)));
            highZ = Math.Max(highZ, Math.Max(az, Math.Max(bz, cz)));
        }
    }

#if !NETSTANDARD2_0
    private int AddByFours(ReadOnlySpan<byte> bytes, int records)
    {
        Vector256<double> area = Vector256<double>.Zero;
        Vector256<double> volume = Vector256<double>.Zero;
        Vector256<double> ox = Vector256.Create(originX), oy = Vector256.Create(originY), oz = Vector256.Create(originZ);
        Vector128<float> minX = Vector128.Create(lowX), minY = Vector128.Create(lowY), minZ = Vector128.Create(lowZ);
        Vector128<float> maxX = Vector128.Create(highX), maxY = Vector128.Create(highY), maxZ = Vector128.Create(highZ);
        int fours = records / 4;
        ref byte first = ref MemoryMarshal.GetReference(bytes);
        for (int i = 0; i < fours; i++)
        {
            ref byte at = ref Unsafe.Add(ref first, i * 4 * Record);
            Vector128<float> fax = Load(ref at, 12), fay = Load(ref at, 16), faz = Load(ref at, 20);
            Vector128<float> fbx = Load(ref at, 24), fby = Load(ref at, 28), fbz = Load(ref at, 32);
            Vector128<float> fcx = Load(ref at, 36), fcy = Load(ref at, 40), fcz = Load(ref at, 44);
            minX = Vector128.Min(minX, Vector128.Min(fax, Vector128.Min(fbx, fcx)));
            minY = Vector128.Min(minY, Vector128.Min(fay, Vector128.Min(fby, fcy)));
            minZ = Vector128.Min(minZ, Vector128.Min(faz, Vector128.Min(fbz, fcz)));
            maxX = Vector128.Max(maxX, Vector128.Max(fax, Vector128.Max(fbx, fcx)));
            maxY = Vector128.Max(maxY, Vector128.Max(fay, Vector128.Max(fby, fcy)));
            maxZ = Vector128.Max(maxZ, Vector128.Max(faz, Vector128.Max(fbz, fcz)));
            Vector256<double> ax = Wide(fax), ay = Wide(fay), az = Wide(faz);
            Vector256<double> ux = Wide(fbx) - ax, uy = Wide(fby) - ay, uz = Wide(fbz) - az;
            Vector256<double> vx = Wide(fcx) - ax, vy = Wide(fcy) - ay, vz = Wide(fcz) - az;
            Vector256<double> nx = (uy * vz) - (uz * vy), ny = (uz * vx) - (ux * vz), nz = (ux * vy) - (uy * vx);
            area += Vector256.Sqrt((nx * nx) + (ny * ny) + (nz * nz));
            volume += ((ax - ox) * nx) + ((ay - oy) * ny) + ((az - oz) * nz);
        }

        doubleArea += Vector256.Sum(area);
        sixVolume += Vector256.Sum(volume);
        for (int lane = 0; lane < 4; lane++)
        {
            lowX = Math.Min(lowX, minX.GetElement(lane));
            lowY = Math.Min(lowY, minY.GetElement(lane));
            lowZ = Math.Min(lowZ, minZ.GetElement(lane));
            highX = Math.Max(highX, maxX.GetElement(lane));
            highY = Math.Max(highY, maxY.GetElement(lane));
            highZ = Math.Max(highZ, maxZ.GetElement(lane));
        }

        return fours * 4;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        static Vector128<float> Load(ref byte at, int offset) => Vector128.Create(
            Unsafe.ReadUnaligned<float>(ref Unsafe.Add(ref at, offset)),
            Unsafe.ReadUnaligned<float>(ref Unsafe.Add(ref at, offset + Record)),
            Unsafe.ReadUnaligned<float>(ref Unsafe.Add(ref at, offset + (2 * Record))),
            Unsafe.ReadUnaligned<float>(ref Unsafe.Add(ref at, offset + (3 * Record))));

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        static Vector256<double> Wide(Vector128<float> narrow) => Vector256.Create(Vector128.WidenLower(narrow), Vector128.WidenUpper(narrow));
    }
#endif
}
