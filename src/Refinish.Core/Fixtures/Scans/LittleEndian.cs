using System;
#if !NETSTANDARD2_0
using System.Buffers.Binary;
#endif

namespace Refinish.Fixtures;

/// <summary>Numbers in a byte array, least byte first, whatever the machine's own order.</summary>
internal static class LittleEndian
{
    public static uint UInt32(byte[] bytes, int at) => bytes[at] | ((uint)bytes[at + 1] << 8) | ((uint)bytes[at + 2] << 16) | ((uint)bytes[at + 3] << 24);

    public static ulong UInt64(byte[] bytes, int at) => UInt32(bytes, at) | ((ulong)UInt32(bytes, at + 4) << 32);

#if NETSTANDARD2_0
    public static float Single(byte[] bytes, int at)
    {
        if (BitConverter.IsLittleEndian)
        {
            return BitConverter.ToSingle(bytes, at);
        }

        return BitConverter.ToSingle([bytes[at + 3], bytes[at + 2], bytes[at + 1], bytes[at]], 0);
    }
#else
    public static float Single(byte[] bytes, int at) => BinaryPrimitives.ReadSingleLittleEndian(bytes.AsSpan(at, 4));
#endif
}
