namespace Refinish.Numerics;

/// <summary>
/// The order of the slices of one input in Latin hypercube sampling: a permutation of 0 … count − 1 that is calculated for each trial and
/// stored nowhere. Steps that can each be undone (multiply by an odd number, add, shift onto itself) permute the next power of two; what
/// falls outside goes round again (cycle walking, Black and Rogaway, "Ciphers with arbitrary finite domains", CT-RSA 2002).
/// </summary>
internal readonly struct Strata
{
    private readonly uint count;
    private readonly uint mask;
    private readonly int shift;
    private readonly uint key0;
    private readonly uint key1;
    private readonly uint key2;
    private readonly uint key3;

    public Strata(int count, uint key)
    {
        this.count = (uint)count;
        int bits = 1;
        while (1ul << bits < this.count)
        {
            bits++;
        }

        mask = (uint)((1ul << bits) - 1);
        shift = (bits + 1) / 2;
        key0 = Mixed(key);
        key1 = Mixed(key0 + 1);
        key2 = Mixed(key1 + 1);
        key3 = Mixed(key2 + 1);
    }

    public uint Of(uint index)
    {
        uint x = index;
        do
        {
            x = Step(x, 0x85EBCA6Bu, key0);
            x = Step(x, 0xC2B2AE35u, key1);
            x = Step(x, 0x9E3779B1u, key2);
            x = Step(x, 0xCC9E2D51u, key3);
        }
        while (x >= count);

        return x;
    }

    // The key also chooses the odd factor, so that two keys do not merely shift one order.
    private uint Step(uint x, uint factor, uint key)
    {
        x = unchecked((x * (factor ^ (key & 0xFFFFFFFEu))) + (key >> 7)) & mask;
        return x ^ (x >> shift);
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
