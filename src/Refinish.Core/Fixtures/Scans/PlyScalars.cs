using System;

namespace Refinish.Fixtures;

/// <summary>The numbers of a PLY file after its header, one at a time.</summary>
internal sealed class PlyScalars(ScanFeed feed, PlyOrder order)
{
    private static readonly int[] Sizes = [1, 1, 2, 2, 4, 4, 4, 8];

    private readonly byte[] swapped = new byte[8];

    public double Read(PlyType type)
    {
        if (order == PlyOrder.Text)
        {
            return feed.Word() ? feed.Number() : throw feed.Wrong("the file ends where a number is expected");
        }

        int size = Sizes[(int)type];
        if (!feed.Ensure(size))
        {
            throw ScanFeed.WrongAt(feed.Offset + feed.Available, "the file ends where a number is expected");
        }

        byte[] bytes = feed.Buffer;
        int at = feed.Start;
        if (order == PlyOrder.BigEndian)
        {
            for (int i = 0; i < size; i++)
            {
                swapped[i] = bytes[at + size - 1 - i];
            }

            bytes = swapped;
            at = 0;
        }

        feed.Skip(size);
        return type switch
        {
            PlyType.Int8 => (sbyte)bytes[at],
            PlyType.UInt8 => bytes[at],
            PlyType.Int16 => (short)(bytes[at] | (bytes[at + 1] << 8)),
            PlyType.UInt16 => (ushort)(bytes[at] | (bytes[at + 1] << 8)),
            PlyType.Int32 => (int)LittleEndian.UInt32(bytes, at),
            PlyType.UInt32 => LittleEndian.UInt32(bytes, at),
            PlyType.Single => LittleEndian.Single(bytes, at),
            _ => BitConverter.Int64BitsToDouble((long)LittleEndian.UInt64(bytes, at)), };
    }

    /// <summary>White space may follow text; nothing may follow binary data.</summary>
    public void NothingMore()
    {
        if (order == PlyOrder.Text ? feed.Word() : feed.Ensure(1))
        {
            throw Wrong("the file goes on after the elements that its header promises");
        }
    }

    public FormatException Wrong(string what) => order == PlyOrder.Text ? feed.Wrong(what) : ScanFeed.WrongAt(feed.Offset, what);
}
