namespace Refinish.Estimating;

/// <summary>
/// The order of the slices of one input in Latin hypercube sampling: a permutation of 0 … count − 1 that is calculated for each trial and
/// stored nowhere. A Feistel network permutes the next power of four; what falls outside goes round again (cycle walking,
/// Black and Rogaway, "Ciphers with arbitrary finite domains", CT-RSA 2002).
/// </summary>
internal readonly struct Strata
{
    private const int Rounds = 6;

    private readonly uint count;
    private readonly uint key;
    private readonly int half;
    private readonly uint mask;

    public Strata(int count, uint key)
    {
        this.count = (uint)count;
        this.key = key;
        half = 1;
        while (1ul << (2 * half) < this.count)
        {
            half++;
        }

        mask = (1u << half) - 1;
    }

    public uint Of(uint index)
    {
        uint x = index;
        do
        {
            x = Permute(x);
        }
        while (x >= count);

        return x;
    }

    private uint Permute(uint x)
    {
        uint left = x >> half;
        uint right = x & mask;
        for (uint round = 0; round < Rounds; round++)
        {
            uint next = left ^ (Mixed(unchecked(right + (round * 0x9E3779B9u)) ^ key) & mask);
            left = right;
            right = next;
        }

        return (left << half) | right;
    }

    // The finishing steps of MurmurHash3 (Appleby, public domain).
    private static uint Mixed(uint h)
    {
        unchecked
        {
            h ^= h >> 16;
            h *= 0x85EBCA6Bu;
            h ^= h >> 13;
            h *= 0xC2B2AE35u;
            return h ^ (h >> 16);
        }
    }
}
