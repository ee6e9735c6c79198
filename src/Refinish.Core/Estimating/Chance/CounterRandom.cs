using Refinish.Numerics;

namespace Refinish.Estimating;

/// <summary>
/// Random numbers that are a function of seed, stream and index and of nothing else: neither of the order in which they are asked for
/// nor of the thread.
/// </summary>
/// <remarks>
/// Philox4x32-10 of Salmon, Moraes, Dror and Shaw, "Parallel random numbers: as easy as 1, 2, 3", SC11 (2011). The key is the seed,
///     the counter
/// is index (two words) and half the stream; each block holds two numbers of 53 bits. Not for secrets.
/// </remarks>
internal readonly struct CounterRandom(ulong seed)
{
    /// <summary>One number of each of two neighbouring streams, which share a block, between 0 and 1, ends excluded.</summary>
    public void Pair(int pair, long index, out double even, out double odd)
    {
        uint c0 = (uint)index;
        uint c1 = (uint)(index >> 32);
        uint c2 = (uint)pair;
        uint c3 = 0;
        Philox.Block(seed, ref c0, ref c1, ref c2, ref c3);
        even = Unit(c0, c1);
        odd = Unit(c2, c3);
    }

    /// <summary>A word for purposes of its own, such as the key of a permutation, apart from all numbers of <see cref="Pair"/>.</summary>
    public uint Word(int purpose, int which)
    {
        uint c0 = (uint)which;
        uint c1 = 0;
        uint c2 = (uint)purpose;
        uint c3 = 1;
        Philox.Block(seed, ref c0, ref c1, ref c2, ref c3);
        return c0;
    }

    // The middle of one of 2⁵² cells, so that neither 0 nor 1 can come out, not even by rounding.
    private static double Unit(uint high, uint low) => (((((ulong)high << 32) | low) >> 12) + 0.5) * (1.0 / (1ul << 52));
}
